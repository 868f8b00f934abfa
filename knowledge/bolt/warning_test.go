package bolt

import (
	"slices"
	"strings"
	"testing"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// runText carries a sheet out on its example with some inputs changed; an empty
// text takes an input away.
func runText(t *testing.T, c worked.Calculation, changes map[string]string) worked.Sheet {
	t.Helper()
	values := map[string]worked.Value{}
	for _, f := range c.Inputs {
		text, changed := changes[f.Name]
		if !changed {
			text = c.Example[f.Name]
		}
		if text == "" {
			continue
		}
		value, err := f.Parse(text)
		if err != nil {
			t.Fatalf("%s: %v", f.Name, err)
		}
		values[f.Name] = value
	}
	sheet, err := c.Run(values)
	if err != nil {
		t.Fatal(err)
	}
	return sheet
}

// Every sheet of a bolted joint says that fatigue and shock are not covered.
func TestEverySheetSaysWhatIsNotCovered(t *testing.T) {
	notBolted := []string{"sleeve_retention", "shoulder"}
	for _, c := range Calculations() {
		sheet := runText(t, c, nil)
		if says := slices.Contains(sheet.Warnings, notCovered); says == slices.Contains(notBolted, c.Name) {
			t.Errorf("%s: fatigue, shock and the torque check said: %v", c.Name, says)
		}
		if !strings.Contains(strings.Join(sheet.Warnings, " "), "atigue") {
			t.Errorf("%s says nothing of fatigue", c.Name)
		}
	}
	for _, part := range []string{"Fatigue", "reverses", "shock", "10 h", "50 h"} {
		if !strings.Contains(notCovered, part) {
			t.Errorf("the warning does not speak of %s", part)
		}
	}
}

// A warning comes when its reason is there, and not without it.
func TestWarnings(t *testing.T) {
	tests := []struct {
		calculation worked.Calculation
		says        string
		with        map[string]string
		without     map[string]string
	}{
		{BoltStrengthCalculation(), "from memory", map[string]string{"size": "M20x1.5"}, nil},
		{BoltTorqueCalculation(), "proof load", nil, map[string]string{"nut_factor": "0.12"}},
		{BoltTighteningCalculation(), "proof load", nil, map[string]string{"nut_factor_least": "0.18"}},
		{ThreadEngagementCalculation(), "equally strong", map[string]string{"major_dia_external_min": "", "pitch_dia_internal_max": "", "bolt_tensile": "", "tapped_tensile": ""}, nil},
		{TappedHoleCalculation(), "does not fit", map[string]string{"thread_depth": "20 mm"}, nil},
		{TappedHoleCalculation(), "No trials", map[string]string{"size": "M20"}, nil},
		{TappedHoleCalculation(), "Iron", nil, map[string]string{"tapped_metal": "structural_steel"}},
		{SlipResistanceCalculation(), "slips", map[string]string{"slip_load": "60 kN"}, nil},
		{JointSeparationCalculation(), "stands open", map[string]string{"external_load": "200 kN"}, nil},
		{JointSeparationCalculation(), "proof load under", map[string]string{"external_load": "200 kN"}, nil},
		{PryingCalculation(), "more than plate and bolt carry", map[string]string{"tension_per_bolt": "80 kN"}, nil},
		{BoltEC3Calculation(), "does not hold", map[string]string{"fv_ed": "90 kN"}, nil},
		{SleeveRetentionCalculation(), "Friction alone", map[string]string{"fit_pressure": "10 MPa"}, nil},
		{SleeveRetentionCalculation(), "Friction alone", map[string]string{"fit_pressure": "10 MPa"}, map[string]string{"fit_pressure": ""}},
		{ShoulderCalculation(), "counterbore", nil, map[string]string{"side_play_total": "11 mm"}},
		{ShoulderCalculation(), "rolls over", map[string]string{"flange_thickness": "4 mm"}, nil},
		{ShoulderCalculation(), "thicker than wide", map[string]string{"flange_thickness": "13 mm"}, nil},
		{ShoulderCalculation(), "gives way", map[string]string{"thrust": "60 kN"}, nil},
		{BoltCaptureCalculation(), "too few", map[string]string{"radial_load": "600 kN"}, nil},
		{BoltCaptureCalculation(), "too few", map[string]string{"screws": "2"}, nil},
		{BoltCaptureCalculation(), "find room", map[string]string{"screws": "5"}, nil},
		{BoltCaptureCalculation(), "too narrow", map[string]string{"land": "25 mm"}, nil},
		{BoltCaptureCalculation(), "too thin", map[string]string{"thread_depth": "17 mm"}, nil},
		{BoltCaptureCalculation(), "no tack weld", map[string]string{"ear_metal": "iron"}, nil},
		{BoltedReinforcementCalculation(), "bolts are too weak", map[string]string{"pin_load": "500 kN"}, nil},
		{BoltedReinforcementCalculation(), "wear oval", map[string]string{"pin_load": "500 kN"}, nil},
		{BoltedReinforcementCalculation(), "slips", map[string]string{"joint": "slip"}, nil},
		{BoltedReinforcementCalculation(), "lifts off", map[string]string{"pin_load": "5 MN"}, nil},
		{BoltedReinforcementCalculation(), "over its proof load", map[string]string{"preload_fraction": "0.9", "pin_load": "5 MN"}, nil},
		{BoltedReinforcementCalculation(), "to an edge", map[string]string{"edge_distance": "29 mm"}, nil},
		{BoltedReinforcementCalculation(), "to an edge", map[string]string{"eccentricity": "100 mm"}, nil},
		{BoltedReinforcementCalculation(), "to each other", map[string]string{"row_pitch": "50 mm"}, nil},
		{BoltedReinforcementCalculation(), "too thin", map[string]string{"thread_depth": "29 mm"}, map[string]string{"thread_depth": "30 mm"}},
		{BoltedReinforcementCalculation(), "through bolts", map[string]string{"ear_metal": "iron"}, nil},
	}
	for _, test := range tests {
		t.Run(test.calculation.Name+" "+test.says, func(t *testing.T) {
			if !said(runText(t, test.calculation, test.with), test.says) {
				t.Errorf("with %v the sheet does not say %q", test.with, test.says)
			}
			if said(runText(t, test.calculation, test.without), test.says) {
				t.Errorf("with %v the sheet says %q", test.without, test.says)
			}
		})
	}
}

func said(s worked.Sheet, text string) bool {
	return slices.ContainsFunc(s.Warnings, func(w string) bool { return strings.Contains(w, text) })
}

// A sheet is the same whether the bolt is asked for by its long or its short name.
func TestSizeByAnyName(t *testing.T) {
	long := runText(t, BoltStrengthCalculation(), map[string]string{"size": "3/4-10 UNC", "grade": "5"})
	short := runText(t, BoltStrengthCalculation(), map[string]string{"size": "3/4-10", "grade": "5"})
	for i, o := range long.Outputs {
		if short.Outputs[i].Quantity != o.Quantity {
			t.Errorf("%s: %v and %v", o.Name, o.Quantity, short.Outputs[i].Quantity)
		}
	}
	if v, ok := long.Output("proof_load"); !ok || v.Quantity.Kind != quantity.Force {
		t.Error("no proof load")
	}
}
