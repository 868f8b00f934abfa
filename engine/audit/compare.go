package audit

import (
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// ComparedBore is one bore as each of two rulebooks reads it from the same file.
type ComparedBore struct {
	File, Bore    string
	Before, After engine.Findings
	Units         quantity.System
}

// Stand is where a method stands; Verdict is empty where the rulebook has no
// such method.
type Stand struct {
	Method  string  `json:"method"`
	Title   string  `json:"title"`
	Verdict string  `json:"verdict"`
	Points  float64 `json:"points"`
}

// StandTurned is where one method stands under both books.
type StandTurned struct {
	Method string `json:"method"`
	Before Stand  `json:"before"`
	After  Stand  `json:"after"`
}

// RuleTurned is a rule that comes out differently, or does something else. The
// outcome is holds, fails or unknown, and absent where a book has no such rule.
type RuleTurned struct {
	Rule   string   `json:"rule"`
	Effect string   `json:"effect"` // after the edit, if it is still there
	For    []string `json:"for"`
	Before string   `json:"before"`
	After  string   `json:"after"`
	// Points of a lean, and the reason with its values, under each book.
	PointsBefore float64 `json:"points_before"`
	PointsAfter  float64 `json:"points_after"`
	TextBefore   string  `json:"text_before"`
	TextAfter    string  `json:"text_after"`
	// Edited are the fields that make it do something else although it comes out
	// as before.
	Edited []FieldEdit `json:"edited"`
}

// TextTurned is a demand of a method that stands, or a caution, under both
// books: empty where it is not said.
type TextTurned struct {
	Name   string `json:"name"`
	Method string `json:"method"` // that the demand is for
	Before string `json:"before"`
	After  string `json:"after"`
}

// Contrast is how two rulebooks answer for one bore.
type Contrast struct {
	Before   Stand         `json:"before"` // the method advised
	After    Stand         `json:"after"`
	Turned   []RuleTurned  `json:"turned"`
	Methods  []StandTurned `json:"methods"`
	Demands  []TextTurned  `json:"demands"`
	Cautions []TextTurned  `json:"cautions"`
	// Changed says what is not the same: advice, verdicts, demands, cautions. What
	// is only worded otherwise, or has other points, does not count.
	Changed  []string `json:"changed"`
	Reworded bool     `json:"reworded"`
	Repoints bool     `json:"other_points"`
}

// The parts of an answer that may change.
const (
	adviceChanged   = "advice"
	verdictsChanged = "verdicts"
	demandsChanged  = "demands"
	cautionsChanged = "cautions"
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

// outcome is how a rule comes out; its condition if it is not to hold while
// unknown.
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
		absent := was.Verdict == "" || is.Verdict == ""
		verdicts = verdicts || was.Verdict != is.Verdict && (!absent || stands(was) || stands(is))
		c.Repoints = c.Repoints || !absent && was.Points != is.Points
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

func (t TextTurned) comesOrGoes() bool { return (t.Before == "") != (t.After == "") }

func (t TextTurned) reworded() bool { return !t.comesOrGoes() && t.Before != t.After }

// turned lists the rules that come out differently or do something else.
func (p *pair) turned(units quantity.System) []RuleTurned {
	turned := []RuleTurned{}
	for _, name := range p.rules {
		was, i := p.before.outcome(name)
		is, k := p.after.outcome(name)
		edited := p.edited[name]
		quiet := was == engine.Fails.String() && is == was
		if was == is && (len(edited) == 0 || quiet) || !happens(was) && !happens(is) {
			continue
		}
		t := RuleTurned{Rule: name, Before: was, After: is, Edited: []FieldEdit{}}
		if was == is {
			t.Edited = edited
		}
		if i >= 0 {
			t.tell(p.before, i, units, &t.PointsBefore, &t.TextBefore)
		}
		if k >= 0 {
			t.tell(p.after, k, units, &t.PointsAfter, &t.TextAfter)
		}
		turned = append(turned, t)
	}
	return turned
}

// happens reports whether a rule with this outcome does anything.
func happens(outcome string) bool { return outcome != absent && outcome != engine.Fails.String() }

func (t *RuleTurned) tell(a *answer, i int, units quantity.System, points *float64, text *string) {
	r := a.book.Rules[i]
	*points, *text = r.Points, a.state.Because(i, units)
	t.Effect, t.For = r.Effect.String(), nil
	for _, m := range r.For {
		t.For = append(t.For, a.book.Methods[m].Name)
	}
}

// demands lists the demands that differ on methods that stand under both books.
func (p *pair) demands(units quantity.System) []TextTurned {
	turned := []TextTurned{}
	for _, method := range p.methods {
		if !stands(p.before.stand(method)) || !stands(p.after.stand(method)) {
			continue
		}
		for _, rule := range p.rules {
			t := TextTurned{rule, method, p.before.demand(rule, method, units), p.after.demand(rule, method, units)}
			if t.Before != t.After {
				turned = append(turned, t)
			}
		}
	}
	return turned
}

// demand is what a rule demands of a method, or might; empty if nothing.
func (a *answer) demand(rule, method string, units quantity.System) string {
	outcome, i := a.outcome(rule)
	if !happens(outcome) {
		return ""
	}
	r := a.book.Rules[i]
	if r.Effect != engine.Demand || !slices.Contains(r.For, a.methods[method]) {
		return ""
	}
	if outcome == engine.Unknown.String() {
		if r.IfUnknown == engine.Silent {
			return ""
		}
		return "Perhaps: " + a.state.Because(i, units)
	}
	return a.state.Because(i, units)
}

// cautions lists the cautions for the advised methods that differ.
func (p *pair) cautions(c Contrast, units quantity.System) []TextTurned {
	was := p.before.book.CautionsFor(p.before.state.Findings(), c.Before.Method, units)
	is := p.after.book.CautionsFor(p.after.state.Findings(), c.After.Method, units)
	turned := []TextTurned{}
	text := func(list []engine.CautionShown, name string) string {
		i := slices.IndexFunc(list, func(s engine.CautionShown) bool { return s.Caution == name })
		if i < 0 {
			return ""
		}
		return list[i].Text
	}
	for _, s := range was {
		if after := text(is, s.Caution); after != s.Text {
			turned = append(turned, TextTurned{Name: s.Caution, Before: s.Text, After: after})
		}
	}
	for _, s := range is {
		if text(was, s.Caution) == "" {
			turned = append(turned, TextTurned{Name: s.Caution, After: s.Text})
		}
	}
	return turned
}
