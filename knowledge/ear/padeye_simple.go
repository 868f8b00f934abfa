package ear

import "boremend/knowledge/worked"

// PadeyeSimpleInputs are a pad eye and its load.
type PadeyeSimpleInputs struct {
	ForceN       float64         `name:"force" symbol:"F" kind:"force" means:"load on the eye"`
	ThicknessMM  float64         `name:"thickness" symbol:"t" kind:"length" means:"thickness at the hole"`
	HoleMM       float64         `name:"hole_diameter" symbol:"d_0" kind:"length" means:"hole"`
	EdgeRadiusMM float64         `name:"edge_radius" symbol:"R" kind:"length" means:"hole centre to the edge"`
	YieldMPa     worked.Optional `name:"yield_strength" symbol:"F_y" kind:"stress" means:"yield strength of the eye"`
}

// PadeyeSimpleOutputs are the stresses.
type PadeyeSimpleOutputs struct {
	BearingMPa  float64         `name:"bearing" symbol:"s_b" kind:"stress" means:"bearing stress over the hole"`
	ShearMPa    float64         `name:"shear_one_plane" symbol:"s_s" kind:"stress" means:"shear stress with one plane counted"`
	TensionMPa  float64         `name:"net_tension" symbol:"s_n" kind:"stress" means:"tension in the two side walls"`
	Utilisation worked.Optional `name:"utilisation" symbol:"u" kind:"ratio" means:"largest stress over its allowable"`
}

// PadeyeSimple computes the three mean stresses of the allowable-stress check of a
// pad eye.
//
//	s_b = F/(d_0 t)             allowable 0.9 F_y
//	s_s = F/((R - d_0/2) t)     allowable 0.4 F_y, one shear plane only
//	s_n = F/((2 R - d_0) t)     allowable 0.6 F_y
//	u   = the largest of each over its allowable
//
// R is the hole centre to the edge, d_0 the hole, t the thickness [mm], F the load
// [N], stress in MPa. Counting one shear plane is twice as safe as usual.
//
// Validity: d_0/2 < R. Error: mean stresses; the peak at the hole is three to ten
// times the tension, see LugLoad.
//
// Source: a published standard check of 2021 (scribd.com document 491102544), read.
func PadeyeSimple(in PadeyeSimpleInputs) (PadeyeSimpleOutputs, error) {
	var c worked.Checks
	c.Positive("force", in.ForceN)
	c.Positive("thickness", in.ThicknessMM)
	c.Positive("hole_diameter", in.HoleMM)
	c.Positive("edge_radius", in.EdgeRadiusMM)
	c.Below("hole_diameter", in.HoleMM, "twice edge_radius", 2*in.EdgeRadiusMM)
	if in.YieldMPa.Known {
		c.Positive("yield_strength", in.YieldMPa.Value)
	}
	if err := c.Err(); err != nil {
		return PadeyeSimpleOutputs{}, err
	}
	out := PadeyeSimpleOutputs{
		BearingMPa: in.ForceN / (in.HoleMM * in.ThicknessMM),
		ShearMPa:   in.ForceN / ((in.EdgeRadiusMM - in.HoleMM/2) * in.ThicknessMM),
		TensionMPa: in.ForceN / ((2*in.EdgeRadiusMM - in.HoleMM) * in.ThicknessMM),
	}
	if in.YieldMPa.Known {
		out.Utilisation = worked.Some(max(out.BearingMPa/0.9, out.ShearMPa/0.4, out.TensionMPa/0.6) / in.YieldMPa.Value)
	}
	return out, nil
}

// PadeyeSimpleCalculation is the catalogue entry of PadeyeSimple.
func PadeyeSimpleCalculation() worked.Calculation {
	const sheet = "published standard check of 2021"
	return worked.Define("padeye_simple", PadeyeSimple, worked.Page[PadeyeSimpleInputs, PadeyeSimpleOutputs]{
		Title:    "Mean stresses at a pad eye",
		Sources:  []string{sheet + " (scribd.com/document/491102544), read"},
		Validity: "hole inside the plate; mean stresses",
		Formulas: []worked.Formula[PadeyeSimpleInputs, PadeyeSimpleOutputs]{
			{Symbol: "s_b", Is: "F / (d_0 * t)", Source: sheet},
			{Symbol: "s_s", Is: "F / ((R - d_0 / 2) * t)", Source: sheet},
			{Symbol: "s_n", Is: "F / ((2 * R - d_0) * t)", Source: sheet},
			{Symbol: "u", Is: "max(s_b / 0.9, s_s / 0.4, s_n / 0.6) / F_y", Source: sheet,
				When: func(in PadeyeSimpleInputs, _ PadeyeSimpleOutputs) bool { return in.YieldMPa.Known }},
		},
		Warnings: func(PadeyeSimpleInputs, PadeyeSimpleOutputs) []string {
			return []string{notCovered, "Mean stresses: the peak at the hole is three to ten times the tension, see lug_load."}
		},
		Example: map[string]string{"force": "118 kN", "thickness": "35 mm", "hole_diameter": "42 mm", "edge_radius": "97 mm", "yield_strength": "235 MPa"},
	})
}
