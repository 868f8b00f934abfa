package bolt_test

import (
	"fmt"

	"boremend/knowledge/bolt"
	"boremend/knowledge/worked"
)

// 250 kN on a dry 80 mm pin in a 96 mm seat of 100 mm: 9.2 MPa at a seat friction
// of 0.15.
func ExampleSleeveRetention() {
	out, err := bolt.SleeveRetention(bolt.SleeveRetentionInputs{
		LoadN: 250e3, PinMM: 80, SeatMM: 96, LengthMM: 100, PinFriction: 0.2, FitFriction: 0.15, ThrustN: worked.Some(0), SafetyWanted: 1.5, PressureMPa: worked.Some(12),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f MPa against turning, needs %.1f MPa: %s\n", out.TurningMPa, out.NeededMPa, out.HeldBy)
	// Output:
	// 9.2 MPa against turning, needs 13.8 MPa: lock
}

// Two shoulders of 5 mm need 11 mm of play; 9 mm leave 1 mm to counterbore.
func ExampleShoulder() {
	out, err := bolt.Shoulder(bolt.ShoulderInputs{
		ThrustN: 20e3, FinishMM: 80, SleeveODMM: 96, FlangeODMM: 120, CounterMM: 98, PlayMM: 9, Shoulders: 2, RunMM: 0.5, YieldMPa: 450, FaceMPa: 250, Poisson: 0.3,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%g mm thick, recess %g mm, bending %.0f MPa\n", out.ThicknessMM, out.RecessMM, out.BendingMPa.Value)
	// Output:
	// 5 mm thick, recess 1 mm, bending 201 MPa
}

func ExampleBoltCapture() {
	in := bolt.BoltCaptureInputs{
		Way: "joint_line", PinFriction: 0.2, LoadN: 120e3, ThrustN: worked.Some(10e3), PinMM: 80, SeatMM: 96, Size: "M12", Grade: "8.8", Screws: 4,
		LengthMM: 24, WeakerMPa: 250, EarMetal: "iron", Reverses: "yes", SafetyWanted: 2,
	}
	out, err := bolt.BoltCapture(in)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N m turn it; safety %.1f with 4 screws, %g needed, room for %g\n", out.TorqueNM, out.Safety, out.Needed, out.Room)
	fmt.Printf("land %g mm, thread %g mm\n", out.LandNeeded, out.ThreadNeeded)
	// Output:
	// 960 N m turn it; safety 5.3 with 4 screws, 3 needed, room for 4
	// land 25.5 mm, thread 24 mm
}

func ExampleBoltedReinforcement() {
	in := bolt.BoltedReinforcementInputs{
		PinLoadN: 150e3, BoreMM: 80, BoreFinish: "together", EarMM: 40, EarEMPa: 205e3, PlateMM: 16, PlateEMPa: 205e3, Plates: 1,
		Columns: 2, Rows: 3, ColumnPitchMM: 70, RowPitchMM: 70, Eccentricity: 140, EdgeMM: 35, Size: "M20", Grade: "8.8",
		Joint: "fitted", Fastening: "through", EarMetal: "steel", SlipMu: 0.1, Fraction: 0.75, FactorLeast: 0.12, FactorMost: 0.2, Stiffness: 0.33,
		PlateYieldMPa: 355, EarYieldMPa: 250, SafetyWanted: 2, SlipWanted: 1.5,
	}
	out, err := bolt.BoltedReinforcement(in)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("the plate takes %.0f %%; worst bolt %.1f kN across, %.1f kN along\n", 100*out.Share, out.ShearN/1000, out.PullN/1000)
	fmt.Printf("%.0f N m gives %.0f to %.0f kN; holds %.1f kN by friction, safety of the bolts %.1f\n",
		out.TorqueNM, out.PreloadLeastN/1000, out.PreloadMostN/1000, out.SlipN/1000, out.BoltSafety)
	in.BoreFinish = "apart"
	_, err = bolt.BoltedReinforcement(in)
	fmt.Println(err)
	// Output:
	// the plate takes 29 %; worst bolt 22.2 kN across, 2.0 kN along
	// 265 N m gives 66 to 110 kN; holds 6.4 kN by friction, safety of the bolts 5.3
	// bore_finish: is apart: a plate that is not bored together with the ear carries nothing that can be counted
}
