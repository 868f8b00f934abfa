package fit_test

import (
	"fmt"

	"boremend/knowledge/fit"
)

func ExampleInterferencePerDiameter() {
	out, err := fit.InterferencePerDiameter(fit.InterferencePerDiameterInputs{DiameterMM: 100, AllowancePerInch: 0.0015})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", out.AllowanceMM)
	// Output:
	// 0.15 mm
}

// Both surfaces lose their crests.
func ExampleRoughnessLoss() {
	out, err := fit.RoughnessLoss(fit.RoughnessLossInputs{RzBoreMM: 0.010, RzSleeveMM: 0.0063, InterferenceMM: 0.100})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("loses %.5f mm, %.5f mm is left\n", out.Loss2001MM, out.Effective2001MM)
	// Output:
	// loses 0.01304 mm, 0.08696 mm is left
}

// Bronze in steel loosens in the cold.
func ExampleServiceInterference() {
	out, err := fit.ServiceInterference(fit.ServiceInterferenceInputs{
		SeatDiameterMM: 100, InterferenceMM: 0.1, HubAlphaPerK: 11.7e-6, SleeveAlphaPerK: 17e-6, AssemblyC: 20, ServiceC: -40,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.4f mm left\n", out.InterferenceMM)
	// Output:
	// 0.0682 mm left
}

func ExampleHoldingFriction() {
	out, err := fit.HoldingFriction(fit.FrictionInputs{Metals: "steel_steel", WayIn: "shrunk"})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.Least)
	_, err = fit.HoldingFriction(fit.FrictionInputs{Metals: "steel_bronze", WayIn: "pressed_dry"})
	fmt.Println(err)
	// Output:
	// 0.15
	// way_in: is pressed_dry, for which no friction of steel_bronze is listed
}

func ExampleCapacity() {
	out, err := fit.Capacity(fit.CapacityInputs{SeatDiameterMM: 110, LengthMM: 80, PressureMPa: 37.1, Mu: 0.12})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kN or %.0f N m\n", out.AxialForceN/1000, out.TorqueNM)
	// Output:
	// 123.1 kN or 6769 N m
}

func ExampleCombinedGrip() {
	out, err := fit.CombinedGrip(fit.CombinedGripInputs{SeatDiameterMM: 100, LengthMM: 50, PressureMPa: 20, Mu: 0.1, AxialLoadN: 9000, TorqueNM: 600})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N against %.0f N, safety %.2f\n", out.SlipForceN, out.ResultantN, out.Safety)
	// Output:
	// 31416 N against 15000 N, safety 2.09
}

// Fairfield University ME311, HW8.1: 4.8 MN on 35 343 mm2.
func ExamplePressureForTorque() {
	out, err := fit.PressureForTorque(fit.PressureForTorqueInputs{TorqueNM: 90000, SeatDiameterMM: 150, LengthMM: 75, Mu: 0.25})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f MN on %.0f mm2: %.1f MPa\n", out.NormalForceN/1e6, out.ContactAreaMM2, out.PressureMPa)
	// Output:
	// 4.8 MN on 35343 mm2: 135.8 MPa
}

func ExamplePressForce() {
	out, err := fit.PressForce(fit.PressForceInputs{SeatDiameterMM: 110, LengthMM: 80, PressureMPa: 34.3, FrictionLow: 0.12, FrictionHigh: 0.20})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f to %.0f kN\n", out.ForceLowN/1000, out.ForceHighN/1000)
	// Output:
	// 114 to 190 kN
}

func ExamplePressForcePerLength() {
	out, err := fit.PressForcePerLength(fit.PressForcePerLengthInputs{ForcePerMMN: 340, WidthMM: 30})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kN\n", out.PressForceN/1000)
	// Output:
	// 10.2 kN
}

// 4 in diameter, 6 in long, 0.008 in tight: 34.7 short tons on an oiled press.
func ExamplePressTonnage() {
	out, err := fit.PressTonnage(fit.PressTonnageInputs{DiameterMM: 101.6, LengthMM: 152.4, AllowanceMM: 0.2032})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("factor %.0f: %.1f short tons\n", out.Factor, out.PressForceN/8896.443230521)
	// Output:
	// factor 115: 34.7 short tons
}

func ExamplePressTonnageRule() {
	out, err := fit.PressTonnageRule(fit.PressTonnageRuleInputs{DiameterMM: 228.6})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f short tons\n", out.PressForceN/8896.443230521)
	// Output:
	// 150 short tons
}
