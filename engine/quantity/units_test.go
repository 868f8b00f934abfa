package quantity_test

import (
	"math"
	"testing"

	"boremend/engine/quantity"
)

func kinds() []quantity.Kind {
	var all []quantity.Kind
	for k := range quantity.KindNames() {
		all = append(all, quantity.Kind(k))
	}
	return all
}

func TestEveryKindHasItsUnits(t *testing.T) {
	for _, kind := range kinds() {
		names := quantity.Units(kind)
		if len(names) == 0 || names[0] != kind.Unit() {
			t.Errorf("%s: units %q do not begin with the canonical %q", kind, names, kind.Unit())
			continue
		}
		seen := map[string]bool{}
		for _, name := range names {
			if seen[name] {
				t.Errorf("%s: unit %q twice", kind, name)
			}
			seen[name] = true
			if _, ok := quantity.FromUnit(1, name); !ok {
				t.Errorf("%s: FromUnit does not know %q", kind, name)
			}
			r, err := quantity.Parse("1.5 "+name, kind, "")
			if kind == quantity.Count {
				r, err = quantity.Parse("2", kind, "")
			}
			if err != nil {
				t.Errorf("%s in %q: %v", kind, name, err)
			}
			if v, ok := r.In(name); !ok || v != 1.5 && kind != quantity.Count {
				t.Errorf("%s: 1.5 %s comes back as %v, %v", kind, name, v, ok)
			}
		}
		one := quantity.Quantity{Value: 1, Kind: kind}
		if v, ok := one.In(kind.Unit()); !ok || v != 1 {
			t.Errorf("%s: 1 in its canonical unit is %v, %v", kind, v, ok)
		}
		if kind.Plain() == "" {
			t.Errorf("%s has no plain name", kind)
		}
	}
}

// The factors of NIST SP 811, appendix B.8, from memory, to the seven digits
// that it prints: half a unit of the seventh digit is at most 5e-7 of the whole.
func TestPublishedFactors(t *testing.T) {
	tests := []struct {
		unit    string
		kind    quantity.Kind
		inUnit  string
		printed float64
	}{
		{"lbf", quantity.Force, "N", 4.448222},
		{"kip", quantity.Force, "N", 4448.222},
		{"short_ton", quantity.Force, "kN", 8.896443},
		{"tonne-force", quantity.Force, "kN", 9.80665},
		{"psi", quantity.Stress, "kPa", 6.894757},
		{"ksi", quantity.Stress, "MPa", 6.894757},
		{"Mpsi", quantity.Stress, "GPa", 6.894757},
		{"bar", quantity.Stress, "Pa", 1e5},
		{"lbf*ft", quantity.Torque, "N*m", 1.355818},
		{"lbf*in", quantity.Torque, "N*m", 0.1129848},
		{"hp", quantity.Power, "W", 745.6999},
		{"lb/in3", quantity.Density, "kg/m3", 27679.90},
		{"lb", quantity.Mass, "kg", 0.4535924},
		{"in2", quantity.Area, "mm2", 645.16},
		{"ft2", quantity.Area, "m2", 0.09290304},
		{"in3", quantity.Volume, "mm3", 16387.06},
		{"ft3", quantity.Volume, "m3", 0.02831685},
		{"thou", quantity.Length, "um", 25.4},
		{"ft/min", quantity.Speed, "m/s", 0.00508},
		{"in/min", quantity.Speed, "mm/s", 0.4233333},
		{"1/degF", quantity.Expansion, "1/K", 1.8},
		{"uin/in/degF", quantity.Expansion, "um/m/K", 1.8},
		{"rad", quantity.Angle, "deg", 57.29578},
	}
	for _, test := range tests {
		q, ok := quantity.FromUnit(1, test.unit)
		q.Kind = kindOr(q.Kind, test.kind)
		got, also := q.In(test.inUnit)
		if !ok || !also || math.Abs(got/test.printed-1) > 5e-7 {
			t.Errorf("1 %s = %v %s, published %v", test.unit, got, test.inUnit, test.printed)
		}
	}
}

