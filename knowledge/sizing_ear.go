package knowledge

import (
	"boremend/engine/quantity"
	"boremend/knowledge/ear"
	"boremend/knowledge/worked"
)

func cleanUpBorePlan(t *taker) (string, map[string]worked.Value) {
	in := map[string]worked.Value{"worn_reach": t.take("worn_reach")}
	t.limit(in, "clean_up", "clean_up")
	return "clean_up_bore", in
}

func strengthKeptPlan(t *taker) (string, map[string]worked.Value) {
	return "strength_kept", map[string]worked.Value{
		"edge_distance": t.take("edge_distance"), "finish_bore": t.take("finish_bore"), "sleeve_bore": t.take("sleeve_bore"),
	}
}

// strengthFactorPlan judges the ear with the bore for the sleeve, whose outside
// counts as the pin.
func strengthFactorPlan(t *taker) (string, map[string]worked.Value) {
	return t.strengthFactor("sleeve_bore", "sleeve_bore")
}

// strengthAsNewPlan judges the ear with its bore back to size.
func strengthAsNewPlan(t *taker) (string, map[string]worked.Value) {
	return t.strengthFactor("finish_bore", "finish_bore")
}

// strengthNowPlan judges the ear as it was found, the pin loose in it.
func strengthNowPlan(t *taker) (string, map[string]worked.Value) {
	return t.strengthFactor("worn_max", "finish_bore")
}

func (t *taker) strengthFactor(bore, pin string) (string, map[string]worked.Value) {
	metal := t.metal("material")
	return "strength_factor", map[string]worked.Value{
		"pin_load": t.take("pin_load"), "bore": t.take(bore), "pin_diameter": t.take(pin),
		"ear_width": t.take("ear_width"), "edge_distance": t.take("edge_distance"),
		"yield_strength": metal.yield, "tensile_strength": metal.tensile,
		"design_factor": {Quantity: quantity.Quantity{Value: ear.DesignFactorA, Kind: quantity.Ratio}},
	}
}

// lugLoadPlan and lugAsNewPlan find the peak stress beside the bore for a load
// that pulls, pushes or comes from the side.
func lugLoadPlan(t *taker) (string, map[string]worked.Value)  { return t.lugLoad("sleeve_bore") }
func lugAsNewPlan(t *taker) (string, map[string]worked.Value) { return t.lugLoad("finish_bore") }

func (t *taker) lugLoad(bore string) (string, map[string]worked.Value) {
	return "lug_load", map[string]worked.Value{
		"bore_dia": t.take(bore), "end_radius": t.take("edge_distance"), "thickness": t.take("ear_width"), "force": t.take("pin_load"),
	}
}

func bearingPressurePlan(t *taker) (string, map[string]worked.Value) {
	return "bearing_pressure", map[string]worked.Value{
		"force": t.take("pin_load"), "diameter": t.take("finish_bore"), "length": t.take("ear_width"),
	}
}

// contactPlan finds the peak under a pin with its running gap, which is what
// coins a thin sleeve.
func contactPlan(t *taker) (string, map[string]worked.Value) {
	gap := t.take("limit.running_gap")
	return "conformal_contact", map[string]worked.Value{
		"force": t.take("pin_load"), "bore_diameter": t.take("finish_bore"), "length": t.take("ear_width"),
		"radial_clearance": lengthValue(gap.Quantity.Value / 2),
	}
}

// chamferPlan gives the lead-in that the sleeve enters by.
func chamferPlan(t *taker) (string, map[string]worked.Value) {
	return "housing_leadin_chamfer", map[string]worked.Value{"bore_diameter": t.take("sleeve_bore")}
}

// pressAndLoadPlan adds the press fit to the pin load, in the direction in which
// the pin pushes; where nobody knows, as if the load came both ways.
func pressAndLoadPlan(t *taker) (string, map[string]worked.Value) {
	direction := "both_ways"
	if v, ok := t.joint["load_direction"]; ok {
		direction = v.Word
	}
	in := map[string]worked.Value{"load_direction": {Word: direction}, "ear_strength": t.metal("material").strength}
	if load, ok := t.results(lugLoadPlan); ok {
		in["peak_hoop_pull"], in["peak_hoop_push"], in["peak_hoop_side"] = load["peak_hoop_pull"], load["peak_hoop_push"], load["peak_hoop_side"]
	}
	if fit, ok := t.pressed(); ok {
		in["press_hoop"] = fit["ear_hoop_pressed"]
	}
	return "press_and_load", in
}

// aiscPlan judges the ear by the pin-plate rules for buildings, which do not have
// a joint that wears in mind and say so.
func aiscPlan(t *taker) (string, map[string]worked.Value) {
	ear := t.metal("material")
	wall := t.take("wall_after_sleeve")
	return "pin_plate_aisc", map[string]worked.Value{
		"thickness": t.take("ear_width"), "pin_diameter": t.take("sleeve_bore"), "hole_diameter": t.take("sleeve_bore"),
		"side_wall": wall, "end_wall": wall, "yield_strength": ear.yield, "tensile_strength": ear.tensile,
	}
}

// pinBeamPlan bends the pin between this ear and its mate, with the gap that there
// is beside the ear.
func pinBeamPlan(t *taker) (string, map[string]worked.Value) {
	yield := t.take("pin_yield").Quantity.Value
	stress := func(v float64) worked.Value {
		return worked.Value{Quantity: quantity.Quantity{Value: v, Kind: quantity.Stress}}
	}
	in := map[string]worked.Value{
		"pin_diameter": t.take("finish_bore"), "force": t.take("pin_load"),
		"centre_thickness": t.take("mate_width"), "outer_thickness": t.take("ear_width"),
		// Two thirds of yield in bending and 0.4 of it in shear: common practice, no source.
		"allowable_bending": stress(2 * yield / 3), "allowable_shear": stress(0.4 * yield),
	}
	if gap, ok := t.joint["side_clearance"]; ok {
		in["gap"] = gap
	}
	return "pin_beam", in
}
