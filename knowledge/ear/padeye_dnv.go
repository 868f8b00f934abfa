package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// PadeyeDNVInputs are a pad eye, with or without cheek plates.
type PadeyeDNVInputs struct {
	Edition       string          `name:"edition" choices:"2.7-1,2.7-3" means:"standard that the check follows"`
	ForceN        float64         `name:"force" symbol:"F" kind:"force" means:"resulting load on the eye"`
	ThicknessMM   float64         `name:"thickness" symbol:"t" kind:"length" means:"thickness at the hole, cheeks counted"`
	HoleMM        float64         `name:"hole_diameter" symbol:"d_0" kind:"length" means:"hole"`
	EdgeRadiusMM  float64         `name:"edge_radius" symbol:"R" kind:"length" means:"hole centre to the edge of the main plate"`
	PlateMM       worked.Optional `name:"plate_thickness" symbol:"t_p" kind:"length" means:"thickness of the main plate, where there are cheeks"`
	CheekRadiusMM worked.Optional `name:"cheek_radius" symbol:"R_c" kind:"length" means:"radius of a cheek plate"`
	CheekMM       worked.Optional `name:"cheek_thickness" symbol:"t_c" kind:"length" means:"thickness of one of the two cheek plates"`
	PinMM         worked.Optional `name:"pin_diameter" kind:"length" means:"pin"`
	ModulusMPa    float64         `name:"modulus" symbol:"E" kind:"stress" default:"210000 MPa" means:"modulus"`
	YieldMPa      worked.Optional `name:"yield_strength" symbol:"R_e" kind:"stress" means:"yield strength of the eye"`
}

// PadeyeDNVOutputs are the stresses.
type PadeyeDNVOutputs struct {
	EffectiveMM  float64         `name:"effective_radius" symbol:"H" kind:"length" means:"radius that counts, cheeks averaged in"`
	TearOutMPa   float64         `name:"tear_out" symbol:"s_t" kind:"stress" means:"tear-out stress"`
	ContactMPa   float64         `name:"contact" symbol:"s_c" kind:"stress" means:"contact stress"`
	AllowableMPa worked.Optional `name:"allowable" symbol:"s_a" kind:"stress" means:"what the stresses may be"`
	Utilisation  worked.Optional `name:"utilisation" symbol:"u" kind:"ratio" means:"tear-out stress over the allowable"`
}

// PadeyeDNV computes the quick tear-out and contact checks of two offshore lifting
// standards.
//
//	H   = (R t_p + 2 R_c t_c)/t with cheek plates, else R
//	2.7-1   s_t = 3 F/((2 H - d_0) t)    s_c = 23.7 sqrt(F/(d_0 t))       s_a = R_e
//	2.7-3   s_t = 2 F/((2 H - d_0) t)    s_c = 0.045 sqrt(F E/(d_0 t))    s_a = 0.85 R_e
//
// R is the hole centre to the edge, d_0 the hole, t the thickness at the hole [mm],
// F the load [N], stress in MPa.
//
// The radius with cheeks serves for welded or fitted reinforcement rings too.
//
// Validity: d_0/2 < H. The contact stress of 2.7-3 holds for a pin above 0.94 d_0;
// a smaller pin is refused. With cheeks, t = t_p + 2 t_c within 1 %.
//
// Error: a screen, not an analysis.
//
// Source: four public calculations to DNV 2.7-1 and 2.7-3, read; standards not read.
func PadeyeDNV(in PadeyeDNVInputs) (PadeyeDNVOutputs, error) {
	var c worked.Checks
	in.check(&c)
	if err := c.Err(); err != nil {
		return PadeyeDNVOutputs{}, err
	}
	out := PadeyeDNVOutputs{EffectiveMM: in.EdgeRadiusMM}
	if in.PlateMM.Known {
		out.EffectiveMM = (in.EdgeRadiusMM*in.PlateMM.Value + 2*in.CheekRadiusMM.Value*in.CheekMM.Value) / in.ThicknessMM
	}
	if !(2*out.EffectiveMM > in.HoleMM) {
		c.Refuse("edge_radius", "gives the effective radius %g mm, must be above half the hole, which is %g mm", out.EffectiveMM, in.HoleMM/2)
		return PadeyeDNVOutputs{}, c.Err()
	}
	section := (2*out.EffectiveMM - in.HoleMM) * in.ThicknessMM
	bearing := in.ForceN / (in.HoleMM * in.ThicknessMM)
	share := 1.0
	if in.Edition == "2.7-1" {
		out.TearOutMPa, out.ContactMPa = 3*in.ForceN/section, 23.7*math.Sqrt(bearing)
	} else {
		out.TearOutMPa, out.ContactMPa, share = 2*in.ForceN/section, 0.045*math.Sqrt(bearing*in.ModulusMPa), 0.85
	}
	if in.YieldMPa.Known {
		out.AllowableMPa = worked.Some(share * in.YieldMPa.Value)
		out.Utilisation = worked.Some(out.TearOutMPa / out.AllowableMPa.Value)
	}
	return out, nil
}

