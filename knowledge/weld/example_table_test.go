package weld_test

import (
	"fmt"

	"boremend/knowledge/weld"
	"boremend/knowledge/worked"
)

func ExamplePreheatTable() {
	out, err := weld.PreheatTable(weld.PreheatTableInputs{Grade: "A36", ThicknessMM: 30, LowHydrogen: "yes"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f degC\n", out.PreheatC)
	// Output: 10 degC
}

func ExamplePreheatChart() {
	out, err := weld.PreheatChart(weld.PreheatChartInputs{Steel: "4140"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f to %.0f degC\n", out.LeastC, out.MostC)
	// Output: 316 to 427 degC
}

func ExamplePreheatAnnex() {
	out, err := weld.PreheatAnnex(weld.PreheatAnnexInputs{Restraint: "high", Group: "D", ThicknessMM: 50.8})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f degC\n", out.PreheatC)
	// Output: 149 degC
}

func ExampleSteelPreheat() {
	out, err := weld.SteelPreheat(weld.SteelPreheatInputs{Group: "S-1", C: worked.Some(0.32), ThicknessMM: worked.Some(31.75)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f degC\n", out.LeastC)
	// Output: 79 degC
}

func ExampleIronPreheat() {
	out, err := weld.IronPreheat(weld.IronPreheatInputs{Iron: "ductile_ferritic", ThickOrComplex: "yes", HighStress: "no"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f to %.0f degC\n", out.LeastC, out.MostC.Value)
	// Output: 100 to 200 degC
}

func ExampleNDTHold() {
	out, err := weld.NDTHold(weld.NDTHoldInputs{WeldSizeMM: 20, HeatInput: 2.5})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f h\n", out.HoldS/3600)
	// Output: 16 h
}

func ExampleNDTHoldCode() {
	out, err := weld.NDTHoldCode(weld.NDTHoldCodeInputs{Code: "aws_d1_1", Steel: "a514"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f h\n", out.HoldS/3600)
	// Output: 48 h
}

// The share of the time in which a machine-led arc burns.
func ExampleOperatingFactor() {
	out, _ := weld.OperatingFactor(weld.OperatingFactorInputs{Way: "automatic"})
	fmt.Printf("%.1f to %.1f\n", out.Least, out.Most)
	// Output:
	// 0.6 to 0.8
}
