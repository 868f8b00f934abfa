package wear_test

import (
	"fmt"

	"boremend/knowledge/wear"
	"boremend/knowledge/worked"
)

// Six points of the SciPy Cookbook, Least Squares Circle.
var sixPoints = wear.PointsInputs{X: worked.List{9, 35, -13, 10, 23, 0}, Y: worked.List{34, 10, 6, -14, 27, -10}}

func ExampleCircleFitGeometric() {
	out, err := wear.CircleFitGeometric(sixPoints)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("centre %.5f, %.5f, radius %.5f\n", out.CentreXMM, out.CentreYMM, out.RadiusMM)
	// Output: centre 10.50009, 9.65995, radius 23.33353
}

// The radius of the fit is not the mean distance of the points.
func ExampleCircleFitKasa() {
	out, err := wear.CircleFitKasa(sixPoints)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("centre %.5f, %.5f, radius %.5f, mean distance %.5f\n", out.CentreXMM, out.CentreYMM, out.RadiusMM, out.MeanRadiusMM)
	// Output: centre 10.55231, 9.70590, radius 23.36241, mean distance 23.33482
}

func ExampleCircleFitTaubin() {
	out, err := wear.CircleFitTaubin(sixPoints)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("centre %.6f, %.6f, radius %.6f\n", out.CentreXMM, out.CentreYMM, out.RadiusMM)
	// Output: centre 10.550293, 9.709963, radius 23.362573
}

func ExampleCircleFitPratt() {
	out, err := wear.CircleFitPratt(sixPoints)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("centre %.6f, %.6f, radius %.6f\n", out.CentreXMM, out.CentreYMM, out.RadiusMM)
	// Output: centre 10.550298, 9.709954, radius 23.415414
}

// On a ragged arc the fit of unit norm is far out: Gander, Golub and
// Strebel give 4.7142 by distances (from memory).
func ExampleCircleFitUnitNorm() {
	arc := wear.PointsInputs{X: worked.List{1, 2, 5, 7, 9, 3}, Y: worked.List{7, 6, 8, 7, 5, 7}}
	algebraic, err := wear.CircleFitUnitNorm(arc)
	if err != nil {
		fmt.Println(err)
		return
	}
	geometric, err := wear.CircleFitGeometric(arc)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("radius %.4f, and %.4f by distances\n", algebraic.RadiusMM, geometric.RadiusMM)
	// Output: radius 3.0370, and 4.7142 by distances
}

func ExampleEnclosingCircle() {
	out, err := wear.EnclosingCircle(wear.PointsInputs{X: worked.List{2, 0, 2.5}, Y: worked.List{4, 0, 2}})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("centre %g, %g, diameter %.5f\n", out.CentreXMM, out.CentreYMM, out.DiameterMM)
	// Output: centre 1, 2, diameter 4.47214
}

// Worn 1.6 mm on one side: the largest pin that enters is a little larger than new,
// for it may sit toward the wear.
func ExampleRoundness() {
	out, err := wear.Roundness(wear.RoundnessInputs{
		ClockDeg: worked.List{0, 30, 60, 90, 120, 150, 180, 210, 240, 270, 300, 330},
		RadiusMM: worked.List{45.02, 45, 45.02, 45.8, 46.41, 46.6, 46.41, 45.8, 45.02, 45, 45.02, 45},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("pin %.2f, bore %.2f, roundness %.3f, diameters differ by %.2f\n", out.PinMM, out.BoreMM, out.ZoneMM, out.DiameterRange.Value)
	// Output: pin 90.09, bore 91.60, roundness 0.773, diameters differ by 1.56
}

func ExampleBoreFromDiameters() {
	out, err := wear.BoreFromDiameters(wear.BoreFromDiametersInputs{
		OriginalMM: worked.Some(80), DepthMM: worked.List{10, 45, 80}, ClockDeg: worked.List{0, 45, 90, 135},
		DiameterMM: worked.List{
			81.42, 81.05, 80.12, 80.38,
			80.60, 80.44, 80.08, 80.15,
			80.95, 80.70, 80.06, 80.30,
		},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("out of round %.2f, taper %.2f, long axis at %.1f degrees\n", out.OutOfRound, out.TaperMM, out.AxisClock.Value)
	fmt.Printf("clean-up bore between %.2f and %.2f mm\n", out.LowMM, out.HighMM.Value)
	// Output:
	// out of round 1.30, taper 0.82, long axis at 13.6 degrees
	// clean-up bore between 81.42 and 82.84 mm
}

// One-sided wear of 1.6 mm: a two-point gauge shows 91.6 mm, the true axis needs
// 93.7 mm.
func ExampleRadialCleanUp() {
	out, err := wear.RadialCleanUp(wear.RadialCleanUpInputs{
		OriginalMM: 90, StockMM: 0.25,
		ClockDeg: worked.List{0, 30, 60, 90, 120, 150, 180, 210, 240, 270, 300, 330},
		RadiusMM: worked.List{45.02, 45, 45.02, 45.8, 46.41, 46.6, 46.41, 45.8, 45.02, 45, 45.02, 45},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("gauge %.1f, true axis %.1f, free axis %.1f moved %.1f toward %.0f degrees\n",
		out.MaxDiameterMM.Value, out.OriginalAxis, out.FreeAxis, out.ShiftMM, out.ShiftClock)
	// Output: gauge 91.6, true axis 93.7, free axis 92.1 moved 0.8 toward 150 degrees
}

func ExampleGaugeSettingError() {
	for _, in := range []wear.GaugeSettingInputs{{DiameterMM: 100, TiltDeg: 2}, {DiameterMM: 100, OffsetMM: 2}, {DiameterMM: 50, FlatMM: 1}} {
		out, err := wear.GaugeSettingError(in)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%+.3f\n", out.ErrorMM)
	}
	// Output:
	// +0.061
	// -0.080
	// -0.010
}

func ExampleInstrumentUncertainty() {
	out, err := wear.InstrumentUncertainty(wear.InstrumentInputs{Instrument: "caliper"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%g to %g mm\n", out.LeastMM, out.MostMM)
	// Output: 0.05 to 0.1 mm
}

// A dial bore gauge zeroed on a ring.
func ExampleUncertaintyRSS() {
	out, err := wear.UncertaintyRSS(wear.UncertaintyInputs{
		Standard: worked.List{0.005, 0.002}, Rectangular: worked.List{0.010, 0.005, 0.0058}, Coverage: 2,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f mm\n", out.ExpandedMM)
	// Output: 0.018 mm
}

// What a dial gauge vouches for, a caliper does not.
func ExampleFitUncertainty() {
	for _, u := range []float64{0.018, 0.1} {
		out, err := wear.FitUncertainty(wear.FitUncertaintyInputs{BoreMM: 100, BoreU: u, SleeveMM: 100.08, SleeveU: 0.008, LeastTimes: 2})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.3f to %.3f mm: %s\n", out.LowMM, out.HighMM, out.Verdict)
	}
	// Output:
	// 0.060 to 0.100 mm: press
	// -0.020 to 0.180 mm: do_not_press
}

func ExampleThermalSize() {
	out, err := wear.ThermalSize(wear.ThermalSizeInputs{DiameterMM: 100, AlphaPerK: 11.5e-6, WarmerK: 40})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f mm\n", out.ChangeMM)
	// Output: 0.046 mm
}
