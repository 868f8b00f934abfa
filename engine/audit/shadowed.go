package audit

import (
	"fmt"

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
			f := Finding{Severity: Doubtful, About: aboutRule(one), Others: []string{other.Name}, Witness: s.together(a, b),
				Says: fmt.Sprintf("Whenever it holds, %s holds too and %s.", other.Name, alreadyDone(one, other))}
			if one.Effect == engine.Demand && one.Because != other.Because {
				f.Severity = Note
			}
			report(f)
		})
		s.eachBarred(barredInVain, func(a int, outs []string) {
			report(Finding{Severity: Doubtful, About: aboutRule(s.book.Rules[a]), Others: outs, Witness: s.atHolding(a),
				Says: fmt.Sprintf("Whenever it holds, its methods are ruled out by %s between them: it changes nothing.", listed(outs))})
		})
	},
}

// alreadyDone says what another rule has done where it leaves a rule idle.
func alreadyDone(r, other *engine.Rule) string {
	switch {
	case r.Effect == engine.Lean:
		return "rules the same methods out, so that these points never count"
	case r.Effect == engine.RuleOut:
		return "rules the same methods out"
	case r.Because == other.Because:
		return "says the same of the same methods"
	}
	return "makes the same methods conditional: it matters only for what it asks"
}

// barredInVain reports whether a rule does nothing more to a method that others
// rule out, and takes nothing back.
func barredInVain(r *engine.Rule) bool {
	return r.Effect == engine.RuleOut || r.Effect == engine.Lean && r.Points < 0
}
