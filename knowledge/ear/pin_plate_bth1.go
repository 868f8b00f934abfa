package ear

import "boremend/knowledge/worked"

// PinPlateBTH1Inputs are the plate, the pin and the rules of the code.
type PinPlateBTH1Inputs struct {
	ThicknessMM    float64         `name:"thickness" symbol:"t" kind:"length" means:"thickness of the ear"`
	SideWallMM     float64         `name:"side_wall" symbol:"b_e" kind:"length" means:"hole to the edge across the load, the thinner side"`
	EndWallMM      float64         `name:"end_wall" symbol:"a" kind:"length" means:"hole to the edge along the load"`
	PinMM          float64         `name:"pin_diameter" symbol:"D_p" kind:"length" means:"pin, or outside of a sleeve that is tight in the hole"`
	HoleMM         float64         `name:"hole_diameter" symbol:"D_h" kind:"length" means:"hole in the ear"`
	RadiusToEdgeMM worked.Optional `name:"radius_to_edge" symbol:"R" kind:"length" means:"hole centre to the edge along the load; from the end wall if not given"`
	YieldMPa       float64         `name:"yield_strength" symbol:"F_y" kind:"stress" means:"yield strength of the ear"`
	TensileMPa     float64         `name:"tensile_strength" symbol:"F_u" kind:"stress" means:"tensile strength of the ear"`
	DesignFactor   float64         `name:"design_factor" symbol:"N_d" kind:"ratio" means:"design factor: 2 for category A, 3 for category B"`
	ApplyLooseness string          `name:"apply_cr" choices:"yes,no" default:"yes" means:"whether a loose pin counts against the ear"`
	CurvedEdge     string          `name:"curved_edge" choices:"yes,no" default:"no" means:"whether the end of the ear is round about the hole"`
	ShearAreaRule  string          `name:"shear_area_rule" choices:"dp_phi,dh_45" default:"dp_phi" means:"shear planes: by the pin, or at 45 degrees as in 2005"`
	PinTurns       string          `name:"pin_turns" choices:"yes,no" default:"no" means:"whether the pin turns under load many times"`
}

// PinPlateBTH1Outputs are the allowable loads and the steps to them.
type PinPlateBTH1Outputs struct {
	EdgeRadiusMM  float64 `name:"edge_radius" symbol:"R_e" kind:"length" means:"hole centre to the edge along the load"`
	EffectiveMM   float64 `name:"beff" symbol:"b_eff" kind:"length" means:"side wall that counts"`
	Looseness     float64 `name:"cr" symbol:"C_r" kind:"ratio" means:"reduction for a loose pin"`
	AngleDeg      float64 `name:"phi" symbol:"phi" kind:"angle" means:"angle of the shear planes"`
	DeductionMM   float64 `name:"edge_deduction" symbol:"Z" kind:"length" means:"what a round edge lacks to a square one"`
	ShearAreaMM2  float64 `name:"shear_area" symbol:"A_v" kind:"area" means:"area of the two shear planes"`
	BearingFactor float64 `name:"bearing_factor" symbol:"f_p" kind:"ratio" means:"share of yield for bearing: 1.25, or 0.63 under a turning pin"`
	TensionN      float64 `name:"pt" symbol:"P_t" kind:"force" means:"allowable load, tearing of the side walls"`
	SplittingN    float64 `name:"pb" symbol:"P_b" kind:"force" means:"allowable load, splitting of the end wall"`
	ShearN        float64 `name:"pv" symbol:"P_v" kind:"force" means:"allowable load, shearing out"`
	BearingN      float64 `name:"pp" symbol:"P_p" kind:"force" means:"allowable load, bearing of the pin"`
	AllowableN    float64 `name:"allowable" symbol:"P" kind:"force" means:"allowable load of the ear"`
	Governs       string  `name:"governs" choices:"tension,splitting,shear,bearing" means:"what sets it"`
}

