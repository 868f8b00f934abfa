package engine_test

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"boremend/engine"
)

// TestAgrees makes single edits of a rulebook in which some change nothing.
func TestAgrees(t *testing.T) {
	const head = `
-- rulebook.yaml --
{title: T, edition: "1", narrow: 1, fallback: ask}
-- limits.yaml --
- {limit: low, is: 10 mm, means: m, source: s}
- {limit: beyond, is: 60 mm, means: outside the range, source: s}
-- facts.yaml --
- {fact: wall, means: m, kind: length, range: [0 mm, 50 mm], ask: a, how: h}
- {fact: count, means: m, kind: count, range: [0, 9], ask: a, how: h}
- {fact: metal, means: m, kind: choice, choices: [steel, iron, brass], ask: a, how: h}
- {fact: wet, means: m, kind: yes_no, ask: a, how: h}
- {fact: thin, means: m, kind: yes_no, from: wall < limit.low, assume: no}
-- methods.yaml --
- {method: weld, title: W, plain: p, groups: [hot, all_hot], start: 0}
- {method: ask, title: A, plain: p, start: 0}
-- rules/all.yaml --
- {rule: r, for: [%s], effect: lean, points: 1, if: '%s', if_unknown: %s, because: b, source: s, trust: usual}
`
	for _, test := range []struct{ name, methods, is, unknown, key, value string }{
		{"whole numbers", "weld", "count < 2", "open", "if", "count <= 1"},
		{"a threshold outside the range", "weld", "wall < limit.low or wall > limit.beyond", "open", "if", "wall < limit.low"},
		{"a part that follows from another", "weld", "wall < limit.low and wall <= limit.low", "open", "if", "wall < limit.low"},
		{"a part that follows through a worked-out fact", "weld", "wall < limit.low or thin", "open", "if", "wall < limit.low"},
		{"words and their opposite", "weld", `metal in ["steel", "iron"]`, "open", "if", `metal != "brass"`},
		{"the other order", "weld", "wet == yes or count > 3", "open", "if", "count > 3 or wet == yes"},
		{"a word for a method that another word covers", "hot, weld", "wet == yes", "open", "for", "hot"},
		{"never unknown", "weld", "thin", "open", "if_unknown", "silent"},
		{"points of a rule that never holds", "weld", "thin and wall > limit.low", "open", "points", "7"},
	} {
		t.Run(test.name, func(t *testing.T) {
			book, err := engine.Load(folder(fmt.Sprintf(head, test.methods, test.is, test.unknown)), "shelf", nil)
			if err != nil {
				t.Fatal(err)
			}
			e := engine.Edit{Declares: "rule", Name: "r", Key: test.key, Value: test.value}
			varied, err := book.Vary(e)
			if err != nil {
				t.Fatal(err)
			}
			if !book.Agrees(varied, 1000) {
				t.Error("it was not shown to change nothing")
			}
			chance := rand.New(rand.NewPCG(3, 3))
			for range 1000 {
				found := anyFindings(book, chance)
				if diff := cmp.Diff(said(book, found), said(varied, found)); diff != "" {
					t.Fatal(diff)
				}
			}
		})
	}
}

// TestAgreesIsCertain draws rulebooks and makes all small edits of each. Where
// an edit is shown to change nothing, thousands of bores say so as well: at the
// thresholds, beside them, at the ends of the ranges, with facts unknown.
func TestAgreesIsCertain(t *testing.T) {
	chance := rand.New(rand.NewPCG(4, 4))
	shown := map[engine.EditKind]int{}
	for range 30 {
		archive := drawnRulebook(chance)
		book, err := engine.Load(folder(archive), "drawn", nil)
		if err != nil {
			t.Fatalf("%v\n%s", err, archive)
		}
		for _, e := range book.Edits() {
			varied, err := book.Vary(e)
			if err != nil || !book.Agrees(varied, 300) {
				continue
			}
			shown[e.Kind]++
			for range 100 {
				found := anyFindings(book, chance)
				if diff := cmp.Diff(said(book, found), said(varied, found)); diff != "" {
					t.Fatalf("%s %s %q is shown to change nothing: %s\n%s", e.Declares, e.Name, e.Value, diff, archive)
				}
			}
		}
	}
	for _, kind := range []engine.EditKind{engine.NudgeThreshold, engine.TurnComparison, engine.DropPart, engine.SwapAndOr, engine.ChangeWords, engine.ChangeUnknown, engine.ChangeEffect, engine.DropRule} {
		if shown[kind] == 0 {
			t.Errorf("no edit of the kind %q was shown to change nothing: %v", kind, shown)
		}
	}
}

