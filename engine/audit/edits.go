package audit

import (
	"slices"
	"strconv"
	"strings"

	"boremend/engine"
	"boremend/engine/quantity"
)

// RulebookEdit is one thing in which two rulebooks differ: a rule, limit, fact,
// method or caution that was added, removed or edited, or the title page.
type RulebookEdit struct {
	Of     string      `json:"of"`   // rule, limit, fact, method, caution or rulebook
	Name   string      `json:"name"` // of the rulebook: empty
	Change string      `json:"change"`
	Fields []FieldEdit `json:"fields"`
}

// FieldEdit is one field before and after, as the files write it. Of something
// added or removed one of the two is empty.
type FieldEdit struct {
	Field  string `json:"field"`
	Before string `json:"before"`
	After  string `json:"after"`
}

// What became of a thing.
const (
	Added   = "added"
	Removed = "removed"
	Edited  = "edited"
)

// field is one field of a thing, as text.
type field struct{ name, text string }

// thing is a named part of a rulebook.
type thing struct {
	name   string
	fields []field
}

// Edits lists in what two rulebooks differ, the title page first, then limits,
// facts, methods, rules and cautions in the order of their files. Comments,
// layout and the order of the rules do not count.
func Edits(before, after *engine.Rulebook, units quantity.System) []RulebookEdit {
	edits := []RulebookEdit{}
	for _, part := range []struct {
		of   string
		list func(*engine.Rulebook) []thing
	}{
		{"rulebook", titlePage}, {"limit", func(b *engine.Rulebook) []thing { return limitsIn(b, units) }}, {"fact", factsOf}, {"method", methodsOf}, {"rule", rulesOf}, {"caution", cautionsOf},
	} {
		edits = append(edits, editsOf(part.of, part.list(before), part.list(after))...)
	}
	return edits
}

func editsOf(of string, before, after []thing) (edits []RulebookEdit) {
	find := func(list []thing, name string) (thing, bool) {
		i := slices.IndexFunc(list, func(t thing) bool { return t.name == name })
		if i < 0 {
			return thing{}, false
		}
		return list[i], true
	}
	for _, was := range before {
		is, stays := find(after, was.name)
		change := Edited
		if !stays {
			change = Removed
		}
		if fields := fieldEdits(was.fields, is.fields); len(fields) > 0 {
			edits = append(edits, RulebookEdit{of, was.name, change, fields})
		}
	}
	for _, is := range after {
		if _, was := find(before, is.name); !was {
			edits = append(edits, RulebookEdit{of, is.name, Added, fieldEdits(nil, is.fields)})
		}
	}
	return edits
}

// fieldEdits lists the fields that differ. A thing has the same fields in every
// book, empty where they are not written.
func fieldEdits(before, after []field) (edits []FieldEdit) {
	for i := range max(len(before), len(after)) {
		var e FieldEdit
		if i < len(before) {
			e.Field, e.Before = before[i].name, before[i].text
		}
		if i < len(after) {
			e.Field, e.After = after[i].name, after[i].text
		}
		if e.Before != e.After {
			edits = append(edits, e)
		}
	}
	return edits
}

func titlePage(b *engine.Rulebook) []thing {
	return []thing{{"", []field{
		{"title", b.Title}, {"edition", b.Edition}, {"narrow", numberText(b.Narrow)}, {"fallback", b.Methods[b.Fallback].Name},
		{"order of methods", strings.Join(b.MethodNames(), ", ")},
	}}}
}

func limitsOf(b *engine.Rulebook) []thing { return limitsIn(b, quantity.Millimetre) }

func limitsIn(b *engine.Rulebook, units quantity.System) (list []thing) {
	for _, l := range b.Limits {
		list = append(list, thing{l.Name, []field{
			{"is", exactly(l.Is, units)}, {"means", l.Means}, {"source", l.Source}, {"trust", l.Trust},
		}})
	}
	return list
}

