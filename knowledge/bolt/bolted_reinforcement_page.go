package bolt

import (
	"fmt"

	"boremend/knowledge/worked"
)

type reinforcementFormula = worked.Formula[BoltedReinforcementInputs, BoltedReinforcementOutputs]

const (
	stiffnessSource = "springs side by side through a common bore, recomputed"
	tippingSource   = "statics: load in the middle of the plate, bolts at its face"
	useSource       = "EN 1993-1-8 table 3.4 (from memory), partial factors left to the safety wanted"
	spacingSource   = "edge 1.5 d, pitch 3 d: common practice, no source; least distances EN 1993-1-8 table 3.3 (from memory)"
)

// BoltedReinforcementCalculation is the catalogue entry of BoltedReinforcement.
func BoltedReinforcementCalculation() worked.Calculation {
	return worked.Define("bolted_reinforcement", BoltedReinforcement, worked.Page[BoltedReinforcementInputs, BoltedReinforcementOutputs]{
		Title:    "Cheek plates bolted to an ear",
		Sources:  []string{stiffnessSource, groupSource, useSource, spacingSource, torqueSource, ruleSource, threadSource, gradeSource},
		Validity: "bore finished together, two rows and columns at least, holes not nearer than 1.2 d to an edge or 2.2 d to each other",
		Formulas: append(append(reinforcementForceLines(), reinforcementClampLines()...), reinforcementStrengthLines()...),
		Warnings: reinforcementWarnings,
		Example: map[string]string{
			"pin_load": "150 kN", "bore": "80 mm", "bore_finish": "together", "ear_thickness": "40 mm", "ear_e": "205 GPa", "plate_thickness": "16 mm", "plates": "1",
			"columns": "2", "rows": "3", "column_pitch": "70 mm", "row_pitch": "70 mm", "eccentricity": "140 mm", "edge_distance": "35 mm", "size": "M20", "grade": "8.8",
			"joint": "fitted", "fastening": "tapped", "ear_metal": "steel", "plate_yield": "355 MPa", "ear_yield": "250 MPa",
		},
	})
}

func reinforcementForceLines() []reinforcementFormula {
	known := func(in BoltedReinforcementInputs, _ BoltedReinforcementOutputs) bool { return in.LoadAngleDeg.Known }
	unknown := func(in BoltedReinforcementInputs, _ BoltedReinforcementOutputs) bool { return !in.LoadAngleDeg.Known }
	return []reinforcementFormula{
		{Symbol: "k", Is: "E_p * t_p / (E_e * t_e + n_p * E_p * t_p)", Source: stiffnessSource},
		{Symbol: "F_p", Is: "k * F", Source: stiffnessSource},
		{Symbol: "F_e", Is: "F - n_p * F_p", Source: "what is left"},
		{Symbol: "n", Is: "n_x * n_y", Source: "count"},
		{Symbol: "x_m", Is: "(n_x - 1) * p_x / 2", Source: "plain geometry"},
		{Symbol: "y_m", Is: "(n_y - 1) * p_y / 2", Source: "plain geometry"},
		{Symbol: "I_x", Is: "n * (n_x^2 - 1) * p_x^2 / 12", Source: "sum over a grid"},
		{Symbol: "I_y", Is: "n * (n_y^2 - 1) * p_y^2 / 12", Source: "sum over a grid"},
		{Symbol: "V_1", Is: "F_p / n", Source: groupSource},
		{Symbol: "V_2", Is: "F_p * e * y_m / (I_x + I_y)", Source: groupSource},
		{Symbol: "V_3", Is: "F_p * e * x_m / (I_x + I_y)", Source: groupSource},
		{Symbol: "V", Is: "sqrt((V_1 * abs(cos(phi * pi / 180)) + V_2 * abs(sin(phi * pi / 180)))^2 + ((V_1 + V_3) * sin(phi * pi / 180))^2)", Source: groupSource, When: known},
		{Symbol: "V", Is: "sqrt((V_1^2 + V_2^2 + (V_1 + V_3)^2) / 2 + sqrt((V_1^2 - V_2^2 - (V_1 + V_3)^2)^2 / 4 + V_1^2 * V_2^2))", Source: groupSource + ", worst direction of the load", When: unknown},
		{Symbol: "N_x", Is: "F_p * t_p / 2 * x_m / I_x", Source: tippingSource},
		{Symbol: "N_y", Is: "F_p * t_p / 2 * y_m / I_y", Source: tippingSource},
		{Symbol: "N", Is: "N_x * abs(cos(phi * pi / 180)) + N_y * abs(sin(phi * pi / 180))", Source: tippingSource, When: known},
		{Symbol: "N", Is: "sqrt(N_x^2 + N_y^2)", Source: tippingSource + ", worst direction of the load", When: unknown},
	}
}

