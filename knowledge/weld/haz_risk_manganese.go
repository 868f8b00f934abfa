package weld

import "boremend/knowledge/worked"

// HAZRiskManganeseInputs are how a manganese steel would be welded.
type HAZRiskManganeseInputs struct {
	InterpassC float64 `name:"interpass" kind:"temperature" means:"highest temperature of the part between beads"`
	Austenitic string  `name:"austenitic_filler" choices:"yes,no" means:"whether the filler is austenitic"`
}

// HAZRiskManganeseOutputs are the risk and what settles it.
type HAZRiskManganeseOutputs struct {
	Risk    string `name:"risk" choices:"medium,high" means:"risk of embrittlement beside the weld, as planned"`
	Governs string `name:"governs" choices:"filler,too_hot,in_order" means:"what settles the risk"`
}

// HAZRiskManganese judges the welding of austenitic manganese steel (about 12 %
// Mn). It is the opposite of other steels: it must stay cool, since heat
// embrittles it.
//
//	filler austenitic and interpass at most 260 degC   -> medium
//	else                                               -> high
//
// No preheat. Interpass in degC.
//
// Validity: austenitic manganese steel, interpass to 1000 degC.
//
// Error: a gate, not a measurement.
//
// Source: own scheme; the limit of 260 degC (500 degF) from memory, a public
// forum (astechforum.com, read) says 300 degC (570 degF).
func HAZRiskManganese(in HAZRiskManganeseInputs) (HAZRiskManganeseOutputs, error) {
	var c worked.Checks
	c.Between("interpass", in.InterpassC, -50, 1000)
	c.OneOf("austenitic_filler", in.Austenitic, "yes", "no")
	if err := c.Err(); err != nil {
		return HAZRiskManganeseOutputs{}, err
	}
	const hottestC = 260
	switch {
	case in.Austenitic == "no":
		return HAZRiskManganeseOutputs{Risk: "high", Governs: "filler"}, nil
	case in.InterpassC > hottestC:
		return HAZRiskManganeseOutputs{Risk: "high", Governs: "too_hot"}, nil
	}
	return HAZRiskManganeseOutputs{Risk: "medium", Governs: "in_order"}, nil
}

// HAZRiskManganeseCalculation is the catalogue entry of HAZRiskManganese.
func HAZRiskManganeseCalculation() worked.Calculation {
	return worked.Define("haz_risk_manganese", HAZRiskManganese, worked.Page[HAZRiskManganeseInputs, HAZRiskManganeseOutputs]{
		Title:    "Risk of welding manganese steel",
		Sources:  []string{"own scheme; interpass limit of 260 degC (500 degF) from memory, astechforum.com (read) says 300 degC"},
		Validity: "austenitic manganese steel",
		Warnings: func(HAZRiskManganeseInputs, HAZRiskManganeseOutputs) []string {
			return []string{"Manganese steel is not preheated, and must cool between beads. A magnet does not hold on it (from memory): make sure that it is what it seems."}
		},
		Example: map[string]string{"interpass": "180 degC", "austenitic_filler": "yes"},
	})
}
