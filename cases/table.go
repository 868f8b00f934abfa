package cases

import (
	"encoding/csv"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// Next returns the next row of the table.
func (t *Table) Next() (Piece, error) { return t.records.next() }

// Waiting reports whether the next row has yet to come.
func (t *Table) Waiting() bool { return t.lines.waiting() }

// Decoder returns what decodes rows, for one goroutine.
func (t *Table) Decoder() Decoder { return &tableDecoder{table: t, state: t.book.NewState()} }

// tableDecoder reads record after record with one reader of the CSV library,
// which is fed one record at a time.
type tableDecoder struct {
	table *Table
	state *engine.State
	csv   *csv.Reader
	feed  feed
	lines int  // that the CSV reader had seen before the record read last
	last  int  // lines of that record
	ascii bool // of that record: a byte is a character
	node  yaml.Node
	file  document.File
}

// feed hands out one text and then nothing.
type feed struct{ text string }

func (f *feed) Read(into []byte) (int, error) {
	if f.text == "" {
		return 0, io.EOF
	}
	n := copy(into, f.text)
	f.text = f.text[n:]
	return n, nil
}

// Decode decodes one row. A row without anything in its cells is passed over, as
// office programs leave them at the end of a sheet.
func (d *tableDecoder) Decode(p Piece) []Row {
	if p.Problem.Says != "" {
		return faulty(d.table.file, p)
	}
	d.file = document.File{Name: d.table.file}
	row := Row{File: d.table.file, Line: p.Line}
	if cells, ok := d.cells(p); ok {
		if !slices.ContainsFunc(cells, func(cell string) bool { return strings.TrimSpace(cell) != "" }) {
			return nil
		}
		d.row(&row, p, cells)
	}
	row.Problems = d.file.Problems()
	return []Row{row}
}

// cells splits a record.
func (d *tableDecoder) cells(p Piece) ([]string, bool) {
	if d.csv == nil {
		d.csv, d.lines, d.last = csv.NewReader(&d.feed), 0, 0
		d.csv.Comma, d.csv.FieldsPerRecord, d.csv.ReuseRecord = rune(d.table.comma), -1, true
	}
	d.lines += d.last
	d.last, d.ascii = strings.Count(p.Text, "\n"), isASCII(p.Text)
	before := d.csv.InputOffset()
	d.feed.text = p.Text
	cells, err := d.csv.Read()
	if err != nil {
		report(&d.file, p, err, d.lines)
		d.csv = nil // what is left of the record in it must not be taken for the next
		return nil, false
	}
	if d.csv.InputOffset()-before != int64(len(p.Text)) {
		d.csv = nil
		d.file.Report(&yaml.Node{Line: p.Line, Column: 1}, "look at the quotes", "the row cannot be told from the next one")
		return nil, false
	}
	if want := len(d.table.columns); len(cells) != want {
		remedy := "give every column a cell, if only an empty one"
		if len(cells) > want && d.table.comma == ',' {
			remedy = "a cell with a comma in it belongs in quotes; write decimals with a point"
		}
		d.file.Report(&yaml.Node{Line: p.Line, Column: 1}, remedy, "the row has %d cells, and there are %d columns", len(cells), want)
		return nil, false
	}
	return cells, true
}

// row decodes the cells: first those that others depend on.
func (d *tableDecoder) row(row *Row, p Piece, cells []string) {
	bare := ""
	for i, c := range d.table.columns {
		if c.slot >= 0 {
			continue
		}
		text := strings.TrimSpace(cells[i])
		switch n := d.at(p, i, cells[i]); {
		case c.slot == unitsSlot && text != "":
			bare, row.Units = unitsOf(&d.file, n)
		case c.slot == jobSlot && text != "":
			row.Job = strings.Clone(text)
		case c.slot == boreSlot && text != "":
			row.Bore = strings.Clone(text)
		case c.slot == boreSlot:
			d.file.Report(n, "name it", "the bore has no name")
		}
	}
	found := make(engine.Findings, 0, len(cells))
	for i, c := range d.table.columns {
		text := strings.TrimSpace(cells[i])
		if c.slot < 0 || text == "" {
			continue
		}
		if finding, ok := d.finding(d.at(p, i, cells[i]), c, bare); ok {
			found = append(found, finding)
		}
	}
	slices.SortFunc(found, func(a, b engine.Finding) int { return a.Fact - b.Fact })
	row.Findings = found
	if len(d.file.Problems()) == 0 {
		d.together(row, p)
	}
}

// finding decodes the answer in one cell. The column's own unit goes before that
// of the row.
func (d *tableDecoder) finding(n *yaml.Node, c column, bare string) (engine.Finding, bool) {
	fact := d.table.book.Facts[c.slot]
	if c.unit != "" {
		bare = c.unit
	} else if fact.Kind != quantity.Length {
		bare = ""
	}
	if fact.Sort == engine.Number && d.table.decimal == Comma {
		if at := strings.IndexByte(n.Value, '.'); at >= 0 && at+1 < len(n.Value) && '0' <= n.Value[at+1] && n.Value[at+1] <= '9' {
			d.file.ReportWithin(n, utf8.RuneCountInString(n.Value[:at]), "write a comma before decimals and nothing between thousands", "%q has a point in it", n.Value)
			return engine.Finding{}, false
		}
		n.Value = strings.Replace(n.Value, ",", ".", 2) // the value and its give-or-take
	}
	return d.table.book.ReadFinding(&d.file, c.slot, n, bare)
}

// together looks for findings that contradict each other.
func (d *tableDecoder) together(row *Row, p Piece) {
	d.state.Load(row.Findings)
	d.state.CheckTogether(row.Findings, row.Units, func(fact *engine.Fact, says string) {
		at := slices.IndexFunc(d.table.columns, func(c column) bool { return c.slot >= 0 && d.table.book.Facts[c.slot] == fact })
		d.file.Report(d.at(p, at, ""), "measure both again", "%s", says)
	})
}

// at is the node of a cell of the record read last; it serves until the next.
func (d *tableDecoder) at(p Piece, i int, text string) *yaml.Node {
	line, at := d.csv.FieldPos(i)
	setCell(&d.node, p, line-d.lines-1, at, text, d.ascii)
	return &d.node
}

// unitsOf reads the unit of bare lengths, and with it the reader's units.
func unitsOf(f *document.File, n *yaml.Node) (bare string, units quantity.System) {
	switch word, _ := f.Choice(n, unitWords...); word {
	case "mm":
		return "mm", quantity.Millimetre
	case "inch", "in":
		return "in", quantity.Inch
	}
	return "", quantity.Millimetre
}

var _ Batch = (*Table)(nil)
