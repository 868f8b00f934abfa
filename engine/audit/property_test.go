package audit_test

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"pgregory.net/rapid"

	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// odd stands for a catalogue of which nothing is promised: it has no result
// above 5 mm, and jumps.
var odd = engine.Function{
	Name:   "odd",
	Params: []engine.Param{{Name: "a", Kind: quantity.Length}, {Name: "word", Word: true}},
	Result: quantity.Length,
	Call: func(args []engine.Argument) (float64, error) {
		switch {
		case args[0].Number > 5:
			return 0, errors.New("outside its range")
		case args[1].Word == "x":
			return 7, nil
		}
		return 10 - args[0].Number, nil
	},
}

// The facts of a random rulebook; the formulas of some are drawn.
const randomFacts = `
- {fact: a, means: a, kind: length, range: [0 mm, 10 mm], ask: a}
- {fact: b, means: b, kind: length, range: [0 mm, 10 mm], ask: b, at_least: half}
- {fact: g, means: g, kind: length, range: [0 mm, 10 mm], ask: g, assume: a + limit.l2}
- {fact: n, means: n, kind: count, range: [0, 3], ask: n}
- {fact: c, means: c, kind: choice, choices: [x, y, z], ask: c}
- {fact: p, means: p, kind: yes_no, ask: p}
- {fact: half, means: half, kind: length, from: a / 2}
- {fact: sum, means: sum, kind: length, from: a + b}
- {fact: share, means: share, kind: ratio, from: a / b}
- {fact: either, means: either, kind: length, from: 'p ? a : b'}
- {fact: called, means: called, kind: length, from: 'odd(a, c)'}
- {fact: f, means: f, kind: yes_no, from: '%s'}
- {fact: h, means: h, kind: yes_no, from: '%s', assume: no}
`

const randomLimits = `
- {limit: l0, is: 0 mm, means: l, source: invented}
- {limit: l2, is: 2 mm, means: l, source: invented}
- {limit: l4, is: 4 mm, means: l, source: invented}
- {limit: l6, is: 6 mm, means: l, source: invented}
- {limit: l8, is: 8 mm, means: l, source: invented}
- {limit: l10, is: 10 mm, means: l, source: invented}
`

// tree is a random condition: a leaf, or parts that are joined.
type tree struct {
	leaf  string
	op    string // not, and, or
	parts []*tree
}

func (t *tree) String() string {
	switch t.op {
	case "":
		return t.leaf
	case "not":
		return "not (" + t.parts[0].String() + ")"
	}
	words := make([]string, len(t.parts))
	for i, p := range t.parts {
		words[i] = "(" + p.String() + ")"
	}
	return strings.Join(words, " "+t.op+" ")
}

// leaves lists the comparisons in the order in which they are written.
func (t *tree) leaves() []*tree {
	if t.op == "" {
		return []*tree{t}
	}
	var out []*tree
	for _, p := range t.parts {
		out = append(out, p.leaves()...)
	}
	return out
}

var (
	lengths = []string{"a", "b", "g", "half", "sum", "either", "called"}
	limits  = []string{"l0", "l2", "l4", "l6", "l8", "l10"}
	orders  = []string{"<", "<=", ">", ">=", "==", "!="}
)

func drawLeaf(t *rapid.T, flags []string) string {
	kinds := []string{"limit", "limit", "limit", "facts", "sum", "count", "words", "flag"}
	switch rapid.SampledFrom(kinds).Draw(t, "leaf") {
	case "limit":
		return rapid.SampledFrom(lengths).Draw(t, "fact") + " " + rapid.SampledFrom(orders).Draw(t, "op") + " limit." + rapid.SampledFrom(limits).Draw(t, "limit")
	case "facts":
		return rapid.SampledFrom([]string{"a", "half"}).Draw(t, "left") + " " + rapid.SampledFrom(orders).Draw(t, "op") + " " + rapid.SampledFrom([]string{"b", "g"}).Draw(t, "right")
	case "sum":
		return rapid.SampledFrom([]string{"2 * a < b", "b > 2 * a", "share < 1", "share >= 0.5", "a - b > limit.l2", "a < 0.5 * b"}).Draw(t, "sum")
	case "count":
		return fmt.Sprintf("n %s %d", rapid.SampledFrom(orders).Draw(t, "op"), rapid.IntRange(0, 3).Draw(t, "count"))
	case "words":
		return rapid.SampledFrom([]string{`c == "x"`, `c != "y"`, `c in ["x", "z"]`, `c in ["x", "y", "z"]`}).Draw(t, "words")
	}
	return rapid.SampledFrom(flags).Draw(t, "flag")
}

