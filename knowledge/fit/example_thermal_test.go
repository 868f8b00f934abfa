package fit_test

import (
	"fmt"

	"boremend/knowledge/fit"
	"boremend/knowledge/worked"
)

// Dry ice alone is not enough for the interference and a gap as well.
func ExampleSlipAssembly() {
	out, err := fit.SlipAssembly(fit.SlipAssemblyInputs{
		SeatDiameterMM: 110, InterferenceMM: 0.13, RoomC: 20, EarAlphaPerK: 11.7e-6, SleeveMetal: "carbon_steel", EarTreatment: "quenched_tempered",
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("needs %.3f mm; dry ice gives %.3f, nitrogen %.3f\n", out.NeededMM, out.DryIceMM, out.NitrogenMM)
	fmt.Printf("%s: ear at %.0f degC of %.0f allowed\n", out.Way, out.HeatOnlyC, out.HeatingLimitC)
	// Output:
	// needs 0.240 mm; dry ice gives 0.109, nitrogen 0.214
	// heat: ear at 206 degC of 300 allowed
}

// Boresi and Schmidt, Example 11.3: 331.6 K.
func ExampleShrinkTemperature() {
	out, err := fit.ShrinkTemperature(fit.ShrinkTemperatureInputs{SeatDiameterMM: 50, InterferenceMM: 0.144, ClearanceMM: 0.05, HubAlphaPerK: 11.7e-6})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f K\n", out.TemperatureRiseK)
	// Output:
	// 331.6 K
}

func ExampleShrinkCombined() {
	out, err := fit.ShrinkCombined(fit.ShrinkCombinedInputs{
		SeatDiameterMM: 110, InterferenceMM: 0.13, ClearanceMM: 0.11, HubAlphaPerK: 11.5e-6, SleeveAlphaPerK: 10.1e-6, RoomC: 20, SleeveC: -78.5,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f degC\n", out.HubTemperatureC)
	// Output:
	// 123.2 degC
}

// NCERT Physics class XI, exercise 10.7: about -69 degC.
func ExampleShrinkCooling() {
	out, err := fit.ShrinkCooling(fit.ShrinkCoolingInputs{ShaftDiameterMM: 87, HoleDiameterMM: 86.9, StartTemperatureC: 27, AlphaPerK: 12e-6})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f degC\n", out.AssemblyTemperatureC)
	// Output:
	// -68.8 degC
}

// The trunnion that stuck: a constant expansion says it goes in.
func ExampleColdShrink() {
	const inch = 25.4
	out, err := fit.ColdShrink(fit.ColdShrinkInputs{
		InnerODMM: 12.363 * inch, HubBoreMM: 12.358 * inch, ClearanceMM: 0.010 * inch,
		RoomC: (80 - 32) / 1.8, CoolantC: (-108 - 32) / 1.8, Material: "carbon_steel", AlphaRoomPerK: worked.Some(6.47e-6 * 1.8),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("needs %.4f in, constant expansion %.4f in, table %.4f in: enough %s\n",
		out.RequiredMM/inch, out.ConstantAlphaMM.Value/inch, out.TableMM/inch, out.Enough)
	// Output:
	// needs 0.0150 in, constant expansion 0.0150 in, table 0.0131 in: enough no
}

// Steel from 70 degF to nitrogen: the mean is well below 11.7e-6.
func ExampleThermalStrain() {
	out, err := fit.ThermalStrain(fit.ThermalStrainInputs{Material: "carbon_steel", FromC: 21.1, ToC: -196})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f per mille, mean %.1fe-6 1/K\n", out.Strain*1000, out.MeanExpansionK*1e6)
	// Output:
	// -1.957 per mille, mean 9.0e-6 1/K
}

// Singer and Pytel, Problem 267.
func ExampleThinRing() {
	out, err := fit.ThinRing(fit.ThinRingInputs{RingDiameterMM: 2000, RingThicknessMM: 12, TemperatureDropK: 55, AlphaPerK: 11.7e-6, RingEMPa: 200e3})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f MPa, %.4f MPa\n", out.RingHoopMPa, out.PressureMPa)
	// Output:
	// 128.7 MPa, 1.5444 MPa
}
