package ear

import "boremend/knowledge/worked"

// StrengthFactorInputs are the ear, its bore and the load on it.
type StrengthFactorInputs struct {
	PinLoadN       float64 `name:"pin_load" symbol:"F" kind:"force" means:"load of the pin on this ear"`
	BoreMM         float64 `name:"bore" symbol:"D_h" kind:"length" means:"bore that is judged: as found, as finished, or for the sleeve"`
	PinMM          float64 `name:"pin_diameter" symbol:"D_p" kind:"length" means:"pin, or outside of a sleeve that is tight in the bore"`
	EarWidthMM     float64 `name:"ear_width" symbol:"t" kind:"length" means:"thickness of the ear along the pin"`
	EdgeDistanceMM float64 `name:"edge_distance" symbol:"R" kind:"length" means:"bore centre to the nearest free edge of the ear"`
	YieldMPa       float64 `name:"yield_strength" symbol:"F_y" kind:"stress" means:"yield strength of the ear"`
	TensileMPa     float64 `name:"tensile_strength" symbol:"F_u" kind:"stress" means:"tensile strength of the ear"`
	DesignFactor   float64 `name:"design_factor" symbol:"N_d" kind:"ratio" means:"design factor: 2 for category A, 3 for category B"`
	Edge           string  `name:"edge" choices:"round,square" default:"round" means:"shape of the free end"`
	PinTurns       string  `name:"pin_turns" choices:"yes,no" default:"no" means:"whether the pin turns in this bore under load many times"`
}

// StrengthFactorOutputs are the allowable loads and the factor.
type StrengthFactorOutputs struct {
	WallMM         float64 `name:"wall" symbol:"a" kind:"length" means:"wall between the bore and the nearest edge"`
	EffectiveMM    float64 `name:"beff" symbol:"b_eff" kind:"length" means:"side wall that counts"`
	Looseness      float64 `name:"cr" symbol:"C_r" kind:"ratio" means:"reduction for a loose pin"`
	AngleDeg       float64 `name:"phi" symbol:"phi" kind:"angle" means:"angle of the shear planes"`
	DeductionMM    float64 `name:"edge_deduction" symbol:"Z" kind:"length" means:"what a round edge lacks to a square one"`
	ShearAreaMM2   float64 `name:"shear_area" symbol:"A_v" kind:"area" means:"area of the two shear planes"`
	BearingFactor  float64 `name:"bearing_factor" symbol:"f_p" kind:"ratio" means:"share of yield for bearing: 1.25, or 0.63 under a turning pin"`
	TensionN       float64 `name:"pt" symbol:"P_t" kind:"force" means:"allowable load, tearing of the side walls"`
	SplittingN     float64 `name:"pb" symbol:"P_b" kind:"force" means:"allowable load, splitting of the end wall"`
	ShearN         float64 `name:"pv" symbol:"P_v" kind:"force" means:"allowable load, shearing out"`
	BearingN       float64 `name:"pp" symbol:"P_p" kind:"force" means:"allowable load, bearing of the pin"`
	AllowableN     float64 `name:"allowable" symbol:"P" kind:"force" means:"allowable load of the ear"`
	Governs        string  `name:"governs" choices:"tension,splitting,shear,bearing" means:"what sets it"`
	StrengthFactor float64 `name:"strength_factor" symbol:"S" kind:"ratio" means:"allowable load over the load"`
}