func drawTree(t *rapid.T, depth int, flags []string) *tree {
	if depth == 0 || rapid.IntRange(0, 3).Draw(t, "stop") == 0 {
		return &tree{leaf: drawLeaf(t, flags)}
	}
	out := &tree{op: rapid.SampledFrom([]string{"and", "and", "or", "or", "not"}).Draw(t, "joined")}
	for range map[string]int{"not": 1, "and": 2, "or": 2}[out.op] {
		out.parts = append(out.parts, drawTree(t, depth-1, flags))
	}
	return out
}

// randomRulebook is a rulebook with the trees from which it was written.
type randomRulebook struct {
	facts []*tree // of f and h
	rules []*tree
	rest  []string // effect and the like, by rule
}

func drawRulebook(t *rapid.T) *randomRulebook {
	out := &randomRulebook{facts: []*tree{drawTree(t, 2, []string{"p"}), drawTree(t, 2, []string{"p", "f == no"})}}
	for range 4 {
		out.rules = append(out.rules, drawTree(t, 2, []string{"p", "p == no", "f", "h"}))
		out.rest = append(out.rest, rapid.SampledFrom([]string{"effect: rule_out", "effect: demand", "effect: lean, points: 1", "effect: lean, points: -2"}).Draw(t, "effect")+
			", for: "+rapid.SampledFrom([]string{"[one]", "[one, two]", "[two]"}).Draw(t, "for")+
			", if_unknown: "+rapid.SampledFrom([]string{"open", "silent", "holds"}).Draw(t, "unknown"))
	}
	return out
}

func (r *randomRulebook) load(t fataler) *engine.Rulebook {
	rules := ""
	for i, condition := range r.rules {
		rules += fmt.Sprintf("- {rule: r%d, if: '%s', because: b, source: invented, trust: usual, %s}\n", i, condition, r.rest[i])
	}
	files := fstest.MapFS{}
	for name, text := range map[string]string{
		"rulebook.yaml": "{title: Random, edition: '1', narrow: 1, fallback: one}",
		"limits.yaml":   randomLimits, "facts.yaml": fmt.Sprintf(randomFacts, r.facts[0], r.facts[1]),
		"methods.yaml":   "- {method: one, title: one, plain: one, start: 0}\n- {method: two, title: two, plain: two, start: 0}\n",
		"rules/all.yaml": rules,
	} {
		files[name] = &fstest.MapFile{Data: []byte(text)}
	}
	b, err := engine.Load(files, "", []engine.Function{odd})
	if err != nil {
		t.Fatalf("%v\n%s", err, rules)
	}
	return b
}

type fataler interface {
	Fatalf(format string, args ...any)
}

// mostUnknown is how many facts of a joint of the grid are unknown at once.
const mostUnknown = 1

// everywhere calls a function at every joint of a grid that holds all limits and
// a value between each two of them, with facts known and unknown.
func everywhere(b *engine.Rulebook, look func(s *engine.State, complete bool)) {
	values := map[string][]float64{"n": {0, 1, 2, 3}, "c": {0, 1, 2}, "p": {0, 1}}
	for _, name := range []string{"a", "b", "g"} {
		values[name] = []float64{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10}
	}
	values["g"] = []float64{0, 3, 6, 9}
	s := b.NewState()
	var visit func(slot, unknown int)
	visit = func(slot, unknown int) {
		if slot == len(b.Facts) {
			if s.Possible() {
				look(s, unknown == 0)
			}
			return
		}
		if b.Facts[slot].WorkedOut() {
			visit(slot+1, unknown)
			return
		}
		for _, v := range values[b.Facts[slot].Name] {
			s.Set(slot, v)
			visit(slot+1, unknown)
		}
		if s.Unset(slot); unknown < mostUnknown {
			visit(slot+1, unknown+1)
		}
	}
	visit(0, 0)
}

