package audit

import (
	"slices"

	"boremend/engine"
)

// passes is how often every fact is looked at for its most ordinary value.
const passes = 3

// ordinary finds the most ordinary value of every asked fact: the one about
// which the rules have least to say. It begins with each fact by itself and then
// looks at each among the others, as long as all of them can be together.
func ordinary(book *engine.Rulebook) []float64 {
	values := make([]float64, len(book.Facts))
	s, floors := book.NewState(), book.Floors()
	for slot, f := range book.Facts {
		if !f.WorkedOut() {
			values[slot] = quietest(book, s, slot, nil)
			s.Unset(slot)
		}
	}
	for slot, f := range book.Facts {
		if !f.WorkedOut() {
			s.Put(slot, values[slot])
		}
	}
	s.Evaluate()
	for range passes {
		for slot, f := range book.Facts {
			if !f.WorkedOut() {
				values[slot] = quietest(book, s, slot, floors)
				s.Set(slot, values[slot])
			}
		}
	}
	return values
}

// quietest finds the value of a fact about which the rules have least to say. Of
// words the first such counts, of numbers one in the middle; a value that the
// fact has and that is no worse stays.
func quietest(book *engine.Rulebook, s *engine.State, slot int, floors []engine.Floor) float64 {
	now, known := s.Value(slot)
	least, best := 0.0, []float64(nil)
	for _, v := range stops(book, slot) {
		s.Set(slot, v)
		said := saidOf(book, s)
		if !s.PossibleAsPut(floors) {
			said += impossible
		}
		switch {
		case best == nil || said < least:
			least, best = said, []float64{v}
		case said == least:
			best = append(best, v)
		}
	}
	switch {
	case known && slices.Contains(best, now):
		return now
	case book.Facts[slot].Sort == engine.Number:
		return best[len(best)/2]
	}
	return best[0]
}

// impossible weighs more than anything that rules can say.
const impossible = 1e6

// stops lists values of a fact that a person would name: every word, and round
// numbers over the range.
func stops(book *engine.Rulebook, slot int) []float64 {
	f := book.Facts[slot]
	if f.Sort != engine.Number {
		return book.Probes(slot, 0, 0, 0)
	}
	const parts = 12
	var values []float64
	for i := 1; i < parts; i++ {
		v := whole(f, roundTo(between(f.Low, f.High, float64(i)/parts), 2))
		if !slices.Contains(values, v) {
			values = append(values, v)
		}
	}
	return values
}

// saidOf weighs what the rules say of a state: what rules out, then what
// demands, then the points against and for.
func saidOf(book *engine.Rulebook, s *engine.State) (said float64) {
	const ruledOut, demanded = 10, 5
	for i, r := range book.Rules {
		if s.Outcome(i) != engine.Holds {
			continue
		}
		switch r.Effect {
		case engine.RuleOut:
			said += ruledOut * float64(len(r.For))
		case engine.Demand, engine.Caution:
			said += demanded
		case engine.Lean:
			said += max(r.Points, -r.Points)
		}
	}
	return said
}
