package fit

import (
	"math"
	"os"
	"strings"
	"testing"

	"gopkg.in/yaml.v3"
)

// Every cell of the zones that a sleeve job uses, written out by hand of the
// rules of ISO 286-1, against what the reader of the tables gives. Sizes at the
// end of a row belong to the row, sizes just above it to the next.
func TestISO286WrittenOut(t *testing.T) {
	text, err := os.ReadFile("testdata/iso286_written_out.yaml")
	if err != nil {
		t.Fatal(err)
	}
	var table struct {
		SubToMM       []float64 `yaml:"sub_to_mm"`
		Holes, Shafts map[string][][]float64
	}
	if err := yaml.Unmarshal(text, &table); err != nil {
		t.Fatal(err)
	}
	if len(table.Holes) < 15 || len(table.Shafts) < 15 || len(table.SubToMM) != 25 {
		t.Fatalf("the written-out table is cut short: %d holes, %d shafts", len(table.Holes), len(table.Shafts))
	}
	for _, zones := range []map[string][][]float64{table.Holes, table.Shafts} {
		for zone, cells := range zones {
			over := 0.0
			for i, cell := range cells {
				for _, size := range []float64{over + 0.001, (over + table.SubToMM[i]) / 2, table.SubToMM[i]} {
					checkISO(t, size, zone, cell[0], cell[1])
				}
				over = table.SubToMM[i]
			}
		}
	}
}

// Cells that published tables and worked examples name one by one.
func TestISO286NamedCells(t *testing.T) {
	tests := []struct {
		size         float64
		zone         string
		lower, upper float64
		source       string
	}{
		{100, "E8", 72, 126, "ISO 286-2:1988/Cor.1:2006"},
		{300, "f9", -186, -56, "ISO 286-2:1988/Cor.1:2006"},
		{25, "R10", -112, -28, "ISO 286-2:1988/Cor.1:2006"},
		{300, "M6", -41, -9, "ISO 286-2, the exception of M6"},
		{300, "M7", -52, 0, "Machine Drawing, table 15.3"},
		{210, "u6", 258, 287, "Machine Drawing, table 15.4: IT7 + D"},
		{85, "S7", -93, -58, "ISO 286-1, ES = -ei + delta"},
		{85, "S8", -125, -71, "ISO 286-1, no delta above grade 7"},
		{50, "js7", -12.5, 12.5, "Machine Drawing, table 15.1"},
		{20, "N9", -52, 0, "ISO 286-1, N above grade 8"},
		{2, "N9", -29, -4, "ISO 286-1, N to 3 mm"},
		{60, "k8", 0, 46, "ISO 286-1, k above grade 7"},
		{60, "M9", -85, -11, "ISO 286-1, M above grade 8 has no delta"},
	}
	for _, test := range tests {
		checkISO(t, test.size, test.zone, test.lower, test.upper)
	}
}

func checkISO(t *testing.T, size float64, zone string, lower, upper float64) {
	t.Helper()
	got, err := ISO286Limits(ISO286LimitsInputs{NominalMM: size, Zone: zone})
	if err != nil {
		t.Errorf("%g %s: %v", size, zone, err)
		return
	}
	if math.Abs(got.LowerMM*1000-lower) > 1e-9 || math.Abs(got.UpperMM*1000-upper) > 1e-9 {
		t.Errorf("%g %s is %g %g, want %g %g", size, zone, got.LowerMM*1000, got.UpperMM*1000, lower, upper)
	}
}

