package knowledge

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// nonsense holds numbers that a slip of the finger or of a unit can produce.
var nonsense = []float64{
	math.NaN(), math.Inf(1), math.Inf(-1), 0, math.Copysign(0, -1), -1, -1e6, 1e308, -1e308, math.SmallestNonzeroFloat64, 1e-300, 1e30,
}

const everyInput = "every input"

// TestNonsense puts every such number into every input of every calculation, one
// at a time and all at once. A number that is none must be refused by its name;
// for the others a calculation refuses or gives finite answers, and never panics.
func TestNonsense(t *testing.T) {
	for _, c := range Calculations() {
		if c.Example == nil {
			continue
		}
		t.Run(c.Name, func(t *testing.T) {
			for _, v := range nonsense {
				all := exampleValues(t, c)
				hasNumbers := false
				for _, f := range c.Inputs {
					if f.IsWord {
						continue
					}
					bent := exampleValues(t, c)
					bent[f.Name] = nonsenseFor(f, v, bent[f.Name])
					all[f.Name] = nonsenseFor(f, v, all[f.Name])
					checkNonsense(t, c, bent, f.Name, v)
					hasNumbers = true
				}
				if hasNumbers {
					checkNonsense(t, c, all, everyInput, v)
				}
			}
			checkWords(t, c)
		})
	}
}

// nonsenseFor puts the number in place of the value, or in place of one number of
// a list.
func nonsenseFor(f worked.Field, v float64, usual worked.Value) worked.Value {
	if !f.IsList {
		return measured(v, f.Kind)
	}
	bent := append(worked.List{v}, usual.List...)
	if len(usual.List) > 0 {
		bent = bent[:len(usual.List)]
	}
	return listed(bent, f.Kind)
}

func checkNonsense(t *testing.T, c worked.Calculation, inputs map[string]worked.Value, name string, v float64) {
	t.Helper()
	defer func() {
		if r := recover(); r != nil {
			t.Errorf("%s = %g panics: %v", name, v, r)
		}
	}()
	sheet, err := c.Run(inputs)
	if err != nil {
		if text := err.Error(); name != everyInput && (math.IsNaN(v) || math.IsInf(v, 0)) && !strings.Contains(text, name) {
			t.Errorf("%s = %g is refused without naming it: %s", name, v, text)
		}
		return
	}
	if math.IsNaN(v) || math.IsInf(v, 0) {
		t.Errorf("%s = %g is taken for a number", name, v)
	}
	for _, o := range sheet.Outputs {
		if x := o.Quantity.Value; math.IsNaN(x) || math.IsInf(x, 0) {
			t.Errorf("%s = %g gives %s = %g", name, v, o.Name, x)
		}
	}
}

// checkWords bends every word of the example.
func checkWords(t *testing.T, c worked.Calculation) {
	t.Helper()
	for _, f := range c.Inputs {
		if !f.IsWord || f.Choices == nil {
			continue
		}
		bent := exampleValues(t, c)
		bent[f.Name] = worked.Value{Word: "nonsense"}
		if _, err := c.Run(bent); err == nil || !strings.Contains(err.Error(), f.Name) {
			t.Errorf("%s = nonsense: %v, want a refusal that names it", f.Name, err)
		}
	}
}

// TestInputsAreNamed asks that a missing, an unknown and a mistaken input are
// refused by name, all in one go.
func TestInputsAreNamed(t *testing.T) {
	for _, c := range Calculations() {
		t.Run(c.Name, func(t *testing.T) {
			_, err := c.Run(map[string]worked.Value{"no_such_input": measured(1, quantity.Ratio)})
			for _, f := range c.Inputs {
				if f.Default == "" && !f.IsOptional && (err == nil || !strings.Contains(err.Error(), f.Name)) {
					t.Errorf("%s is missing and %v does not say so", f.Name, err)
				}
			}
			if err == nil || !strings.Contains(err.Error(), "no_such_input") {
				t.Errorf("an unknown input is not refused: %v", err)
			}
		})
	}
}

// TestUnitsDoNotMatter runs every example with its lengths, forces, stresses,
// temperatures and so on written in the units of the other side of the ocean.
func TestUnitsDoNotMatter(t *testing.T) {
	other := map[quantity.Kind]struct {
		unit   string
		number func(float64) float64
	}{
		quantity.Length:      {"in", func(v float64) float64 { return v / inch }},
		quantity.Force:       {"lbf", func(v float64) float64 { return v / poundForce }},
		quantity.Stress:      {"ksi", func(v float64) float64 { return v / psi / 1000 }},
		quantity.Pressure:    {"psi", func(v float64) float64 { return v / psi }},
		quantity.Temperature: {"degF", func(v float64) float64 { return v*1.8 + 32 }},
		quantity.Speed:       {"ft/min", func(v float64) float64 { return v / foot * 1000 }},
		quantity.Density:     {"lb/in3", func(v float64) float64 { return v / endings["lb_in3"][0].factor }},
		quantity.Torque:      {"lbf*ft", func(v float64) float64 { return v / poundForce / foot * 1000 }},
	}
	for _, c := range Calculations() {
		if c.Example == nil {
			continue
		}
		t.Run(c.Name, func(t *testing.T) {
			given := exampleValues(t, c)
			bent := maps.Clone(given)
			for _, f := range c.Inputs {
				u, ok := other[f.Kind]
				value, isGiven := given[f.Name]
				if f.IsWord || !ok || !isGiven {
					continue
				}
				text := fmt.Sprintf("%.17g %s", u.number(value.Quantity.Value), u.unit)
				if f.IsList {
					text = listText(value.List, u.number, u.unit)
				}
				parsed, err := f.Parse(text)
				if err != nil {
					t.Fatalf("%s = %s: %v", f.Name, text, err)
				}
				bent[f.Name] = parsed
			}
			want, err := c.Run(given)
			if err != nil {
				t.Fatal(err)
			}
			got, err := c.Run(bent)
			if err != nil {
				t.Fatal(err)
			}
			compareOutputs(t, got, want)
		})
	}
}

// listText writes a list with one unit at its end.
func listText(list worked.List, number func(float64) float64, unit string) string {
	items := make([]string, len(list))
	for i, v := range list {
		items[i] = fmt.Sprintf("%.17g", number(v))
	}
	return strings.Join(items, ", ") + " " + unit
}

func compareOutputs(t *testing.T, got, want worked.Sheet) {
	t.Helper()
	for i, w := range want.Outputs {
		g := got.Outputs[i]
		a, b := g.Quantity.Value, w.Quantity.Value
		if g.Word != w.Word || math.Abs(a-b) > 1e-9*math.Max(math.Abs(a), math.Abs(b)) {
			t.Errorf("%s is %v %v in other units and %v %v in millimetres", w.Name, g.Word, a, w.Word, b)
		}
	}
}

// exampleValues reads the example of a page.
func exampleValues(t *testing.T, c worked.Calculation) map[string]worked.Value {
	t.Helper()
	values := map[string]worked.Value{}
	for name, text := range c.Example {
		i := slices.IndexFunc(c.Inputs, func(f worked.Field) bool { return f.Name == name })
		if i < 0 {
			t.Fatalf("the example gives %s, which is no input", name)
		}
		value, err := c.Inputs[i].Parse(text)
		if err != nil {
			t.Fatalf("the example gives %s: %v", name, err)
		}
		values[name] = value
	}
	return values
}
