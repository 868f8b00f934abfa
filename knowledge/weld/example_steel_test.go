package weld_test

import (
	"fmt"

	"boremend/knowledge/weld"
)

// Common structural plate.
func ExampleCarbonEquivalent() {
	out, err := weld.CarbonEquivalent(weld.Analysis{C: 0.20, Mn: 0.90, Si: 0.25, Cu: 0.20})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("CE %.3f, CET %.3f, Pcm %.3f, CEN %.3f\n", out.CEIIW, out.CET, out.Pcm, out.CEN)
	// Output: CE 0.363, CET 0.300, Pcm 0.263, CEN 0.370
}

func ExampleGraphiteCarbonEquivalent() {
	out, err := weld.GraphiteCarbonEquivalent(weld.GraphiteCarbonEquivalentInputs{C: 3.6, Si: 2.55, P: 0.03, Weight: 1.0 / 3})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f, %s\n", out.CE, out.Freezes)
	// Output: 4.46, above_eutectic
}

func ExampleHeatInput() {
	out, err := weld.HeatInput(weld.HeatInputInputs{Voltage: 19, Current: 170, TravelMPerMin: 0.192, Process: "114"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.4f kJ/mm of %.4f\n", out.HeatInput, out.ArcEnergy)
	// Output: 0.8075 kJ/mm of 1.0094
}

func ExampleCoolingTimeT85() {
	out, err := weld.CoolingTimeT85(weld.CoolingTimeInputs{HeatInput: 1, PreheatC: 20, ThicknessMM: 25, F2: 1, F3: 1})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f s, %s, transition at %.1f mm\n", out.T85S, out.Flow, out.TransitionMM)
	// Output: 5.288 s, three_dimensional, transition at 14.7 mm
}

func ExampleCoolingRate() {
	out, err := weld.CoolingRate(weld.CoolingRateInputs{T85S: 7.5})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f K a second\n", out.CoolingRateKPerS)
	// Output: 40 K a second
}

func ExamplePreheatCET() {
	out, err := weld.PreheatCET(weld.PreheatCETInputs{CET: 0.30, ThicknessMM: 25, Hydrogen: 5, HeatInput: 1})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f degC: %s\n", out.PreheatC, out.Says)
	// Output: 72.0 degC: preheat
}

func ExampleSusceptibilityIndex() {
	out, err := weld.SusceptibilityIndex(weld.SusceptibilityIndexInputs{Pcm: 0.27, Hydrogen: 10})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f, group %s\n", out.Index, out.Group)
	// Output: 4.24, group D
}
