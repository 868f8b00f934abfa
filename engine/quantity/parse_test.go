package quantity_test

import (
	"math"
	"testing"

	"boremend/engine/quantity"
)

// near allows for one rounding in the expectation, which is written as a
// product; everything that is exact in decimals is compared exactly.
func near(got, want float64) bool {
	return got == want || math.Abs(got-want) <= 4e-16*math.Abs(want)
}

const poundForce = 4.4482216152605 // N

func TestParse(t *testing.T) {
	tests := []struct {
		text       string
		kind       quantity.Kind
		bare       string
		value      float64
		giveOrTake float64
		given      bool
	}{
		// Numbers.
		{"22 mm", quantity.Length, "", 22, 0, false},
		{"22mm", quantity.Length, "", 22, 0, false},
		{"  22 \t mm ", quantity.Length, "", 22, 0, false},
		{"22", quantity.Length, "mm", 22, 0, false},
		{"0.875", quantity.Length, "in", 22.225, 0, false},
		{"0.875", quantity.Length, "inch", 22.225, 0, false},
		{"7/8 in", quantity.Length, "", 22.225, 0, false},
		{"7/8in", quantity.Length, "", 22.225, 0, false},
		{`7/8"`, quantity.Length, "", 22.225, 0, false},
		{"7/8”", quantity.Length, "", 22.225, 0, false},
		{"7/8", quantity.Length, "in", 22.225, 0, false},
		{"1-1/4 in", quantity.Length, "", 31.75, 0, false},
		{"1 1/4 in", quantity.Length, "", 31.75, 0, false},
		{"1  1/4in", quantity.Length, "", 31.75, 0, false},
		{"-1-1/4 in", quantity.Length, "", -31.75, 0, false},
		{"0.875 in", quantity.Length, "", 22.225, 0, false},
		{".875 in", quantity.Length, "", 22.225, 0, false},
		{"5. mm", quantity.Length, "", 5, 0, false},
		{"+5 mm", quantity.Length, "", 5, 0, false},
		{"007 mm", quantity.Length, "", 7, 0, false},
		{"1e3 mm", quantity.Length, "", 1000, 0, false},
		{"1.5E-3 m", quantity.Length, "", 1.5, 0, false},
		{"0e999999999 mm", quantity.Length, "", 0, 0, false},
		{"-0 mm", quantity.Length, "", 0, 0, false},
		// Give-or-take.
		{"22 ±0.5 mm", quantity.Length, "", 22, 0.5, true},
		{"22±0.5mm", quantity.Length, "", 22, 0.5, true},
		{"22 +/- 0.5 mm", quantity.Length, "", 22, 0.5, true},
		{"22 mm ± 0.5 mm", quantity.Length, "", 22, 0.5, true},
		{"22 mm ± 0.5", quantity.Length, "", 22, 0.5, true},
		{"22 ±0.5", quantity.Length, "mm", 22, 0.5, true},
		{"22 ±0.5 mm", quantity.Length, "in", 22, 0.5, true},
		{"22 mm +/- 9 thou", quantity.Length, "", 22, 0.2286, true},
		{"22 ±9 thou", quantity.Length, "", 0.5588, 0.2286, true},
		{"22 ±9 thou", quantity.Length, "thou", 0.5588, 0.2286, true},
		{"2-1/4 ±1/64 in", quantity.Length, "", 57.15, 0.396875, true},
		{"22 mm ±0", quantity.Length, "", 22, 0, true},
		{"22 mm ±2 %", quantity.Length, "", 22, 0.44, true},
		{"22 ±2%", quantity.Length, "mm", 22, 0.44, true},
		{"-50 mm ±2 %", quantity.Length, "", -50, 1, true},
		{"1 m ±1.5 per mille", quantity.Length, "", 1000, 1.5, true},
		{"0.31 +/- 0.01", quantity.Ratio, "", 0.31, 0.01, true},
		{"30 % ±2 %", quantity.Ratio, "", 0.3, 0.02, true},
		{"30 % ±2", quantity.Ratio, "", 0.3, 0.02, true},
		{"3 ±1", quantity.Count, "", 3, 1, true},
		{"310 kN ±25 %", quantity.Force, "", 310e3, 77.5e3, true},
		{"1250 ±10 %", quantity.Money, "", 1250, 125, true},
		{"54 ±2 degF", quantity.Temperature, "", 110. / 9, 10. / 9, true},
		{"12 degC ± 2 K", quantity.Temperature, "", 12, 2, true},
		{"60 K ±10 %", quantity.TemperatureChange, "", 60, 6, true},
		// Lengths, areas, volumes.
		{"2 cm", quantity.Length, "", 20, 0, false},
		{"2 m", quantity.Length, "", 2000, 0, false},
		{"1 inch", quantity.Length, "", 25.4, 0, false},
		{"2 inches", quantity.Length, "", 50.8, 0, false},
		{"1 in.", quantity.Length, "", 25.4, 0, false},
		{"1 ft", quantity.Length, "", 304.8, 0, false},
		{"9 thou", quantity.Length, "", 0.2286, 0, false},
		{"12 um", quantity.Length, "", 0.012, 0, false},
		{"12 µm", quantity.Length, "", 0.012, 0, false}, // micro sign
		{"12 μm", quantity.Length, "", 0.012, 0, false}, // Greek mu
		{"5 mm²", quantity.Area, "", 5, 0, false},
		{"1 in2", quantity.Area, "", 645.16, 0, false},
		{"1 in³", quantity.Volume, "", 16387.064, 0, false},
		{"2 l", quantity.Volume, "", 2e6, 0, false},
		// Forces, stresses.
		{"310 kN", quantity.Force, "", 310e3, 0, false},
		{"1 lbf", quantity.Force, "", poundForce, 0, false},
		{"1 kip", quantity.Force, "", 4448.2216152605, 0, false},
		{"5 short tons", quantity.Force, "", 44482.216152605, 0, false},
		{"5 short_ton", quantity.Force, "", 44482.216152605, 0, false},
		{"1 tonne-force", quantity.Force, "", 9806.65, 0, false},
		{"60 ksi", quantity.Stress, "", 60e3 * poundForce / 645.16, 0, false},
		{"345 N/mm²", quantity.Stress, "", 345, 0, false},
		{"207 GPa", quantity.Stress, "", 207e3, 0, false},
		{"30 Mpsi", quantity.Stress, "", 30e6 * poundForce / 645.16, 0, false},
		{"350 bar", quantity.Pressure, "", 35, 0, false},
		{"3000 psi", quantity.Pressure, "", 3000 * poundForce / 645.16, 0, false},
		{"40 kPa", quantity.Pressure, "", 0.04, 0, false},
		// Temperatures, hardness.
		{"12 degC", quantity.Temperature, "", 12, 0, false},
		{"12 °C", quantity.Temperature, "", 12, 0, false},
		{"-6 degC", quantity.Temperature, "", -6, 0, false},
		{"−6 °C", quantity.Temperature, "", -6, 0, false},
		{"54 degF", quantity.Temperature, "", 110. / 9, 0, false},
		{"-40 degF", quantity.Temperature, "", -40, 0, false},
		{"300 K", quantity.Temperature, "", 26.85, 0, false},
		{"90 degF", quantity.TemperatureChange, "", 50, 0, false},
		{"50 degC", quantity.TemperatureChange, "", 50, 0, false},
		{"350 HV", quantity.HardnessVickers, "", 350, 0, false},
		{"240 HB", quantity.HardnessBrinell, "", 240, 0, false},
		{"240 HBW", quantity.HardnessBrinell, "", 240, 0, false},
		// The rest.
		{"2 %", quantity.Ratio, "", 0.02, 0, false},
		{"2", quantity.Ratio, "%", 0.02, 0, false},
		{"1.5 per mille", quantity.Ratio, "", 0.0015, 0, false},
		{"1.5 per  mille", quantity.Ratio, "", 0.0015, 0, false},
		{"1.5 ‰", quantity.Ratio, "", 0.0015, 0, false},
		{"1/8", quantity.Ratio, "", 0.125, 0, false},
		{"1/8", quantity.Ratio, "mm", 0.125, 0, false},
		{"3", quantity.Count, "", 3, 0, false},
		{"90 min", quantity.Time, "", 5400, 0, false},
		{"1 1/2 h", quantity.Time, "", 5400, 0, false},
		{"2 days", quantity.Time, "", 172800, 0, false},
		{"1250", quantity.Money, "", 1250, 0, false},
		{"1250 money", quantity.Money, "", 1250, 0, false},
		{"2.5 t", quantity.Mass, "", 2500, 0, false},
		{"1 lb", quantity.Mass, "", 0.45359237, 0, false},
		{"7.85 kg/dm3", quantity.Density, "", 7850, 0, false},
		{"7.85 g/cm³", quantity.Density, "", 7850, 0, false},
		{"30 °", quantity.Angle, "", 30, 0, false},
		{"1 rad", quantity.Angle, "", 180 / math.Pi, 0, false},
		{"100 ft/min", quantity.Speed, "", 30.48, 0, false},
		{"2 m/s", quantity.Speed, "", 120, 0, false},
		{"5 mm/s", quantity.Speed, "", 0.3, 0, false},
		{"150 N·m", quantity.Torque, "", 150, 0, false},
		{"150 Nm", quantity.Torque, "", 150, 0, false},
		{"150 N.m", quantity.Torque, "", 150, 0, false},
		{"1.5 kN*m", quantity.Torque, "", 1500, 0, false},
		{"1 lbf*ft", quantity.Torque, "", 1.3558179483314004, 0, false},
		{"12 ft-lb", quantity.Torque, "", 12 * 1.3558179483314004, 0, false},
		{"12 lbf*in", quantity.Torque, "", 1.3558179483314004, 0, false},
		{"500 J", quantity.Energy, "", 0.5, 0, false},
		{"1 MJ", quantity.Energy, "", 1000, 0, false},
		{"1 hp", quantity.Power, "", 0.74569987158227022, 0, false},
		{"500 W", quantity.Power, "", 0.5, 0, false},
		{"25.4 kJ/in", quantity.HeatInput, "", 1, 0, false},
		{"1000 J/mm", quantity.HeatInput, "", 1, 0, false},
		{"1.15e-5 1/K", quantity.Expansion, "", 1.15e-5, 0, false},
		{"11.5e-6/K", quantity.Expansion, "", 1.15e-5, 0, false},
		{"11.5 µm/m/K", quantity.Expansion, "", 1.15e-5, 0, false},
		{"5e-6 1/degF", quantity.Expansion, "", 9e-6, 0, false},
		{"5 ml/100g", quantity.Hydrogen, "", 5, 0, false},
	}
	for _, test := range tests {
		t.Run(test.text+" as "+test.kind.String(), func(t *testing.T) {
			got, err := quantity.Parse(test.text, test.kind, test.bare)
			if err != nil {
				t.Fatal(err)
			}
			if !near(got.Value, test.value) || !near(got.GiveOrTake, test.giveOrTake) {
				t.Errorf("got %.17g ±%.17g, want %.17g ±%.17g", got.Value, got.GiveOrTake, test.value, test.giveOrTake)
			}
			if got.HasGiveOrTake != test.given || got.Kind != test.kind || got.Written != test.text {
				t.Errorf("got %+v", got)
			}
		})
	}
}

