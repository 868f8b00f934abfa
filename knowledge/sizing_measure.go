package knowledge

import "boremend/knowledge/worked"

// Readings are the entries of a Joint that hold measurements in the bore, laid
// out by depth and clock angle: all clock angles at the first depth, then all at
// the next.
const (
	DiameterDepths = "diameter_depths"
	DiameterClocks = "diameter_clocks"
	Diameters      = "diameters"
	RadiusClocks   = "radius_clocks"
	Radii          = "radii"
)

// Measured lists the sheets that say what the readings of a joint tell.
func Measured(joint Joint) []string {
	var names []string
	if _, ok := joint[Diameters]; ok {
		names = append(names, "bore_from_diameters")
	}
	if _, ok := joint[Radii]; ok {
		names = append(names, "radial_cleanup")
	}
	return names
}

func boreFromDiametersPlan(t *taker) (string, map[string]worked.Value) {
	in := map[string]worked.Value{"depth": t.take(DiameterDepths), "clock": t.take(DiameterClocks), "diameter": t.take(Diameters)}
	if original, ok := t.joint["finish_bore"]; ok {
		in["original_diameter"] = original
	}
	return "bore_from_diameters", in
}

func radialCleanUpPlan(t *taker) (string, map[string]worked.Value) {
	in := map[string]worked.Value{"original_diameter": t.take("finish_bore"), "clock": t.take(RadiusClocks), "radius": t.take(Radii)}
	t.limit(in, "stock_per_side", "clean_up")
	return "radial_cleanup", in
}

// fitUncertaintyPlan asks whether the gauges can vouch for the interference: a
// press that drowns in the uncertainty of its own measurement is no press.
func fitUncertaintyPlan(t *taker) (string, map[string]worked.Value) {
	bore, press := t.take("sleeve_bore"), t.take("press_interference")
	if least, ok := t.joint[AsBoredLeast]; ok {
		bore = lengthValue((least.Quantity.Value + t.take(AsBoredMost).Quantity.Value) / 2)
	}
	return "uncertainty_of_fit", map[string]worked.Value{
		"bore": bore, "bore_expanded": t.take("limit.gauge_bore"),
		"sleeve": lengthValue(bore.Quantity.Value + press.Quantity.Value), "sleeve_expanded": t.take("limit.gauge_sleeve"),
	}
}
