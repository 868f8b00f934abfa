package weld_test

import (
	"fmt"

	"boremend/knowledge/weld"
)

// A worn boss of cast steel whose analysis is known.
func ExampleHAZHardness() {
	out, err := weld.HAZHardness(weld.HAZHardnessInputs{
		Material: "cast_steel_weldable", CarbonEquivalent: 0.41, WallMM: 39, HeatInput: 1,
		Hydrogen: 5, SiteMaxPreheatC: 250, AmbientC: 15,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f HV after %.0f degC of preheat, cooling in %.1f s\n", out.Hardness, out.PreheatUsedC, out.T85S)
	// Output: 375 HV after 140 degC of preheat, cooling in 7.6 s
}

// The same boss without an analysis.
func ExampleHAZHardnessTypical() {
	out, err := weld.HAZHardnessTypical(weld.HAZHardnessTypicalInputs{
		Material: "cast_steel_weldable", WallMM: 39, HeatInput: 1, Hydrogen: 5, SiteMaxPreheatC: 250,
		AmbientC: 15,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f HV assuming CE %.2f\n", out.Hardness, out.CEAssumed)
	// Output: 354 HV assuming CE 0.38
}

func ExampleHAZHardnessYurioka87() {
	out, err := weld.HAZHardnessYurioka87(weld.CooledAnalysis{Analysis: weld.Analysis{C: 0.20, Mn: 0.90, Si: 0.25, Cu: 0.20}, T85S: 5.3})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f HV, martensite alone %.1f HV\n", out.HVMax, out.HVMartensite)
	// Output: 299.4 HV, martensite alone 468.7 HV
}

func ExampleHAZHardnessBL70S() {
	out, err := weld.HAZHardnessBL70S(weld.CooledAnalysis{Analysis: weld.Analysis{C: 0.20, Mn: 0.90, Si: 0.25, Cu: 0.20}, T85S: 5.3})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f HV\n", out.HVMax)
	// Output: 355.1 HV
}

func ExampleHAZHardnessDueren() {
	out, err := weld.HAZHardnessDueren(weld.CooledAnalysis{Analysis: weld.Analysis{C: 0.20, Mn: 0.90, Si: 0.25, Cu: 0.20}, T85S: 5.3})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f HV\n", out.HVX)
	// Output: 380.7 HV
}

func ExampleHAZHardnessJIS() {
	out, err := weld.HAZHardnessJIS(weld.Analysis{C: 0.24, Mn: 0.85, Si: 0.45})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f to %.0f HV\n", out.HVLeast, out.HVMost)
	// Output: 267 to 347 HV
}

// Plate of 50 mm, welded cold.
func ExampleHAZRiskSteel() {
	out, err := weld.HAZRiskSteel(weld.HAZRiskSteelInputs{
		Analysis: weld.Analysis{C: 0.20, Mn: 0.90, Si: 0.25, Cu: 0.20}, ThicknessMM: 50, PreheatC: 20, HeatInput: 1,
		Hydrogen: 5, SiteMaxPreheatC: 250, QuenchedTempered: "no", AnalysisIsAssumed: "no",
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s (%s): %.0f HV, %.0f degC of preheat needed\n", out.Risk, out.Governs, out.HVDesign, out.RequiredC)
	// Output: medium (preheat_lacking): 355 HV, 117 degC of preheat needed
}

// A torch warms the boss but not the casting.
func ExampleHAZRiskIron() {
	out, err := weld.HAZRiskIron(weld.HAZRiskIronInputs{
		Iron: "ductile_ferritic", PreheatC: 150, WholeCasting: "no", NickelFiller: "yes",
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s (%s)\n", out.Risk, out.Governs)
	// Output: unweldable_field (local_heat)
}

func ExampleHAZRiskManganese() {
	out, err := weld.HAZRiskManganese(weld.HAZRiskManganeseInputs{InterpassC: 180, Austenitic: "yes"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s (%s)\n", out.Risk, out.Governs)
	// Output: medium (in_order)
}
