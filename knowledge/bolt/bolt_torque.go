package bolt

import "boremend/knowledge/worked"

// BoltTorqueInputs are a bolt, the preload wanted and the state of its thread.
type BoltTorqueInputs struct {
	NutFactor     float64         `name:"nut_factor" symbol:"K" kind:"ratio" default:"0.20" means:"nut factor: 0.20 clean and dry, 0.15 oiled (see nut_factor)"`
	DiameterMM    float64         `name:"diameter" symbol:"d" kind:"length" means:"diameter of the thread"`
	PreloadN      worked.Optional `name:"preload" symbol:"F" kind:"force" means:"preload wanted; without it, the share of the proof load"`
	StressAreaMM2 worked.Optional `name:"stress_area" symbol:"A_s" kind:"area" means:"stress area, where the preload is to follow from the proof load"`
	ProofMPa      worked.Optional `name:"proof_stress" symbol:"S_p" kind:"stress" means:"proof strength, where the preload is to follow from the proof load"`
	Fraction      float64         `name:"preload_fraction" symbol:"f" kind:"ratio" default:"0.75" means:"preload as a share of the proof load"`
	FactorLeast   float64         `name:"nut_factor_least" symbol:"K_1" kind:"ratio" default:"0.12" means:"nut factor of the slipperiest thread to reckon with"`
	FactorMost    float64         `name:"nut_factor_most" symbol:"K_2" kind:"ratio" default:"0.20" means:"nut factor of the driest thread to reckon with"`
}

// BoltTorqueOutputs are the torque and what it may do.
type BoltTorqueOutputs struct {
	PreloadN      float64 `name:"preload_used" symbol:"F_i" kind:"force" means:"preload"`
	TorqueNM      float64 `name:"torque" symbol:"T" kind:"torque" means:"torque"`
	PreloadLeastN float64 `name:"preload_least" symbol:"F_1" kind:"force" means:"preload that this torque gives in the driest thread"`
	PreloadMostN  float64 `name:"preload_most" symbol:"F_2" kind:"force" means:"preload that this torque gives in the slipperiest thread"`
}

// BoltTorque computes the torque for a preload by the nut factor, and the preload
// that the same torque gives when the thread is in another state.
//
//	T   = K d F_i
//	F_i = F, or f A_s S_p
//	F_1 = T/(max(K, K_2) d), F_2 = T/(min(K, K_1) d)
//
// d is the thread [mm], F the preload [N], A_s the stress area [mm2], S_p the
// proof strength [MPa], f the share of the proof load, K the nut factor, K_1 and
// K_2 its range, T in N*m.
//
// The torque wrench measures friction more than preload: from 0.12 to 0.20 the
// same torque gives 1.67 times the preload. Read F_1 and F_2 as the answer.
//
// Validity: K from 0.05 to 0.5; measured values run from 0.09 to 0.30.
//
// Error: preload 25 to 35 % either way with a torque wrench (from memory).
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., section 8-8 and table
// 8-15 (read).
func BoltTorque(in BoltTorqueInputs) (BoltTorqueOutputs, error) {
	var c worked.Checks
	checkNutFactor(&c, "nut_factor", in.NutFactor)
	c.Positive("diameter", in.DiameterMM)
	checkNutRange(&c, in.FactorLeast, in.FactorMost)
	out := BoltTorqueOutputs{PreloadN: preloadOf(&c, in.PreloadN, in.StressAreaMM2, in.ProofMPa, in.Fraction)}
	if err := c.Err(); err != nil {
		return BoltTorqueOutputs{}, err
	}
	out.TorqueNM = in.NutFactor * in.DiameterMM * out.PreloadN / 1000
	out.PreloadLeastN = 1000 * out.TorqueNM / (max(in.NutFactor, in.FactorMost) * in.DiameterMM)
	out.PreloadMostN = 1000 * out.TorqueNM / (min(in.NutFactor, in.FactorLeast) * in.DiameterMM)
	return out, nil
}

// preloadOf is the preload given, or else the share of the proof load.
func preloadOf(c *worked.Checks, preload, area, proof worked.Optional, fraction float64) float64 {
	c.Between("preload_fraction", fraction, 0.1, 0.9)
	if area.Known {
		c.Positive("stress_area", area.Value)
	}
	if proof.Known {
		c.Positive("proof_stress", proof.Value)
	}
	switch {
	case preload.Known:
		c.Positive("preload", preload.Value)
		return preload.Value
	case !area.Known || !proof.Known:
		c.Refuse("preload", "is not known, and cannot be found without both stress_area and proof_stress")
		return 0
	}
	return fraction * area.Value * proof.Value
}

func checkNutFactor(c *worked.Checks, name string, k float64) { c.Between(name, k, 0.05, 0.5) }

func checkNutRange(c *worked.Checks, least, most float64) {
	checkNutFactor(c, "nut_factor_least", least)
	checkNutFactor(c, "nut_factor_most", most)
	if most < least {
		c.Refuse("nut_factor_most", "is %g, must not be below nut_factor_least, which is %g", most, least)
	}
}

const torqueSource = "Shigley's Mechanical Engineering Design, 9th ed., section 8-8 (read)"

// BoltTorqueCalculation is the catalogue entry of BoltTorque.
func BoltTorqueCalculation() worked.Calculation {
	given := func(in BoltTorqueInputs, _ BoltTorqueOutputs) bool { return in.PreloadN.Known }
	byProof := func(in BoltTorqueInputs, _ BoltTorqueOutputs) bool { return !in.PreloadN.Known }
	return worked.Define("bolt_torque", BoltTorque, worked.Page[BoltTorqueInputs, BoltTorqueOutputs]{
		Title:    "Torque for a preload",
		Sources:  []string{torqueSource, "nut factors: Shigley, 9th ed., table 8-15 (read)", preloadSource},
		Validity: "nut factor from 0.05 to 0.5",
		Formulas: []worked.Formula[BoltTorqueInputs, BoltTorqueOutputs]{
			{Symbol: "F_i", Is: "F", Source: "preload as given", When: given},
			{Symbol: "F_i", Is: "f * A_s * S_p", Source: preloadSource, When: byProof},
			{Symbol: "T", Is: "K * d * F_i / 1000", Source: torqueSource},
			{Symbol: "F_1", Is: "1000 * T / (max(K, K_2) * d)", Source: "the same torque, dry"},
			{Symbol: "F_2", Is: "1000 * T / (min(K, K_1) * d)", Source: "the same torque, slippery"},
		},
		Warnings: func(in BoltTorqueInputs, out BoltTorqueOutputs) []string {
			return append(overProof(in, out), "The preload lies anywhere between the least and the most shown: the wrench measures friction. Oil every thread alike.", notCovered)
		},
		Example: map[string]string{"diameter": "16 mm", "stress_area": "157 mm2", "proof_stress": "580 MPa"},
	})
}

// overProof warns where a slippery thread would stretch the bolt for good.
func overProof(in BoltTorqueInputs, out BoltTorqueOutputs) []string {
	if in.StressAreaMM2.Known && in.ProofMPa.Known && out.PreloadMostN > in.StressAreaMM2.Value*in.ProofMPa.Value {
		return []string{"In the slipperiest thread this torque goes over the proof load: oil the thread and use the lower torque that goes with it, or know that it is dry."}
	}
	return nil
}
