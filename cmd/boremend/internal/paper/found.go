package paper

import "boremend/engine/quantity"

// keyFindings are the facts that a customer is shown, in this order. Those
// marked must are named even while unknown, the others where they are known and
// not as they should be.
var keyFindings = []struct {
	fact string
	must bool
	fine string // the answer that need not be told
}{
	{"finish_bore", true, ""}, {"worn_max", true, ""}, {"wall_now", true, ""}, {"edge_distance", false, ""},
	{"material", true, ""}, {"material_proof", true, ""}, {"crack", true, ""},
	{"previous_repair", false, "none"}, {"ear_bent", false, "no"}, {"load_direction", false, ""}, {"shock", false, ""},
	{"axial_load", false, "none"}, {"lifts_people", true, "no"}, {"certified_structure", true, "none"}, {"manufacturer_position", false, "not_asked"},
	{"safety_critical", false, "none"},
}

// found tells what was found at a bore: in a sentence, and as a list.
func (j Job) found(w *writer, b Bore) {
	k := j.known(b.Advice)
	w.heading("What was found")
	w.para(k.inShort())
	var rows [][2]string
	for _, f := range keyFindings {
		text := k.text(f.fact)
		switch {
		case text == "" && !f.must, f.fine != "" && k.is(f.fact, f.fine):
			continue
		case text == "":
			text = "not known"
		case k.from(f.fact) == "assumed":
			text += " (assumed, not measured)"
		}
		rows = append(rows, [2]string{capital(k.means(f.fact)), text})
	}
	w.pairs(rows)
	w.figures(b, "ear_found", "wear")
	w.photos(b.Photos)
	if b.Cut != nil {
		w.para(j.asBored(*b.Cut))
	}
}

// inShort is the wear in one sentence.
func (k known) inShort() string {
	if !k.has("finish_bore") || !k.has("worn_max") {
		return ""
	}
	text := "The hole should be " + k.text("finish_bore") + ". It measures up to " + k.text("worn_max")
	if growth, ok := k.advice.Facts["wear_growth"].Value.(float64); ok && growth > 0 {
		text += ": " + k.text("wear_growth") + " too large"
	}
	if oval, ok := k.advice.Facts["out_of_round"].Value.(float64); ok && oval > 0 {
		text += ", and " + k.text("out_of_round") + " out of round"
	}
	text += "."
	switch {
	case k.is("worn_out", "yes"):
		text += " That is past the limit for a joint like this."
	case k.is("worn_out", "no"):
		text += " That is still within the limit for a joint like this."
	}
	return text
}

// asBored says how a bore came out.
func (j Job) asBored(c Cut) string {
	text := "Bored since then to " + j.length(c.LeastMM)
	if c.MostMM > c.LeastMM {
		text += " to " + j.length(c.MostMM)
	}
	if c.PlannedMM > 0 {
		text += "; planned were " + j.length(c.PlannedMM)
	}
	text += "."
	switch {
	case !c.StillStands:
		text += " STOP: that is beyond what this way allows. Advised now: " + c.AdviceAgain + "."
	case c.Beyond:
		text += " That is larger than planned. Advised for the hole as it is: " + c.AdviceAgain + "."
	}
	return text
}

func (j Job) length(mm float64) string {
	return quantity.Quantity{Value: mm, Kind: quantity.Length}.Format(j.Units)
}
