package schema

import (
	"boremend/engine"
	"boremend/engine/quantity"
)

// together adds to the entry of a file what its keys ask of each other.
func (w *writer) together(name string, entry *Schema) {
	switch name {
	case "facts":
		w.factsTogether(entry)
	case "limits":
		for _, kind := range quantity.KindNames() {
			k, _ := quantity.KindNamed(kind)
			entry.AllOf = append(entry.AllOf, when("kind", kind, &Schema{Properties: Properties{{"is", Quantity(k, false)}}}))
		}
	case "rules":
		lean := engine.Lean.String()
		points := &Schema{Required: []string{"points"}}
		entry.AllOf = append(entry.AllOf, &Schema{If: is("effect", lean), Then: points, Else: &Schema{Not: points}})
	case "cautions":
		entry.OneOf = []*Schema{{Required: []string{"if"}}, {Required: []string{"said_if"}}}
	}
}

// factsTogether says what the kind of a fact asks of its other keys.
func (w *writer) factsTogether(entry *Schema) {
	words := &Schema{Type: "array", MinItems: 2, MaxItems: w.words.MostChoices,
		Items: &Schema{Not: &Schema{Const: w.words.Unknown}}, UniqueItems: true}
	none := func(keys ...string) *Schema {
		s := &Schema{}
		for _, key := range keys {
			s.AllOf = append(s.AllOf, &Schema{Not: &Schema{Required: []string{key}}})
		}
		return s
	}
	choice := &Schema{Required: []string{"choices"}, AllOf: none("range").AllOf,
		Properties: Properties{{"choices", words}, {"give_or_take", &Schema{Const: w.words.OneClass}}}}
	entry.AllOf = append(entry.AllOf, when("kind", w.words.ChoiceKind, choice),
		when("kind", w.words.YesNoKind, none("choices", "range", "give_or_take")),
		&Schema{Not: &Schema{Required: []string{"ask", "from"}}})
	for _, kind := range quantity.KindNames() {
		k, _ := quantity.KindNamed(kind)
		number := &Schema{
			Properties: Properties{{"range", &Schema{Items: Quantity(k, false)}}, {"give_or_take", giveOrTake(k)}},
			AnyOf:      []*Schema{{Required: []string{"range"}}, {Required: []string{"from"}}}, AllOf: none("choices").AllOf,
		}
		entry.AllOf = append(entry.AllOf, when("kind", kind, number))
	}
}

func giveOrTake(kind quantity.Kind) *Schema {
	text := &Schema{Type: "string", Pattern: quantity.GiveOrTakePattern(kind), MaxLength: mostRunes}
	if !quantity.Unitless(kind) {
		return text
	}
	return &Schema{AnyOf: []*Schema{{Type: "number", Minimum: ptr(0)}, text}}
}

// is holds where a key has a value.
func is(key, value string) *Schema {
	return &Schema{Properties: Properties{{key, &Schema{Const: value}}}, Required: []string{key}}
}

// when asks for something where a key has a value.
func when(key, value string, then *Schema) *Schema {
	return &Schema{If: is(key, value), Then: then}
}
