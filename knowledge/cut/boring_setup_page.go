package cut

import (
	"fmt"

	"boremend/knowledge/worked"
)

type setupFormula = worked.Formula[BoringSetupInputs, BoringSetupOutputs]

// BoringSetupCalculation is the catalogue entry of BoringSetup.
func BoringSetupCalculation() worked.Calculation {
	return worked.Define("boring_setup", BoringSetup, worked.Page[BoringSetupInputs, BoringSetupOutputs]{
		Title: "Set-up of a portable boring bar",
		Sources: []string{
			"Kienzle's law on rows of cutting data, each with its own source", "factors for boring, wear and slow cuts: German machining textbooks (from memory)",
			"shares of radial and feed force: Boring Basics, eisc.com (read)", beamTables, "undersize: balance of bar and cut, recomputed",
			"chatter: Y. Altintas, Manufacturing Automation (partly from memory)",
		},
		Validity: "tool between two bearings, rigid mounts; chips 0.11 to 1.13 mm thick, outside 0.05 to 1.6 mm it refuses",
		Formulas: append(append(append(setupForceLines(), setupBarLines()...), setupUndersizeLines()...), setupPassLines()...),
		Warnings: boringSetupWarnings,
		Example: map[string]string{
			"work": "cast_steel_low", "bore_before": "92 mm", "bore_after": "100 mm", "length": "80 mm", "span": "500 mm", "bar_diameter": "60 mm",
			"depth": "1.5 mm", "feed": "0.25 mm", "handling_per_pass": "6 min",
		},
	})
}

func setupForceLines() []setupFormula {
	const table, shares, edge = "cutting data: row with the largest force for this chip", "Boring Basics, eisc.com (read)", "geometry of the edge"
	slow := func(in BoringSetupInputs, out BoringSetupOutputs) bool { return isSlow(in.Tool, out.SpeedUsed) }
	quick := func(in BoringSetupInputs, out BoringSetupOutputs) bool { return !isSlow(in.Tool, out.SpeedUsed) }
	given := func(in BoringSetupInputs, _ BoringSetupOutputs) bool { return in.SpeedMPerMin.Known }
	notGiven := func(in BoringSetupInputs, _ BoringSetupOutputs) bool { return !in.SpeedMPerMin.Known }
	return []setupFormula{
		{Symbol: "h", Is: "f_r * sin(kappa * pi / 180)", Source: edge},
		{Symbol: "h_f", Is: "f_f * sin(kappa * pi / 180)", Source: edge},
		{Symbol: "k_c11", Table: table, Source: table},
		{Symbol: "m_c", Table: table, Source: table},
		{Symbol: "v", Is: "v_0", Source: "as given", When: given},
		{Symbol: "v", Table: "cutting data: slowest start on a portable bar", Source: "judgement", When: notGiven},
		{Symbol: "K_t", Is: "1.2", Source: "German machining textbooks (from memory)", When: slow},
		{Symbol: "K_t", Is: "1", Source: "carbide at speed, for which the rows hold", When: quick},
		{Symbol: "k_c", Is: "k_c11 * h^(-m_c) * K_i * K_w * K_u * K_t", Source: "Kienzle's law with factors"},
		{Symbol: "k_f", Is: "k_c11 * h_f^(-m_c) * K_i * K_w * K_u * K_t", Source: "Kienzle's law with factors"},
		{Symbol: "F_c", Is: "k_c * a_r * f_r", Source: "definition"},
		{Symbol: "F_p", Is: "r_p * F_c", Source: shares},
		{Symbol: "F_f", Is: "r_f * F_c", Source: shares},
		{Symbol: "F_s", Is: "sqrt(F_c^2 + F_p^2)", Source: "square to each other"},
		{Symbol: "n_1", Is: "1000 * v / (pi * D_1)", Source: "definition"},
		{Symbol: "n_2", Is: "1000 * v / (pi * D_2)", Source: "definition"},
		{Symbol: "T", Is: "F_c * D_2 / 2000", Source: "lever of half the bore"},
		{Symbol: "P_c", Is: "F_c * v / 60000", Source: "definition"},
		{Symbol: "P_m", Is: "P_c / eta", Source: "definition"},
	}
}

