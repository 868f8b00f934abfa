package fit

import "boremend/knowledge/worked"

// InterferencePerDiameterInputs are a diameter and an allowance for each inch.
type InterferencePerDiameterInputs struct {
	DiameterMM       float64 `name:"diameter" symbol:"d" kind:"length" means:"seat diameter"`
	AllowancePerInch float64 `name:"allowance_per_inch" symbol:"a" kind:"ratio" means:"interference over diameter: 0.001 is a thousandth for each inch, one per mille"`
}

// InterferencePerDiameterOutputs is the interference.
type InterferencePerDiameterOutputs struct {
	AllowanceMM float64 `name:"allowance" symbol:"delta" kind:"length" means:"interference, on the diameter"`
}

// InterferencePerDiameter computes the interference of a shop rule of so many
// thousandths for each inch of diameter.
//
//	delta = a d
//
// a is the allowance for each inch of diameter (the same number in millimetres),
// d the seat diameter.
//
// Practice: 1 to 2.5 per mille with 1.5 a fair average, falling with size; forced
// fits 1 to 2, shrunk fits 1 (read). Heavy press about 2, light press about 1.5
// (common practice, no source).
//
// Validity: a starting point. Pressure, stress and press force decide.
//
// Error: a rule of thumb. At one allowance the pressure still varies threefold
// with the walls.
//
// Source: F. D. Jones, Turning and Boring (read); Smith, Applied Science for
// Metal-Workers, art. 453 and 454 (read).
func InterferencePerDiameter(in InterferencePerDiameterInputs) (InterferencePerDiameterOutputs, error) {
	var c worked.Checks
	c.Positive("diameter", in.DiameterMM)
	c.Positive("allowance_per_inch", in.AllowancePerInch)
	if in.AllowancePerInch > mostInterference {
		c.Refuse("allowance_per_inch", "is %g, more than %g: no metal stays elastic so far (a thousandth for each inch is 0.001)", in.AllowancePerInch, mostInterference)
	}
	if err := c.Err(); err != nil {
		return InterferencePerDiameterOutputs{}, err
	}
	return InterferencePerDiameterOutputs{AllowanceMM: in.AllowancePerInch * in.DiameterMM}, nil
}

// InterferencePerDiameterCalculation is the catalogue entry of
// InterferencePerDiameter.
func InterferencePerDiameterCalculation() worked.Calculation {
	return worked.Define("interference_per_diameter", InterferencePerDiameter, worked.Page[InterferencePerDiameterInputs, InterferencePerDiameterOutputs]{
		Title: "Interference by the rule of thousandths",
		Sources: []string{
			"F. D. Jones, Turning and Boring, allowance for forced fits, free-books.at (read)",
			"Smith, Applied Science for Metal-Workers, art. 453 and 454, chestofbooks.com (read)",
			"heavy press 0.002 and light press 0.0015 for each inch: common practice, no source",
		},
		Validity: "a starting point; pressure, stress and press force decide",
		Formulas: []worked.Formula[InterferencePerDiameterInputs, InterferencePerDiameterOutputs]{
			{Symbol: "delta", Is: "a * d", Source: "rule of thousandths"},
		},
		Warnings: func(in InterferencePerDiameterInputs, _ InterferencePerDiameterOutputs) []string {
			switch {
			case in.AllowancePerInch > 0.0025:
				return []string{"Heavier than published practice (1 to 2.5 thousandths for each inch): check that nothing yields."}
			case in.AllowancePerInch < 0.001:
				return []string{"Lighter than published practice (1 to 2.5 thousandths for each inch): check that it holds."}
			}
			return nil
		},
		Example: map[string]string{"diameter": "4 in", "allowance_per_inch": "0.0015"},
	})
}