func factsOf(b *engine.Rulebook) (list []thing) {
	for _, f := range b.Facts {
		kind, within := f.Kind.String(), ""
		switch {
		case f.Sort == engine.Choice:
			kind = "choice"
		case f.Sort == engine.YesNo:
			kind = "yes_no"
		case f.Ranged:
			within = f.Show(f.Low, quantity.Millimetre) + " to " + f.Show(f.High, quantity.Millimetre)
		}
		list = append(list, thing{f.Name, []field{
			{"means", f.Means}, {"kind", kind}, {"choices", strings.Join(f.Choices, ", ")}, {"range", within},
			{"from", f.From}, {"assume", f.Assume}, {"at_least", f.AtLeast}, {"give_or_take", slack(f)},
			{"change", changeOf(f)}, {"minutes", unlessZero(f.Minutes)}, {"tier", unlessZero(float64(f.Tier))},
			{"ask", f.Ask}, {"how", f.How}, {"tool", f.Tool}, {"if_guessed", f.IfGuessed},
		}})
	}
	return list
}

// exactly writes a quantity as people do, if that reads back as the same, and
// else as the computer holds it.
func exactly(q quantity.Quantity, units quantity.System) string {
	text := q.Format(units)
	if reading, err := quantity.Parse(text, q.Kind, ""); err == nil && reading.Value == q.Value {
		return text
	}
	return strings.TrimSpace(numberText(q.Value) + " " + q.Kind.Unit())
}

// changeOf is what can be done about a fact, where that is not the usual answer.
func changeOf(f *engine.Fact) string {
	if f.Change == engine.Measure && f.Sort == engine.Number || f.Change == engine.Fixed && f.Sort != engine.Number {
		return ""
	}
	return string(f.Change)
}

func unlessZero(v float64) string {
	if v == 0 {
		return ""
	}
	return numberText(v)
}

func slack(f *engine.Fact) string {
	switch {
	case f.Slack.OneClass:
		return "one class"
	case f.Slack.Share:
		const percent = 100
		return numberText(f.Slack.Amount*percent) + " %"
	case f.Slack.Amount == 0:
		return ""
	}
	return strings.TrimSpace(numberText(f.Slack.Amount) + " " + f.Unit())
}

func methodsOf(b *engine.Rulebook) (list []thing) {
	for _, m := range b.Methods {
		list = append(list, thing{m.Name, []field{
			{"title", m.Title}, {"plain", m.Plain}, {"groups", strings.Join(m.Groups, ", ")}, {"start", numberText(m.Start)},
			{"sizes", strings.Join(m.Sizes, ", ")},
		}})
	}
	return list
}

func rulesOf(b *engine.Rulebook) (list []thing) {
	for _, r := range b.Rules {
		points := ""
		if r.Effect == engine.Lean {
			points = numberText(r.Points)
		}
		list = append(list, thing{r.Name, []field{
			{"for", methodsNamed(b, r.For)}, {"effect", r.Effect.String()}, {"points", points}, {"if", r.If},
			{"if_unknown", whileUnknown(r.IfUnknown)}, {"because", r.Because}, {"source", r.Source}, {"trust", r.Trust},
		}})
	}
	return list
}

func cautionsOf(b *engine.Rulebook) (list []thing) {
	for _, c := range b.Cautions {
		var refs []string
		for _, r := range c.Refs {
			refs = append(refs, r.String())
		}
		list = append(list, thing{c.Name, []field{
			{"danger", c.Danger}, {"for", methodsNamed(b, c.For)}, {"at", strings.Join(c.At, ", ")}, {"if", c.If}, {"said_if", c.SaidIf},
			{"if_unknown", whileUnknown(c.IfUnknown)}, {"text", c.Text}, {"refs", strings.Join(refs, "; ")},
		}})
	}
	return list
}

func whileUnknown(u engine.IfUnknown) string {
	return [...]string{engine.Open: "open", engine.Silent: "silent", engine.Hold: "holds"}[u]
}

func methodsNamed(b *engine.Rulebook, methods []int) string {
	names := make([]string, len(methods))
	for i, m := range methods {
		names[i] = b.Methods[m].Name
	}
	return strings.Join(names, ", ")
}

func numberText(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
