package bolt

import (
	"fmt"

	"boremend/knowledge/worked"
)

const (
	captureStatics = "statics of a captured sleeve, recomputed"
	captureRoom    = "land, depth of thread, spacing and three screws: common practice, no source"
	loadedArc      = "shear planes 55 degrees either side of the load: ASME BTH-1 (read on published sheets)"
)

// BoltCaptureCalculation is the catalogue entry of BoltCapture.
func BoltCaptureCalculation() worked.Calculation {
	return worked.Define("bolt_capture", BoltCapture, worked.Page[BoltCaptureInputs, BoltCaptureOutputs]{
		Title:    "Screws that hold a sleeve",
		Sources:  []string{captureStatics, captureRoom, loadedArc, threadSource, gradeSource},
		Validity: "dry pin, no help from the press fit, screws drilled with the sleeve in place; not a seized pin",
		Formulas: append(captureLoadLines(), captureRoomLines()...),
		Warnings: boltCaptureWarnings,
		Example: map[string]string{
			"way": "joint_line", "radial_load": "120 kN", "thrust": "10 kN", "pin_diameter": "80 mm", "seat_diameter": "96 mm", "size": "M12", "grade": "8.8",
			"screws": "4", "contact_length": "24 mm", "weaker_yield": "250 MPa", "ear_metal": "steel", "load_reverses": "yes", "land": "30 mm", "thread_depth": "30 mm",
		},
	})
}

type captureFormula = worked.Formula[BoltCaptureInputs, BoltCaptureOutputs]

// by says for which ways of holding a line applies.
func by(ways ...string) func(BoltCaptureInputs, BoltCaptureOutputs) bool {
	return func(in BoltCaptureInputs, _ BoltCaptureOutputs) bool {
		for _, way := range ways {
			if in.Way == way {
				return true
			}
		}
		return false
	}
}

func captureLoadLines() []captureFormula {
	thrustKnown := func(in BoltCaptureInputs, _ BoltCaptureOutputs) bool { return in.ThrustN.Known }
	thrustUnknown := func(in BoltCaptureInputs, _ BoltCaptureOutputs) bool { return !in.ThrustN.Known }
	return []captureFormula{
		{Symbol: "T", Is: "mu * F * d_p / 2 / 1000", Source: captureStatics},
		{Symbol: "r", Is: "D / 2", Source: "screws on the joint", When: by("joint_line", "radial")},
		{Symbol: "r", Is: "D / 2 - o", Source: "inner end of the pocket", When: by("head_pocket")},
		{Symbol: "F_t", Is: "1000 * T / r", Source: captureStatics},
		{Symbol: "W_a", Is: "W", Source: "thrust as given", When: thrustKnown},
		{Symbol: "W_a", Is: "mu * F", Source: "drag of a pin that slides endways", When: thrustUnknown},
		{Symbol: "d", Table: threadTable, Source: threadSource},
		{Symbol: "P", Table: threadTable, Source: threadSource},
		{Symbol: "d_3", Is: "d - 1.226869 * P", Source: coreSource},
		{Symbol: "A_s", Table: threadTable, Source: threadSource},
		{Symbol: "R_p", Table: gradeTable, Source: gradeSource},
		{Symbol: "A_q", Is: "d_3 * l", Source: "shears lengthwise", When: by("joint_line")},
		{Symbol: "A_q", Is: "A_s", Source: "shears across the thread", When: by("radial", "head_pocket")},
		{Symbol: "A_b", Is: "d_3 * l / 2", Source: "half of the screw bears on either part", When: by("joint_line")},
		{Symbol: "A_b", Is: "d_3 * l", Source: "thread counted as its root", When: by("radial")},
		{Symbol: "A_b", Is: "o * l", Source: "side of the head in the pocket", When: by("head_pocket")},
		{Symbol: "Q", Is: "sqrt(F_t^2 + W_a^2) / n", Source: "turning and walking at right angles", When: by("joint_line", "radial")},
		{Symbol: "Q", Is: "F_t / n", Source: captureStatics, When: by("head_pocket")},
		{Symbol: "N", Is: "0", Source: "the screw is not pulled", When: by("joint_line", "radial")},
		{Symbol: "N", Is: "2 * W_a / n", Source: "the head is pulled on one side (judgement)", When: by("head_pocket")},
		{Symbol: "q", Is: "Q / A_q", Source: "force over area"},
		{Symbol: "sigma_v", Is: "sqrt((N / A_s)^2 + 3 * q^2)", Source: "von Mises of pull and shear"},
		{Symbol: "p", Is: "Q / A_b", Source: "force over area"},
		{Symbol: "S_v", Is: "R_p / sigma_v", Source: "yield over stress"},
		{Symbol: "S_p", Is: "R_w / p", Source: "yield over stress"},
		{Symbol: "S", Is: "min(S_v, S_p)", Source: "the weaker of the two"},
	}
}

