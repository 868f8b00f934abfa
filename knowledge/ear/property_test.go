package ear_test

import (
	"math"
	"testing"

	"boremend/knowledge/ear"
	"boremend/knowledge/worked"

	"pgregory.net/rapid"
)

// anyEar draws an ear with a load.
func anyEar(t *rapid.T) ear.StrengthFactorInputs {
	bore := rapid.Float64Range(20, 300).Draw(t, "bore")
	yield := rapid.Float64Range(150, 900).Draw(t, "yield")
	return ear.StrengthFactorInputs{
		PinLoadN:       rapid.Float64Range(1e3, 5e6).Draw(t, "load"),
		BoreMM:         bore,
		PinMM:          bore * rapid.Float64Range(0.8, 1).Draw(t, "pin over bore"),
		EarWidthMM:     rapid.Float64Range(8, 300).Draw(t, "ear width"),
		EdgeDistanceMM: bore * rapid.Float64Range(0.6, 3).Draw(t, "edge over bore"),
		YieldMPa:       yield,
		TensileMPa:     yield * rapid.Float64Range(1, 2).Draw(t, "tensile over yield"),
		DesignFactor:   rapid.Float64Range(2, 5).Draw(t, "design factor"),
		Edge:           rapid.SampledFrom([]string{"round", "square"}).Draw(t, "edge"),
		PinTurns:       rapid.SampledFrom([]string{"yes", "no"}).Draw(t, "turns"),
	}
}

func must[In, Out any](t interface{ Fatal(...any) }, f func(In) (Out, error), in In) Out {
	out, err := f(in)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func TestThickerWallNeverLowersStrength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyEar(t)
		thin := must(t, ear.StrengthFactor, in)
		in.EdgeDistanceMM *= rapid.Float64Range(1, 2).Draw(t, "more wall")
		thick := must(t, ear.StrengthFactor, in)
		if thick.StrengthFactor < thin.StrengthFactor*(1-1e-12) {
			t.Fatalf("%g with the thinner wall, %g with the thicker", thin.StrengthFactor, thick.StrengthFactor)
		}
	})
}

func TestWiderEarNeverLowersStrength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyEar(t)
		narrow := must(t, ear.StrengthFactor, in)
		in.EarWidthMM *= rapid.Float64Range(1, 2).Draw(t, "more width")
		if wide := must(t, ear.StrengthFactor, in); wide.StrengthFactor < narrow.StrengthFactor*(1-1e-12) {
			t.Fatalf("%g narrow, %g wide", narrow.StrengthFactor, wide.StrengthFactor)
		}
	})
}

func TestStrengthFactorIsThePinPlate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyEar(t)
		out := must(t, ear.StrengthFactor, in)
		curved := map[string]string{"round": "yes", "square": "no"}[in.Edge]
		plate := must(t, ear.PinPlateBTH1, ear.PinPlateBTH1Inputs{
			ThicknessMM: in.EarWidthMM, SideWallMM: out.WallMM, EndWallMM: out.WallMM, PinMM: in.PinMM, HoleMM: in.BoreMM,
			YieldMPa: in.YieldMPa, TensileMPa: in.TensileMPa, DesignFactor: in.DesignFactor,
			ApplyLooseness: "yes", CurvedEdge: curved, ShearAreaRule: "dp_phi", PinTurns: in.PinTurns,
		})
		if off := plate.AllowableN/(out.StrengthFactor*in.PinLoadN) - 1; math.Abs(off) > 1e-9 || plate.Governs != out.Governs {
			t.Fatalf("allowable %g by %s, the factor says %g by %s", plate.AllowableN, plate.Governs, out.StrengthFactor*in.PinLoadN, out.Governs)
		}
	})
}

// anyBoring draws an ear that is bored out.
func anyBoring(t *rapid.T, leastEdge, mostEdge float64) ear.StrengthKeptInputs {
	bore := rapid.Float64Range(20, 300).Draw(t, "bore")
	return ear.StrengthKeptInputs{
		FinishBoreMM: bore, SleeveBoreMM: bore * rapid.Float64Range(1, 1.19).Draw(t, "opened"),
		EdgeDistanceMM: bore * rapid.Float64Range(leastEdge, mostEdge).Draw(t, "edge over bore"),
	}
}

func TestStrengthKeptIsTheShareOfTheWall(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyBoring(t, 0.6, 3)
		out := must(t, ear.StrengthKept, in)
		wall := (in.EdgeDistanceMM - in.SleeveBoreMM/2) / (in.EdgeDistanceMM - in.FinishBoreMM/2)
		if math.Abs(out.StrengthKept-wall) > 1e-12 || !(out.StrengthKept > 0 && out.StrengthKept <= 1) {
			t.Fatalf("%g kept, %g of the wall", out.StrengthKept, wall)
		}
		in.SleeveBoreMM *= 1 + 0.001*in.EdgeDistanceMM/in.SleeveBoreMM
		if more := must(t, ear.StrengthKept, in); more.StrengthKept >= out.StrengthKept {
			t.Fatalf("a larger bore keeps %g, a smaller one %g", more.StrengthKept, out.StrengthKept)
		}
	})
}

