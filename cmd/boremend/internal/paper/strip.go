package paper

import "github.com/tdewolff/canvas"

// strip is a band across the page that is never cut: a line of text, a row of a
// table, a figure. Its marks are placed from its upper left corner.
type strip struct {
	height float64
	marks  []mark
	// keep: the next strip must stand on the same page.
	keep bool
	// gap: white space that vanishes at the head of a page.
	gap bool
	// newPage: the next strip starts a page.
	newPage bool
	// head is set again at the head of a page that this strip comes to stand on
	// first, as the head of a table.
	head *strip
}

// mark is one thing printed on a page; x and y are in mm from the upper left.
type mark struct {
	x, y    float64
	text    string
	bold    bool
	sizeMM  float64
	line    *stroke
	box     *box
	drawing *canvas.Canvas
	photo   *Photo
	scale   float64 // of a drawing
	width   float64 // of a photo
}

// stroke is a straight line, given by how far it goes from its start.
type stroke struct{ dx, dy, thick float64 }

// box is a rectangle: outlined, or filled where grey is above zero.
type box struct{ width, height, thick, grey float64 }

func textMark(x, y float64, text string, bold bool, sizeMM float64) mark {
	return mark{x: x, y: y, text: text, bold: bold, sizeMM: sizeMM}
}

func lineMark(x, y, dx, dy, thick float64) mark {
	return mark{x: x, y: y, line: &stroke{dx, dy, thick}}
}

func boxMark(x, y float64, b box) mark { return mark{x: x, y: y, box: &b} }

// moved is the mark at another place.
func (m mark) moved(dx, dy float64) mark {
	m.x, m.y = m.x+dx, m.y+dy
	return m
}

// lowered puts marks further down.
func lowered(marks []mark, by float64) []mark {
	out := make([]mark, len(marks))
	for i, m := range marks {
		out[i] = m.moved(0, by)
	}
	return out
}

// paginate puts strips on pages of the given height. Strips that must stay
// together are moved on together, unless they fill a page by themselves.
func paginate(strips []strip, height float64) [][]mark {
	pages := [][]mark{nil}
	y := 0.0
	turn := func(head *strip) {
		pages, y = append(pages, nil), 0
		if head != nil {
			pages[len(pages)-1], y = append(pages[len(pages)-1], head.marks...), head.height
		}
	}
	for start := 0; start < len(strips); {
		end, needed := together(strips[start:])
		end += start
		if y > 0 && y+needed > height && needed <= height {
			turn(strips[start].head)
		}
		for _, s := range strips[start:end] {
			if s.gap && y == 0 {
				continue
			}
			if y > 0 && y+s.height > height {
				turn(s.head)
			}
			if s.gap && y == 0 {
				continue
			}
			pages[len(pages)-1] = append(pages[len(pages)-1], lowered(s.marks, y)...)
			y += s.height
			if s.newPage && y > 0 {
				turn(nil)
			}
		}
		start = end
	}
	if last := len(pages) - 1; last > 0 && pages[last] == nil {
		pages = pages[:last]
	}
	return pages
}

// together finds how many of the first strips belong together, and their height.
// White space between two of them does not part them.
func together(strips []strip) (count int, height float64) {
	kept := false
	for i, s := range strips {
		height += s.height
		if !s.gap || i == 0 {
			kept = s.keep
		}
		if !kept {
			return i + 1, height
		}
	}
	return len(strips), height
}
