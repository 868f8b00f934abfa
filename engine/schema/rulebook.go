package schema

import (
	"path"
	"slices"
	"strings"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// Catalogue is what a rulebook may name beyond its own folder.
type Catalogue struct {
	Sheets []string // that size a method; where none are given, any word is taken
}

// Named is the schema of one kind of file.
type Named struct {
	Name string // rulebook, facts, limits, methods, cautions, rules
	File string // the file, or files, in the folder of the rulebook
	Is   *Schema
}

// Rulebook returns a schema for each kind of file of a rulebook. Names that the
// files may mention are those of the rulebook given; others are taken too, since
// they may be declared in the same minute in the file next door.
func Rulebook(book *engine.Rulebook, catalogue Catalogue) []Named {
	w := &writer{book: book, catalogue: catalogue, words: engine.FixedWords()}
	var all []Named
	for _, form := range engine.Forms() {
		name := strings.TrimSuffix(path.Base(form.File), ".yaml")
		if name == "*" {
			name = path.Dir(form.File)
		}
		all = append(all, Named{name, form.File, w.file(name, form)})
	}
	return all
}

// writer writes the schemas of one rulebook.
type writer struct {
	book      *engine.Rulebook
	catalogue Catalogue
	words     engine.Words
}

// file is the schema of a whole file.
func (w *writer) file(name string, form engine.Form) *Schema {
	entry := w.entry(name, form)
	w.together(name, entry)
	whole := entry
	if form.List {
		whole = List(entry)
	}
	whole.Dialect, whole.Title, whole.Description = Dialect, form.File+" of a boremend rulebook", form.Means
	return whole
}

// entry is one entry of a file, of a whole rulebook or of an overlay: a schema
// cannot know which of them the file belongs to.
func (w *writer) entry(name string, form engine.Form) *Schema {
	values := w.values(name)
	if form.Overlay == nil {
		return Entry(form.Keys, values)
	}
	onlyBelow, onlyOver := without(form.Keys, form.Overlay), without(form.Overlay, form.Keys)
	entry := Entry(append(slices.Clone(form.Keys), onlyOver...), values)
	entry.Required = nil
	entry.AnyOf = []*Schema{
		{Required: form.Keys.Needed(), Not: anyOf(onlyOver)},
		{Required: form.Overlay.Needed(), Not: anyOf(onlyBelow)},
	}
	return entry
}

// without lists the keys that are not among the others.
func without(keys, others document.Keys) document.Keys {
	return slices.DeleteFunc(slices.Clone(keys), func(k document.Key) bool { return slices.Contains(others.Names(), k.Name) })
}

// anyOf holds where one of the keys is there.
func anyOf(keys document.Keys) *Schema {
	s := &Schema{}
	for _, k := range keys {
		s.AnyOf = append(s.AnyOf, &Schema{Required: []string{k.Name}})
	}
	return s
}

// Entry is a mapping with these keys and no others. values gives the schema of
// the value of each key.
func Entry(keys document.Keys, values map[string]*Schema) *Schema {
	entry := &Schema{Type: "object", Required: keys.Needed(), Additional: false}
	for _, k := range keys {
		value := values[k.Name]
		if value == nil {
			value = &Schema{}
		}
		entry.Properties = append(entry.Properties, Property{k.Name, value.Means(k.Means)})
	}
	return entry
}

// values says what may stand under each key of a file. Every key of the loader
// has its line here; a test fails where one is missing.
func (w *writer) values(name string) map[string]*Schema {
	switch name {
	case "rulebook":
		return map[string]*Schema{
			"title": Text(), "edition": Text(), "narrow": Number(ptr(0), nil, 0),
			"fallback": SomeWord(w.book.MethodNames()...),
			"subjects": List(SomeWord(w.subjects()...)), "steps": List(Text()),
			"over": Text(), "over_edition": Text(),
			"off": List(Entry(engine.OffKeys(), map[string]*Schema{"rule": SomeWord(w.rules()...), "because": Text(), "was": Text()})),
		}
	case "facts":
		return map[string]*Schema{
			"fact": plainName(factName), "means": Text(),
			"kind":    OneWord(append([]string{w.words.ChoiceKind, w.words.YesNoKind}, quantity.KindNames()...)...),
			"choices": {Type: "array", Items: Text()},
			"range":   {Type: "array", Items: Text(), MinItems: 2, MaxItems: 2},
			"tier":    count(), "minutes": Number(nil, nil, 0), "change": OneWord(w.words.Changes...),
			"ask": Text(), "how": Text(), "tool": Text(), "if_guessed": Text(), "give_or_take": Text(),
			"from": Text(), "was": Text(), "assume": Text(), "at_least": SomeWord(w.facts()...),
		}
	case "limits":
		return map[string]*Schema{
			"limit": plainName(factName), "is": anyQuantity(), "was": anyQuantity(), "means": Text(), "source": sources(),
			"trust": OneWord(w.words.Trusts...), "kind": OneWord(quantity.KindNames()...),
		}
	case "methods":
		return map[string]*Schema{
			"method": plainName(ruleName), "title": Text(), "plain": Text(), "groups": List(SomeWord(w.groups()...)),
			"start": w.points(), "sizes": List(w.sheets()),
		}
	case "rules":
		return map[string]*Schema{
			"rule": plainName(ruleName), "for": List(SomeWord(w.methods()...)), "effect": OneWord(w.words.Effects...),
			"if": Text(), "because": Text(), "source": sources(), "trust": OneWord(w.words.Trusts...),
			"points": w.points(), "if_unknown": OneWord(w.words.IfUnknown...),
		}
	case "cautions":
		return map[string]*Schema{
			"caution": plainName(ruleName), "danger": OneWord(w.words.Dangers...), "for": List(SomeWord(w.methods()...)),
			"at": List(SomeWord(w.book.Steps...)), "if": Text(), "said_if": Text(),
			"if_unknown": OneWord(w.words.IfCautionUnknown...), "text": Text(),
			"refs": List(Entry(engine.RefKeys(), map[string]*Schema{"ref": Text(), "how_known": Text()})),
		}
	}
	return nil
}
