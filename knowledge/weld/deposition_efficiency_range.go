package weld

import "boremend/knowledge/worked"

// DepositionEfficiencyRangeInputs name the process.
type DepositionEfficiencyRangeInputs struct {
	Process string `name:"process" choices:"gmaw_solid,fcaw_e70t_1_2,fcaw_e70t_4,fcaw_e70t_5" means:"process and wire"`
}

// DepositionEfficiencyRangeOutputs are the published ends.
type DepositionEfficiencyRangeOutputs struct {
	Least float64 `name:"eff_min" symbol:"eta_1" kind:"ratio" means:"least deposition efficiency"`
	Most  float64 `name:"eff_max" symbol:"eta_2" kind:"ratio" means:"most deposition efficiency"`
}

// DepositionEfficiencyRange looks up between which limits the deposition
// efficiency of a wire lies.
//
//	solid wire with gas           0.93-0.98 (which gas gives which from memory)
//	cored wire E70T-1, E70T-2     0.83-0.88
//	cored wire E70T-5             0.85-0.92
//	self-shielded wire E70T-4     0.81-0.86
//
// Validity: the wires named. Error: published ranges; weigh a trial bead, see
// DepositionRateTest and DepositionEfficiency.
//
// Source: ESAB filler metal course, lesson IX, section 9.2.6, read.
func DepositionEfficiencyRange(in DepositionEfficiencyRangeInputs) (DepositionEfficiencyRangeOutputs, error) {
	switch in.Process {
	case "gmaw_solid":
		return DepositionEfficiencyRangeOutputs{0.93, 0.98}, nil
	case "fcaw_e70t_1_2":
		return DepositionEfficiencyRangeOutputs{0.83, 0.88}, nil
	case "fcaw_e70t_4":
		return DepositionEfficiencyRangeOutputs{0.81, 0.86}, nil
	case "fcaw_e70t_5":
		return DepositionEfficiencyRangeOutputs{0.85, 0.92}, nil
	}
	var c worked.Checks
	c.OneOf("process", in.Process, "gmaw_solid", "fcaw_e70t_1_2", "fcaw_e70t_4", "fcaw_e70t_5")
	return DepositionEfficiencyRangeOutputs{}, c.Err()
}

// DepositionEfficiencyRangeCalculation is the catalogue entry of DepositionEfficiencyRange.
func DepositionEfficiencyRangeCalculation() worked.Calculation {
	const lesson = "ESAB filler metal course, lesson IX, 9.2.6"
	return worked.Define("deposition_efficiency_range", DepositionEfficiencyRange, worked.Page[DepositionEfficiencyRangeInputs, DepositionEfficiencyRangeOutputs]{
		Title:    "Published deposition efficiency of a wire",
		Sources:  []string{lesson + ", read"},
		Validity: "the wires named",
		Formulas: []worked.Formula[DepositionEfficiencyRangeInputs, DepositionEfficiencyRangeOutputs]{
			{Symbol: "eta_1", Table: lesson, Source: "read"},
			{Symbol: "eta_2", Table: lesson, Source: "read"},
		},
		Example: map[string]string{"process": "fcaw_e70t_1_2"},
	})
}
