package audit

import (
	"fmt"
	"slices"
	"strings"

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
// a method that is ruled out stays ruled out, and one that is conditional stays
// conditional.
func (s *survey) shadows(a, b *engine.Rule) bool {
	same := a.Effect == b.Effect && (a.Effect == engine.RuleOut || a.Effect == engine.Demand)
	against := a.Effect == engine.Lean && a.Points < 0 && b.Effect == engine.RuleOut
	return within(a, b) && (same || against)
}

// contradicts reports whether a asks for what b denies.
func contradicts(a, b *engine.Rule) bool {
	wants := a.Effect == engine.Demand || a.Effect == engine.Lean && a.Points > 0
	return wants && b.Effect == engine.RuleOut && within(a, b)
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

var shadowed = kind{
	name: "shadowed",
	ask: func(s *survey) {
		s.eachPair(func(a, b int, one, other *engine.Rule) {
			if s.shadows(one, other) && s.conditional(a) && s.conditional(b) {
				s.askImplies(a, b)
			}
		})
	},
	find: func(s *survey, report func(Finding)) {
		s.eachPair(func(a, b int, one, other *engine.Rule) {
			if !s.shadows(one, other) || !s.implies(a, b) || repeats(one, other) && s.implies(b, a) {
				return
			}
			f := Finding{Severity: Doubtful, About: aboutRule(one), Others: []string{other.Name}, Witness: s.together(a, b)}
			switch {
			case one.Effect == engine.Demand:
				f.Severity = Note
				f.Says = fmt.Sprintf("Whenever it holds, %s holds too and makes the same methods conditional. It matters only for what it asks.", other.Name)
			case one.Effect == engine.Lean:
				f.Says = fmt.Sprintf("Whenever it holds, %s rules the same methods out, so that its points never count.", other.Name)
			default:
				f.Says = fmt.Sprintf("Whenever it holds, %s holds too and rules the same methods out.", other.Name)
			}
			report(f)
		})
	},
}

var contradicted = kind{
	name: "contradicted",
	ask: func(s *survey) {
		s.eachPair(func(a, b int, one, other *engine.Rule) {
			if contradicts(one, other) || opposed(one, other) {
				s.askImplies(a, b)
			}
		})
	},
	find: func(s *survey, report func(Finding)) {
		s.eachPair(func(a, b int, one, other *engine.Rule) {
			switch {
			case contradicts(one, other) && s.implies(a, b):
				report(Finding{Severity: Doubtful, About: aboutRule(one), Others: []string{other.Name}, Witness: s.together(a, b),
					Says: fmt.Sprintf("Whenever it holds, %s rules the same methods out, so that it never has an effect.", other.Name)})
			case a < b && opposed(one, other) && s.implies(a, b) && s.implies(b, a):
				report(Finding{Severity: Wrong, About: aboutRule(one), Others: []string{other.Name}, Witness: s.together(a, b),
					Says: fmt.Sprintf("It holds exactly when %s holds, and one leans for what the other leans against: %s and %s points for %s.",
						other.Name, signed(one.Points), signed(other.Points), strings.Join(s.methodNames(one, other), ", "))})
			}
		})
	},
}

var repeated = kind{
	name: "repeated",
	ask: func(s *survey) {
		s.eachPair(func(a, b int, one, other *engine.Rule) {
			if repeats(one, other) && s.conditional(a) && s.conditional(b) {
				s.askImplies(a, b)
			}
		})
	},
	find: func(s *survey, report func(Finding)) {
		s.eachPair(func(a, b int, one, other *engine.Rule) {
			if a < b || !repeats(one, other) || !s.implies(a, b) || !s.implies(b, a) {
				return
			}
			f := Finding{Severity: Doubtful, About: aboutRule(one), Others: []string{other.Name}, Witness: s.together(a, b),
				Says: fmt.Sprintf("It holds exactly when %s holds and does the same to the same methods.", other.Name)}
			switch {
			case one.Effect == engine.Lean:
				f.Says += fmt.Sprintf(" Together they count %s points.", signed(one.Points+other.Points))
			case one.Effect == engine.Demand && one.Because != other.Because:
				f.Severity = Note
			}
			report(f)
		})
	},
}

// methodNames lists the methods that two rules share.
func (s *survey) methodNames(a, b *engine.Rule) (names []string) {
	for _, m := range a.For {
		if slices.Contains(b.For, m) {
			names = append(names, s.book.Methods[m].Name)
		}
	}
	return names
}

func signed(points float64) string { return fmt.Sprintf("%+g", points) }
