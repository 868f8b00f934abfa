package audit

import (
	"slices"
	"strings"

	"boremend/engine"
	"boremend/engine/quantity"
)

// absent is the outcome of a rule that a rulebook does not have.
const absent = "absent"

// pair is two rulebooks side by side. It serves one goroutine.
type pair struct {
	before, after *answer
	rules         []string // of either, in the order of their files
	methods       []string
	edited        map[string][]FieldEdit // by rule: what it does otherwise
}

// answer is one rulebook with a bore under evaluation.
type answer struct {
	book    *engine.Rulebook
	state   *engine.State
	rules   map[string]int
	methods map[string]int
}

func newAnswer(book *engine.Rulebook) *answer {
	a := &answer{book: book, state: book.NewState(), rules: map[string]int{}, methods: map[string]int{}}
	for i, r := range book.Rules {
		a.rules[r.Name] = i
	}
	for m, method := range book.Methods {
		a.methods[method.Name] = m
	}
	return a
}

func newPair(before, after *engine.Rulebook) *pair {
	p := &pair{before: newAnswer(before), after: newAnswer(after), edited: map[string][]FieldEdit{}}
	p.rules, p.methods = union(before.RuleNames(), after.RuleNames()), union(before.MethodNames(), after.MethodNames())
	for _, e := range editsOf("rule", rulesOf(before), rulesOf(after)) {
		if e.Change != Edited {
			continue
		}
		for _, f := range e.Fields {
			if slices.Contains([]string{"for", "effect", "points", "if_unknown"}, f.Field) {
				p.edited[e.Name] = append(p.edited[e.Name], f)
			}
		}
	}
	return p
}

func union(a, b []string) []string {
	out := slices.Clone(a)
	for _, name := range b {
		if !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	return out
}

// load puts a bore before both books.
func (p *pair) load(before, after engine.Findings) {
	p.before.state.Load(before)
	p.after.state.Load(after)
}

// stand is where the method with a name stands.
func (a *answer) stand(name string) Stand {
	m, there := a.methods[name]
	if !there {
		return Stand{Method: name}
	}
	v, points := a.state.Verdict(m)
	return Stand{Method: name, Title: a.book.Methods[m].Title, Verdict: v.String(), Points: points}
}

// advised is the method advised.
func (a *answer) advised() Stand { return a.stand(a.book.Methods[a.state.Decide().Method].Name) }

// advised names the methods that the two books advise.
func (p *pair) advised() [2]string {
	return [2]string{p.before.advised().Method, p.after.advised().Method}
}

// outcome is how a rule comes out, and its number; one that is to hold until
// somebody looks holds.
func (a *answer) outcome(name string) (string, int) {
	i, there := a.rules[name]
	if !there {
		return absent, -1
	}
	return counts(a.state, a.book.Rules[i], i).String(), i
}

// contrast compares the answers for the bore that is loaded.
func (p *pair) contrast(units quantity.System) Contrast {
	c := Contrast{Before: p.before.advised(), After: p.after.advised(), Methods: []StandTurned{}, Changed: []string{}}
	verdicts := false
	for _, name := range p.methods {
		was, is := p.before.stand(name), p.after.stand(name)
		c.Methods = append(c.Methods, StandTurned{name, was, is})
		// A method that only one book has matters where it stands.
		both := was.Verdict != "" && is.Verdict != ""
		verdicts = verdicts || was.Verdict != is.Verdict && (both || stands(was) || stands(is))
		c.Repoints = c.Repoints || both && was.Points != is.Points
	}
	c.Turned = p.turned(units)
	c.Demands, c.Cautions = p.demands(units), p.cautions(c, units)
	if c.Before.Method != c.After.Method {
		c.Changed = append(c.Changed, adviceChanged)
	}
	if verdicts {
		c.Changed = append(c.Changed, verdictsChanged)
	}
	if slices.ContainsFunc(c.Demands, TextTurned.comesOrGoes) {
		c.Changed = append(c.Changed, demandsChanged)
	}
	if slices.ContainsFunc(c.Cautions, TextTurned.comesOrGoes) {
		c.Changed = append(c.Changed, cautionsChanged)
	}
	c.Reworded = slices.ContainsFunc(slices.Concat(c.Demands, c.Cautions), TextTurned.reworded)
	return c
}

func stands(s Stand) bool {
	return s.Verdict == engine.Go.String() || s.Verdict == engine.Conditional.String()
}

// comesOrGoes reports whether something is said under one book and not under the
// other, or under one of them only perhaps.
func (t TextTurned) comesOrGoes() bool {
	return (t.Before == "") != (t.After == "") || strings.HasPrefix(t.Before, perhaps) != strings.HasPrefix(t.After, perhaps)
}

func (t TextTurned) reworded() bool { return !t.comesOrGoes() && t.Before != t.After }
