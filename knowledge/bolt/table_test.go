package bolt

import (
	"errors"
	"math"
	"os"
	"strings"
	"testing"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// printedLoads are loads as the standards' tables print them.
type printedLoads struct {
	Metric struct {
		Source   string
		HowKnown string `yaml:"how_known"`
		Rows     []struct {
			Size      string
			ProofKN   map[string]float64 `yaml:"proof_kn"`
			TensileKN map[string]float64 `yaml:"tensile_kn"`
		}
	}
	Inch struct {
		Source   string
		HowKnown string `yaml:"how_known"`
		Rows     []struct {
			Size       string
			ProofLbf   map[string]float64 `yaml:"proof_lbf"`
			TensileLbf map[string]float64 `yaml:"tensile_lbf"`
		}
	}
}

// Stress area times stress must give the loads in print, which are rounded to
// three digits (metric) or to 50 and 100 lbf (inch).
func TestPrintedLoads(t *testing.T) {
	text, err := os.ReadFile("testdata/printed_loads.yaml")
	if err != nil {
		t.Fatal(err)
	}
	var printed printedLoads
	if err := decodeStrictly("printed_loads.yaml", text, &printed); err != nil {
		t.Fatal(err)
	}
	rows := 0
	compare := func(size, grade string, newtons, allowed float64, of func(BoltStrengthOutputs) float64) {
		rows++
		out, err := BoltStrength(BoltStrengthInputs{Size: size, Grade: grade, Fraction: 0.75})
		if err != nil {
			t.Errorf("%s %s: %v", size, grade, err)
			return
		}
		if got := of(out); math.Abs(got-newtons) > allowed*newtons {
			t.Errorf("%s %s: got %.0f N, in print %.0f N", size, grade, got, newtons)
		}
	}
	proof := func(out BoltStrengthOutputs) float64 { return out.ProofLoadN }
	tensile := func(out BoltStrengthOutputs) float64 { return out.TensileLoadN }
	for _, row := range printed.Metric.Rows {
		for grade, kN := range row.ProofKN {
			compare(row.Size, grade, 1000*kN, 0.005, proof)
		}
		for grade, kN := range row.TensileKN {
			compare(row.Size, grade, 1000*kN, 0.005, tensile)
		}
	}
	for _, row := range printed.Inch.Rows {
		for grade, lbf := range row.ProofLbf {
			compare(row.Size, grade, lbf*newtonPerLb, 0.0065, proof)
		}
		for grade, lbf := range row.TensileLbf {
			compare(row.Size, grade, lbf*newtonPerLb, 0.0065, tensile)
		}
	}
	if rows < 100 {
		t.Errorf("only %d loads were compared", rows)
	}
}

// Every way to write a size finds it.
func TestEverySizeIsFound(t *testing.T) {
	sizes, err := Sizes()
	if err != nil {
		t.Fatal(err)
	}
	if len(sizes) < 50 {
		t.Errorf("only %d sizes", len(sizes))
	}
	for _, size := range sizes {
		want, err := FindThread(size)
		if err != nil {
			t.Fatal(err)
		}
		for _, other := range []string{strings.ToLower(size), want.also[0], want.also[1]} {
			if other == "" {
				continue
			}
			if got, err := FindThread(other); err != nil || got.Size != want.Size {
				t.Errorf("%q finds %q, %v; want %q", other, got.Size, err, want.Size)
			}
		}
	}
}

func TestSizesThatAreNotListed(t *testing.T) {
	tests := []struct{ size, says string }{
		{"M17", "M16 or M16x1.5"},
		{"M17x1.5", "M16 or M16x1.5"},
		{"M16x1", "M16 or M16x1.5"},
		{"m5", "M6"},
		{"M100", "M36 or M36x3"},
		{"16", "1-1/2-6 UNC or 1-1/2-12 UNF"}, // sixteen inches
		{"3/4", "3/4-10 UNC or 3/4-16 UNF"},
		{"3/4-12", "3/4-10 UNC or 3/4-16 UNF"},
		{"1-1/8", "1-1/8-7 UNC or 1-1/8-12 UNF"},
		{"0.7 UNC", "3/4-10 UNC or 3/4-16 UNF"},
		{"3/4-10 UNX", "3/4-10 UNC"},
		{"", "M6 to M36"},
		{"screw", "M6 to M36"},
		{"M", "M6"},
		{"M-16", "M16"},
		{"MNaN", "M6 to M36"},
		{"M1e9", "M10"},
	}
	for _, test := range tests {
		_, err := FindThread(test.size)
		var refusal *worked.Refusal
		if !errors.As(err, &refusal) || refusal.Input != "size" || !strings.Contains(refusal.Says, test.says) {
			t.Errorf("%q: %v, want %q", test.size, err, test.says)
		}
	}
}

// The strength of a grade steps with the size of the bolt.
func TestGradeSteps(t *testing.T) {
	const ksi = mpaPerKsi
	tests := []struct {
		size, grade           string
		proof, yield, tensile float64
	}{
		{"M16", "8.8", 580, 640, 800},
		{"M16x1.5", "8.8", 580, 640, 800},
		{"M18", "8.8", 600, 660, 830},
		{"M18x1.5", "8.8", 600, 660, 830},
		{"M36", "12.9", 970, 1100, 1220},
		{"3/4-10", "2", 55 * ksi, 57 * ksi, 74 * ksi},
		{"7/8-9", "2", 33 * ksi, 36 * ksi, 60 * ksi},
		{"1-8", "5", 85 * ksi, 92 * ksi, 120 * ksi},
		{"1-12", "5", 85 * ksi, 92 * ksi, 120 * ksi},
		{"1-1/8-7", "5", 74 * ksi, 81 * ksi, 105 * ksi},
		{"1-1/2-6", "8", 120 * ksi, 130 * ksi, 150 * ksi},
	}
	for _, test := range tests {
		thread, err := FindThread(test.size)
		if err != nil {
			t.Fatal(err)
		}
		s, err := StrengthOf(test.grade, thread)
		if err != nil {
			t.Fatal(err)
		}
		near(t, test.size+" proof", s.ProofMPa, test.proof)
		near(t, test.size+" yield", s.YieldMPa, test.yield)
		near(t, test.size+" tensile", s.TensileMPa, test.tensile)
	}
}

func TestGradesThatAreNotListed(t *testing.T) {
	for size, grades := range map[string][]string{"M16": {"5", "8", "9.8", "", "8,8"}, "3/4-10": {"8.8", "10.9", "3", ""}} {
		thread, err := FindThread(size)
		if err != nil {
			t.Fatal(err)
		}
		for _, grade := range grades {
			_, err := StrengthOf(grade, thread)
			var refusal *worked.Refusal
			if !errors.As(err, &refusal) || refusal.Input != "grade" || !strings.Contains(refusal.Says, "there are") {
				t.Errorf("%s %q: %v, want a refusal that names the grades", size, grade, err)
			}
		}
	}
}

// A slip in a table shows when it is loaded.
func TestTablesAreReadStrictly(t *testing.T) {
	const block = "metric:\n  - {series: coarse, source: s, how_known: read, rows: [{size: M16, diameter_mm: 16, pitch_mm: 2, stress_area_mm2: 157}]}\nheads: {source: s, how_known: read, rows: []}\n"
	load := func(text string) error {
		var file threadFile
		if err := decodeStrictly("threads.yaml", []byte(text), &file); err != nil {
			return err
		}
		_, err := file.threads()
		return err
	}
	if err := load(block); err != nil {
		t.Fatal(err)
	}
	for from, to := range map[string]string{
		"pitch_mm":                             "pitch",
		"157":                                  "156",
		"pitch_mm: 2":                          "pitch_mm: 1.5",
		"how_known: read, r":                   "how_known: guessed, r",
		"source: s, how_known: read, rows: [{": "how_known: read, rows: [{",
		"157}]":                                "157}, {size: M16, diameter_mm: 16, pitch_mm: 2, stress_area_mm2: 157}]",
	} {
		if err := load(strings.Replace(block, from, to, 1)); err == nil {
			t.Errorf("%s in place of %s is taken", to, from)
		}
	}
}

func TestGradeTableIsReadStrictly(t *testing.T) {
	const block = `metric: {source: s, how_known: read, rows: [{grade: "8.8", over_mm: 0, to_mm: 16, proof_mpa: 580, yield_mpa: 640, tensile_mpa: 800}]}
inch: {source: s, how_known: read, rows: []}
shear: {source: s, how_known: read, share: {"8.8": 0.6}}
`
	load := func(text string) error {
		var file gradeFile
		if err := decodeStrictly("grades.yaml", []byte(text), &file); err != nil {
			return err
		}
		_, err := file.rows()
		return err
	}
	if err := load(block); err != nil {
		t.Fatal(err)
	}
	for from, to := range map[string]string{
		"580": "650", "yield_mpa: 640": "yield_mpa: 810", "0.6": "0.06", "to_mm: 16": "to_mm: 0", `"8.8": 0.6`: `"10.9": 0.6`, "over_mm": "above_mm", "800": "80",
	} {
		if err := load(strings.Replace(block, from, to, 1)); err == nil {
			t.Errorf("%s in place of %s is taken", to, from)
		}
	}
}

// The words that the small tables list are the words that their sheets offer.
func TestFactorWords(t *testing.T) {
	tests := []struct {
		calculation worked.Calculation
		table       func() ([]factor, error)
	}{{NutFactorCalculation(), nutFactors}, {SlipCoefficientCalculation(), slipCoefficients}}
	for _, test := range tests {
		all, err := test.table()
		if err != nil {
			t.Fatal(err)
		}
		words := test.calculation.Inputs[0].Choices
		if len(words) != len(all) {
			t.Errorf("%s offers %d words, the table lists %d", test.calculation.Name, len(words), len(all))
		}
		for _, word := range words {
			if _, ok := factorOf(all, word); !ok {
				t.Errorf("%s offers %s, which the table does not list", test.calculation.Name, word)
			}
		}
	}
}

// Shigley, 9th ed., table 8-15 and the rule of the field (read).
func TestNutFactorsInPrint(t *testing.T) {
	for condition, k := range map[string]float64{
		"plain_black": 0.30, "zinc_plated": 0.20, "lubricated": 0.18, "cadmium_plated": 0.16, "anti_seize": 0.12, "low_friction_nut": 0.09,
		"oiled": 0.15, "clean_dry": 0.20, "rusty_gritty": 0.30,
	} {
		if out, err := NutFactor(NutFactorInputs{Condition: condition}); err != nil || out.NutFactor != k {
			t.Errorf("%s: %g, %v; want %g", condition, out.NutFactor, err, k)
		}
	}
	if _, err := NutFactor(NutFactorInputs{Condition: "wet"}); err == nil {
		t.Error("a state that is not listed is taken")
	}
}

// AISC 360 (2005) class A read; later editions and EN 1090-2 from memory; the last
// a judgement.
func TestSlipCoefficientsInPrint(t *testing.T) {
	for surface, mu := range map[string]float64{
		"mill_scale_2005": 0.35, "mill_scale": 0.30, "blasted": 0.50, "wire_brushed": 0.30, "as_rolled": 0.20, "oily_or_unknown": 0.10,
	} {
		if out, err := SlipCoefficient(SlipCoefficientInputs{Surface: surface}); err != nil || out.SlipCoefficient != mu {
			t.Errorf("%s: %g, %v; want %g", surface, out.SlipCoefficient, err, mu)
		}
	}
	if _, err := SlipCoefficient(SlipCoefficientInputs{Surface: "iron"}); err == nil {
		t.Error("a surface that is not listed is taken")
	}
}

// Makers' trials (read) and the rule of the trade; the larger one counts.
func TestTappedHole(t *testing.T) {
	tests := []struct {
		size, grade, metal string
		table              worked.Optional
		needed             float64
	}{
		{"M16", "8.8", "structural_steel", worked.Some(1.5), 24},
		{"M16", "12.9", "structural_steel", worked.Some(2.1), 33.6},
		{"M10", "10.9", "strong_steel", worked.Some(1.6), 16},
		{"M12", "8.8", "qt_steel", worked.Some(0.9), 18},
		{"M12", "8.8", "grey_iron", worked.Some(1.3), 24},
		{"M12", "12.9", "grey_iron", worked.Some(1.8), 24},
		{"M18", "8.8", "structural_steel", worked.Optional{}, 27},     // beyond the trials
		{"M12x1.5", "8.8", "grey_iron", worked.Optional{}, 24},        // fine
		{"1/2-13", "5", "structural_steel", worked.Optional{}, 19.05}, // inch
		{"M12", "8.8", "other_iron", worked.Optional{}, 24},
	}
	for _, test := range tests {
		out, err := TappedHole(TappedHoleInputs{Size: test.size, Grade: test.grade, Metal: test.metal})
		if err != nil {
			t.Errorf("%+v: %v", test, err)
			continue
		}
		if out.Table != test.table || math.Abs(out.NeededMM-test.needed) > 1e-9 {
			t.Errorf("%s %s in %s: table %v, %g mm; want %v, %g mm", test.size, test.grade, test.metal, out.Table, out.NeededMM, test.table, test.needed)
		}
	}
}

// Sizes of other tables in print: UNC 3/4 has 10 threads and 0.334 in2.
func TestInchSizesAreHeldInMillimetres(t *testing.T) {
	thread, err := FindThread("3/4 UNC")
	if err != nil {
		t.Fatal(err)
	}
	near(t, "pitch", thread.PitchMM, 2.54)
	near(t, "stress area", thread.StressAreaMM2, 215.48344)
	reading, err := quantity.Parse("3/4 in", quantity.Length, "")
	if err != nil || reading.Value != thread.DiameterMM {
		t.Errorf("3/4 in is %g mm, the table has %g (%v)", reading.Value, thread.DiameterMM, err)
	}
}
