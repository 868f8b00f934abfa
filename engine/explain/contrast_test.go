package explain_test

import (
	"math/rand/v2"
	"testing"

	"boremend/engine"
	"boremend/engine/explain"
	"boremend/engine/quantity"
)

// TestSufficient completes every printed set of facts at random, 2,000 times
// (200 in a quick run): the advice must never change. It also checks that what
// is said to let the other method win does so.
func TestSufficient(t *testing.T) {
	book := house(t)
	s := book.NewState()
	forced, toward := 0, 0
	completions := 2000
	if quick() {
		completions = 200
	}
	eachCase(t, book, func(t *testing.T, found engine.Findings) {
		s.Load(found)
		was := s.Decide()
		not := (was.Method + 1) % len(book.Methods)
		if was.RunnerUp >= 0 {
			not = was.RunnerUp
		}
		c := explain.New(book, found, quantity.Millimetre).Contrast(book.Explain("", found, quantity.Millimetre), was.Method, not)
		for _, tip := range c.Toward {
			toward++
			s.Load(found)
			for _, shift := range tip.Shifts {
				slot := book.Fact(shift.Fact)
				s.Set(slot, typed(t, book.Facts[slot], shift.ToText))
			}
			if s.Decide().Method != not {
				t.Errorf("%v does not let %s win", tip.Shifts, c.Not)
			}
		}
		if c.Forced {
			forced++
		}
		// Unknown facts that must stay unknown are not drawn.
		undrawn := map[string]bool{}
		for _, name := range c.Unknown {
			undrawn[name] = true
		}
		random := rand.New(rand.NewPCG(6, 1))
		kept := engine.Findings{}
		for _, f := range append(c.Sufficient, c.Provided...) {
			slot := book.Fact(f.Fact)
			kept = kept.With(engine.Finding{Fact: slot, Value: value(t, book.Facts[slot], f.Value)})
		}
		s.Load(kept)
		for range completions {
			for slot, f := range book.Facts {
				if f.WorkedOut() || has(kept, slot) || undrawn[f.Name] {
					continue
				}
				s.Set(slot, drawn(random, f.Extent(), random.IntN(8) == 0))
			}
			if s.Decide().Method != was.Method {
				t.Fatalf("%v %v do not force the advice", c.Sufficient, c.Provided)
			}
		}
	})
	t.Logf("forced %d, changes toward the other method %d", forced, toward)
	if forced == 0 || toward == 0 {
		t.Error("nothing was put to the test")
	}
}

func has(found engine.Findings, slot int) bool {
	for _, f := range found {
		if f.Fact == slot {
			return true
		}
	}
	return false
}

func BenchmarkContrast(b *testing.B) {
	book := house(b)
	found := typical(b, book)
	advice := book.Explain("", found, quantity.Millimetre)
	for b.Loop() {
		explain.New(book, found, quantity.Millimetre).Contrast(advice, book.Method("weld_and_bore"), book.Method("sleeve_bolt_capture"))
	}
}
