package engine

import (
	"math"
	"slices"
)

// Condition is what a rulebook writes down as one: the condition of a rule, of a
// caution, or of a worked-out yes-or-no fact. The zero Condition is none.
type Condition struct{ number int32 } // of its root, from 1

func conditionAt(root int32) Condition { return Condition{root + 1} }

func (c Condition) root() int32 { return c.number - 1 }

// Written reports whether there is a condition at all.
func (c Condition) Written() bool { return c.number > 0 }

// RuleCondition returns the condition of a rule.
func (b *Rulebook) RuleCondition(rule int) Condition { return conditionAt(b.conditions[rule]) }

// CautionCondition returns the condition of a caution; one that says in words
// when it applies has none.
func (b *Rulebook) CautionCondition(caution int) Condition {
	return conditionAt(b.conditions[b.rulesAt+caution])
}

// FactCondition returns the condition from which a yes-or-no fact is worked out.
func (b *Rulebook) FactCondition(slot int) Condition { return conditionAt(b.steps[slot].from.root) }

// Constant reports whether a condition compares nothing, such as `true`.
func (b *Rulebook) Constant(c Condition) bool { return len(b.atomsUnder(c.root(), nil)) == 0 }

// Clause is one thing asked of a bore: that a condition comes out in a certain
// way, or that a part of it makes a difference.
type Clause interface {
	// may reports whether some state within the outlook could do so. "No" is certain.
	may(o *Outlook) bool
	// met reports whether the state does.
	met(s *State) bool
	// far is zero where the state does so, and the more the further it is from it.
	far(s *State) float64
	// reads lists the comparisons that the answer depends on.
	reads(b *Rulebook) []int32
}

// ComesOut asks that a condition comes out in one of the ways wanted.
func ComesOut(c Condition, wanted ...Truth) Clause {
	var out outcomes
	for _, t := range wanted {
		out |= outcomesOf(t)
	}
	return comesOut{c.root(), out}
}

// RuleCounts asks that a rule counts as holding, or that it does not, given what
// it does while its condition is unknown.
func (b *Rulebook) RuleCounts(rule int, holding bool) Clause {
	wanted := mayHold
	if b.Rules[rule].IfUnknown == Hold {
		wanted |= mayBeUnknown
	}
	if !holding {
		wanted ^= mayFail | mayBeUnknown | mayHold
	}
	return comesOut{b.conditions[rule], wanted}
}

type comesOut struct {
	root   int32
	wanted outcomes
}

func (c comesOut) may(o *Outlook) bool       { return o.fold(c.root)&c.wanted != 0 }
func (c comesOut) met(s *State) bool         { return outcomesOf(s.fold(c.root))&c.wanted != 0 }
func (c comesOut) reads(b *Rulebook) []int32 { return b.atomsUnder(c.root, nil) }

func (c comesOut) far(s *State) float64 {
	if c.met(s) {
		return 0
	}
	if c.wanted&mayHold != 0 {
		return s.far(c.root, Holds, override{})
	}
	return s.far(c.root, Fails, override{})
}

// Either asks that all clauses of at least one of the groups are met.
func Either(groups ...[]Clause) Clause { return either(groups) }

type either [][]Clause

func (e either) may(o *Outlook) bool {
	return slices.ContainsFunc(e, func(group []Clause) bool {
		return !slices.ContainsFunc(group, func(c Clause) bool { return !c.may(o) })
	})
}

func (e either) met(s *State) bool {
	return slices.ContainsFunc(e, func(group []Clause) bool {
		return !slices.ContainsFunc(group, func(c Clause) bool { return !c.met(s) })
	})
}

func (e either) far(s *State) float64 {
	least := math.Inf(1)
	for _, group := range e {
		sum := 0.0
		for _, c := range group {
			sum += c.far(s)
		}
		least = min(least, sum)
	}
	return least
}

func (e either) reads(b *Rulebook) (atoms []int32) {
	for _, group := range e {
		for _, c := range group {
			atoms = append(atoms, c.reads(b)...)
		}
	}
	return atoms
}