func setupBarLines() []setupFormula {
	tilts := func(in BoringSetupInputs, _ BoringSetupOutputs) bool { return in.Bearings != "rigid" }
	rigid := func(in BoringSetupInputs, _ BoringSetupOutputs) bool { return in.Bearings == "rigid" }
	placed := func(in BoringSetupInputs, _ BoringSetupOutputs) bool { return in.ToolAtMM.Known }
	middle := func(in BoringSetupInputs, _ BoringSetupOutputs) bool { return !in.ToolAtMM.Known }
	const beam, bar = "Euler-Bernoulli beam", "1000000 / (2 * pi * S^2) * sqrt(E * (d^2 + d_0^2) / (16 * rho))"
	return []setupFormula{
		{Symbol: "g", Is: "(D_1 - d) / 2", Source: "geometry"},
		{Symbol: "I", Is: secondMomentF, Source: "geometry"},
		{Symbol: "a", Is: "a_0", Source: "as given", When: placed},
		{Symbol: "a", Is: "S / 2", Source: "middle of the span", When: middle},
		{Symbol: "b", Is: "S - a", Source: "geometry"},
		{Symbol: "k", Is: "3 * E * I * S / (a^2 * b^2)", Source: beamTables, When: tilts},
		{Symbol: "k", Is: "3 * E * I * S^3 / (a^3 * b^3)", Source: beamTables, When: rigid},
		{Symbol: "y", Is: "F_s / k", Source: beamTables},
		{Symbol: "R_x", Is: "F_s * max(a, b) / S", Source: "statics"},
		{Symbol: "G", Is: "9.80665 * rho * pi * (d^2 - d_0^2) / 4 * S / 1000000000", Source: "weight"},
		{Symbol: "y_g", Is: "5 * G * S^3 / (384 * E * I)", Source: beamTables, When: tilts},
		{Symbol: "y_g", Is: "G * S^3 / (384 * E * I)", Source: beamTables, When: rigid},
		{Symbol: "f_1", Is: "pi^2 * " + bar, Source: beam, When: tilts},
		{Symbol: "f_1", Is: "4.730040744862704^2 * " + bar, Source: beam, When: rigid},
		{Symbol: "b_c", Is: "2 * k * zeta * (1 + zeta) / (r_p * k_c)", Source: "stability of orthogonal turning"},
	}
}

func setupUndersizeLines() []setupFormula {
	const balance = "balance of bar and cut"
	hardens := func(in BoringSetupInputs) bool {
		w, err := workNamed(in.Work)
		return err == nil && w.WorkHardens
	}
	never := func(in BoringSetupInputs, _ BoringSetupOutputs) bool { return hardens(in) }
	small := func(in BoringSetupInputs, out BoringSetupOutputs) bool {
		return !hardens(in) && out.SmallMM <= in.AllowedMM
	}
	worthIt := func(in BoringSetupInputs, out BoringSetupOutputs) bool {
		return !hardens(in) && out.SmallMM > in.AllowedMM
	}
	return []setupFormula{
		{Symbol: "s", Is: "(D_2 - D_1) / 2", Source: "definition"},
		{Symbol: "a_2", Is: "min(a_f, s)", Source: "definition"},
		{Symbol: "mu", Is: "r_p * k_c * f_r / (k + r_p * k_c * f_r)", Source: balance},
		{Symbol: "mu_f", Is: "r_p * k_f * f_f / (k + r_p * k_f * f_f)", Source: balance},
		{Symbol: "u_r", Is: "2 * a_r * mu", Source: balance},
		{Symbol: "u_f", Is: "2 * (a_2 + a_r * mu) * mu_f", Source: balance},
		{Symbol: "c", Is: "min(3, max(0, ceil(log(u_0 / u_f) / log(mu_f) - 0.000000001)))", Source: balance + "; at most 3: common practice, no source", When: worthIt},
		{Symbol: "c", Is: "0", Source: "small enough already", When: small},
		{Symbol: "c", Is: "0", Source: "never on metal that hardens under a rubbing edge", When: never},
		{Symbol: "u", Is: "u_f * mu_f^c", Source: balance},
	}
}

