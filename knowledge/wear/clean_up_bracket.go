package wear

import "boremend/knowledge/worked"

// CleanUpBracketInputs are what a two-point gauge can tell of a worn bore.
type CleanUpBracketInputs struct {
	FinishBoreMM float64 `name:"finish_bore" symbol:"D_0" kind:"length" means:"bore as it was new"`
	WornMaxMM    float64 `name:"worn_max" symbol:"D_max" kind:"length" means:"largest diameter found"`
	CleanUpMM    float64 `name:"clean_up" symbol:"c" kind:"length" default:"0.5 mm" means:"cut beyond the deepest wear, a side"`
}

// CleanUpBracketOutputs is what the clean-up bore lies between.
type CleanUpBracketOutputs struct {
	LeastMM float64 `name:"clean_up_bore_least" symbol:"D_least" kind:"length" means:"clean-up bore if both sides wore alike"`
	MostMM  float64 `name:"clean_up_bore_most" symbol:"D_most" kind:"length" means:"clean-up bore if one side wore alone"`
}

// CleanUpBracket computes between which sizes the clean-up bore lies when only
// diameters were measured.
//
//	D_least = D_max + 2 c            both ends of the largest diameter wore alike
//	D_most  = 2 D_max - D_0 + 2 c    all of the wear is at one end
//
// D_max is the largest diameter found [mm], D_0 the bore as new [mm], c the cut
// beyond the wear on each side [mm].
//
// A diameter names both of its ends and cannot say which of them wore: the
// truth lies between the two sizes, and only a reading from the true axis
// settles it. Sizing a sleeve on D_least is the commonest mistake.
//
// Validity: D_0 is trusted, the largest diameter was found, and nowhere is the
// hole tighter than new (no ear closed in, no earlier bore on another axis).
//
// Error: exact within these; D_most carries twice the error of D_max and once
// that of D_0.
//
// Source: plain geometry, recomputed.
func CleanUpBracket(in CleanUpBracketInputs) (CleanUpBracketOutputs, error) {
	var c worked.Checks
	c.Positive("finish_bore", in.FinishBoreMM)
	c.Positive("worn_max", in.WornMaxMM)
	c.NotNegative("clean_up", in.CleanUpMM)
	if c.Err() == nil && in.WornMaxMM < in.FinishBoreMM {
		c.Refuse("worn_max", "is %g mm, less than finish_bore, which is %g mm: a worn bore is not smaller than new", in.WornMaxMM, in.FinishBoreMM)
	}
	if err := c.Err(); err != nil {
		return CleanUpBracketOutputs{}, err
	}
	return CleanUpBracketOutputs{
		LeastMM: in.WornMaxMM + 2*in.CleanUpMM,
		MostMM:  2*in.WornMaxMM - in.FinishBoreMM + 2*in.CleanUpMM,
	}, nil
}

// CleanUpBracketCalculation is the catalogue entry of CleanUpBracket.
func CleanUpBracketCalculation() worked.Calculation {
	return worked.Define("clean_up_bracket", CleanUpBracket, worked.Page[CleanUpBracketInputs, CleanUpBracketOutputs]{
		Title:    "Clean-up bore when only diameters are known",
		Sources:  []string{"plain geometry, recomputed"},
		Validity: "no point of the hole is tighter than new and the largest diameter was found",
		Formulas: []worked.Formula[CleanUpBracketInputs, CleanUpBracketOutputs]{
			{Symbol: "D_least", Is: "D_max + 2 * c", Source: "plain geometry"},
			{Symbol: "D_most", Is: "2 * D_max - D_0 + 2 * c", Source: "plain geometry"},
		},
		Warnings: func(CleanUpBracketInputs, CleanUpBracketOutputs) []string {
			return []string{"A diameter cannot say which of its ends wore. Measure worn_reach from the true axis before a sleeve is made."}
		},
		Example: map[string]string{"finish_bore": "110 mm", "worn_max": "114.2 mm"},
	})
}
