package document

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"slices"
	"strconv"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

// The largest JSON file, the most values in one and the deepest nesting that
// are read at all. Programs write more than people do.
const (
	maxJSONBytes  = 16 << 20
	maxJSONValues = 1_000_000
	maxJSONDepth  = 100
)

// ReadJSON reads one JSON value from a stream, for the same typed readers as
// YAML, and returns its text as well. Duplicate keys are refused.
func ReadJSON(r io.Reader, name string) (*File, []byte) {
	f := &File{Name: name}
	text, err := io.ReadAll(io.LimitReader(r, maxJSONBytes+1))
	text = bytes.TrimPrefix(text, []byte("\ufeff"))
	switch {
	case err != nil:
		f.fail("cannot be read: %v", Cause(err))
	case len(text) > maxJSONBytes:
		f.fail("is larger than %d MiB", maxJSONBytes>>20)
	case len(bytes.TrimSpace(text)) == 0:
		f.fail("is empty")
	case f.encoded(text):
		f.parseJSON(text)
	}
	return f, text
}

// parseJSON turns the text into nodes.
func (f *File) parseJSON(text []byte) {
	t := &jsonTree{text: text, decoder: json.NewDecoder(bytes.NewReader(text)), line: 1, column: 1}
	t.decoder.UseNumber()
	var whole json.RawMessage
	var syntax *json.SyntaxError
	if err := json.Unmarshal(text, &whole); errors.As(err, &syntax) {
		t.advance(int(max(syntax.Offset-1, 0)))
		f.problems = append(f.problems, Problem{f.Name, t.line, t.column, "is not valid JSON: " + syntax.Error(),
			"it may be cut short, or changed by hand: save it anew"})
		return
	}
	root, err := t.value(0)
	if err != nil {
		f.problems = append(f.problems, Problem{File: f.Name, Line: t.line, Column: t.column, Says: err.Error()})
		return
	}
	before := len(f.problems)
	f.uniqueWithin(root)
	if len(f.problems) == before {
		f.Root = root
	}
}

// uniqueWithin reports every key that is set twice.
func (f *File) uniqueWithin(n *yaml.Node) {
	if n.Kind == yaml.MappingNode {
		f.unique(n)
	}
	for _, c := range n.Content {
		f.uniqueWithin(c)
	}
}

// jsonTree builds nodes from text that is known to be valid JSON. Line and
// column belong to the byte at.
type jsonTree struct {
	text             []byte
	decoder          *json.Decoder
	at, line, column int
	values           int
}

// advance moves on to a byte further down.
func (t *jsonTree) advance(to int) {
	for t.at < min(to, len(t.text)) {
		r, n := utf8.DecodeRune(t.text[t.at:])
		t.at, t.column = t.at+n, t.column+1
		if r == '\n' {
			t.line, t.column = t.line+1, 1
		}
	}
}

var (
	errTooDeep = errors.New("is nested more than " + strconv.Itoa(maxJSONDepth) + " levels deep")
	errTooMany = errors.New("holds more than " + strconv.Itoa(maxJSONValues) + " values")
)

// value builds the next value.
func (t *jsonTree) value(depth int) (*yaml.Node, error) {
	start := int(t.decoder.InputOffset())
	for start < len(t.text) && bytes.IndexByte([]byte(" \t\r\n,:"), t.text[start]) >= 0 {
		start++
	}
	t.advance(start)
	t.values++
	switch {
	case depth > maxJSONDepth:
		return nil, errTooDeep
	case t.values > maxJSONValues:
		return nil, errTooMany
	}
	n := &yaml.Node{Kind: yaml.ScalarNode, Line: t.line, Column: t.column}
	token, err := t.decoder.Token()
	if err != nil {
		return nil, err
	}
	switch v := token.(type) {
	case json.Delim:
		n.Kind = yaml.MappingNode
		if v == '[' {
			n.Kind = yaml.SequenceNode
		}
		return n, t.children(n, depth)
	case string:
		n.Tag, n.Value, n.Style = "!!str", v, yaml.DoubleQuotedStyle
	case json.Number:
		n.Tag, n.Value = "!!float", v.String()
	case bool:
		n.Tag, n.Value = "!!bool", strconv.FormatBool(v)
	case nil:
		n.Tag = "!!null"
	}
	return n, nil
}

// children builds what stands between two brackets.
func (t *jsonTree) children(n *yaml.Node, depth int) error {
	for t.decoder.More() {
		child, err := t.value(depth + 1)
		if err != nil {
			return err
		}
		n.Content = append(n.Content, child)
	}
	n.Content = slices.Clip(n.Content)
	_, err := t.decoder.Token() // the closing bracket
	return err
}
