package audit_test

import (
	"context"
	"math"
	"testing"

	"pgregory.net/rapid"

	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/quantity"
	"boremend/rules"
)

func houseRules(t testing.TB) *engine.Rulebook {
	t.Helper()
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	return book
}

// TestDrawsCanBe asks of every draw: inside the ranges, whole where it counts
// something, without contradiction, worked out as from the start, and the same
// from any other sampler.
func TestDrawsCanBe(t *testing.T) {
	for name, book := range map[string]*engine.Rulebook{"house": houseRules(t), "ladders": loadText(t, ladders)} {
		t.Run(name, func(t *testing.T) {
			fresh := book.NewState()
			one, other := audit.NewSampler(book, 3), audit.NewSampler(book, 3)
			rapid.Check(t, func(t *rapid.T) {
				number := rapid.IntRange(0, 1<<40).Draw(t, "number")
				one.Draw(number)
				found := one.State.Findings()
				for _, f := range found {
					fact := book.Facts[f.Fact]
					if fact.Ranged && (f.Value < fact.Low || f.Value > fact.High) || fact.Counted() && f.Value != math.Trunc(f.Value) {
						t.Fatalf("%s is %v", fact.Name, f.Value)
					}
				}
				book.CheckTogether(found, quantity.Millimetre, func(_ *engine.Fact, says string) { t.Fatal(says) })
				other.Draw(number + 1)
				other.Draw(number)
				fresh.Load(found)
				for slot, f := range book.Facts {
					v, known := one.State.Value(slot)
					if w, also := fresh.Value(slot); known != also || known && v != w {
						t.Fatalf("%s is %v (known %t) in the draw and %v (known %t) from the start", f.Name, v, known, w, also)
					}
					if w, also := other.State.Value(slot); known != also || known && v != w {
						t.Fatalf("%s is %v in one sampler and %v in another", f.Name, v, w)
					}
				}
				if one.State.Decide() != fresh.Decide() {
					t.Fatal("the draw decides otherwise than the same facts from the start")
				}
			})
		})
	}
}

// TestDrawsMeetThresholds looks for draws exactly at, just below and just above a
// threshold that a fact meets directly, and close to both sides of one that it
// meets only through a worked-out fact.
func TestDrawsMeetThresholds(t *testing.T) {
	book := loadText(t, ladders)
	s := audit.NewSampler(book, 1)
	helpers, over := book.Fact("helpers"), book.Fact("over")
	const threshold, near = 50, 1
	seen := map[string]bool{}
	for number := range 4000 {
		s.Draw(number)
		if v, known := s.State.Value(helpers); known && (v == 0 || v == 1) {
			seen[map[float64]string{0: "below one helper", 1: "one helper"}[v]] = true
		}
		switch v, known := s.State.Value(over); {
		case !known:
		case v < threshold && v > threshold-near:
			seen["just out of reach"] = true
		case v >= threshold && v < threshold+near:
			seen["just in reach"] = true
		}
	}
	for _, what := range []string{"below one helper", "one helper", "just out of reach", "just in reach"} {
		if !seen[what] {
			t.Errorf("no draw is %s", what)
		}
	}
}

// TestEveryHouseRuleIsMet asks that draws of the house rulebook make every rule
// hold and every rule with a condition fail.
func TestEveryHouseRuleIsMet(t *testing.T) {
	book := houseRules(t)
	s := audit.NewSampler(book, 1)
	holds, fails := make([]bool, len(book.Rules)), make([]bool, len(book.Rules))
	for number := range 20_000 {
		s.Draw(number)
		for i := range book.Rules {
			holds[i] = holds[i] || s.State.Outcome(i) == engine.Holds
			fails[i] = fails[i] || s.State.Outcome(i) == engine.Fails
		}
	}
	for i, r := range book.Rules {
		if !holds[i] || !fails[i] && r.If != "true" {
			t.Errorf("%s: holds %t, fails %t", r.Name, holds[i], fails[i])
		}
	}
}

// TestDrawingNeedsNoMemory asks that a sampler at work allocates nothing. (A sheet
// of the catalogue that refuses writes down why; this rulebook calls none.)
func TestDrawingNeedsNoMemory(t *testing.T) {
	s := audit.NewSampler(loadText(t, ladders), 1)
	number := 0
	if n := testing.AllocsPerRun(2000, func() {
		s.Draw(number)
		s.State.Decide()
		number++
	}); n != 0 {
		t.Errorf("%v allocations a draw", n)
	}
}

// TestOutcomesOnAnyCores compares the counts on one core and on several.
func TestOutcomesOnAnyCores(t *testing.T) {
	book := loadText(t, ladders)
	do := func() any {
		counts, done := audit.Outcomes(context.Background(), book, 7500, 5, nil)
		return []any{counts, done}
	}
	if one, three := onCores(t, 1, do), onCores(t, 3, do); one != three {
		t.Errorf("one core gives\n%s\nthree give\n%s", one, three)
	}
}

// TestStoppedDrawsAreWhole ends the work early: what is returned is what the first
// draws give, no more and no less.
func TestStoppedDrawsAreWhole(t *testing.T) {
	book := loadText(t, ladders)
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	const asked = 400_000
	counts, done := audit.Outcomes(ctx, book, asked, 5, func(done, _ int) {
		if done >= 3000 {
			stop()
		}
	})
	if done < 3000 || done >= asked {
		t.Fatalf("%d of %d drawn", done, asked)
	}
	want, _ := audit.Outcomes(context.Background(), book, done, 5, nil)
	for m := range want {
		if counts[m] != want[m] {
			t.Errorf("%s: %d of the first %d draws, want %d", book.Methods[m].Name, counts[m], done, want[m])
		}
	}
}
