package engine_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"boremend/engine"
)

// TestOutlookBoundsEveryState draws extents for some facts and values within
// them: the method advised must always be among the winners of the outlook,
// whatever the catalogue function promises about its course.
func TestOutlookBoundsEveryState(t *testing.T) {
	rising, bounded := holdOf, holdOf
	rising.Params = slices.Clone(holdOf.Params)
	rising.Params[1].Trend = engine.Rises
	bounded.Over = func(low, high []engine.Argument) (least, most float64, ok bool) {
		return low[1].Number, high[1].Number, low[0].Word == "brick"
	}
	for name, f := range map[string]engine.Function{"no promise": holdOf, "a trend": rising, "bounds": bounded} {
		t.Run(name, func(t *testing.T) {
			b, err := engine.Load(folder(small), "shelf", []engine.Function{f})
			if err != nil {
				t.Fatal(err)
			}
			random := rand.New(rand.NewPCG(1, 1))
			narrowed := 0
			for range 3000 {
				narrowed += boundsHold(t, b, random)
			}
			if narrowed == 0 {
				t.Error("no outlook ever excluded a method")
			}
		})
	}
}

// boundsHold tries one outlook and counts the methods that it excludes.
func boundsHold(t *testing.T, b *engine.Rulebook, random *rand.Rand) (excluded int) {
	t.Helper()
	s := b.NewState()
	extents := map[int]engine.Extent{}
	for slot, f := range b.Facts {
		if f.WorkedOut() || random.IntN(4) == 0 {
			continue
		}
		e := f.Extent()
		if len(e.Values) > 0 {
			e.Values = e.Values[:1+random.IntN(len(e.Values))]
		} else {
			from, to := e.Low+(e.High-e.Low)*random.Float64(), e.Low+(e.High-e.Low)*random.Float64()
			e = engine.Extent{Low: min(from, to), High: max(from, to)}
		}
		extents[slot] = e
	}
	o := s.Outlook()
	for slot, e := range extents {
		o.Let(slot, e)
	}
	winners := o.Winners()
	for range 20 {
		said := ""
		for slot, e := range extents {
			v := e.Low + (e.High-e.Low)*random.Float64()
			if len(e.Values) > 0 {
				v = e.Values[random.IntN(len(e.Values))]
			}
			s.Set(slot, v)
			said += fmt.Sprint(b.Facts[slot].Name, "=", v, " ")
		}
		if m := s.Decide().Method; !slices.Contains(winners, m) {
			t.Fatalf("%s is advised for %sand was excluded", b.Methods[m].Name, said)
		}
	}
	return len(b.Methods) - len(winners)
}
