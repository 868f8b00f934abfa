package weld

import "boremend/knowledge/worked"

// PreheatAnnexInputs are the row and column of the table.
type PreheatAnnexInputs struct {
	Restraint   string  `name:"restraint" choices:"high" means:"restraint of the joint; a bore counts as high"`
	Group       string  `name:"group" choices:"D" means:"group of the susceptibility index"`
	ThicknessMM float64 `name:"thickness" kind:"length" means:"thickness at the weld"`
}

// PreheatAnnexOutputs is the table value.
type PreheatAnnexOutputs struct {
	PreheatC float64 `name:"preheat" symbol:"T_p" kind:"temperature" means:"least preheat and interpass temperature"`
}

// PreheatAnnex looks up the one entry of the hydrogen-control annex of AWS D1.1
// that was seen: group D, high restraint, 2 in of thickness.
//
//	T_p = 300 degF (149 degC)
//
// Validity: group D (see SusceptibilityIndex), high restraint, 38.1 to 76.2 mm,
// the row in which 2 in stands (limits of the row from memory). Everything else
// is refused: the rest of the table was not read.
//
// Error: one entry, quoted by hand.
//
// Source: AWS D1.1-2004 annex XI table XI-2, one entry quoted in the society's
// forum (app.aws.org topic 129522), read.
func PreheatAnnex(in PreheatAnnexInputs) (PreheatAnnexOutputs, error) {
	var c worked.Checks
	c.OneOf("restraint", in.Restraint, "high")
	c.OneOf("group", in.Group, "D")
	c.Between("thickness", in.ThicknessMM, 38.1, 76.2)
	if err := c.Err(); err != nil {
		return PreheatAnnexOutputs{}, err
	}
	return PreheatAnnexOutputs{fahrenheit(300)}, nil
}

// PreheatAnnexCalculation is the catalogue entry of PreheatAnnex.
func PreheatAnnexCalculation() worked.Calculation {
	return worked.Define("preheat_annex", PreheatAnnex, worked.Page[PreheatAnnexInputs, PreheatAnnexOutputs]{
		Title:    "Preheat by the hydrogen-control annex of AWS D1.1",
		Sources:  []string{"AWS D1.1-2004 annex XI table XI-2, one entry quoted in the society's forum (app.aws.org topic 129522), read"},
		Validity: "group D, high restraint, 38.1-76.2 mm; the rest of the table was not read",
		Formulas: []worked.Formula[PreheatAnnexInputs, PreheatAnnexOutputs]{
			{Symbol: "T_p", Table: "AWS D1.1-2004 table XI-2, group D, high restraint", Source: "one entry, read"},
		},
		Warnings: func(PreheatAnnexInputs, PreheatAnnexOutputs) []string {
			return []string{"Check the entry on a licensed copy of the code before it goes into a procedure."}
		},
		Example: map[string]string{"restraint": "high", "group": "D", "thickness": "2 in"},
	})
}
