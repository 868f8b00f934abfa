package term

import (
	"fmt"
	"strings"

	"boremend/engine"
)

// Explanation lays out the trace behind the advice for all bores of a job.
// Where the trace is narrowed to a method or a rule, facts that no shown rule
// reads are left out.
func Explanation(h Header, bores []engine.Advice, narrowed bool) *Page {
	p := &Page{}
	for _, a := range bores {
		answer(p, h, a)
		p.Heading("Facts worked out")
		for _, f := range a.WorkedOut {
			if !narrowed || reads(a, f.Fact) {
				workedOut(p, h, f)
			}
		}
		for _, outcome := range []struct{ word, title string }{
			{"holds", "Rules that hold"}, {"unknown", "Rules that cannot be settled"}, {"fails", "Rules that do not apply"},
		} {
			traces(p, a, outcome.word, outcome.title)
		}
	}
	footer(p, h)
	return p
}

// reads reports whether a shown rule compares a fact, directly or through
// another worked-out fact.
func reads(a engine.Advice, fact string) bool {
	for _, r := range a.Trace {
		for _, atom := range r.Atoms {
			if mentions(atom.Text, fact) {
				return true
			}
		}
	}
	for _, f := range a.WorkedOut {
		if f.Fact != fact && mentions(f.Formula, fact) && reads(a, f.Fact) {
			return true
		}
	}
	return false
}

// mentions reports whether a formula names a fact.
func mentions(formula, fact string) bool {
	for _, word := range strings.FieldsFunc(formula, func(r rune) bool {
		return r != '_' && r != '.' && (r < 'a' || r > 'z') && (r < '0' || r > '9')
	}) {
		if word == fact {
			return true
		}
	}
	return false
}

func workedOut(p *Page, h Header, f engine.FormulaTrace) {
	text := f.Fact + " = " + f.Shown
	if f.Assumed {
		text += ", assumed"
	}
	p.Item("-", text+": "+f.Means)
	p.Detail("= " + f.Formula)
	if f.Numbers != f.Formula {
		p.Detail("= " + f.Numbers)
	}
	if owner := h.owner(f.Of); owner != "" {
		p.Detail("worked out by" + strings.TrimPrefix(owner, ","))
	}
	replacedLimits(p, f.Replaced)
}

func traces(p *Page, a engine.Advice, outcome, title string) {
	first := true
	for _, r := range a.Trace {
		if r.Outcome != outcome {
			continue
		}
		if first {
			p.Heading(title)
			first = false
		}
		p.Item("-", fmt.Sprintf("%s (%s, for %s): %s", r.Rule, effectWords[r.Effect], strings.Join(r.For, ", "), r.Text))
		for _, atom := range r.Atoms {
			p.Detail(atomLine(atom))
			replacedLimits(p, atom.Replaced)
		}
		p.Detail(fmt.Sprintf("source: %s; trust: %s; %s, %s:%d", r.Source, r.Trust, r.Of, r.File, r.Line))
	}
}

// replacedLimits says whose value a limit has, where it is not the lowest layer's.
func replacedLimits(p *Page, limits []engine.LimitReplaced) {
	for _, l := range limits {
		p.Detail(fmt.Sprintf("limit.%s is %s in %s; %s has %s", l.Limit, l.Shown, l.Of, l.BeforeOf, l.Before))
	}
}

var effectWords = map[string]string{"rule_out": "rules out", "demand": "demands", "lean": "leans", "caution": "warns"}

// atomLine writes one comparison with its values and how far it is from turning.
func atomLine(a engine.AtomTrace) string {
	line := a.Outcome + ": " + a.Text
	switch {
	case a.Margin != nil:
		line += fmt.Sprintf("  (%s against %s, %s)", a.Left.Shown, a.Right.Shown, a.Apart)
	case a.Left.Shown != "":
		line += fmt.Sprintf("  (%s is %s)", a.Left.Text, a.Left.Shown)
	}
	return line
}