// claim is what a finding says of all joints, as something that would refute it.
type claim struct {
	says    string
	refuted func(s *engine.State, complete bool) bool
}

// TestFindingsHoldEverywhere checks random rulebooks and looks at every joint of
// a grid for one that refutes a finding.
func TestFindingsHoldEverywhere(t *testing.T) {
	found := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		r := drawRulebook(t)
		b := r.load(t)
		c := audit.Check(context.Background(), b, audit.Options{}, nil)
		var claims []claim
		for _, f := range c.Findings {
			found[f.Kind]++
			checkWitness(t, b, f)
			claims = append(claims, r.claims(t, b, f)...)
		}
		everywhere(b, func(s *engine.State, complete bool) {
			for _, claim := range claims {
				if claim.refuted(s, complete) {
					t.Fatalf("%s: refuted at %s\n%v\n%v", claim.says, written(b, s), r.facts, r.rules)
				}
			}
		})
	})
	for _, kind := range []string{"never_holds", "always_holds", "fixed_comparison", "idle_comparison"} {
		if found[kind] == 0 {
			t.Errorf("no random rulebook had the fault %s", kind)
		}
	}
	t.Log(found)
}

// claims turns a finding into what it claims.
func (r *randomRulebook) claims(t *rapid.T, b *engine.Rulebook, f audit.Finding) []claim {
	says := fmt.Sprintf("%s %s %s (%d:%d): %s", f.Kind, f.What, f.Name, f.Line, f.Column, f.Says)
	outcome := outcomeOf(b, f.About)
	switch f.Kind {
	case "never_holds":
		return []claim{{says, func(s *engine.State, _ bool) bool { return outcome(s) == engine.Holds }}}
	case "always_holds":
		return []claim{{says, func(s *engine.State, complete bool) bool { return complete && outcome(s) != engine.Holds }}}
	case "fixed_comparison":
		return []claim{fixedClaim(b, f, says)}
	case "idle_comparison":
		return []claim{r.idleClaim(t, b, f, says)}
	case "shadowed", "contradicted", "repeated":
		if len(f.Others) > 1 {
			return []claim{barredClaim(b, f, says)}
		}
		a, o := b.Rule(f.Name), b.Rule(f.Others[0])
		claims := []claim{{says, func(s *engine.State, _ bool) bool { return s.Counts(a) && !s.Counts(o) }}}
		if f.Kind == "repeated" || f.Severity == audit.Wrong {
			claims = append(claims, claim{says, func(s *engine.State, _ bool) bool { return s.Counts(o) && !s.Counts(a) }})
		}
		return claims
	}
	return nil
}

// outcomeOf finds how the condition of a rule or fact comes out. Of a fact it is
// the value, where the condition gives one.
func outcomeOf(b *engine.Rulebook, a audit.About) func(s *engine.State) engine.Truth {
	if a.What == "rule" {
		rule := b.Rule(a.Name)
		return func(s *engine.State) engine.Truth { return s.Outcome(rule) }
	}
	slot := b.Fact(a.Name)
	return func(s *engine.State) engine.Truth {
		v, known := s.Value(slot)
		switch {
		case !known || s.Assumed(slot):
			return engine.Unknown
		case v != 0:
			return engine.Holds
		}
		return engine.Fails
	}
}

// barredClaim says that whenever a rule holds each of its methods is ruled out
// by one of the others.
func barredClaim(b *engine.Rulebook, f audit.Finding, says string) claim {
	a := b.Rule(f.Name)
	return claim{says, func(s *engine.State, _ bool) bool {
		return s.Counts(a) && slices.ContainsFunc(b.Rules[a].For, func(m int) bool {
			return !slices.ContainsFunc(f.Others, func(name string) bool {
				out := b.Rule(name)
				return slices.Contains(b.Rules[out].For, m) && s.Counts(out)
			})
		})
	}}
}

