package engine

import (
	"math"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
	"boremend/engine/quantity"
)

// Limit is a named threshold that a shop may change. Formulas call it
// limit.NAME.
type Limit struct {
	Name    string
	Is      quantity.Quantity
	Means   string
	Source  string
	Trust   string
	File    string
	Line    int
	Of      string         // title of the layer whose value counts
	Before  *ReplacedLimit // what a lower layer has, where an overlay replaced it
	written string         // the value as its file has it
}

// ReplacedLimit is the value of a limit in a lower layer, and whose it is.
type ReplacedLimit struct {
	Is quantity.Quantity
	Of string
}

// LimitReplaced tells of a limit that counts with another value than it has in a
// lower layer.
type LimitReplaced struct {
	Limit    string `json:"limit"`
	Shown    string `json:"shown"`
	Of       string `json:"of"`
	Before   string `json:"before"`
	BeforeOf string `json:"before_of"`
}

// Replaced tells of the limit's value before an overlay changed it, if one did.
func (l *Limit) Replaced(units quantity.System) (LimitReplaced, bool) {
	if l.Before == nil {
		return LimitReplaced{}, false
	}
	return LimitReplaced{l.Name, l.Is.Format(units), l.Of, l.Before.Is.Format(units), l.Before.Of}, true
}

// readLimits decodes limits.yaml. The unit written says what the limit
// measures; a bare number is a ratio or a count. kind: settles the few units
// that several kinds share.
func (l *loader) readLimits(v *level, f *document.File) {
	if f == nil {
		return
	}
	for _, n := range f.List(f.Root) {
		if name, declared := l.below(v, "limit", n); declared {
			l.replaceLimit(v, f, n, l.limits[name])
			continue
		}
		fields := f.Fields(n, append(limitKeys.Names(), "was")...)
		if l.replacesNothing(v, f, n, "limit", fields) {
			continue
		}
		f.Require(n, fields, limitKeys.Needed()...)
		limit := &Limit{File: f.Name, Line: n.Line, Of: v.Title, Trust: "usual"}
		limit.Name, _ = f.Text(fields["limit"])
		limit.Means, _ = f.Text(fields["means"])
		limit.Source, _ = l.sources(f, fields["source"])
		if fields["trust"] != nil {
			limit.Trust, _ = f.Choice(fields["trust"], trusts...)
		}
		if limit.Name == "" || !l.claim(v, f, fields["limit"], "limit", limit.Name) {
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
		limit.written = text
		if limit.Is, ok = quantityOfAny(text, kinds); !ok {
			f.Report(fields["is"], "write a number with its unit, such as 5.5 mm, or a bare ratio", "%q is not a quantity", text)
			continue
		}
		l.book.Limits = append(l.book.Limits, limit)
		l.limits[limit.Name] = limit
		delete(l.broken, "limit."+limit.Name)
	}
}

// replaceLimit decodes an entry of an overlay that names a limit of a lower
// layer: only its value changes. was: keeps the value that it had there, so that
// a later change under the overlay is noticed.
func (l *loader) replaceLimit(v *level, f *document.File, n *yaml.Node, limit *Limit) {
	fields := f.Fields(n, limitChangeKeys.Names()...)
	f.Require(n, fields, "is", "source") // what was: should say is told below
	if limit == nil {
		return // its declaration has a problem of its own
	}
	kind, lower := limit.Is.Kind, limit.written
	if fields["was"] == nil {
		f.Report(n, "add was: "+lower, "%s does not say what it is in %s", limit.Name, limit.Of)
	}
	read := func(key string) (quantity.Quantity, bool) {
		text, ok := f.Text(fields[key])
		if !ok {
			return quantity.Quantity{}, false
		}
		is, ok := quantityOfAny(text, []string{kind.String()})
		if !ok {
			f.Report(fields[key], "write it in the same way as "+lower, "%s is a %s in %s and cannot be %q", limit.Name, kind, limit.Of, text)
		}
		return is, ok
	}
	is, ok := read("is")
	limit.written, _ = f.Text(fields["is"])
	was, wasOK := read("was")
	if !ok {
		return
	}
	switch {
	case wasOK && !same(was.Value, limit.Is.Value):
		l.note(f, fields["was"], "judge anew, then write was: "+lower, "%s was %s in %s when this was written and is now %s",
			limit.Name, was.Format(quantity.Millimetre), limit.Of, lower)
	case same(is.Value, limit.Is.Value):
		l.note(f, fields["is"], "take the entry out", "%s is %s in %s as well", limit.Name, lower, limit.Of)
	}
	l.replaced(v, f, n, "limit", limit.Name)
	limit.Before = &ReplacedLimit{limit.Is, limit.Of}
	limit.Is, limit.Of, limit.File, limit.Line, limit.Trust = is, v.Title, f.Name, n.Line, trusts[2]
	limit.Source, _ = l.sources(f, fields["source"])
	if text, ok := f.Text(fields["means"]); ok {
		limit.Means = text
	}
	if fields["trust"] != nil {
		limit.Trust, _ = f.Choice(fields["trust"], trusts...)
	}
}

// same compares two sizes that may have been written in different units.
func same(a, b float64) bool {
	const share = 1e-12 // far below any size that a person writes
	return math.Abs(a-b) <= share*max(math.Abs(a), math.Abs(b))
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
