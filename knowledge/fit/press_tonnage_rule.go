package fit

import "boremend/knowledge/worked"

// PressTonnageRuleInputs is the diameter of a pin.
type PressTonnageRuleInputs struct {
	DiameterMM float64 `name:"diameter" symbol:"d" kind:"length" means:"pin diameter"`
}

// PressTonnageRuleOutputs is the press force of the rule.
type PressTonnageRuleOutputs struct {
	PressForceN float64 `name:"press_force" symbol:"P" kind:"force" means:"press force"`
}

// PressTonnageRule computes the press force of an old rule for crank pins in
// cast-steel centres.
//
//	P [short tons] = 15 d [in] + 15
//
// d is the pin diameter.
//
// Validity: a curiosity to compare with. Neither length nor interference is in
// it: never size a press or a fit with it. Pins from 1 to 20 in.
//
// Error: unknown, easily a factor of two.
//
// Source: Smith, Applied Science for Metal-Workers, art. 454 Forced Fits,
// chestofbooks.com (read).
func PressTonnageRule(in PressTonnageRuleInputs) (PressTonnageRuleOutputs, error) {
	var c worked.Checks
	c.Between("diameter", in.DiameterMM, 1*mmPerInch, 20*mmPerInch)
	if err := c.Err(); err != nil {
		return PressTonnageRuleOutputs{}, err
	}
	return PressTonnageRuleOutputs{PressForceN: (15*in.DiameterMM/mmPerInch + 15) * newtonsPerShortTon}, nil
}

// PressTonnageRuleCalculation is the catalogue entry of PressTonnageRule.
func PressTonnageRuleCalculation() worked.Calculation {
	return worked.Define("press_tonnage_rule", PressTonnageRule, worked.Page[PressTonnageRuleInputs, PressTonnageRuleOutputs]{
		Title:    "Old rule for the press force of a crank pin",
		Sources:  []string{"Smith, Applied Science for Metal-Workers, art. 454, chestofbooks.com (read)"},
		Validity: "to compare with only; pins from 1 to 20 in in cast-steel centres",
		Formulas: []worked.Formula[PressTonnageRuleInputs, PressTonnageRuleOutputs]{
			{Symbol: "P", Is: "(15 * d / 25.4 + 15) * 8896.443230521", Source: "Smith; short tons to N"},
		},
		Warnings: func(PressTonnageRuleInputs, PressTonnageRuleOutputs) []string {
			return []string{"Neither length nor interference is in this rule: never size with it."}
		},
		Example: map[string]string{"diameter": "9 in"},
	})
}
