package bolt

import (
	"fmt"

	"boremend/knowledge/worked"
)

const (
	roarkSource    = "Roark's Formulas for Stress and Strain, 7th edition, table 11.2 (from memory, verified by solving the plate equation)"
	shoulderSource = "least shoulder, running gap, thrust on one half of the ring: common practice, no source"
)

// ShoulderCalculation is the catalogue entry of Shoulder.
func ShoulderCalculation() worked.Calculation {
	return worked.Define("shoulder", Shoulder, worked.Page[ShoulderInputs, ShoulderOutputs]{
		Title:    "Shoulder of a sleeve",
		Sources:  []string{roarkSource, shoulderSource},
		Validity: "face bore at least the sleeve; bending shown while the shoulder is no thicker than wide",
		Formulas: shoulderLines(),
		Warnings: shoulderWarnings,
		Example: map[string]string{
			"thrust": "20 kN", "finish_bore": "80 mm", "sleeve_od": "96 mm", "flange_od": "120 mm", "counterface_bore": "98 mm",
			"side_play_total": "9 mm", "shoulders": "2", "sleeve_yield": "450 MPa", "face_yield": "250 MPa",
		},
	})
}

func shoulderLines() []worked.Formula[ShoulderInputs, ShoulderOutputs] {
	type in = ShoulderInputs
	type out = ShoulderOutputs
	chosen := func(i in, _ out) bool { return i.FlangeMM.Known }
	left := func(i in, _ out) bool { return !i.FlangeMM.Known }
	plate := func(_ in, o out) bool { return o.BendingMPa.Known }
	return []worked.Formula[in, out]{
		{Symbol: "h_m", Is: "(s - 2 * c) / n", Source: "one budget of side play"},
		{Symbol: "h_l", Table: "3 mm to 50 mm bore, 5 mm to 120 mm, 8 mm above", Source: shoulderSource},
		{Symbol: "h", Is: "h_g", Source: "as chosen", When: chosen},
		{Symbol: "h", Is: "max(h_m, h_l)", Source: "what the play leaves, but not too thin", When: left},
		{Symbol: "r", Is: "max(h - h_m, 0)", Source: "what the play does not hold is cut into the ears"},
		{Symbol: "s_l", Is: "s - n * h + n * r", Source: "plain geometry"},
		{Symbol: "W_d", Is: "2 * W", Source: shoulderSource},
		{Symbol: "w", Is: "(D_a - D_b) / 2", Source: "plain geometry"},
		{Symbol: "q", Is: "W_d / (pi * D_b * h)", Source: "statics"},
		{Symbol: "p", Is: "W_d / (pi * (D_a^2 / 4 - D_r^2 / 4))", Source: "statics"},
		{Symbol: "r_l", Is: "(D_a / 2 + D_r / 2) / 2", Source: "mid-contact", When: plate},
		{Symbol: "C_8", Is: "(1 + nu + (1 - nu) * D_b^2 / D_a^2) / 2", Source: roarkSource, When: plate},
		{Symbol: "C_9", Is: "D_b / D_a * ((1 + nu) / 2 * log(D_a / D_b) + (1 - nu) / 4 * (1 - D_b^2 / D_a^2))", Source: roarkSource, When: plate},
		{Symbol: "L_9", Is: "2 * r_l / D_a * ((1 + nu) / 2 * log(D_a / (2 * r_l)) + (1 - nu) / 4 * (1 - 4 * r_l^2 / D_a^2))", Source: roarkSource, When: plate},
		{Symbol: "M", Is: "W_d / (2 * pi * r_l) * D_a / 2 / C_8 * (2 * r_l * C_9 / D_b - L_9)", Source: roarkSource, When: plate},
		{Symbol: "sigma", Is: "6 * M / h^2", Source: "plate theory", When: plate},
		{Symbol: "S_q", Is: "R / (sqrt(3) * q)", Source: "shear yield by von Mises"},
		{Symbol: "S_p", Is: "R_f / p", Source: "yield over pressure"},
		{Symbol: "S_b", Is: "R / sigma", Source: "yield over stress", When: plate},
	}
}

func shoulderWarnings(in ShoulderInputs, out ShoulderOutputs) []string {
	var warnings []string
	if out.RecessMM > 0 {
		warnings = append(warnings, fmt.Sprintf("The play holds no shoulder this thick: counterbore each ear %.4g mm, and keep nine tenths of its width as bore.", out.RecessMM))
	}
	if out.ThicknessMM < out.LeastMM {
		warnings = append(warnings, fmt.Sprintf("A shoulder thinner than %.4g mm rolls over at this bore.", out.LeastMM))
	}
	if !out.BendingMPa.Known {
		warnings = append(warnings, "The shoulder is thicker than wide: plate bending does not hold and is not shown; shear and the fillet govern.")
	}
	if out.ShearSafety < 1 || out.FaceSafety < 1 || out.BendSafety.Known && out.BendSafety.Value < 1 {
		warnings = append(warnings, "The shoulder or its face gives way under this thrust: make it thicker or wider.")
	}
	return append(warnings,
		"A shoulder takes thrust one way only: it goes on the side that the thrust pushes from, and the other way needs a keeper or screws.",
		"Turn a fillet of at least half a millimetre at the root and chamfer the seat to clear it. Fatigue of the root is not covered.",
	)
}