// What is exact in decimals must come out as the very float64 of the decimal.
func TestParseIsExact(t *testing.T) {
	tests := []struct {
		text string
		kind quantity.Kind
		want float64
	}{
		{"1 in", quantity.Length, 25.4},
		{"0.1 in", quantity.Length, 2.54},
		{"4.3307 in", quantity.Length, 109.99978},
		{"9 thou", quantity.Length, 0.2286},
		{"1/64 in", quantity.Length, 0.396875},
		{"1 lbf", quantity.Force, 4.4482216152605},
		{"-40 degF", quantity.Temperature, -40},
		{"50 degF", quantity.Temperature, 10},
		{"0.1 um", quantity.Length, 0.0001},
		{"1 lb", quantity.Mass, 0.45359237},
		{"11.5 um/m/K", quantity.Expansion, 0.0000115},
		{"1 lbf*ft", quantity.Torque, 1.3558179483314004},
	}
	for _, test := range tests {
		got, err := quantity.Parse(test.text, test.kind, "")
		if err != nil || got.Value != test.want {
			t.Errorf("%s: got %.17g, want %.17g (%v)", test.text, got.Value, test.want, err)
		}
	}
}

func TestParseWithBareUnit(t *testing.T) {
	tests := []struct {
		text, bare string
		kind       quantity.Kind
		want       string
	}{
		// A unit of another kind does not help: units of a job are lengths.
		{"310", "mm", quantity.Force, "310 has no unit (add one: N, kN, MN, lbf, kip, short_ton or tonne-force)"},
		{"310", "furlong", quantity.Length, "310 has no unit (add one: mm, cm, m, in, ft, thou or um)"},
		{"22 ±9 thou", "mm", quantity.Length, "22 may be in mm or in thou (write the unit of both, as 22 mm ±9 thou)"},
		{"22 ±9 µm", "mm", quantity.Length, "22 may be in mm or in um (write the unit of both, as 22 mm ±9 um)"},
	}
	for _, test := range tests {
		if _, err := quantity.Parse(test.text, test.kind, test.bare); err == nil || err.Error() != test.want {
			t.Errorf("%q, bare %q: got %v, want %s", test.text, test.bare, err, test.want)
		}
	}
}

