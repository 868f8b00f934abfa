package fit

import (
	"strings"
	"testing"

	"boremend/knowledge/worked"
)

// What lies outside a formula's range is refused with the reason, and the last
// value inside is taken.
func TestRefusals(t *testing.T) {
	cooling := func(shaft, hole float64) error {
		_, err := ShrinkCooling(ShrinkCoolingInputs{ShaftDiameterMM: shaft, HoleDiameterMM: hole, StartTemperatureC: 20, AlphaPerK: 1e-5})
		return err
	}
	ring := func(wall float64) error {
		_, err := ThinRing(ThinRingInputs{RingDiameterMM: 200, RingThicknessMM: wall, TemperatureDropK: 50, AlphaPerK: 1.2e-5, RingEMPa: 2e5})
		return err
	}
	tonnage := func(inches float64) error {
		_, err := PressTonnage(PressTonnageInputs{DiameterMM: inches * mmPerInch, LengthMM: 50, AllowanceMM: 0.02})
		return err
	}
	chill := func(od, bore, coolant float64) error {
		_, err := ColdShrink(ColdShrinkInputs{InnerODMM: od, HubBoreMM: bore, ClearanceMM: 0.05, RoomC: 20, CoolantC: coolant, Material: "carbon_steel"})
		return err
	}
	grip := func(axial, torque float64) error {
		_, err := CombinedGrip(CombinedGripInputs{SeatDiameterMM: 100, LengthMM: 50, PressureMPa: 20, Mu: 0.1, AxialLoadN: axial, TorqueNM: torque})
		return err
	}
	strain := func(metal string, from, to float64) error {
		_, err := ThermalStrain(ThermalStrainInputs{Material: metal, FromC: from, ToC: to})
		return err
	}
	limits := func(odMax, odMin, boreMax, boreMin float64) error {
		_, err := FitFromLimits(FitFromLimitsInputs{SleeveODMaxMM: odMax, SleeveODMinMM: odMin, BoreMaxMM: boreMax, BoreMinMM: boreMin})
		return err
	}
	tests := []struct {
		name string
		err  error
		says string // empty: accepted
	}{
		{"cooling to just above absolute zero", cooling(100, 100-0.292), ""},
		{"cooling below absolute zero", cooling(100, 100-0.294), "absolute zero"},
		{"no cooling needed", cooling(100, 100.1), "no cooling is needed"},
		{"thin ring", ring(10), ""},
		{"ring too thick for the formula", ring(10.1), "twentieth"},
		{"tonnage at the ends of the table", tonnage(10.5), ""},
		{"tonnage below the table", tonnage(0.99), "1 to 10.5 in"},
		{"tonnage above the table", tonnage(10.51), "1 to 10.5 in"},
		{"chilling that is not needed", chill(100, 100.1, -78.5), "no chilling is needed"},
		{"coolant warmer than the room", chill(100, 99.95, 30), "coolant"},
		{"coolant colder than the table", chill(100, 99.95, -250), "no figure"},
		{"grip under one load", grip(0, 100), ""},
		{"grip without a load", grip(0, 0), "no load"},
		{"metal that is not in the table", strain("bronze", 20, -196), "bronze"},
		{"copper in nitrogen", strain("copper", 20, -196), "no figure"},
		{"no change of temperature", strain("carbon_steel", 20, 20), "same temperature"},
		{"limits of size the wrong way round", limits(100.1, 100.2, 100, 100.01), "sleeve_od_max"},
		{"limits of size the wrong way round, both named", limits(100.1, 100.2, 100, 100.01), "bore_max"},
		{"loose limits are an answer", limits(100, 99.9, 100.1, 100), ""},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if test.says == "" && test.err != nil || test.says != "" && (test.err == nil || !strings.Contains(test.err.Error(), test.says)) {
				t.Errorf("got %v, want %q", test.err, test.says)
			}
		})
	}
}

func TestPressFitRefuses(t *testing.T) {
	tests := []struct {
		name string
		bend func(*PressFitInputs)
		says string
	}{
		{"least above most", func(in *PressFitInputs) { in.InterferenceLeast = 0.2 }, "interference_most"},
		{"largest wall below the smallest", func(in *PressFitInputs) { in.LargestWallMM = worked.Some(39) }, "largest_wall"},
		{"solid pin", func(in *PressFitInputs) { in.SleeveIDMM = 0 }, "sleeve_id"},
		{"friction the wrong way round", func(in *PressFitInputs) { in.FrictionHigh = 0.1 }, "friction_high"},
		{"friction in percent", func(in *PressFitInputs) { in.FrictionHolding = 12 }, "friction_holding"},
		{"roughness in micrometres", func(in *PressFitInputs) { in.RzBoreMM = 10 }, "rz_bore"},
		{"hottest below coldest", func(in *PressFitInputs) { in.ServiceHottestC = -30 }, "service_hottest"},
		{"expansion in millionths", func(in *PressFitInputs) { in.SleeveAlphaPerK = 11.7 }, "sleeve_alpha"},
		{"thin ear", func(in *PressFitInputs) { in.EdgeWallMM = 13 }, "0.125"},
		{"unknown treatment", func(in *PressFitInputs) { in.EarTreatment = "" }, "ear_treatment"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			in := usualPressFit()
			if _, err := PressFit(in); err != nil {
				t.Fatal(err)
			}
			test.bend(&in)
			if out, err := PressFit(in); err == nil || !strings.Contains(err.Error(), test.says) {
				t.Errorf("got %+v, %v; want a refusal that says %q", out, err, test.says)
			}
		})
	}
}

// A fit that roughness has eaten holds nothing, and not less than nothing.
func TestLooseFitHoldsNothing(t *testing.T) {
	in := usualPressFit()
	in.InterferenceLeast = 0.005
	out, err := PressFit(in)
	if err != nil {
		t.Fatal(err)
	}
	if out.InterferenceGrip >= 0 || out.PressureLeastMPa != 0 || out.HoldingForceN != 0 || out.HoldingTorqueNM != 0 {
		t.Errorf("%g mm left holds %g N at %g MPa", out.InterferenceGrip, out.HoldingForceN, out.PressureLeastMPa)
	}
}

// usualPressFit is a steel sleeve of 10 mm wall in a steel ear of 40 mm wall.
func usualPressFit() PressFitInputs {
	return PressFitInputs{
		SeatDiameterMM: 110, LengthMM: 80, SleeveIDMM: 90, EdgeWallMM: 40, LargestWallMM: worked.Some(60), InterferenceLeast: 0.09, InterferenceMost: 0.13,
		EarEMPa: 205e3, EarNu: 0.29, EarMetal: "ductile", EarStrengthMPa: 250, SleeveEMPa: 205e3, SleeveNu: 0.29, SleeveYieldMPa: 450,
		RzBoreMM: 0.01, RzSleeveMM: 0.01, FrictionHolding: 0.07, FrictionLow: 0.12, FrictionHigh: 0.2, RoomC: 20, ServiceColdestC: -20, ServiceHottestC: 60,
		EarAlphaPerK: 11.7e-6, SleeveAlphaPerK: 11.7e-6, SleeveMetal: "carbon_steel", EarTreatment: "plain",
	}
}
