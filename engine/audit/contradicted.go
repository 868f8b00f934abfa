package audit

import (
	"fmt"
	"slices"
	"strings"

	"boremend/engine"
)

// contradicted finds rules that ask for what others deny whenever they hold.
var contradicted = kind{
	name: "contradicted",
	ask: func(s *survey) {
		s.eachPair(func(a, b int, one, other *engine.Rule) {
			if contradicts(one, other) || opposed(one, other) {
				s.askImplies(a, b)
			}
		})
		s.askBarred(wants)
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
		s.eachBarred(wants, func(a int, outs []string) {
			report(Finding{Severity: Doubtful, About: aboutRule(s.book.Rules[a]), Others: outs, Witness: s.atHolding(a),
				Says: fmt.Sprintf("Whenever it holds, its methods are ruled out by %s between them, so that it never has an effect.", listed(outs))})
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
