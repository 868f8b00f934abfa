package audit

import (
	"fmt"

	"boremend/engine"
)

// subject is something with a condition: a rule, a caution, or a worked-out
// yes-or-no fact.
type subject struct {
	About
	condition engine.Condition
	rule      int // or noRule
}

// subjects lists everything that has a condition which compares something.
func (s *survey) subjects() []subject {
	var out []subject
	add := func(about About, c engine.Condition, rule int) {
		if c.Written() && !s.book.Constant(c) {
			out = append(out, subject{about, c, rule})
		}
	}
	for i, r := range s.book.Rules {
		add(aboutRule(r), s.book.RuleCondition(i), i)
	}
	for i, c := range s.book.Cautions {
		add(aboutCaution(c), s.book.CautionCondition(i), noRule)
	}
	for slot, f := range s.book.Facts {
		add(aboutFact(f), s.book.FactCondition(slot), noRule)
	}
	return out
}

// holdsKey and failsKey name the questions whether a subject can ever hold, and
// whether it can ever not hold although everything is known.
func (a About) holdsKey() string { return a.key() + " holds" }
func (a About) failsKey() string { return a.key() + " fails" }

// steady reports whether the subject always comes out the same.
func (s *survey) steady(a About) bool { return s.never(a.holdsKey()) || s.never(a.failsKey()) }

// saying is how a subject is spoken of.
func (a subject) saying() string {
	if a.What == "fact" {
		return "its formula"
	}
	return "its condition"
}

// impliesKey names the question whether one rule can count as holding while
// another does not.
func impliesKey(a, b int) string { return fmt.Sprintf("rule %d without rule %d", a, b) }

// askImplies asks whether a rule can count as holding while another does not.
func (s *survey) askImplies(a, b int) {
	if s.parted(a, b) {
		return
	}
	one, other := s.book.Rules[a], s.book.Rules[b]
	s.ask(impliesKey(a, b), asked{
		question: engine.Question{Clauses: []engine.Clause{s.book.RuleCounts(a, true), s.book.RuleCounts(b, false)}},
		rule:     a,
		open:     Open{About: aboutRule(one), Asks: "whether " + one.Name + " can hold while " + other.Name + " does not"},
	})
}

// implies reports whether a rule certainly counts as holding whenever another
// does; the other can hold.
func (s *survey) implies(a, b int) bool {
	return s.never(impliesKey(a, b)) && !s.never(aboutRule(s.book.Rules[a]).holdsKey())
}

// together shows a joint at which both rules count as holding.
func (s *survey) together(a, b int) []Shown {
	known := s.byKey[aboutRule(s.book.Rules[a]).holdsKey()]
	if known == nil || known.answer != engine.Met {
		return nil
	}
	q := engine.Question{Clauses: []engine.Clause{s.book.RuleCounts(a, true), s.book.RuleCounts(b, true)}}
	if !s.holds(q, known.found) {
		return nil
	}
	return s.show(q, known.found)
}
