package paper

import (
	"slices"
	"strconv"
	"strings"

	"boremend/engine"
)

// hold is a point where the work stops until somebody has signed.
type hold struct {
	name, what string
	forWhat    []string // methods or groups that it is for; none: all
}

// Hold points of the trade; common practice, no source.
var holdPoints = []hold{
	{"H1", "Material proved, and tested for cracks", nil},
	{"H2", "Axis agreed, and written down", []string{"alters", "shop_casting"}},
	{"H3", "After the clean-up cut: round, no crack, wall measured", []string{"cuts", "shop_casting"}},
	{"H4", "Preheat and weld parameters written down", []string{"welds"}},
	{"H5", "Crack test after the waiting time", []string{"welds"}},
	{"H6", "Sizes as left", nil},
	{"H7", "Grease seen at both ends; bolts at their torque and marked", nil},
	{"H8", "Moved without load, then under load", nil},
}

// holds lists the hold points with boxes and room to sign.
func (j Job) holds(w *writer, b Bore) {
	w.heading("Hold points")
	var rows [][]string
	for _, h := range holdPoints {
		row := []string{h.name, h.what, "", "", ""}
		if !j.applies(b, h.forWhat) {
			row = []string{h.name, h.what, "not here", "–", "–"}
		}
		rows = append(rows, row)
	}
	w.form([]string{"", "The work stops until", "Good", "Signed", "Date, time"}, rows)
}

func (j Job) applies(b Bore, forWhat []string) bool {
	return len(forWhat) == 0 || j.belongs(b.Advice.Chosen.Method, forWhat)
}

// stage is a part of the work: the steps of the rulebook that fall into it, what
// it sizes, and the hold points that end it.
type stage struct {
	title   string
	steps   []string
	forWhat []string
	plan    []plan
	figures []string // by the names of the drawings
	write   []string // to be written down in it
	holds   []string
}

// plan is the sheets of one part of the work.
type plan struct {
	title        string
	calculations []string
}

var stagesOfWork = []stage{
	{title: "Before anything", steps: []string{"all", "choose", "before anything"}},
	{title: "Set up and strip", steps: []string{"set up", "strip", "torch removal of bush", "strip after overheating", "remove", "transport"}},
	{title: "Clean, measure, test", steps: []string{"clean", "inspect"}, holds: []string{"H1", "H2"},
		plan: []plan{{"Readings", []string{"bore_from_diameters", "radial_cleanup"}}}},
	{title: "Cut", steps: []string{"bore", "face", "gouge", "grind"}, forWhat: []string{"cuts", "shop_casting"}, holds: []string{"H3"},
		figures: []string{"ear_after"},
		plan:    []plan{{"Cut plan", []string{"clean_up_bore", "bar_clearance", "boring_setup", "tack_group", "housing_leadin_chamfer"}}},
		write:   []string{"Clean-up cut: size reached, clean all round?", "Thinnest wall after it, and where", "Passes: tool, revolutions, feed, size after each"}},
	{title: "Weld", steps: []string{"preheat", "weld", "weld turning", "torch", "cool"}, forWhat: []string{"welds"}, holds: []string{"H4", "H5"},
		figures: []string{"build_up"},
		plan:    []plan{{"Weld plan", []string{"haz_hardness", "haz_hardness_typical", "build_up", "bead_layer", "preheat_energy", "interpass_rise", "ndt_hold_code"}}},
		write:   []string{"Filler, size and lot", "Preheat reached, where measured, hottest between beads", "Volts, amperes, travel, layers", "Last bead: date and time; wrapped until", "Crack test: how, when, by whom, result"}},
	{title: "Sleeve", steps: []string{"travel", "shrink", "press"}, forWhat: []string{"sleeve"},
		figures: []string{"section", "sleeve"},
		plan: []plan{{"Sleeve", []string{"turned_sleeve", "sleeve_size", "uncertainty_of_fit", "shoulder"}},
			{"Press plan", []string{"press_fit", "slip_assembly", "sleeve_retention"}}},
		write: []string{"Sleeve OD and bore before, part at what temperature", "Pressed with what force, or chilled to what temperature", "Sleeve bore after, in place; feeler at the shoulder"}},
	{title: "Bolts", forWhat: []string{"sleeve_bolt_capture", "bolt_on_reinforcement"},
		figures: []string{"screws", "plate"},
		plan:    []plan{{"Bolts", []string{"bolt_capture", "bolted_reinforcement"}}},
		write:   []string{"Bolts: size, class, lot", "Torque, lock, marks painted"}},
	{title: "Refit", steps: []string{"refit"}, holds: []string{"H6", "H7"},
		write: []string{"Pin slides by hand? New pin, bush, seals", "Fresh grease seen at both ends"}},
	{title: "Release", steps: []string{"release", "first checks"}, holds: []string{"H8"}},
}

