package ear

import "boremend/knowledge/worked"

// EyebarAISCInputs are a bar with a round head.
type EyebarAISCInputs struct {
	WidthMM     float64         `name:"body_width" symbol:"w" kind:"length" means:"width of the body"`
	ThicknessMM float64         `name:"thickness" symbol:"t" kind:"length" means:"thickness"`
	SideWallMM  worked.Optional `name:"side_wall" kind:"length" means:"hole to the edge of the head, across the load"`
	PinMM       worked.Optional `name:"pin_diameter" kind:"length" means:"pin"`
	YieldMPa    float64         `name:"yield_strength" symbol:"F_y" kind:"stress" means:"yield strength"`
}

// EyebarAISCOutputs are nominal, design and allowable strength.
type EyebarAISCOutputs struct {
	AreaMM2  float64 `name:"gross_area" symbol:"A_g" kind:"area" means:"cross-section of the body"`
	NominalN float64 `name:"nominal" symbol:"P" kind:"force" means:"nominal strength"`
	LRFDN    float64 `name:"lrfd" symbol:"D" kind:"force" means:"design strength"`
	ASDN     float64 `name:"asd" symbol:"A" kind:"force" means:"allowable strength"`
	InScope  string  `name:"inside_scope" choices:"yes,no,unknown" means:"whether the head has the proportions that the standard asks for"`
}

// EyebarAISC computes the static strength of an eyebar by AISC 360 D6: where the
// head has the right proportions, the body governs.
//
//	A_g = w t
//	P   = F_y A_g           phi 0.90, Omega 1.67
//
// w is the width of the body and t its thickness [mm], F_y in MPa, P in N.
//
// The head must have a side wall of 2/3 to 3/4 of w and a pin of at least 7/8 of w,
// and t at least 13 mm (from memory). Ears of machines rarely do.
//
// Validity: static load, proportions as above.
//
// Error: 0.3 % against the published example, whose page rounds.
//
// Source: AISC, Design Examples, example D.8: geometry read, results remembered.
func EyebarAISC(in EyebarAISCInputs) (EyebarAISCOutputs, error) {
	var c worked.Checks
	c.Positive("body_width", in.WidthMM)
	c.Positive("thickness", in.ThicknessMM)
	c.Positive("yield_strength", in.YieldMPa)
	if in.SideWallMM.Known {
		c.Positive("side_wall", in.SideWallMM.Value)
	}
	if in.PinMM.Known {
		c.Positive("pin_diameter", in.PinMM.Value)
	}
	if err := c.Err(); err != nil {
		return EyebarAISCOutputs{}, err
	}
	out := EyebarAISCOutputs{AreaMM2: in.WidthMM * in.ThicknessMM, InScope: in.scope()}
	out.NominalN = in.YieldMPa * out.AreaMM2
	out.LRFDN, out.ASDN = 0.9*out.NominalN, out.NominalN/1.67
	return out, nil
}

func (in EyebarAISCInputs) scope() string {
	side, pin := in.SideWallMM, in.PinMM
	switch {
	case in.ThicknessMM < 12.7,
		side.Known && (side.Value < in.WidthMM*2/3 || side.Value > in.WidthMM*3/4),
		pin.Known && pin.Value < in.WidthMM*7/8:
		return "no"
	case !side.Known || !pin.Known:
		return "unknown"
	}
	return "yes"
}

// EyebarAISCCalculation is the catalogue entry of EyebarAISC.
func EyebarAISCCalculation() worked.Calculation {
	return worked.Define("eyebar_aisc", EyebarAISC, worked.Page[EyebarAISCInputs, EyebarAISCOutputs]{
		Title:    "Static strength of an eyebar, AISC 360",
		Sources:  []string{"AISC, Design Examples, example D.8: geometry read, results remembered; proportions of D6 from memory"},
		Validity: "static load; side wall 2/3 to 3/4 of the body, pin at least 7/8 of it, thickness at least 13 mm",
		Formulas: []worked.Formula[EyebarAISCInputs, EyebarAISCOutputs]{
			{Symbol: "A_g", Is: "w * t", Source: "plain geometry"},
			{Symbol: "P", Is: "F_y * A_g", Source: "AISC 360 D2"},
			{Symbol: "D", Is: "0.9 * P", Source: "AISC 360 D2"},
			{Symbol: "A", Is: "P / 1.67", Source: "AISC 360 D2"},
		},
		Warnings: func(_ EyebarAISCInputs, out EyebarAISCOutputs) []string {
			says := []string{notCovered}
			if out.InScope != "yes" {
				says = append(says, "The head is not shown to have the proportions of D6: judge it as a pin plate.")
			}
			return says
		},
		Example: map[string]string{"body_width": "3 in", "thickness": "5/8 in", "side_wall": "2.23 in", "yield_strength": "36 ksi"},
	})
}