// PinPlateBTH1 computes the allowable pull on an ear by the pin-plate rules of
// ASME BTH-1, which were calibrated on tests.
//
//	b_eff = min(b_e, 4 t, b_e 0.6 (F_u/F_y) sqrt(D_h/b_e))
//	C_r   = 1 - 0.275 sqrt(1 - D_p^2/D_h^2)
//	P_t   = C_r F_u/(1.2 N_d) 2 t b_eff
//	P_b   = C_r F_u/(1.2 N_d) [1.13 (R - D_h/2) + 0.92 b_e/(1 + b_e/D_h)] t
//	phi   = 55 D_p/D_h degrees
//	Z     = r - sqrt[r^2 - ((D_p/2) sin phi)^2] for a round edge of radius r, else 0
//	A_v   = 2 [a + (D_p/2)(1 - cos phi) - Z] t
//	P_v   = 0.70 F_u/(1.2 N_d) A_v
//	P_p   = f_p F_y/N_d D_p t, f_p = 1.25, or 0.63 under a pin that turns
//
// Lengths in mm, stress in MPa, loads in N. By the rule dh_45 of 2005 the shear
// planes start at (D_h/2)(1 - cos 45 deg), which gives 1 to 2 % more.
//
// The formulas are for a pull, along the axis, toward the free edge. For a load
// across enter the loaded side as the end wall and the free-edge wall as the side
// wall; for a push enter the reverse load. A hole off centre counts with twice
// the thinner side.
//
// Validity: D_p <= D_h, F_y <= F_u, N_d 1-10, and an edge beyond the shear
// planes. The code itself wants D_h <= 1.1 D_p (remark on a sheet).
//
// Error: side thrust out of the plane is not covered. Pin slack is not free:
// D_p/D_h of 0.86 costs 14 % through C_r.
//
// Source: ASME BTH-1 section 3-3.3 by four published calculation sheets, whose
// figures come back within 0.1 %; code text not read; 0.63 from memory.
func PinPlateBTH1(in PinPlateBTH1Inputs) (PinPlateBTH1Outputs, error) {
	var c worked.Checks
	in.check(&c)
	if err := c.Err(); err != nil {
		return PinPlateBTH1Outputs{}, err
	}
	p := in.plate()
	if reach := p.hole / 2; !(p.edgeRadius > reach) {
		c.Refuse("radius_to_edge", "is %g mm, must be above half the hole, which is %g mm", p.edgeRadius, reach)
		return PinPlateBTH1Outputs{}, c.Err()
	}
	r := p.work()
	if !(r.shearArea > 0) {
		c.Refuse("end_wall", "is %g mm: a round edge takes %.3g mm of it off, so no shear plane is left", in.EndWallMM, r.deduction)
		return PinPlateBTH1Outputs{}, c.Err()
	}
	return PinPlateBTH1Outputs{
		EdgeRadiusMM: p.edgeRadius, EffectiveMM: r.effectiveWall, Looseness: r.looseness, AngleDeg: r.angleDeg,
		DeductionMM: r.deduction, ShearAreaMM2: r.shearArea, BearingFactor: p.bearingFactor(),
		TensionN: r.tension, SplittingN: r.splitting, ShearN: r.shear, BearingN: r.bearing,
		AllowableN: r.least, Governs: r.governs,
	}, nil
}

func (in PinPlateBTH1Inputs) check(c *worked.Checks) {
	c.Positive("thickness", in.ThicknessMM)
	c.Positive("side_wall", in.SideWallMM)
	c.Positive("end_wall", in.EndWallMM)
	c.Positive("pin_diameter", in.PinMM)
	c.Positive("hole_diameter", in.HoleMM)
	if in.PinMM > in.HoleMM {
		c.Refuse("pin_diameter", "is %g mm, more than hole_diameter, which is %g mm", in.PinMM, in.HoleMM)
	}
	if in.RadiusToEdgeMM.Known {
		c.Positive("radius_to_edge", in.RadiusToEdgeMM.Value)
	}
	checkStrength(c, in.YieldMPa, in.TensileMPa, in.DesignFactor)
	c.OneOf("apply_cr", in.ApplyLooseness, "yes", "no")
	c.OneOf("curved_edge", in.CurvedEdge, "yes", "no")
	c.OneOf("shear_area_rule", in.ShearAreaRule, "dp_phi", "dh_45")
	c.OneOf("pin_turns", in.PinTurns, "yes", "no")
}

func checkStrength(c *worked.Checks, yieldMPa, tensileMPa, designFactor float64) {
	c.Positive("yield_strength", yieldMPa)
	c.Positive("tensile_strength", tensileMPa)
	if yieldMPa > tensileMPa {
		c.Refuse("yield_strength", "is %g MPa, more than tensile_strength, which is %g MPa", yieldMPa, tensileMPa)
	}
	c.Between("design_factor", designFactor, 1, 10)
}

func (in PinPlateBTH1Inputs) plate() bth1 {
	p := bth1{
		thickness: in.ThicknessMM, sideWall: in.SideWallMM, endWall: in.EndWallMM, edgeRadius: in.EndWallMM + in.HoleMM/2,
		pin: in.PinMM, hole: in.HoleMM, yield: in.YieldMPa, tensile: in.TensileMPa, designFactor: in.DesignFactor,
		looseness: in.ApplyLooseness == "yes", round: in.CurvedEdge == "yes",
		fixedPlanes: in.ShearAreaRule == "dh_45", turns: in.PinTurns == "yes",
	}
	if in.RadiusToEdgeMM.Known {
		p.edgeRadius = in.RadiusToEdgeMM.Value
	}
	return p
}

