package knowledge

import (
	"boremend/knowledge/fit"
	"boremend/knowledge/worked"
)

func sleeveSizePlan(t *taker) (string, map[string]worked.Value) {
	return "sleeve_size", map[string]worked.Value{
		"seat_diameter": t.take("sleeve_bore"), "interference": t.take("press_interference"), "sleeve_id": t.take("finish_bore"),
	}
}

// The entries of a Joint that hold the bore as it came out: the smallest and the
// largest diameter read after the cut.
const (
	AsBoredLeast = "as_bored_least"
	AsBoredMost  = "as_bored_most"
)

// turnedSleevePlan turns the sleeve to the bore as it came out, or before the
// cut to the bore as planned, and adds back what pressing will close.
func turnedSleevePlan(t *taker) (string, map[string]worked.Value) {
	in := map[string]worked.Value{
		"bore_least": t.take("sleeve_bore"), "bore_most": t.take("sleeve_bore"),
		"interference": t.take("press_interference"), "finish_bore": t.take("finish_bore"),
	}
	for input, entry := range map[string]string{"bore_least": AsBoredLeast, "bore_most": AsBoredMost} {
		if v, ok := t.joint[entry]; ok {
			in[input] = v
		}
	}
	t.limit(in, "hone_allowance", "hone_allowance")
	if fit, ok := t.pressed(); ok {
		in["closure"] = fit["most_closure_diametral"]
	}
	return "turned_sleeve", in
}

// pressed works the press fit and returns its results by name.
func (t *taker) pressed() (map[string]worked.Value, bool) { return t.results(pressFitPlan) }

// results works a sheet that another builds on, and returns its results by name.
func (t *taker) results(plan func(*taker) (string, map[string]worked.Value)) (map[string]worked.Value, bool) {
	calculation, in := plan(t)
	if len(t.missing) > 0 || t.failed != nil {
		return nil, false
	}
	sheet, err := work(calculation, in)
	t.failed = firstOf(t.failed, err)
	results := map[string]worked.Value{}
	for _, o := range sheet.Outputs {
		results[o.Name] = o.Value
	}
	return results, err == nil
}

// pressFitPlan presses a sleeve that is turned to its bore, of the metal named.
func pressFitPlan(t *taker) (string, map[string]worked.Value) {
	ear, sleeve := t.metal("material"), t.metal(SleeveMaterial)
	in := map[string]worked.Value{
		"seat_diameter": t.take("sleeve_bore"), "length": t.take("ear_width"), "sleeve_id": t.take("finish_bore"),
		"edge_wall": t.take("wall_after_sleeve"), "ear_radius": t.take("edge_distance"),
		"ear_e": ear.elastic, "ear_nu": ear.poisson, "ear_metal": {Word: ear.breaks}, "ear_strength": ear.strength,
		"ear_alpha": ear.expansion, "ear_treatment": {Word: ear.treatment},
		"sleeve_e": sleeve.elastic, "sleeve_nu": sleeve.poisson, "sleeve_yield": sleeve.yield,
		"sleeve_alpha": sleeve.expansion, "sleeve_metal": {Word: sleeve.chills},
	}
	interference := t.take("press_interference")
	if len(t.missing) == 0 {
		size, err := fit.SleeveSize(fit.SleeveSizeInputs{
			SeatDiameterMM: in["seat_diameter"].Quantity.Value, InterferenceMM: interference.Quantity.Value, SleeveIDMM: in["sleeve_id"].Quantity.Value,
		})
		t.failed = firstOf(t.failed, err)
		in["interference_least"], in["interference_most"] = lengthValue(size.InterferenceLeast), lengthValue(size.InterferenceMost)
	}
	return "press_fit", in
}

// coiningPlan holds the pressure under the pin against what the sleeve stands.
func coiningPlan(t *taker) (string, map[string]worked.Value) {
	sleeve := t.metal(SleeveMaterial)
	bore, finish := t.take("sleeve_bore"), t.take("finish_bore")
	in := map[string]worked.Value{
		"sleeve_yield": sleeve.yield, "finish_bore": finish,
		"sleeve_wall": lengthValue((bore.Quantity.Value - finish.Quantity.Value) / 2),
	}
	if contact, ok := t.results(contactPlan); ok {
		in["peak_pressure"] = contact["peak"]
	}
	return "sleeve_coining", in
}
