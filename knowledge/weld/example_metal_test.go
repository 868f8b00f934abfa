package weld_test

import (
	"fmt"

	"boremend/knowledge/weld"
	"boremend/knowledge/worked"
)

func ExampleBuildUp() {
	out, err := weld.BuildUp(weld.BuildUpInputs{
		WornMaxMM: 84, FinishMM: 80, AllowanceMM: 1.5, LengthMM: 90, DensityKGM3: 7850,
		Efficiency: 0.78, DepositedPerHourKG: 1.8, OperatingFactor: 0.6,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f kg, %.3f kg of wire, %.0f min\n", out.MassKG, out.WireKG, out.WeldingS/60)
	// Output: 0.625 kg, 0.802 kg of wire, 35 min
}

func ExampleWeldFillMass() {
	out, err := weld.WeldFillMass(weld.WeldFillMassInputs{
		BoreBeforeMM: 236.5, BoreAfterMM: 194, LengthMM: 150, DensityKGM3: 7850,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f kg\n", out.MassKG)
	// Output: 16.92 kg
}

// Half an inch of leg on a foot of length: 0.424 lb in the handbook.
func ExampleWeldMetalMass() {
	out, err := weld.WeldMetalMass(weld.WeldMetalMassInputs{LegMM: worked.Some(12.7), LengthMM: 304.8, DensityKGM3: 7850})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f kg\n", out.MassKG)
	// Output: 0.193 kg
}

func ExampleBeadLayer() {
	out, err := weld.BeadLayer(weld.BeadLayerInputs{
		WireFeedMPerMin: 6, WireMM: 0.9, Efficiency: 0.96, TravelMPerMin: 0.25, BeadWidthMM: 7,
		Overlap: 0.4, RadialBuildMM: 3.5,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f layers of %.2f mm\n", out.Layers, out.LayerHeightMM)
	// Output: 2 layers of 3.49 mm
}

func ExampleDepositionRate() {
	out, err := weld.DepositionRate(weld.DepositionRateInputs{
		WireFeedMPerMin: 7.62, WireMM: worked.Some(1.143), DensityKGM3: 7850, Efficiency: 1,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f kg an hour\n", out.MeltOffKG)
	// Output: 3.68 kg an hour
}

func ExampleDepositionRateTest() {
	out, err := weld.DepositionRateTest(weld.DepositionRateTestInputs{GainKG: 0.095, TimeS: 60})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kg an hour\n", out.DepositKG)
	// Output: 5.7 kg an hour
}

func ExampleDepositionEfficiency() {
	out, err := weld.DepositionEfficiency(weld.DepositionEfficiencyInputs{UsedKG: 4, WeldKG: 3})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f\n", out.Efficiency)
	// Output: 0.75
}

func ExampleDepositionEfficiencyRange() {
	out, err := weld.DepositionEfficiencyRange(weld.DepositionEfficiencyRangeInputs{Process: "fcaw_e70t_1_2"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f to %.2f\n", out.Least, out.Most)
	// Output: 0.83 to 0.88
}

func ExampleElectrodeEfficiency() {
	out, err := weld.ElectrodeEfficiency(weld.ElectrodeEfficiencyInputs{GainKG: 0.150, CoreKG: 0.188, StubKG: 0.0247})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f\n", out.Efficiency)
	// Output: 0.919
}

func ExampleStubLoss() {
	out, err := weld.StubLoss(weld.StubLossInputs{ElectrodeMM: 355.6, Efficiency: 0.70, StubMM: 50.8})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f\n", out.Effective)
	// Output: 0.60
}

// A sixteenth of an inch: 1152 inches a pound in the handbook.
func ExampleWireLengthPerMass() {
	out, err := weld.WireLengthPerMass(weld.WireLengthInputs{WireMM: worked.Some(1.5875), DensityKGM3: 7850})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f m\n", out.LengthMM/1000)
	// Output: 64.4 m
}
