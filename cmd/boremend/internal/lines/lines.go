// Package lines writes advice one line a bore, as CSV for a spreadsheet or as
// JSON lines. It only renders: what it writes stands in the values it is given.
package lines

import (
	"bufio"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"io"
	"strconv"
	"strings"

	"boremend/engine"
	"boremend/engine/document"
)

// Line is one bore with its advice, or with what is wrong.
type Line struct {
	File     string
	Line     int // 0 where the file as a whole is meant
	Job      string
	Bore     string
	Advice   *engine.Brief // nil where there are problems
	Problems document.Problems
}

// Writer writes lines.
type Writer interface {
	Write(l Line) error
	// Flush hands everything on.
	Flush() error
}

// sheet writes CSV.
type sheet struct {
	csv      *csv.Writer
	rulebook string
	searched bool
	row      []string
}

// shortSHA is how much of a digest tells rulebooks apart for a person.
const shortSHA = 12

// Sheet begins a CSV with the names of its columns. searched says whether there
// are columns for what a search finds.
func Sheet(w io.Writer, book engine.Imprint, searched bool) (Writer, error) {
	s := &sheet{csv: csv.NewWriter(w), searched: searched,
		rulebook: fmt.Sprintf("%s %s %.*s", book.Title, book.Edition, shortSHA, book.SHA256)}
	head := []string{"job", "bore", "advice", "method", "verdict", "points", "runner_up", "lead", "narrow"}
	if searched {
		head = append(head, "provisional", "touchy", "missing")
	}
	return s, s.csv.Write(append(head, "demands", "cautions", "error", "place", "rulebook"))
}

// Write writes one line. Cells that do not apply stay empty.
func (s *sheet) Write(l Line) error {
	s.row = append(s.row[:0], cell(l.Job), cell(l.Bore))
	if l.Advice == nil {
		blank := 7
		if s.searched {
			blank += 3
		}
		s.row = append(s.row, make([]string, blank+2)...)
	} else {
		s.advice(l.Advice)
	}
	s.row = append(s.row, cell(errorText(l.Problems)), cell(place(l)), cell(s.rulebook))
	return s.csv.Write(s.row)
}

func (s *sheet) advice(b *engine.Brief) {
	c := b.Chosen
	s.row = append(s.row, cell(c.Title), cell(c.Method), c.Verdict, number(c.Points))
	if c.RunnerUp != nil {
		s.row = append(s.row, cell(*c.RunnerUp), number(*c.Lead))
	} else {
		s.row = append(s.row, "", "")
	}
	s.row = append(s.row, yesNo(c.Narrow))
	if s.searched {
		s.row = append(s.row, notSettled(yesNo(c.Provisional), c.ProvisionalUnsure && !c.Provisional), touchy(c), list(b.Missing))
	}
	s.row = append(s.row, list(b.Demands), list(b.Cautions))
}

// Flush hands the rows on.
func (s *sheet) Flush() error {
	s.csv.Flush()
	return s.csv.Error()
}

// touchy names the facts that could overturn an advice.
func touchy(c engine.Chosen) string {
	switch {
	case len(c.Touchy) == 0:
		return notSettled("no", c.TouchyUnsure)
	case c.TouchyTogether:
		return cell(strings.Join(c.Touchy, " with "))
	}
	return list(c.Touchy)
}

// notSettled says so where the effort allowed did not suffice.
func notSettled(text string, unsure bool) string {
	if unsure {
		return "not settled"
	}
	return text
}

func yesNo(is bool) string {
	if is {
		return "yes"
	}
	return "no"
}

func number(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

func list(words []string) string { return cell(strings.Join(words, "; ")) }

// cell keeps a spreadsheet from taking text for a formula: such text gets a '
// before it, which spreadsheets show as text.
func cell(text string) string {
	if t := strings.TrimLeft(text, " \t\r\n"); t != "" && strings.ContainsRune("=+-@", rune(t[0])) || t != text && t != "" && text[0] != ' ' {
		return "'" + text
	}
	return text
}

// errorText is everything that is wrong with a bore, without the file.
func errorText(problems document.Problems) string {
	texts := make([]string, len(problems))
	for i, p := range problems {
		p.File = ""
		if texts[i] = p.Error(); p.Line > 0 {
			texts[i] = fmt.Sprintf("%d:%d: %s", p.Line, p.Column, texts[i])
		}
	}
	return strings.Join(texts, " | ")
}

func place(l Line) string {
	if l.Line == 0 {
		return l.File
	}
	return fmt.Sprintf("%s:%d", l.File, l.Line)
}

// jsonLine is a line as JSON, under the keys of advise.
type jsonLine struct {
	Job      string         `json:"job"`
	Rulebook engine.Imprint `json:"rulebook"`
	Bore     string         `json:"bore"`
	Advice   any            `json:"advice,omitempty"`
	Missing  *[]string      `json:"missing,omitempty"`
	Demands  *[]string      `json:"demands,omitempty"`
	Cautions *[]caution     `json:"cautions,omitempty"`
	Errors   []jsonError    `json:"errors,omitempty"`
	Place    jsonPlace      `json:"place"`
}

type caution struct {
	Caution string `json:"caution"`
}

type jsonPlace struct {
	File string `json:"file"`
	Line int    `json:"line,omitempty"`
}

type jsonError struct {
	File   string `json:"file"`
	Line   int    `json:"line"`
	Column int    `json:"column"`
	Says   string `json:"says"`
	Remedy string `json:"remedy"`
}

// decided is an advice for which nothing was searched.
type decided struct {
	Method   string   `json:"method"`
	Title    string   `json:"title"`
	Plain    string   `json:"plain"`
	Verdict  string   `json:"verdict"`
	Points   float64  `json:"points"`
	Lead     *float64 `json:"lead"`
	RunnerUp *string  `json:"runner_up"`
	Tie      bool     `json:"tie"`
	Narrow   bool     `json:"narrow"`
}

// objects writes JSON lines.
type objects struct {
	out  *bufio.Writer
	json *json.Encoder
	book engine.Imprint
}

// Objects begins JSON lines.
func Objects(w io.Writer, book engine.Imprint) Writer {
	o := &objects{out: bufio.NewWriter(w), book: book}
	o.json = json.NewEncoder(o.out)
	o.json.SetEscapeHTML(false)
	return o
}

// Write writes one object.
func (o *objects) Write(l Line) error {
	out := jsonLine{Job: l.Job, Rulebook: o.book, Bore: l.Bore, Place: jsonPlace{l.File, l.Line}}
	for _, p := range l.Problems {
		out.Errors = append(out.Errors, jsonError(p))
	}
	if b := l.Advice; b != nil {
		cautions := make([]caution, len(b.Cautions))
		for i, name := range b.Cautions {
			cautions[i] = caution{name}
		}
		out.Demands, out.Cautions = &b.Demands, &cautions
		if c := b.Chosen; b.Searched {
			out.Advice, out.Missing = c, &b.Missing
		} else {
			out.Advice = decided{c.Method, c.Title, c.Plain, c.Verdict, c.Points, c.Lead, c.RunnerUp, c.Tie, c.Narrow}
		}
	}
	return o.json.Encode(out)
}

// Flush hands the lines on.
func (o *objects) Flush() error { return o.out.Flush() }
