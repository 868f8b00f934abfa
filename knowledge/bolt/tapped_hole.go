package bolt

import (
	"errors"
	"fmt"
	"sync"

	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// TappedHoleInputs are a bolt and the metal that it is screwed into.
type TappedHoleInputs struct {
	Size    string          `name:"size" means:"size of the thread: M16, M16x1.5, 3/4-10, 3/4 UNF"`
	Grade   string          `name:"grade" choices:"8.8,10.9,12.9,2,5,8" means:"class of a metric bolt or grade of an inch bolt"`
	Metal   string          `name:"tapped_metal" choices:"structural_steel,strong_steel,qt_steel,grey_iron,other_iron" means:"metal of the ear: steel above 360, 500 or 800 MPa tensile, grey iron above 220 MPa, other iron"`
	DepthMM worked.Optional `name:"thread_depth" symbol:"l" kind:"length" means:"sound metal for the hole, where known"`
}

// TappedHoleOutputs say how deep the thread must be.
type TappedHoleOutputs struct {
	DiameterMM float64         `name:"diameter" symbol:"d" kind:"length" means:"diameter of the thread"`
	PitchMM    float64         `name:"pitch" symbol:"P" kind:"length" means:"pitch"`
	Rule       float64         `name:"rule_multiple" symbol:"k_r" kind:"ratio" means:"diameters of thread by the rule of the trade"`
	Table      worked.Optional `name:"table_multiple" symbol:"k_t" kind:"ratio" means:"diameters of thread by the makers' trials, where they cover the size and the class"`
	NeededMM   float64         `name:"engagement_needed" symbol:"L_n" kind:"length" means:"length of thread needed"`
	HoleMM     float64         `name:"hole_depth" symbol:"L_h" kind:"length" means:"depth of the hole with two pitches for the run-out"`
	SpareMM    worked.Optional `name:"depth_spare" symbol:"L_s" kind:"length" means:"metal left beyond the hole; negative: the hole does not fit"`
}

// TappedHole computes how deep a tapped hole for a bolt must be.
//
//	L_n = max(k_r, k_t) d
//	L_h = L_n + 2 P
//	L_s = l - L_h
//
// d is the thread, P its pitch, l the sound metal that there is [mm]. k_r is the
// rule of the trade, 1.5 in steel and 2 in iron; k_t the figure of makers' trials,
// which knows coarse metric threads from M6 to M16 in classes 8.8, 10.9 and 12.9.
// The larger one is taken.
//
// Validity: the sizes, grades and metals listed; cut threads of the usual fit, 6g
// in 6H. Iron other than grey has no figure of trials; neither has any inch or
// fine thread: there the rule alone stands.
//
// Error: of the two figures that the makers print the larger is taken; what its
// footnote says was not read. Re-cut holes in old iron hold less.
//
// Source: fastener catalogue after makers' trials, M6 to M16 (read); 1.5 d and 2 d:
// common practice, no source.
func TappedHole(in TappedHoleInputs) (TappedHoleOutputs, error) {
	var c worked.Checks
	t, _ := lookUp(&c, in.Size, in.Grade)
	c.OneOf("tapped_metal", in.Metal, "structural_steel", "strong_steel", "qt_steel", "grey_iron", "other_iron")
	if in.DepthMM.Known {
		c.Positive("thread_depth", in.DepthMM.Value)
	}
	trials, err := engagementTrials()
	if err != nil {
		refuse(&c, "tapped_metal", err)
	}
	if err := c.Err(); err != nil {
		return TappedHoleOutputs{}, err
	}
	out := TappedHoleOutputs{DiameterMM: t.DiameterMM, PitchMM: t.PitchMM, Rule: ruleMultiple(in.isIron()), Table: trials.multiple(t, in.Grade, in.Metal)}
	out.NeededMM = out.Rule * t.DiameterMM
	if out.Table.Known {
		out.NeededMM = max(out.Rule, out.Table.Value) * t.DiameterMM
	}
	out.HoleMM = out.NeededMM + 2*t.PitchMM
	if in.DepthMM.Known {
		out.SpareMM = worked.Some(in.DepthMM.Value - out.HoleMM)
	}
	return out, nil
}

func (in TappedHoleInputs) isIron() bool { return in.Metal == "grey_iron" || in.Metal == "other_iron" }

// ruleMultiple is the rule of the trade in diameters.
func ruleMultiple(iron bool) float64 {
	if iron {
		return 2
	}
	return 1.5
}

// engagementTable holds the makers' trials.
type engagementTable struct {
	material.Provenance `yaml:",inline"`
	FromMM              float64 `yaml:"from_mm"`
	ToMM                float64 `yaml:"to_mm"`
	Rows                []struct {
		Metal           string
		LeastTensileMPa float64 `yaml:"least_tensile_mpa"`
		Multiple        map[string]float64
	}
}

var engagementTrials = sync.OnceValues(func() (*engagementTable, error) {
	var table engagementTable
	if err := decode("engagement.yaml", &table); err != nil {
		return nil, err
	}
	return &table, table.check()
})

func (table *engagementTable) check() error {
	errs := []error{checkProvenance("engagement.yaml", table.Provenance)}
	for _, row := range table.Rows {
		for grade, k := range row.Multiple {
			if !(k >= 0.5 && k <= 3) || row.Metal == "" {
				errs = append(errs, fmt.Errorf("engagement.yaml: %q in grade %s has %g diameters", row.Metal, grade, k))
			}
		}
	}
	return errors.Join(errs...)
}

// multiple looks the trials up; it is not known outside of what they cover.
func (table *engagementTable) multiple(t Thread, grade, metal string) worked.Optional {
	if t.Series != "coarse" || t.DiameterMM < table.FromMM || t.DiameterMM > table.ToMM {
		return worked.Optional{}
	}
	for i := range table.Rows {
		if k, ok := table.Rows[i].Multiple[grade]; ok && table.Rows[i].Metal == metal {
			return worked.Some(k)
		}
	}
	return worked.Optional{}
}

const (
	trialSource = "fastener catalogue after makers' trials, M6 to M16 (read; the footnote to the figures taken was not read)"
	ruleSource  = "1.5 d in steel, 2 d in iron: common practice, no source"
)

// TappedHoleCalculation is the catalogue entry of TappedHole.
func TappedHoleCalculation() worked.Calculation {
	type in = TappedHoleInputs
	type out = TappedHoleOutputs
	tried := func(_ in, o out) bool { return o.Table.Known }
	untried := func(_ in, o out) bool { return !o.Table.Known }
	return worked.Define("tapped_hole", TappedHole, worked.Page[in, out]{
		Title:    "Depth of a tapped hole",
		Sources:  []string{trialSource, ruleSource, threadSource},
		Validity: "sizes, grades and metals listed; makers' trials for coarse metric threads M6 to M16",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "d", Table: threadTable, Source: threadSource},
			{Symbol: "P", Table: threadTable, Source: threadSource},
			{Symbol: "k_r", Table: "rule of the trade, steel or iron", Source: ruleSource},
			{Symbol: "k_t", Table: "makers' trials, by metal and class", Source: trialSource, When: tried},
			{Symbol: "L_n", Is: "max(k_r, k_t) * d", Source: "the larger of the two", When: tried},
			{Symbol: "L_n", Is: "k_r * d", Source: ruleSource, When: untried},
			{Symbol: "L_h", Is: "L_n + 2 * P", Source: "two pitches for the run-out: common practice, no source"},
			{Symbol: "L_s", Is: "l - L_h", Source: "what is left", When: func(i in, _ out) bool { return i.DepthMM.Known }},
		},
		Warnings: tappedHoleWarnings,
		Example:  map[string]string{"size": "M12", "grade": "8.8", "tapped_metal": "grey_iron", "thread_depth": "30 mm"},
	})
}

func tappedHoleWarnings(in TappedHoleInputs, out TappedHoleOutputs) []string {
	var warnings []string
	if out.SpareMM.Known && out.SpareMM.Value < 0 {
		warnings = append(warnings, "The hole does not fit: take a smaller bolt, a through bolt, or a steel insert.")
	}
	if !out.Table.Known {
		warnings = append(warnings, "No trials cover this thread in this metal: the depth rests on the rule of the trade alone.")
	}
	if in.isIron() {
		warnings = append(warnings, "Iron: blow the hole dry, oil in a blind hole can split it; rather a through bolt, or a steel insert, than a re-cut thread.")
	}
	return append(warnings, notCovered)
}