func (in PadeyeDNVInputs) check(c *worked.Checks) {
	c.OneOf("edition", in.Edition, "2.7-1", "2.7-3")
	c.Positive("force", in.ForceN)
	c.Positive("thickness", in.ThicknessMM)
	c.Positive("hole_diameter", in.HoleMM)
	c.Positive("edge_radius", in.EdgeRadiusMM)
	c.Between("modulus", in.ModulusMPa, 50000, 250000)
	if in.YieldMPa.Known {
		c.Positive("yield_strength", in.YieldMPa.Value)
	}
	in.checkCheeks(c)
	if !in.PinMM.Known {
		return
	}
	c.Positive("pin_diameter", in.PinMM.Value)
	if ratio := in.PinMM.Value / in.HoleMM; ratio > 1 || ratio <= 0.94 && in.Edition == "2.7-3" {
		c.Refuse("pin_diameter", "is %g mm in a hole of %g mm; the contact stress holds for a pin from 0.94 of the hole to the hole", in.PinMM.Value, in.HoleMM)
	}
}

func (in PadeyeDNVInputs) checkCheeks(c *worked.Checks) {
	if in.PlateMM.Known != in.CheekRadiusMM.Known || in.PlateMM.Known != in.CheekMM.Known {
		c.Refuse("plate_thickness", "cheek_radius and cheek_thickness belong together: give all three or none")
		return
	}
	if !in.PlateMM.Known {
		return
	}
	c.Positive("plate_thickness", in.PlateMM.Value)
	c.Positive("cheek_radius", in.CheekRadiusMM.Value)
	c.Positive("cheek_thickness", in.CheekMM.Value)
	if total := in.PlateMM.Value + 2*in.CheekMM.Value; math.Abs(total-in.ThicknessMM) > 0.01*in.ThicknessMM {
		c.Refuse("thickness", "is %g mm, but plate and two cheeks come to %g mm", in.ThicknessMM, total)
	}
}

// PadeyeDNVCalculation is the catalogue entry of PadeyeDNV.
func PadeyeDNVCalculation() worked.Calculation {
	type in = PadeyeDNVInputs
	type out = PadeyeDNVOutputs
	first := func(i in, _ out) bool { return i.Edition == "2.7-1" }
	third := func(i in, _ out) bool { return i.Edition == "2.7-3" }
	cheeks := func(i in, _ out) bool { return i.PlateMM.Known }
	plain := func(i in, _ out) bool { return !i.PlateMM.Known }
	yield := func(i in, _ out) bool { return i.YieldMPa.Known }
	return worked.Define("padeye_dnv", PadeyeDNV, worked.Page[in, out]{
		Title:    "Tear-out and contact at a pad eye, DNV 2.7",
		Sources:  []string{"four public calculations to DNV 2.7-1 and 2.7-3, read; standards not read"},
		Validity: "hole inside the plate; contact by 2.7-3 for a pin above 0.94 of the hole",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "H", Is: "R", Source: "no cheeks", When: plain},
			{Symbol: "H", Is: "(R * t_p + 2 * R_c * t_c) / t", Source: "DNV 2.7-3 appendix A", When: cheeks},
			{Symbol: "s_t", Is: "3 * F / ((2 * H - d_0) * t)", Source: "DNV 2.7-1", When: first},
			{Symbol: "s_t", Is: "2 * F / ((2 * H - d_0) * t)", Source: "DNV 2.7-3", When: third},
			{Symbol: "s_c", Is: "23.7 * sqrt(F / (d_0 * t))", Source: "DNV 2.7-1", When: first},
			{Symbol: "s_c", Is: "0.045 * sqrt(F * E / (d_0 * t))", Source: "DNV 2.7-3", When: third},
			{Symbol: "s_a", Is: "R_e", Source: "DNV 2.7-1", When: func(i in, o out) bool { return first(i, o) && yield(i, o) }},
			{Symbol: "s_a", Is: "0.85 * R_e", Source: "DNV 2.7-3", When: func(i in, o out) bool { return third(i, o) && yield(i, o) }},
			{Symbol: "u", Is: "s_t / s_a", Source: "definition", When: yield},
		},
		Warnings: func(in, out) []string {
			return []string{notCovered, "A quick screen for lifting eyes, not an analysis."}
		},
		Example: map[string]string{
			"edition": "2.7-3", "force": "132 kN", "thickness": "50 mm", "hole_diameter": "45 mm", "edge_radius": "75 mm",
			"plate_thickness": "30 mm", "cheek_radius": "55 mm", "cheek_thickness": "10 mm", "yield_strength": "255 MPa",
		},
	})
}
