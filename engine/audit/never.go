package audit

import (
	"fmt"

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
			says := fmt.Sprintf("No joint can fulfil %s.", a.saying())
			if a.rule != noRule && s.book.Rules[a.rule].IfUnknown == engine.Hold {
				says += " It only counts while facts are unknown."
			}
			report(Finding{Severity: Wrong, About: a.About, Says: says})
		}
	},
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
			report(Finding{Severity: Doubtful, About: a.About, Says: says})
		}
	},
}
