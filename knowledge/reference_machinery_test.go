package knowledge

import (
	"math"
	"strings"
	"testing"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// TestUnitEndings holds the units of reference cases to figures of NIST SP 811,
// appendix B.8 (from memory).
func TestUnitEndings(t *testing.T) {
	tests := []struct {
		key, name string
		kind      quantity.Kind
		given     float64
		canonical float64
	}{
		{"seat_diameter_in", "seat_diameter", quantity.Length, 4, 101.6},
		{"Lower_UM", "lower", quantity.Length, 21, 0.021},
		{"hub_e_psi", "hub_e", quantity.Stress, 30e6, 206842.719},
		{"pressure_ksi", "pressure", quantity.Pressure, 1, 6.894757293},
		{"force_kn", "force", quantity.Force, 2.5, 2500},
		{"press_force_short_tons", "press_force", quantity.Force, 1, 8896.443230521},
		{"room_f", "room", quantity.Temperature, 212, 100},
		{"peak_K", "peak", quantity.Temperature, 300, 26.85},
		{"rise_f", "rise", quantity.TemperatureChange, 18, 10},
		{"drop_k", "drop", quantity.TemperatureChange, 55, 55},
		{"alpha_per_f", "alpha", quantity.Expansion, 6.5e-6, 11.7e-6},
		{"torque_lbf_ft", "torque", quantity.Torque, 1, 1.355817948},
		{"density_lb_in3", "density", quantity.Density, 0.284, 7861.092},
		{"time_h", "time", quantity.Time, 2, 7200},
	}
	for _, test := range tests {
		u, ok := unitOf(test.key, test.name, test.kind)
		if !ok {
			t.Errorf("%s has no unit of %s", test.key, test.kind)
			continue
		}
		if got := u.toCanonical(test.given); math.Abs(got-test.canonical) > 1e-6*math.Abs(test.canonical) {
			t.Errorf("%s: %g is %.9g, want %.9g", test.key, test.given, got, test.canonical)
		}
		if back := u.fromCanonical(u.toCanonical(test.given)); math.Abs(back-test.given) > 1e-9*math.Abs(test.given) {
			t.Errorf("%s: there and back turns %g into %g", test.key, test.given, back)
		}
	}
	for _, wrong := range []struct {
		key, name string
		kind      quantity.Kind
	}{{"force_mm", "force", quantity.Force}, {"force", "force", quantity.Force}, {"force_furlong", "force", quantity.Force}, {"enforce_n", "force", quantity.Force}} {
		if _, ok := unitOf(wrong.key, wrong.name, wrong.kind); ok {
			t.Errorf("%s is taken for a %s", wrong.key, wrong.kind)
		}
	}
}

// TestExpectation shows that a wrong answer is found.
func TestExpectation(t *testing.T) {
	got := &answers{values: map[string]worked.Value{
		"pressure": measured(10, quantity.Pressure), "risk": {Word: "low"}, "count": measured(3, quantity.Count), "upper": measured(0, quantity.Length),
	}}
	share, none := 0.01, 0.0
	tests := []struct {
		name     string
		expected expectation
		says     string // empty: passes
	}{
		{"pressure_mpa", expectation{Value: 10.05, TolRel: &share}, ""},
		{"pressure_mpa", expectation{Value: 10.2, TolRel: &share}, "got 10"},
		{"pressure_psi", expectation{Value: 1450.377, TolRel: &share}, ""},
		{"pressure_psi", expectation{Value: 10, TolRel: &share}, "got 1450"},
		{"pressure_mm", expectation{Value: 10, TolRel: &share}, "no answer"},
		{"pressure_mpa", expectation{Value: 10.0}, "no tolerance"},
		{"pressure_mpa", expectation{Value: 10, TolRel: &none}, ""},
		{"pressure_mpa", expectation{Value: 10.001, TolRel: &none}, "got 10"},
		{"pressure_mpa", expectation{Value: "low", TolRel: &none}, `got ""`},
		{"risk", expectation{Value: "low"}, ""},
		{"risk", expectation{Value: "high"}, `got "low"`},
		{"risk", expectation{Value: 1, TolRel: &share}, "the word"},
		{"count", expectation{Value: 3, TolAbs: &none}, ""},
		{"count", expectation{Value: 4, TolAbs: &none}, "got 3"},
		{"upper_um", expectation{Value: 0, TolAbs: &share}, ""},
		{"lower_um", expectation{Value: 0, TolAbs: &share}, "no answer"},
	}
	for _, test := range tests {
		err := test.expected.check(got, test.name)
		if test.says == "" && err != nil || test.says != "" && (err == nil || !strings.Contains(err.Error(), test.says)) {
			t.Errorf("%s expected %v: %v, want %q", test.name, test.expected.Value, err, test.says)
		}
	}
}

// TestUnusedInputIsFound: an input that no adapter looks at may change the answer.
func TestUnusedInputIsFound(t *testing.T) {
	c := referenceCase{ID: "x", Kind: "interference_per_diameter", Inputs: map[string]any{"diameter_in": 4.0, "allowance_per_inch": 0.001, "temperature_c": 20}}
	if _, err := runReference(fitAdapters[c.Kind], c); err == nil || !strings.Contains(err.Error(), "temperature_c") {
		t.Errorf("got %v, want temperature_c named", err)
	}
	delete(c.Inputs, "temperature_c")
	if _, err := runReference(fitAdapters[c.Kind], c); err != nil {
		t.Error(err)
	}
}
