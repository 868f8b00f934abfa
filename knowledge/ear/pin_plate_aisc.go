package ear

import "boremend/knowledge/worked"

// PinPlateAISCInputs are a plate with a pin hole.
type PinPlateAISCInputs struct {
	WidthMM     worked.Optional `name:"width" symbol:"w_0" kind:"length" means:"width of the plate at the hole; from the side walls if not given"`
	ThicknessMM float64         `name:"thickness" symbol:"t" kind:"length" means:"thickness of the plate"`
	PinMM       float64         `name:"pin_diameter" symbol:"d" kind:"length" means:"pin"`
	HoleMM      worked.Optional `name:"hole_diameter" symbol:"d_h" kind:"length" means:"hole; the pin if not given"`
	SideWallMM  worked.Optional `name:"side_wall" symbol:"b_0" kind:"length" means:"hole to the edge across the load; from the width if not given"`
	EndWallMM   float64         `name:"end_wall" symbol:"a" kind:"length" means:"hole to the edge along the load"`
	YieldMPa    float64         `name:"yield_strength" symbol:"F_y" kind:"stress" means:"yield strength of the plate"`
	TensileMPa  float64         `name:"tensile_strength" symbol:"F_u" kind:"stress" means:"tensile strength of the plate"`
}

// PinPlateAISCOutputs are nominal, design and allowable strengths.
type PinPlateAISCOutputs struct {
	HoleMM       float64 `name:"hole_used" symbol:"d_u" kind:"length" means:"hole used"`
	WidthMM      float64 `name:"width_used" symbol:"w" kind:"length" means:"width used"`
	SideWallMM   float64 `name:"side_wall_used" symbol:"b" kind:"length" means:"side wall used"`
	EffectiveMM  float64 `name:"effective_width" symbol:"b_e" kind:"length" means:"side wall that counts"`
	ShearAreaMM2 float64 `name:"shear_area" symbol:"A_sf" kind:"area" means:"area of the two shear planes"`
	RuptureN     float64 `name:"tension_rupture" symbol:"P_1" kind:"force" means:"nominal strength, tearing of the side walls"`
	ShearN       float64 `name:"shear_rupture" symbol:"P_2" kind:"force" means:"nominal strength, shearing out"`
	BearingN     float64 `name:"bearing" symbol:"P_3" kind:"force" means:"nominal strength, bearing of the pin"`
	YieldN       float64 `name:"gross_yield" symbol:"P_4" kind:"force" means:"nominal strength, yield of the full width"`
	RuptureLRFDN float64 `name:"tension_rupture_lrfd" symbol:"D_1" kind:"force" means:"design strength, tearing"`
	ShearLRFDN   float64 `name:"shear_rupture_lrfd" symbol:"D_2" kind:"force" means:"design strength, shearing out"`
	BearingLRFDN float64 `name:"bearing_lrfd" symbol:"D_3" kind:"force" means:"design strength, bearing"`
	YieldLRFDN   float64 `name:"gross_yield_lrfd" symbol:"D_4" kind:"force" means:"design strength, yield of the full width"`
	LRFDN        float64 `name:"lrfd" symbol:"D" kind:"force" means:"design strength of the plate"`
	ASDN         float64 `name:"asd" symbol:"A" kind:"force" means:"allowable strength of the plate"`
	InsideScope  string  `name:"inside_scope" choices:"yes,no" means:"whether the plate has the proportions that the standard asks for"`
}

