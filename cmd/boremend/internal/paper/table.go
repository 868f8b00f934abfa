package paper

import "strings"

// table sets rows under a head that comes again on every page.
func (t typesetter) table(b Table) []strip {
	widths := t.columns(b)
	head := t.row(b.Head, widths, true, 0)
	head.marks = append(head.marks, lineMark(0, head.height-0.05, t.width, 0, heavyLine*0.8))
	head.keep = true
	strips := []strip{gap(1.8), head}
	for i, cells := range b.Rows {
		least := 0.0
		if b.Tall {
			least = tallRow
		}
		row := t.row(cells, widths, false, least)
		row.head = &head
		row.keep = len(b.Rows) > 1 && (i == 0 || i == len(b.Rows)-2) // no row alone on a page
		strips = append(strips, row)
	}
	return append(strips, gap(2))
}

// row sets one row of a table with its ruling.
func (t typesetter) row(cells []string, widths []float64, bold bool, least float64) strip {
	s := strip{height: least}
	x := 0.0
	for i, cell := range cells {
		inside := stacked(t.lines(cell, bold, t.sizeMM*0.95, x+cellPad, widths[i]-2*cellPad))
		s.marks = append(s.marks, lowered(inside.marks, cellPad*0.8)...)
		s.height = max(s.height, inside.height+1.8*cellPad)
		x += widths[i]
	}
	x = 0
	for _, w := range widths {
		s.marks = append(s.marks, lineMark(x, 0, 0, s.height, thinLine))
		x += w
	}
	s.marks = append(s.marks, lineMark(t.width, 0, 0, s.height, thinLine), lineMark(0, 0, t.width, 0, thinLine), lineMark(0, s.height, t.width, 0, thinLine))
	return s
}

// The shares of a table's width that a column takes at least, and at most when
// it asks for more than there is.
const (
	leastColumn = 0.07
	mostWord    = 0.34
	shortCell   = 12 // letters of a cell that is not broken
)

// columns shares the width of a table out: every column gets its longest word,
// and what is left goes to those that have most to say. A column that is only
// there to be written in gets its fair share.
func (t typesetter) columns(b Table) []float64 {
	n := len(b.Head)
	least, wanted := make([]float64, n), make([]float64, n)
	for i := range n {
		least[i], wanted[i] = t.asks(b, i)
	}
	sumLeast, sumMore := 0.0, 0.0
	for i := range n {
		sumLeast += least[i]
		sumMore += wanted[i] - least[i]
	}
	widths := make([]float64, n)
	for i := range n {
		switch {
		case sumLeast >= t.width:
			widths[i] = least[i] * t.width / sumLeast
		case sumMore == 0:
			widths[i] = least[i] + (t.width-sumLeast)/float64(n)
		default:
			widths[i] = least[i] + (wanted[i]-least[i])*(t.width-sumLeast)/sumMore
		}
	}
	return widths
}

// asks is the least width of a column, and the one that it would like.
func (t typesetter) asks(b Table, column int) (least, wanted float64) {
	size := t.sizeMM * 0.95
	least, wanted = leastColumn*t.width, leastColumn*t.width
	empty := len(b.Rows) > 0
	measure := func(text string, f *face) {
		if len(text) <= shortCell { // a number stays with its unit
			least = max(least, f.width(text, size)+2*cellPad+0.3)
		}
		for _, word := range strings.Fields(text) {
			least = max(least, min(f.width(word, size)+2*cellPad+0.3, mostWord*t.width))
		}
		wanted = max(wanted, f.width(text, size)+2*cellPad+0.3)
	}
	measure(b.Head[column], t.bold)
	for _, row := range b.Rows {
		if column < len(row) && row[column] != "" {
			empty = false
			measure(row[column], t.regular)
		}
	}
	if empty {
		wanted = max(wanted, t.width/float64(len(b.Head)))
	}
	return least, max(least, min(wanted, t.width*1.2))
}