func reinforcementClampLines() []reinforcementFormula {
	return []reinforcementFormula{
		{Symbol: "d", Table: threadTable, Source: threadSource},
		{Symbol: "A_s", Table: threadTable, Source: threadSource},
		{Symbol: "S_p", Table: gradeTable, Source: gradeSource},
		{Symbol: "R_m", Table: gradeTable, Source: gradeSource},
		{Symbol: "alpha_v", Table: gradeTable, Source: shearSource},
		{Symbol: "F_2", Is: "f * S_p * A_s", Source: preloadSource},
		{Symbol: "T", Is: "K_1 * d * F_2 / 1000", Source: torqueSource},
		{Symbol: "F_1", Is: "F_2 * K_1 / K_2", Source: torqueSource},
		{Symbol: "r_s", Is: "mu_s * max(F_1 - N, 0)", Source: "Coulomb friction on what clamping the pull leaves"},
		{Symbol: "S_s", Is: "r_s / V", Source: "force over force"},
		{Symbol: "n_0", Is: "F_1 / N", Source: "the bolt's own give counted as nothing: safe"},
		{Symbol: "F_b", Is: "max(F_2 + c * N, N)", Source: separationSource},
		{Symbol: "S_f", Is: "S_p * A_s / F_b", Source: "proof load over pull"},
	}
}

func reinforcementStrengthLines() []reinforcementFormula {
	through := func(in BoltedReinforcementInputs, _ BoltedReinforcementOutputs) bool {
		return in.Fastening == "through"
	}
	tapped := func(metal string) func(BoltedReinforcementInputs, BoltedReinforcementOutputs) bool {
		return func(in BoltedReinforcementInputs, _ BoltedReinforcementOutputs) bool {
			return in.Fastening == "tapped" && (metal == "" || in.EarMetal == metal)
		}
	}
	return []reinforcementFormula{
		{Symbol: "R_v", Is: "alpha_v * R_m * A_s", Source: useSource},
		{Symbol: "R_t", Is: "0.9 * R_m * A_s", Source: useSource},
		{Symbol: "S_b", Is: "1 / max(V / R_v + N / (1.4 * R_t), N / R_t)", Source: useSource},
		{Symbol: "L_n", Is: "1.5 * d", Source: ruleSource, When: tapped("steel")},
		{Symbol: "L_n", Is: "2 * d", Source: ruleSource, When: tapped("iron")},
		{Symbol: "p_1", Is: "V / (d * t_p)", Source: "force over projected area"},
		{Symbol: "p_2", Is: "n_p * V / (d * t_e)", Source: "force over projected area, all plates", When: through},
		{Symbol: "p_2", Is: "V / (d * L_n)", Source: "force over projected area of the thread", When: tapped("")},
		{Symbol: "S_h", Is: "min(R_1 / p_1, R_2 / p_2)", Source: "yield over bearing stress"},
		{Symbol: "c_n", Is: "1.5 * d", Source: spacingSource},
		{Symbol: "p_n", Is: "3 * d", Source: spacingSource},
	}
}

func reinforcementWarnings(in BoltedReinforcementInputs, out BoltedReinforcementOutputs) []string {
	warnings := fromMemory(in.Size)
	say := func(when bool, text string, args ...any) {
		if when {
			warnings = append(warnings, fmt.Sprintf(text, args...))
		}
	}
	say(out.BoltSafety < in.SafetyWanted, "The bolts are too weak: safety %.3g, wanted %.3g. More bolts, larger ones, or a shorter arm.", out.BoltSafety, in.SafetyWanted)
	say(out.BearingSafety < in.SafetyWanted, "The holes wear oval: safety in bearing %.3g, wanted %.3g.", out.BearingSafety, in.SafetyWanted)
	say(in.Joint == "slip" && out.SlipSafety < in.SlipWanted, "The joint slips: safety %.3g, wanted %.3g. In clearance holes the plates carry nothing until it has slipped; ream fitted bolts or dowels.", out.SlipSafety, in.SlipWanted)
	say(out.OpeningSafety < in.SlipWanted, "The plate lifts off its bolts: safety %.3g, wanted %.3g.", out.OpeningSafety, in.SlipWanted)
	say(out.ProofSafety < 1, "A bolt that is tightened most goes over its proof load.")
	say(min(in.EdgeMM, out.BoreDistanceMM) < out.EdgeNeededMM, "A hole lies nearer than %.4g mm to an edge or to the bore.", out.EdgeNeededMM)
	say(min(in.ColumnPitchMM, in.RowPitchMM) < out.PitchNeededMM, "The bolts stand nearer than %.4g mm to each other.", out.PitchNeededMM)
	say(in.DepthMM.Known && out.EngagementMM.Known && in.DepthMM.Value < out.EngagementMM.Value, "The metal of %.4g mm is too thin: the thread needs %.4g mm.", in.DepthMM.Value, out.EngagementMM.Value)
	say(in.EarMetal == "iron" && in.Fastening == "tapped", "Iron: rather through bolts with hardened washers than tapped holes; drill, do not punch, and stay clear of cracks by three bolt diameters.")
	return append(warnings,
		"Drill no bolt through the thin side of the ear. Bolts give, so the plates take at most the share shown and the ear takes more than is left to it: check a plate as an ear for its share, and the ear for a good deal more than its own, or for the whole load.",
		"Plates outside lengthen the span of the pin: check a longer pin in bending.",
		notCovered,
	)
}
