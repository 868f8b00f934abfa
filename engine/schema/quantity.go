package schema

import (
	"boremend/engine"
	"boremend/engine/quantity"
)

// mostRunes is how long the text of a quantity may be.
const mostRunes = quantity.Longest

// Quantity is a quantity of the kind; bare says whether a number may stand
// without its unit.
func Quantity(kind quantity.Kind, bare bool) *Schema {
	text := &Schema{Type: "string", Pattern: quantity.Pattern(kind, bare), MaxLength: mostRunes}
	switch {
	case kind == quantity.Count:
		return &Schema{AnyOf: []*Schema{{Type: "integer"}, text}}
	case bare || quantity.Unitless(kind):
		return &Schema{AnyOf: []*Schema{{Type: "number"}, text}}
	}
	return text
}

// Number is a plain number between two ends, in steps; a step of 0 is none.
func Number(least, most *float64, step float64) *Schema {
	return &Schema{AnyOf: []*Schema{
		{Type: "number", Minimum: least, Maximum: most, MultipleOf: step},
		{Type: "string", Pattern: quantity.Pattern(quantity.Ratio, true), MaxLength: mostRunes},
	}}
}

// count is a whole number of zero or more.
func count() *Schema {
	return &Schema{AnyOf: []*Schema{{Type: "integer", Minimum: ptr(0)}, {Type: "string", Pattern: `^\+?\d+$`}}}
}

func ptr(v float64) *float64 { return &v }

// Fact is the answer to a fact of the rulebook, in a job file. bare says whether
// a length may stand without its unit.
func Fact(f *engine.Fact, bare bool) *Schema {
	s := Value(f, bare)
	if f.Sort == engine.Number && f.Ranged && quantity.Unitless(f.Kind) {
		s.AnyOf[0].Minimum, s.AnyOf[0].Maximum = &f.Low, &f.High
	}
	return s
}

// Value is any value of a fact, whether or not it can be in a job.
func Value(f *engine.Fact, bare bool) *Schema {
	words := engine.FixedWords()
	switch f.Sort {
	case engine.Choice:
		return OneWord(append(append([]string{}, f.Choices...), words.Unknown)...)
	case engine.YesNo:
		return YesNo(words.Unknown)
	}
	size := Quantity(f.Kind, bare && f.Kind == quantity.Length)
	if size.AnyOf == nil {
		size = &Schema{AnyOf: []*Schema{size}}
	}
	size.AnyOf = append(size.AnyOf, &Schema{Const: words.Unknown})
	return size
}

// Question is the hover text of a fact: what it is, how to find it out, and
// between what it can lie.
func Question(f *engine.Fact) string {
	text := sentence(f.Means) + sentence(f.Ask) + sentence(f.How)
	if f.Tool != "" {
		text += sentence("With: " + f.Tool)
	}
	if f.Ranged {
		text += sentence("From " + f.Show(f.Low, quantity.Millimetre) + " to " + f.Show(f.High, quantity.Millimetre))
	}
	if f.IfGuessed != "" {
		text += sentence("If guessed: " + f.IfGuessed)
	}
	return text[:max(len(text)-1, 0)]
}
