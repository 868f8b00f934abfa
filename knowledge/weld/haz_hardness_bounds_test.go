package weld_test

import (
	"testing"

	"boremend/knowledge/weld"

	"pgregory.net/rapid"
)

// span turns two joints of one steel into the ends of a span, welded alike.
func span(a, b weld.HAZHardnessInputs) (low, high weld.HAZHardnessInputs) {
	low, high = a, a
	ends := func(a, b float64, low, high *float64) { *low, *high = min(a, b), max(a, b) }
	ends(a.CarbonEquivalent, b.CarbonEquivalent, &low.CarbonEquivalent, &high.CarbonEquivalent)
	ends(a.WallMM, b.WallMM, &low.WallMM, &high.WallMM)
	ends(a.SiteMaxPreheatC, b.SiteMaxPreheatC, &low.SiteMaxPreheatC, &high.SiteMaxPreheatC)
	ends(a.AmbientC, b.AmbientC, &low.AmbientC, &high.AmbientC)
	return low, high
}

func within(t *rapid.T, low, high weld.HAZHardnessInputs) weld.HAZHardnessInputs {
	in := low
	draw := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
	in.CarbonEquivalent = draw("CE within", low.CarbonEquivalent, high.CarbonEquivalent)
	in.WallMM = draw("wall within", low.WallMM, high.WallMM)
	in.SiteMaxPreheatC = draw("site within", low.SiteMaxPreheatC, high.SiteMaxPreheatC)
	in.AmbientC = draw("ambient within", low.AmbientC, high.AmbientC)
	return in
}

// TestBoundsHoldTheHardness draws a span and joints inside it: every one must be
// answered, and with a hardness between the bounds.
func TestBoundsHoldTheHardness(t *testing.T) {
	told := 0
	rapid.Check(t, func(t *rapid.T) {
		a, b := anyJoint(t), anyJoint(t)
		b.Material = a.Material
		b.CarbonEquivalent = min(b.CarbonEquivalent, typicalCE[a.Material].most)
		low, high := span(a, b)
		least, most, ok := weld.HAZHardnessBounds(low, high)
		if !ok {
			return
		}
		told++
		for range 20 {
			in := within(t, low, high)
			hv := must(t, weld.HAZHardness, in).Hardness
			if hv < least || hv > most {
				t.Fatalf("%+v gives %g HV, outside %g to %g", in, hv, least, most)
			}
		}
	})
	if told == 0 {
		t.Error("no span had bounds")
	}
}

// TestBoundsCloseIn asks for bounds as narrow as the span, away from where method
// B begins.
func TestBoundsCloseIn(t *testing.T) {
	const share = 1e-6
	rapid.Check(t, func(t *rapid.T) {
		in := anyJoint(t)
		high := in
		high.CarbonEquivalent *= 1 + share
		high.WallMM *= 1 + share
		least, most, ok := weld.HAZHardnessBounds(in, high)
		from, err := weld.HAZHardness(in)
		to, err2 := weld.HAZHardness(high)
		if err != nil || err2 != nil || from.PreheatNeededC.Known != to.PreheatNeededC.Known {
			return
		}
		if !ok {
			t.Fatalf("%+v has no bounds", in)
		}
		if most-least > 0.1 {
			t.Fatalf("%+v: bounds %g to %g are %g HV apart", in, least, most, most-least)
		}
	})
}

// TestBoundsRefuse lists spans of which nothing can be said.
func TestBoundsRefuse(t *testing.T) {
	joint := weld.HAZHardnessInputs{Material: "cast_steel_weldable", CarbonEquivalent: 0.41, WallMM: 39, HeatInput: 1, Hydrogen: 5, SiteMaxPreheatC: 250, AmbientC: 20}
	for name, spoil := range map[string]func(low, high *weld.HAZHardnessInputs){
		"ends swapped":         func(low, _ *weld.HAZHardnessInputs) { low.WallMM = 40 },
		"two steels":           func(low, _ *weld.HAZHardnessInputs) { low.Material = "qt_steel" },
		"a metal that is none": func(low, high *weld.HAZHardnessInputs) { low.Material, high.Material = "grey_iron", "grey_iron" },
		"no wall":              func(low, _ *weld.HAZHardnessInputs) { low.WallMM = 0 },
		"beyond CET 0.50":      func(_, high *weld.HAZHardnessInputs) { high.CarbonEquivalent = 0.7 },
		"too slow to cool":     func(low, _ *weld.HAZHardnessInputs) { low.WallMM = 0.5 },
		"heat input varies":    func(low, _ *weld.HAZHardnessInputs) { low.HeatInput = 0.9 },
	} {
		t.Run(name, func(t *testing.T) {
			low, high := joint, joint
			spoil(&low, &high)
			if least, most, ok := weld.HAZHardnessBounds(low, high); ok {
				t.Errorf("bounds %g to %g", least, most)
			}
		})
	}
}
