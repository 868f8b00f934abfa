package explain

import (
	"fmt"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// WhatIf is the advice for one bore as found, beside that with other facts.
type WhatIf struct {
	Bore     string        `json:"bore"`
	Changes  []FactTurned  `json:"changes"`
	Before   engine.Chosen `json:"before"`
	After    engine.Chosen `json:"after"`
	Changed  bool          `json:"changed"` // another method is advised
	Turned   []RuleTurned  `json:"turned"`
	Methods  []Standings   `json:"methods"`
	Follows  []FactTurned  `json:"follows"`  // worked-out facts that follow
	Contrary []string      `json:"contrary"` // facts that cannot both be true
}

// FactTurned is one fact before and after, as people read it.
type FactTurned struct {
	Fact   string `json:"fact"`
	Before any    `json:"before"` // null while unknown
	After  any    `json:"after"`
	Unit   string `json:"unit"`
	From   string `json:"from_text"`
	To     string `json:"to_text"`
}

// RuleTurned is one rule that comes out differently.
type RuleTurned struct {
	Rule   string   `json:"rule"`
	Effect string   `json:"effect"`
	For    []string `json:"for"`
	Before string   `json:"before"`
	After  string   `json:"after"`
	Text   string   `json:"text"` // with the values after the change
}

// Standings is where a method stands before and after.
type Standings struct {
	Method string   `json:"method"`
	Title  string   `json:"title"`
	Before Standing `json:"before"`
	After  Standing `json:"after"`
}

// Standing is a verdict with its points.
type Standing struct {
	Verdict string  `json:"verdict"`
	Points  float64 `json:"points"`
}

// Changes is what the words of a command line make of some facts.
type Changes struct {
	findings engine.Findings
	slots    []int
}

// ReadChanges reads words such as wall_now=9 mm, in every notation that a job
// file knows; lengths carry their unit. Problems name the words by their number,
// as lines of source.
func ReadChanges(book *engine.Rulebook, source string, words []string) (Changes, error) {
	var text strings.Builder
	for _, word := range words {
		name, value, found := strings.Cut(word, "=")
		if !found {
			return Changes{}, document.Problems{{File: source, Line: 1, Column: 1,
				Says: fmt.Sprintf("%q changes nothing", word), Remedy: "write fact=value"}}
		}
		fmt.Fprintf(&text, "%s: %s\n", scalar(strings.TrimSpace(name)), scalar(strings.TrimSpace(value)))
	}
	f := document.Parse(source, []byte(text.String()))
	c := Changes{findings: book.ReadFindings(f, f.Root, "")}
	for key := range f.Pairs(f.Root) {
		c.slots = append(c.slots, book.Fact(key.Value))
	}
	return c, f.Problems().Err()
}

// scalar writes a word as a line of YAML that reads back as the same text.
func scalar(word string) string {
	text, err := yaml.Marshal(&yaml.Node{Kind: yaml.ScalarNode, Style: yaml.DoubleQuotedStyle, Value: word})
	if err != nil {
		return `""`
	}
	return strings.TrimSpace(string(text))
}

// Apply returns the findings with the changes made; a fact changed to unknown
// is left out.
func (c Changes) Apply(found engine.Findings) engine.Findings {
	var out engine.Findings
	for _, f := range found {
		if !contains(c.slots, f.Fact) {
			out = append(out, f)
		}
	}
	for _, f := range c.findings {
		out = out.With(f)
	}
	return out
}

func contains(slots []int, slot int) bool {
	for _, s := range slots {
		if s == slot {
			return true
		}
	}
	return false
}

// WhatIf advises on a bore as found and as changed, and lists what turned.
func (c Changes) WhatIf(book *engine.Rulebook, bore string, found engine.Findings, units quantity.System) WhatIf {
	changed := c.Apply(found)
	before, after := book.Explain(bore, found, units), book.Explain(bore, changed, units)
	w := WhatIf{Bore: bore, Before: before.Chosen, After: after.Chosen, Changed: before.Chosen.Method != after.Chosen.Method,
		Changes: []FactTurned{}, Turned: rulesTurned(before, after), Methods: standings(before, after), Follows: []FactTurned{}, Contrary: []string{}}
	for slot, f := range book.Facts {
		was, is := before.Facts[f.Name], after.Facts[f.Name]
		turned := FactTurned{f.Name, was.Value, is.Value, f.Unit(), shown(was), shown(is)}
		switch {
		case contains(c.slots, slot):
			w.Changes = append(w.Changes, turned)
		case was.Value != is.Value:
			w.Follows = append(w.Follows, turned)
		}
	}
	book.CheckTogether(changed, units, func(_ *engine.Fact, says string) { w.Contrary = append(w.Contrary, says) })
	return w
}

func shown(f engine.FactShown) string {
	if f.Value == nil {
		return "unknown"
	}
	return f.Text
}

func rulesTurned(before, after engine.Advice) []RuleTurned {
	turned := []RuleTurned{}
	for i, was := range before.Trace {
		if is := after.Trace[i]; was.Outcome != is.Outcome {
			turned = append(turned, RuleTurned{is.Rule, is.Effect, is.For, was.Outcome, is.Outcome, is.Text})
		}
	}
	return turned
}

// standings pairs the methods, in the order in which they stood before.
func standings(before, after engine.Advice) []Standings {
	pairs := []Standings{}
	for _, was := range before.Methods {
		for _, is := range after.Methods {
			if is.Method == was.Method {
				pairs = append(pairs, Standings{was.Method, was.Title, Standing{was.Verdict, was.Known}, Standing{is.Verdict, is.Known}})
			}
		}
	}
	return pairs
}
