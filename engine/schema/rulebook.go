package schema

import (
	"path"
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
	forms := engine.Forms()
	if len(book.Over) > 0 {
		forms = engine.OverlayForms()
	}
	for _, form := range forms {
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
	entry := Entry(form.Keys, w.values(name))
	w.together(name, entry)
	if form.Changes != nil {
		entry = &Schema{AnyOf: []*Schema{Entry(form.Changes, w.values(name)), entry}}
	}
	whole := entry
	switch {
	case form.List && len(w.book.Over) > 0: // a file with comments only is nothing
		whole = &Schema{AnyOf: []*Schema{List(entry), {Type: "null"}}}
	case form.List:
		whole = List(entry)
	}
	whole.Dialect, whole.Title, whole.Description = Dialect, form.File+" of a boremend rulebook", form.Means
	return whole
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
			"off": List(Entry(engine.OffKeys(), map[string]*Schema{"rule": Text(), "because": Text(), "was": Text()})),
		}
	case "facts":
		return map[string]*Schema{
			"fact": plainName(factName), "means": Text(),
			"kind":    OneWord(append([]string{w.words.ChoiceKind, w.words.YesNoKind}, quantity.KindNames()...)...),
			"choices": {Type: "array", Items: Text()},
			"range":   {Type: "array", Items: Text(), MinItems: 2, MaxItems: 2},
			"tier":    count(), "minutes": Number(nil, nil, 0), "change": OneWord(w.words.Changes...),
			"ask": Text(), "how": Text(), "tool": Text(), "if_guessed": Text(), "give_or_take": Text(),
			"from": Text(), "assume": Text(), "at_least": SomeWord(w.facts()...), "was": Text(),
		}
	case "limits":
		return map[string]*Schema{
			"limit": plainName(factName), "is": anyQuantity(), "means": Text(), "source": sources(),
			"trust": OneWord(w.words.Trusts...), "kind": OneWord(quantity.KindNames()...),
			"was": anyQuantity(),
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
