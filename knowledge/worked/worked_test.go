package worked

import (
	"math"
	"strings"
	"testing"

	"boremend/engine/quantity"

	"github.com/google/go-cmp/cmp"
)

// The calculation of these tests: the pressure of a column of metal, with a lid
// that may be there.
type columnInputs struct {
	HeightMM float64  `name:"height" symbol:"h" kind:"length" means:"height of the column"`
	LidMPa   Optional `name:"lid" symbol:"p_l" kind:"pressure" means:"pressure of the lid, where there is one"`
	Metal    string   `name:"metal" choices:"steel,bronze" default:"steel" means:"what it is made of"`
	Gravity  float64  `name:"gravity" symbol:"g" kind:"ratio" default:"9.81" means:"pull of the earth"`
}

type columnOutputs struct {
	Density  float64 `name:"density" symbol:"rho" kind:"density" means:"density of the metal"`
	Pressure float64 `name:"pressure" symbol:"p" kind:"pressure" means:"pressure at the foot"`
	Verdict  string  `name:"verdict" means:"whether it is much"`
}

func column(in columnInputs) (columnOutputs, error) {
	var c Checks
	c.Positive("height", in.HeightMM)
	c.OneOf("metal", in.Metal, "steel", "bronze")
	if err := c.Err(); err != nil {
		return columnOutputs{}, err
	}
	out := columnOutputs{Density: 7850, Verdict: "little"}
	if in.Metal == "bronze" {
		out.Density = 8900
	}
	out.Pressure = out.Density*1e-9*in.Gravity*in.HeightMM + in.LidMPa.Value
	return out, nil
}

func columnCalculation() Calculation {
	return Define("column", column, Page[columnInputs, columnOutputs]{
		Title: "Foot of a column", Sources: []string{"statics"}, Validity: "any height",
		Formulas: []Formula[columnInputs, columnOutputs]{
			{Symbol: "rho", Table: "densities", Source: "handbook"},
			{Symbol: "p", Is: "rho * 1e-9 * g * h + p_l", Source: "statics", When: func(in columnInputs, _ columnOutputs) bool { return in.LidMPa.Known }},
			{Symbol: "p", Is: "rho * 1e-9 * g * h", Source: "statics", When: func(in columnInputs, _ columnOutputs) bool { return !in.LidMPa.Known }},
		},
		Warnings: func(in columnInputs, _ columnOutputs) []string { return []string{"made of " + in.Metal} },
		Example:  map[string]string{"height": "1 m"},
	})
}

func number(v float64, kind quantity.Kind) Value {
	return Value{Quantity: quantity.Quantity{Value: v, Kind: kind}}
}

func TestSheet(t *testing.T) {
	sheet, err := columnCalculation().Run(map[string]Value{
		"height": number(2000, quantity.Length), "lid": number(-0.05, quantity.Stress), "metal": {Word: "bronze"},
	})
	if err != nil {
		t.Fatal(err)
	}
	rho, gravity, height, lid := 8900.0, 9.81, 2000.0, -0.05
	foot := rho*1e-9*gravity*height + lid
	want := []Line{
		{Symbol: "rho", Means: "density of the metal", Numbers: "densities", Value: quantity.Quantity{Value: 8900, Kind: quantity.Density}, Source: "handbook"},
		{Symbol: "p", Means: "pressure at the foot", Formula: "rho * 1e-9 * g * h + p_l", Numbers: "8900 * 1e-9 * 9.81 * 2000 + (-0.05)",
			Value: quantity.Quantity{Value: foot, Kind: quantity.Pressure}, Source: "statics"},
	}
	if diff := cmp.Diff(want, sheet.Lines); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff([]string{"made of bronze"}, sheet.Warnings); diff != "" {
		t.Error(diff)
	}
	if verdict, ok := sheet.Output("verdict"); !ok || verdict.Word != "little" {
		t.Errorf("verdict %+v, %v", verdict, ok)
	}
	if _, ok := sheet.Output("lid"); ok {
		t.Error("an input is found among the outputs")
	}
}

