package weld_test

import (
	"fmt"

	"boremend/knowledge/weld"
)

func ExamplePreheatEnergy() {
	out, err := weld.PreheatEnergy(weld.PreheatEnergyInputs{
		MassKG: 25, StartC: 15, TargetC: 150, SpecificHeat: 0.49, Efficiency: 0.3, BurnerKW: 20,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f MJ, %.1f min\n", out.EnergyKJ/1000, out.TimeS/60)
	// Output: 5.5 MJ, 4.6 min
}

func ExampleInterpassRise() {
	out, err := weld.InterpassRise(weld.InterpassRiseInputs{
		Voltage: 19, Current: 170, Efficiency: 0.8, ArcS: 1200, MassKG: 30, SpecificHeat: 0.49,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f K\n", out.RiseK)
	// Output: 211 K
}

func ExamplePeakTemperature() {
	out, err := weld.PeakTemperature(weld.PeakTemperatureInputs{
		StartC: 24.85, MeltingC: 1499.85, DensityKGM3: 8000, SpecificHeat: 0.5107896, ThicknessMM: 6,
		DistanceMM: 5, HeatInput: 0.79496,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f degC\n", out.PeakC)
	// Output: 785.2 degC
}

// The worksheet comes to 11.93 a pound.
func ExampleWeldCost() {
	out, err := weld.WeldCost(weld.WeldCostInputs{
		LabourRate: 45, DepositKG: 4.62664, OperatingFactor: 0.45, FillerPrice: 3.9242,
		Efficiency: 0.87, GasMM3: 1.13267e9, GasPrice: 0.70629,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f a kilogram, %.2f of it labour\n", out.Total, out.Labour)
	// Output: 26.30 a kilogram, 21.61 of it labour
}

func ExampleWeldPayback() {
	out, err := weld.WeldPayback(weld.WeldPaybackInputs{
		EquipmentCost: 2900, Saving: 37.875, DepositKG: 4.62664, OperatingFactor: 0.45,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kg, %.0f h\n", out.WeldMetalKG, out.WeldingS/3600)
	// Output: 76.6 kg, 37 h
}
