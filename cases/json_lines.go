package cases

import (
	"encoding/json"
	"errors"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
)

var lineKeys = document.Keys{
	{Name: "job", Needed: true, Means: "The number or name of the job."},
	{Name: "bore", Needed: true, Means: "The name of the bore."},
	{Name: "units", Means: "The unit of lengths that are written without one: mm or inch."},
	{Name: "facts", Means: "What was found at the bore."},
	{Name: "readings", Means: "Measurements in the bore as it was found."},
}

// JSONLines is a batch of bores, each an object on a line of its own, with the
// keys and notations of a job file. null stands for what is not known.
type JSONLines struct {
	*lines
	book *engine.Rulebook
}

// OpenJSONLines opens a stream of lines.
func OpenJSONLines(r io.Reader, file string, book *engine.Rulebook) (*JSONLines, error) {
	ls, err := newLines(r, file)
	return &JSONLines{ls, book}, err
}

// Next returns the next line that is not blank.
func (l *JSONLines) Next() (Piece, error) {
	for {
		next, err := l.lines.next()
		if err != nil {
			return Piece{}, err
		}
		if next.problem.Says != "" || strings.TrimSpace(next.text) != "" {
			return Piece{next.number, next.text, next.problem}, nil
		}
	}
}

// Waiting reports whether the next line has yet to come.
func (l *JSONLines) Waiting() bool { return l.lines.waiting() }

// Decoder returns what decodes lines, for one goroutine.
func (l *JSONLines) Decoder() Decoder { return lineDecoder{l.file, l.book} }

// lineRemedy shows what a line looks like.
const lineRemedy = `write one bore a line, as {"job": "HB-1", "bore": "left ear", "facts": {"finish_bore": "80 mm"}}`

type lineDecoder struct {
	file string
	book *engine.Rulebook
}

// Decode decodes the bore on one line.
func (d lineDecoder) Decode(p Piece) []Row {
	if p.Problem.Says != "" {
		return faulty(d.file, p)
	}
	f := &document.File{Name: d.file}
	row := Row{File: d.file, Line: p.Line}
	if root := readJSON(f, p); root != nil {
		d.row(f, root, &row)
	}
	row.Problems = f.Problems()
	return []Row{row}
}

func (d lineDecoder) row(f *document.File, root *yaml.Node, row *Row) {
	if root.Kind != yaml.MappingNode {
		f.Report(root, lineRemedy, "the line does not hold a bore in braces")
		return
	}
	r := &reader{File: f, book: d.book, job: &Job{}}
	fields, complete := f.Entry(root, lineKeys)
	row.Job, _ = f.Text(fields["job"])
	row.Bore, _ = f.Text(fields["bore"])
	if fields["units"] != nil {
		r.units(fields["units"])
	}
	row.Units = r.job.Units
	if complete {
		b := Bore{Name: row.Bore}
		r.found(&b, withoutNulls(fields["facts"]), fields["readings"])
		row.Findings = b.Findings
	}
}

// withoutNulls leaves out what is null.
func withoutNulls(facts *yaml.Node) *yaml.Node {
	if facts == nil || facts.Kind != yaml.MappingNode {
		return facts
	}
	out := *facts
	out.Content = nil
	for i := 0; i+1 < len(facts.Content); i += 2 {
		if facts.Content[i+1].Tag != "!!null" {
			out.Content = append(out.Content, facts.Content[i], facts.Content[i+1])
		}
	}
	return &out
}

// deepest is how many brackets may stand within each other.
const deepest = 8

// jsonReader turns a line of JSON into a tree with places.
type jsonReader struct {
	*document.File
	piece   Piece
	decoder *json.Decoder
	depth   int
}

// readJSON reads the one value on a line. What is wrong is reported, and gives nil.
func readJSON(f *document.File, p Piece) *yaml.Node {
	r := &jsonReader{File: f, piece: p, decoder: json.NewDecoder(strings.NewReader(p.Text))}
	r.decoder.UseNumber()
	n := r.value()
	if n == nil {
		return nil
	}
	if rest := strings.TrimSpace(p.Text[r.decoder.InputOffset():]); rest != "" {
		f.Report(r.here(), "one bore a line", "something follows the bore")
		return nil
	}
	return n
}

// here is a node at the next thing on the line.
func (r *jsonReader) here() *yaml.Node {
	at := int(r.decoder.InputOffset())
	rest := r.piece.Text[at:]
	at += len(rest) - len(strings.TrimLeft(rest, " \t\r\n,:"))
	return &yaml.Node{Line: r.piece.Line, Column: utf8.RuneCountInString(r.piece.Text[:at]) + 1}
}

// value reads a value; nil when there is none that could be read.
func (r *jsonReader) value() *yaml.Node {
	n := r.here()
	token, err := r.decoder.Token()
	if err != nil {
		r.wrong(err)
		return nil
	}
	n.Kind, n.Tag = yaml.ScalarNode, "!!str"
	switch v := token.(type) {
	case json.Delim:
		return r.inside(n, v)
	case string:
		n.Value, n.Style = v, yaml.DoubleQuotedStyle
	case json.Number:
		n.Value = v.String()
	case bool:
		n.Value = strconv.FormatBool(v)
	default:
		n.Tag = "!!null"
	}
	return n
}

// inside reads what stands in brackets.
func (r *jsonReader) inside(n *yaml.Node, opening json.Delim) *yaml.Node {
	if r.depth++; r.depth > deepest {
		r.Report(n, "see boremend help formats", "too many brackets stand within each other")
		return nil
	}
	n.Kind, n.Tag = yaml.SequenceNode, ""
	if opening == '{' {
		n.Kind = yaml.MappingNode
	}
	for r.decoder.More() {
		value := r.value()
		if value == nil {
			return nil
		}
		if n.Kind == yaml.MappingNode && len(n.Content)%2 == 0 && valueOf(n, value.Value) != nil {
			r.Report(value, "keep one of the two", "%q is there twice", value.Value)
			return nil
		}
		n.Content = append(n.Content, value)
	}
	if _, err := r.decoder.Token(); err != nil {
		r.wrong(err)
		return nil
	}
	r.depth--
	return n
}

// wrong reports what the JSON library says.
func (r *jsonReader) wrong(err error) {
	at := len(strings.TrimRight(r.piece.Text, "\r\n"))
	var syntax *json.SyntaxError
	says := "the line ends too early"
	if errors.As(err, &syntax) && !errors.Is(err, io.ErrUnexpectedEOF) {
		at, says = int(min(max(syntax.Offset-1, 0), int64(at))), "is not valid JSON: "+strings.ReplaceAll(syntax.Error(), "\n", " ")
	}
	n := &yaml.Node{Line: r.piece.Line, Column: utf8.RuneCountInString(r.piece.Text[:at]) + 1}
	r.Report(n, lineRemedy, "%s", says)
}

var _ Batch = (*JSONLines)(nil)