// PinPlateAISC computes the static strength of a pin-connected plate by AISC 360.
//
//	b_e  = min(2 t + 16 mm, b)
//	P_1  = 2 t b_e F_u            phi 0.75, Omega 2
//	A_sf = 2 t (a + d/2)
//	P_2  = 0.6 F_u A_sf           phi 0.75, Omega 2
//	P_3  = 1.8 F_y d t            phi 0.75, Omega 2
//	P_4  = F_y w t                phi 0.90, Omega 1.67
//	design strength = phi P, allowable = P/Omega, the least of the four
//
// w is the width w_0 as given, else 2 b + d_h; b the side wall b_0 as given, else
// (w - d_h)/2; d_h the hole, else the pin. t is the thickness, d the pin, a the end
// wall [mm], F_y and F_u yield and tensile strength [MPa], loads in N.
//
// The standard asks for a >= 1.33 b_e, w >= 2 b_e + d and a hole at most 1 mm
// larger than the pin. Machine ears usually fail the first: the equations then do
// not apply, inside_scope says no, and the figures must not be relied on. Its
// commentary does not recommend pin plates where the load varies enough to wear
// pin and hole, which is every joint that this program sees: a static screen only.
//
// Validity: pin midway in the width, static load.
//
// Error: 0.3 % against the published example, whose page rounds.
//
// Source: AISC 360 D5, J7, D2: 1999 text D3, 2010 commentary and two published
// sheets read.
func PinPlateAISC(in PinPlateAISCInputs) (PinPlateAISCOutputs, error) {
	var c worked.Checks
	in.check(&c)
	if err := c.Err(); err != nil {
		return PinPlateAISCOutputs{}, err
	}
	out := PinPlateAISCOutputs{HoleMM: in.PinMM, WidthMM: in.WidthMM.Value, SideWallMM: in.SideWallMM.Value}
	if in.HoleMM.Known {
		out.HoleMM = in.HoleMM.Value
	}
	if !in.SideWallMM.Known {
		out.SideWallMM = (out.WidthMM - out.HoleMM) / 2
	}
	if !in.WidthMM.Known {
		out.WidthMM = 2*out.SideWallMM + out.HoleMM
	}
	if !(out.SideWallMM > 0) || out.WidthMM < out.HoleMM+2*out.SideWallMM-1e-6 {
		c.Refuse("width", "is %g mm, not enough for the hole of %g mm and two side walls of %g mm", out.WidthMM, out.HoleMM, out.SideWallMM)
		return PinPlateAISCOutputs{}, c.Err()
	}
	out.EffectiveMM = min(2*in.ThicknessMM+16, out.SideWallMM)
	out.ShearAreaMM2 = 2 * in.ThicknessMM * (in.EndWallMM + in.PinMM/2)
	out.RuptureN = 2 * in.ThicknessMM * out.EffectiveMM * in.TensileMPa
	out.ShearN = 0.6 * in.TensileMPa * out.ShearAreaMM2
	out.BearingN = 1.8 * in.YieldMPa * in.PinMM * in.ThicknessMM
	out.YieldN = in.YieldMPa * out.WidthMM * in.ThicknessMM
	out.RuptureLRFDN, out.ShearLRFDN, out.BearingLRFDN, out.YieldLRFDN = 0.75*out.RuptureN, 0.75*out.ShearN, 0.75*out.BearingN, 0.9*out.YieldN
	out.LRFDN = min(out.RuptureLRFDN, out.ShearLRFDN, out.BearingLRFDN, out.YieldLRFDN)
	out.ASDN = min(out.RuptureN/2, out.ShearN/2, out.BearingN/2, out.YieldN/1.67)
	out.InsideScope = "yes"
	if in.EndWallMM < 1.33*out.EffectiveMM || out.WidthMM < 2*out.EffectiveMM+in.PinMM || out.HoleMM > in.PinMM+1 {
		out.InsideScope = "no"
	}
	return out, nil
}

