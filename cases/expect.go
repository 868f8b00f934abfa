package cases

import (
	"fmt"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
)

// Expect is the advice that a careful hand expects for a bore. A method that
// is not named may have any verdict.
type Expect struct {
	Advice      []string // any one of these is advised
	MayStand    []string // may come second; nothing is checked
	NoGo        []string // ruled out, or open where a fact is missing
	NotAdvised  []string // may stand, never first
	Provisional *bool
	Narrow      *bool    // true: narrow or touchy is said; false: the lead is not narrow
	Cautions    []string // must be shown
	Holds       []string // rules that hold
	Fails       []string // rules that fail
}

func (r *reader) expect(n *yaml.Node) *Expect {
	fields, _ := r.Entry(n, expectKeys)
	methods := r.book.MethodNames()
	rules, cautions := r.book.RuleNames(), r.book.CautionNames()
	e := &Expect{
		Advice: r.known(fields["advice"], methods), MayStand: r.known(fields["may_stand"], methods),
		NoGo: r.known(fields["no_go"], methods), NotAdvised: r.known(fields["not_advised"], methods),
		Cautions: r.known(fields["cautions"], cautions),
		Holds:    r.known(fields["holds"], rules), Fails: r.known(fields["fails"], rules),
	}
	for key, into := range map[string]**bool{"provisional": &e.Provisional, "narrow": &e.Narrow} {
		if fields[key] != nil {
			if v, ok := r.YesNo(fields[key]); ok {
				*into = &v
			}
		}
	}
	return e
}

// known reads a list of names that the rulebook has.
func (r *reader) known(n *yaml.Node, valid []string) []string {
	words := r.Words(n)
	for i, word := range words {
		if !slices.Contains(valid, word) && i < len(n.Content) {
			r.Report(n.Content[i], document.DidYouMean(word, valid), "the rulebook has no %q", word)
		}
	}
	return words
}

// Check compares an explained advice with what is expected, and says what differs.
func (e *Expect) Check(a engine.Advice) []string {
	var wrong []string
	differ := func(format string, args ...any) { wrong = append(wrong, fmt.Sprintf(format, args...)) }
	if len(e.Advice) > 0 && !slices.Contains(e.Advice, a.Chosen.Method) {
		differ("advises %s, expected %s", a.Chosen.Method, strings.Join(e.Advice, " or "))
	}
	for _, m := range a.Methods {
		if slices.Contains(e.NoGo, m.Method) && m.Verdict != engine.NoGo.String() && m.Verdict != engine.Undecided.String() {
			differ("%s is %s, expected no_go", m.Method, m.Verdict)
		}
	}
	if slices.Contains(e.NotAdvised, a.Chosen.Method) {
		differ("advises %s, which should never come first", a.Chosen.Method)
	}
	if e.Provisional != nil && *e.Provisional != a.Chosen.Provisional {
		differ("provisional is %t, expected %t", a.Chosen.Provisional, *e.Provisional)
	}
	if e.Narrow != nil {
		if said := a.Chosen.Narrow || len(a.Chosen.Touchy) > 0; *e.Narrow && !said {
			differ("neither narrow nor touchy is said, expected one of them")
		}
		if !*e.Narrow && a.Chosen.Narrow {
			differ("the lead is narrow, expected a clear one")
		}
	}
	for _, name := range e.Cautions {
		if !slices.ContainsFunc(a.Cautions, func(c engine.CautionShown) bool { return c.Caution == name }) {
			differ("the caution %s is not shown", name)
		}
	}
	return append(wrong, e.checkRules(a)...)
}

// checkRules compares the outcomes of single rules.
func (e *Expect) checkRules(a engine.Advice) []string {
	var wrong []string
	for outcome, names := range map[engine.Truth][]string{engine.Holds: e.Holds, engine.Fails: e.Fails} {
		for _, name := range names {
			i := slices.IndexFunc(a.Trace, func(t engine.RuleTrace) bool { return t.Rule == name })
			if i >= 0 && a.Trace[i].Outcome != outcome.String() {
				wrong = append(wrong, fmt.Sprintf("the rule %s %s, expected that it %s", name, a.Trace[i].Outcome, outcome))
			}
		}
	}
	slices.Sort(wrong)
	return wrong
}