// kindOr keeps the kind found where it measures the same as the wanted one.
func kindOr(found, wanted quantity.Kind) quantity.Kind {
	if found.Dimension() == wanted.Dimension() {
		return wanted
	}
	return found
}

func TestIn(t *testing.T) {
	tests := []struct {
		q    quantity.Quantity
		unit string
		want float64
		ok   bool
	}{
		{quantity.Quantity{Value: 25.4, Kind: quantity.Length}, "in", 1, true},
		{quantity.Quantity{Value: 22.225, Kind: quantity.Length}, "in", 0.875, true},
		{quantity.Quantity{Value: 0.2286, Kind: quantity.Length}, "thou", 9, true},
		{quantity.Quantity{Value: 0.012, Kind: quantity.Length}, "µm", 12, true},
		{quantity.Quantity{Value: 12.222222222222221, Kind: quantity.Temperature}, "degF", 54, true},
		{quantity.Quantity{Value: -17.77777777777778, Kind: quantity.Temperature}, "degF", 0, true},
		{quantity.Quantity{Value: 20, Kind: quantity.Temperature}, "K", 293.15, true},
		{quantity.Quantity{Value: 75.021587874631109, Kind: quantity.Temperature}, "degF", 167.038858174336, true},
		{quantity.Quantity{Value: 0.25, Kind: quantity.Ratio}, "%", 25, true},
		{quantity.Quantity{Value: 180, Kind: quantity.Angle}, "rad", math.Pi, true},
		{quantity.Quantity{Value: 0, Kind: quantity.Length}, "in", 0, true},
		{quantity.Quantity{Value: 25.4, Kind: quantity.Length}, "N", 0, false},
		{quantity.Quantity{Value: 25.4, Kind: quantity.Length}, "", 0, false},
		{quantity.Quantity{Value: math.NaN(), Kind: quantity.Length}, "in", 0, false},
		{quantity.Quantity{Value: math.Inf(1), Kind: quantity.Length}, "in", 0, false},
		{quantity.Quantity{Value: 1e308, Kind: quantity.Length}, "um", 0, false},
		{quantity.Quantity{Value: 5e-324, Kind: quantity.Length}, "m", 0, false},
	}
	for _, test := range tests {
		if got, ok := test.q.In(test.unit); got != test.want || ok != test.ok {
			t.Errorf("%v %s in %s: got %v, %v, want %v, %v", test.q.Value, test.q.Kind.Unit(), test.unit, got, ok, test.want, test.ok)
		}
	}
}

func TestFromUnit(t *testing.T) {
	tests := []struct {
		value float64
		unit  string
		want  quantity.Quantity
		ok    bool
	}{
		{1, "in", quantity.Quantity{Value: 25.4, Kind: quantity.Length}, true},
		{60, "K", quantity.Quantity{Value: 60, Kind: quantity.TemperatureChange}, true},
		{-40, "degF", quantity.Quantity{Value: -40, Kind: quantity.Temperature}, true},
		{20, "degC", quantity.Quantity{Value: 20, Kind: quantity.Temperature}, true},
		{345, "MPa", quantity.Quantity{Value: 345, Kind: quantity.Stress}, true},
		{0.5, "", quantity.Quantity{Value: 0.5, Kind: quantity.Ratio}, true},
		{1250, "money", quantity.Quantity{Value: 1250, Kind: quantity.Money}, true},
		{1, "furlong", quantity.Quantity{}, false},
		{math.NaN(), "mm", quantity.Quantity{}, false},
		{math.Inf(1), "mm", quantity.Quantity{}, false},
		{1e308, "m", quantity.Quantity{}, false},
	}
	for _, test := range tests {
		if got, ok := quantity.FromUnit(test.value, test.unit); got != test.want || ok != test.ok {
			t.Errorf("%v %s: got %+v, %v, want %+v, %v", test.value, test.unit, got, ok, test.want, test.ok)
		}
	}
}