// TestStrengthKeptAgainstTheCode compares the ratio with the whole pin-plate check
// before and after, with a pin and then a sleeve that fill the bore.
func TestStrengthKeptAgainstTheCode(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyBoring(t, 0.75, 1.15)
		yield := rapid.Float64Range(200, 700).Draw(t, "yield")
		tensile := yield * rapid.Float64Range(1.1, 2).Draw(t, "tensile over yield")
		allowed := func(bore float64) float64 {
			wall := in.EdgeDistanceMM - bore/2
			out := must(t, ear.PinPlateBTH1, ear.PinPlateBTH1Inputs{
				ThicknessMM: bore, SideWallMM: wall, EndWallMM: wall, PinMM: bore, HoleMM: bore,
				YieldMPa: yield, TensileMPa: tensile, DesignFactor: 3,
				ApplyLooseness: "yes", CurvedEdge: "no", ShearAreaRule: "dp_phi", PinTurns: "no",
			})
			return min(out.TensionN, out.SplittingN, out.ShearN) / bore // without the thickness
		}
		whole := allowed(in.SleeveBoreMM) / allowed(in.FinishBoreMM)
		if kept := must(t, ear.StrengthKept, in).StrengthKept; kept > whole+1e-9 || kept < whole-0.08 {
			t.Fatalf("%g kept, the whole code says %g", kept, whole)
		}
	})
}

func TestThinnerEarIsStressedMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bore := rapid.Float64Range(20, 300).Draw(t, "bore")
		k := rapid.Float64Range(1.25, 2.5).Draw(t, "R over r")
		angle := rapid.Float64Range(0, 180).Draw(t, "angle")
		at := func(k float64) ear.LugLoadDirectionOutputs {
			return must(t, ear.LugLoadDirection, ear.LugLoadDirectionInputs{
				BoreMM: bore, EndRadiusMM: k * bore / 2, ThicknessMM: 20, ForceN: 1e5, AngleDeg: angle,
			})
		}
		thin, thick := at(k), at(rapid.Float64Range(k, 2.5).Draw(t, "thicker"))
		if thin.PeakMPa < thick.PeakMPa*(1-1e-12) {
			t.Fatalf("%g MPa in the thin ear, %g in the thick one", thin.PeakMPa, thick.PeakMPa)
		}
		if thin.WorstMPa < thin.PeakMPa*0.99 {
			t.Fatalf("%g MPa at %g degrees, but the worst is said to be %g", thin.PeakMPa, angle, thin.WorstMPa)
		}
	})
}

func TestSlackNeverHelps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := ear.LugContactInputs{
			BoreMM: 80, EndRadiusMM: 40 * rapid.Float64Range(1.25, 2.5).Draw(t, "R over r"), ThicknessMM: 25,
			ForceN: rapid.Float64Range(5e4, 5e5).Draw(t, "force"), ClearanceMM: rapid.Float64Range(0, 0.5).Draw(t, "slack"),
			Direction: rapid.SampledFrom([]string{"pull", "push", "side"}).Draw(t, "direction"), ModulusMPa: 205000,
		}
		tight := must(t, ear.LugContact, in)
		in.ClearanceMM += rapid.Float64Range(0, 0.2).Draw(t, "more slack")
		if loose := must(t, ear.LugContact, in); loose.PeakMPa < tight.PeakMPa || loose.PressureMPa < tight.PressureMPa {
			t.Fatalf("%g and %g MPa tight, %g and %g MPa loose", tight.PeakMPa, tight.PressureMPa, loose.PeakMPa, loose.PressureMPa)
		}
	})
}

func TestOffCentreIsNeverBetter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := ear.LugLoadInputs{BoreMM: 80, EndRadiusMM: 72, ThicknessMM: 30, ForceN: 1e5}
		centred := must(t, ear.LugLoad, in)
		in.OffsetAlongMM = rapid.Float64Range(-12, 12).Draw(t, "along")
		in.OffsetAcrossMM = rapid.Float64Range(-12, 12).Draw(t, "across")
		off := must(t, ear.LugLoad, in)
		if off.PullMPa < centred.PullMPa || off.PushMPa < centred.PushMPa || off.SideMPa < centred.SideMPa {
			t.Fatalf("centred %v, off centre %v", centred, off)
		}
	})
}