// StrengthFactor computes how many times over an ear carries its load, by the
// pin-plate rules of ASME BTH-1 (see PinPlateBTH1) with the wall to the nearest
// edge taken all round.
//
//	a = R - D_h/2, for the end wall and for both side walls
//	S = min(P_t, P_b, P_v, P_p) / F
//
// F is the load of the pin on this ear [N]: where two ears share a pin, half of
// the pin's load. D_h is the bore that is judged, D_p the pin in it, t the
// thickness of the ear, R the bore centre to the edge [mm]; where a sleeve is tight
// in the bore its outside counts as the pin. F_y and F_u are yield and tensile
// strength [MPa], N_d is the design factor [-].
//
// The design factor stands inside the allowable loads: S = 1 is just allowed and
// not about to break.
//
// Validity: D_p <= D_h < 2 R, F_y <= F_u, N_d 1-10.
//
// Error: that of the load, usually 20 to 30 %. A load that swings round the ear
// meets the thinnest wall sooner or later, which is why that one is taken.
//
// Source: ASME BTH-1 section 3-3.3 by four published calculation sheets, code text
// not read.
func StrengthFactor(in StrengthFactorInputs) (StrengthFactorOutputs, error) {
	var c worked.Checks
	c.Positive("pin_load", in.PinLoadN)
	c.Positive("bore", in.BoreMM)
	c.Positive("pin_diameter", in.PinMM)
	if in.PinMM > in.BoreMM {
		c.Refuse("pin_diameter", "is %g mm, more than bore, which is %g mm", in.PinMM, in.BoreMM)
	}
	c.Positive("ear_width", in.EarWidthMM)
	c.Positive("edge_distance", in.EdgeDistanceMM)
	c.Below("bore", in.BoreMM, "twice edge_distance", 2*in.EdgeDistanceMM)
	checkStrength(&c, in.YieldMPa, in.TensileMPa, in.DesignFactor)
	c.OneOf("edge", in.Edge, "round", "square")
	c.OneOf("pin_turns", in.PinTurns, "yes", "no")
	if err := c.Err(); err != nil {
		return StrengthFactorOutputs{}, err
	}
	wall := in.EdgeDistanceMM - in.BoreMM/2
	p := bth1{
		thickness: in.EarWidthMM, sideWall: wall, endWall: wall, edgeRadius: in.EdgeDistanceMM,
		pin: in.PinMM, hole: in.BoreMM, yield: in.YieldMPa, tensile: in.TensileMPa, designFactor: in.DesignFactor,
		looseness: true, round: in.Edge == "round", turns: in.PinTurns == "yes",
	}
	r := p.work()
	if !(r.shearArea > 0) {
		c.Refuse("edge_distance", "leaves %.3g mm of wall, which a round edge takes off: no shear plane is left", wall)
		return StrengthFactorOutputs{}, c.Err()
	}
	return StrengthFactorOutputs{
		WallMM: wall, EffectiveMM: r.effectiveWall, Looseness: r.looseness, AngleDeg: r.angleDeg, DeductionMM: r.deduction,
		ShearAreaMM2: r.shearArea, BearingFactor: p.bearingFactor(),
		TensionN: r.tension, SplittingN: r.splitting, ShearN: r.shear, BearingN: r.bearing,
		AllowableN: r.least, Governs: r.governs, StrengthFactor: r.least / in.PinLoadN,
	}, nil
}

// StrengthFactorCalculation is the catalogue entry of StrengthFactor.
func StrengthFactorCalculation() worked.Calculation {
	const code = "ASME BTH-1 3-3.3, from published sheets"
	type in = StrengthFactorInputs
	type out = StrengthFactorOutputs
	round := func(i in, _ out) bool { return i.Edge == "round" }
	square := func(i in, _ out) bool { return i.Edge == "square" }
	return worked.Define("strength_factor", StrengthFactor, worked.Page[in, out]{
		Title:    "How many times over an ear carries its load",
		Sources:  []string{"ASME BTH-1 section 3-3.3, by four published calculation sheets, code text not read; bearing under a turning pin from memory"},
		Validity: "the wall to the nearest edge counts all round; pin not larger than the bore",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "a", Is: "R - D_h / 2", Source: "plain geometry"},
			{Symbol: "b_eff", Is: "min(a, 4 * t, a * 0.6 * F_u / F_y * sqrt(D_h / a))", Source: code},
			{Symbol: "C_r", Is: "1 - 0.275 * sqrt(1 - D_p^2 / D_h^2)", Source: code},
			{Symbol: "phi", Is: "55 * D_p / D_h", Source: code},
			{Symbol: "Z", Is: "R - sqrt(R^2 - (D_p / 2 * sin(phi * pi / 180))^2)", Source: code, When: round},
			{Symbol: "Z", Table: "0, square edge", Source: "as chosen", When: square},
			{Symbol: "A_v", Is: "2 * (a + D_p / 2 * (1 - cos(phi * pi / 180)) - Z) * t", Source: code},
			{Symbol: "f_p", Table: "1.25, or 0.63 where the pin turns under load", Source: code},
			{Symbol: "P_t", Is: "C_r * F_u / (1.2 * N_d) * 2 * t * b_eff", Source: code},
			{Symbol: "P_b", Is: "C_r * F_u / (1.2 * N_d) * (1.13 * (R - D_h / 2) + 0.92 * a / (1 + a / D_h)) * t", Source: code},
			{Symbol: "P_v", Is: "0.7 * F_u / (1.2 * N_d) * A_v", Source: code},
			{Symbol: "P_p", Is: "f_p * F_y / N_d * D_p * t", Source: code},
			{Symbol: "P", Is: "min(P_t, P_b, P_v, P_p)", Source: "the least governs"},
			{Symbol: "S", Is: "P / F", Source: "definition"},
		},
		Warnings: strengthFactorWarnings,
		Example: map[string]string{
			"pin_load": "310 kN", "bore": "121 mm", "pin_diameter": "121 mm", "ear_width": "160 mm", "edge_distance": "98 mm",
			"yield_strength": "248 MPa", "tensile_strength": "483 MPa", "design_factor": "3",
		},
	})
}

func strengthFactorWarnings(in StrengthFactorInputs, out StrengthFactorOutputs) []string {
	says := []string{notCovered}
	if out.WallMM < 0.125*in.BoreMM {
		says = append(says, "The wall is under one eighth of the bore, thinner than any that the formulas here were checked on.")
	}
	if in.BoreMM > 1.1*in.PinMM {
		says = append(says, "The bore is more than 1.1 times the pin, beyond what the code allows.")
	}
	if in.DesignFactor < 2 {
		says = append(says, "The least design factor of the code is 2.")
	}
	return says
}
