package audit

import (
	"fmt"
	"strings"

	"boremend/engine"
)

// fixedComparison finds comparisons that come out the same at every joint of
// which all is known, first of all those with a value outside a fact's range.
var fixedComparison = kind{
	name: "fixed_comparison",
	ask: func(s *survey) {
		for number, use := range s.uses {
			if len(use) == 0 {
				continue
			}
			alone := s.book.ComparisonCondition(number)
			about := use[0]
			text := s.comparisons[number].Text
			s.ask(neverSo(number), asked{
				question: engine.Question{Clauses: []engine.Clause{engine.ComesOut(alone, engine.Holds)}, Complete: true},
				rule:     noRule, open: Open{About: about, Asks: "whether `" + text + "` is ever so"},
			})
			s.ask(alwaysSo(number), asked{
				question: engine.Question{Clauses: []engine.Clause{engine.ComesOut(alone, engine.Fails, engine.Unknown)}, Complete: true},
				rule:     noRule, open: Open{About: about, Asks: "whether `" + text + "` is always so"},
			})
		}
	},
	find: func(s *survey, report func(Finding)) {
		for number, use := range s.uses {
			c := s.comparisons[number]
			never, always := s.never(neverSo(number)), s.never(alwaysSo(number))
			if !never && !always || s.saidOfFact(c) {
				continue
			}
			outcome := "is always so"
			if never {
				outcome = "is never so"
			}
			f := Finding{Severity: Doubtful, About: use[0], Says: fmt.Sprintf("`%s` %s at a joint whose facts are known", c.Text, outcome)}
			if reason, outside := s.outside(c); reason != "" {
				f.Says += ": " + reason
				if outside {
					f.Severity = Wrong
				}
			}
			f.Says += "."
			if also := namesOf(use[1:]); len(also) > 0 {
				f.Says += " Also in " + strings.Join(also, ", ") + "."
			}
			report(f)
		}
	},
}

func neverSo(comparison int) string  { return fmt.Sprint("comparison ", comparison, " holds") }
func alwaysSo(comparison int) string { return fmt.Sprint("comparison ", comparison, " fails") }

// fixed reports whether a comparison always comes out the same.
func (s *survey) fixed(comparison int) bool {
	return s.never(neverSo(comparison)) || s.never(alwaysSo(comparison))
}

// saidOfFact reports whether a comparison only asks for a worked-out fact, of
// which the same is said.
func (s *survey) saidOfFact(c engine.Comparison) bool {
	return c.Fact >= 0 && !c.IsWords && !c.IsThreshold && s.book.FactCondition(c.Fact).Written()
}

// outside says what range the threshold of a comparison meets, and whether the
// threshold lies outside of it.
func (s *survey) outside(c engine.Comparison) (reason string, outside bool) {
	if !c.IsThreshold || !s.book.Facts[c.Fact].Ranged {
		return "", false
	}
	f := s.book.Facts[c.Fact]
	show := func(v float64) string { return s.format(v, f.Kind) }
	reason = fmt.Sprintf("%s lies between %s and %s, and is compared with %s", f.Name, show(f.Low), show(f.High), show(c.Threshold))
	return reason, c.Threshold < f.Low || c.Threshold > f.High
}

// comparisonUses lists who makes each comparison, and where.
func (s *survey) comparisonUses() [][]About {
	uses := make([][]About, len(s.comparisons))
	for _, a := range s.subjects() {
		for _, p := range s.book.Parts(a.condition) {
			uses[p.Comparison] = append(uses[p.Comparison], a.at(p.Line, p.Column))
		}
	}
	for slot, f := range s.book.Facts {
		if s.book.FactCondition(slot).Written() {
			continue
		}
		for _, number := range s.book.ComparesIn(slot) {
			uses[number] = append(uses[number], aboutFact(f))
		}
	}
	return uses
}

// namesOf lists names, each once.
func namesOf(list []About) (names []string) {
	seen := map[string]bool{}
	for _, a := range list {
		if !seen[a.Name] {
			seen[a.Name] = true
			names = append(names, a.Name)
		}
	}
	return names
}
