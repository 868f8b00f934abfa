// Package document reads YAML files, and JSON, strictly and remembers where everything
// stood, so that every complaint names file, line, column and a remedy.
//
// It refuses what a rulebook or a job never needs and what only hides
// mistakes: anchors and aliases, tags, merge keys, duplicate keys, several
// documents in a file, files of more than a mebibyte. It knows YAML and nothing
// of facts or rules.
package document

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

// The largest file and the most values in one that are read at all.
const (
	maxBytes = 1 << 20
	maxNodes = 50_000
)

// File is one YAML document with the problems found in it so far.
type File struct {
	Name     string
	Root     *yaml.Node // nil when the file could not be read
	lines    []string
	problems Problems
}

// Open reads the named file of fsys; shown is the name that a person would
// type to see it.
func Open(fsys fs.FS, name, shown string) (*File, []byte) {
	f := &File{Name: shown}
	r, err := fsys.Open(name)
	if err != nil {
		f.fail("cannot be opened: %v", Cause(err))
		return f, nil
	}
	defer r.Close()
	return ReadFrom(r, shown)
}

// ReadFrom reads one document from a stream, and returns its text as well.
func ReadFrom(r io.Reader, name string) (*File, []byte) {
	text, err := io.ReadAll(io.LimitReader(r, maxBytes+1))
	if err != nil {
		f := &File{Name: name}
		f.fail("cannot be read: %v", Cause(err))
		return f, nil
	}
	return Parse(name, text), text
}

// Parse reads one YAML document. What is wrong is kept in the File.
func Parse(name string, text []byte) *File {
	f := &File{Name: name}
	if !f.readable(text) {
		return f
	}
	text = bytes.TrimPrefix(text, []byte("\ufeff"))
	f.lines = strings.Split(string(text), "\n")
	root, err := decode(text)
	switch {
	case err == io.EOF, err == nil && len(root.Content) == 0:
		f.fail("is empty")
	case err != nil:
		f.syntax(err)
	case f.plain(root):
		f.Root = root.Content[0]
	}
	return f
}

// readable refuses what is too large or not UTF-8 text.
func (f *File) readable(text []byte) bool {
	if len(text) > maxBytes {
		f.problems = append(f.problems, Problem{f.Name, 1, 1, "is larger than 1 MiB", "split it"})
		return false
	}
	return f.encoded(text)
}

// encoded refuses what is not UTF-8 text.
func (f *File) encoded(text []byte) bool {
	switch {
	case bytes.HasPrefix(text, []byte("\xff\xfe")), bytes.HasPrefix(text, []byte("\xfe\xff")):
		f.problems = append(f.problems, Problem{f.Name, 1, 1, "is UTF-16 text", "save it as UTF-8"})
	case !utf8.Valid(text):
		line, column := badRune(text)
		f.problems = append(f.problems, Problem{f.Name, line, column, "is not UTF-8 text", "save it as UTF-8"})
	default:
		return true
	}
	return false
}

func badRune(text []byte) (line, column int) {
	line, column = 1, 1
	for len(text) > 0 {
		r, n := utf8.DecodeRune(text)
		if r == utf8.RuneError && n == 1 {
			break
		}
		column++
		if r == '\n' {
			line, column = line+1, 1
		}
		text = text[n:]
	}
	return line, column
}

// decode reads the only document. The library may panic on hostile input, which
// must reach the person as a complaint about the file.
func decode(text []byte) (root *yaml.Node, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("yaml: %v", r)
		}
	}()
	d := yaml.NewDecoder(bytes.NewReader(text))
	root = new(yaml.Node)
	if err := d.Decode(root); err != nil {
		return nil, err
	}
	var second yaml.Node
	switch err := d.Decode(&second); {
	case err == nil:
		return nil, fmt.Errorf("yaml: line %d: a second document starts here; only one is allowed", second.Line)
	case err != io.EOF:
		return nil, err
	}
	return root, nil
}

