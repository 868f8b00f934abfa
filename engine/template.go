package engine

import (
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
	"boremend/engine/quantity"
)

// template is a sentence with the places of facts and limits in it.
type template []piece

// piece is plain text, or a fact (slot), or a limit.
type piece struct {
	text  string
	slot  int
	limit *Limit
}

const noSlot = -1

// template reads a sentence and reports names in braces that are not known.
func (l *loader) template(f *document.File, n *yaml.Node, text string) template {
	var t template
	rest, at := text, 0
	for {
		before, after, found := strings.Cut(rest, "{")
		t = append(t, piece{text: before, slot: noSlot})
		if !found {
			return t
		}
		name, after, closed := strings.Cut(after, "}")
		at += len([]rune(before)) + 1
		p := piece{slot: noSlot}
		switch limit, isLimit := strings.CutPrefix(name, "limit."); {
		case !closed:
			f.ReportWithin(n, at-1, "close it with }", "a brace is left open")
			return t
		case isLimit:
			p.limit = l.limits[limit]
		default:
			if slot, ok := l.slots[name]; ok {
				p.slot = slot
			}
		}
		if p.limit == nil && p.slot == noSlot && !l.broken[name] {
			f.ReportWithin(n, at, document.DidYouMean(name, l.names()), "unknown name %q", name)
		}
		t = append(t, p)
		rest, at = after, at+len([]rune(name))+1
	}
}

// names lists everything that may stand in braces.
func (l *loader) names() []string {
	var names []string
	for _, f := range l.book.Facts {
		names = append(names, f.Name)
	}
	for _, limit := range l.book.Limits {
		names = append(names, "limit."+limit.Name)
	}
	return names
}

// fill puts the values into the sentence.
func (t template) fill(s *State, units quantity.System) string {
	var b strings.Builder
	for _, p := range t {
		switch {
		case p.limit != nil:
			b.WriteString(p.limit.Is.FormatRounded(units))
		case p.slot != noSlot && s.known[p.slot] && s.book.Facts[p.slot].roughlyKnown():
			b.WriteString(s.quantity(p.slot).FormatRounded(units))
		case p.slot != noSlot:
			b.WriteString(s.Show(p.slot, units))
		default:
			b.WriteString(p.text)
		}
	}
	return b.String()
}

// roughlyKnown reports whether more than three digits of a fact would only
// pretend: an estimated hardness, a number of hours.
func (f *Fact) roughlyKnown() bool {
	return f.Sort == Number && f.WorkedOut() && f.Kind != quantity.Length
}

func (s *State) quantity(slot int) quantity.Quantity {
	return quantity.Quantity{Value: s.number[slot], Kind: s.book.Facts[slot].Kind}
}

// NamesIn lists the facts, and limits as limit.NAME, that a formula or condition
// names.
func (b *Rulebook) NamesIn(formula string) (named []string) {
	for _, word := range words.FindAllString(formula, -1) {
		if b.Fact(word) >= 0 || strings.HasPrefix(word, "limit.") {
			named = append(named, word)
		}
	}
	return named
}

// Mentions lists the facts, and limits as limit.NAME, whose values the reason of
// a rule shows.
func (r *Rule) Mentions(b *Rulebook) (named []string) {
	for _, p := range r.because {
		switch {
		case p.limit != nil:
			named = append(named, "limit."+p.limit.Name)
		case p.slot != noSlot:
			named = append(named, b.Facts[p.slot].Name)
		}
	}
	return named
}
