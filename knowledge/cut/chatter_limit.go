package cut

import "boremend/knowledge/worked"

// ChatterLimitInputs are bar and cut.
type ChatterLimitInputs struct {
	Stiffness float64 `name:"stiffness_n_mm" symbol:"k" kind:"ratio" means:"force at the tool for one millimetre, in N"`
	Damping   float64 `name:"damping_ratio" symbol:"zeta" kind:"ratio" default:"0.02" means:"damping of the bar in its mounts"`
	RadialMPa float64 `name:"cutting_coefficient" symbol:"K_f" kind:"stress" means:"force away from the metal over area of the chip, about 0.3 of the specific cutting force"`
}

// ChatterLimitOutputs are the depth of cut below which nothing chatters.
type ChatterLimitOutputs struct {
	Compliance float64 `name:"real_compliance_mm_n" symbol:"G" kind:"ratio" means:"most negative real part of the bar's compliance, in mm/N"`
	DepthMM    float64 `name:"limit_depth" symbol:"b" kind:"length" means:"width of cut below which no speed chatters"`
}

// ChatterLimit computes the width of cut below which a bar does not chatter at any
// speed.
//
//	G = -1 / (4 k zeta (1 + zeta))
//	b = -1 / (2 K_f G) = 2 k zeta (1 + zeta) / K_f
//
// k is the stiffness at the tool [N/mm], zeta the damping ratio [-], K_f the radial
// cutting coefficient [MPa].
//
// Above the floor there are speeds that stay quiet, but only where the edge passes
// as often as the bar swings. A portable bar turns about once a second and swings
// hundreds of times, so it finds none: cure chatter by a stiffer bar, a shorter span,
// a smaller nose radius, less depth, more feed, a lower speed.
//
// Validity: one mode of vibration, the first. b is the width of cut, which is the
// depth a side at an entering angle of 90 degrees.
//
// Error: a factor 2 either way: zeta is 0.01 to 0.05 (from memory) and seldom known.
//
// Source: regenerative stability of orthogonal turning, as in Y. Altintas,
// Manufacturing Automation (constants partly from memory); the minimum found
// numerically in a test.
func ChatterLimit(in ChatterLimitInputs) (ChatterLimitOutputs, error) {
	var c worked.Checks
	c.Between("stiffness_n_mm", in.Stiffness, 1, 1e9)
	c.Between("damping_ratio", in.Damping, 1e-4, 0.5)
	c.Between("cutting_coefficient", in.RadialMPa, 10, 20000)
	if err := c.Err(); err != nil {
		return ChatterLimitOutputs{}, err
	}
	out := ChatterLimitOutputs{Compliance: -1 / (4 * in.Stiffness * in.Damping * (1 + in.Damping))}
	out.DepthMM = chatterDepth(in.Stiffness, in.Damping, in.RadialMPa)
	return out, nil
}

func chatterDepth(stiffness, damping, radialMPa float64) float64 {
	return 2 * stiffness * damping * (1 + damping) / radialMPa
}

// ChatterLimitCalculation is the catalogue entry of ChatterLimit.
func ChatterLimitCalculation() worked.Calculation {
	const stability = "stability of orthogonal turning"
	return worked.Define("chatter_limit", ChatterLimit, worked.Page[ChatterLimitInputs, ChatterLimitOutputs]{
		Title:    "Depth of cut below which nothing chatters",
		Sources:  []string{"Y. Altintas, Manufacturing Automation, orthogonal turning (stiffness and damping read, coefficient from memory)", "damping 0.01 to 0.05 (from memory)"},
		Validity: "one mode of vibration; any speed",
		Formulas: []worked.Formula[ChatterLimitInputs, ChatterLimitOutputs]{
			{Symbol: "G", Is: "-1 / (4 * k * zeta * (1 + zeta))", Source: stability},
			{Symbol: "b", Is: "-1 / (2 * K_f * G)", Source: stability},
		},
		Example: map[string]string{"stiffness_n_mm": "5960", "cutting_coefficient": "600 MPa"},
	})
}
