package quantity_test

import (
	"testing"

	"boremend/engine/quantity"
)

func TestKindNamed(t *testing.T) {
	for k, name := range quantity.KindNames() {
		if got, ok := quantity.KindNamed(name); !ok || got != quantity.Kind(k) || got.String() != name {
			t.Errorf("%s: got %s, %v", name, got, ok)
		}
	}
	if got, ok := quantity.KindNamed("lenght"); ok {
		t.Errorf("lenght is taken for %s", got)
	}
}

func TestDimension(t *testing.T) {
	length, force := quantity.Length.Dimension(), quantity.Force.Dimension()
	tests := []struct {
		got  quantity.Dimension
		want string
	}{
		{length.Times(length), "area"},
		{length.Times(length).Times(length), "volume"},
		{force.Over(length.Times(length)), "stress"},
		{force.Times(length), "length*force"},
		{quantity.Energy.Dimension().Over(length), "heat_input"},
		{quantity.Energy.Dimension().Over(quantity.Time.Dimension()), "power"},
		{quantity.Expansion.Dimension().Times(quantity.TemperatureChange.Dimension()), "ratio"},
		{length.Over(force).Over(force), "length/force2"},
		{quantity.Ratio.Dimension().Over(length), "1/length"},
	}
	for _, test := range tests {
		if test.got.String() != test.want {
			t.Errorf("got %s, want %s", test.got, test.want)
		}
	}
	if quantity.Torque.Dimension() == force.Times(length) {
		t.Error("a torque in N*m compares with a product in N*mm")
	}
	if !length.Over(length).None() || length.None() {
		t.Error("only a bare number has no dimension")
	}
}
