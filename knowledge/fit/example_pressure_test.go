package fit_test

import (
	"fmt"

	"boremend/knowledge/fit"
	"boremend/knowledge/worked"
)

// What most repairs look like: a steel sleeve of 10 mm
// wall, pressed into a steel ear with 40 mm of wall.
func ExamplePressFit() {
	out, err := fit.PressFit(fit.PressFitInputs{
		SeatDiameterMM: 110, LengthMM: 80, SleeveIDMM: 90, EdgeWallMM: 40, EarRadiusMM: worked.Some(98),
		InterferenceLeast: 0.09, InterferenceMost: 0.13,
		EarEMPa: 205e3, EarNu: 0.29, EarMetal: "ductile", EarStrengthMPa: 250, SleeveEMPa: 205e3, SleeveNu: 0.29, SleeveYieldMPa: 450,
		RzBoreMM: 0.010, RzSleeveMM: 0.010, FrictionHolding: 0.07, FrictionLow: 0.12, FrictionHigh: 0.20,
		RoomC: 20, ServiceColdestC: -20, ServiceHottestC: 60, EarAlphaPerK: 11.7e-6, SleeveAlphaPerK: 11.7e-6,
		SleeveMetal: "carbon_steel", EarTreatment: "plain",
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("holds with %.1f MPa and %.0f kN\n", out.PressureLeastMPa, out.HoldingForceN/1000)
	fmt.Printf("takes %.0f to %.0f kN to press in\n", out.PressForceLowN/1000, out.PressForceHighN/1000)
	fmt.Printf("ear %.0f MPa, sleeve bore %.0f MPa; the %s limits, safety %.2f\n", out.EquivalentMPa, out.SleeveHoopMPa, out.Limits, out.Safety)
	fmt.Printf("the bore loses up to %.3f mm; slip it in by %s at %.0f degC\n", out.MostClosureMM, out.Way, out.HeatOnlyC)
	// Output:
	// holds with 19.5 MPa and 38 kN
	// takes 114 to 221 kN to press in
	// ear 101 MPa, sleeve bore -242 MPa; the sleeve limits, safety 1.86
	// the bore loses up to 0.106 mm; slip it in by heat at 206 degC
}

// Ear e01 of the finite-element series: pressure 23.17 MPa, hoop 94.2 MPa at the
// free end.
func ExamplePressFitEar() {
	out, err := fit.PressFitEar(fit.PressFitEarInputs{
		SeatDiameterMM: 60, EdgeWallMM: 10.5, EarRadiusMM: worked.Some(40.5), SleeveIDMM: 50.4,
		EarEMPa: 205e3, EarNu: 0.3, SleeveEMPa: 205e3, SleeveNu: 0.3, InterferenceMM: 0.06,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("p %.2f MPa, hoop %.1f MPa in the ring, %.1f MPa in the ear\n", out.PressureMPa, out.RingHoopMPa, out.HoopPressedMPa)
	// Output:
	// p 22.22 MPa, hoop 76.3 MPa in the ring, 95.4 MPa in the ear
}

// A wall too thin for the formulas is refused, with the range named.
func ExamplePressFitEar_thinWall() {
	_, err := fit.PressFitEar(fit.PressFitEarInputs{
		SeatDiameterMM: 110, EdgeWallMM: 11, SleeveIDMM: 90,
		EarEMPa: 205e3, EarNu: 0.3, SleeveEMPa: 205e3, SleeveNu: 0.3, InterferenceMM: 0.1,
	})
	fmt.Println(err)
	// Output:
	// edge_wall: is 0.1 of the seat, the ear formulas hold from 0.125 (ear radius over seat radius 1.25) up
}

// Boresi and Schmidt, Example 11.3: 189.0, 315.0 and -450.0 MPa.
func ExamplePressFitPressure() {
	out, err := fit.PressFitPressure(fit.PressFitPressureInputs{
		SeatDiameterMM: 50, HubODMM: 100, SleeveIDMM: 20, HubEMPa: 200e3, HubNu: 0.29, SleeveEMPa: 200e3, SleeveNu: 0.29, InterferenceMM: 0.144,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("p %.1f, hub %.1f, sleeve bore %.1f MPa\n", out.PressureMPa, out.HubHoopAtSeatMPa, out.SleeveHoopAtIDMPa)
	// Output:
	// p 189.0, hub 315.0, sleeve bore -450.0 MPa
}

// Junnarkar, Mechanics of Structures, ch. 10 Ex. 11, with 1500 as the unit of
// stress: 8318.2 and -4687.5.
func ExampleHoopFromPressure() {
	out, err := fit.HoopFromPressure(fit.HoopFromPressureInputs{PressureMPa: 1500, SeatDiameterMM: 10, HubODMM: 12, SleeveIDMM: 6})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f %.1f\n", out.HubHoopAtSeatMPa, out.SleeveHoopAtIDMPa)
	// Output:
	// 8318.2 -4687.5
}

// Boresi and Schmidt, Example 11.4: 947.47 MPa.
func ExampleVonMises() {
	out, err := fit.VonMises(fit.VonMisesInputs{HoopMPa: 568.75, RadialMPa: -525})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f MPa\n", out.VonMisesMPa)
	// Output:
	// 947.47 MPa
}

// A steel sleeve of 10 mm wall yields before the ear does.
func ExampleElasticLimit() {
	out, err := fit.ElasticLimit(fit.ElasticLimitInputs{SeatDiameterMM: 110, HubODMM: 190, SleeveIDMM: 90, HubYieldMPa: 275, SleeveYieldMPa: 355, Safety: 1})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("ear %.1f, sleeve %.1f MPa: the %s yields first\n", out.HubTrescaMPa, out.SleeveBoreMPa, out.Limits)
	// Output:
	// ear 91.4, sleeve 58.7 MPa: the sleeve yields first
}

// Ugural and Fenster, Example 8.2: 125.9, 143.8 and 200 MPa.
func ExampleThickCylinderYield() {
	out, err := fit.ThickCylinderYield(fit.ThickCylinderYieldInputs{InnerDiameterMM: 200, OuterDiameterMM: 300, PressureRatio: 0.25, YieldMPa: 340})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f %.1f %.1f MPa\n", out.TrescaMPa, out.VonMisesMPa, out.MaxPrincipalMPa)
	// Output:
	// 125.9 143.8 200.0 MPa
}

// Bhandari, Examples 22.6 and 22.7: the inner tube governs.
func ExampleInterferenceFromPressure() {
	out, err := fit.InterferenceFromPressure(fit.InterferenceFromPressureInputs{
		SeatDiameterMM: 40, HubODMM: 60, SleeveIDMM: 20, HubEMPa: 207e3, HubNu: 0.3, SleeveEMPa: 207e3, SleeveNu: 0.3,
		HoopLimitMPa: 100, Limited: "either",
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f MPa and %.4f mm, the %s governs\n", out.PressureMPa, out.InterferenceMM, out.Governs)
	// Output:
	// 37.5 MPa and 0.0309 mm, the sleeve governs
}

// A seat bore that grew by 0.2 mm tells the pressure behind it.
func ExamplePressureFromSeatGrowth() {
	out, err := fit.PressureFromSeatGrowth(fit.PressureFromSeatGrowthInputs{
		SeatDiameterMM: 200, HubODMM: 350, SleeveIDMM: 100, HubEMPa: 200e3, HubNu: 0.28, SleeveEMPa: 80e3, SleeveNu: 0.33, HubBoreGrowthMM: 0.2,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f MPa from %.3f mm\n", out.PressureMPa, out.InterferenceMM)
	// Output:
	// 88.9 MPa from 0.497 mm
}

// Less than the whole interference comes off the bore.
func ExampleBoreClosure() {
	out, err := fit.BoreClosure(fit.BoreClosureInputs{SeatDiameterMM: 110, HubODMM: 190, SleeveIDMM: 90, InterferenceMM: 0.13})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f mm, %.3f mm in a stiff ear\n", out.BoreClosureMM, out.MostClosureMM)
	// Output:
	// 0.091 mm, 0.106 mm in a stiff ear
}
