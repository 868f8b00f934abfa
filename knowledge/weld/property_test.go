package weld_test

import (
	"math"
	"testing"

	"boremend/knowledge/weld"

	"pgregory.net/rapid"
)

func must[In, Out any](t interface{ Fatal(...any) }, f func(In) (Out, error), in In) Out {
	out, err := f(in)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// typicalCE are the carbon equivalents of the class-typical analyses, and the
// largest that stays inside CET 0.50.
var typicalCE = map[string]struct{ typical, most float64 }{
	"mild_steel": {0.363, 0.60}, "hsla_steel": {0.378, 0.65}, "qt_steel": {0.463, 0.77},
	"cast_steel_weldable": {0.382, 0.58}, "cast_steel_alloy": {0.618, 0.69},
}

var classes = []string{"mild_steel", "hsla_steel", "qt_steel", "cast_steel_weldable", "cast_steel_alloy"}

func anyJoint(t *rapid.T) weld.HAZHardnessInputs {
	class := rapid.SampledFrom(classes).Draw(t, "class")
	return weld.HAZHardnessInputs{
		Material: class, CarbonEquivalent: rapid.Float64Range(0.15, typicalCE[class].most).Draw(t, "CE"),
		WallMM:          rapid.Float64Range(4, 200).Draw(t, "wall"),
		HeatInput:       rapid.Float64Range(0.5, 2).Draw(t, "heat input"),
		Hydrogen:        rapid.Float64Range(1, 20).Draw(t, "hydrogen"),
		SiteMaxPreheatC: rapid.Float64Range(20, 300).Draw(t, "site"),
		AmbientC:        rapid.Float64Range(-40, 50).Draw(t, "ambient"),
	}
}

func TestMorePreheatNeverRaisesHardness(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyJoint(t)
		cold := must(t, weld.HAZHardness, in)
		in.SiteMaxPreheatC += rapid.Float64Range(0, 100).Draw(t, "more")
		warm := must(t, weld.HAZHardness, in)
		if warm.Hardness > cold.Hardness+1e-9 || warm.ShortfallK > cold.ShortfallK+1e-9 {
			t.Fatalf("%v at the lower preheat, %v at the higher", cold, warm)
		}
		in.AmbientC += rapid.Float64Range(0, 10).Draw(t, "warmer")
		if out := must(t, weld.HAZHardness, in); out.Hardness > warm.Hardness+1e-9 {
			t.Fatalf("a warmer part is harder: %g after %g", out.Hardness, warm.Hardness)
		}
	})
}

func TestHardnessStaysInReason(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyJoint(t)
		out := must(t, weld.HAZHardness, in)
		if !(out.Hardness > 100 && out.Hardness < 700) || out.Hardness != max(out.HVYurioka, out.HVBL70S) {
			t.Fatalf("hardness %v", out)
		}
		if math.Abs(out.CEAssumed-in.CarbonEquivalent) > 1e-12 {
			t.Fatalf("the estimate assumes CE %g, the part has %g", out.CEAssumed, in.CarbonEquivalent)
		}
	})
}

func TestRicherSteelIsHarderAtTheSamePreheat(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyJoint(t)
		in.SiteMaxPreheatC = 20
		lean := must(t, weld.HAZHardness, in)
		in.CarbonEquivalent += rapid.Float64Range(0, typicalCE[in.Material].most-in.CarbonEquivalent).Draw(t, "more")
		if rich := must(t, weld.HAZHardness, in); rich.Hardness < lean.Hardness-1e-9 {
			t.Fatalf("%g HV lean, %g HV rich", lean.Hardness, rich.Hardness)
		}
	})
}

func TestTypicalIsTheScaledAnalysisAtItsOwnCE(t *testing.T) {
	for _, class := range classes {
		typical := must(t, weld.HAZHardnessTypical, weld.HAZHardnessTypicalInputs{Material: class, WallMM: 40, HeatInput: 1, Hydrogen: 5, SiteMaxPreheatC: 250, AmbientC: 20})
		if math.Abs(typical.CEAssumed-typicalCE[class].typical) > 0.0006 {
			t.Errorf("%s: CE %.4f is assumed, want %.3f", class, typical.CEAssumed, typicalCE[class].typical)
		}
		scaled := must(t, weld.HAZHardness, weld.HAZHardnessInputs{Material: class, CarbonEquivalent: typical.CEAssumed, WallMM: 40, HeatInput: 1, Hydrogen: 5, SiteMaxPreheatC: 250, AmbientC: 20})
		if math.Abs(scaled.Hardness-typical.Hardness) > 1e-9 {
			t.Errorf("%s: %g HV scaled, %g HV typical", class, scaled.Hardness, typical.Hardness)
		}
	}
}

