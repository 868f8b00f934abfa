package bolt

import "boremend/knowledge/worked"

// BoltEC3Inputs are a bolt by its stress area and what it carries.
type BoltEC3Inputs struct {
	StressAreaMM2 float64         `name:"stress_area" symbol:"A_s" kind:"area" means:"stress area"`
	TensileMPa    float64         `name:"fub" symbol:"f_ub" kind:"stress" means:"tensile strength of the bolt"`
	ShearShare    float64         `name:"alpha_v" symbol:"alpha_v" kind:"ratio" default:"0.5" means:"share in shear, thread in the joint: 0.6 for classes 4.6, 5.6 and 8.8, 0.5 for 10.9"`
	GammaM2       float64         `name:"gamma_m2" symbol:"gamma" kind:"ratio" default:"1.25" means:"partial factor"`
	ShearN        worked.Optional `name:"fv_ed" symbol:"V" kind:"force" means:"load across the bolt, where known"`
	TensionN      worked.Optional `name:"ft_ed" symbol:"N" kind:"force" means:"pull on the bolt, where known"`
}

// BoltEC3Outputs are the design resistances.
type BoltEC3Outputs struct {
	TensionN float64         `name:"ft_rd" symbol:"F_t" kind:"force" means:"pull that the bolt resists"`
	ShearN   float64         `name:"fv_rd" symbol:"F_v" kind:"force" means:"load across it that it resists"`
	Combined worked.Optional `name:"combined" symbol:"U" kind:"ratio" means:"use of both together; above 1 it does not hold"`
}

// BoltEC3 computes the resistance of a bolt to pull and to shear by the European
// steel code.
//
//	F_t = 0.9 f_ub A_s/gamma
//	F_v = alpha_v f_ub A_s/gamma
//	U   = the larger of V/F_v + N/(1.4 F_t) and N/F_t
//
// A_s is the stress area [mm2], f_ub the tensile strength [MPa], alpha_v the share
// in shear through the thread, gamma the partial factor; V and N the loads across
// and along the bolt, with their load factors in them [N].
//
// Validity: bolts with a full head and nut; thread in the joint. Loads are those of
// the design state, multiplied by their factors.
//
// Error: none as a code figure.
//
// Source: EN 1993-1-8 table 3.4 (formulas read in a published report; alpha_v and
// the joint use of both from memory).
func BoltEC3(in BoltEC3Inputs) (BoltEC3Outputs, error) {
	var c worked.Checks
	c.Positive("stress_area", in.StressAreaMM2)
	c.Positive("fub", in.TensileMPa)
	c.Between("alpha_v", in.ShearShare, 0.4, 0.7)
	c.Between("gamma_m2", in.GammaM2, 1, 2)
	if in.ShearN.Known {
		c.NotNegative("fv_ed", in.ShearN.Value)
	}
	if in.TensionN.Known {
		c.NotNegative("ft_ed", in.TensionN.Value)
	}
	if in.ShearN.Known != in.TensionN.Known {
		c.Refuse("fv_ed", "goes with ft_ed: give both or neither, 0 where there is none")
	}
	if err := c.Err(); err != nil {
		return BoltEC3Outputs{}, err
	}
	out := BoltEC3Outputs{
		TensionN: 0.9 * in.TensileMPa * in.StressAreaMM2 / in.GammaM2,
		ShearN:   in.ShearShare * in.TensileMPa * in.StressAreaMM2 / in.GammaM2,
	}
	if in.ShearN.Known {
		pull := in.TensionN.Value / out.TensionN
		out.Combined = worked.Some(max(in.ShearN.Value/out.ShearN+pull/1.4, pull))
	}
	return out, nil
}

// BoltEC3Calculation is the catalogue entry of BoltEC3.
func BoltEC3Calculation() worked.Calculation {
	const source = "EN 1993-1-8 table 3.4 (read in a published report)"
	return worked.Define("bolt_ec3", BoltEC3, worked.Page[BoltEC3Inputs, BoltEC3Outputs]{
		Title:    "Bolt in pull and shear by the European code",
		Sources:  []string{source, "share in shear and joint use: EN 1993-1-8 table 3.4 (from memory)"},
		Validity: "full head and nut, thread in the joint, loads with their factors",
		Formulas: []worked.Formula[BoltEC3Inputs, BoltEC3Outputs]{
			{Symbol: "F_t", Is: "0.9 * f_ub * A_s / gamma", Source: source},
			{Symbol: "F_v", Is: "alpha_v * f_ub * A_s / gamma", Source: source},
			{Symbol: "U", Is: "max(V / F_v + N / F_t / 1.4, N / F_t)", Source: "EN 1993-1-8 table 3.4 (from memory)", When: func(_ BoltEC3Inputs, out BoltEC3Outputs) bool { return out.Combined.Known }},
		},
		Warnings: func(_ BoltEC3Inputs, out BoltEC3Outputs) []string {
			if out.Combined.Known && out.Combined.Value > 1 {
				return []string{"The bolt does not hold pull and shear together.", notCovered}
			}
			return []string{notCovered}
		},
		Example: map[string]string{"stress_area": "245 mm2", "fub": "800 MPa", "alpha_v": "0.6", "fv_ed": "40 kN", "ft_ed": "60 kN"},
	})
}
