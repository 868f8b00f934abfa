package knowledge

import (
	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// What the sheets of bolted work start from. A shop that uses other bolts works
// the calculation by itself with them.
const (
	usualScrew    = "M8" // of a captured sleeve
	usualScrews   = 3
	usualPlate    = "M20" // of a bolted-on plate, two by two
	usualPlateMM  = 20    // its diameter
	usualGrade    = "8.8"
	pitchInBolts  = 3.0 // bolt diameters between bolts
	edgeInBolts   = 1.5 // bolt diameters to an edge
	awayInBolts   = 3.0 // bolt diameters from the nearest edge of the ear to the middle of the bolts
	boltsEachWay  = 2
	shareOfThrust = 0.2 // thrust of a pin that slides endways under its load, dry
)

func count(n float64) worked.Value {
	return worked.Value{Quantity: quantity.Quantity{Value: n, Kind: quantity.Count}}
}

// thrust is what a pin drags along when it slides endways under its load: nobody
// measures side thrust, and this is the most that friction can pass on.
func (t *taker) thrust() worked.Value {
	load := t.take("pin_load")
	return worked.Value{Quantity: quantity.Quantity{Value: shareOfThrust * load.Quantity.Value, Kind: quantity.Force}}
}

// retentionPlan asks whether the fit alone keeps the sleeve from turning and
// walking.
func retentionPlan(t *taker) (string, map[string]worked.Value) {
	in := map[string]worked.Value{
		"radial_load": t.take("pin_load"), "pin_diameter": t.take("finish_bore"), "seat_diameter": t.take("sleeve_bore"), "length": t.take("ear_width"),
	}
	if fit, ok := t.pressed(); ok {
		in["fit_pressure"] = fit["pressure_least"]
	}
	return "sleeve_retention", in
}

// shoulderPlan sizes the shoulder for the side play there is: that of the whole
// joint where it was measured, else the gap beside this ear.
func shoulderPlan(t *taker) (string, map[string]worked.Value) {
	ear, sleeve := t.metal("material"), t.metal(SleeveMaterial)
	bore, width := t.take("sleeve_bore"), t.take("limit.shoulder_width")
	in := map[string]worked.Value{
		"thrust": t.thrust(), "finish_bore": t.take("finish_bore"), "sleeve_od": bore,
		"flange_od": lengthValue(bore.Quantity.Value + 2*width.Quantity.Value), "counterface_bore": bore,
		"sleeve_yield": sleeve.yield, "face_yield": ear.strength,
	}
	if play, ok := t.joint["side_play_total"]; ok {
		in["side_play_total"] = play
		if shoulders, ok := t.joint["shoulders"]; ok {
			in["shoulders"] = shoulders
		}
	} else {
		in["side_play_total"] = t.take("side_clearance")
	}
	if len(t.missing) == 0 && t.failed == nil {
		chamfer, err := work("housing_leadin_chamfer", map[string]worked.Value{"bore_diameter": bore})
		t.failed = firstOf(t.failed, err)
		lead, _ := chamfer.Output("chamfer_width")
		in["counterface_bore"] = lengthValue(bore.Quantity.Value + 2*lead.Quantity.Value)
	}
	return "shoulder", in
}

// capturePlan holds a sleeve by screws half in the sleeve and half in the ear.
func capturePlan(t *taker) (string, map[string]worked.Value) {
	ear, sleeve := t.metal("material"), t.metal(SleeveMaterial)
	weaker := ear.strength
	if sleeve.yield.Quantity.Value < weaker.Quantity.Value {
		weaker = sleeve.yield
	}
	reverses := "yes" // while nobody knows better
	if way, ok := t.joint["load_direction"]; ok && way.Word != "both_ways" {
		reverses = "no"
	}
	in := map[string]worked.Value{
		"way": {Word: "joint_line"}, "radial_load": t.take("pin_load"), "pin_diameter": t.take("finish_bore"), "seat_diameter": t.take("sleeve_bore"),
		"size": {Word: usualScrew}, "grade": {Word: usualGrade}, "screws": count(usualScrews), "contact_length": t.take("limit.capture_screw_length"),
		"weaker_yield": weaker, "ear_metal": {Word: t.steelOrIron()}, "load_reverses": {Word: reverses},
	}
	for input, fact := range map[string]string{"land": "capture_land", "thread_depth": "thread_depth"} {
		if v, ok := t.joint[fact]; ok {
			in[input] = v
		}
	}
	return "bolt_capture", in
}

func (t *taker) steelOrIron() string {
	switch t.take("material").Word {
	case "grey_iron", "ductile_iron", "malleable_iron":
		return "iron"
	}
	return "steel"
}

// reinforcementPlan bolts one plate to the outside with fitted through bolts, and
// bores it together with the ear.
func reinforcementPlan(t *taker) (string, map[string]worked.Value) {
	ear, plate := t.metal("material"), t.metalNamed("mild_steel")
	edge := t.take("edge_distance")
	pitch := lengthValue(pitchInBolts * usualPlateMM)
	return "bolted_reinforcement", map[string]worked.Value{
		"pin_load": t.take("pin_load"), "bore": t.take("finish_bore"), "bore_finish": {Word: "together"},
		"ear_thickness": t.take("ear_width"), "ear_e": ear.elastic, "ear_yield": ear.strength, "ear_metal": {Word: t.steelOrIron()},
		"plate_thickness": t.take("limit.plate_thickness"), "plates": count(1), "plate_yield": plate.yield,
		"columns": count(boltsEachWay), "rows": count(boltsEachWay), "column_pitch": pitch, "row_pitch": pitch,
		"eccentricity":  lengthValue(edge.Quantity.Value + awayInBolts*usualPlateMM),
		"edge_distance": lengthValue(edgeInBolts * usualPlateMM), "size": {Word: usualPlate}, "grade": {Word: usualGrade},
		"joint": {Word: "fitted"}, "fastening": {Word: "through"},
	}
}
