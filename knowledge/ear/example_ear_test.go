package ear_test

import (
	"fmt"

	"boremend/knowledge/ear"
	"boremend/knowledge/worked"
)

func ExamplePinPlateBTH1() {
	out, err := ear.PinPlateBTH1(ear.PinPlateBTH1Inputs{
		ThicknessMM: 60, SideWallMM: 32, EndWallMM: 32, PinMM: 96, HoleMM: 96, YieldMPa: 250,
		TensileMPa: 450, DesignFactor: 3, ApplyLooseness: "yes", CurvedEdge: "no",
		ShearAreaRule: "dp_phi", PinTurns: "no",
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kN, set by %s\n", out.AllowableN/1000, out.Governs)
	// Output: 436.8 kN, set by splitting
}

func ExampleLugLoad() {
	out, err := ear.LugLoad(ear.LugLoadInputs{BoreMM: 80, EndRadiusMM: 60, ThicknessMM: 30, ForceN: 90e3})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("pull %.0f, push %.0f, across %.0f MPa\n", out.PullMPa, out.PushMPa, out.SideMPa)
	// Output: pull 238, push 60, across 359 MPa
}

func ExampleLugLoadDirection() {
	out, err := ear.LugLoadDirection(ear.LugLoadDirectionInputs{
		BoreMM: 80, EndRadiusMM: 60, ThicknessMM: 25, ForceN: 200e3, AngleDeg: 60,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f MPa, at worst %.0f MPa\n", out.PeakMPa, out.WorstMPa)
	// Output: 982 MPa, at worst 1005 MPa
}

// A pin 1.5 mm loose; finite elements with contact give 478 and 143 MPa.
func ExampleLugContact() {
	out, err := ear.LugContact(ear.LugContactInputs{
		BoreMM: 80, EndRadiusMM: 60, ThicknessMM: 25, ForceN: 100e3, ClearanceMM: 1.5,
		Direction: "pull", ModulusMPa: 205000,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("count on %.0f MPa in the ear and %.0f MPa under the pin\n", out.PeakMPa, out.PressureMPa)
	// Output: count on 497 MPa in the ear and 258 MPa under the pin
}

// Finite elements with contact give 100 MPa.
func ExampleLugSleeve() {
	out, err := ear.LugSleeve(ear.LugSleeveInputs{
		PinMM: 60, SleeveWallMM: 5, ThicknessMM: 25, ForceN: 75e3, ClearanceMM: 0.2, PinEMPa: 205000,
		EarEMPa: 205000,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("count on %.0f MPa on the seat\n", out.HousingMPa)
	// Output: count on 110 MPa on the seat
}

func ExamplePinPlateAISC() {
	out, err := ear.PinPlateAISC(ear.PinPlateAISCInputs{
		WidthMM: worked.Some(200), ThicknessMM: 20, PinMM: 50, SideWallMM: worked.Some(30),
		EndWallMM: 30, YieldMPa: 275, TensileMPa: 410,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("tension %.0f, shear %.1f, bearing %.1f, yield %.0f kN; inside the scope: %s\n", out.RuptureLRFDN/1000, out.ShearLRFDN/1000, out.BearingLRFDN/1000, out.YieldLRFDN/1000, out.InsideScope)
	// Output: tension 369, shear 405.9, bearing 371.2, yield 990 kN; inside the scope: no
}

func ExampleEyebarAISC() {
	out, err := ear.EyebarAISC(ear.EyebarAISCInputs{WidthMM: 76.2, ThicknessMM: 15.875, YieldMPa: 248.2})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kN\n", out.LRFDN/1000)
	// Output: 270 kN
}

func ExamplePadeyeDNV() {
	out, err := ear.PadeyeDNV(ear.PadeyeDNVInputs{
		Edition: "2.7-1", ForceN: 6403, ThicknessMM: 10, HoleMM: 25, EdgeRadiusMM: 25,
		ModulusMPa: 210000,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("tear-out %.1f MPa, contact %.1f MPa\n", out.TearOutMPa, out.ContactMPa)
	// Output: tear-out 76.8 MPa, contact 119.9 MPa
}

func ExamplePadeyeSimple() {
	out, err := ear.PadeyeSimple(ear.PadeyeSimpleInputs{ForceN: 117680, ThicknessMM: 35, HoleMM: 42, EdgeRadiusMM: 97})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f, %.1f and %.1f MPa\n", out.BearingMPa, out.ShearMPa, out.TensionMPa)
	// Output: 80.1, 44.2 and 22.1 MPa
}

func ExampleLugAllowables() {
	out, err := ear.LugAllowables(ear.LugAllowablesInputs{
		HoleMM: 50.8, ThicknessMM: 38.1, WidthMM: 101.6, Kt: worked.Some(0.9), TensileMPa: 489.5,
		AppliedN: worked.Some(264901), FittingFactor: 1.15,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kN, margin %.2f\n", out.NetTensionN.Value/1000, out.MarginTension.Value)
	// Output: 853 kN, margin 1.80
}

func ExampleLugOblique() {
	out, err := ear.LugOblique(ear.LugObliqueInputs{
		AxialN: 71453, TransverseN: 119090, AxialMostN: 308750, TransverseMostN: 259875,
		FittingFactor: 1.15, ThicknessShare: 0.73,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("at %.2f degrees a margin of %.3f\n", out.AngleDeg, out.Margin)
	// Output: at 59.04 degrees a margin of 0.156
}
