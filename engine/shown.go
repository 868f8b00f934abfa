package engine

import (
	"math"
	"slices"
	"strconv"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
)

// ReadShown decodes the facts of a saved advice, as FactShown writes them, back
// into the findings that it rests on. What was worked out or assumed is left
// out: it follows again. What is wrong is reported to f.
func (b *Rulebook) ReadShown(f *document.File, n *yaml.Node) Findings {
	var found Findings
	for key, value := range f.Pairs(n) {
		fields := f.Fields(value, "value", "unit", "give_or_take", "from", "text", "assumes")
		if !f.Require(value, fields, "value", "unit", "give_or_take", "from") {
			continue
		}
		from, ok := f.Choice(fields["from"], string(Given), string(Readings), string(WorkedOut), string(Assumed))
		if !ok || from == string(WorkedOut) || from == string(Assumed) {
			continue
		}
		if finding, ok := b.readShown(f, key, fields); ok {
			finding.Origin = Origin(from)
			found = append(found, finding)
		}
	}
	slices.SortFunc(found, func(a, b Finding) int { return a.Fact - b.Fact })
	return found
}

func (b *Rulebook) readShown(f *document.File, key *yaml.Node, fields map[string]*yaml.Node) (Finding, bool) {
	slot := b.Fact(key.Value)
	if slot < 0 {
		f.Report(key, document.DidYouMean(key.Value, b.FactNames()), "the rulebook %q has no fact %q", b.Title, key.Value)
		return Finding{}, false
	}
	fact, finding := b.Facts[slot], Finding{Fact: slot}
	if fact.WorkedOut() {
		f.Report(key, "replay it under its own rulebook", "%s is worked out in %q and may not be given", fact.Name, b.Title)
		return Finding{}, false
	}
	var ok bool
	if finding.GiveOrTake, ok = plainNumber(f, fields["give_or_take"]); !ok {
		return Finding{}, false
	}
	if finding.GiveOrTake < 0 {
		f.Report(fields["give_or_take"], "save the advice anew", "a give-or-take cannot be %s", fields["give_or_take"].Value)
		return Finding{}, false
	}
	if unit := fields["unit"]; unit.Kind != yaml.ScalarNode || unit.Value != fact.Unit() || unit.Tag != "!!str" {
		f.Report(unit, "a saved advice has it in "+strconv.Quote(fact.Unit()), "%s cannot be in %q", fact.Name, unit.Value)
		return Finding{}, false
	}
	finding.Value, ok = fact.readShown(f, fields["value"])
	return finding, ok
}

// readShown decodes a value as PlainValue writes it.
func (fact *Fact) readShown(f *document.File, n *yaml.Node) (float64, bool) {
	switch fact.Sort {
	case Choice:
		word, ok := f.Choice(n, fact.Choices...)
		return float64(slices.Index(fact.Choices, word)), ok
	case YesNo:
		word, ok := f.Choice(n, "yes", "no")
		if word == "yes" {
			return 1, ok
		}
		return 0, ok
	}
	v, ok := plainNumber(f, n)
	if ok && !fact.Takes(v) {
		f.Report(n, fact.rangeInWords(), "%s cannot be %s %s", fact.Name, n.Value, fact.Unit())
		return 0, false
	}
	return v, ok
}

// plainNumber decodes a number of JSON, to the last bit.
func plainNumber(f *document.File, n *yaml.Node) (float64, bool) {
	v, err := strconv.ParseFloat(n.Value, 64)
	if n.Kind != yaml.ScalarNode || n.Tag != "!!float" || err != nil || math.IsInf(v, 0) {
		f.Report(n, "write a number", "here must stand a number that can be held")
		return 0, false
	}
	return v, true
}
