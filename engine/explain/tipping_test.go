package explain_test

import (
	"math"
	"testing"

	"boremend/engine"
	"boremend/engine/explain"
	"boremend/engine/quantity"
)

// gridSteps is how finely each number's range is searched by brute force.
const gridSteps = 1500

// TestTippingPoints re-evaluates every tipping point of every shipped bore, as
// printed and as computed, and searches a fine grid for a nearer one.
func TestTippingPoints(t *testing.T) {
	book := house(t)
	s := book.NewState()
	eachBore(t, book, func(t *testing.T, found engine.Findings) {
		nearest := map[string]float64{}
		words := map[string]int{}
		for _, tip := range explain.New(book, found, quantity.Inch).TippingPoints() {
			shift := tip.Shifts[0]
			slot := book.Fact(shift.Fact)
			s.Load(found)
			now, _ := s.Value(slot)
			for _, v := range []float64{value(t, book.Facts[slot], shift.To), typed(t, book.Facts[slot], shift.ToText)} {
				s.Load(found)
				s.Set(slot, v)
				if got := book.Methods[s.Decide().Method].Name; got != tip.Method {
					t.Errorf("%s at %v leads to %s, not to %s", shift.Fact, v, got, tip.Method)
				}
				nearest[shift.Fact] = math.Abs(v - now)
			}
			nearest[shift.Fact] = math.Abs(value(t, book.Facts[slot], shift.To) - now)
			words[shift.Fact]++
		}
		s.Load(found)
		was := s.Decide().Method
		for slot, f := range book.Facts {
			if f.WorkedOut() {
				continue
			}
			s.Load(found)
			now, known := s.Value(slot)
			limit, tips := nearest[f.Name]
			if f.Sort != engine.Number {
				turning := 0
				for _, v := range book.Probes(slot, 0, 0, 0) {
					if s.Set(slot, v); s.Decide().Method != was {
						turning++
					}
				}
				if turning != words[f.Name] {
					t.Errorf("%s has %d words that turn the advice; %d are listed", f.Name, turning, words[f.Name])
				}
				continue
			}
			for i := range gridSteps + 1 {
				v := f.Low + (f.High-f.Low)*float64(i)/gridSteps
				if f.Kind == quantity.Count && v != math.Trunc(v) {
					continue
				}
				s.Set(slot, v)
				if s.Decide().Method == was {
					continue
				}
				if !tips || known && math.Abs(v-now) < limit*(1-1e-9) {
					t.Errorf("%s at %g turns the advice, nearer than %g from %g (listed: %t)", f.Name, v, limit, now, tips)
					break
				}
			}
		}
	})
}

// TestPairs re-evaluates the pairs: together they turn the advice, and neither
// does alone.
func TestPairs(t *testing.T) {
	book := house(t)
	s := book.NewState()
	seen := 0
	eachCase(t, book, func(t *testing.T, found engine.Findings) {
		s.Load(found)
		was := s.Decide().Method
		for _, pair := range explain.New(book, found, quantity.Millimetre).Pairs() {
			seen++
			s.Load(found)
			for _, shift := range pair.Shifts {
				slot := book.Fact(shift.Fact)
				s.Set(slot, typed(t, book.Facts[slot], shift.ToText))
				if len(pair.Shifts) == 2 && shift == pair.Shifts[0] && s.Decide().Method != was {
					t.Errorf("%s turns the advice alone", shift.Fact)
				}
			}
			if got := book.Methods[s.Decide().Method].Name; got != pair.Method || s.Decide().Method == was {
				t.Errorf("%s and %s lead to %s, not to %s", pair.Shifts[0].Fact, pair.Shifts[1].Fact, got, pair.Method)
			}
		}
	})
	if seen == 0 {
		t.Error("no shipped bore has a pair")
	}
}

// value reads a value as JSON has it.
func value(t *testing.T, f *engine.Fact, v any) float64 {
	t.Helper()
	switch v := v.(type) {
	case float64:
		return v
	case string:
		return wordValue(t, f, v)
	}
	t.Fatalf("%s has the value %v", f.Name, v)
	return 0
}

// typed reads a value as people are shown it.
func typed(t *testing.T, f *engine.Fact, text string) float64 {
	t.Helper()
	if f.Sort != engine.Number {
		return wordValue(t, f, text)
	}
	reading, err := quantity.Parse(text, f.Kind, "")
	if err != nil {
		t.Fatal(err)
	}
	return reading.Value
}

func wordValue(t *testing.T, f *engine.Fact, word string) float64 {
	t.Helper()
	n := 2
	if f.Sort == engine.Choice {
		n = len(f.Choices)
	}
	for i := range n {
		if v := float64(i); f.Show(v, quantity.Millimetre) == word || f.PlainValue(v) == word {
			return v
		}
	}
	t.Fatalf("%s cannot be %q", f.Name, word)
	return 0
}

func BenchmarkTipping(b *testing.B) {
	book := house(b)
	found := typical(b, book)
	for b.Loop() {
		explain.New(book, found, quantity.Millimetre).TippingPoints()
	}
}

func BenchmarkPairs(b *testing.B) {
	book := house(b)
	found := typical(b, book)
	for b.Loop() {
		explain.New(book, found, quantity.Millimetre).Pairs()
	}
}

// BenchmarkEvaluate is the yardstick: one full evaluation.
func BenchmarkEvaluate(b *testing.B) {
	book := house(b)
	found := typical(b, book)
	s := book.NewState()
	for b.Loop() {
		s.Load(found)
		s.Decide()
	}
}
