package bolt

import "boremend/knowledge/worked"

// PreloadFromTorqueInputs are a torque and the states that a thread may be in.
type PreloadFromTorqueInputs struct {
	TorqueNM    float64 `name:"torque" symbol:"T" kind:"torque" means:"torque of the wrench"`
	DiameterMM  float64 `name:"diameter" symbol:"d" kind:"length" means:"diameter of the thread"`
	FactorLeast float64 `name:"nut_factor_least" symbol:"K_1" kind:"ratio" default:"0.12" means:"nut factor of the slipperiest thread to reckon with"`
	FactorMost  float64 `name:"nut_factor_most" symbol:"K_2" kind:"ratio" default:"0.20" means:"nut factor of the driest thread to reckon with"`
}

// PreloadFromTorqueOutputs are the ends of the range.
type PreloadFromTorqueOutputs struct {
	PreloadLeastN float64 `name:"preload_least" symbol:"F_1" kind:"force" means:"preload in the driest thread: hold the joint with this"`
	PreloadMostN  float64 `name:"preload_most" symbol:"F_2" kind:"force" means:"preload in the slipperiest thread: the bolt must stand this"`
}

// PreloadFromTorque computes what a torque that is printed on a job card gives.
//
//	F_1 = T/(K_2 d)
//	F_2 = T/(K_1 d)
//
// T is the torque [N*m], d the thread [mm], K_1 and K_2 the least and most nut
// factor.
//
// Validity: nut factors from 0.05 to 0.5.
//
// Error: that is what the range shows; a worn wrench adds its own.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., section 8-8 (read).
func PreloadFromTorque(in PreloadFromTorqueInputs) (PreloadFromTorqueOutputs, error) {
	var c worked.Checks
	c.Positive("torque", in.TorqueNM)
	c.Positive("diameter", in.DiameterMM)
	checkNutRange(&c, in.FactorLeast, in.FactorMost)
	if err := c.Err(); err != nil {
		return PreloadFromTorqueOutputs{}, err
	}
	return PreloadFromTorqueOutputs{
		PreloadLeastN: 1000 * in.TorqueNM / (in.FactorMost * in.DiameterMM),
		PreloadMostN:  1000 * in.TorqueNM / (in.FactorLeast * in.DiameterMM),
	}, nil
}

// PreloadFromTorqueCalculation is the catalogue entry of PreloadFromTorque.
func PreloadFromTorqueCalculation() worked.Calculation {
	return worked.Define("preload_from_torque", PreloadFromTorque, worked.Page[PreloadFromTorqueInputs, PreloadFromTorqueOutputs]{
		Title:    "Preload that a torque gives",
		Sources:  []string{torqueSource},
		Validity: "nut factors from 0.05 to 0.5",
		Formulas: []worked.Formula[PreloadFromTorqueInputs, PreloadFromTorqueOutputs]{
			{Symbol: "F_1", Is: "1000 * T / (K_2 * d)", Source: torqueSource},
			{Symbol: "F_2", Is: "1000 * T / (K_1 * d)", Source: torqueSource},
		},
		Warnings: func(PreloadFromTorqueInputs, PreloadFromTorqueOutputs) []string { return []string{notCovered} },
		Example:  map[string]string{"torque": "200 N*m", "diameter": "16 mm"},
	})
}
