package knowledge

import (
	"fmt"
	"slices"
	"sort"
	"strings"

	"boremend/engine/quantity"
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

// plans says how each sheet that sizes a repair takes its inputs from a joint,
// and which calculation it is. Most bear the name of their calculation; some work
// one calculation on another bore.
var plans = map[string]func(*taker) (string, map[string]worked.Value){
	"bore_from_diameters": boreFromDiametersPlan,
	"radial_cleanup":      radialCleanUpPlan,
	"clean_up_bore":       cleanUpBorePlan,
	"uncertainty_of_fit":  fitUncertaintyPlan,

	"turned_sleeve":   turnedSleevePlan,
	"sleeve_size":     sleeveSizePlan,
	"press_fit":       pressFitPlan,
	"lead_in_chamfer": chamferPlan,

	"strength_kept":          strengthKeptPlan,
	"strength_factor":        strengthFactorPlan,
	"strength_factor_as_new": strengthAsNewPlan,
	"strength_factor_now":    strengthNowPlan,
	"lug_load":               lugLoadPlan,
	"lug_load_as_new":        lugAsNewPlan,
	"press_and_load":         pressAndLoadPlan,
	"pin_plate_aisc":         aiscPlan,
	"bearing_pressure":       bearingPressurePlan,
	"contact_pressure":       contactPlan,
	"sleeve_coining":         coiningPlan,
	"pin_beam":               pinBeamPlan,

	"boring":          boringPlan,
	"boring_pre_weld": boringPreWeldPlan,
	"boring_weld":     boringWeldPlan,
	"bar_clearance":   barClearancePlan,
	"bearing_mount":   mountPlan,

	"sleeve_retention":     retentionPlan,
	"shoulder":             shoulderPlan,
	"bolt_capture":         capturePlan,
	"bolted_reinforcement": reinforcementPlan,

	"haz_hardness":   hazHardnessPlan,
	"build_up":       buildUpPlan,
	"bead_layer":     beadLayerPlan,
	"preheat_energy": preheatEnergyPlan,
	"interpass_rise": interpassRisePlan,
	"ndt_hold":       ndtHoldPlan,
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
	sheet, err := work(calculation, inputs)
	sheet.Warnings = append(sheet.Warnings, t.notes...)
	return sheet, err
}

// work carries a calculation of the catalogue out.
func work(calculation string, inputs map[string]worked.Value) (worked.Sheet, error) {
	c, ok := Find(calculation)
	if !ok {
		return worked.Sheet{}, fmt.Errorf("the catalogue has no calculation %s", calculation)
	}
	return c.Run(inputs)
}

// Missing is the refusal of a sheet for want of entries of its joint.
type Missing struct {
	worked.Refusal
	Facts []string // the entries, limit.NAME among them
}

// Unwrap lets a Missing be taken for the refusal that it is.
func (m *Missing) Unwrap() error { return &m.Refusal }

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
		says := fmt.Sprintf("needs %s, which %s not known", strings.Join(t.missing, ", "), are)
		return &Missing{worked.Refusal{Input: name, Says: says}, t.missing}
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

func firstOf(a, b error) error {
	if a != nil {
		return a
	}
	return b
}
