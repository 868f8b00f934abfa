package audit

import (
	"fmt"
	"slices"

	"boremend/engine"
)

// idlePart finds comparisons in a condition without which it would come out the
// same at every joint of which all is known.
var idlePart = kind{
	name: "idle_comparison",
	ask: func(s *survey) {
		for _, a := range s.subjects() {
			parts := s.book.Parts(a.condition)
			if len(parts) < 2 {
				continue
			}
			for i, p := range parts {
				for _, as := range [2]engine.Truth{engine.Holds, engine.Fails} {
					s.ask(idleKey(a.About, i, as), asked{
						question: engine.Question{Clauses: []engine.Clause{engine.Turns(a.condition, p, as)}, Complete: true},
						rule:     noRule,
						open:     Open{About: a.at(p.Line, p.Column), Asks: fmt.Sprintf("whether `%s` makes a difference beside the rest", p.Text)},
					})
				}
			}
		}
	},
	find: func(s *survey, report func(Finding)) {
		for _, a := range s.subjects() {
			if s.steady(a.About) {
				continue
			}
			said := map[string]bool{}
			parts := s.book.Parts(a.condition)
			for i := len(parts) - 1; i >= 0; i-- {
				p := parts[i]
				idle := s.never(idleKey(a.About, i, engine.Holds)) || s.never(idleKey(a.About, i, engine.Fails))
				if !idle || s.fixed(p.Comparison) || said[p.Text] {
					continue
				}
				said[p.Text] = true
				report(Finding{Severity: Doubtful, About: a.at(p.Line, p.Column),
					Says: fmt.Sprintf("`%s` decides nothing%s: with or without it %s comes out the same at every joint whose facts are known.", p.Text, s.beside(parts, i), a.saying())})
			}
		}
	},
}

// beside names the other comparisons of a condition that cannot come out just
// anyhow beside one of them, with the limits in both.
func (s *survey) beside(parts []engine.Part, i int) string {
	related := []string{}
	for j, other := range parts {
		text := "`" + other.Text + "`"
		if j != i && !slices.Contains(related, text) && s.related(parts[i], other) {
			related = append(related, text)
		}
	}
	if len(related) == 0 {
		return ""
	}
	return " beside " + listed(related) + s.limitValues(append(related, parts[i].Text))
}

// related reports whether two comparisons exclude each other in some way.
func (s *survey) related(a, b engine.Part) bool {
	one, other := s.book.ComparisonCondition(a.Comparison), s.book.ComparisonCondition(b.Comparison)
	for _, x := range [2]engine.Truth{engine.Holds, engine.Fails} {
		for _, y := range [2]engine.Truth{engine.Holds, engine.Fails} {
			q := engine.Question{Clauses: []engine.Clause{engine.ComesOut(one, x), engine.ComesOut(other, y)}, Complete: true}
			if s.state.Prove(s.ctx, q, effortQuick) == engine.Never {
				return true
			}
		}
	}
	return false
}

func idleKey(a About, part int, as engine.Truth) string {
	return fmt.Sprintf("%s %s part %d %s", a.What, a.Name, part, as)
}
