package audit

import (
	"context"

	"boremend/engine"
)

// ComparedCases is what an edit does to known bores.
type ComparedCases struct {
	Bores    int           `json:"bores"` // that both books can read
	Done     int           `json:"done"`
	Stopped  bool          `json:"stopped"`
	Changed  []BoreChanged `json:"changed"`
	Reworded []BoreNamed   `json:"reworded"` // a demand or caution only says it in other words or with other values
	// OtherPoints counts the bores at which nothing but points differ.
	OtherPoints int `json:"other_points"`
}

// BoreNamed is a bore by its file and name.
type BoreNamed struct {
	File string `json:"file"`
	Bore string `json:"bore"`
}

// BoreChanged is a bore whose advice, verdicts, demands or cautions change.
type BoreChanged struct {
	BoreNamed
	Contrast
}

// CompareCases asks both books about every bore. When the context ends, what was
// found until then is returned, marked as stopped.
func CompareCases(ctx context.Context, before, after *engine.Rulebook, bores []ComparedBore, report Report) ComparedCases {
	out := ComparedCases{Bores: len(bores), Changed: []BoreChanged{}, Reworded: []BoreNamed{}}
	p := newPair(before, after)
	for i, b := range bores {
		if ctx.Err() != nil {
			out.Stopped = true
			break
		}
		p.load(b.Before, b.After)
		c, name := p.contrast(b.Units), BoreNamed{b.File, b.Bore}
		switch {
		case len(c.Changed) > 0:
			out.Changed = append(out.Changed, BoreChanged{name, c})
		case c.Reworded:
			out.Reworded = append(out.Reworded, name)
		case c.Repoints:
			out.OtherPoints++
		}
		out.Done = i + 1
		if report != nil {
			report(i+1, len(bores))
		}
	}
	return out
}