func setupPassLines() []setupFormula {
	const definition = "definition"
	roughs := func(_ BoringSetupInputs, out BoringSetupOutputs) bool { return out.RoughPasses > 0 }
	noRough := func(_ BoringSetupInputs, out BoringSetupOutputs) bool { return out.RoughPasses == 0 }
	handled := func(in BoringSetupInputs, _ BoringSetupOutputs) bool { return in.HandlingS.Known }
	return []setupFormula{
		{Symbol: "N_r", Is: "max(0, ceil((s - a_2) / a_r - 0.000000001))", Source: "whole passes"},
		{Symbol: "a_1", Is: "(s - a_2) / N_r", Source: "all roughing passes alike", When: roughs},
		{Symbol: "a_1", Is: "0", Source: "no roughing pass", When: noRough},
		{Symbol: "N", Is: "N_r + 1 + c", Source: definition},
		{Symbol: "t_c", Is: "60 * pi * (L + l) / (1000 * v) * (N_r * (D_1 + a_1 * (N_r + 1)) / f_r + (1 + c) * D_2 / f_f)", Source: "each pass at its own diameter"},
		{Symbol: "t", Is: "t_c + N * t_1", Source: definition, When: handled},
		{Symbol: "R_z", Is: "f_f^2 / (8 * r_e)", Source: "ideal profile of arcs"},
	}
}

func boringSetupWarnings(in BoringSetupInputs, out BoringSetupOutputs) []string {
	w, err := workNamed(in.Work)
	if err != nil {
		return nil // the calculation itself has refused
	}
	says := cutWarnings(in, out, w)
	if out.Chatter == "may_chatter" {
		says = append(says, fmt.Sprintf("The roughing cut is wider than the %.2g mm below which nothing chatters: shorten the span, take a stiffer bar, less depth or more feed.", out.ChatterMM))
	}
	if out.LeftMM > in.AllowedMM {
		says = append(says, fmt.Sprintf("The bore stays %.2g mm too small on the diameter: measure before the last cut and set the tool out by half of it.", out.LeftMM))
	}
	if out.GapMM < 3 {
		says = append(says, fmt.Sprintf("Only %.2g mm beside the bar: chips need 3 to 5 mm all round (see bar_clearance).", out.GapMM))
	}
	if 2*in.BarMM < in.BeforeMM {
		says = append(says, "The bar is less than half of the hole: a larger one is stiffer with the fourth power of its diameter.")
	}
	if out.SagMM > 0.02 {
		says = append(says, fmt.Sprintf("A level bar sags %.2g mm and bows the axis by as much: put a bearing in the middle.", out.SagMM))
	}
	says = append(says, shortBarWarnings(in.SpanMM/2, in.BarMM)...)
	if !in.HandlingS.Known {
		says = append(says, "The time is that of cutting alone: give handling_per_pass.")
	}
	return says
}

// cutWarnings hold the cut against what is usual with the metal.
func cutWarnings(in BoringSetupInputs, out BoringSetupOutputs, w Work) []string {
	says := workWarnings(w, out.ChipMM)
	if row, least := w.hardest(out.ChipMM); len(w.Force) > 1 {
		says = append(says, fmt.Sprintf("Sources give specific cutting forces from %.0f to %.0f MPa for this chip before the factors; the largest is taken.", least, row.at(out.ChipMM)))
	}
	says = append(says, chipWarnings("The roughing chip", out.ChipMM)...)
	says = append(says, chipWarnings("The finishing chip", out.FineChipMM)...)
	if most := w.Portable.RoughDepthMM[1]; in.DepthMM > most {
		says = append(says, fmt.Sprintf("A portable bar usually takes up to %g mm a side in this metal.", most))
	}
	if most := w.Portable.speed(in.Tool)[1]; out.SpeedUsed > most {
		says = append(says, fmt.Sprintf("A portable bar usually cuts this metal at up to %g m/min.", most))
	}
	if out.LastMM < in.NoseMM {
		says = append(says, "The finishing cut is shallower than the nose of the tool: the radial force is larger than shown.")
	}
	return says
}
