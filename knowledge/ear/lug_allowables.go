package ear

import "boremend/knowledge/worked"

// LugAllowablesInputs are a lug and the factors that its shape gives.
type LugAllowablesInputs struct {
	HoleMM        float64         `name:"hole_diameter" symbol:"D" kind:"length" means:"hole"`
	ThicknessMM   float64         `name:"thickness" symbol:"t" kind:"length" means:"thickness"`
	WidthMM       float64         `name:"width" symbol:"w" kind:"length" means:"width of the lug at the hole"`
	Kt            worked.Optional `name:"kt" symbol:"K_t" kind:"ratio" means:"net-tension factor, read from the method's curve"`
	Kbr           worked.Optional `name:"kbr" symbol:"K_br" kind:"ratio" means:"shear-bearing factor, read from the method's curve"`
	Ktru          worked.Optional `name:"ktru" symbol:"K_tru" kind:"ratio" means:"transverse factor, read from the method's curve"`
	TensileMPa    float64         `name:"tensile_strength" symbol:"F_tu" kind:"stress" means:"tensile strength along the load"`
	CrossMPa      worked.Optional `name:"tensile_strength_across" symbol:"F_x" kind:"stress" means:"tensile strength across the grain; as along it if not given"`
	AppliedN      worked.Optional `name:"applied" symbol:"F" kind:"force" means:"axial load applied"`
	FittingFactor float64         `name:"fitting_factor" symbol:"f" kind:"ratio" default:"1.15" means:"extra factor for fittings"`
}

// LugAllowablesOutputs are the ultimate loads and margins.
type LugAllowablesOutputs struct {
	CrossMPa      float64         `name:"tensile_across_used" symbol:"F_c" kind:"stress" means:"tensile strength across the grain used"`
	NetTensionN   worked.Optional `name:"net_tension" symbol:"P_tu" kind:"force" means:"ultimate load, net tension"`
	ShearBearingN worked.Optional `name:"shear_bearing" symbol:"P_bru" kind:"force" means:"ultimate load, shear and bearing"`
	TransverseN   worked.Optional `name:"transverse" symbol:"P_tru" kind:"force" means:"ultimate load, across"`
	MarginTension worked.Optional `name:"ms_net_tension" symbol:"M_t" kind:"ratio" means:"margin of safety, net tension"`
	MarginBearing worked.Optional `name:"ms_shear_bearing" symbol:"M_b" kind:"ratio" means:"margin of safety, shear and bearing"`
}

// LugAllowables computes the ultimate loads of a lug by the method of Melcon and
// Hoblit, with factors that the user reads from the method's curves.
//
//	P_tu  = K_t (w - D) t F_tu
//	P_bru = K_br D t F_c
//	P_tru = K_tru D t F_c
//	M     = P/(f F) - 1
//
// D is the hole, t the thickness, w the width [mm]; F_tu the tensile strength, F_c
// that across the grain (F_x where given, else F_tu) [MPa]; F the load [N], f the
// fitting factor [-].
//
// The curves themselves are not in here: the manuals were not readable, and two
// digitised copies of K_br differ by 5 %.
//
// Validity: w > D; factors 0.05 to 5; at least one of them given.
//
// Error: tested over predicted 0.85 to 1.19 on 243 lugs (Ekvall 1986, as quoted).
// Above t/D of about 0.6 the bending of the pin takes part of the thickness away.
//
// Source: AFFDL-TR-69-42 chapter 9 and NASA TM X-73305 by a public educational
// stress report, read; manuals not read.
func LugAllowables(in LugAllowablesInputs) (LugAllowablesOutputs, error) {
	var c worked.Checks
	in.check(&c)
	if err := c.Err(); err != nil {
		return LugAllowablesOutputs{}, err
	}
	out := LugAllowablesOutputs{CrossMPa: in.TensileMPa}
	if in.CrossMPa.Known {
		out.CrossMPa = in.CrossMPa.Value
	}
	bearing := in.HoleMM * in.ThicknessMM * out.CrossMPa
	if in.Kt.Known {
		out.NetTensionN = worked.Some(in.Kt.Value * (in.WidthMM - in.HoleMM) * in.ThicknessMM * in.TensileMPa)
	}
	if in.Kbr.Known {
		out.ShearBearingN = worked.Some(in.Kbr.Value * bearing)
	}
	if in.Ktru.Known {
		out.TransverseN = worked.Some(in.Ktru.Value * bearing)
	}
	out.MarginTension = in.margin(out.NetTensionN)
	out.MarginBearing = in.margin(out.ShearBearingN)
	return out, nil
}

