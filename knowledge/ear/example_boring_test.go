package ear_test

import (
	"fmt"

	"boremend/knowledge/ear"
)

// Bored from 80 to 96 mm, the edge 80 mm from the centre.
func ExampleStrengthKept() {
	out, err := ear.StrengthKept(ear.StrengthKeptInputs{FinishBoreMM: 80, SleeveBoreMM: 96, EdgeDistanceMM: 80})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("tension %.2f, splitting %.2f, shear %.2f: %.2f is kept\n", out.Tension, out.Splitting, out.Shear, out.StrengthKept)
	// Output: tension 0.80, splitting 0.84, shear 0.86: 0.80 is kept
}

func ExampleStrengthFactor() {
	out, err := ear.StrengthFactor(ear.StrengthFactorInputs{
		PinLoadN: 310e3, BoreMM: 121, PinMM: 121, EarWidthMM: 160, EdgeDistanceMM: 98, YieldMPa: 248,
		TensileMPa: 483, DesignFactor: 3, Edge: "round", PinTurns: "no",
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f times, set by %s\n", out.StrengthFactor, out.Governs)
	// Output: 4.76 times, set by splitting
}

func ExampleCylinderPinLoad() {
	out, err := ear.CylinderPinLoad(ear.CylinderPinLoadInputs{
		BoreMM: 120, RodMM: 70, PressureMPa: 25, Stroke: "extend", LeverRatio: 1.2, Cylinders: 1,
		Ears: 2,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kN on the pin, %.0f kN on each ear\n", out.PinN/1000, out.EarN/1000)
	// Output: 339 kN on the pin, 170 kN on each ear
}

func ExampleLugLoadGrowth() {
	out, err := ear.LugLoadGrowth(ear.LugLoadGrowthInputs{BoreBeforeMM: 80, BoreAfterMM: 92, EndRadiusMM: 72})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("pull %.2f, push %.2f, across %.2f times the stress\n", out.Pull, out.Push, out.Side)
	// Output: pull 1.24, push 1.07, across 1.27 times the stress
}
