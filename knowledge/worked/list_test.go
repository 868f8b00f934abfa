package worked

import (
	"math"
	"strings"
	"testing"

	"boremend/engine/quantity"

	"github.com/google/go-cmp/cmp"
)

// The calculation of these tests: the mean of readings, less a zero error that
// may have been noted for each.
type meanInputs struct {
	Readings List `name:"readings" symbol:"r" kind:"length" means:"what the gauge showed"`
	Zero     List `name:"zero" symbol:"z" kind:"length" optional:"yes" means:"what it showed on the ring"`
}

type meanOutputs struct {
	Mean  float64 `name:"mean" symbol:"m" kind:"length" means:"mean of the readings"`
	Count float64 `name:"count" symbol:"n" kind:"count" means:"how many there are"`
}

func mean(in meanInputs) (meanOutputs, error) {
	out := meanOutputs{Count: float64(len(in.Readings))}
	for _, r := range in.Readings {
		out.Mean += r / out.Count
	}
	for _, z := range in.Zero {
		out.Mean -= z / float64(len(in.Zero))
	}
	return out, nil
}

func meanCalculation() Calculation {
	return Define("mean", mean, Page[meanInputs, meanOutputs]{
		Formulas: []Formula[meanInputs, meanOutputs]{{Symbol: "m", Is: "sum(r) / n"}},
	})
}

func lengths(mm ...float64) Value {
	return Value{Quantity: quantity.Quantity{Kind: quantity.Length}, List: mm}
}

func TestListOnASheet(t *testing.T) {
	sheet, err := meanCalculation().Run(map[string]Value{"readings": lengths(45, 45.5, 46)})
	if err != nil {
		t.Fatal(err)
	}
	if len(sheet.Inputs) != 1 {
		t.Fatalf("the sheet shows %d inputs, want the one that is known", len(sheet.Inputs))
	}
	if diff := cmp.Diff(lengths(45, 45.5, 46), sheet.Inputs[0].Value); diff != "" {
		t.Error(diff)
	}
	if line := sheet.Lines[0]; line.Numbers != "sum(r) / 3" {
		t.Errorf("numbers %q, want the list to keep its symbol", line.Numbers)
	}
	sheet, err = meanCalculation().Run(map[string]Value{"readings": lengths(45), "zero": lengths(0.5)})
	if m, _ := sheet.Output("mean"); err != nil || m.Quantity.Value != 44.5 {
		t.Errorf("mean %v, %v; want 44.5", m.Quantity.Value, err)
	}
}

func TestListRefusals(t *testing.T) {
	tests := []struct {
		name  string
		given map[string]Value
		says  string
	}{
		{"missing", nil, "readings: is missing"},
		{"empty", map[string]Value{"readings": lengths()}, "readings: must be a list with at least one length"},
		{"empty, though it may be left out", map[string]Value{"readings": lengths(1), "zero": {List: List{}}}, "zero: must be a list"},
		{"one number", map[string]Value{"readings": number(45, quantity.Length)}, "readings: must be a list"},
		{"a word", map[string]Value{"readings": {Word: "big"}}, `readings: is "big", must be a number (length)`},
		{"wrong kind", map[string]Value{"readings": {Quantity: quantity.Quantity{Kind: quantity.Force}, List: List{1}}}, "readings: is a force, must be a length"},
		{"no finite answer", map[string]Value{"readings": lengths(1, math.Inf(1))}, "mean: comes to +Inf"},
	}
	for _, test := range tests {
		if _, err := meanCalculation().Run(test.given); err == nil || !strings.Contains(err.Error(), test.says) {
			t.Errorf("%s: got %v, want %q", test.name, err, test.says)
		}
	}
	column := columnCalculation()
	if _, err := column.Run(map[string]Value{"height": lengths(1, 2)}); err == nil || !strings.Contains(err.Error(), "height: is a list, must be one length") {
		t.Errorf("a list for a number: %v", err)
	}
}

func TestListParse(t *testing.T) {
	field := meanCalculation().Inputs[0]
	tests := []struct {
		text, bare string
		want       List   // nil: refused
		says       string // what the refusal says
	}{
		{"45 mm", "", List{45}, ""},
		{"45mm,1 in", "", List{45, 25.4}, ""},
		{"45, 45.5 , 46 mm", "", List{45, 45.5, 46}, ""},
		{"1/2, 3/4, 1-1/4 in", "", List{12.7, 19.05, 31.75}, ""},
		{`1/2", 3/4"`, "", List{12.7, 19.05}, ""},
		{"4.5e1, 45.5 mm", "", List{45, 45.5}, ""},
		{"45, 45.5", "mm", List{45, 45.5}, ""},
		{"1, 2 in", "mm", List{25.4, 50.8}, ""},
		{"45, 45.5", "", nil, "number 1 of the list"},
		{"45 mm, 45.5, 46 mm", "mm", nil, "some have none"},
		{"45 mm, 45.5", "mm", nil, "some have none"},
		{"45 mm,", "", nil, "some have none"},
		{"", "mm", nil, "number 1"},
		{"45 mm, 3 kg", "", nil, "number 2"},
	}
	for _, test := range tests {
		got, err := field.ParseIn(test.text, test.bare)
		switch {
		case test.want == nil && (err == nil || !strings.Contains(err.Error(), test.says)):
			t.Errorf("%q gives %v, %v; want a refusal that says %q", test.text, got.List, err, test.says)
		case test.want != nil && (err != nil || !cmp.Equal(got.List, test.want) || got.Quantity.Kind != quantity.Length):
			t.Errorf("%q gives %v, %v; want %v", test.text, got.List, err, test.want)
		}
	}
	ratios := Field{Name: "r", Kind: quantity.Ratio, IsList: true}
	if got, err := ratios.Parse("0.1, 0.2"); err != nil || !cmp.Equal(got.List, List{0.1, 0.2}) {
		t.Errorf("bare ratios give %v, %v", got.List, err)
	}
}
