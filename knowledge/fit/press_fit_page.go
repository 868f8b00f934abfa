package fit

import "boremend/knowledge/worked"

type pressFitFormula = worked.Formula[PressFitInputs, PressFitOutputs]

// PressFitCalculation is the catalogue entry of PressFit.
func PressFitCalculation() worked.Calculation {
	return worked.Define("press_fit", PressFit, worked.Page[PressFitInputs, PressFitOutputs]{
		Title:    "Sleeve pressed into an ear",
		Sources:  []string{shigley, ownFE, "DIN 7190:2001, roughness factor 0.8, and DIN 7190-1 section 5.3, friction (read second-hand)", "holding friction of pressed fits: DIN 7190:2001 (from memory)", expansionTable, heatingLimitSource},
		Validity: "smallest wall at least 0.125 of the seat, plane stress, both parts elastic, sleeve as long as the ear; pin load is not in it",
		Formulas: append(append(pressFitPressureLines(), pressFitStressLines()...), pressFitSlipLines()...),
		Warnings: pressFitWarnings,
		Example: map[string]string{
			"seat_diameter": "110 mm", "length": "80 mm", "sleeve_id": "90 mm", "edge_wall": "40 mm", "ear_radius": "98 mm",
			"interference_least": "0.09 mm", "interference_most": "0.13 mm", "ear_e": "205 GPa", "ear_metal": "ductile", "ear_strength": "250 MPa",
			"sleeve_e": "205 GPa", "sleeve_yield": "450 MPa", "ear_alpha": "11.7e-6 1/K", "sleeve_alpha": "11.7e-6 1/K", "ear_treatment": "plain",
		},
	})
}

func pressFitPressureLines() []pressFitFormula {
	wallKnown := func(in PressFitInputs, _ PressFitOutputs) bool { return in.LargestWallMM.Known }
	wallUnknown := func(in PressFitInputs, _ PressFitOutputs) bool { return !in.LargestWallMM.Known }
	const din, friction = "DIN 7190:2001 (read second-hand)", "Coulomb friction"
	return []pressFitFormula{
		{Symbol: "D", Is: "d + 2 * w", Source: "ring of the smallest wall"},
		{Symbol: "Q", Is: "(d / D)^2", Source: lame},
		{Symbol: "Q_x", Is: "(d / (d + 2 * w_x))^2", Source: "ring of the largest wall", When: wallKnown},
		{Symbol: "Q_x", Is: "0", Source: "largest wall not known: a wall without end", When: wallUnknown},
		{Symbol: "q", Is: "(d_i / d)^2", Source: lame},
		{Symbol: "G_h", Is: "(1 + Q) / (1 - Q) + nu_h", Source: lame},
		{Symbol: "G_x", Is: "(1 + Q_x) / (1 - Q_x) + nu_h", Source: lame},
		{Symbol: "G_s", Is: "(1 + q) / (1 - q) - nu_s", Source: lame},
		{Symbol: "s", Is: "0.8 * (R_zb + R_zs)", Source: din},
		{Symbol: "s_l", Is: "min(0, d * (alpha_s - alpha_h) * (T_c - T_0), d * (alpha_s - alpha_h) * (T_w - T_0))", Source: "difference of expansions"},
		{Symbol: "s_m", Is: "max(0, d * (alpha_s - alpha_h) * (T_c - T_0), d * (alpha_s - alpha_h) * (T_w - T_0))", Source: "difference of expansions"},
		{Symbol: "delta_g", Is: "delta_1 - s + s_l", Source: "what is left to hold"},
		{Symbol: "p_1", Is: "max(delta_g, 0) / (d * (G_h / E_h + G_s / E_s))", Source: lame},
		{Symbol: "p_2", Is: "delta_2 / (d * (G_h / E_h + G_s / E_s))", Source: lame},
		{Symbol: "p_3", Is: "(delta_2 + s_m) / (d * (G_h / E_h + G_s / E_s))", Source: lame},
		{Symbol: "p_x", Is: "delta_2 / (d * (G_x / E_h + G_s / E_s))", Source: lame},
		{Symbol: "A", Is: "pi * d * L", Source: "cylinder"},
		{Symbol: "F_1", Is: "mu_g * p_1 * A", Source: friction},
		{Symbol: "T_1", Is: "F_1 * d / 2 / 1000", Source: "lever of half the diameter; N mm to N m"},
		{Symbol: "F_l", Is: "mu_l * p_2 * A", Source: friction},
		{Symbol: "F_h", Is: "mu_h * p_x * A", Source: friction},
	}
}