func (in LugAllowablesInputs) margin(load worked.Optional) worked.Optional {
	if !load.Known || !in.AppliedN.Known {
		return worked.Optional{}
	}
	return worked.Some(load.Value/(in.FittingFactor*in.AppliedN.Value) - 1)
}

func (in LugAllowablesInputs) check(c *worked.Checks) {
	c.Positive("hole_diameter", in.HoleMM)
	c.Positive("thickness", in.ThicknessMM)
	c.Positive("width", in.WidthMM)
	c.Below("hole_diameter", in.HoleMM, "width", in.WidthMM)
	c.Positive("tensile_strength", in.TensileMPa)
	c.Between("fitting_factor", in.FittingFactor, 1, 3)
	if !in.Kt.Known && !in.Kbr.Known && !in.Ktru.Known {
		c.Refuse("kt", "kbr or ktru is needed: read it from the method's curves")
	}
	if in.Kt.Known {
		c.Between("kt", in.Kt.Value, 0.05, 5)
	}
	if in.Kbr.Known {
		c.Between("kbr", in.Kbr.Value, 0.05, 5)
	}
	if in.Ktru.Known {
		c.Between("ktru", in.Ktru.Value, 0.05, 5)
	}
	if in.CrossMPa.Known {
		c.Positive("tensile_strength_across", in.CrossMPa.Value)
	}
	if in.AppliedN.Known {
		c.Positive("applied", in.AppliedN.Value)
	}
}

// LugAllowablesCalculation is the catalogue entry of LugAllowables.
func LugAllowablesCalculation() worked.Calculation {
	type in = LugAllowablesInputs
	type out = LugAllowablesOutputs
	const method = "Melcon and Hoblit, AFFDL-TR-69-42 chapter 9"
	return worked.Define("lug_allowables", LugAllowables, worked.Page[in, out]{
		Title:    "Ultimate loads of a lug, Melcon and Hoblit",
		Sources:  []string{"AFFDL-TR-69-42 chapter 9 and NASA TM X-73305, by a public educational stress report, read; manuals not read"},
		Validity: "factors read from the method's curves by the user",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "F_c", Is: "F_x", Source: "as given", When: func(i in, _ out) bool { return i.CrossMPa.Known }},
			{Symbol: "F_c", Is: "F_tu", Source: "not given", When: func(i in, _ out) bool { return !i.CrossMPa.Known }},
			{Symbol: "P_tu", Is: "K_t * (w - D) * t * F_tu", Source: method, When: func(i in, _ out) bool { return i.Kt.Known }},
			{Symbol: "P_bru", Is: "K_br * D * t * F_c", Source: method, When: func(i in, _ out) bool { return i.Kbr.Known }},
			{Symbol: "P_tru", Is: "K_tru * D * t * F_c", Source: method, When: func(i in, _ out) bool { return i.Ktru.Known }},
			{Symbol: "M_t", Is: "P_tu / (f * F) - 1", Source: "definition", When: func(_ in, o out) bool { return o.MarginTension.Known }},
			{Symbol: "M_b", Is: "P_bru / (f * F) - 1", Source: "definition", When: func(_ in, o out) bool { return o.MarginBearing.Known }},
		},
		Warnings: func(i in, _ out) []string {
			says := []string{notCovered, "These are ultimate loads of a fresh lug, not allowable ones."}
			if i.ThicknessMM > 0.6*i.HoleMM {
				says = append(says, "The lug is thicker than 0.6 of its hole: bending of the pin takes part of the thickness away, see lug_oblique.")
			}
			return says
		},
		Example: map[string]string{
			"hole_diameter": "2 in", "thickness": "2.5 in", "width": "4 in", "kt": "0.95", "kbr": "1.24", "ktru": "0.7875",
			"tensile_strength": "65 ksi", "tensile_strength_across": "66 ksi", "applied": "71453 lbf",
		},
	})
}
