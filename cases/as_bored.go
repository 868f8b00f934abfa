package cases

import (
	"boremend/engine"
)

// Cut is how a bore came out.
type Cut struct{ LeastMM, MostMM float64 }

// AsCut returns the smallest and largest diameter read after the cut. It is
// false while no diameter has been read.
func (b Bore) AsCut() (Cut, bool) {
	var c Cut
	for _, r := range b.AsBored {
		if r.DiameterMM == 0 {
			continue
		}
		if c.LeastMM == 0 || r.DiameterMM < c.LeastMM {
			c.LeastMM = r.DiameterMM
		}
		c.MostMM = max(c.MostMM, r.DiameterMM)
	}
	return c, c.LeastMM > 0
}

// cleanUpLimit is the rulebook's cut beyond the deepest wear, a side.
const cleanUpLimit = "clean_up"

// FindingsAsCut are the findings of a bore that came out larger than planned:
// the wear reached as far as the cut had to go. Judging them tells whether the
// advice still holds for the bore as it is.
func (b Bore) FindingsAsCut(book *engine.Rulebook, c Cut) engine.Findings {
	slot := book.Fact(reach)
	if slot < 0 {
		return b.Findings
	}
	beyond := 0.0
	for _, l := range book.Limits {
		if l.Name == cleanUpLimit {
			beyond = l.Is.Value
		}
	}
	return b.Findings.With(engine.Finding{Fact: slot, Value: c.MostMM/2 - beyond, Origin: engine.Readings, Written: "as bored"})
}
