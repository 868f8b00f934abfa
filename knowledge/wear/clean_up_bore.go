package wear

import "boremend/knowledge/worked"

// CleanUpBoreInputs are the deepest wear and the cut beyond it.
type CleanUpBoreInputs struct {
	WornReachMM float64 `name:"worn_reach" symbol:"s" kind:"length" means:"from the true axis to the deepest wear"`
	CleanUpMM   float64 `name:"clean_up" symbol:"c" kind:"length" default:"0.5 mm" means:"cut beyond the deepest wear, a side"`
}

// CleanUpBoreOutputs is the smallest round bore on the true axis.
type CleanUpBoreOutputs struct {
	CleanUpBoreMM float64 `name:"clean_up_bore" symbol:"D_c" kind:"length" means:"smallest bore on the true axis that comes clean all round"`
}

// CleanUpBore computes the smallest bore, on the true axis, that cuts clean
// metal all round a worn hole.
//
//	D_c = 2 s + 2 c
//
// s is the distance from the true axis to the deepest wear [mm], c the cut
// beyond it on each side [mm].
//
// The trap: a hole worn 3 mm on one side measures only 3 mm more across, yet it
// needs 6 mm more bore, because the other side must be cut as far from the axis
// as the worn one. Half of the largest diameter is therefore not the worn
// reach; from diameters alone the answer is only a bracket, see CleanUpBracket.
//
// Validity: s and c are lengths above zero (c may be zero where the wear is
// clean). The true axis is that of the unworn bore, found from an unworn land,
// a counterbore or the opposite ear.
//
// Error: twice the error of s. A dial read at eight clock positions can miss
// the deepest point of one-sided wear by 7.6 % of its depth.
//
// Source: plain geometry, recomputed. The cut of half a millimetre a side is
// common practice, no source.
func CleanUpBore(in CleanUpBoreInputs) (CleanUpBoreOutputs, error) {
	var c worked.Checks
	c.Positive("worn_reach", in.WornReachMM)
	c.NotNegative("clean_up", in.CleanUpMM)
	if err := c.Err(); err != nil {
		return CleanUpBoreOutputs{}, err
	}
	return CleanUpBoreOutputs{CleanUpBoreMM: 2*in.WornReachMM + 2*in.CleanUpMM}, nil
}

// CleanUpBoreCalculation is the catalogue entry of CleanUpBore.
func CleanUpBoreCalculation() worked.Calculation {
	return worked.Define("clean_up_bore", CleanUpBore, worked.Page[CleanUpBoreInputs, CleanUpBoreOutputs]{
		Title:    "Bore that comes clean all round",
		Sources:  []string{"plain geometry, recomputed; half a millimetre a side is common practice, no source"},
		Validity: "worn_reach is measured from the true axis, not taken as half of the largest diameter",
		Formulas: []worked.Formula[CleanUpBoreInputs, CleanUpBoreOutputs]{
			{Symbol: "D_c", Is: "2 * s + 2 * c", Source: "plain geometry"},
		},
		Warnings: func(CleanUpBoreInputs, CleanUpBoreOutputs) []string {
			return []string{"One-sided wear costs twice its depth on the diameter: measure worn_reach from the true axis."}
		},
		Example: map[string]string{"worn_reach": "58.9 mm", "clean_up": "0.5 mm"},
	})
}
