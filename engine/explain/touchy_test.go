package explain_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"boremend/engine"
	"boremend/engine/quantity"
)

// TestNotTouchyIsAPromise draws every fact within its give-or-take, 10,000
// times a bore (500 in a quick run), and at the ends of it every other time. Where
// the advice is called not touchy none of the draws may overturn it.
func TestNotTouchyIsAPromise(t *testing.T) {
	book := house(t)
	s := book.NewState()
	promised, unsure, touchy, together := 0, 0, 0, 0
	draws := 10_000
	if quick() {
		draws = 500
	}
	eachBore(t, book, func(t *testing.T, found engine.Findings) {
		s.Load(found)
		was := s.Decide().Method
		says := s.Touchy(found)
		random := rand.New(rand.NewPCG(3, 4))
		overturned, drawing := false, slices.Clone(found)
		for i := range draws {
			for k, f := range found {
				if e, loose := book.Around(f); loose {
					drawing[k].Value = drawn(random, e, i%2 == 0)
				}
			}
			s.Load(drawing)
			if overturned = s.Decide().Method != was; overturned {
				break
			}
		}
		switch {
		case says.Unsure:
			unsure++
		case len(says.Facts) > 0:
			touchy++
			if says.Together {
				together++
			}
		default:
			promised++
			if overturned {
				t.Errorf("a draw overturns the advice")
			}
		}
	})
	t.Logf("not touchy %d, touchy %d (together %d), unsure %d", promised, touchy, together, unsure)
	if promised == 0 {
		t.Error("no promise was put to the test")
	}
}

func drawn(random *rand.Rand, e engine.Extent, ends bool) float64 {
	switch {
	case len(e.Values) > 0:
		return e.Values[random.IntN(len(e.Values))]
	case ends:
		return []float64{e.Low, e.High}[random.IntN(2)]
	}
	return e.Low + (e.High-e.Low)*random.Float64()
}

func BenchmarkTouchy(b *testing.B) {
	book := house(b)
	found := typical(b, book)
	s := book.NewState()
	s.Load(found)
	for b.Loop() {
		s.Touchy(found)
	}
}

func BenchmarkAdvise(b *testing.B) {
	book := house(b)
	found := typical(b, book)
	for b.Loop() {
		book.Advise("", found, quantity.Millimetre)
	}
}
