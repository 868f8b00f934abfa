package explain_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"boremend/engine"
)

// TestOutlookBoundsTheHouse widens some facts of every bore and draws within:
// the method advised must always be among the winners of the outlook.
func TestOutlookBoundsTheHouse(t *testing.T) {
	book := house(t)
	s := book.NewState()
	excluded := 0
	eachCase(t, book, func(t *testing.T, found engine.Findings) {
		random := rand.New(rand.NewPCG(4, 2))
		for range 30 {
			s.Load(found)
			o := s.Outlook()
			extents := map[int]engine.Extent{}
			for range 1 + random.IntN(6) {
				slot := random.IntN(len(book.Facts))
				if book.Facts[slot].WorkedOut() {
					continue
				}
				extents[slot] = book.Facts[slot].Extent()
				o.Let(slot, extents[slot])
			}
			winners := o.Winners()
			excluded += len(book.Methods) - len(winners)
			for range 30 {
				for slot, e := range extents {
					s.Set(slot, drawn(random, e, false))
				}
				if m := s.Decide().Method; !slices.Contains(winners, m) {
					t.Fatalf("%s is advised and was excluded", book.Methods[m].Name)
				}
			}
		}
	})
	if excluded == 0 {
		t.Error("no outlook ever excluded a method")
	}
}