// An optional input that is not given has no value, no line and no place among
// the inputs; a default is used and shown.
func TestSheetWithoutOptional(t *testing.T) {
	sheet, err := columnCalculation().Run(map[string]Value{"height": number(2000, quantity.Length)})
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, in := range sheet.Inputs {
		names = append(names, in.Name)
	}
	if diff := cmp.Diff([]string{"height", "metal", "gravity"}, names); diff != "" {
		t.Error(diff)
	}
	if last := sheet.Lines[len(sheet.Lines)-1]; last.Formula != "rho * 1e-9 * g * h" || last.Numbers != "7850 * 1e-9 * 9.81 * 2000" {
		t.Errorf("line %+v", last)
	}
}

func TestRunRefuses(t *testing.T) {
	good := number(2000, quantity.Length)
	tests := []struct {
		name  string
		given map[string]Value
		says  []string
	}{
		{"nothing given", nil, []string{"height: is missing: height of the column"}},
		{"wrong kind", map[string]Value{"height": number(5, quantity.Force)}, []string{"height: is a force, must be a length"}},
		{"word for a number", map[string]Value{"height": {Word: "tall"}}, []string{`height: is "tall", must be a number (length)`}},
		{"number for a word", map[string]Value{"height": good, "metal": number(1, quantity.Ratio)}, []string{"metal: must be a word"}},
		{"unknown word", map[string]Value{"height": good, "metal": {Word: "cheese"}}, []string{`metal: is "cheese", must be one of steel, bronze`}},
		{"unknown input", map[string]Value{"height": good, "hight": good}, []string{"hight: is not an input of this calculation"}},
		{"all at once", map[string]Value{"hight": good, "metal": {Word: "cheese"}}, []string{"height: is missing", "hight: is not", "metal: is"}},
		{"refused by the function", map[string]Value{"height": number(-1, quantity.Length)}, []string{"height: is -1, must be a number above zero"}},
		{"no finite answer", map[string]Value{"height": good, "gravity": number(math.Inf(1), quantity.Ratio)}, []string{"pressure: comes to +Inf"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			_, err := columnCalculation().Run(test.given)
			for _, says := range test.says {
				if err == nil || !strings.Contains(err.Error(), says) {
					t.Errorf("got %v, want it to say %q", err, says)
				}
			}
			if err != nil && strings.Count(err.Error(), "\n") != len(test.says)-1 {
				t.Errorf("got %v, want %d refusals", err, len(test.says))
			}
		})
	}
}

func TestNumbers(t *testing.T) {
	known := map[string]Named{
		"a": {Value: number(2, quantity.Ratio)}, "a_1": {Value: number(-3, quantity.Ratio)}, "z": {Value: number(math.Copysign(0, -1), quantity.Ratio)},
		"e3": {Value: number(7, quantity.Ratio)}, "big": {Value: number(123456789, quantity.Ratio)}, "small": {Value: number(1.23456789e-7, quantity.Ratio)},
		"w": {Field: Field{IsWord: true}, Value: Value{Word: "steel"}},
	}
	tests := []struct{ formula, want string }{
		{"a + a_1", "2 + (-3)"}, {"abs(a_1)", "abs(-3)"}, {"min(a, a_1)", "min(2, -3)"}, {"a^a_1", "2^(-3)"}, {"sqrt(a) * b", "sqrt(2) * b"},
		{"a_1", "-3"}, {"1e3 * e3", "1e3 * 7"}, {"big", "1.23457e8"}, {"small", "1.23457e-7"}, {"z + 1", "0 + 1"}, {"w", "steel"}, {"-a_1", "-(-3)"},
		{"2 * (a_1)", "2 * (-3)"}, {"max(a_1 + a, a)", "max((-3) + 2, 2)"},
	}
	for _, test := range tests {
		if got := numbers(test.formula, known); got != test.want {
			t.Errorf("numbers(%q) = %q, want %q", test.formula, got, test.want)
		}
	}
}

