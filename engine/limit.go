package engine

import (
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// Limit is a named threshold that a shop may change. Formulas call it
// limit.NAME.
type Limit struct {
	Name   string
	Is     quantity.Quantity
	Means  string
	Source string
	Trust  string
	File   string
	Line   int
}

// readLimits decodes limits.yaml. The unit written says what the limit
// measures; a bare number is a ratio or a count. kind: settles the few units
// that several kinds share.
func (l *loader) readLimits(f *document.File) {
	for _, n := range f.List(f.Root) {
		fields, _ := f.Entry(n, limitKeys)
		limit := &Limit{File: f.Name, Line: n.Line, Trust: "usual"}
		limit.Name, _ = f.Text(fields["limit"])
		limit.Means, _ = f.Text(fields["means"])
		limit.Source, _ = l.sources(f, fields["source"])
		if fields["trust"] != nil {
			limit.Trust, _ = f.Choice(fields["trust"], trusts...)
		}
		if limit.Name == "" || !l.claim(f, fields["limit"], "limit", limit.Name) {
			continue
		}
		l.broken["limit."+limit.Name] = true // until it is read
		kinds := quantity.KindNames()
		if fields["kind"] != nil {
			name, ok := f.Choice(fields["kind"], kinds...)
			if !ok {
				continue
			}
			kinds = []string{name}
		}
		text, ok := f.Text(fields["is"])
		if !ok {
			continue
		}
		if limit.Is, ok = quantityOfAny(text, kinds); !ok {
			f.Report(fields["is"], "write a number with its unit, such as 5.5 mm, or a bare ratio", "%q is not a quantity", text)
			continue
		}
		l.book.Limits = append(l.book.Limits, limit)
		l.limits[limit.Name] = limit
		delete(l.broken, "limit."+limit.Name)
	}
}

// quantityOfAny reads a quantity of the first of the kinds that has its unit.
func quantityOfAny(text string, kinds []string) (quantity.Quantity, bool) {
	for _, name := range kinds {
		kind, _ := quantity.KindNamed(name)
		if reading, err := quantity.Parse(text, kind, ""); err == nil && !reading.HasGiveOrTake {
			return reading.Quantity, true
		}
	}
	return quantity.Quantity{}, false
}
