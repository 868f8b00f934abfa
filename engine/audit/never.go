package audit

import (
	"fmt"
	"slices"

	"boremend/engine"
)

// neverHolds finds conditions that no joint can fulfil.
var neverHolds = kind{
	name: "never_holds",
	ask: func(s *survey) {
		for _, a := range s.subjects() {
			s.ask(a.holdsKey(), asked{
				question: engine.Question{Clauses: []engine.Clause{engine.ComesOut(a.condition, engine.Holds)}},
				rule:     noRule, telling: true,
				open: Open{About: a.About, Asks: fmt.Sprintf("whether %s can ever hold", a.saying())},
			})
		}
	},
	find: func(s *survey, report func(Finding)) {
		for _, a := range s.subjects() {
			if !s.never(a.holdsKey()) {
				continue
			}
			says := fmt.Sprintf("No joint can fulfil %s%s.", a.saying(), s.excluded(a))
			if a.rule != noRule && s.book.Rules[a.rule].IfUnknown == engine.Hold {
				says += " It only counts while facts are unknown."
			}
			report(Finding{Severity: Wrong, About: a.About, Says: says})
		}
	},
}

// excluded names the comparisons that cannot come out together as the condition
// needs them.
func (s *survey) excluded(a subject) string {
	parts := s.book.Parts(a.condition)
	var granted []engine.Part
	var needed []string
	for i := len(parts) - 1; i >= 0; i-- {
		more := append(slices.Clone(granted), parts[i])
		q := engine.Question{Clauses: []engine.Clause{engine.CouldHold(a.condition, more)}}
		if s.state.Prove(s.ctx, q, effortQuick) == engine.Never {
			granted = more
			continue
		}
		needed = append(needed, "`"+parts[i].Text+"`")
	}
	slices.Reverse(needed)
	switch len(needed) {
	case 0:
		return ""
	case 1:
		return ": " + needed[0] + " cannot come out as it must" + s.limitValues(needed)
	}
	return ": " + listed(needed) + " exclude each other" + s.limitValues(needed)
}

// alwaysHolds finds conditions that every joint fulfils of which all is known.
var alwaysHolds = kind{
	name: "always_holds",
	ask: func(s *survey) {
		for _, a := range s.subjects() {
			s.ask(a.failsKey(), asked{
				question: engine.Question{Clauses: []engine.Clause{engine.ComesOut(a.condition, engine.Fails, engine.Unknown)}, Complete: true},
				rule:     noRule, telling: true,
				open: Open{About: a.About, Asks: fmt.Sprintf("whether %s holds at every joint", a.saying())},
			})
		}
	},
	find: func(s *survey, report func(Finding)) {
		for _, a := range s.subjects() {
			if !s.never(a.failsKey()) {
				continue
			}
			says := fmt.Sprintf("Every joint whose facts are known fulfils %s.", a.saying())
			if a.What != "fact" {
				says += ` If that is meant, write if: "true".`
			}
			report(Finding{Severity: Doubtful, About: a.About, Says: says, Witness: s.witness(a.holdsKey())})
		}
	},
}
