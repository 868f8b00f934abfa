package bolt

import (
	"math"
	"testing"

	"boremend/knowledge/worked"

	"pgregory.net/rapid"
)

// usualReinforcement is a 40 mm ear with a 16 mm plate on six M20.
func usualReinforcement() BoltedReinforcementInputs {
	return BoltedReinforcementInputs{
		PinLoadN: 150e3, BoreMM: 80, BoreFinish: "together", EarMM: 40, EarEMPa: 205e3, PlateMM: 16, PlateEMPa: 205e3, Plates: 1,
		Columns: 2, Rows: 3, ColumnPitchMM: 70, RowPitchMM: 70, Eccentricity: 140, EdgeMM: 35, Size: "M20", Grade: "8.8",
		Joint: "fitted", Fastening: "through", EarMetal: "steel", SlipMu: 0.2, Fraction: 0.75, FactorLeast: 0.12, FactorMost: 0.2, Stiffness: 0.33,
		PlateYieldMPa: 355, EarYieldMPa: 250, SafetyWanted: 2, SlipWanted: 1.5,
	}
}

func drawReinforcement(t *rapid.T) BoltedReinforcementInputs {
	in := usualReinforcement()
	in.PinLoadN = rapid.Float64Range(1e3, 1e6).Draw(t, "F")
	in.EarMM, in.PlateMM = rapid.Float64Range(15, 100).Draw(t, "t_e"), rapid.Float64Range(6, 40).Draw(t, "t_p")
	in.Plates = float64(rapid.IntRange(1, 2).Draw(t, "plates"))
	in.Columns, in.Rows = float64(rapid.IntRange(2, 4).Draw(t, "columns")), float64(rapid.IntRange(2, 5).Draw(t, "rows"))
	in.ColumnPitchMM, in.RowPitchMM = rapid.Float64Range(50, 120).Draw(t, "p_x"), rapid.Float64Range(50, 120).Draw(t, "p_y")
	in.Eccentricity = (in.Columns-1)*in.ColumnPitchMM/2 + rapid.Float64Range(65, 300).Draw(t, "gap")
	return in
}

func reinforce(t interface {
	Helper()
	Fatal(...any)
}, in BoltedReinforcementInputs) BoltedReinforcementOutputs {
	t.Helper()
	out, err := BoltedReinforcement(in)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// What plates and ear carry is the pin load; equal stiffness shares by thickness.
func TestSharesAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawReinforcement(t)
		out := reinforce(t, in)
		near(t, "load", out.EarN+in.Plates*out.PlateN, in.PinLoadN)
		near(t, "share", out.Share, in.PlateMM/(in.EarMM+in.Plates*in.PlateMM))
		if out.PlateN <= 0 || out.EarN <= 0 {
			t.Errorf("plate %g N, ear %g N", out.PlateN, out.EarN)
		}
	})
}

// At a known angle the bolts carry what the sum over points says, and the pulls
// balance the tipping of the plate.
func TestReinforcementAgainstDirectSummation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawReinforcement(t)
		angle := rapid.Float64Range(-180, 180).Draw(t, "phi")
		in.LoadAngleDeg = worked.Some(angle)
		out := reinforce(t, in)
		sin, cos := math.Sincos(angle * math.Pi / 180)
		points := gridPoints(BoltGroupShearInputs{Columns: in.Columns, Rows: in.Rows, ColumnPitchMM: in.ColumnPitchMM, RowPitchMM: in.RowPitchMM})
		worst, tipX, tipY := 0.0, 0.0, 0.0
		for i, f := range sumUp(points, shearLoad{out.PlateN * cos, out.PlateN * sin, -in.Eccentricity, 0}) {
			worst = max(worst, math.Hypot(f.xMM, f.yMM))
			tipX += out.TippingXN * points[i].xMM / out.FarXMM * points[i].xMM
			tipY += out.TippingYN * points[i].yMM / out.FarYMM * points[i].yMM
		}
		near(t, "worst bolt", out.ShearN, worst)
		near(t, "tipping along the line", tipX, out.PlateN*in.PlateMM/2)
		near(t, "tipping across it", tipY, out.PlateN*in.PlateMM/2)
	})
}

// Without an angle the sheet covers every direction, and one of them just so.
func TestWorstDirection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawReinforcement(t)
		worst := reinforce(t, in)
		shear, pull := 0.0, 0.0
		for angle := 0.0; angle < 180; angle += 0.5 {
			in.LoadAngleDeg = worked.Some(angle)
			out := reinforce(t, in)
			shear, pull = max(shear, out.ShearN), max(pull, out.PullN)
		}
		for _, pair := range [...]struct {
			what         string
			bound, found float64
		}{{"shear", worst.ShearN, shear}, {"pull", worst.PullN, pull}} {
			if pair.found > pair.bound*(1+1e-9) || pair.found < pair.bound*(1-1e-4) {
				t.Errorf("%s: worst of all directions %g, found %g", pair.what, pair.bound, pair.found)
			}
		}
	})
}

func TestMorePreloadNeverLowersSlipOfAPlate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawReinforcement(t)
		in.Fraction = rapid.Float64Range(0.1, 0.8).Draw(t, "f")
		tighter := in
		tighter.Fraction = rapid.Float64Range(in.Fraction, 0.9).Draw(t, "tighter")
		a, b := reinforce(t, in), reinforce(t, tighter)
		if b.SlipN < a.SlipN || b.SlipSafety < a.SlipSafety || b.OpeningSafety < a.OpeningSafety {
			t.Errorf("tighter, and it slips at %g N instead of %g N", b.SlipN, a.SlipN)
		}
	})
}

// More rows at the same place never raise what the worst bolt carries.
func TestMoreRowsNeverRaiseTheWorst(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawReinforcement(t)
		more := in
		more.Rows++
		a, b := reinforce(t, in), reinforce(t, more)
		if b.ShearN > a.ShearN*(1+1e-12) || b.PullN > a.PullN*(1+1e-12) || b.BoltSafety < a.BoltSafety*(1-1e-12) {
			t.Errorf("%g bolts carry %g and %g N, %g bolts %g and %g N", a.Bolts, a.ShearN, a.PullN, b.Bolts, b.ShearN, b.PullN)
		}
	})
}

// The bolt's safety is one over the use of the code with its partial factor at 1.
func TestBoltSafetyAgainstCode(t *testing.T) {
	out := reinforce(t, usualReinforcement())
	code, err := BoltEC3(BoltEC3Inputs{StressAreaMM2: 245, TensileMPa: 830, ShearShare: 0.6, GammaM2: 1, ShearN: worked.Some(out.ShearN), TensionN: worked.Some(out.PullN)})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "safety", out.BoltSafety, 1/code.Combined.Value)
}

// An iron ear is softer: the plate takes more, and tapped threads must be longer.
func TestIronEar(t *testing.T) {
	in := usualReinforcement()
	steel := reinforce(t, in)
	in.EarEMPa, in.EarMetal, in.Fastening = 110e3, "iron", "tapped"
	iron := reinforce(t, in)
	if iron.Share <= steel.Share {
		t.Errorf("share %g in iron, %g in steel", iron.Share, steel.Share)
	}
	if steel.EngagementMM.Known || iron.EngagementMM.Value != 40 {
		t.Errorf("thread %v through steel, %v in iron; want none and 40 mm", steel.EngagementMM, iron.EngagementMM)
	}
}
