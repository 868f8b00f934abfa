package weld

import "boremend/knowledge/worked"

// PreheatTableInputs are the plate and the process.
type PreheatTableInputs struct {
	Grade       string  `name:"grade" choices:"A36,A572-50" means:"grade of the plate or shape"`
	ThicknessMM float64 `name:"thickness" kind:"length" means:"thickest part at the weld"`
	LowHydrogen string  `name:"low_hydrogen" choices:"yes,no" means:"whether filler and process are low in hydrogen"`
}

// PreheatTableOutputs is the table value.
type PreheatTableOutputs struct {
	PreheatC float64 `name:"preheat" symbol:"T_p" kind:"temperature" means:"least preheat and interpass temperature"`
}

// PreheatTable looks up the least preheat of common structural plate in the
// table of a public engineering manual.
//
//	thickness            to 19   to 38.1   to 63.5   above   mm
//	low hydrogen          0       10        66        107    degC
//	not low hydrogen      0       66       107        150    degC (A36 only)
//
// A boundary belongs to the thinner row; 19 mm stands for 3/4 in (19.05).
//
// Validity: A36 and A572 grade 50 plate and shapes to 200 mm. A572-50 is welded
// with low-hydrogen processes only.
//
// Error: a table for open joints; a bore is a closed ring and wants more.
//
// Source: US Army Corps of Engineers, TI 809-26 (1 March 2000), table 3-1,
// categories A and B, read. Its footnote asks for 21 degC where the steel is
// below freezing (footnote from memory).
func PreheatTable(in PreheatTableInputs) (PreheatTableOutputs, error) {
	var c worked.Checks
	c.OneOf("grade", in.Grade, "A36", "A572-50")
	c.Between("thickness", in.ThicknessMM, 3, 200)
	c.OneOf("low_hydrogen", in.LowHydrogen, "yes", "no")
	if in.Grade == "A572-50" && in.LowHydrogen == "no" {
		c.Refuse("low_hydrogen", "is no: the table gives A572-50 for low-hydrogen processes only")
	}
	if err := c.Err(); err != nil {
		return PreheatTableOutputs{}, err
	}
	rows := [...]struct{ toMM, lowHydrogenC, otherC float64 }{{19.05, 0, 0}, {38.1, 10, 66}, {63.5, 66, 107}, {200, 107, 150}}
	row := 0
	for in.ThicknessMM > rows[row].toMM {
		row++
	}
	if in.LowHydrogen == "yes" {
		return PreheatTableOutputs{rows[row].lowHydrogenC}, nil
	}
	return PreheatTableOutputs{rows[row].otherC}, nil
}

// PreheatTableCalculation is the catalogue entry of PreheatTable.
func PreheatTableCalculation() worked.Calculation {
	return worked.Define("preheat_table", PreheatTable, worked.Page[PreheatTableInputs, PreheatTableOutputs]{
		Title:    "Least preheat of structural plate",
		Sources:  []string{"US Army Corps of Engineers, TI 809-26 (1 March 2000), table 3-1, read (buildingcriteria1.tpub.com page 3-3); footnote from memory"},
		Validity: "A36 and A572 grade 50, to 200 mm",
		Formulas: []worked.Formula[PreheatTableInputs, PreheatTableOutputs]{
			{Symbol: "T_p", Table: "TI 809-26, table 3-1", Source: "TI 809-26 (2000), read"},
		},
		Warnings: func(PreheatTableInputs, PreheatTableOutputs) []string {
			return []string{
				"Where the steel is below freezing, warm it to 21 degC first.",
				"The table is for open joints: a bore is a closed ring and wants more, see preheat_cet.",
			}
		},
		Example: map[string]string{"grade": "A36", "thickness": "30 mm", "low_hydrogen": "yes"},
	})
}
