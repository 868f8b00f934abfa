package knowledge

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"

	"github.com/expr-lang/expr"
)

// TestCatalogue holds every calculation to the promises of a sheet.
func TestCatalogue(t *testing.T) {
	sheets := sheetsOf(t)
	names := map[string]bool{}
	for _, c := range Calculations() {
		t.Run(c.Name, func(t *testing.T) {
			if names[c.Name] {
				t.Error("two calculations have this name")
			}
			names[c.Name] = true
			checkFields(t, c)
			own := sheets[c.Name]
			if c.Example != nil {
				own = append(own, exampleSheet(t, c))
			}
			if len(own) == 0 {
				t.Fatal("neither an example on its page nor a reference case: nothing shows that its formulas are right")
			}
			for _, s := range own {
				checkFormulas(t, s)
			}
			checkCovered(t, c, own)
		})
	}
}

// checkFields asks for a page that a person can read.
func checkFields(t *testing.T, c worked.Calculation) {
	if c.Title == "" || c.Validity == "" || len(c.Sources) == 0 {
		t.Error("a page needs a title, a validity range and a source")
	}
	names, symbols := map[string]bool{}, map[string]bool{}
	for _, f := range slices.Concat(c.Inputs, c.Outputs) {
		if f.Means == "" {
			t.Errorf("%s is not explained", f.Name)
		}
		if names[f.Name] {
			t.Errorf("two fields are named %s", f.Name)
		}
		if f.Symbol != "" && symbols[f.Symbol] {
			t.Errorf("two fields have the symbol %s", f.Symbol)
		}
		names[f.Name], symbols[f.Symbol] = true, true
	}
}

// checkCovered asks that each output with a symbol is worked in some sheet.
func checkCovered(t *testing.T, c worked.Calculation, sheets []worked.Sheet) {
	for _, f := range c.Outputs {
		shown := slices.ContainsFunc(sheets, func(s worked.Sheet) bool {
			return slices.ContainsFunc(s.Lines, func(l worked.Line) bool { return l.Symbol == f.Symbol })
		})
		if f.Symbol != "" && !shown {
			t.Errorf("output %s (%s) has no worked line in any example", f.Name, f.Symbol)
		}
	}
}

// exampleSheet carries out the example of the page.
func exampleSheet(t *testing.T, c worked.Calculation) worked.Sheet {
	t.Helper()
	sheet, err := c.Run(exampleValues(t, c))
	if err != nil {
		t.Fatalf("the example is refused: %v", err)
	}
	return sheet
}

// checkFormulas evaluates every formula of a sheet with the values of the sheet
// and compares the result with the value shown.
func checkFormulas(t *testing.T, s worked.Sheet) {
	t.Helper()
	env := formulaEnvironment(s)
	for _, line := range s.Lines {
		if err := checkLine(line, env); err != nil {
			t.Errorf("%s: %v", s.Calculation, err)
		}
	}
}

func checkLine(line worked.Line, env map[string]any) error {
	if line.Formula == "" {
		if line.Numbers == "" {
			return fmt.Errorf("%s has neither a formula nor a table", line.Symbol)
		}
		return nil
	}
	result, err := expr.Eval(line.Formula, env)
	if err != nil {
		return fmt.Errorf("%s = %s: %v", line.Symbol, line.Formula, err)
	}
	got, err := asFloat(result)
	want := line.Value.Value
	if err != nil || !(math.Abs(got-want) <= 1e-9*math.Max(math.Abs(want), math.Abs(got))) {
		return fmt.Errorf("%s = %s = %s gives %v, the sheet shows %v", line.Symbol, line.Formula, line.Numbers, result, want)
	}
	return nil
}

// TestCheckLine shows that a formula which does not give the value shown is
// found.
func TestCheckLine(t *testing.T) {
	env := map[string]any{"d": 110.0, "pi": math.Pi, "sqrt": unary(math.Sqrt)}
	value := func(v float64) quantity.Quantity { return quantity.Quantity{Value: v} }
	tests := []struct {
		name string
		line worked.Line
		ok   bool
	}{
		{"right", worked.Line{Symbol: "A", Formula: "pi * d^2 / 4", Value: value(math.Pi * 110 * 110 / 4)}, true},
		{"whole number into a function", worked.Line{Symbol: "A", Formula: "sqrt(4)", Value: value(2)}, true},
		{"off by a millionth", worked.Line{Symbol: "A", Formula: "d", Value: value(110.00011)}, false},
		{"unknown symbol", worked.Line{Symbol: "A", Formula: "d + D", Value: value(110)}, false},
		{"no number", worked.Line{Symbol: "A", Formula: "d > 1", Value: value(1)}, false},
		{"not a formula", worked.Line{Symbol: "A", Formula: "d *", Value: value(110)}, false},
		{"looked up", worked.Line{Symbol: "A", Numbers: "table 3", Value: value(1)}, true},
		{"from nowhere", worked.Line{Symbol: "A", Value: value(1)}, false},
	}
	for _, test := range tests {
		if err := checkLine(test.line, env); (err == nil) != test.ok {
			t.Errorf("%s: %v", test.name, err)
		}
	}
}

// formulaEnvironment holds the symbols of a sheet and the functions that a
// formula may call.
func formulaEnvironment(s worked.Sheet) map[string]any {
	env := map[string]any{
		"pi": math.Pi, "sqrt": unary(math.Sqrt), "exp": unary(math.Exp), "log": unary(math.Log), "log10": unary(math.Log10),
		"tanh": unary(math.Tanh), "atan": unary(math.Atan), "acos": unary(math.Acos), "asin": unary(math.Asin),
		"cos": unary(math.Cos), "sin": unary(math.Sin), "tan": unary(math.Tan),
	}
	for _, n := range slices.Concat(s.Inputs, s.Outputs) {
		switch {
		case n.Symbol == "":
		case n.IsWord:
			env[n.Symbol] = n.Word
		case n.IsList:
			env[n.Symbol] = []float64(n.List)
		default:
			env[n.Symbol] = n.Quantity.Value
		}
	}
	return env
}

// unary lets a formula call f with a whole number too, as sqrt(3).
func unary(f func(float64) float64) func(any) (float64, error) {
	return func(v any) (float64, error) {
		x, err := asFloat(v)
		return f(x), err
	}
}

func asFloat(v any) (float64, error) {
	switch v := v.(type) {
	case float64:
		return v, nil
	case int:
		return float64(v), nil
	}
	return 0, fmt.Errorf("%v is no number", v)
}

func TestFind(t *testing.T) {
	for _, c := range Calculations() {
		if got, ok := Find(c.Name); !ok || got.Name != c.Name {
			t.Errorf("Find(%q) gives %q, %v", c.Name, got.Name, ok)
		}
	}
	if _, ok := Find(strings.Repeat("x", 9)); ok {
		t.Error("Find finds what is not there")
	}
}
