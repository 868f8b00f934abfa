package audit_test

import (
	"context"
	"slices"
	"strings"
	"testing"

	"boremend/engine"
	"boremend/engine/audit"
)

func gapsOf(book *engine.Rulebook, draws, list int) audit.Gaps {
	return audit.FindGaps(context.Background(), book, audit.GapOptions{Draws: draws, Seed: 1, List: list}, nil)
}

// TestKnownGaps finds what ladders was written to lack, with the simplest example
// of each.
func TestKnownGaps(t *testing.T) {
	g := gapsOf(loadText(t, ladders), 20_000, 20)
	want := map[string]string{
		"nothing_left out-of-reach,no-stool,no-ladder":  "shelf, arm, stool=no, ladder=no",
		"nothing_left out-of-reach,bad-floor":           "shelf, arm, floor=wet",
		"tie on_stool,on_ladder":                        "stool=yes, ladder=yes, floor=sloping",
		"all_open floor":                                "",
		"all_open shelf":                                "",
		"all_open arm":                                  "",
		"all_open stool":                                "",
		"all_open ladder":                               "",
		"nothing_left out-of-reach,no-ladder,bad-floor": "none",
	}
	got := map[string]string{}
	for _, kind := range g.Kinds {
		sum := kind.DrawsLeftOff
		for _, group := range kind.Groups {
			sum += group.Count
			key := kind.Kind + " " + strings.Join(slices.Concat(group.Rules, group.Methods, group.Unknown), ",")
			var facts []string
			for _, f := range group.Example.Facts {
				if f.Unit == "" && (kind.Kind != audit.AllOpen) {
					facts = append(facts, f.Fact+"="+f.Text)
				} else if kind.Kind != audit.AllOpen {
					facts = append(facts, f.Fact)
				}
			}
			got[key] = strings.Join(facts, ", ")
		}
		if sum != kind.Count {
			t.Errorf("%s: the groups have %d draws, the kind %d", kind.Kind, sum, kind.Count)
		}
	}
	for key, facts := range want {
		found, met := got[key]
		switch {
		case facts == "none" && met:
			t.Errorf("%q is more than what is responsible", key)
		case facts != "none" && !met:
			t.Errorf("%q was not found", key)
		case facts != "none" && found != facts:
			t.Errorf("%q: the example is %q, want %q", key, found, facts)
		}
		delete(got, key)
	}
	for key := range got {
		if !strings.HasPrefix(key, "all_open ") {
			t.Errorf("%q is no gap of this rulebook", key)
		}
	}
	if g.Sent == 0 {
		t.Error("no draw was sent to the fallback by a rule")
	}
}

// TestGapExamplesHold types every example of the house rulebook in and evaluates
// it: the verdicts must be those told, and make the gap.
func TestGapExamplesHold(t *testing.T) {
	book := houseRules(t)
	s := book.NewState()
	groups := 0
	for _, kind := range gapsOf(book, 20_000, 6).Kinds {
		for _, group := range kind.Groups {
			groups++
			s.Load(reread(t, book, group.Example.Facts))
			stands, open := 0, 0
			for m, method := range book.Methods {
				v, points := s.Verdict(m)
				if m != book.Fallback && v.Stands() {
					stands++
				}
				if m != book.Fallback && v == engine.Undecided {
					open++
				}
				for _, told := range group.Example.Methods {
					if told.Method == method.Name && (told.Verdict != v.String() || told.Points != points) {
						t.Errorf("%v: %s is told as %s with %v, and is %s with %v", group.Rules, told.Method, told.Verdict, told.Points, v, points)
					}
				}
			}
			d := s.Decide()
			if is := map[string]bool{audit.NothingLeft: stands == 0 && open == 0, audit.AllOpen: stands == 0 && open > 0, audit.Tie: d.Tie}; !is[kind.Kind] {
				t.Errorf("%s %v %v %v: the example does not show it", kind.Kind, group.Rules, group.Methods, group.Unknown)
			}
			for _, name := range group.Rules {
				if outcome := s.Outcome(book.Rule(name)); outcome == engine.Fails {
					t.Errorf("%s is said to be responsible and fails", name)
				}
			}
		}
	}
	if groups < 10 {
		t.Errorf("only %d groups were met", groups)
	}
}

// TestNoGaps asks for silence where there is nothing to find: by hand always goes.
func TestNoGaps(t *testing.T) {
	sound := strings.Replace(ladders, "if: over < limit.reach_least,", "if: over < limit.reach_least and over > limit.reach_least, if_unknown: silent,", 1)
	for _, kind := range gapsOf(loadText(t, sound), 10_000, 5).Kinds {
		if kind.Count > 0 {
			t.Errorf("%d draws are said to be %s", kind.Count, kind.Kind)
		}
	}
}

// TestGapsOnAnyCores compares the whole answer on one core and on several.
func TestGapsOnAnyCores(t *testing.T) {
	book := houseRules(t)
	do := func() any { return gapsOf(book, 6000, 2) }
	if one, two := onCores(t, 1, do), onCores(t, 2, do); one != two {
		t.Errorf("one core gives\n%s\ntwo give\n%s", one, two)
	}
}

// TestGapsStopped returns what was found until the context ended, and says so.
func TestGapsStopped(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	g := audit.FindGaps(ctx, loadText(t, ladders), audit.GapOptions{Draws: 400_000, Seed: 1, List: 3}, func(done, _ int) {
		if done >= 2000 {
			stop()
		}
	})
	if !g.Stopped || g.Done < 2000 || g.Done >= g.Draws || g.Kinds[0].Count == 0 {
		t.Errorf("stopped %t after %d with %d found", g.Stopped, g.Done, g.Kinds[0].Count)
	}
}