func TestThickerPlateNeverLengthensCooling(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := weld.CoolingTimeInputs{
			HeatInput: rapid.Float64Range(0.3, 5).Draw(t, "heat input"), PreheatC: rapid.Float64Range(-20, 350).Draw(t, "preheat"),
			ThicknessMM: rapid.Float64Range(2, 200).Draw(t, "wall"), F2: rapid.Float64Range(0.45, 1).Draw(t, "F2"), F3: rapid.Float64Range(0.6, 1).Draw(t, "F3"),
		}
		thin := must(t, weld.CoolingTimeT85, in)
		if byWall := in.ThicknessMM < thin.TransitionMM; byWall != (thin.Flow == "two_dimensional") {
			t.Fatalf("wall %g, transition at %g, flow %s", in.ThicknessMM, thin.TransitionMM, thin.Flow)
		}
		in.ThicknessMM *= rapid.Float64Range(1, 5).Draw(t, "thicker")
		if thick := must(t, weld.CoolingTimeT85, in); thick.T85S > thin.T85S+1e-9 {
			t.Fatalf("%g s thin, %g s thick", thin.T85S, thick.T85S)
		}
		warm := in
		warm.PreheatC += 10
		if a, b := must(t, weld.CoolingTimeT85, in), must(t, weld.CoolingTimeT85, warm); b.T85S < a.T85S {
			t.Fatalf("%g s cold, %g s warm", a.T85S, b.T85S)
		}
	})
}

func TestSlowerCoolingIsNeverHarder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := weld.CooledAnalysis{
			Analysis: weld.Analysis{C: rapid.Float64Range(0.05, 0.33).Draw(t, "C"), Mn: rapid.Float64Range(0.4, 1.6).Draw(t, "Mn"), Si: rapid.Float64Range(0.1, 0.6).Draw(t, "Si"),
				Cr: rapid.Float64Range(0, 1).Draw(t, "Cr"), Mo: rapid.Float64Range(0, 0.3).Draw(t, "Mo")}, T85S: rapid.Float64Range(1, 60).Draw(t, "t85"),
		}
		slow := in
		slow.T85S *= rapid.Float64Range(1, 10).Draw(t, "slower")
		for name, f := range map[string]func(weld.CooledAnalysis) float64{
			"Yurioka": func(in weld.CooledAnalysis) float64 { return must(t, weld.HAZHardnessYurioka87, in).HVMax },
			"BL70S":   func(in weld.CooledAnalysis) float64 { return must(t, weld.HAZHardnessBL70S, in).HVMax },
			"Dueren":  func(in weld.CooledAnalysis) float64 { return must(t, weld.HAZHardnessDueren, in).HVMax },
		} {
			if fast, slow := f(in), f(slow); slow > fast+1e-9 {
				t.Fatalf("%s: %g HV fast, %g HV slow", name, fast, slow)
			}
		}
	})
}

func TestPreheatGrowsWithEveryDanger(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := weld.PreheatCETInputs{
			CET: rapid.Float64Range(0.2, 0.45).Draw(t, "CET"), ThicknessMM: rapid.Float64Range(10, 80).Draw(t, "wall"),
			Hydrogen: rapid.Float64Range(1, 15).Draw(t, "hydrogen"), HeatInput: rapid.Float64Range(0.5, 3.5).Draw(t, "heat input"),
		}
		base := must(t, weld.PreheatCET, in).PreheatC
		for name, change := range map[string]func(*weld.PreheatCETInputs){
			"CET": func(in *weld.PreheatCETInputs) { in.CET += 0.05 }, "wall": func(in *weld.PreheatCETInputs) { in.ThicknessMM += 10 },
			"hydrogen": func(in *weld.PreheatCETInputs) { in.Hydrogen += 5 }, "less heat input": func(in *weld.PreheatCETInputs) { in.HeatInput = 0.5 },
		} {
			worse := in
			change(&worse)
			if after := must(t, weld.PreheatCET, worse).PreheatC; after < base-1e-9 {
				t.Fatalf("%s: %g degC before, %g after", name, base, after)
			}
		}
	})
}

var riskOrder = map[string]int{"low": 0, "medium": 1, "high": 2, "unweldable_field": 3}

