package audit

import (
	"math"
	"slices"

	"boremend/engine"
)

// show takes away every fact of a joint without which the question is still met,
// and rounds what is left.
func (s *survey) show(q engine.Question, found engine.Findings) []Shown {
	needed := s.needed(q, found)
	for i := range needed {
		s.round(q, needed, i)
	}
	return shown(s.book, needed, s.options.Units)
}

// holds evaluates a question afresh.
func (s *survey) holds(q engine.Question, found engine.Findings) bool {
	s.state.Load(found)
	return s.state.Possible() && q.Met(s.state)
}

// needed drops the facts that a joint does not need, later ones first, since the
// first are the ones that everybody knows.
func (s *survey) needed(q engine.Question, found engine.Findings) engine.Findings {
	needed := slices.Clone(found)
	for i := len(needed) - 1; i >= 0; i-- {
		if less := slices.Delete(slices.Clone(needed), i, i+1); s.holds(q, less) {
			needed = less
		}
	}
	return needed
}

// witnessDigits is how finely a value of a witness is written.
const witnessDigits = 6

// round writes a number of a joint with as few digits as it can have.
func (s *survey) round(q engine.Question, found engine.Findings, i int) {
	f := s.book.Facts[found[i].Fact]
	exact := found[i].Value
	if f.Sort != engine.Number || exact == 0 {
		return
	}
	for digits := 1; digits <= witnessDigits; digits++ {
		unit := math.Pow10(int(math.Floor(math.Log10(math.Abs(exact)))) + 1 - digits)
		for _, units := range [3]float64{math.Round(exact / unit), math.Floor(exact / unit), math.Ceil(exact / unit)} {
			v := units * unit
			if unit < 1 {
				v = units / math.Round(1/unit) // free of the dust of binary fractions
			}
			if found[i].Value = v; f.Takes(v) && s.holds(q, found) {
				return
			}
		}
	}
	found[i].Value = exact
}
