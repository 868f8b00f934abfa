package fit

import (
	"math"
	"slices"
	"strings"
	"testing"
)

func TestANSIB41(t *testing.T) {
	// Machinery's Handbook, 31st ed., tables 8a, 8b, 11 and 12 (read), in
	// thousandths: hole, shaft upper and lower.
	tests := []struct {
		class                string
		inches               float64
		hole, upper, lower   float64
		interferenceOrGapMax float64
	}{
		{"FN2", 3.5, 1.4, 3.7, 2.8, 3.7}, {"FN1", 5, 1, 2.9, 2.2, 2.9}, {"FN3", 3, 1.2, 3.7, 3, 3.7}, {"FN2", 2, 1.2, 2.7, 2, 2.7},
		{"LN2", 4, 1.4, 2.5, 1.6, 2.5}, {"RC4", 3, 1.8, -1.2, -2.4, 4.2}, {"RC7", 2.75, 3, -4, -5.8, 8.8},
		{"FN2", 1.97, 1, 2.4, 1.8, 2.4}, {"FN2", 1.9701, 1.2, 2.7, 2, 2.7}, // a row ends with its own size
		{"FN5", 12.41, 3, 22, 20, 22}, {"RC9", 19.69, 16, -25, -35, 51}, {"RC1", 0.12, 0.2, -0.1, -0.25, 0.45},
	}
	for _, test := range tests {
		got, err := ANSIB41Limits(ANSIB41LimitsInputs{NominalMM: test.inches * mmPerInch, Class: test.class})
		if err != nil {
			t.Errorf("%s %g in: %v", test.class, test.inches, err)
			continue
		}
		widest := got.InterferenceMaxMM.Value
		if isRunning(test.class) {
			widest = got.ClearanceMaxMM.Value
		}
		for i, pair := range [][2]float64{{got.HoleUpperMM, test.hole}, {got.ShaftUpperMM, test.upper}, {got.ShaftLowerMM, test.lower}, {widest, test.interferenceOrGapMax}} {
			if math.Abs(pair[0]/mmPerInch*1000-pair[1]) > 1e-9 {
				t.Errorf("%s %g in, figure %d: %g thousandths, want %g", test.class, test.inches, i, pair[0]/mmPerInch*1000, pair[1])
			}
		}
	}
}

// What the standard means by its classes must show in every row: running fits
// never bind, force fits never slip, and a higher force class is never looser.
func TestANSIB41ClassesKeepTheirMeaning(t *testing.T) {
	table, err := ansiB41()
	if err != nil {
		t.Fatal(err)
	}
	for _, end := range table.ForceToIn {
		tightest := 0.0
		for _, class := range []string{"FN1", "FN2", "FN3", "FN4", "FN5"} {
			out, err := ANSIB41Limits(ANSIB41LimitsInputs{NominalMM: end * mmPerInch, Class: class})
			if class == "FN3" && end <= 0.95 {
				continue
			}
			if err != nil {
				t.Fatal(err)
			}
			if out.InterferenceMinMM.Value < -1e-12 || out.InterferenceMaxMM.Value < tightest {
				t.Errorf("%s to %g in: %.4f to %.4f mm", class, end, out.InterferenceMinMM.Value, out.InterferenceMaxMM.Value)
			}
			tightest = out.InterferenceMaxMM.Value
		}
	}
	for _, end := range table.RunningToIn {
		for class := range table.Running {
			out, err := ANSIB41Limits(ANSIB41LimitsInputs{NominalMM: end * mmPerInch, Class: class})
			if err != nil || out.ClearanceMinMM.Value <= 0 || out.InterferenceMaxMM.Known {
				t.Errorf("%s to %g in: %+v, %v", class, end, out, err)
			}
		}
	}
}

func TestANSIB41SaysWhatIsFromMemory(t *testing.T) {
	tests := []struct {
		class  string
		inches float64
		of     string // empty: all of it was read
	}{
		{"FN2", 4, "FN"}, {"FN2", 3.94, ""}, {"FN2", 4.73, "FN"}, {"FN2", 4.74, ""}, {"RC5", 10, "RC5"}, {"RC6", 5, "H9"}, {"RC8", 3, "H10"}, {"RC5", 9.85, ""}, {"RC4", 16, "H8"},
	}
	for _, test := range tests {
		warnings := ansiWarnings(ANSIB41LimitsInputs{NominalMM: test.inches * mmPerInch, Class: test.class}, ANSIB41LimitsOutputs{})
		said := slices.ContainsFunc(warnings, func(w string) bool { return test.of != "" && strings.Contains(w, "of "+test.of+" ") })
		if said != (test.of != "") || test.of == "" && len(warnings) > 0 {
			t.Errorf("%s %g in warns %q, want %q named", test.class, test.inches, warnings, test.of)
		}
	}
}

func TestANSIB41Refuses(t *testing.T) {
	for _, in := range []ANSIB41LimitsInputs{
		{NominalMM: 100, Class: "FN6"}, {NominalMM: 100, Class: ""}, {NominalMM: 100, Class: "fn2"}, {NominalMM: 20 * mmPerInch, Class: "RC4"},
		{NominalMM: 13 * mmPerInch, Class: "FN2"}, {NominalMM: 0.5 * mmPerInch, Class: "FN3"}, {NominalMM: math.NaN(), Class: "FN2"}, {NominalMM: 0, Class: "FN2"},
	} {
		if got, err := ANSIB41Limits(in); err == nil {
			t.Errorf("%+v gives %+v, want a refusal", in, got)
		}
	}
}
