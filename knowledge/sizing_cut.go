package knowledge

import (
	"boremend/knowledge/cut"
	"boremend/knowledge/worked"
)

// weldMetal is what is cut after a build-up.
const weldMetal = "weld_deposit_carbon"

// boringPlan opens the bore for a sleeve.
func boringPlan(t *taker) (string, map[string]worked.Value) { return t.boringEar("sleeve_bore") }

// boringPreWeldPlan opens the bore for the weld.
func boringPreWeldPlan(t *taker) (string, map[string]worked.Value) {
	return t.boringEar("pre_weld_bore")
}

// boringEar cuts the ear from its finished size, the tightest place that is left, to
// a larger bore.
func (t *taker) boringEar(after string) (string, map[string]worked.Value) {
	metal := t.take("material").Word
	work, ok, err := cut.WorkOfClass(metal)
	t.failed = firstOf(t.failed, err)
	if !ok && metal != "" {
		t.failed = firstOf(t.failed, &worked.Refusal{Input: "material", Says: "is " + metal + ": no cutting data are known for it"})
	}
	return t.boring(work.Work, t.take("finish_bore"), t.take(after))
}

// boringWeldPlan bores the build-up back to size.
func boringWeldPlan(t *taker) (string, map[string]worked.Value) {
	filled := t.take("finish_bore").Quantity.Value - 2*t.take("limit.weld_finish_cut").Quantity.Value
	return t.boring(weldMetal, lengthValue(filled), t.take("finish_bore"))
}

// boring sets the largest bar that leaves room for chips between bearings outside
// the faces. A single bore spans its own width.
func (t *taker) boring(work string, before, after worked.Value) (string, map[string]worked.Value) {
	span, ok := t.joint["span"]
	if !ok {
		span = t.take("ear_width")
	}
	return "boring_setup", map[string]worked.Value{
		"work": {Word: work}, "bore_before": before, "bore_after": after, "length": t.take("ear_width"),
		"span":         lengthValue(span.Quantity.Value + 2*t.take("limit.bearing_standoff").Quantity.Value),
		"bar_diameter": t.take("bar_diameter"), "depth": t.take("limit.cut_depth"), "feed": t.take("limit.cut_feed"),
	}
}

// barClearancePlan asks whether the bar goes into the hole as it was found.
func barClearancePlan(t *taker) (string, map[string]worked.Value) {
	raw, ok := t.joint["worn_min"]
	if !ok {
		raw = t.take("finish_bore")
	}
	return "bar_clearance", map[string]worked.Value{
		"raw_bore": raw, "bar_diameter": t.take("bar_diameter"), "tool_projection": t.take("limit.tool_projection"),
	}
}

// mountLegs is how many legs a bearing mount is taken to stand on.
const mountLegs = 3

// mountPlan finds the tacks that hold a bearing mount to the face. Iron is never
// tacked, and a steel that hardens needs its preheat for a tack as for any weld.
func mountPlan(t *taker) (string, map[string]worked.Value) {
	if t.steelOrIron() == "iron" {
		t.failed = firstOf(t.failed, &worked.Refusal{Input: "bearing_mount", Says: "must not be tacked to iron: clamp or bolt it"})
	}
	in := map[string]worked.Value{
		"standoff": t.take("limit.bearing_standoff"), "leg_radius": t.take("limit.mount_radius"), "legs": count(mountLegs),
	}
	if cut, ok := t.results(boringPlan); ok {
		in["reaction"], in["thrust"], in["torque"] = cut["bearing_force"], cut["feed_force"], cut["torque"]
	}
	t.notes = append(t.notes, "Tacks on a hardenable casting are small welds with a hard zone of their own: preheat for them, grind them off afterwards and crack-test the place; clamps or bolts are better.")
	return "tack_group", in
}