// drawnRulebook writes a rulebook of a few facts and thresholds close together,
// in which many comparisons follow from others.
func drawnRulebook(chance *rand.Rand) string {
	pick := func(words ...string) string { return words[chance.IntN(len(words))] }
	var condition func(depth int, flags []string) string
	condition = func(depth int, flags []string) string {
		if depth == 0 || chance.IntN(3) == 0 {
			switch chance.IntN(6) {
			case 0:
				return pick("long", "wide", "both") + " " + pick("<", "<=", ">", ">=", "==", "!=") + " limit." + pick("none", "some", "most", "beyond")
			case 1:
				return "count " + pick("<", "<=", ">", ">=", "==", "!=") + " " + pick("0", "1", "2", "3")
			case 2:
				return `metal ` + pick("==", "!=") + ` "` + pick("steel", "iron", "brass") + `"`
			case 3:
				return `metal in ["` + pick("steel", "iron") + `", "` + pick("brass", "iron", "steel") + `"]`
			case 4:
				return pick("long < wide", "wide >= long", "long + wide > limit.most", "wet == yes", "wet != yes")
			}
			return pick(flags...)
		}
		a, b := condition(depth-1, flags), condition(depth-1, flags)
		return pick("("+a+" and "+b+")", "("+a+" or "+b+")", "not ("+a+")")
	}
	var out strings.Builder
	out.WriteString(`
-- rulebook.yaml --
{title: T, edition: "1", narrow: 1, fallback: ask}
-- limits.yaml --
- {limit: none, is: 0 mm, means: m, source: s}
- {limit: some, is: 5 mm, means: m, source: s}
- {limit: most, is: 10 mm, means: m, source: s}
- {limit: beyond, is: 12 mm, means: m, source: s}
-- facts.yaml --
- {fact: long, means: m, kind: length, range: [0 mm, 10 mm], ask: a, how: h, give_or_take: 1 mm}
- {fact: wide, means: m, kind: length, range: [0 mm, 10 mm], ask: a, how: h` + pick("", ", assume: long", ", assume: limit.some") + `}
- {fact: count, means: m, kind: count, range: [0, 3], ask: a, how: h}
- {fact: metal, means: m, kind: choice, choices: [steel, iron, brass], ask: a, how: h}
- {fact: wet, means: m, kind: yes_no, ask: a, how: h}
- {fact: both, means: m, kind: length, from: long + wide}
`)
	flags := []string{"wet"}
	for _, name := range []string{"first", "second"} {
		fmt.Fprintf(&out, "- {fact: %s, means: m, kind: yes_no, from: '%s'", name, condition(2, flags))
		if chance.IntN(2) == 0 {
			fmt.Fprintf(&out, ", assume: '%s'", pick("yes", "no", condition(1, flags)))
		}
		out.WriteString("}\n")
		flags = append(flags, name)
	}
	out.WriteString(`-- methods.yaml --
- {method: weld, title: W, plain: p, groups: [hot], start: 0}
- {method: sleeve, title: S, plain: p, groups: [cold], start: 1}
- {method: ask, title: A, plain: p, start: -1}
-- rules/all.yaml --
`)
	for i := range 3 {
		effect := pick("rule_out", "demand", "caution", "lean, points: 2")
		fmt.Fprintf(&out, "- {rule: r%d, for: [%s], effect: %s, if: '%s', if_unknown: %s, because: b, source: s, trust: usual}\n",
			i, pick("weld", "hot, weld", "cold, hot", "all"), effect, condition(3, flags), pick("open", "silent", "holds"))
	}
	fmt.Fprintf(&out, "-- cautions.yaml --\n- {caution: k, danger: note, for: [%s], if: '%s', if_unknown: %s, text: t, refs: [{ref: r}]}\n",
		pick("all", "hot, weld", "cold, weld"), condition(2, flags), pick("open", "holds"))
	return out.String()
}