func TestMorePreheatNeverRaisesRisk(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := weld.HAZRiskSteelInputs{
			Analysis:    weld.Analysis{C: rapid.Float64Range(0.05, 0.6).Draw(t, "C"), Mn: rapid.Float64Range(0.3, 1.6).Draw(t, "Mn"), Si: 0.3, Cr: rapid.Float64Range(0, 1).Draw(t, "Cr")},
			ThicknessMM: rapid.Float64Range(5, 120).Draw(t, "wall"), PreheatC: rapid.Float64Range(-20, 200).Draw(t, "preheat"), HeatInput: 1, Hydrogen: 5,
			SiteMaxPreheatC: 250, QuenchedTempered: "no", AnalysisIsAssumed: "no",
		}
		cold := must(t, weld.HAZRiskSteel, in)
		in.PreheatC += rapid.Float64Range(0, 150).Draw(t, "more")
		if warm := must(t, weld.HAZRiskSteel, in); riskOrder[warm.Risk] > riskOrder[cold.Risk] {
			t.Fatalf("%s cold, %s warm", cold.Risk, warm.Risk)
		}
	})
}

// TestNothingIsAllocated runs what the advice engine calls thousands of times.
func TestNothingIsAllocated(t *testing.T) {
	hardness := weld.HAZHardnessInputs{Material: "cast_steel_weldable", CarbonEquivalent: 0.41, WallMM: 39, HeatInput: 1, Hydrogen: 5, SiteMaxPreheatC: 250, AmbientC: 15}
	typical := weld.HAZHardnessTypicalInputs{Material: "qt_steel", WallMM: 39, HeatInput: 1, Hydrogen: 5, SiteMaxPreheatC: 250, AmbientC: 15}
	analysis := weld.Analysis{C: 0.2, Mn: 0.9, Si: 0.25}
	cooled := weld.CooledAnalysis{Analysis: weld.Analysis{C: 0.2, Mn: 0.9, Si: 0.25}, T85S: 5}
	risk := weld.HAZRiskSteelInputs{Analysis: weld.Analysis{C: 0.2, Mn: 0.9}, ThicknessMM: 25, PreheatC: 20, HeatInput: 1, Hydrogen: 5, SiteMaxPreheatC: 250, QuenchedTempered: "no", AnalysisIsAssumed: "no"}
	for name, run := range map[string]func(){
		"haz_hardness":         func() { must(t, weld.HAZHardness, hardness) },
		"haz_hardness_typical": func() { must(t, weld.HAZHardnessTypical, typical) },
		"carbon_equivalent":    func() { must(t, weld.CarbonEquivalent, analysis) },
		"cooling_time_t85": func() {
			must(t, weld.CoolingTimeT85, weld.CoolingTimeInputs{HeatInput: 1, PreheatC: 20, ThicknessMM: 25, F2: 1, F3: 1})
		},
		"preheat_cet": func() {
			must(t, weld.PreheatCET, weld.PreheatCETInputs{CET: 0.3, ThicknessMM: 25, Hydrogen: 5, HeatInput: 1})
		},
		"yurioka":        func() { must(t, weld.HAZHardnessYurioka87, cooled) },
		"bl70s":          func() { must(t, weld.HAZHardnessBL70S, cooled) },
		"haz_risk_steel": func() { must(t, weld.HAZRiskSteel, risk) },
		"heat_input": func() {
			must(t, weld.HeatInput, weld.HeatInputInputs{Voltage: 20, Current: 150, TravelMPerMin: 0.2, Process: "135"})
		},
		"weld_fill_mass": func() {
			must(t, weld.WeldFillMass, weld.WeldFillMassInputs{BoreBeforeMM: 58, BoreAfterMM: 52, LengthMM: 70, DensityKGM3: 7850})
		},
		"ndt_hold": func() { must(t, weld.NDTHold, weld.NDTHoldInputs{WeldSizeMM: 10, HeatInput: 2}) },
	} {
		if n := testing.AllocsPerRun(100, run); n != 0 {
			t.Errorf("%s allocates %g times", name, n)
		}
	}
}

func BenchmarkHAZHardness(b *testing.B) {
	in := weld.HAZHardnessInputs{Material: "cast_steel_weldable", CarbonEquivalent: 0.41, WallMM: 39, HeatInput: 1, Hydrogen: 5, SiteMaxPreheatC: 250, AmbientC: 15}
	for b.Loop() {
		if _, err := weld.HAZHardness(in); err != nil {
			b.Fatal(err)
		}
	}
}
