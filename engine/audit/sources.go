package audit

import (
	"fmt"
	"strings"

	"boremend/engine"
)

// weakRuleOut finds rules that forbid a method on an opinion.
var weakRuleOut = kind{
	name: "weak_rule_out",
	find: func(s *survey, report func(Finding)) {
		for i, r := range s.book.Rules {
			if r.Effect == engine.RuleOut && r.Trust == "opinion" {
				report(Finding{Severity: Doubtful, About: aboutRule(r), Witness: s.atHolding(i), Says: "It rules methods out on an opinion: a lean or a demand would do, or a better source."})
			}
		}
	},
}

// poorSource finds sources that say nothing, or not what the trust claims.
var poorSource = kind{
	name: "poor_source",
	find: func(s *survey, report func(Finding)) {
		judge := func(about About, source, trust string) {
			switch {
			case blank(source):
				report(Finding{Severity: Doubtful, About: about, Says: fmt.Sprintf("Its source %q names none.", source)})
			case trust == "strong" && unsourced(source):
				report(Finding{Severity: Doubtful, About: about, Says: fmt.Sprintf("Its trust is strong, and its source is only %q.", source)})
			}
		}
		for _, r := range s.book.Rules {
			judge(aboutRule(r), r.Source, r.Trust)
		}
		for _, l := range s.book.Limits {
			judge(aboutLimit(l), l.Source, l.Trust)
		}
		for _, c := range s.book.Cautions {
			if len(c.Refs) == 0 {
				report(Finding{Severity: Doubtful, About: aboutCaution(c), Says: "It names no reference."})
			}
			for _, r := range c.Refs {
				judge(aboutCaution(c), r.Ref, "")
			}
		}
	},
}

// blanks are words that stand where a source has still to be named.
var blanks = []string{"todo", "to do", "tbd", "tba", "tbc", "fixme", "fix me", "xxx", "none", "no source", "source", "n/a", "na", "nil",
	"unknown", "missing", "later", "pending", "ask", "placeholder", "to be added", "to be found", "to be confirmed", "to be determined"}

// blank reports whether each part of a source says nothing.
func blank(source string) bool {
	for part := range strings.SplitSeq(source, ";") {
		word := strings.Trim(strings.ToLower(part), " \t.!?()[]-_*\"'")
		if word != "" && !isOneOf(word, blanks) {
			return false
		}
	}
	return true
}

// unsourced reports whether a source says no more than that there is none.
func unsourced(source string) bool {
	for part := range strings.SplitSeq(source, ";") {
		if strings.Trim(strings.ToLower(part), " .") != "common practice, no source" {
			return false
		}
	}
	return true
}

func isOneOf(word string, words []string) bool {
	for _, w := range words {
		if w == word {
			return true
		}
	}
	return false
}

// noPoints finds leans that lean nowhere.
var noPoints = kind{
	name: "no_points",
	find: func(s *survey, report func(Finding)) {
		for _, r := range s.book.Rules {
			if r.Effect == engine.Lean && r.Points == 0 {
				report(Finding{Severity: Doubtful, About: aboutRule(r), Says: "It leans by 0 points, which changes nothing."})
			}
		}
	},
}

// silentRuleOut finds rules that forbid a method and say nothing while nobody
// knows whether they hold.
var silentRuleOut = kind{
	name: "silent_rule_out",
	find: func(s *survey, report func(Finding)) {
		for _, r := range s.book.Rules {
			if r.Effect == engine.RuleOut && r.IfUnknown == engine.Silent {
				report(Finding{Severity: Note, About: aboutRule(r), Says: "While its facts are unknown its methods stand as if it failed: it is only listed as not checked."})
			}
		}
	},
}
