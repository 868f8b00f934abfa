package fit

import "testing"

// The advice weighs thousands of variants: a pure function must not leave
// garbage behind while its inputs are good.
func TestNoAllocations(t *testing.T) {
	ring := PressFitPressureInputs{SeatDiameterMM: 110, HubODMM: 190, SleeveIDMM: 90, HubEMPa: 2e5, HubNu: 0.29, SleeveEMPa: 2e5, SleeveNu: 0.29, InterferenceMM: 0.13}
	sheet := usualPressFit()
	tests := map[string]func() error{
		"PressFit": func() error { _, err := PressFit(sheet); return err },
		"PressFitEar": func() error {
			_, err := PressFitEar(PressFitEarInputs{SeatDiameterMM: 110, EdgeWallMM: 40, SleeveIDMM: 90, EarEMPa: 2e5, EarNu: 0.29, SleeveEMPa: 2e5, SleeveNu: 0.29, InterferenceMM: 0.13})
			return err
		},
		"PressFitPressure": func() error { _, err := PressFitPressure(ring); return err },
		"HoopFromPressure": func() error {
			_, err := HoopFromPressure(HoopFromPressureInputs{PressureMPa: 30, SeatDiameterMM: 110, HubODMM: 190, SleeveIDMM: 90})
			return err
		},
		"VonMises": func() error { _, err := VonMises(VonMisesInputs{HoopMPa: 60, RadialMPa: -30}); return err },
		"ElasticLimit": func() error {
			_, err := ElasticLimit(ElasticLimitInputs{SeatDiameterMM: 110, HubODMM: 190, SleeveIDMM: 90, HubYieldMPa: 275, SleeveYieldMPa: 355, Safety: 1})
			return err
		},
		"InterferenceFromPressure": func() error {
			_, err := InterferenceFromPressure(InterferenceFromPressureInputs{SeatDiameterMM: 40, HubODMM: 60, SleeveIDMM: 20, HubEMPa: 2e5, HubNu: 0.3, SleeveEMPa: 2e5, SleeveNu: 0.3, HoopLimitMPa: 100, Limited: "either"})
			return err
		},
		"BoreClosure": func() error {
			_, err := BoreClosure(BoreClosureInputs{SeatDiameterMM: 110, HubODMM: 190, SleeveIDMM: 90, InterferenceMM: 0.13})
			return err
		},
		"RoughnessLoss": func() error {
			_, err := RoughnessLoss(RoughnessLossInputs{RzBoreMM: 0.01, RzSleeveMM: 0.01, InterferenceMM: 0.1})
			return err
		},
		"Capacity": func() error {
			_, err := Capacity(CapacityInputs{SeatDiameterMM: 110, LengthMM: 80, PressureMPa: 30, Mu: 0.12})
			return err
		},
		"SlipAssembly": func() error {
			_, err := SlipAssembly(SlipAssemblyInputs{SeatDiameterMM: 110, InterferenceMM: 0.13, RoomC: 20, EarAlphaPerK: 11.7e-6, SleeveMetal: "carbon_steel", EarTreatment: "hardened"})
			return err
		},
		"ThermalStrain": func() error {
			_, err := ThermalStrain(ThermalStrainInputs{Material: "carbon_steel", FromC: 20, ToC: -196})
			return err
		},
		"ISO286Limits": func() error { _, err := ISO286Limits(ISO286LimitsInputs{NominalMM: 110, Zone: "js7"}); return err },
		"ISO286Fit": func() error {
			_, err := ISO286Fit(ISO286FitInputs{NominalMM: 110, Hole: "H7", Shaft: "s6"})
			return err
		},
		"ANSIB41Limits": func() error { _, err := ANSIB41Limits(ANSIB41LimitsInputs{NominalMM: 100, Class: "FN2"}); return err },
		"LeadInChamfer": func() error { _, err := LeadInChamfer(LeadInChamferInputs{BoreDiameterMM: 100}); return err },
		"HoldingFriction": func() error {
			_, err := HoldingFriction(FrictionInputs{Metals: "steel_bronze", WayIn: "shrunk"})
			return err
		},
		"PressTonnage": func() error {
			_, err := PressTonnage(PressTonnageInputs{DiameterMM: 100, LengthMM: 80, AllowanceMM: 0.1})
			return err
		},
	}
	for name, f := range tests {
		t.Run(name, func(t *testing.T) {
			if err := f(); err != nil {
				t.Fatal(err)
			}
			if n := testing.AllocsPerRun(100, func() { _ = f() }); n != 0 {
				t.Errorf("%g allocations", n)
			}
		})
	}
}
