package cut_test

import (
	"fmt"

	"boremend/knowledge/cut"
	"boremend/knowledge/worked"
)

// A chuck maker's table has 3100 MPa.
func ExampleKienzleKC() {
	out, err := cut.KienzleKC(cut.KienzleKCInputs{KC11MPa: 1990, MC: 0.26, FeedMM: 0.25, EnteringDeg: 45})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("chip %.3f mm, %.0f MPa\n", out.ChipMM, out.KCMPa)
	// Output: chip 0.177 mm, 3123 MPa
}

// 42CrMo4, the row of a chuck maker's table.
func ExampleKienzleFit() {
	out, err := cut.KienzleFit(cut.KienzleFitInputs{
		FeedMM: worked.List{0.16, 0.25, 0.4, 0.63, 1, 1.6}, KCMPa: worked.List{4350, 3900, 3450, 3100, 2750, 2450}, EnteringDeg: 45,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("kc11 %.0f MPa, mc %.3f, within %.1f %%\n", out.KC11MPa, out.MC, 100*out.WorstShare)
	// Output: kc11 2526 MPa, mc 0.250, within 0.3 %
}

func ExampleKienzleRatio() {
	out, err := cut.KienzleRatio(cut.KienzleRatioInputs{MC: 0.4, BeforeDeg: 60, AfterDeg: 90})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f %%\n", 100*out.Change)
	// Output: -5.6 %
}

func ExampleCuttingForce() {
	out, err := cut.CuttingForce(cut.CuttingForceInputs{KCMPa: 2400, DepthMM: 1.5, FeedMM: 0.2, RadialShare: 0.3, FeedShare: 0.6})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N along the cut, %.0f N across the bar\n", out.CuttingN, out.SideN)
	// Output: 720 N along the cut, 752 N across the bar
}

// The worked problem of a tool-maker's page.
func ExampleCuttingPower() {
	out, err := cut.CuttingPower(cut.CuttingPowerInputs{KCMPa: 3100, DepthMM: 3, FeedMM: 0.2, SpeedMPerMin: 120, Efficiency: 0.8})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f kW\n", out.MotorKW)
	// Output: 4.65 kW
}

func ExampleTurningRate() {
	out, err := cut.TurningRate(cut.TurningRateInputs{StartMM: 75, FinishMM: 65, LengthMM: worked.Some(200), RPM: 400, AxialMPerMin: worked.Some(0.2), SpecificMPa: 3000})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f mm3/min, %.1f kW, %.0f N\n", out.RateMM3, out.PowerKW, out.OuterN)
	// Output: 219911 mm3/min, 11.0 kW, 7000 N
}

func ExampleSpindleSpeed() {
	out, err := cut.SpindleSpeed(cut.SpindleSpeedInputs{DiameterMM: 150, SpindleRPM: worked.Some(250)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f m/min\n", out.CuttingMPerMin)
	// Output: 117.8 m/min
}

func ExampleSurfaceFinish() {
	out, err := cut.SurfaceFinish(cut.SurfaceFinishInputs{FeedMM: 0.25, NoseMM: worked.Some(0.8)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("Rz %.1f um, Ra %.1f um\n", 1000*out.RzMM.Value, 1000*out.RaMM.Value)
	// Output: Rz 9.8 um, Ra 2.5 um
}

func ExampleCutTime() {
	out, err := cut.CutTime(cut.CutTimeInputs{
		DiameterMM: worked.Some(100), LengthMM: 80, OverrunMM: 10, SpeedMPerMin: worked.Some(20), FeedMM: 0.2,
		StockMM: worked.Some(4), RoughMM: worked.Some(1.5), FinishMM: worked.Some(0.3), SpringPasses: 1,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f passes at %.0f rpm, %.1f min\n", out.Passes, out.RPM, out.TimeS/60)
	// Output: 5 passes at 64 rpm, 35.3 min
}

func ExampleCuttingData() {
	out, err := cut.CuttingData(cut.CuttingDataInputs{Work: "cast_steel_low", Tool: "carbide", ChipMM: 0.2})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f MPa, start at %.0f m/min\n", out.KCMPa, out.SpeedLeast)
	// Output: 2093 MPa, start at 45 m/min
}
