package cut

import (
	"math"
	"slices"
	"strings"
	"testing"

	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// works are the metals in the order of the file.
const works = "mild_structural_steel,medium_carbon_steel,alloy_steel_qt,cast_steel_low,cast_steel_high,manganese_steel,grey_iron,ductile_iron,weld_deposit_carbon,weld_deposit_hard,weld_deposit_austenitic"

// The choices of an input stand in a tag, which cannot be worked out: they must be
// those of the file.
func TestChoicesAreThoseOfTheFile(t *testing.T) {
	table, err := cutting()
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, w := range table.Work {
		names = append(names, w.Work)
	}
	if got := strings.Join(names, ","); got != works {
		t.Errorf("the file has %s", got)
	}
	for _, c := range []worked.Calculation{CuttingDataCalculation(), BoringSetupCalculation()} {
		i := slices.IndexFunc(c.Inputs, func(f worked.Field) bool { return f.Name == "work" })
		if got := strings.Join(c.Inputs[i].Choices, ","); got != works {
			t.Errorf("%s offers %s", c.Name, got)
		}
	}
}

// The defaults of inputs, too, must be those of the file.
func TestDefaultsAreThoseOfTheFile(t *testing.T) {
	table, err := cutting()
	if err != nil {
		t.Fatal(err)
	}
	defaults := map[string]float64{"slow_factor": slowFactor}
	for _, c := range []worked.Calculation{BoringSetupCalculation(), KienzleKCCalculation()} {
		for _, f := range c.Inputs {
			if v, err := f.ParsedDefault(); err == nil && !f.IsWord {
				defaults[f.Name] = v.Quantity.Value
			}
		}
	}
	for _, c := range table.Corrections {
		if got, ok := defaults[c.Correction]; !ok || got != c.Value {
			t.Errorf("%s is %g in the file and %g (%v) as a default", c.Correction, c.Value, got, ok)
		}
		if c.Source == "" || c.HowKnown == "" || c.Value > c.Most || c.Value < c.Least {
			t.Errorf("%+v", c)
		}
	}
}

// Every row says where it comes from and how that is known.
func TestEveryRowHasASource(t *testing.T) {
	table, err := cutting()
	if err != nil {
		t.Fatal(err)
	}
	for _, w := range table.Work {
		rows := []material.Provenance{w.Feeds.Provenance, w.Portable.Provenance}
		for _, f := range w.Force {
			rows = append(rows, f.Provenance)
		}
		for _, s := range w.Speeds {
			rows = append(rows, s.Provenance)
			if s.Tool != "hss" && s.Tool != "carbide" || !(s.MPerMin[0] > 0 && s.MPerMin[0] <= s.MPerMin[1]) {
				t.Errorf("%s: %+v", w.Work, s)
			}
		}
		for _, r := range rows {
			if r.Source == "" || r.HowKnown == "" {
				t.Errorf("%s: a row without source or how_known", w.Work)
			}
		}
		if w.Covers == "" {
			t.Errorf("%s does not say what it covers", w.Work)
		}
	}
}

// Rows of tables that were read, and the figures of the file that were fitted to
// them.
func TestFittedRows(t *testing.T) {
	tests := []struct {
		work, of string
		feeds    worked.List
		kc       worked.List
		entering float64
	}{
		{"mild_structural_steel", "mild steel of 520 MPa", worked.List{0.1, 0.2, 0.3, 0.4, 0.6}, worked.List{3610, 3100, 2720, 2500, 2280}, 90},
		{"alloy_steel_qt", "42CrMo4", worked.List{0.16, 0.25, 0.4, 0.63, 1, 1.6}, worked.List{4350, 3900, 3450, 3100, 2750, 2450}, 45},
		{"cast_steel_low", "GE 240", worked.List{0.16, 0.25, 0.4, 0.63, 1, 1.6}, worked.List{2300, 2100, 1950, 1800, 1700, 1600}, 45},
	}
	for _, test := range tests {
		fit, err := KienzleFit(KienzleFitInputs{FeedMM: test.feeds, KCMPa: test.kc, EnteringDeg: test.entering})
		if err != nil {
			t.Fatal(err)
		}
		w, err := workNamed(test.work)
		if err != nil {
			t.Fatal(err)
		}
		i := slices.IndexFunc(w.Force, func(f Force) bool { return f.Of == test.of })
		if i < 0 || math.Abs(w.Force[i].KC11MPa-fit.KC11MPa) > 1 || math.Abs(w.Force[i].MC-fit.MC) > 1e-3 {
			t.Errorf("%s, %s: fitted %g and %g", test.work, test.of, fit.KC11MPa, fit.MC)
		}
	}
}

// Every class of joint material is cut as some entry; of "other" nothing is known.
func TestEveryClassIsCut(t *testing.T) {
	for _, class := range []string{
		"mild_steel", "hsla_steel", "qt_steel", "cast_steel_weldable", "cast_steel_alloy", "forged_alloy", "manganese_steel", "ductile_iron", "grey_iron", "malleable_iron",
	} {
		if w, ok, err := WorkOfClass(class); err != nil || !ok || w.Work == "" {
			t.Errorf("%s: %v, %v", class, ok, err)
		}
	}
	if _, ok, err := WorkOfClass("other"); err != nil || ok {
		t.Errorf("other is cut as something: %v", err)
	}
}

// The row taken is the one with the largest force for the chip.
func TestHardestRow(t *testing.T) {
	for _, name := range strings.Split(works, ",") {
		w, err := workNamed(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, chip := range []float64{0.05, 0.2, 1, 1.6} {
			row, least := w.hardest(chip)
			for _, f := range w.Force {
				if f.at(chip) > row.at(chip) || f.at(chip) < least {
					t.Errorf("%s at %g mm: %s is out of %g to %g", name, chip, f.Of, least, row.at(chip))
				}
			}
		}
	}
}

func TestCheckFindsSlips(t *testing.T) {
	good := Work{
		Work: "x", Force: []Force{{Of: "y", KC11MPa: 1800, MC: 0.2}}, Speeds: []Speed{{}},
		Feeds: Feeds{RoughMM: Range{0.2, 0.4}, FinishMM: Range{0.1, 0.2}}, Portable: Portable{HSSMPerMin: Range{10, 20}, CarbideMPerMin: Range{40, 60}, RoughDepthMM: Range{1, 2}},
	}
	if err := (cuttingTable{Work: []Work{good}}).check(); err != nil {
		t.Fatal(err)
	}
	for name, bend := range map[string]func(*Work){
		"no row of force":     func(w *Work) { w.Force = nil },
		"force in kgf/mm2":    func(w *Work) { w.Force = []Force{{KC11MPa: 190, MC: 0.2}} },
		"exponent in percent": func(w *Work) { w.Force = []Force{{KC11MPa: 1800, MC: 20}} },
		"range upside down":   func(w *Work) { w.Feeds.RoughMM = Range{0.4, 0.2} },
		"speed left out":      func(w *Work) { w.Portable.CarbideMPerMin = Range{} },
	} {
		bent := good
		bend(&bent)
		if err := (cuttingTable{Work: []Work{bent}}).check(); err == nil {
			t.Errorf("%s is not found", name)
		}
	}
}

// A person who looks a metal up hears where the figures come from.
func TestDataWarnings(t *testing.T) {
	c := CuttingDataCalculation()
	sheet, err := c.Run(map[string]worked.Value{"work": {Word: "grey_iron"}, "tool": {Word: "hss"}})
	if err != nil {
		t.Fatal(err)
	}
	says := strings.Join(sheet.Warnings, "\n")
	for _, want := range []string{"row EN-GJL-250", "stiffer, hard: 15 m/min", "12 to 15 m/min. F. D. Jones"} {
		if !strings.Contains(says, want) {
			t.Errorf("%q does not say %q", says, want)
		}
	}
	sheet, err = c.Run(map[string]worked.Value{"work": {Word: "weld_deposit_austenitic"}})
	if says = strings.Join(sheet.Warnings, "\n"); err != nil || !strings.Contains(says, "rake of 6 degrees") || !strings.Contains(says, "no spring pass") {
		t.Errorf("%q, %v", says, err)
	}
}
