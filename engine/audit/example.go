package audit

import (
	"cmp"

	"boremend/engine"
	"boremend/engine/quantity"
)

// example is a joint as it is told, and as each of the books reads it.
type example struct {
	facts []FactAt
	found []engine.Findings
}

// example tells the joint as it stands.
func (j *joint) example() *example {
	e := &example{facts: j.told()}
	for _, v := range j.views {
		e.found = append(e.found, v.state.Findings())
	}
	return e
}

// compare says which of two examples is the simpler: fewer facts out of the
// ordinary, then fewer facts, then less to read.
func (e *example) compare(other *example) int {
	a, b := e.facts, other.facts
	return cmp.Or(outOfOrdinary(a)-outOfOrdinary(b), len(a)-len(b), lengthOf(a)-lengthOf(b))
}

func outOfOrdinary(facts []FactAt) (n int) {
	for _, f := range facts {
		if !f.Ordinary {
			n++
		}
	}
	return n
}

func lengthOf(facts []FactAt) (n int) {
	for _, f := range facts {
		n += len(f.Text)
	}
	return n
}

// FactAt is one known fact of an example.
type FactAt struct {
	Fact  string `json:"fact"`
	Value any    `json:"value"`
	Unit  string `json:"unit"`
	Text  string `json:"text"` // as a job file takes it
	// Ordinary: the value is needed, but is the one about which the rules have
	// least to say.
	Ordinary bool `json:"ordinary"`
}

// told lists the known facts.
func (j *joint) told() []FactAt {
	told := []FactAt{}
	for _, f := range j.facts {
		if !f.known {
			continue
		}
		at := FactAt{Fact: f.Name, Unit: f.Unit(), Ordinary: f.value == f.usual}
		switch f.Sort {
		case engine.Choice:
			at.Value, at.Text = f.words[int(f.value)], f.words[int(f.value)]
		case engine.YesNo:
			at.Value = f.PlainValue(f.value)
			at.Text = f.Show(f.value, quantity.Millimetre)
		default:
			at.Value, at.Text = f.value, f.text
			switch {
			case at.Ordinary:
				at.Text = f.usualText
			case at.Text == "":
				at.Text = exact(f.Fact, f.value)
			}
		}
		told = append(told, at)
	}
	return told
}
