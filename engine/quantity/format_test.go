package quantity_test

import (
	"math"
	"testing"

	"boremend/engine/quantity"
)

func TestFormat(t *testing.T) {
	tests := []struct {
		value    float64
		kind     quantity.Kind
		mm, inch string
	}{
		{22, quantity.Length, "22 mm", "0.8661 in"},
		{58.9, quantity.Length, "58.9 mm", "2.3189 in"},
		{25.4, quantity.Length, "25.4 mm", "1.0000 in"},
		{110, quantity.Length, "110 mm", "4.3307 in"},
		{3.9, quantity.Length, "3.9 mm", "0.1535 in"},
		{0.13, quantity.Length, "0.13 mm", "0.00512 in"}, // four decimals would leave two digits
		{0.2286, quantity.Length, "0.229 mm", "0.0090 in"},
		{0.0235, quantity.Length, "0.0235 mm", "0.000925 in"},
		{0.0005, quantity.Length, "0.0005 mm", "0.0000197 in"},
		{1.0005, quantity.Length, "1.001 mm", "0.0394 in"},
		{-6, quantity.Length, "-6 mm", "-0.2362 in"},
		{0, quantity.Length, "0 mm", "0 in"},
		{math.Copysign(0, -1), quantity.Length, "0 mm", "0 in"},
		{5000, quantity.Length, "5000 mm", "196.8504 in"},
		{999.9999, quantity.Length, "1000 mm", "39.3701 in"},
		{5e-10, quantity.Length, "5e-10 mm", "1.97e-11 in"},
		{999999999999999, quantity.Length, "999999999999999 mm", "39370078740157.4409 in"},
		{1e15, quantity.Length, "1e15 mm", "39370078740157.4803 in"},
		{1.25e300, quantity.Length, "1.25e300 mm", "4.921259842519685e298 in"},
		{645.16, quantity.Area, "645.2 mm2", "1 in2"},
		{8000, quantity.Volume, "8000 mm3", "0.4882 in3"},
		{0.00012345, quantity.Ratio, "0.0001235", "0.0001235"},
		{0.3, quantity.Ratio, "0.3", "0.3"},
		{3, quantity.Count, "3", "3"},
		{9999, quantity.Force, "9999 N", "2248 lbf"},
		{310e3, quantity.Force, "310 kN", "69691 lbf"},
		{-310e3, quantity.Force, "-310 kN", "-69691 lbf"},
		{413.6854375901, quantity.Stress, "413.7 MPa", "60 ksi"},
		{207e3, quantity.Stress, "207000 MPa", "30023 ksi"},
		{20.68427187950, quantity.Stress, "20.68 MPa", "3000 psi"},
		{68.94757293168361, quantity.Stress, "68.95 MPa", "10 ksi"},
		{100, quantity.Pressure, "100 MPa", "14504 psi"},
		{12, quantity.Temperature, "12 degC", "53.6 degF"},
		{12.222222222222221, quantity.Temperature, "12.2 degC", "54 degF"},
		{-17.77777777777778, quantity.Temperature, "-17.8 degC", "0 degF"},
		{-0.01, quantity.Temperature, "0 degC", "32 degF"},
		{50, quantity.TemperatureChange, "50 K", "90 degF"},
		{349.64, quantity.HardnessVickers, "349.6 HV", "349.6 HV"},
		{240, quantity.HardnessBrinell, "240 HBW", "240 HBW"},
		{45, quantity.Time, "45 s", "45 s"},
		{90, quantity.Time, "1.5 min", "1.5 min"},
		{5400, quantity.Time, "1.5 h", "1.5 h"},
		{172800, quantity.Time, "48 h", "48 h"},
		{1250, quantity.Money, "1250.00", "1250.00"},
		{0.004, quantity.Money, "0.004", "0.004"},
		{2500, quantity.Mass, "2500 kg", "5512 lb"},
		{7850, quantity.Density, "7850 kg/m3", "0.2836 lb/in3"},
		{37.5, quantity.Angle, "37.5 deg", "37.5 deg"},
		{30.48, quantity.Speed, "30.48 m/min", "100 ft/min"},
		{150, quantity.Torque, "150 N*m", "110.6 lbf*ft"},
		{1.5, quantity.Energy, "1.5 kJ", "1.5 kJ"},
		{3.7, quantity.Power, "3.7 kW", "4.962 hp"},
		{1, quantity.HeatInput, "1 kJ/mm", "25.4 kJ/in"},
		{1.15e-5, quantity.Expansion, "11.5 um/m/K", "6.389 uin/in/degF"},
		{5, quantity.Hydrogen, "5 ml/100g", "5 ml/100g"},
		{math.NaN(), quantity.Length, "not a finite number", "not a finite number"},
		{math.Inf(-1), quantity.Force, "not a finite number", "not a finite number"},
	}
	for _, test := range tests {
		q := quantity.Quantity{Value: test.value, Kind: test.kind}
		if got := q.Format(quantity.Millimetre); got != test.mm {
			t.Errorf("%v %s: got %q, want %q", test.value, test.kind.Unit(), got, test.mm)
		}
		if got := q.Format(quantity.Inch); got != test.inch {
			t.Errorf("%v %s in inches: got %q, want %q", test.value, test.kind.Unit(), got, test.inch)
		}
	}
}

