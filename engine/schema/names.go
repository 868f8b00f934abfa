package schema

import (
	"path"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"boremend/engine/quantity"
)

// What a name may look like. Facts and limits stand in formulas, where a - would
// take away and a digit would begin a number.
const (
	factName = `^[a-z_][a-z0-9_]*$`
	ruleName = `^[a-z0-9_-]+$`
)

// plainName is a name that a rulebook may give. An unquoted true is a name, too,
// and of a rule so is 12.
func plainName(pattern string) *Schema {
	types := []string{"string", "boolean"}
	if pattern == ruleName {
		types = append(types, "integer")
	}
	return &Schema{Type: types, Pattern: pattern}
}

// sources is one source or a list of them.
func sources() *Schema {
	return &Schema{AnyOf: []*Schema{Text(), {Type: "array", Items: Text(), MinItems: 1}}}
}

// points are quarters.
func (w *writer) points() *Schema {
	return Number(ptr(-w.words.MostPoints), ptr(w.words.MostPoints), 0.25)
}

// anyQuantity is a quantity of any kind, or a bare number.
func anyQuantity() *Schema {
	s := &Schema{AnyOf: []*Schema{{Type: "number"}}}
	for _, name := range quantity.KindNames() {
		kind, _ := quantity.KindNamed(name)
		s.AnyOf = append(s.AnyOf, &Schema{Type: "string", Pattern: quantity.Pattern(kind, false)})
	}
	return s
}

// sheets are the calculations that can size a method.
func (w *writer) sheets() *Schema {
	if len(w.catalogue.Sheets) == 0 {
		return Text()
	}
	return OneWord(w.catalogue.Sheets...)
}

// methods lists everything that for: may name.
func (w *writer) methods() []string {
	return append(append([]string{w.words.EveryMethod}, w.book.MethodNames()...), w.groups()...)
}

func (w *writer) groups() []string {
	var groups []string
	for _, m := range w.book.Methods {
		for _, g := range m.Groups {
			if !slices.Contains(groups, g) {
				groups = append(groups, g)
			}
		}
	}
	return groups
}

// subjects are the files of rules.
func (w *writer) subjects() []string {
	var names []string
	for _, r := range w.book.Rules {
		if name := strings.TrimSuffix(path.Base(r.File), ".yaml"); !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return names
}

// facts lists all facts, asked and worked out.
func (w *writer) facts() []string {
	var names []string
	for _, f := range w.book.Facts {
		names = append(names, f.Name)
	}
	return names
}

// sentence ends a text like a sentence, with a blank behind it.
func sentence(text string) string {
	if text = strings.TrimSpace(text); text == "" {
		return ""
	}
	first, size := utf8.DecodeRuneInString(text)
	text = string(unicode.ToUpper(first)) + text[size:]
	if !strings.ContainsAny(text[len(text)-1:], ".?!") {
		text += "."
	}
	return text + " "
}