// stages lays the work out in its order: cautions first, then sizes, then what
// is written down, then the hold points.
func (j Job) stages(w *writer, b Bore, said map[string]bool) {
	w.heading("The work, step by step")
	w.para("Every caution stands where it first bites, at the first bore that it is for. It holds until the job is done.")
	number := 0
	for _, s := range append(slices.Clone(stagesOfWork), j.otherSteps()) {
		cautions, again := b.Sized.cautionsAt(s.steps, said)
		if !j.applies(b, s.forWhat) && len(cautions) == 0 || s.title == "" {
			continue
		}
		number++
		w.subheading(stageTitle(number, s, j.applies(b, s.forWhat)))
		for _, c := range cautions {
			w.note(c.Danger, atSteps(c, s.steps), cautionText(c)+" ["+c.Caution+"]")
		}
		if len(again) > 0 {
			w.small("Mind again: " + strings.Join(again, ", ") + ".")
		}
		if !j.applies(b, s.forWhat) {
			continue
		}
		for _, p := range s.plan {
			j.plan(w, b.Sized, p)
		}
		w.figures(b, s.figures...)
		if len(s.write) > 0 {
			w.add(Blanks{s.write})
		}
		j.holdsHere(w, b, s.holds)
	}
	j.strength(w, b)
}

func stageTitle(number int, s stage, applies bool) string {
	title := "Step " + strconv.Itoa(number) + ". " + s.title
	if !applies {
		title += " (should it come to it)"
	}
	return title
}

// otherSteps is a stage for the steps of a rulebook that no stage names.
func (j Job) otherSteps() stage {
	var other []string
	for _, step := range j.Book.Steps {
		if !slices.ContainsFunc(stagesOfWork, func(s stage) bool { return slices.Contains(s.steps, step) }) {
			other = append(other, step)
		}
	}
	if len(other) == 0 {
		return stage{}
	}
	return stage{title: "Other steps", steps: other}
}

// cautionsAt picks the cautions that bite at some of the steps: those that have
// not been said before, and the names of those that have.
func (s Sized) cautionsAt(steps []string, said map[string]bool) (now []engine.CautionShown, again []string) {
	for _, c := range s.Cautions {
		switch {
		case !slices.ContainsFunc(c.At, func(at string) bool { return slices.Contains(steps, at) }) && (len(c.At) > 0 || !slices.Contains(steps, "all")):
		case said[c.Caution]:
			again = append(again, c.Caution)
		default:
			said[c.Caution] = true
			now = append(now, c)
		}
	}
	return now, again
}

// atSteps calls a caution out, with the steps among those given at which it bites.
func atSteps(c engine.CautionShown, among []string) string {
	var at []string
	for _, step := range among {
		if slices.Contains(c.At, step) && step != "all" {
			at = append(at, step)
		}
	}
	if len(at) == 0 {
		return gradeWords[c.Danger]
	}
	return gradeWords[c.Danger] + " at: " + strings.Join(at, ", ")
}

// holdsHere are the hold points that end a stage.
func (j Job) holdsHere(w *writer, b Bore, names []string) {
	var items []string
	for _, h := range holdPoints {
		if slices.Contains(names, h.name) && j.applies(b, h.forWhat) {
			items = append(items, "HOLD "+h.name+": "+h.what+". Signed: ____________________")
		}
	}
	w.checks(items)
}
