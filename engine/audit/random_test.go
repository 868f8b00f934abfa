package audit_test

import (
	"errors"
	"fmt"
	"strings"
	"testing/fstest"

	"pgregory.net/rapid"

	"boremend/engine"
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
- {fact: b, means: b, kind: length, range: [0 mm, 10 mm], ask: b, at_least: %s}
- {fact: g, means: g, kind: length, range: [0 mm, 10 mm], ask: g, assume: a + limit.l2}
- {fact: n, means: n, kind: count, range: [0, 3], ask: n}
- {fact: c, means: c, kind: choice, choices: [x, y, z], ask: c}
- {fact: p, means: p, kind: yes_no, ask: p}
- {fact: half, means: half, kind: length, from: a / 2}
- {fact: sum, means: sum, kind: length, from: a + b}
- {fact: less, means: less, kind: length, from: b - half}
- {fact: share, means: share, kind: ratio, from: a / b}
- {fact: either, means: either, kind: length, from: 'p ? a : b', assume: limit.l4}
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
		return rapid.SampledFrom([]string{"2 * a < b", "b > 2 * a", "share < 1", "share >= 0.5", "a - b > limit.l2", "a < 0.5 * b",
			"sum < a", "sum >= b", "b - half < limit.l0", "b < a / 2", "3 * b < 1.5 * a", "sum - a - b > limit.l0", "sum - a > limit.l10", "less < limit.l0", "less > b"}).Draw(t, "sum")
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
	least string  // the fact that b must reach
	facts []*tree // of f and h
	rules []*tree
	rest  []string // effect and the like, by rule
}

func drawRulebook(t *rapid.T) *randomRulebook {
	out := &randomRulebook{least: rapid.SampledFrom([]string{"half", "g", "either"}).Draw(t, "least"), facts: []*tree{drawTree(t, 2, []string{"p"}), drawTree(t, 2, []string{"p", "f == no"})}}
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
		"limits.yaml":   randomLimits, "facts.yaml": fmt.Sprintf(randomFacts, r.least, r.facts[0], r.facts[1]),
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
		values[name] = []float64{0, 1.1, 2, 3.3, 4, 5.7, 6, 7.1, 8, 9.3, 10}
	}
	values["g"] = []float64{0, 3.3, 6, 9.3}
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
