package weld

import "boremend/knowledge/worked"

// DepositionEfficiencyInputs are what was used and what stayed.
type DepositionEfficiencyInputs struct {
	UsedKG float64 `name:"electrode_used" symbol:"m_e" kind:"mass" means:"wire or electrode used up"`
	WeldKG float64 `name:"weld_metal" symbol:"m" kind:"mass" means:"weld metal laid down"`
}

// DepositionEfficiencyOutputs is their ratio.
type DepositionEfficiencyOutputs struct {
	Efficiency float64 `name:"efficiency" symbol:"eta" kind:"ratio" means:"share that becomes weld metal"`
}

// DepositionEfficiency computes which share of a wire or electrode becomes weld
// metal.
//
//	eta = m / m_e
//
// m is the weld metal laid down, m_e the wire or electrode used up [kg].
//
// Validity: m <= m_e; what a stub throws away counts as used.
//
// Error: the scale.
//
// Source: ESAB handbook, filler metal section 8.7, read.
func DepositionEfficiency(in DepositionEfficiencyInputs) (DepositionEfficiencyOutputs, error) {
	var c worked.Checks
	c.Positive("electrode_used", in.UsedKG)
	c.Positive("weld_metal", in.WeldKG)
	if in.WeldKG > in.UsedKG {
		c.Refuse("weld_metal", "is %g kg, more than the %g kg that were used up", in.WeldKG, in.UsedKG)
	}
	if err := c.Err(); err != nil {
		return DepositionEfficiencyOutputs{}, err
	}
	return DepositionEfficiencyOutputs{in.WeldKG / in.UsedKG}, nil
}

// DepositionEfficiencyCalculation is the catalogue entry of DepositionEfficiency.
func DepositionEfficiencyCalculation() worked.Calculation {
	return worked.Define("deposition_efficiency", DepositionEfficiency, worked.Page[DepositionEfficiencyInputs, DepositionEfficiencyOutputs]{
		Title:    "Deposition efficiency",
		Sources:  []string{"ESAB handbook, filler metal section 8.7, read"},
		Validity: "a definition",
		Formulas: []worked.Formula[DepositionEfficiencyInputs, DepositionEfficiencyOutputs]{
			{Symbol: "eta", Is: "m / m_e", Source: "definition"},
		},
		Example: map[string]string{"electrode_used": "4 lb", "weld_metal": "3 lb"},
	})
}
