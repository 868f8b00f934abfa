package fit

import "boremend/knowledge/worked"

// PressForcePerLengthInputs are a maker's figure and the width of a bush.
type PressForcePerLengthInputs struct {
	ForcePerMMN float64 `name:"force_per_mm_width" symbol:"f" kind:"force" means:"press force for each millimetre of width, from the maker of the bush"`
	WidthMM     float64 `name:"width" symbol:"w" kind:"length" means:"width of the bush"`
}

// PressForcePerLengthOutputs is the press force.
type PressForcePerLengthOutputs struct {
	PressForceN float64 `name:"press_force" symbol:"F" kind:"force" means:"press force when the bush is home"`
}

// PressForcePerLength computes the press force of a bush from a maker's figure
// for each millimetre of width.
//
//	F = f w
//
// f is the force for each millimetre of width [N], w the width [mm].
//
// Validity: the bush, the housing and the oil that the maker's figure is for.
//
// Error: that of the figure. For a 44/40 mm bush 340 N for each millimetre equals
// a friction of 0.077 at the most interference, an oiled fit.
//
// Source: a plain-bearing maker's mounting page, permaglide.com, press-in force
// and joint pressure (read).
func PressForcePerLength(in PressForcePerLengthInputs) (PressForcePerLengthOutputs, error) {
	var c worked.Checks
	c.Positive("force_per_mm_width", in.ForcePerMMN)
	c.Positive("width", in.WidthMM)
	if err := c.Err(); err != nil {
		return PressForcePerLengthOutputs{}, err
	}
	return PressForcePerLengthOutputs{PressForceN: in.ForcePerMMN * in.WidthMM}, nil
}

// PressForcePerLengthCalculation is the catalogue entry of PressForcePerLength.
func PressForcePerLengthCalculation() worked.Calculation {
	return worked.Define("press_force_per_length", PressForcePerLength, worked.Page[PressForcePerLengthInputs, PressForcePerLengthOutputs]{
		Title:    "Press force of a bush from its maker's figure",
		Sources:  []string{"plain-bearing maker's mounting page, permaglide.com (read)"},
		Validity: "the bush, housing and oil that the figure is for",
		Formulas: []worked.Formula[PressForcePerLengthInputs, PressForcePerLengthOutputs]{{Symbol: "F", Is: "f * w", Source: "maker's figure"}},
		Example:  map[string]string{"force_per_mm_width": "340 N", "width": "30 mm"},
	})
}
