package audit

import (
	"fmt"

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
					Says: fmt.Sprintf("`%s` decides nothing: with or without it %s comes out the same at every joint whose facts are known.", p.Text, a.saying())})
			}
		}
	},
}

func idleKey(a About, part int, as engine.Truth) string {
	return fmt.Sprintf("%s %s part %d %s", a.What, a.Name, part, as)
}