var yamlLine = regexp.MustCompile(`^(?:yaml: )?(?:line (\d+): )?`)

// syntax turns an error of the YAML library into a problem with a place.
func (f *File) syntax(err error) {
	text := strings.ReplaceAll(err.Error(), "\n", " ")
	m := yamlLine.FindStringSubmatch(text)
	line, _ := strconv.Atoi(m[1])
	f.problems = append(f.problems, Problem{f.Name, max(line, 1), 1, "is not valid YAML: " + text[len(m[0]):],
		"look at this line and the ones around it: indentation, quotes, a missing colon"})
}

// plain walks all nodes and refuses what hides mistakes.
func (f *File) plain(root *yaml.Node) bool {
	before, count := len(f.problems), 0
	var walk func(n *yaml.Node)
	walk = func(n *yaml.Node) {
		if count++; count > maxNodes {
			return
		}
		switch {
		case n.Kind == yaml.AliasNode || n.Anchor != "":
			f.Report(n, "write the value out", "anchors and aliases are not allowed")
			return
		case n.ShortTag() == "!!merge":
			f.Report(n, "write the keys out", "merge keys are not allowed")
		case n.Style&yaml.TaggedStyle != 0:
			f.Report(n, "quote the text if it starts with !", "the tag %s is not allowed", n.Tag)
		case n.Kind == yaml.MappingNode:
			f.unique(n)
		}
		for _, c := range n.Content {
			walk(c)
		}
	}
	walk(root)
	if count > maxNodes {
		f.fail("holds more than %d values", maxNodes)
	}
	return len(f.problems) == before
}

func (f *File) unique(n *yaml.Node) {
	seen := map[string]int{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		k := n.Content[i]
		if first, ok := seen[k.Value]; ok {
			f.Report(k, "keep one of the two", "%q is already set on line %d", k.Value, first)
			continue
		}
		seen[k.Value] = k.Line
	}
}

func (f *File) fail(format string, args ...any) {
	f.problems = append(f.problems, Problem{File: f.Name, Line: 1, Column: 1, Says: fmt.Sprintf(format, args...)})
}

// Report notes a problem at a node. A nil node means the whole file.
func (f *File) Report(n *yaml.Node, remedy, format string, args ...any) {
	line, column := 1, 1
	if n != nil {
		line, column = n.Line, n.Column
	}
	f.problems = append(f.problems, Problem{f.Name, line, column, fmt.Sprintf(format, args...), remedy})
}

// ReportWithin notes a problem at a character of the text of a node, counted from 0.
func (f *File) ReportWithin(n *yaml.Node, offset int, remedy, format string, args ...any) {
	line, column := f.Place(n, offset)
	f.problems = append(f.problems, Problem{f.Name, line, column, fmt.Sprintf(format, args...), remedy})
}

// Problems returns what was found wrong so far.
func (f *File) Problems() Problems { return f.problems }

// Place finds the line and column in the file of a character of a node's text.
// It is exact for plain and block text and for quoted text without escapes;
// folded text loses its lines, so its start is given.
func (f *File) Place(n *yaml.Node, offset int) (line, column int) {
	before := string([]rune(n.Value)[:min(max(offset, 0), utf8.RuneCountInString(n.Value))])
	down := strings.Count(before, "\n")
	across := utf8.RuneCountInString(before[strings.LastIndex(before, "\n")+1:])
	switch {
	case n.Style&yaml.LiteralStyle != 0 && n.Line+down < len(f.lines):
		text := f.lines[n.Line+down]
		return n.Line + 1 + down, len(text) - len(strings.TrimLeft(text, " ")) + across + 1
	case n.Style&yaml.FoldedStyle != 0 || down > 0:
		return n.Line, n.Column
	case n.Style&(yaml.SingleQuotedStyle|yaml.DoubleQuotedStyle) != 0:
		return n.Line, n.Column + 1 + across
	}
	return n.Line, n.Column + across
}