func TestSlackConcentratesThePressure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := ear.ConformalContactInputs{
			BoreMM: 80, ClearanceMM: rapid.Float64Range(0, 1).Draw(t, "slack"), ForceN: rapid.Float64Range(1e4, 1e6).Draw(t, "force"),
			LengthMM: 100, ModulusMPa: 210000,
		}
		tight := must(t, ear.ConformalContact, in)
		if math.Abs(tight.SlackReached-tight.Slack) > 1e-9*(1+tight.Slack) {
			t.Fatalf("the arc found belongs to %g, not to %g", tight.SlackReached, tight.Slack)
		}
		in.ClearanceMM += 0.1
		if loose := must(t, ear.ConformalContact, in); loose.PeakMPa <= tight.PeakMPa || loose.HalfAngleDeg >= tight.HalfAngleDeg {
			t.Fatalf("tight %v, loose %v", tight, loose)
		}
	})
}

// TestNothingIsAllocated runs what the advice engine calls thousands of times.
func TestNothingIsAllocated(t *testing.T) {
	factor := ear.StrengthFactorInputs{PinLoadN: 310e3, BoreMM: 121, PinMM: 121, EarWidthMM: 160, EdgeDistanceMM: 98, YieldMPa: 248, TensileMPa: 483, DesignFactor: 3, Edge: "round", PinTurns: "no"}
	kept := ear.StrengthKeptInputs{FinishBoreMM: 80, SleeveBoreMM: 96, EdgeDistanceMM: 80}
	cylinder := ear.CylinderPinLoadInputs{BoreMM: 120, RodMM: 70, PressureMPa: 25, Stroke: "extend", LeverRatio: 1, Cylinders: 1, Ears: 1}
	lug := ear.LugLoadInputs{BoreMM: 80, EndRadiusMM: 60, ThicknessMM: 30, ForceN: 90e3}
	growth := ear.LugLoadGrowthInputs{BoreBeforeMM: 80, BoreAfterMM: 92, EndRadiusMM: 72}
	direction := ear.LugLoadDirectionInputs{BoreMM: 80, EndRadiusMM: 60, ThicknessMM: 30, ForceN: 90e3, AngleDeg: 40}
	contact := ear.LugContactInputs{BoreMM: 80, EndRadiusMM: 60, ThicknessMM: 25, ForceN: 1e5, ClearanceMM: 0.2, Direction: "pull", ModulusMPa: 205000}
	pressure := ear.BearingPressureInputs{ForceN: 250e3, DiameterMM: 80, LengthMM: 100}
	conformal := ear.ConformalContactInputs{BoreMM: 80, ClearanceMM: 0.2, ForceN: 250e3, LengthMM: 100, ModulusMPa: 210000}
	pin := ear.PinBeamInputs{PinMM: 40, ForceN: 50e3, CentreMM: 40, OuterMM: 25, MomentModel: "uniform", BendingMPa: worked.Some(80)}
	flange := ear.FlangeRingInputs{ThrustN: 60e3, SleeveODMM: 90, FlangeODMM: 110, FlangeMM: 8, CounterMM: 92, Poisson: 0.3}
	key := ear.AntiRotationInputs{Friction: 0.2, LoadN: 200e3, PinMM: 80, KeyRadiusMM: 50, KeyMM: 16, KeyLengthMM: 20, Keys: 1}
	for name, run := range map[string]func(){
		"strength_factor":    func() { must(t, ear.StrengthFactor, factor) },
		"strength_kept":      func() { must(t, ear.StrengthKept, kept) },
		"cylinder_pin_load":  func() { must(t, ear.CylinderPinLoad, cylinder) },
		"lug_load":           func() { must(t, ear.LugLoad, lug) },
		"lug_load_growth":    func() { must(t, ear.LugLoadGrowth, growth) },
		"lug_load_direction": func() { must(t, ear.LugLoadDirection, direction) },
		"lug_contact":        func() { must(t, ear.LugContact, contact) },
		"bearing_pressure":   func() { must(t, ear.BearingPressure, pressure) },
		"conformal_contact":  func() { must(t, ear.ConformalContact, conformal) },
		"pin_beam":           func() { must(t, ear.PinBeam, pin) },
		"flange_ring":        func() { must(t, ear.FlangeRing, flange) },
		"anti_rotation":      func() { must(t, ear.AntiRotation, key) },
	} {
		if n := testing.AllocsPerRun(100, run); n != 0 {
			t.Errorf("%s allocates %g times", name, n)
		}
	}
}

func BenchmarkStrengthFactor(b *testing.B) {
	in := ear.StrengthFactorInputs{PinLoadN: 310e3, BoreMM: 121, PinMM: 121, EarWidthMM: 160, EdgeDistanceMM: 98, YieldMPa: 248, TensileMPa: 483, DesignFactor: 3, Edge: "round", PinTurns: "no"}
	for b.Loop() {
		if _, err := ear.StrengthFactor(in); err != nil {
			b.Fatal(err)
		}
	}
}