func (in PinPlateAISCInputs) check(c *worked.Checks) {
	c.Positive("thickness", in.ThicknessMM)
	c.Positive("pin_diameter", in.PinMM)
	c.Positive("end_wall", in.EndWallMM)
	checkStrength(c, in.YieldMPa, in.TensileMPa, 1)
	if in.HoleMM.Known {
		c.Positive("hole_diameter", in.HoleMM.Value)
		if in.HoleMM.Value < in.PinMM {
			c.Refuse("hole_diameter", "is %g mm, less than pin_diameter, which is %g mm", in.HoleMM.Value, in.PinMM)
		}
	}
	if in.WidthMM.Known {
		c.Positive("width", in.WidthMM.Value)
	}
	if in.SideWallMM.Known {
		c.Positive("side_wall", in.SideWallMM.Value)
	}
	if !in.WidthMM.Known && !in.SideWallMM.Known {
		c.Refuse("width", "or side_wall: give one of the two")
	}
}

// PinPlateAISCCalculation is the catalogue entry of PinPlateAISC.
func PinPlateAISCCalculation() worked.Calculation {
	const d5, j7, d2 = "AISC 360 D5", "AISC 360 J7", "AISC 360 D2"
	type in = PinPlateAISCInputs
	type out = PinPlateAISCOutputs
	return worked.Define("pin_plate_aisc", PinPlateAISC, worked.Page[in, out]{
		Title:    "Static strength of a pin-connected plate, AISC 360",
		Sources:  []string{"AISC 360 D5, J7 and D2: 1999 text, 2010 commentary and two published calculation sheets read"},
		Validity: "pin midway, static load, a >= 1.33 b_e, w >= 2 b_e + d, hole at most 1 mm larger than the pin",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "d_u", Is: "d_h", Source: "as given", When: func(i in, _ out) bool { return i.HoleMM.Known }},
			{Symbol: "d_u", Is: "d", Source: "not given", When: func(i in, _ out) bool { return !i.HoleMM.Known }},
			{Symbol: "b", Is: "b_0", Source: "as given", When: func(i in, _ out) bool { return i.SideWallMM.Known }},
			{Symbol: "b", Is: "(w - d_u) / 2", Source: "pin midway", When: func(i in, _ out) bool { return !i.SideWallMM.Known }},
			{Symbol: "w", Is: "w_0", Source: "as given", When: func(i in, _ out) bool { return i.WidthMM.Known }},
			{Symbol: "w", Is: "2 * b + d_u", Source: "pin midway", When: func(i in, _ out) bool { return !i.WidthMM.Known }},
			{Symbol: "b_e", Is: "min(2 * t + 16, b)", Source: d5},
			{Symbol: "A_sf", Is: "2 * t * (a + d / 2)", Source: d5},
			{Symbol: "P_1", Is: "2 * t * b_e * F_u", Source: d5},
			{Symbol: "P_2", Is: "0.6 * F_u * A_sf", Source: d5},
			{Symbol: "P_3", Is: "1.8 * F_y * d * t", Source: j7},
			{Symbol: "P_4", Is: "F_y * w * t", Source: d2},
			{Symbol: "D_1", Is: "0.75 * P_1", Source: d5},
			{Symbol: "D_2", Is: "0.75 * P_2", Source: d5},
			{Symbol: "D_3", Is: "0.75 * P_3", Source: j7},
			{Symbol: "D_4", Is: "0.9 * P_4", Source: d2},
			{Symbol: "D", Is: "min(D_1, D_2, D_3, D_4)", Source: "the least governs"},
			{Symbol: "A", Is: "min(P_1 / 2, P_2 / 2, P_3 / 2, P_4 / 1.67)", Source: "the least governs"},
		},
		Warnings: func(_ in, o out) []string {
			says := []string{notCovered, "The standard does not recommend pin plates where the load wears pin and hole: a static screen only."}
			if o.InsideScope == "no" {
				says = append(says, "Outside the proportions of D5.2: these equations do not apply, do not call the plate safe by them.")
			}
			return says
		},
		Example: map[string]string{
			"width": "4.25 in", "thickness": "1/2 in", "pin_diameter": "1 in", "hole_diameter": "1.03125 in", "end_wall": "2.25 in",
			"yield_strength": "36 ksi", "tensile_strength": "58 ksi",
		},
	})
}