// fixedClaim says that a comparison comes out the same everywhere.
func fixedClaim(b *engine.Rulebook, f audit.Finding, says string) claim {
	text := strings.Split(f.Says, "`")[1]
	number := slices.IndexFunc(b.Comparisons(), func(c engine.Comparison) bool { return c.Text == text })
	never := strings.Contains(f.Says, "never so")
	var steps []engine.Step
	return claim{says, func(s *engine.State, complete bool) bool {
		if !complete {
			return false
		}
		steps = s.Steps(steps[:0])
		outcome := steps[number].Outcome
		return never && outcome == engine.Holds || !never && outcome != engine.Holds
	}}
}

// idleClaim compares with two rulebooks in which the comparison is put always
// right and always wrong: one of them must come out the same.
func (r *randomRulebook) idleClaim(t *rapid.T, b *engine.Rulebook, f audit.Finding, says string) claim {
	trees := map[string]*tree{"f": r.facts[0], "h": r.facts[1]}
	for i, condition := range r.rules {
		trees[fmt.Sprint("r", i)] = condition
	}
	leaf := leafAt(t, b, trees[f.Name], f)
	kept := leaf.leaf
	defer func() { leaf.leaf = kept }()
	var others [2]*engine.Rulebook
	var differs [2]bool
	for i, word := range []string{"true", "false"} {
		leaf.leaf = word
		others[i] = r.load(t)
	}
	here := outcomeOf(b, f.About)
	there := [2]func(s *engine.State) engine.Truth{outcomeOf(others[0], f.About), outcomeOf(others[1], f.About)}
	states := [2]*engine.State{others[0].NewState(), others[1].NewState()}
	return claim{says, func(s *engine.State, complete bool) bool {
		if !complete {
			return false
		}
		for i := range differs {
			if !differs[i] {
				states[i].Load(s.Findings())
				differs[i] = here(s) != there[i](states[i])
			}
		}
		return differs[0] && differs[1]
	}}
}

// leafAt finds the comparison that stands at the place of a finding.
func leafAt(t *rapid.T, b *engine.Rulebook, condition *tree, f audit.Finding) *tree {
	c := b.FactCondition(max(b.Fact(f.Name), 0))
	if f.What == "rule" {
		c = b.RuleCondition(b.Rule(f.Name))
	}
	parts := b.Parts(c)
	i := slices.IndexFunc(parts, func(p engine.Part) bool { return p.Line == f.Line && p.Column == f.Column })
	leaves := condition.leaves()
	if i < 0 || len(parts) != len(leaves) {
		t.Fatalf("%s: the place %d:%d is none of the %d comparisons of %s", f.Name, f.Line, f.Column, len(leaves), condition)
	}
	return leaves[i]
}

// checkWitness types the facts of a witness in and evaluates afresh.
func checkWitness(t *rapid.T, b *engine.Rulebook, f audit.Finding) {
	if len(f.Witness) == 0 {
		return
	}
	s := b.NewState()
	s.Load(typed(t, b, f.Witness))
	if !s.Possible() {
		t.Fatalf("%s of %s: the witness contradicts itself: %v", f.Kind, f.Name, f.Witness)
	}
	switch f.Kind {
	case "shadowed", "contradicted", "repeated":
		one := slices.ContainsFunc(f.Others, func(name string) bool { return s.Counts(b.Rule(name)) })
		if !s.Counts(b.Rule(f.Name)) || !one {
			t.Fatalf("%s of %s and %s: one does not hold at %v", f.Kind, f.Name, f.Others[0], f.Witness)
		}
	}
}

// typed reads a witness as a job would.
func typed(t fataler, b *engine.Rulebook, witness []audit.Shown) engine.Findings {
	var text strings.Builder
	for _, w := range witness {
		fmt.Fprintf(&text, "%s: %v %s\n", w.Fact, w.Value, w.Unit)
	}
	f := document.Parse("witness", []byte(text.String()))
	found := b.ReadFindings(f, f.Root, "")
	if err := f.Problems().Err(); err != nil {
		t.Fatalf("%v\n%s", err, text.String())
	}
	return found
}

func written(b *engine.Rulebook, s *engine.State) string {
	var words []string
	for slot, f := range b.Facts {
		words = append(words, f.Name+"="+s.Show(slot, quantity.Millimetre))
	}
	return strings.Join(words, " ")
}
