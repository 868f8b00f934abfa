package audit

import (
	"boremend/engine"
	"boremend/engine/quantity"
)

// Severity says how grave a finding is.
type Severity uint8

// The three severities.
const (
	Note     Severity = iota // worth a look; may well be meant
	Doubtful                 // most likely not what was meant
	Wrong                    // cannot be what was meant
)

// String returns the word of the JSON contract.
func (s Severity) String() string { return [...]string{"note", "doubtful", "wrong"}[s] }

// MarshalText writes the word.
func (s Severity) MarshalText() ([]byte, error) { return []byte(s.String()), nil }

// Finding is one thing that is wrong with a rulebook, or may be.
type Finding struct {
	Kind     string   `json:"kind"`
	Severity Severity `json:"severity"`
	About
	// Others are the rules that it also has to do with.
	Others []string `json:"others,omitempty"`
	Says   string   `json:"says"`
	// Witness is a joint that shows it, evaluated: these facts, the rest unknown.
	Witness []Shown `json:"witness,omitempty"`
}

// About is what a finding speaks of and where that stands: a rule, a fact, a
// limit, a method, a caution or a group. Column is 0 where the whole entry is
// meant.
type About struct {
	What   string `json:"what"`
	Name   string `json:"name"`
	File   string `json:"file"`
	Line   int    `json:"line"`
	Column int    `json:"column,omitempty"`
}

// key tells what is spoken of from everything else.
func (a About) key() string { return a.What + " " + a.Name }

// at points at a place inside the entry.
func (a About) at(line, column int) About {
	a.Line, a.Column = line, column
	return a
}

// Shown is a fact of a witness: its value in the canonical unit, and as a person
// reads it.
type Shown struct {
	Fact  string `json:"fact"`
	Value any    `json:"value"`
	Unit  string `json:"unit"`
	Text  string `json:"text"`
}

// Open is something that could neither be shown nor excluded within the effort
// allowed.
type Open struct {
	Kind string `json:"kind"`
	About
	Asks string `json:"asks"`
}

// Checked is what a check of a rulebook came to.
type Checked struct {
	Findings  []Finding `json:"findings"`
	Unsettled []Open    `json:"unsettled"`
	Stopped   bool      `json:"stopped"` // before everything was looked at
}

// Count tells how many findings there are of a severity.
func (c Checked) Count(s Severity) (n int) {
	for _, f := range c.Findings {
		if f.Severity == s {
			n++
		}
	}
	return n
}

func aboutRule(r *engine.Rule) About {
	return About{What: "rule", Name: r.Name, File: r.File, Line: r.Line}
}

func aboutCaution(c *engine.CautionNote) About {
	return About{What: "caution", Name: c.Name, File: c.File, Line: c.Line}
}

func aboutFact(f *engine.Fact) About {
	return About{What: "fact", Name: f.Name, File: f.File, Line: f.Line}
}

func aboutLimit(l *engine.Limit) About {
	return About{What: "limit", Name: l.Name, File: l.File, Line: l.Line}
}

func aboutMethod(m *engine.Method) About {
	return About{What: "method", Name: m.Name, File: m.File, Line: m.Line}
}

// shown lists findings as a witness.
func shown(b *engine.Rulebook, found engine.Findings, units quantity.System) []Shown {
	out := make([]Shown, 0, len(found))
	for _, f := range found {
		fact := b.Facts[f.Fact]
		out = append(out, Shown{fact.Name, fact.PlainValue(f.Value), fact.Unit(), fact.Show(f.Value, units)})
	}
	return out
}