func TestFormatReading(t *testing.T) {
	tests := []struct {
		text     string
		kind     quantity.Kind
		mm, inch string
	}{
		{"22 mm", quantity.Length, "22 mm", "0.8661 in"},
		{"22 ±0.5 mm", quantity.Length, "22 ±0.5 mm", "0.8661 ±0.0197 in"},
		{"22 ±0 mm", quantity.Length, "22 ±0 mm", "0.8661 ±0 in"},
		{"310 kN ±500 N", quantity.Force, "310 ±0.5 kN", "69691 ±112.4 lbf"},
		{"54 ±2 degF", quantity.Temperature, "12.2 ±1.1 degC", "54 ±2 degF"},
		{"0.31 ±0.01", quantity.Ratio, "0.31 ±0.01", "0.31 ±0.01"},
		{"1250 ±10", quantity.Money, "1250.00 ±10.00", "1250.00 ±10.00"},
		{"90 ±5 min", quantity.Time, "1.5 ±0.08333 h", "1.5 ±0.08333 h"},
		{"12 degC ±0.02 K", quantity.Temperature, "12 ±0.02 degC", "53.6 ±0.036 degF"},
	}
	for _, test := range tests {
		r, err := quantity.Parse(test.text, test.kind, "")
		if err != nil {
			t.Fatal(err)
		}
		if got := r.Format(quantity.Millimetre); got != test.mm {
			t.Errorf("%s: got %q, want %q", test.text, got, test.mm)
		}
		if got := r.Format(quantity.Inch); got != test.inch {
			t.Errorf("%s in inches: got %q, want %q", test.text, got, test.inch)
		}
	}
	broken := quantity.Reading{GiveOrTake: math.NaN(), HasGiveOrTake: true}
	if got := broken.Format(quantity.Millimetre); got != "not a finite number" {
		t.Errorf("NaN: got %q", got)
	}
}

func TestFormatStock(t *testing.T) {
	tests := []struct {
		value    float64
		kind     quantity.Kind
		mm, inch string
	}{
		{22.225, quantity.Length, "22 mm", "7/8 in"},
		{22.3, quantity.Length, "22.5 mm", "7/8 in"},
		{22.25, quantity.Length, "22.5 mm", "7/8 in"}, // halves go up
		{31.75, quantity.Length, "32 mm", "1-1/4 in"},
		{50.8, quantity.Length, "51 mm", "2 in"},
		{0.396875, quantity.Length, "0.5 mm", "1/64 in"},
		{-31.75, quantity.Length, "-32 mm", "-1-1/4 in"},
		{-0.396875, quantity.Length, "-0.5 mm", "-1/64 in"},
		{0.1984375, quantity.Length, "0.198 mm", "1/64 in"},
		{0.13, quantity.Length, "0.13 mm", "0.00512 in"}, // would round to nothing
		{0, quantity.Length, "0 mm", "0 in"},
		{1e300, quantity.Length, "1e300 mm", "3.937007874015748e298 in"},
		{310e3, quantity.Force, "310 kN", "69691 lbf"},
		{math.NaN(), quantity.Length, "not a finite number", "not a finite number"},
	}
	for _, test := range tests {
		q := quantity.Quantity{Value: test.value, Kind: test.kind}
		if got := q.FormatStock(quantity.Millimetre); got != test.mm {
			t.Errorf("%v: got %q, want %q", test.value, got, test.mm)
		}
		if got := q.FormatStock(quantity.Inch); got != test.inch {
			t.Errorf("%v in inches: got %q, want %q", test.value, got, test.inch)
		}
	}
}

func TestFormatRounded(t *testing.T) {
	tests := []struct {
		value    float64
		kind     quantity.Kind
		mm, inch string
	}{
		{300, quantity.Length, "300 mm", "11.8 in"},
		{5.5, quantity.Length, "5.5 mm", "0.217 in"},
		{2, quantity.Length, "2 mm", "0.0787 in"},
		{25.4, quantity.Length, "25.4 mm", "1 in"},
		{375.21, quantity.HardnessVickers, "375 HV", "375 HV"},
		{0, quantity.Length, "0 mm", "0 in"},
		{0.125, quantity.Ratio, "0.125", "0.125"},
	}
	for _, tt := range tests {
		q := quantity.Quantity{tt.value, tt.kind}
		if got := q.FormatRounded(quantity.Millimetre); got != tt.mm {
			t.Errorf("%v %s: got %q, want %q", tt.value, tt.kind, got, tt.mm)
		}
		if got := q.FormatRounded(quantity.Inch); got != tt.inch {
			t.Errorf("%v %s in inches: got %q, want %q", tt.value, tt.kind, got, tt.inch)
		}
	}
}
