package document

import (
	"errors"
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine/quantity"
)

// Fields hands out the values of a mapping by key and reports keys that are
// not known. A value that is not a mapping is reported and gives no fields. A
// misspelt key stands as an empty node, which is nothing but is not missing.
func (f *File) Fields(n *yaml.Node, known ...string) map[string]*yaml.Node {
	fields := map[string]*yaml.Node{}
	var misspelt []string
	for key, value := range f.Pairs(n) {
		if !slices.Contains(known, key.Value) {
			f.Report(key, DidYouMean(key.Value, known), "unknown key %q", key.Value)
			if near := quantity.Nearest(key.Value, known); near != "" {
				misspelt = append(misspelt, near)
			}
			continue
		}
		fields[key.Value] = value
	}
	// A key that is only misspelt is not missing as well.
	for _, near := range misspelt {
		if fields[near] == nil {
			fields[near] = &yaml.Node{}
		}
	}
	return fields
}

// Pairs iterates over the keys and values of a mapping in their order.
func (f *File) Pairs(n *yaml.Node) func(yield func(key, value *yaml.Node) bool) {
	return func(yield func(key, value *yaml.Node) bool) {
		if n == nil || n.IsZero() {
			return
		}
		if n.Kind != yaml.MappingNode {
			f.Report(n, "write `key: value` lines", "here must stand keys with values, not %s", shape(n))
			return
		}
		for i := 0; i+1 < len(n.Content); i += 2 {
			if !yield(n.Content[i], n.Content[i+1]) {
				return
			}
		}
	}
}

// List returns the entries of a list; anything else is reported.
func (f *File) List(n *yaml.Node) []*yaml.Node {
	switch {
	case n == nil || n.IsZero():
		return nil
	case n.Kind != yaml.SequenceNode:
		f.Report(n, "start each entry with a dash, or write [a, b]", "here must stand a list, not %s", shape(n))
		return nil
	}
	return n.Content
}

// Words returns a list of texts.
func (f *File) Words(n *yaml.Node) []string {
	var words []string
	for _, e := range f.List(n) {
		if text, ok := f.Text(e); ok {
			words = append(words, text)
		}
	}
	return words
}

// Text returns the text of a scalar as written. A list, a mapping or nothing
// at all is reported.
func (f *File) Text(n *yaml.Node) (string, bool) {
	switch {
	case n == nil || n.IsZero():
		return "", false
	case n.Kind != yaml.ScalarNode:
		f.Report(n, "write one value", "here must stand one value, not %s", shape(n))
		return "", false
	case strings.TrimSpace(n.Value) == "" || n.ShortTag() == "!!null":
		f.Report(n, "give a value, or leave the key out", "the value is empty")
		return "", false
	}
	return n.Value, true
}

// Quantity returns a quantity of the kind; bare is the unit of a number that is
// written without one, and may be empty.
func (f *File) Quantity(n *yaml.Node, kind quantity.Kind, bare string) (quantity.Reading, bool) {
	text, ok := f.Text(n)
	if !ok {
		return quantity.Reading{}, false
	}
	reading, err := quantity.Parse(text, kind, bare)
	if err != nil {
		f.ReportSyntax(n, err)
		return quantity.Reading{}, false
	}
	return reading, true
}

// ReportSyntax notes what is wrong with the quantity in a node, at its place.
func (f *File) ReportSyntax(n *yaml.Node, err error) {
	var syntax *quantity.SyntaxError
	if !errors.As(err, &syntax) {
		f.Report(n, "", "%v", err)
		return
	}
	f.ReportWithin(n, syntax.At, syntax.Remedy, "%s", syntax.Problem)
}

// Number returns a plain number.
func (f *File) Number(n *yaml.Node) (float64, bool) {
	text, ok := f.Text(n)
	if !ok {
		return 0, false
	}
	reading, err := quantity.Parse(text, quantity.Ratio, "")
	if err != nil || strings.ContainsAny(text, "%±") {
		f.Report(n, "write a plain number such as 2 or -1.5", "%q is not a number", text)
		return 0, false
	}
	return reading.Value, true
}

// Count returns a whole number of at least zero.
func (f *File) Count(n *yaml.Node) (int, bool) {
	text, ok := f.Text(n)
	if !ok {
		return 0, false
	}
	v, err := strconv.Atoi(text)
	if err != nil || v < 0 {
		f.Report(n, "write a whole number", "%q is not a whole number of zero or more", text)
		return 0, false
	}
	return v, true
}

// YesNo returns a plain true or false; yes and no are taken as well.
func (f *File) YesNo(n *yaml.Node) (value, ok bool) {
	text, ok := f.Text(n)
	if !ok {
		return false, false
	}
	switch text {
	case "true", "yes":
		return true, true
	case "false", "no":
		return false, true
	}
	f.Report(n, "write yes or no", "%q is neither yes nor no", text)
	return false, false
}

// Choice returns one of the words.
func (f *File) Choice(n *yaml.Node, words ...string) (string, bool) {
	text, ok := f.Text(n)
	if !ok {
		return "", false
	}
	if !slices.Contains(words, text) {
		f.Report(n, DidYouMean(text, words), "%q is not one of the choices", text)
		return "", false
	}
	return text, true
}

// Require reports every key that is missing from the fields of n.
func (f *File) Require(n *yaml.Node, fields map[string]*yaml.Node, keys ...string) bool {
	complete := true
	for _, key := range keys {
		if fields[key] == nil {
			f.Report(n, "add "+key+":", "%q is missing", key)
			complete = false
		}
	}
	return complete
}

// DidYouMean is the remedy for a wrong word: the nearest valid one, or all of
// them when none is near and they are few.
func DidYouMean(word string, valid []string) string {
	if near := quantity.Nearest(word, valid); near != "" {
		return "did you mean " + near + "?"
	}
	if len(valid) > 12 {
		return "no word like it is known"
	}
	return "one of " + strings.Join(valid, ", ")
}

// shape says in plain words what a node is.
func shape(n *yaml.Node) string {
	switch n.Kind {
	case yaml.SequenceNode:
		return "a list"
	case yaml.MappingNode:
		return "keys with values"
	}
	if n.Value == "" {
		return "nothing"
	}
	return "the single value " + strconv.Quote(clip(n.Value))
}

func clip(text string) string {
	if r := []rune(text); len(r) > 40 {
		return string(r[:40]) + "..."
	}
	return text
}
