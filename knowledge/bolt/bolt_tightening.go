package bolt

import "boremend/knowledge/worked"

// BoltTighteningInputs are a bolt and the states that its thread may be in.
type BoltTighteningInputs struct {
	Size        string  `name:"size" means:"size of the thread: M16, M16x1.5, 3/4-10, 3/4 UNF"`
	Grade       string  `name:"grade" choices:"8.8,10.9,12.9,2,5,8" means:"class of a metric bolt or grade of an inch bolt"`
	Fraction    float64 `name:"preload_fraction" symbol:"f" kind:"ratio" default:"0.75" means:"preload as a share of the proof load"`
	FactorLeast float64 `name:"nut_factor_least" symbol:"K_1" kind:"ratio" default:"0.12" means:"nut factor of the slipperiest thread to reckon with"`
	FactorMost  float64 `name:"nut_factor_most" symbol:"K_2" kind:"ratio" default:"0.20" means:"nut factor of the driest thread to reckon with"`
}

// BoltTighteningOutputs are the torques and what they do.
type BoltTighteningOutputs struct {
	DiameterMM    float64 `name:"diameter" symbol:"d" kind:"length" means:"diameter of the thread"`
	StressAreaMM2 float64 `name:"stress_area" symbol:"A_s" kind:"area" means:"stress area"`
	ProofMPa      float64 `name:"proof_stress" symbol:"S_p" kind:"stress" means:"proof strength"`
	ProofLoadN    float64 `name:"proof_load" symbol:"F_p" kind:"force" means:"proof load"`
	PreloadN      float64 `name:"preload" symbol:"F_i" kind:"force" means:"preload wanted"`
	TorqueSafeNM  float64 `name:"torque_safe" symbol:"T_1" kind:"torque" means:"torque that stretches no bolt too far, slippery as it may be"`
	TorqueDryNM   float64 `name:"torque_dry" symbol:"T_2" kind:"torque" means:"torque that reaches the preload in the driest thread: only for threads known to be dry"`
	PreloadLeastN float64 `name:"preload_least" symbol:"F_1" kind:"force" means:"preload that the safe torque gives in the driest thread"`
	PreloadMostN  float64 `name:"preload_most" symbol:"F_2" kind:"force" means:"preload that the dry torque gives in the slipperiest thread"`
}

// BoltTightening computes the torque for a bolt of the tables at both ends of the
// range of friction.
//
//	F_p = A_s S_p, F_i = f F_p
//	T_1 = K_1 d F_i, and in the driest thread F_1 = T_1/(K_2 d)
//	T_2 = K_2 d F_i, and in the slipperiest thread F_2 = T_2/(K_1 d)
//
// d is the thread [mm], A_s its stress area [mm2], S_p the proof strength [MPa], f
// the share of the proof load, K_1 and K_2 the least and most nut factor, T in
// N*m.
//
// T_1 never overloads a bolt, and the joint can count on F_1. T_2 is for threads
// that are known to be clean and dry: in an oiled one it gives F_2. Knowing the
// state of the thread narrows the range, and that is worth more than a better
// wrench.
//
// Validity: sizes and grades of the tables; nut factors from 0.05 to 0.5.
//
// Error: that of the range.
//
// Source: threads and grades as BoltStrength; torque Shigley's Mechanical
// Engineering Design, 9th ed., section 8-8 and table 8-15 (read).
func BoltTightening(in BoltTighteningInputs) (BoltTighteningOutputs, error) {
	var c worked.Checks
	c.Between("preload_fraction", in.Fraction, 0.1, 0.9)
	checkNutRange(&c, in.FactorLeast, in.FactorMost)
	t, s := lookUp(&c, in.Size, in.Grade)
	if err := c.Err(); err != nil {
		return BoltTighteningOutputs{}, err
	}
	out := BoltTighteningOutputs{DiameterMM: t.DiameterMM, StressAreaMM2: t.StressAreaMM2, ProofMPa: s.ProofMPa}
	out.ProofLoadN = t.StressAreaMM2 * s.ProofMPa
	out.PreloadN = in.Fraction * out.ProofLoadN
	out.TorqueSafeNM = in.FactorLeast * t.DiameterMM * out.PreloadN / 1000
	out.TorqueDryNM = in.FactorMost * t.DiameterMM * out.PreloadN / 1000
	out.PreloadLeastN = 1000 * out.TorqueSafeNM / (in.FactorMost * t.DiameterMM)
	out.PreloadMostN = 1000 * out.TorqueDryNM / (in.FactorLeast * t.DiameterMM)
	return out, nil
}

// BoltTighteningCalculation is the catalogue entry of BoltTightening.
func BoltTighteningCalculation() worked.Calculation {
	return worked.Define("bolt_tightening", BoltTightening, worked.Page[BoltTighteningInputs, BoltTighteningOutputs]{
		Title:    "Torque for a bolt, slippery and dry",
		Sources:  []string{threadSource, gradeSource, torqueSource, preloadSource},
		Validity: "sizes and grades of the tables; nut factors from 0.05 to 0.5",
		Formulas: []worked.Formula[BoltTighteningInputs, BoltTighteningOutputs]{
			{Symbol: "d", Table: threadTable, Source: threadSource},
			{Symbol: "A_s", Table: threadTable, Source: threadSource},
			{Symbol: "S_p", Table: gradeTable, Source: gradeSource},
			{Symbol: "F_p", Is: "A_s * S_p", Source: "ISO 898-1: stress area times stress"},
			{Symbol: "F_i", Is: "f * F_p", Source: preloadSource},
			{Symbol: "T_1", Is: "K_1 * d * F_i / 1000", Source: torqueSource},
			{Symbol: "T_2", Is: "K_2 * d * F_i / 1000", Source: torqueSource},
			{Symbol: "F_1", Is: "1000 * T_1 / (K_2 * d)", Source: "the safe torque, dry"},
			{Symbol: "F_2", Is: "1000 * T_2 / (K_1 * d)", Source: "the dry torque, slippery"},
		},
		Warnings: func(in BoltTighteningInputs, out BoltTighteningOutputs) []string {
			warnings := fromMemory(in.Size)
			if out.PreloadMostN > out.ProofLoadN {
				warnings = append(warnings, "The dry torque goes over the proof load where the thread is oiled: never use it on a thread whose state is not known.")
			}
			return append(warnings, notCovered)
		},
		Example: map[string]string{"size": "M16", "grade": "8.8"},
	})
}