func captureRoomLines() []captureFormula {
	reverses := func(in BoltCaptureInputs, _ BoltCaptureOutputs) bool { return in.Reverses == "yes" }
	oneSided := func(in BoltCaptureInputs, _ BoltCaptureOutputs) bool { return in.Reverses == "no" }
	steel := func(in BoltCaptureInputs, _ BoltCaptureOutputs) bool { return in.EarMetal == "steel" }
	iron := func(in BoltCaptureInputs, _ BoltCaptureOutputs) bool { return in.EarMetal == "iron" }
	return []captureFormula{
		{Symbol: "n_n", Is: "max(3, ceil(n * S_0 / S - 1e-9))", Source: "three at least: " + captureRoom},
		{Symbol: "n_r", Is: "2 * (floor(70 * pi / 180 * D / 2 / (3 * d) + 1e-9) + 1)", Source: loadedArc, When: reverses},
		{Symbol: "n_r", Is: "floor(250 * pi / 180 * D / 2 / (3 * d) + 1e-9) + 1", Source: loadedArc, When: oneSided},
		{Symbol: "b_n", Is: "2 * d + 1.5", Source: captureRoom, When: by("joint_line", "head_pocket")},
		{Symbol: "b_n", Is: "2 * d", Source: captureRoom, When: by("radial")},
		{Symbol: "t_n", Is: "1.5 * d", Source: ruleSource, When: steel},
		{Symbol: "t_n", Is: "2 * d", Source: ruleSource, When: iron},
	}
}

func boltCaptureWarnings(in BoltCaptureInputs, out BoltCaptureOutputs) []string {
	warnings := fromMemory(in.Size)
	say := func(when bool, text string, args ...any) {
		if when {
			warnings = append(warnings, fmt.Sprintf(text, args...))
		}
	}
	say(in.Screws < out.Needed, "%g screws are too few: %g are needed.", in.Screws, out.Needed)
	say(max(in.Screws, out.Needed) > out.Room, "Only %g screws find room outside the loaded arc: take larger ones, or hold the sleeve another way.", out.Room)
	say(in.LandMM.Known && in.LandMM.Value < out.LandNeeded, "The land of %.4g mm is too narrow: these screws need %.4g mm.", in.LandMM.Value, out.LandNeeded)
	say(in.DepthMM.Known && in.DepthMM.Value < out.ThreadNeeded, "The metal of %.4g mm is too thin: the thread needs %.4g mm.", in.DepthMM.Value, out.ThreadNeeded)
	say(in.Way == "head_pocket", "Sink the head into the ear as well as into the sleeve: a head that stands proud bends its screw, which is not counted here.")
	say(in.EarMetal == "iron", "Iron: clean tapped holes or steel inserts, calibrated torque; no tack weld to lock a screw, it leaves a crack starter.")
	return append(warnings,
		"Keep the holes out of the arc 55 degrees either side of the load, and off the thinnest wall.",
		"A lock that works without preload, as wire, tab or wedge: a screw that stands loose in its hole hammers itself out.",
		"A seized pin brings the whole torque of the machine, which no screw holds.",
		notCovered,
	)
}
