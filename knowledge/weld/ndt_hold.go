package weld

import "boremend/knowledge/worked"

// NDTHoldInputs are the size of the weld and the heat of its beads.
type NDTHoldInputs struct {
	WeldSizeMM float64 `name:"weld_size" kind:"length" means:"throat of a fillet or depth of a build-up"`
	HeatInput  float64 `name:"heat_input" kind:"heat_input" means:"heat input of the beads"`
}

// NDTHoldOutputs is the waiting time.
type NDTHoldOutputs struct {
	HoldS float64 `name:"hold" symbol:"t_h" kind:"time" means:"least time from the last bead to the final crack test, after cooling"`
}

// NDTHold looks up how long to wait between the last bead and the final crack
// test, because hydrogen cracks come late.
//
//	weld size         heat input to 3 kJ/mm    above
//	to 6 mm           cooling only             cooling only
//	to 12 mm          8 h                      16 h
//	above 12 mm       16 h                     40 h
//
// A boundary belongs to the smaller row.
//
// Validity: structural steels of ordinary strength; quenched and tempered steel
// waits longer, see NDTHoldCode.
//
// Error: a table; a standing crack may still come later.
//
// Source: British Constructional Steelwork Association and Steel Construction
// Institute, National Structural Steelwork Specification, 5th edition 2007, table
// A, as quoted at amarineblog.com (2019-11-03), read.
func NDTHold(in NDTHoldInputs) (NDTHoldOutputs, error) {
	var c worked.Checks
	c.Positive("weld_size", in.WeldSizeMM)
	c.Positive("heat_input", in.HeatInput)
	if err := c.Err(); err != nil {
		return NDTHoldOutputs{}, err
	}
	hot := in.HeatInput > 3
	switch {
	case in.WeldSizeMM <= 6:
		return NDTHoldOutputs{0}, nil
	case in.WeldSizeMM <= 12 && !hot:
		return NDTHoldOutputs{8 * hourS}, nil
	case in.WeldSizeMM <= 12 || !hot:
		return NDTHoldOutputs{16 * hourS}, nil
	}
	return NDTHoldOutputs{40 * hourS}, nil
}

const hourS = 3600

// NDTHoldCalculation is the catalogue entry of NDTHold.
func NDTHoldCalculation() worked.Calculation {
	const table = "National Structural Steelwork Specification, 5th edition 2007, table A"
	return worked.Define("ndt_hold", NDTHold, worked.Page[NDTHoldInputs, NDTHoldOutputs]{
		Title:    "Wait before the final crack test",
		Sources:  []string{"BCSA and SCI, " + table + ", as quoted at amarineblog.com (2019-11-03), read"},
		Validity: "structural steels of ordinary strength",
		Formulas: []worked.Formula[NDTHoldInputs, NDTHoldOutputs]{
			{Symbol: "t_h", Table: table, Source: "as quoted, read"},
		},
		Warnings: func(in NDTHoldInputs, _ NDTHoldOutputs) []string {
			if in.WeldSizeMM <= 6 {
				return []string{"No wait beyond cooling down; cool to the temperature of the surroundings first."}
			}
			return nil
		},
		Example: map[string]string{"weld_size": "10 mm", "heat_input": "2 kJ/mm"},
	})
}
