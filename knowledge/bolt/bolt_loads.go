package bolt

import "boremend/knowledge/worked"

// BoltLoadsInputs are a stress area and the strength of the steel.
type BoltLoadsInputs struct {
	StressAreaMM2 float64         `name:"stress_area" symbol:"A_s" kind:"area" means:"stress area of the thread"`
	ProofMPa      float64         `name:"proof_stress" symbol:"S_p" kind:"stress" means:"proof strength of the grade"`
	TensileMPa    worked.Optional `name:"tensile_stress" symbol:"R_m" kind:"stress" means:"tensile strength of the grade, where known"`
}

// BoltLoadsOutputs are the loads that follow.
type BoltLoadsOutputs struct {
	ProofLoadN   float64         `name:"proof_load" symbol:"F_p" kind:"force" means:"proof load"`
	TensileLoadN worked.Optional `name:"tensile_load" symbol:"F_m" kind:"force" means:"load at which it breaks"`
}

// BoltLoads computes the loads of a bolt whose stress area and steel are known,
// for sizes and grades that the tables do not list.
//
//	F_p = A_s S_p
//	F_m = A_s R_m
//
// A_s is the stress area [mm2], S_p and R_m proof and tensile strength [MPa].
//
// Validity: a bolt that breaks in its thread and not in a waist or under its head.
//
// Error: the loads printed in the standards are rounded and differ by up to 0.4 %.
//
// Source: ISO 898-1, loads as stress area times stress (read).
func BoltLoads(in BoltLoadsInputs) (BoltLoadsOutputs, error) {
	var c worked.Checks
	c.Positive("stress_area", in.StressAreaMM2)
	c.Positive("proof_stress", in.ProofMPa)
	if in.TensileMPa.Known {
		c.Positive("tensile_stress", in.TensileMPa.Value)
		c.Below("proof_stress", in.ProofMPa, "tensile_stress", in.TensileMPa.Value)
	}
	if err := c.Err(); err != nil {
		return BoltLoadsOutputs{}, err
	}
	out := BoltLoadsOutputs{ProofLoadN: in.StressAreaMM2 * in.ProofMPa}
	if in.TensileMPa.Known {
		out.TensileLoadN = worked.Some(in.StressAreaMM2 * in.TensileMPa.Value)
	}
	return out, nil
}

// BoltLoadsCalculation is the catalogue entry of BoltLoads.
func BoltLoadsCalculation() worked.Calculation {
	return worked.Define("bolt_loads", BoltLoads, worked.Page[BoltLoadsInputs, BoltLoadsOutputs]{
		Title:    "Loads of a bolt by stress area",
		Sources:  []string{"ISO 898-1, loads as stress area times stress (read)"},
		Validity: "a bolt that breaks in its thread",
		Formulas: []worked.Formula[BoltLoadsInputs, BoltLoadsOutputs]{
			{Symbol: "F_p", Is: "A_s * S_p", Source: "ISO 898-1"},
			{Symbol: "F_m", Is: "A_s * R_m", Source: "ISO 898-1", When: func(in BoltLoadsInputs, _ BoltLoadsOutputs) bool { return in.TensileMPa.Known }},
		},
		Warnings: func(BoltLoadsInputs, BoltLoadsOutputs) []string { return []string{notCovered} },
		Example:  map[string]string{"stress_area": "157 mm2", "proof_stress": "580 MPa", "tensile_stress": "800 MPa"},
	})
}
