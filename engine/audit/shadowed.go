package audit

import (
	"fmt"
	"strings"

	"boremend/engine"
)

// shadowed finds rules that another rule, or several together, leave without
// anything to do.
var shadowed = kind{
	name: "shadowed",
	ask: func(s *survey) {
		s.eachPair(func(a, b int, one, other *engine.Rule) {
			if s.shadows(one, other) && s.conditional(a) && s.conditional(b) {
				s.askImplies(a, b)
			}
		})
		s.askBarred(barredInVain)
	},
	find: func(s *survey, report func(Finding)) {
		s.eachPair(func(a, b int, one, other *engine.Rule) {
			if !s.shadows(one, other) || !s.implies(a, b) || repeats(one, other) && s.implies(b, a) {
				return
			}
			f := Finding{Severity: Doubtful, About: aboutRule(one), Others: []string{other.Name}, Witness: s.together(a, b)}
			switch one.Effect {
			case engine.Demand:
				f.Severity = Note
				f.Says = fmt.Sprintf("Whenever it holds, %s holds too and makes the same methods conditional: it matters only for what it asks.", other.Name)
			case engine.Lean:
				f.Says = fmt.Sprintf("Whenever it holds, %s rules the same methods out, so that its points never count.", other.Name)
			default:
				f.Says = fmt.Sprintf("Whenever it holds, %s holds too and rules the same methods out.", other.Name)
			}
			report(f)
		})
		s.eachBarred(barredInVain, func(a int, outs []string) {
			report(Finding{Severity: Doubtful, About: aboutRule(s.book.Rules[a]), Others: outs, Witness: s.atHolding(a),
				Says: fmt.Sprintf("Whenever it holds, its methods are ruled out by one of %s: it changes nothing.", strings.Join(outs, ", "))})
		})
	},
}

// barredInVain reports whether a rule does nothing more to a method that others
// rule out, and takes nothing back.
func barredInVain(r *engine.Rule) bool {
	return r.Effect == engine.RuleOut || r.Effect == engine.Lean && r.Points < 0
}
