// Package schema writes JSON Schemas (draft 2020-12) of the files of a rulebook,
// with which an editor completes words, shows what a key means, and underlines
// what cannot be right.
//
// It takes keys and fixed words from where the loader takes them, and names from
// the rulebook that it is given. A schema never refuses what the loader takes.
// What only the loader can tell (formulas, names that another file declares,
// ranges across units, names that are taken twice) is left to the loader.
package schema

import (
	"bytes"
	"encoding/json"

	"gopkg.in/yaml.v3"
)

// Dialect is the draft that the schemas are written in.
const Dialect = "https://json-schema.org/draft/2020-12/schema"

// Schema is one schema, with the few words of the draft that are needed here.
type Schema struct {
	Dialect     string     `json:"$schema,omitempty"`
	Ref         string     `json:"$ref,omitempty"`
	Title       string     `json:"title,omitempty"`
	Description string     `json:"description,omitempty"`
	Type        any        `json:"type,omitempty"` // a word, or several
	Const       any        `json:"const,omitempty"`
	Enum        []any      `json:"enum,omitempty"`
	Pattern     string     `json:"pattern,omitempty"`
	MaxLength   int        `json:"maxLength,omitempty"`
	Minimum     *float64   `json:"minimum,omitempty"`
	Maximum     *float64   `json:"maximum,omitempty"`
	MultipleOf  float64    `json:"multipleOf,omitempty"`
	Required    []string   `json:"required,omitempty"`
	Properties  Properties `json:"properties,omitempty"`
	Additional  any        `json:"additionalProperties,omitempty"` // false, or a schema
	Items       *Schema    `json:"items,omitempty"`
	MinItems    int        `json:"minItems,omitempty"`
	MaxItems    int        `json:"maxItems,omitempty"`
	UniqueItems bool       `json:"uniqueItems,omitempty"`
	AllOf       []*Schema  `json:"allOf,omitempty"`
	AnyOf       []*Schema  `json:"anyOf,omitempty"`
	OneOf       []*Schema  `json:"oneOf,omitempty"`
	Not         *Schema    `json:"not,omitempty"`
	If          *Schema    `json:"if,omitempty"`
	Then        *Schema    `json:"then,omitempty"`
	Else        *Schema    `json:"else,omitempty"`
	Defs        Properties `json:"$defs,omitempty"`
}

// Property is a schema under its name.
type Property struct {
	Name string
	Is   *Schema
}

// Properties keep their order, in which an editor offers them.
type Properties []Property

// MarshalJSON writes the properties as one object in their order.
func (ps Properties) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	b.WriteByte('{')
	for i, p := range ps {
		if i > 0 {
			b.WriteByte(',')
		}
		name, err := json.Marshal(p.Name)
		if err != nil {
			return nil, err
		}
		value, err := plainJSON(p.Is)
		if err != nil {
			return nil, err
		}
		b.Write(name)
		b.WriteByte(':')
		b.Write(value)
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// Text writes the schema as indented JSON.
func (s *Schema) Text() ([]byte, error) {
	text, err := plainJSON(s)
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	if err := json.Indent(&b, text, "", "  "); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

// plainJSON leaves < and & as they are.
func plainJSON(v any) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	err := e.Encode(v)
	return b.Bytes(), err
}

// The building blocks. A file is YAML, in which an unquoted 1 or yes may reach
// the editor as a number or a truth value, and the loader takes the text as it
// is written.

// Text is any single value that is not empty.
func Text() *Schema {
	return &Schema{Type: []string{"string", "number", "boolean"}, Pattern: `[^\s\p{Z}]`}
}

// List is a list of what is given.
func List(of *Schema) *Schema { return &Schema{Type: "array", Items: of} }

// OneWord is one of the words. Where there are none, nothing is right.
func OneWord(words ...string) *Schema {
	s := &Schema{}
	if len(words) == 0 {
		s.Not = &Schema{}
	}
	for _, word := range words {
		s.Enum = append(s.Enum, written(word)...)
	}
	return s
}

// SomeWord offers the words, and takes any other text as well: it may be
// declared in a file that the schema does not know.
func SomeWord(words ...string) *Schema {
	if len(words) == 0 {
		return Text()
	}
	return &Schema{AnyOf: []*Schema{OneWord(words...), Text()}}
}

// YesNo is yes or no, however it is written.
func YesNo(more ...string) *Schema {
	return OneWord(append([]string{"yes", "no", "true", "false"}, more...)...)
}

// written is how an unquoted and a quoted word reach an editor.
func written(word string) []any {
	values := []any{word}
	var v any
	switch (&yaml.Node{Kind: yaml.ScalarNode, Value: word}).ShortTag() {
	case "!!int", "!!float", "!!bool":
		if json.Unmarshal([]byte(word), &v) == nil {
			values = append(values, v)
		}
	}
	return values
}

// Means returns the schema with a hover text of its own.
func (s *Schema) Means(text string) *Schema {
	out := *s
	out.Description = text
	return &out
}