// The tolerances against the formula that they were made with: i = 0.45 D^(1/3) +
// 0.001 D with D the geometric mean of the row, IT5 = 7i to IT11 = 100i (Machine
// Drawing, table 15.4, read). The table rounds, by more in the coarse grades.
func TestISO286TolerancesFollowTheirFormula(t *testing.T) {
	table, err := iso286()
	if err != nil {
		t.Fatal(err)
	}
	units := map[int]float64{5: 7, 6: 10, 7: 16, 8: 25, 9: 40, 10: 64, 11: 100, 12: 160}
	rounding := map[int]float64{5: 1.4, 6: 1.4, 7: 1.4, 8: 1.4, 9: 3.4, 10: 5.4, 11: 11.2, 12: 18}
	over := 1.0
	for i, to := range table.mainToMM {
		mean := math.Sqrt(over * to)
		unit := 0.45*math.Cbrt(mean) + 0.001*mean
		for grade, n := range units {
			if got := table.tolerance[grade][i]; math.Abs(got-n*unit) > rounding[grade] {
				t.Errorf("IT%d to %g mm is %g, the formula gives %.1f", grade, to, got, n*unit)
			}
		}
		over = to
	}
}

// delta is IT(n) - IT(n-1) wherever both grades are in the table.
func TestISO286DeltaFollowsItsRule(t *testing.T) {
	table, err := iso286()
	if err != nil {
		t.Fatal(err)
	}
	for grade := 6; grade <= 8; grade++ {
		for i := 1; i < len(table.mainToMM); i++ {
			want := table.tolerance[grade][i] - table.tolerance[grade-1][i]
			if got := table.delta[grade][i]; got != want {
				t.Errorf("delta of grade %d to %g mm is %g, want %g", grade, table.mainToMM[i], got, want)
			}
		}
	}
}

func TestISO286Refuses(t *testing.T) {
	tests := []struct {
		size float64
		zone string
		says string
	}{
		{0, "H7", "above zero"}, {-5, "H7", "above zero"}, {500.1, "H7", "500 mm"}, {math.NaN(), "H7", "above zero"}, {math.Inf(1), "H7", "nominal"},
		{50, "", "letter"}, {50, "7", "letter"}, {50, "H", "grade"}, {50, "H4", "grade"}, {50, "H13", "grade"}, {50, "Hs7", "letter"},
		{50, "jS7", "letter"}, {50, "H7.5", "grade"}, {50, "H+7", "letter"}, {50, "x6", "letter"}, {50, "H-7", "letter"}, {50, "H99999999999999999999", "grade"},
		{20, "t6", "24 mm"}, {20, "T7", "24 mm"}, {50, "K9", "3 mm"},
	}
	for _, test := range tests {
		if got, err := ISO286Limits(ISO286LimitsInputs{NominalMM: test.size, Zone: test.zone}); err == nil || !strings.Contains(err.Error(), test.says) {
			t.Errorf("%g %q gives %+v, %v; want a refusal that says %q", test.size, test.zone, got, err, test.says)
		}
	}
	if _, err := ISO286Fit(ISO286FitInputs{NominalMM: 50, Hole: "h7", Shaft: "S6"}); err == nil || strings.Count(err.Error(), "letter") != 2 {
		t.Errorf("a hole in small letters and a shaft in capitals: %v, want both refused", err)
	}
}

func TestRow(t *testing.T) {
	upTo := []float64{3, 6, 10}
	tests := []struct {
		size float64
		want int
	}{{0.1, 0}, {3, 0}, {3.0001, 1}, {6, 1}, {6 + 1e-12, 1}, {10, 2}, {10.01, 3}}
	for _, test := range tests {
		if got := row(upTo, test.size); got != test.want {
			t.Errorf("row of %v is %d, want %d", test.size, got, test.want)
		}
	}
}

// A size given in inches must find the row of the same size in millimetres.
func TestRowsDoNotDependOnTheUnit(t *testing.T) {
	table, err := ansiB41()
	if err != nil {
		t.Fatal(err)
	}
	for _, end := range append(table.RunningToIn, table.ForceToIn...) {
		if got := end * mmPerInch / mmPerInch; row([]float64{end}, got) != 0 {
			t.Errorf("%v in turned into mm and back is %v and falls out of its row", end, got)
		}
	}
}
