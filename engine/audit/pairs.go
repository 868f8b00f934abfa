package audit

import (
	"slices"

	"boremend/engine"
)

// within reports whether all methods of a are methods of b.
func within(a, b *engine.Rule) bool {
	return len(a.For) > 0 && !slices.ContainsFunc(a.For, func(m int) bool { return !slices.Contains(b.For, m) })
}

func overlap(a, b *engine.Rule) bool {
	return slices.ContainsFunc(a.For, func(m int) bool { return slices.Contains(b.For, m) })
}

// shadows reports whether b, wherever it holds, leaves a without anything to do:
// a method that is ruled out stays ruled out, one that is conditional stays
// conditional, and what is said already need not be said again.
func (s *survey) shadows(a, b *engine.Rule) bool {
	if !within(a, b) {
		return false
	}
	switch a.Effect {
	case engine.Lean:
		return a.Points < 0 && b.Effect == engine.RuleOut
	case engine.Caution:
		return b.Effect == engine.Caution && a.Because == b.Because
	}
	return a.Effect == b.Effect
}

// wants reports whether a rule speaks for its methods, or says how to use them.
func wants(r *engine.Rule) bool {
	return r.Effect == engine.Demand || r.Effect == engine.Lean && r.Points > 0
}

// contradicts reports whether a asks for what b denies.
func contradicts(a, b *engine.Rule) bool {
	return wants(a) && b.Effect == engine.RuleOut && within(a, b)
}

// opposed reports whether two rules lean in opposite ways on the same method.
func opposed(a, b *engine.Rule) bool {
	return a.Effect == engine.Lean && b.Effect == engine.Lean && a.Points*b.Points < 0 && overlap(a, b)
}

// repeats reports whether two rules do the same to the same methods.
func repeats(a, b *engine.Rule) bool {
	if a.Effect != b.Effect || !slices.Equal(a.For, b.For) {
		return false
	}
	switch a.Effect {
	case engine.Lean:
		return a.Points*b.Points > 0
	case engine.Caution:
		return a.Because == b.Because
	}
	return true
}

// eachPair calls a function for all ordered pairs of rules.
func (s *survey) eachPair(do func(a, b int, one, other *engine.Rule)) {
	for a, one := range s.book.Rules {
		for b, other := range s.book.Rules {
			if a != b {
				do(a, b, one, other)
			}
		}
	}
}

func (s *survey) conditional(rule int) bool {
	c := s.book.RuleCondition(rule)
	return c.Written() && !s.book.Constant(c)
}
