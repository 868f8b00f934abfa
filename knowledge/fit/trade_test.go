package fit

import (
	"testing"

	"boremend/knowledge/worked"
)

// Common practice, no source: a steel bush of 2-1/2 in OD with a 5/16 in wall, 3
// in long and 4 thousandths tight, goes into a 5 in steel boss with some 20 short
// tons.
func TestPressForceOfTheTrade(t *testing.T) {
	in := PressFitInputs{
		SeatDiameterMM: 2.5 * mmPerInch, LengthMM: 3 * mmPerInch, SleeveIDMM: (2.5 - 2*5.0/16) * mmPerInch,
		EdgeWallMM: 1.25 * mmPerInch, LargestWallMM: worked.Some(1.25 * mmPerInch), EarRadiusMM: worked.Some(2.5 * mmPerInch),
		InterferenceLeast: 0.004 * mmPerInch, InterferenceMost: 0.004 * mmPerInch,
		EarEMPa: 205e3, EarNu: 0.29, EarMetal: "ductile", EarStrengthMPa: 250, SleeveEMPa: 205e3, SleeveNu: 0.29, SleeveYieldMPa: 450,
		RzBoreMM: 0.01, RzSleeveMM: 0.01, FrictionHolding: 0.07, FrictionLow: 0.12, FrictionHigh: 0.20, RoomC: 20, ServiceColdestC: 20, ServiceHottestC: 20,
		EarAlphaPerK: 11.7e-6, SleeveAlphaPerK: 11.7e-6, SleeveMetal: "carbon_steel", EarTreatment: "plain",
	}
	out, err := PressFit(in)
	if err != nil {
		t.Fatal(err)
	}
	low, high := out.PressForceLowN/newtonsPerShortTon, out.PressForceHighN/newtonsPerShortTon
	if !(low < 20 && 20 < high) {
		t.Errorf("%.1f to %.1f short tons, want 20 in between", low, high)
	}
	if high > 2*low {
		t.Errorf("%.1f to %.1f short tons says nothing", low, high)
	}
}

// The pressure factor of the handbooks, worked back through Lame for a solid
// steel pin in a steel hub of twice its bore, is the friction of a well oiled
// press and far below that of a field press.
func TestPressureFactorIsAnOiledPress(t *testing.T) {
	for _, inches := range []float64{1, 2, 4, 6, 8, 10} {
		d := inches * mmPerInch
		tons, err := PressTonnage(PressTonnageInputs{DiameterMM: d, LengthMM: d, AllowanceMM: d / 1000})
		if err != nil {
			t.Fatal(err)
		}
		p := pressFitPressure(PressFitPressureInputs{SeatDiameterMM: d, HubODMM: 2 * d, HubEMPa: 206e3, HubNu: 0.29, SleeveEMPa: 206e3, SleeveNu: 0.29, InterferenceMM: d / 1000})
		mu := tons.PressForceN / (p.PressureMPa * tons.ContactAreaMM2)
		if mu < 0.035 || mu > 0.047 {
			t.Errorf("%g in: the factor means a friction of %.3f, want about 0.04", inches, mu)
		}
	}
}

// Heavy press 0.002 and light press 0.0015 for each inch: common practice, no
// source. Both lie within what was read, 1 to 2.5 thousandths.
func TestThousandthsOfTheTrade(t *testing.T) {
	tests := []struct {
		perInch float64
		warns   int
	}{{0.0005, 1}, {0.001, 0}, {0.0015, 0}, {0.002, 0}, {0.0025, 0}, {0.003, 1}}
	c := InterferencePerDiameterCalculation()
	for _, test := range tests {
		sheet, err := c.Run(map[string]worked.Value{"diameter": mm(100), "allowance_per_inch": ratio(test.perInch)})
		if err != nil {
			t.Fatal(err)
		}
		if len(sheet.Warnings) != test.warns {
			t.Errorf("%g for each inch warns %q", test.perInch, sheet.Warnings)
		}
	}
}