// PinPlateBTH1Calculation is the catalogue entry of PinPlateBTH1.
func PinPlateBTH1Calculation() worked.Calculation {
	return worked.Define("pin_plate_bth1", PinPlateBTH1, worked.Page[PinPlateBTH1Inputs, PinPlateBTH1Outputs]{
		Title:    "Allowable pull on an ear, ASME BTH-1",
		Sources:  []string{"ASME BTH-1 section 3-3.3, by four published calculation sheets, code text not read; bearing under a turning pin from memory"},
		Validity: "pull along the axis; pin not larger than the hole; the code wants the hole at most 1.1 times the pin",
		Formulas: pinPlateBTH1Formulas(),
		Warnings: pinPlateBTH1Warnings,
		Example: map[string]string{
			"thickness": "60 mm", "side_wall": "32 mm", "end_wall": "32 mm", "pin_diameter": "96 mm", "hole_diameter": "96 mm",
			"yield_strength": "250 MPa", "tensile_strength": "450 MPa", "design_factor": "3",
		},
	})
}

func pinPlateBTH1Formulas() []worked.Formula[PinPlateBTH1Inputs, PinPlateBTH1Outputs] {
	const code = "ASME BTH-1 3-3.3, from published sheets"
	type in = PinPlateBTH1Inputs
	type out = PinPlateBTH1Outputs
	byPin := func(i in, _ out) bool { return i.ShearAreaRule == "dp_phi" }
	by45 := func(i in, _ out) bool { return i.ShearAreaRule == "dh_45" }
	loose := func(i in, _ out) bool { return i.ApplyLooseness == "yes" }
	tight := func(i in, _ out) bool { return i.ApplyLooseness == "no" }
	given := func(i in, _ out) bool { return i.RadiusToEdgeMM.Known }
	worksOut := func(i in, _ out) bool { return !i.RadiusToEdgeMM.Known }
	square := func(i in, _ out) bool { return i.CurvedEdge == "no" }
	return []worked.Formula[in, out]{
		{Symbol: "R_e", Is: "R", Source: "as given", When: given},
		{Symbol: "R_e", Is: "a + D_h / 2", Source: "plain geometry", When: worksOut},
		{Symbol: "b_eff", Is: "min(b_e, 4 * t, b_e * 0.6 * F_u / F_y * sqrt(D_h / b_e))", Source: code},
		{Symbol: "C_r", Is: "1 - 0.275 * sqrt(1 - D_p^2 / D_h^2)", Source: code, When: loose},
		{Symbol: "C_r", Table: "1, not applied", Source: "as chosen", When: tight},
		{Symbol: "phi", Is: "55 * D_p / D_h", Source: code, When: byPin},
		{Symbol: "phi", Table: "45 degrees", Source: "ASME BTH-1-2005", When: by45},
		{Symbol: "Z", Table: "0, square edge", Source: "as chosen", When: square},
		{Symbol: "Z", Is: "R_e - sqrt(R_e^2 - (D_p / 2 * sin(phi * pi / 180))^2)", Source: code, When: func(i in, o out) bool { return !square(i, o) && byPin(i, o) }},
		{Symbol: "Z", Is: "R_e - sqrt(R_e^2 - (D_h / 2 * sin(phi * pi / 180))^2)", Source: code, When: func(i in, o out) bool { return !square(i, o) && by45(i, o) }},
		{Symbol: "A_v", Is: "2 * (a + D_p / 2 * (1 - cos(phi * pi / 180)) - Z) * t", Source: code, When: byPin},
		{Symbol: "A_v", Is: "2 * (a + D_h / 2 * (1 - cos(phi * pi / 180)) - Z) * t", Source: "ASME BTH-1-2005", When: by45},
		{Symbol: "f_p", Table: "1.25, or 0.63 where the pin turns under load", Source: code},
		{Symbol: "P_t", Is: "C_r * F_u / (1.2 * N_d) * 2 * t * b_eff", Source: code},
		{Symbol: "P_b", Is: "C_r * F_u / (1.2 * N_d) * (1.13 * (R_e - D_h / 2) + 0.92 * b_e / (1 + b_e / D_h)) * t", Source: code},
		{Symbol: "P_v", Is: "0.7 * F_u / (1.2 * N_d) * A_v", Source: code},
		{Symbol: "P_p", Is: "f_p * F_y / N_d * D_p * t", Source: code},
		{Symbol: "P", Is: "min(P_t, P_b, P_v, P_p)", Source: "the least governs"},
	}
}

func pinPlateBTH1Warnings(in PinPlateBTH1Inputs, _ PinPlateBTH1Outputs) []string {
	says := []string{notCovered}
	if in.HoleMM > 1.1*in.PinMM {
		says = append(says, "The hole is more than 1.1 times the pin, beyond what the code allows.")
	}
	if in.SideWallMM < 0.125*in.HoleMM || in.EndWallMM < 0.125*in.HoleMM {
		says = append(says, "A wall under one eighth of the hole is thinner than any that the formulas here were checked on.")
	}
	if in.DesignFactor < 2 {
		says = append(says, "The least design factor of the code is 2.")
	}
	return says
}
