package audit

import (
	"fmt"

	"boremend/engine"
)

// repeated finds rules that do the same to the same methods under the same
// condition.
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
