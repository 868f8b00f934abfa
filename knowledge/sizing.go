package knowledge

import (
	"fmt"
	"slices"
	"sort"
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge/fit"
	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// Joint is what is known of one bore when it comes to sizing: facts by name,
// and limits as limit.NAME. What is missing is not known.
type Joint map[string]worked.Value

// SleeveMaterial is the entry of a Joint that names the material of the sleeve.
const SleeveMaterial = "sleeve_material"

// UsualSleeve is the material taken where none is named: the softer bar steels
// yield at their bore under a usual press.
const UsualSleeve = "bush_4140_qt"

// plans says how each sheet that sizes a repair takes its inputs from a joint.
// The names are those of the calculations.
var plans = map[string]func(*taker) (string, map[string]worked.Value){
	"clean_up_bore":    cleanUpBorePlan,
	"strength_kept":    strengthKeptPlan,
	"strength_factor":  strengthFactorPlan,
	"sleeve_size":      sleeveSizePlan,
	"press_fit":        pressFitPlan,
	"haz_hardness":     hazHardnessPlan,
	"weld_fill_mass":   weldFillPlan,
	"bearing_pressure": bearingPressurePlan,
}

// Sizes lists the sheets that Size can work.
func Sizes() []string {
	names := make([]string, 0, len(plans))
	for name := range plans {
		names = append(names, name)
	}
	sort.Strings(names)
	return names
}

// Size works the named sheet for a joint. Where something is missing the error
// says what; where an input lies outside a formula's range it says that.
func Size(name string, joint Joint) (worked.Sheet, error) {
	plan, ok := plans[name]
	if !ok {
		return worked.Sheet{}, fmt.Errorf("%s is not a sheet that sizes a repair (there are %s)", name, strings.Join(Sizes(), ", "))
	}
	t := &taker{joint: joint}
	calculation, inputs := plan(t)
	if err := t.err(name); err != nil {
		return worked.Sheet{}, err
	}
	c, ok := Find(calculation)
	if !ok {
		return worked.Sheet{}, fmt.Errorf("the catalogue has no calculation %s", calculation)
	}
	sheet, err := c.Run(inputs)
	sheet.Warnings = append(sheet.Warnings, t.notes...)
	return sheet, err
}

// taker takes values out of a joint and notes what it does not find.
type taker struct {
	joint   Joint
	missing []string
	notes   []string
	failed  error
}

func (t *taker) err(name string) error {
	if len(t.missing) > 0 {
		are := "is"
		if len(t.missing) > 1 {
			are = "are"
		}
		return &worked.Refusal{Input: name, Says: fmt.Sprintf("needs %s, which %s not known", strings.Join(t.missing, ", "), are)}
	}
	return t.failed
}

// take returns a fact that must be known.
func (t *taker) take(fact string) worked.Value {
	v, ok := t.joint[fact]
	if !ok && !slices.Contains(t.missing, fact) {
		t.missing = append(t.missing, fact)
	}
	return v
}

// limit adds an input from a limit of the rulebook, where there is one; the
// calculation's own default holds otherwise.
func (t *taker) limit(inputs map[string]worked.Value, input, limit string) {
	if v, ok := t.joint["limit."+limit]; ok {
		inputs[input] = v
	}
}

func lengthValue(mm float64) worked.Value {
	return worked.Value{Quantity: quantity.Quantity{Value: mm, Kind: quantity.Length}}
}

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

func strengthFactorPlan(t *taker) (string, map[string]worked.Value) {
	ear := t.metal("material")
	return "strength_factor", map[string]worked.Value{
		"pin_load": t.take("pin_load"), "bore": t.take("sleeve_bore"), "pin_diameter": t.take("sleeve_bore"),
		"ear_width": t.take("ear_width"), "edge_distance": t.take("edge_distance"),
		"yield_strength": ear.yield, "tensile_strength": ear.tensile,
		"design_factor": {Quantity: quantity.Quantity{Value: 2, Kind: quantity.Ratio}},
	}
}

func sleeveSizePlan(t *taker) (string, map[string]worked.Value) {
	return "sleeve_size", map[string]worked.Value{
		"seat_diameter": t.take("sleeve_bore"), "interference": t.take("press_interference"), "sleeve_id": t.take("finish_bore"),
	}
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

func firstOf(a, b error) error {
	if a != nil {
		return a
	}
	return b
}

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

// weldFillPlan fills the bore from where it comes clean to what is left for the
// finishing cut.
func weldFillPlan(t *taker) (string, map[string]worked.Value) {
	finish, cut := t.take("finish_bore"), t.take("limit.weld_finish_cut")
	return "weld_fill_mass", map[string]worked.Value{
		"bore_before": t.take("clean_up_bore"), "length": t.take("ear_width"),
		"bore_after": lengthValue(finish.Quantity.Value - 2*cut.Quantity.Value),
	}
}

func bearingPressurePlan(t *taker) (string, map[string]worked.Value) {
	return "bearing_pressure", map[string]worked.Value{
		"force": t.take("pin_load"), "diameter": t.take("finish_bore"), "length": t.take("ear_width"),
	}
}

// metal is what the sheets need of a material, as their inputs take it.
type metal struct {
	elastic, poisson, yield, tensile, strength, expansion worked.Value
	breaks, treatment, chills                             string
}

// metal looks up the material that a fact names: a class of joint material, or
// the grade of a sleeve.
func (t *taker) metal(fact string) metal {
	word := t.take(fact).Word
	if word == "" {
		return metal{}
	}
	look := material.OfClass
	if fact == SleeveMaterial {
		look = material.Named
	}
	m, err := look(word)
	switch {
	case err != nil:
		t.failed = firstOf(t.failed, &worked.Refusal{Input: fact, Says: err.Error()})
		return metal{}
	case m.Strength == nil:
		t.failed = firstOf(t.failed, &worked.Refusal{Input: fact, Says: "the strength of " + m.Title + " is not known"})
		return metal{}
	}
	t.note(fact, m)
	ratio := func(v float64, kind quantity.Kind) worked.Value {
		return worked.Value{Quantity: quantity.Quantity{Value: v, Kind: kind}}
	}
	out := metal{
		elastic: ratio(m.Elastic.EMPa(), quantity.Stress), poisson: ratio(m.Elastic.Poisson, quantity.Ratio),
		yield: ratio(m.Strength.YieldMPa, quantity.Stress), tensile: ratio(m.Strength.TensileMPa, quantity.Stress),
		expansion: ratio(m.Physical.ExpansionPerK, quantity.Expansion),
		breaks:    "ductile", treatment: treatments[word], chills: "carbon_steel",
	}
	out.strength = out.yield
	if m.Brittle {
		out.breaks, out.strength = "brittle", out.tensile
	}
	if out.treatment == "" {
		out.treatment = "plain"
	}
	if m.Family == "bronze" {
		out.chills = "bronze"
	}
	return out
}

// treatments are the heat treatments that heating must not undo. Alloy castings
// and forgings are taken as quenched and tempered, which many are.
var treatments = map[string]string{
	"qt_steel": "quenched_tempered", "cast_steel_alloy": "quenched_tempered", "forged_alloy": "quenched_tempered",
}

// note says what a material stands for and which of its figures come from
// memory.
func (t *taker) note(fact string, m material.Material) {
	text := fmt.Sprintf("%s taken as %s: strength %s (%s, %s).", strings.ReplaceAll(fact, "_", " "), m.Title, m.Strength.Basis, m.Strength.Source, m.Strength.HowKnown)
	if m.Elastic.HowKnown != material.Read {
		text += fmt.Sprintf(" Modulus and Poisson's ratio %s.", m.Elastic.HowKnown)
	}
	if m.Physical.HowKnown != material.Read {
		text += fmt.Sprintf(" Expansion %s.", m.Physical.HowKnown)
	}
	if m.Note != "" {
		text += " " + m.Note
	}
	t.notes = append(t.notes, strings.ToUpper(text[:1])+text[1:])
}

// SleeveMaterials lists the grades that a sleeve can be made of.
func SleeveMaterials() []string {
	all, err := material.All()
	if err != nil {
		return nil // every lookup of a material reports it
	}
	var names []string
	for _, m := range all {
		if m.Strength != nil && m.Strength.YieldMPa > 0 && (m.Family == "steel" || m.Family == "bronze") {
			names = append(names, m.Name)
		}
	}
	return names
}
