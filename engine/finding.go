package engine

import (
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
	"boremend/engine/quantity"
)

// Origin says where the value of a fact comes from.
type Origin string

// The four origins.
const (
	Given     Origin = "given"
	Readings  Origin = "readings"
	WorkedOut Origin = "worked_out"
	Assumed   Origin = "assumed"
)

// Finding is what was found out about one fact. Value is in the canonical unit
// of a number, the index of a choice, or 1 and 0 for yes and no.
type Finding struct {
	Fact       int
	Value      float64
	GiveOrTake float64 // half-width in the canonical unit
	Origin     Origin
	Written    string
}

// Findings is all that was found at one bore, in the order of the facts. A
// fact that is missing is unknown.
type Findings []Finding

// With returns the findings with one added or replaced.
func (fs Findings) With(f Finding) Findings {
	out := slices.DeleteFunc(slices.Clone(fs), func(g Finding) bool { return g.Fact == f.Fact })
	out = append(out, f)
	slices.SortFunc(out, func(a, b Finding) int { return a.Fact - b.Fact })
	return out
}

// unknownWord is how a job says that a fact is not known.
const unknownWord = "unknown"

// ReadFindings decodes the facts of a job. bare is the unit of lengths that are
// written without one; it may be empty. What is wrong is reported to f; a fact
// that the job calls unknown gives no finding.
func (b *Rulebook) ReadFindings(f *document.File, n *yaml.Node, bare string) Findings {
	var found Findings
	for key, value := range f.Pairs(n) {
		if finding, ok := b.readFinding(f, key, value, bare); ok {
			found = append(found, finding)
		}
	}
	slices.SortFunc(found, func(a, b Finding) int { return a.Fact - b.Fact })
	return found
}

func (b *Rulebook) readFinding(f *document.File, key, value *yaml.Node, bare string) (Finding, bool) {
	slot, ok := b.AskedFact(f, key, key.Value)
	if !ok {
		return Finding{}, false
	}
	if b.Facts[slot].Kind != quantity.Length {
		bare = ""
	}
	return b.ReadFinding(f, slot, value, bare)
}

// AskedFact finds the fact of a name that stands at a node. A name of no fact,
// or of one that is worked out, is reported to f.
func (b *Rulebook) AskedFact(f *document.File, at *yaml.Node, name string) (slot int, ok bool) {
	if slot = b.Fact(name); slot < 0 {
		f.Report(at, document.DidYouMean(name, b.FactNames()), "unknown fact %q", name)
		return slot, false
	}
	if fact := b.Facts[slot]; fact.WorkedOut() {
		f.Report(at, "leave it out, and give the facts it follows from: "+fact.From, "%s is worked out and may not be given", fact.Name)
		return slot, false
	}
	return slot, true
}

// ReadFinding decodes the answer to one fact. bare is the unit of a number that
// is written without one; it may be empty. What is wrong is reported to f; a
// fact that is called unknown gives no finding.
func (b *Rulebook) ReadFinding(f *document.File, slot int, value *yaml.Node, bare string) (Finding, bool) {
	fact := b.Facts[slot]
	text, ok := f.Text(value)
	if !ok || text == unknownWord {
		return Finding{}, false
	}
	finding := Finding{Fact: slot, Origin: Given, Written: text}
	if fact.Sort == Number {
		return b.readNumber(f, fact, value, bare, finding)
	}
	finding.Value, ok = fact.ReadWord(f, value)
	return finding, ok
}

// ReadWord decodes a word of a choice, or yes or no, into the number that stands
// for it. What is wrong is reported to f.
func (fact *Fact) ReadWord(f *document.File, value *yaml.Node) (float64, bool) {
	if fact.Sort == Choice {
		word, ok := f.Choice(value, fact.Choices...)
		return float64(slices.Index(fact.Choices, word)), ok
	}
	switch text, _ := f.Text(value); text {
	case "yes", "true":
		return 1, true
	case "no", "false":
		return 0, true
	default:
		f.Report(value, "write yes, no or unknown", "%s cannot be %q", fact.Name, text)
		return 0, false
	}
}

func (b *Rulebook) readNumber(f *document.File, fact *Fact, value *yaml.Node, bare string, finding Finding) (Finding, bool) {
	reading, ok := f.Quantity(value, fact.Kind, bare)
	if !ok {
		return finding, false
	}
	if !fact.Takes(reading.Value) {
		f.Report(value, fact.rangeInWords()+", or unknown", "%s cannot be %s", fact.Name, strings.TrimSpace(finding.Written))
		return finding, false
	}
	finding.Value, finding.GiveOrTake = reading.Value, reading.GiveOrTake
	if !reading.HasGiveOrTake {
		finding.GiveOrTake = fact.GiveOrTake(reading.Value)
	}
	return finding, true
}

func (f *Fact) rangeInWords() string {
	low, high := quantity.Quantity{Value: f.Low, Kind: f.Kind}, quantity.Quantity{Value: f.High, Kind: f.Kind}
	return "between " + low.Format(quantity.Millimetre) + " and " + high.Format(quantity.Millimetre)
}

// CheckTogether reports findings that contradict each other: one that is below
// the fact that it must reach by more than both may be out. The other fact may
// be a worked-out one.
func (b *Rulebook) CheckTogether(found Findings, units quantity.System, report func(fact *Fact, says string)) {
	s := b.NewState()
	s.Load(found)
	s.CheckTogether(found, units, report)
}

// CheckTogether does so for a state that has loaded the findings.
func (s *State) CheckTogether(found Findings, units quantity.System, report func(fact *Fact, says string)) {
	b := s.book
	give := map[int]float64{}
	for _, f := range found {
		give[f.Fact] = f.GiveOrTake
	}
	for _, f := range found {
		fact := b.Facts[f.Fact]
		least := b.Fact(fact.AtLeast)
		if fact.AtLeast == "" || !s.known[least] || s.assumed[least] {
			continue
		}
		if v := s.number[least]; f.Value < v-f.GiveOrTake-give[least] {
			report(fact, fact.Name+" "+fact.Show(f.Value, units)+" is less than "+fact.AtLeast+" "+b.Facts[least].Show(v, units))
		}
	}
}
