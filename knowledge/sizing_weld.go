package knowledge

import (
	"math"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// hazHardnessPlan uses the carbon equivalent where it is known, and the typical
// analysis of the class where it is not.
func hazHardnessPlan(t *taker) (string, map[string]worked.Value) {
	in := map[string]worked.Value{"material": t.take("material"), "wall_now": t.take("wall_now")}
	t.limit(in, "heat_input", "heat_input")
	t.limit(in, "hydrogen", "hydrogen")
	for _, optional := range []string{"site_max_preheat", "ambient_temp"} {
		if v, ok := t.joint[optional]; ok {
			in[optional] = v
		}
	}
	if ce, ok := t.joint["carbon_equivalent"]; ok {
		in["carbon_equivalent"] = ce
		return "haz_hardness", in
	}
	return "haz_hardness_typical", in
}

// buildUpPlan fills the bore from the cut before welding to what is left for the
// finishing cuts.
func buildUpPlan(t *taker) (string, map[string]worked.Value) {
	return "build_up", map[string]worked.Value{
		"worn_dia": t.take("pre_weld_bore"), "finish_dia": t.take("finish_bore"), "length": t.take("ear_width"),
		"machining_allowance_radial": t.take("limit.weld_finish_cut"), "deposition_efficiency": t.take("limit.weld_efficiency"),
		"deposition_rate": t.take("limit.weld_deposit_per_hour"), "operating_factor": t.take("limit.weld_operating_factor"),
	}
}

// beadLayerPlan lays the beads and layers out.
func beadLayerPlan(t *taker) (string, map[string]worked.Value) {
	before, finish, cut := t.take("pre_weld_bore"), t.take("finish_bore"), t.take("limit.weld_finish_cut")
	return "bead_layer", map[string]worked.Value{
		"wire_feed": t.take("limit.weld_wire_feed"), "wire_dia": t.take("limit.weld_wire"), "travel": t.take("limit.weld_travel"),
		"bead_width": t.take("limit.weld_bead_width"), "deposition_efficiency": t.take("limit.weld_efficiency"),
		"radial_build": lengthValue((before.Quantity.Value-finish.Quantity.Value)/2 + cut.Quantity.Value),
	}
}

// preheatEnergyPlan warms a ring as wide as the ear and as far out as its nearest
// edge to the preheat that the weld sheet asks for. What flows off into the rest
// of the machine is not in it.
func preheatEnergyPlan(t *taker) (string, map[string]worked.Value) {
	edge, bore, width, start := t.take("edge_distance"), t.take("finish_bore"), t.take("ear_width"), t.take("welding_temp")
	in := map[string]worked.Value{"start": start, "burner": t.take("limit.burner")}
	hardness, haz := hazHardnessPlan(t)
	if len(t.missing) > 0 {
		return "preheat_energy", in
	}
	sheet, err := work(hardness, haz)
	t.failed = firstOf(t.failed, err)
	target, _ := sheet.Output("preheat_used")
	if err == nil && target.Quantity.Value <= start.Quantity.Value {
		t.failed = firstOf(t.failed, &worked.Refusal{Input: "preheat_energy", Says: "is not needed: the weld sheet asks for no preheat above the part's own warmth"})
	}
	in["target"], in["mass"] = target, ringMass(edge.Quantity.Value, bore.Quantity.Value/2, width.Quantity.Value)
	return "preheat_energy", in
}

// steelKGPerMM3 is the density of steel, 7850 kg/m3.
const steelKGPerMM3 = 7.85e-6

func ringMass(outerMM, innerMM, widthMM float64) worked.Value {
	kg := steelKGPerMM3 * math.Pi * (outerMM*outerMM - innerMM*innerMM) * widthMM
	return worked.Value{Quantity: quantity.Quantity{Value: kg, Kind: quantity.Mass}}
}

// ndtHoldPlan looks up the wait before the final crack test: 48 h for quenched
// and tempered steel, otherwise the 16 h of EN 1011-2. Shorter waits that other
// codes grant small welds are left to whoever works to that code.
func ndtHoldPlan(t *taker) (string, map[string]worked.Value) {
	code, steel := "en_1011_2", "ordinary"
	if t.take("material").Word == "qt_steel" {
		code, steel = "csa_w59", "quenched_tempered"
	}
	return "ndt_hold_code", map[string]worked.Value{"code": {Word: code}, "steel": {Word: steel}}
}

// interpassRisePlan asks how much warmer the boss gets in one run between rests.
func interpassRisePlan(t *taker) (string, map[string]worked.Value) {
	edge, bore, width := t.take("edge_distance"), t.take("finish_bore"), t.take("ear_width")
	return "interpass_rise", map[string]worked.Value{
		"voltage": t.take("limit.weld_volts"), "current": t.take("limit.weld_amperes"), "arc_time": t.take("limit.weld_run"),
		"mass": ringMass(edge.Quantity.Value, bore.Quantity.Value/2, width.Quantity.Value),
	}
}