func TestParseGiveOrTake(t *testing.T) {
	tests := []struct {
		text  string
		kind  quantity.Kind
		bare  string
		size  float64
		share bool
	}{
		{"1 mm", quantity.Length, "", 1, false},
		{"1", quantity.Length, "mm", 1, false},
		{"±1 mm", quantity.Length, "", 1, false},
		{"+/- 1 mm", quantity.Length, "", 1, false},
		{"9 thou", quantity.Length, "mm", 0.2286, false},
		{"0 mm", quantity.Length, "", 0, false},
		{"2 %", quantity.Length, "", 0.02, true},
		{"1.5 per mille", quantity.Force, "", 0.0015, true},
		{"20 %", quantity.Ratio, "", 0.2, true},
		{"0.03", quantity.Ratio, "", 0.03, false},
		{"25 degC", quantity.Temperature, "", 25, false},
		{"45 degF", quantity.Temperature, "", 25, false},
		{"25 K", quantity.Temperature, "", 25, false},
		{"15 HBW", quantity.HardnessBrinell, "", 15, false},
		{"1", quantity.Count, "", 1, false},
	}
	for _, test := range tests {
		size, share, err := quantity.ParseGiveOrTake(test.text, test.kind, test.bare)
		if err != nil || size != test.size || share != test.share {
			t.Errorf("%s of a %s: got %v, %v, %v", test.text, test.kind, size, share, err)
		}
	}
}
