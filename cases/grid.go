package cases

import (
	"fmt"
	"slices"
)

// Grid is the readings of a bore laid out by depth and clock angle: Values holds
// all clock angles at the first depth, then all at the next.
type Grid struct {
	DepthsMM, ClocksDeg, Values []float64
}

// Diameters lays the diameters of the bore out.
func (b Bore) Diameters() (Grid, error) {
	return layOut(b.Readings, func(r Reading) float64 { return r.DiameterMM })
}

// Radii lays the radii from the true axis out.
func (b Bore) Radii() (Grid, error) {
	return layOut(b.Readings, func(r Reading) float64 { return r.RadiusMM })
}

// layOut arranges the readings for which value is not zero. It is an error when
// a place has no reading, or two. Without any reading the grid is empty.
func layOut(readings []Reading, value func(Reading) float64) (Grid, error) {
	var g Grid
	for _, r := range readings {
		if value(r) == 0 {
			continue
		}
		g.DepthsMM, g.ClocksDeg = add(g.DepthsMM, r.DepthMM), add(g.ClocksDeg, r.ClockDeg)
	}
	for _, depth := range g.DepthsMM {
		for _, clock := range g.ClocksDeg {
			found := slices.DeleteFunc(slices.Clone(readings), func(r Reading) bool {
				return value(r) == 0 || r.DepthMM != depth || r.ClockDeg != clock
			})
			if len(found) != 1 {
				return Grid{}, fmt.Errorf("at %g mm depth and %g degrees there are %d readings; every depth needs one at every clock angle", depth, clock, len(found))
			}
			g.Values = append(g.Values, value(found[0]))
		}
	}
	return g, nil
}

// add puts a number in its place in an ascending list, once.
func add(list []float64, v float64) []float64 {
	i, found := slices.BinarySearch(list, v)
	if found {
		return list
	}
	return slices.Insert(list, i, v)
}
