package audit

import (
	"regexp"
	"slices"

	"boremend/engine"
)

// touched are the names, as formulas write them, of limits and facts that were
// edited or that follow from such.
type touched map[string]bool

// touchedBy begins with the limits and facts that were edited.
func touchedBy(limits, facts []RulebookEdit) touched {
	t := touched{}
	for _, e := range limits {
		t["limit."+e.Name] = true
	}
	for _, e := range facts {
		if slices.ContainsFunc(e.Fields, func(f FieldEdit) bool { return f.Field == "from" || f.Field == "assume" }) {
			t[e.Name] = true
		}
	}
	return t
}

// formulaNames matches the names in a formula, quoted words aside.
var formulaNames = regexp.MustCompile(`"[^"]*"|limit\.[a-z0-9_]+|[a-z][a-z0-9_]*`)

func (t touched) mentionedIn(formula string) bool {
	return slices.ContainsFunc(formulaNames.FindAllString(formula, -1), func(name string) bool { return t[name] })
}

// aims picks the comparisons of a sampler that turn elsewhere, or are not there,
// in the other book: what follows from something touched, and what the other does
// not compare.
func (t touched) aims(of, other *Sampler) (near []engine.Aim) {
	for again := true; again; {
		again = false
		for _, f := range of.book.Facts {
			if !t[f.Name] && (t.mentionedIn(f.From) || t.mentionedIn(f.Assume)) {
				t[f.Name], again = true, true
			}
		}
	}
	for _, a := range of.aims {
		if t.mentionedIn(a.Text) || !slices.ContainsFunc(other.aims, func(b engine.Aim) bool { return a.Text == b.Text }) {
			near = append(near, a)
		}
	}
	return near
}
