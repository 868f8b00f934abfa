package wear_test

import (
	"fmt"

	"boremend/knowledge/wear"
)

// The largest diameter found was 114.2 mm, but the wear is all on one side.
func ExampleCleanUpBore() {
	out, err := wear.CleanUpBore(wear.CleanUpBoreInputs{WornReachMM: 58.9, CleanUpMM: 0.5})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("bore to %.1f mm\n", out.CleanUpBoreMM)
	// Output: bore to 118.8 mm
}

// The same bore when only diameters were taken.
func ExampleCleanUpBracket() {
	out, err := wear.CleanUpBracket(wear.CleanUpBracketInputs{FinishBoreMM: 110, WornMaxMM: 114.2, CleanUpMM: 0.5})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("between %.1f and %.1f mm\n", out.LeastMM, out.MostMM)
	// Output: between 115.2 and 119.4 mm
}

func ExampleSleeveGeometry() {
	out, err := wear.SleeveGeometry(wear.SleeveGeometryInputs{
		FinishBoreMM: 110, WornReachMM: 58.9, EdgeDistanceMM: 98, CleanUpMM: 0.5,
		SleeveWallLeastMM: 5, SleeveWallShare: 0.05,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("bore %.1f mm for a %.2f mm wall, %.1f mm of ear left (%.3f of the bore), set by %s\n", out.SleeveBoreMM, out.SleeveWallMM, out.WallAfterSleeveMM, out.SleeveRatio, out.Governs)
	// Output: bore 121.0 mm for a 5.50 mm wall, 37.5 mm of ear left (0.310 of the bore), set by sleeve_wall
}

func ExampleWallKept() {
	out, err := wear.WallKept(wear.WallKeptInputs{FinishBoreMM: 110, SleeveBoreMM: 121, EdgeDistanceMM: 98})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f of %.1f mm: %.3f\n", out.WallAfterMM, out.WallBeforeMM, out.WallKept)
	// Output: 37.5 of 43.0 mm: 0.872
}
