package engine

import (
	"math"
	"slices"
)

// Part is one comparison where a condition makes it.
type Part struct {
	Text         string
	Line, Column int // in the file of the condition
	Comparison   int // the number of the comparison, shared by all who make it
	nodes        []int32
}

// place is where a comparison stands in its file, and how it is written there.
type place struct {
	line, column int
	text         string
}

// Parts lists the comparisons of a condition as they are written. One that is
// written twice is two parts.
func (b *Rulebook) Parts(c Condition) (parts []Part) {
	var walk func(root int32)
	walk = func(root int32) {
		n := b.nodes[root]
		switch n.op {
		case constantNode:
		case atomNode:
			at := b.places[root]
			same := func(p Part) bool { return p.Line == at.line && p.Column == at.column && p.Comparison == int(n.first) }
			// A condition with branches is spelled out, so that what is written
			// once may stand in several places.
			if i := slices.IndexFunc(parts, same); i >= 0 {
				parts[i].nodes = append(parts[i].nodes, root)
				return
			}
			parts = append(parts, Part{at.text, at.line, at.column, int(n.first), []int32{root}})
		default:
			for _, k := range b.kids[n.first : n.first+n.count] {
				walk(k)
			}
		}
	}
	if c.Written() {
		walk(c.root())
	}
	return parts
}

// Comparison is what one comparison compares.
type Comparison struct {
	Text string
	// Fact that stands alone on the left, or -1.
	Fact int
	// Words of a choice, as a set of their numbers, with which it holds.
	Words   uint64
	Named   uint64 // the words that it writes down
	IsWords bool
	// Operator and Threshold where Fact is a number held against a fixed one.
	Operator    string
	Threshold   float64
	IsThreshold bool
}

// Comparisons lists all comparisons of the rulebook by their numbers.
func (b *Rulebook) Comparisons() []Comparison {
	out := make([]Comparison, len(b.atoms))
	for i := range b.atoms {
		out[i] = b.atoms[i].comparison()
	}
	return out
}

func (a *atom) comparison() Comparison {
	c := Comparison{Text: a.text, Fact: -1}
	switch a.shape {
	case flag:
		c.Fact = int(a.left)
	case member:
		c.Fact, c.Words, c.IsWords, c.Named = int(a.left), a.set, true, a.set
		if a.op == notEqual {
			c.Named = ^a.set
		}
	case againstConstant:
		c.Fact, c.Threshold, c.IsThreshold, c.Operator = int(a.left), a.constant, true, a.op.String()
	case general:
		a.sumThreshold(&c)
	}
	return c
}

// sumThreshold recognises one fact held against a fixed value in another form,
// such as the value on the left.
func (a *atom) sumThreshold(c *Comparison) {
	if a.sides == nil || len(a.sides.terms) != 1 || math.Abs(a.sides.terms[0].times) != 1 {
		return
	}
	t, op := a.sides.terms[0], a.op
	if t.times < 0 {
		op = op.exchange()
	}
	c.Fact, c.Threshold, c.IsThreshold, c.Operator = int(t.slot), -a.sides.add/t.times, true, op.String()
}

// CalledWithWord reports whether a catalogue function reads the fact as a word,
// so that each of its choices may make a difference there.
func (b *Rulebook) CalledWithWord(slot int) bool { return slices.Contains(b.wordsCalled, int32(slot)) }

// ComparisonCondition is a comparison as a condition of its own.
func (b *Rulebook) ComparisonCondition(comparison int) Condition {
	return conditionAt(b.atoms[comparison].node)
}

// ComparesIn lists the comparisons that a fact's own formulas make.
func (b *Rulebook) ComparesIn(slot int) []int {
	var out []int
	for _, a := range b.steps[slot].needs.atoms {
		out = append(out, int(a))
	}
	return out
}