func TestShowNamesASymbolThatIsMissing(t *testing.T) {
	page := Page[columnInputs, columnOutputs]{Formulas: []Formula[columnInputs, columnOutputs]{{Symbol: "q", Is: "h"}}}
	c := Define("column", column, page)
	_, err := c.Run(map[string]Value{"height": number(1, quantity.Length)})
	if err == nil || !strings.Contains(err.Error(), "symbol q") {
		t.Errorf("got %v, want the symbol q named", err)
	}
}

func TestDefinePanicsOnMalformedTags(t *testing.T) {
	type noName struct {
		V float64 `symbol:"v" kind:"length" means:"v"`
	}
	type noKind struct {
		V float64 `name:"v" kind:"lenght" means:"v"`
	}
	type noMeaning struct {
		V float64 `name:"v" kind:"length"`
	}
	type wrongType struct {
		V int `name:"v" kind:"count" means:"v"`
	}
	type badDefault struct {
		V float64 `name:"v" kind:"length" default:"5 kg" means:"v"`
	}
	tests := map[string]func(){
		"name":    func() { define[noName]() },
		"kind":    func() { define[noKind]() },
		"meaning": func() { define[noMeaning]() },
		"type":    func() { define[wrongType]() },
		"default": func() { define[badDefault]() },
	}
	for name, f := range tests {
		t.Run(name, func(t *testing.T) {
			defer func() {
				if recover() == nil {
					t.Error("no panic")
				}
			}()
			f()
		})
	}
}

func define[In any]() {
	Define("x", func(In) (columnOutputs, error) { return columnOutputs{}, nil }, Page[In, columnOutputs]{})
}

func TestChecks(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	tests := []struct {
		name    string
		check   func(*Checks, float64)
		accepts []float64
		refuses []float64
	}{
		{"Positive", func(c *Checks, v float64) { c.Positive("v", v) }, []float64{1e-12, 1, 1e15}, []float64{0, -1, nan, inf, -inf, 1e-13, 1e16, 1e308}},
		{"NotNegative", func(c *Checks, v float64) { c.NotNegative("v", v) }, []float64{0, 1e-13, 1e15}, []float64{-1e-300, -1, nan, inf, 1e16}},
		{"Finite", func(c *Checks, v float64) { c.Finite("v", v) }, []float64{0, -5, 1e15, -1e15}, []float64{nan, inf, -inf, 1e16, -1e308}},
		{"Between", func(c *Checks, v float64) { c.Between("v", v, 2, 3) }, []float64{2, 2.5, 3}, []float64{1.9, 3.1, nan, inf}},
		{"Below", func(c *Checks, v float64) { c.Below("v", v, "w", 3) }, []float64{2, -inf}, []float64{3, 4, nan}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			for _, v := range test.accepts {
				var c Checks
				if test.check(&c, v); c.Err() != nil {
					t.Errorf("%g: %v", v, c.Err())
				}
			}
			for _, v := range test.refuses {
				var c Checks
				if test.check(&c, v); c.Err() == nil || !strings.HasPrefix(c.Err().Error(), "v: is ") {
					t.Errorf("%g: %v, want a refusal of v", v, c.Err())
				}
			}
		})
	}
}

func TestChecksDoNotAllocate(t *testing.T) {
	var sum float64
	n := testing.AllocsPerRun(100, func() {
		var c Checks
		c.Positive("a", 1)
		c.NotNegative("b", 0)
		c.Between("c", 2, 1, 3)
		c.Below("d", 1, "e", 2)
		c.OneOf("f", "x", "x", "y")
		if c.Err() == nil {
			sum++
		}
	})
	if n != 0 || sum == 0 {
		t.Errorf("%g allocations, %g good runs", n, sum)
	}
}
