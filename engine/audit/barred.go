package audit

import (
	"fmt"
	"slices"

	"boremend/engine"
)

// barredKey names the question whether a rule can count as holding while one of
// its methods is not ruled out by others.
func barredKey(rule int) string { return fmt.Sprintf("rule %d leaves a method", rule) }

// ruleOuts lists the other rules that rule out a method of a rule.
func (s *survey) ruleOuts(rule int) (outs []int) {
	for i, r := range s.book.Rules {
		if i != rule && r.Effect == engine.RuleOut && overlap(s.book.Rules[rule], r) {
			outs = append(outs, i)
		}
	}
	return outs
}

// barredQuestion asks for a joint at which a rule counts as holding, and at which
// none of some others rules this or that method of it out.
func (s *survey) barredQuestion(rule int, outs []int) engine.Question {
	r := s.book.Rules[rule]
	var ways [][]engine.Clause
	for _, m := range r.For {
		var way []engine.Clause
		for _, out := range outs {
			if slices.Contains(s.book.Rules[out].For, m) {
				way = append(way, s.book.RuleCounts(out, false))
			}
		}
		ways = append(ways, way)
	}
	return engine.Question{Clauses: []engine.Clause{s.book.RuleCounts(rule, true), engine.Either(ways...)}}
}

// askBarred asks of some rules whether all their methods are ruled out whenever
// they hold, by this rule or that.
func (s *survey) askBarred(which func(*engine.Rule) bool) {
	for a, r := range s.book.Rules {
		outs := s.ruleOuts(a)
		if !which(r) || !s.conditional(a) || len(r.For) == 0 || len(outs) < 2 { // of a single one the pairs speak
			continue
		}
		s.ask(barredKey(a), asked{question: s.barredQuestion(a, outs), rule: a,
			open: Open{About: aboutRule(r), Asks: "whether its methods are always ruled out by others when it holds"}})
	}
}

// eachBarred calls a function for each of the rules whose methods are always
// ruled out when it holds, though by no single rule, with a few rules that are
// enough for it.
func (s *survey) eachBarred(which func(*engine.Rule) bool, do func(rule int, outs []string)) {
	for a, r := range s.book.Rules {
		if !which(r) || !s.never(barredKey(a)) || s.never(aboutRule(r).holdsKey()) || s.singly(a, r) {
			continue
		}
		var names []string
		for _, out := range s.enough(a, s.ruleOuts(a)) {
			names = append(names, s.book.Rules[out].Name)
		}
		do(a, names)
	}
}

// singly reports whether one rule alone rules out all methods of a rule whenever
// that holds.
func (s *survey) singly(a int, r *engine.Rule) bool {
	for b, other := range s.book.Rules {
		if a != b && other.Effect == engine.RuleOut && within(r, other) && s.implies(a, b) {
			return true
		}
	}
	return false
}

// enough drops rules as long as the rest can be proved to be enough.
func (s *survey) enough(a int, outs []int) []int {
	for i := len(outs) - 1; i >= 0; i-- {
		fewer := slices.Delete(slices.Clone(outs), i, i+1)
		if s.state.Prove(s.ctx, s.barredQuestion(a, fewer), effortQuick) == engine.Never {
			outs = fewer
		}
	}
	return outs
}

// atHolding shows a joint at which a rule holds.
func (s *survey) atHolding(rule int) []Shown {
	return s.witness(aboutRule(s.book.Rules[rule]).holdsKey())
}
