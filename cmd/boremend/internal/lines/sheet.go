package lines

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"
	"strings"

	"boremend/engine"
	"boremend/engine/document"
)

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
	const begins = "=+-@" // a formula, with or without blanks before it
	if t := strings.TrimLeft(text, " \t\r\n"); t != "" && strings.Contains(begins, t[:1]) {
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