func pressFitStressLines() []pressFitFormula {
	radiusKnown := func(in PressFitInputs, _ PressFitOutputs) bool { return in.EarRadiusMM.Known }
	radiusUnknown := func(in PressFitInputs, _ PressFitOutputs) bool { return !in.EarRadiusMM.Known }
	ductile := func(in PressFitInputs, _ PressFitOutputs) bool { return in.EarMetal != "brittle" }
	brittle := func(in PressFitInputs, _ PressFitOutputs) bool { return in.EarMetal == "brittle" }
	return []pressFitFormula{
		{Symbol: "sigma_r", Is: "p_3 * (1 + Q) / (1 - Q)", Source: lame},
		{Symbol: "k", Is: "2 * R / d", Source: "ear radius over seat radius", When: radiusKnown},
		{Symbol: "k", Is: "1 + 2 * w / d", Source: "smallest radius that leaves this wall", When: radiusUnknown},
		{Symbol: "k_c", Is: "min(k, 2.5)", Source: "range that was checked"},
		{Symbol: "C_p", Is: "1 + 0.43 * k_c^(-1.8)", Source: ownFE},
		{Symbol: "C_s", Is: "1 + 0.20 * k_c^(-1.8)", Source: ownFE},
		{Symbol: "sigma_p", Is: "sigma_r * C_p", Source: ownFE},
		{Symbol: "sigma_f", Is: "sigma_r * C_s", Source: ownFE},
		{Symbol: "sigma_v", Is: "sqrt(sigma_p^2 + sigma_p * p_3 + p_3^2)", Source: "von Mises of hoop and radial stress"},
		{Symbol: "sigma_i", Is: "-2 * p_x * (delta_2 + s_m) / delta_2 / (1 - q)", Source: lame},
		{Symbol: "S_h", Is: "R_h / sigma_v", Source: "yield", When: ductile},
		{Symbol: "S_h", Is: "R_h / sigma_p", Source: "brittle: largest tension against tensile strength", When: brittle},
		{Symbol: "S_s", Is: "R_s / abs(sigma_i)", Source: "yield at the sleeve bore"},
		{Symbol: "S", Is: "min(S_h, S_s)", Source: "the part that limits"},
		{Symbol: "u_r", Is: "2 * p_2 * d_i / (E_s * (1 - q))", Source: lame},
		{Symbol: "u_x", Is: "2 * p_x * d_i / (E_s * (1 - q))", Source: lame},
	}
}

func pressFitSlipLines() []pressFitFormula {
	const source = "even expansion; usual gap of a thousandth of the seat (from memory)"
	return []pressFitFormula{
		{Symbol: "eps_d", Table: expansionTable + ", room to -78.5 degC"},
		{Symbol: "eps_n", Table: expansionTable + ", room to -196 degC"},
		{Symbol: "T_h", Is: "T_0 + (delta_2 + d / 1000) / (alpha_h * d)", Source: source},
		{Symbol: "T_d", Is: "T_0 + max(delta_2 + d / 1000 + eps_d * d, 0) / (alpha_h * d)", Source: source},
		{Symbol: "T_n", Is: "T_0 + max(delta_2 + d / 1000 + eps_n * d, 0) / (alpha_h * d)", Source: source},
		{Symbol: "T_l", Table: "heating limits by heat treatment", Source: heatingLimitSource},
	}
}

func pressFitWarnings(in PressFitInputs, out PressFitOutputs) []string {
	warnings := yieldWarnings(in, out)
	if out.InterferenceGrip <= 0 {
		warnings = append(warnings, "Loose: roughness and temperature eat the least interference. At these limits nothing holds the sleeve.")
	}
	if in.EarMetal == "brittle" {
		warnings = append(warnings, "Brittle ear: press slowly and square, never hammer, and break the edge of the seat.")
	}
	if !in.LargestWallMM.Known {
		warnings = append(warnings, "The largest wall is not known: press force, closure and sleeve stress are taken at a wall without end.")
	}
	warnings = append(warnings, thinEarWarning(in.SeatDiameterMM, in.EdgeWallMM)...)
	warnings = append(warnings, slipWarnings(in.SleeveMetal, SlipAssemblyOutputs{Way: out.Way})...)
	return append(warnings,
		"The sleeve bore comes out oval, tightest toward the free end: finish it after pressing, or size the pin gap on the most closure.",
		"A sleeve standing proud of the ear raises the stress at the edge 1.4 to 2 times: chamfer the seat.",
	)
}

func yieldWarnings(in PressFitInputs, out PressFitOutputs) []string {
	var warnings []string
	if out.SleeveSafety < 1 {
		warnings = append(warnings, "The sleeve yields at its bore at the most interference: the elastic figures of this sheet do not hold. Take a thicker or stronger sleeve, or less interference.")
	}
	switch {
	case out.EarSafety >= 1:
	case in.EarMetal == "brittle":
		warnings = append(warnings, "The ear breaks: its hoop tension exceeds its tensile strength.")
	default:
		warnings = append(warnings, "The ear yields at the most interference: the elastic figures of this sheet do not hold.")
	}
	return warnings
}
