package paper

import (
	"boremend/engine"
	"boremend/engine/quantity"
)

// known looks up what is known of a bore, by the words of the rulebook.
type known struct {
	book   *engine.Rulebook
	advice engine.Advice
	units  quantity.System
}

func (j Job) known(a engine.Advice) known { return known{j.Book, a, j.Units} }

// means is the rulebook's description of a fact.
func (k known) means(fact string) string {
	if slot := k.book.Fact(fact); slot >= 0 {
		return reworded(k.book.Facts[slot].Means)
	}
	return plain(fact)
}

// meanings describes several facts.
func (k known) meanings(facts []string) []string {
	words := make([]string, len(facts))
	for i, f := range facts {
		words[i] = k.means(f)
	}
	return words
}

// text is a fact's value for people; empty while it is unknown.
func (k known) text(fact string) string {
	shown, ok := k.advice.Facts[fact]
	if !ok {
		return ""
	}
	if word, ok := shown.Value.(string); ok {
		if words, ok := answerWords[fact+" "+word]; ok {
			return words
		}
	}
	return reworded(shown.Text)
}

// is reports whether a fact is known to have the value, a word of its choices or
// yes or no.
func (k known) is(fact string, values ...string) bool {
	word, _ := k.advice.Facts[fact].Value.(string)
	for _, v := range values {
		if word == v {
			return true
		}
	}
	return false
}

// has reports whether anything is known of a fact.
func (k known) has(fact string) bool { _, ok := k.advice.Facts[fact]; return ok }

// giveOrTake is how far a measured fact may be off; empty where nothing is said.
func (k known) giveOrTake(fact string) string {
	shown, slot := k.advice.Facts[fact], k.book.Fact(fact)
	if slot < 0 || shown.GiveOrTake == 0 || k.book.Facts[slot].Sort != engine.Number {
		return ""
	}
	kind := k.book.Facts[slot].Kind
	if kind == quantity.Temperature {
		kind = quantity.TemperatureChange
	}
	return "± " + reworded(quantity.Quantity{Value: shown.GiveOrTake, Kind: kind}.Format(k.units))
}

// from says how a fact came to be known.
func (k known) from(fact string) string {
	shown := k.advice.Facts[fact]
	switch {
	case shown.From == engine.Assumed:
		return "assumed"
	case shown.From == engine.Readings:
		return "readings"
	case shown.From == engine.WorkedOut && len(shown.Assumes) > 0:
		return "worked out, in part from what was assumed"
	case shown.From == engine.WorkedOut:
		return "worked out"
	}
	return "found"
}

// answerWords puts the answers that a customer reads into plain words. An answer
// that is not here stands in the rulebook's word.
var answerWords = map[string]string{
	"crack none_tested":  "tested, none found",
	"crack none_seen":    "none seen, and not tested",
	"crack not_checked":  "not looked for",
	"crack cut_away":     "a crack, within the metal that the cut takes away",
	"crack edge_or_face": "a crack at the edge or the face",
	"crack into_bore":    "a crack into the hole",
	"crack through_ear":  "a crack right through the ear",

	"material_proof certificate": "a paper from the mill or the maker",
	"material_proof analysis":    "an analysis",
	"material_proof shop_tests":  "tests in the shop",
	"material_proof conflicting": "drawing and tests disagree",
	"material_proof guess":       "a guess",

	"material mild_steel":          "mild steel",
	"material hsla_steel":          "high-strength steel",
	"material qt_steel":            "quenched and tempered steel",
	"material cast_steel_weldable": "cast steel that takes weld",
	"material cast_steel_alloy":    "alloy cast steel",
	"material forged_alloy":        "forged alloy steel",
	"material other":               "something else",

	"load_direction toward_thin":  "toward the thinnest wall",
	"load_direction toward_thick": "toward the thick wall",
	"load_direction both_ways":    "both ways",

	"bore_role pin_fit":        "the pin stands still in this hole",
	"bore_role bearing_direct": "the pin turns in this hole",
	"bore_role bushing_seat":   "a bush sits in this hole",

	"certified_structure none":            "none",
	"certified_structure occasional_lift": "a lift chart for now and then",
	"certified_structure lifting":         "a load rating",
	"certified_structure rops_fops":       "a roll-over or falling-object frame",

	"manufacturer_position permits":          "agrees in writing",
	"manufacturer_position engineer_permits": "an engineer agrees in writing",
	"manufacturer_position silent":           "says nothing",
	"manufacturer_position forbids":          "forbids it",
	"manufacturer_position not_asked":        "not asked",

	"replacement_part stock":     "on the shelf",
	"replacement_part weeks":     "weeks away",
	"replacement_part none_made": "no longer made",

	"pin_retention none": "nothing",
	"grease_path none":   "no grease",
}
