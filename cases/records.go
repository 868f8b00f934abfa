package cases

import (
	"io"
	"strings"

	"boremend/engine/document"
)

// records hands out the records of a table as text. A record is a line, or
// several where a cell in quotes holds line breaks. A quote that is never closed
// costs its line and no more.
type records struct {
	*lines
	comma byte // between cells; 0 while that is not known
}

// commas are what may part cells. No column name has one of them in it.
const commas = ",;\t"

// next returns the next record that is not blank.
func (r *records) next() (Piece, error) {
	for {
		first, err := r.lines.next()
		if err != nil {
			return Piece{}, err
		}
		p := Piece{Line: first.number, Text: first.text, Problem: first.problem}
		if first.problem.Says == "" && strings.TrimSpace(first.text) == "" {
			continue
		}
		q := quoting{comma: r.comma}
		if q.read(first.text); first.problem.Says != "" || !q.open {
			return p, nil
		}
		return r.rest(p, q)
	}
}

// rest reads on until the quote is closed.
func (r *records) rest(p Piece, q quoting) (Piece, error) {
	column := q.column
	var taken []line
	for q.open {
		next, err := r.lines.next()
		if err != nil && err != io.EOF {
			return Piece{}, err
		}
		if err == nil {
			taken = append(taken, next)
		}
		if err == io.EOF || next.problem.Says != "" || len(p.Text)+len(next.text) > mostLine {
			r.giveBack(taken)
			p.Problem = document.Problem{File: r.file, Line: p.Line, Column: column,
				Says: "a quote is opened here and not closed", Remedy: "close it, write 7/8 in for inches, or put the cell in quotes and write each quote in it twice"}
			return p, nil
		}
		p.Text += next.text
		q.read(next.text)
	}
	return p, nil
}

// quoting follows the quotes through a record.
type quoting struct {
	comma  byte
	open   bool
	column int // where the quote was opened, on the line read last
}

func (q *quoting) read(text string) {
	start := !q.open // of a cell
	for i := 0; i < len(text); i++ {
		switch c := text[i]; {
		case q.open && c == '"' && i+1 < len(text) && text[i+1] == '"':
			i++
		case q.open && c == '"':
			q.open = false
		case q.open:
		case c == '"' && start:
			q.open, q.column = true, len([]rune(text[:i]))+1
		default:
			start = c == q.comma || q.comma == 0 && strings.IndexByte(commas, c) >= 0
		}
	}
}
