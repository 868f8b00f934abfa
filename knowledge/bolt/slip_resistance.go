package bolt

import "boremend/knowledge/worked"

// SlipResistanceInputs are clamped faces and the bolts that clamp them.
type SlipResistanceInputs struct {
	SlipCoefficient float64         `name:"slip_coefficient" symbol:"mu" kind:"ratio" means:"slip coefficient of the faces (see slip_coefficient)"`
	Du              float64         `name:"du" symbol:"D_u" kind:"ratio" default:"1.13" means:"what bolts tightened to a least preload have on average: 1.13; 1 where the preload given is the least to count on"`
	FillFactor      float64         `name:"hf" symbol:"h_f" kind:"ratio" default:"1" means:"loss by filler plates: 1 for none or one, 0.85 for more"`
	PretensionN     float64         `name:"pretension" symbol:"T_b" kind:"force" means:"preload of one bolt"`
	Planes          float64         `name:"planes" symbol:"n_s" kind:"count" default:"1" means:"faces that would have to slip"`
	Bolts           float64         `name:"bolts" symbol:"n" kind:"count" means:"bolts that clamp"`
	LoadN           worked.Optional `name:"slip_load" symbol:"V" kind:"force" means:"load that tries to slip the joint, where known"`
}

// SlipResistanceOutputs are the loads at which it slips.
type SlipResistanceOutputs struct {
	PerBoltN float64         `name:"slip_per_bolt" symbol:"r" kind:"force" means:"load at which one bolt's share slips"`
	TotalN   float64         `name:"slip_total" symbol:"R" kind:"force" means:"load at which the joint slips; the design figure of load and resistance factors"`
	ASDN     float64         `name:"slip_asd" symbol:"R_a" kind:"force" means:"load allowed, by a safety of 1.5"`
	Safety   worked.Optional `name:"slip_safety" symbol:"S" kind:"ratio" means:"load at which it slips over the load"`
}

// SlipResistance computes the load that clamped faces hold by friction.
//
//	r   = mu D_u h_f T_b n_s
//	R   = n r
//	R_a = R/1.5
//	S   = R/V
//
// mu is the slip coefficient, T_b the preload of one bolt [N], n_s the number of
// faces, n the number of bolts, V the load [N]. D_u is 1.13 for bolts tightened to
// the standard's least preload; enter 1 where T_b is already the least that the
// torque may give. h_f counts filler plates.
//
// Validity: standard holes, faces clean and dry as the coefficient was measured,
// load through the middle of the group. A pull on the bolts takes clamping away:
// subtract it from T_b.
//
// Error: the coefficient scatters by a quarter; oil or paint halves it.
//
// Source: AISC 360 J3.8 (2005 text read), a worked example read.
func SlipResistance(in SlipResistanceInputs) (SlipResistanceOutputs, error) {
	var c worked.Checks
	c.Between("slip_coefficient", in.SlipCoefficient, 0.05, 0.6)
	c.Between("du", in.Du, 0.5, 1.2)
	c.Between("hf", in.FillFactor, 0.5, 1)
	c.Positive("pretension", in.PretensionN)
	checkWhole(&c, "planes", in.Planes, 1, 10)
	checkWhole(&c, "bolts", in.Bolts, 1, 1000)
	if in.LoadN.Known {
		c.Positive("slip_load", in.LoadN.Value)
	}
	if err := c.Err(); err != nil {
		return SlipResistanceOutputs{}, err
	}
	out := SlipResistanceOutputs{PerBoltN: in.SlipCoefficient * in.Du * in.FillFactor * in.PretensionN * in.Planes}
	out.TotalN = in.Bolts * out.PerBoltN
	out.ASDN = out.TotalN / 1.5
	if in.LoadN.Known {
		out.Safety = worked.Some(out.TotalN / in.LoadN.Value)
	}
	return out, nil
}

// SlipResistanceCalculation is the catalogue entry of SlipResistance.
func SlipResistanceCalculation() worked.Calculation {
	const source = "AISC 360 J3.8 (2005 text read)"
	return worked.Define("slip_resistance", SlipResistance, worked.Page[SlipResistanceInputs, SlipResistanceOutputs]{
		Title:    "Load that clamped faces hold by friction",
		Sources:  []string{source},
		Validity: "standard holes, clean dry faces, load through the middle of the group, no pull on the bolts",
		Formulas: []worked.Formula[SlipResistanceInputs, SlipResistanceOutputs]{
			{Symbol: "r", Is: "mu * D_u * h_f * T_b * n_s", Source: source},
			{Symbol: "R", Is: "n * r", Source: source},
			{Symbol: "R_a", Is: "R / 1.5", Source: source},
			{Symbol: "S", Is: "R / V", Source: "load over load", When: func(in SlipResistanceInputs, _ SlipResistanceOutputs) bool { return in.LoadN.Known }},
		},
		Warnings: func(in SlipResistanceInputs, out SlipResistanceOutputs) []string {
			var warnings []string
			if in.LoadN.Known && in.LoadN.Value > out.TotalN {
				warnings = append(warnings, "It slips: the bolts come to bear, one after the other.")
			}
			return append(warnings, "Paint, oil or a soft shim between the faces takes it all.", notCovered)
		},
		Example: map[string]string{"slip_coefficient": "0.2", "du": "1", "pretension": "41 kN", "bolts": "6", "slip_load": "30 kN"},
	})
}
