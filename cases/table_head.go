package cases

import (
	"encoding/csv"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// The columns of a table that are not facts.
const (
	jobColumn   = "job"
	boreColumn  = "bore"
	unitsColumn = "units"
)

// What a column holds that is no fact.
const (
	jobSlot = -1 - iota
	boreSlot
	unitsSlot
)

// column is one column of a table.
type column struct {
	slot int    // of a fact, or one of the above
	unit string // of numbers that are written without one
}

// Decimal is the sign before the decimals of a number in a table.
type Decimal byte

// The two signs. A comma is taken only where somebody says so, since 1,500 may
// as well be fifteen hundred.
const (
	Point Decimal = '.'
	Comma Decimal = ','
)

// Table is a batch of bores in CSV: a row of column names, then a row a bore.
type Table struct {
	records
	book    *engine.Rulebook
	columns []column
	decimal Decimal
}

// OpenTable reads the row of column names. The error holds every problem of it.
func OpenTable(r io.Reader, file string, book *engine.Rulebook, decimal Decimal) (*Table, error) {
	ls, err := newLines(r, file)
	if err != nil {
		return nil, err
	}
	t := &Table{records: records{lines: ls}, book: book, decimal: decimal}
	head, err := t.records.next()
	if err == io.EOF {
		return nil, document.Problems{{File: file, Line: 1, Column: 1, Says: "is empty", Remedy: "begin with a line that names the columns"}}
	}
	if err != nil {
		return nil, err
	}
	if head.Problem.Says != "" {
		return nil, document.Problems{head.Problem}
	}
	f := &document.File{Name: file}
	t.comma = separator(head.Text)
	t.readHead(f, head)
	return t, f.Problems().Err()
}

// separator finds what parts the cells.
func separator(head string) byte {
	best, most := commas[0], 0
	for i := range len(commas) {
		if n := strings.Count(head, commas[i:i+1]); n > most {
			best, most = commas[i], n
		}
	}
	return best
}

// readHead finds out what each column holds.
func (t *Table) readHead(f *document.File, head Piece) {
	r := csv.NewReader(strings.NewReader(head.Text))
	r.Comma = rune(t.comma)
	names, err := r.Read()
	if err != nil {
		report(f, head, err, 0)
		return
	}
	var seen []string
	for i, cell := range names {
		_, at := r.FieldPos(i)
		n := &yaml.Node{}
		setCell(n, head, 0, at, cell, false)
		name := strings.TrimSpace(cell)
		name, unit, _ := strings.Cut(strings.TrimSuffix(name, ")"), "(")
		name, unit = strings.TrimSpace(name), strings.TrimSpace(unit)
		if slices.Contains(seen, name) && name != "" {
			f.Report(n, "keep one of the two", "the column %q is there twice", name)
			continue
		}
		seen = append(seen, name)
		t.columns = append(t.columns, t.column(f, n, name, unit))
	}
	for _, name := range []string{jobColumn, boreColumn} {
		if !slices.Contains(seen, name) && len(f.Problems()) == 0 {
			remedy := "add it"
			if len(seen) == 1 {
				remedy = "add it, and part the columns by commas, semicolons or tabs"
			}
			f.Report(&yaml.Node{Line: head.Line, Column: 1}, remedy, "there is no column %q", name)
		}
	}
}

// column finds out what one column holds.
func (t *Table) column(f *document.File, n *yaml.Node, name, unit string) column {
	slot, own := map[string]int{jobColumn: jobSlot, boreColumn: boreSlot, unitsColumn: unitsSlot}[name]
	switch {
	case name == "":
		f.Report(n, "name it, or take the column away", "a column has no name")
		return column{}
	case own && unit != "":
		f.Report(n, "write "+name, "the column %s has no unit", name)
		return column{slot: slot}
	case own:
		return column{slot: slot}
	case t.book.Fact(name) < 0:
		known := append([]string{jobColumn, boreColumn, unitsColumn}, t.book.FactNames()...)
		f.Report(n, document.DidYouMean(name, known), "unknown column %q", name)
		return column{}
	}
	slot, ok := t.book.AskedFact(f, n, name)
	if !ok || unit == "" {
		return column{slot: slot}
	}
	fact := t.book.Facts[slot]
	if fact.Sort != engine.Number {
		f.Report(n, "write "+name, "%s is no number and has no unit", name)
	} else if _, ok := (quantity.Quantity{Kind: fact.Kind}).In(unit); !ok {
		f.Report(n, document.DidYouMean(unit, quantity.Units(fact.Kind)), "%s is %s, which is not measured in %q", name, fact.Kind.Plain(), unit)
	}
	return column{slot: slot, unit: unit}
}

// report notes what the CSV library says of a record. before is how many lines it
// had read before.
func report(f *document.File, p Piece, err error, before int) {
	n := &yaml.Node{Line: p.Line, Column: 1}
	says, remedy := err.Error(), "look at the quotes and commas"
	if parse, ok := err.(*csv.ParseError); ok {
		down := parse.Line - before - 1
		n.Line, n.Column = p.Line+down, runesBefore(p.Text, down, parse.Column)+1
		says = fmt.Sprint(parse.Err)
		switch parse.Err {
		case csv.ErrBareQuote:
			says, remedy = "a quote stands in a cell that is not in quotes", "write 7/8 in for inches, or put the cell in quotes and write each quote in it twice"
		case csv.ErrQuote:
			says, remedy = "a cell goes on after its closing quote", "write each quote within a cell twice"
		}
	}
	f.Report(n, remedy, "%s", says)
}

// setCell puts a cell into a node with its place. down counts the lines within the
// record, and at is the byte, from 1, where the cell starts on its line.
func setCell(n *yaml.Node, p Piece, down, at int, cell string, ascii bool) {
	*n = yaml.Node{Kind: yaml.ScalarNode, Tag: "!!str", Value: strings.TrimSpace(cell), Line: p.Line + down, Column: at}
	if !ascii {
		n.Column = runesBefore(p.Text, down, at) + 1
	}
	if cell != "" && cell[0] <= ' ' {
		n.Column += len(cell) - len(strings.TrimLeft(cell, " \t"))
	}
	if rest := lineOf(p.Text, down); at <= len(rest) && rest[at-1] == '"' {
		n.Style = yaml.DoubleQuotedStyle
	}
}

func isASCII(text string) bool {
	for i := range len(text) {
		if text[i] >= utf8.RuneSelf {
			return false
		}
	}
	return true
}

// lineOf is a line of a record, counted from 0, and all after it.
func lineOf(text string, down int) string {
	for ; down > 0; down-- {
		_, text, _ = strings.Cut(text, "\n")
	}
	return text
}

// runesBefore counts the characters before a byte of a line, which counts from 1.
func runesBefore(text string, down, at int) int {
	text = lineOf(text, down)
	return utf8.RuneCountInString(text[:min(max(at-1, 0), len(text))])
}
