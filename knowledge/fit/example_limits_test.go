package fit_test

import (
	"fmt"

	"boremend/knowledge/fit"
)

// US Army TM 5-3810-294-34, boom sheave bushing, in inches.
func ExampleFitFromLimits() {
	const inch = 25.4
	out, err := fit.FitFromLimits(fit.FitFromLimitsInputs{
		SleeveODMaxMM: 3.506 * inch, SleeveODMinMM: 3.504 * inch, BoreMaxMM: 3.502 * inch, BoreMinMM: 3.5 * inch,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f to %.3f in\n", out.InterferenceMinMM/inch, out.InterferenceMaxMM/inch)
	// Output:
	// 0.002 to 0.006 in
}

// Shigley, Example 7-8: H7/s6 at 2 in.
func ExampleLimitsFromDeviation() {
	const inch = 25.4
	out, err := fit.LimitsFromDeviation(fit.DeviationInputs{
		NominalMM: 2 * inch, HoleITMM: 0.001 * inch, ShaftITMM: 0.0006 * inch, DeviationMM: 0.0017 * inch, DeviationIs: "lower",
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("hole %.4f to %.4f, shaft %.4f to %.4f in\n", out.HoleMinMM/inch, out.HoleMaxMM/inch, out.ShaftMinMM/inch, out.ShaftMaxMM/inch)
	// Output:
	// hole 2.0000 to 2.0010, shaft 2.0017 to 2.0023 in
}

// 30 mm belongs to the row over 18 up to and including 30.
func ExampleISO286Limits() {
	for _, zone := range []string{"H7", "s6", "JS7", "x6"} {
		out, err := fit.ISO286Limits(fit.ISO286LimitsInputs{NominalMM: 30, Zone: zone})
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Printf("30 %s: %+.1f %+.1f um\n", zone, out.LowerMM*1000, out.UpperMM*1000)
	}
	// Output:
	// 30 H7: +0.0 +21.0 um
	// 30 s6: +35.0 +48.0 um
	// 30 JS7: -10.5 +10.5 um
	// zone: is "x6", must be a letter of D to H, JS, K, M, N, P, R, S, T, U (capital for a hole, small for a shaft) and a grade, as H7 or s6
}

func ExampleISO286Fit() {
	out, err := fit.ISO286Fit(fit.ISO286FitInputs{NominalMM: 110, Hole: "H7", Shaft: "s6"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f to %.3f mm of interference\n", out.InterferenceMinMM, out.InterferenceMaxMM)
	// Output:
	// 0.044 to 0.101 mm of interference
}

func ExampleANSIB41Limits() {
	const thou = 0.0254
	out, err := fit.ANSIB41Limits(fit.ANSIB41LimitsInputs{NominalMM: 2 * 25.4, Class: "FN2"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("hole +%.1f, shaft +%.1f +%.1f, interference %.1f to %.1f thousandths\n", out.HoleUpperMM/thou, out.ShaftLowerMM/thou,
		out.ShaftUpperMM/thou, out.InterferenceMinMM.Value/thou, out.InterferenceMaxMM.Value/thou)
	_, err = fit.ANSIB41Limits(fit.ANSIB41LimitsInputs{NominalMM: 0.5 * 25.4, Class: "FN3"})
	fmt.Println(err)
	// Output:
	// hole +1.2, shaft +2.0 +2.7, interference 0.8 to 2.7 thousandths
	// nominal: is 0.5 in, which FN3 does not list (RC and LN end at 19.69 in, FN at 12.41 in, FN3 begins above 0.95 in)
}

func ExampleLeadInChamfer() {
	out, err := fit.LeadInChamfer(fit.LeadInChamferInputs{BoreDiameterMM: 110})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f mm wide at %.0f degrees\n", out.WidthMM, out.AngleDeg)
	// Output:
	// 1.8 mm wide at 20 degrees
}

// US Army TM 5-3810-305-23: pin 2.474 in, bushing 2.543 in.
func ExampleWearLimitClearance() {
	out, err := fit.WearLimitClearance(fit.WearLimitInputs{PinMinODMM: 2.474 * 25.4, BushingMaxIDMM: 2.543 * 25.4})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f in\n", out.ClearanceMM/25.4)
	// Output:
	// 0.069 in
}
