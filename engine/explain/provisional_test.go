package explain_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"boremend/engine"
)

// TestNotProvisionalIsAPromise draws the facts on which something still hangs
// over their whole ranges. Where an advice is called neither provisional nor
// unsure, no draw may change it or make a clear lead narrow.
func TestNotProvisionalIsAPromise(t *testing.T) {
	book := house(t)
	s := book.NewState()
	promised, provisional, unsure := 0, 0, 0
	draws := 2000
	if quick() {
		draws = 200
	}
	eachBore(t, book, func(t *testing.T, found engine.Findings) {
		random := rand.New(rand.NewPCG(5, 6))
		for _, left := range []engine.Findings{found, without(random, found)} {
			s.Load(left)
			was, open := s.Decide(), s.OpenFacts()
			switch says := s.Missing(); {
			case says.Provisional:
				provisional++
				continue
			case says.Unsure:
				unsure++
				continue
			}
			promised++
			extents := make([]engine.Extent, len(open))
			for i, slot := range open {
				extents[i] = s.Whole(slot)
			}
			for range draws {
				for i, slot := range open {
					s.Set(slot, drawn(random, extents[i], random.IntN(4) == 0))
				}
				if d := s.Decide(); d.Method != was.Method || d.Narrow && !was.Narrow {
					t.Fatalf("a draw changes the advice")
				}
			}
		}
	})
	t.Logf("not provisional %d, provisional %d, unsure %d", promised, provisional, unsure)
	if promised == 0 {
		t.Error("no promise was put to the test")
	}
}

// without leaves two facts out.
func without(random *rand.Rand, found engine.Findings) engine.Findings {
	left := slices.Clone(found)
	for range min(2, len(left)) {
		i := random.IntN(len(left))
		left = slices.Delete(left, i, i+1)
	}
	return left
}
