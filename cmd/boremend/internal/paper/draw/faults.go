package draw

import (
	"fmt"

	"github.com/tdewolff/canvas"
)

// The usable part of a page, on Letter and A4 both, in mm.
const (
	pageWide = 170
	pageHigh = 230
)

// Faults finds what is wrong with a drawing on paper: texts that touch each other,
// lie outside, are too small, or are crossed by a line; and paper larger than fits
// a page. Layout is meant to leave none. It is for the tests of every package that
// makes drawings.
func (d Drawing) Faults() []string {
	var faults []string
	add := func(format string, args ...any) { faults = append(faults, fmt.Sprintf(format, args...)) }
	if d.WidthMM() > pageWide || d.HeightMM() > pageHigh {
		add("is %.1f by %.1f mm, more than the %d by %d mm of a page", d.WidthMM(), d.HeightMM(), pageWide, pageHigh)
	}
	if d.Title == "" || d.Words == "" || d.Name == "" {
		add("has no title, words or name")
	}
	for i, m := range d.marks {
		if m.box.X0 < 0 || m.box.Y0 < 0 || m.box.X1 > d.Canvas.W || m.box.Y1 > d.Canvas.H {
			add("%q lies outside the paper", m.text)
		}
		if m.text == "" {
			continue
		}
		if m.height < small {
			add("%q is %g mm high", m.text, m.height)
		}
		for _, o := range d.marks[i+1:] {
			if o.text != "" && overlaps(m.box, o.box) {
				add("%q lies on %q", m.text, o.text)
			}
		}
		for k, o := range d.marks {
			if o.path != nil && crosses(m.box, o) && !d.wiped(k, m.box) {
				add("%q is crossed by a line of %g mm at %v", m.text, o.line.width, o.box)
			}
		}
	}
	return faults
}

// touching is how deep boxes may lie in each other by rounding.
const touching = 0.01

func overlaps(a, b canvas.Rect) bool {
	return a.X0 < b.X1-touching && b.X0 < a.X1-touching && a.Y0 < b.Y1-touching && b.Y0 < a.Y1-touching
}

// crosses reports whether a mark's lines run through a box. White shapes wipe and
// do not count.
func crosses(b canvas.Rect, m mark) bool {
	if m.fill && m.line.color == canvas.White || !overlaps(b, m.box) {
		return false
	}
	// The letters themselves are lower than their box.
	b = canvas.Rect{X0: b.X0, Y0: b.Y0 + 0.3, X1: b.X1, Y1: b.Y1 - 0.2}
	for _, e := range edges(m.path) {
		if cuts(b, e[0], e[1]) {
			return true
		}
	}
	return false
}

// cuts clips a straight piece by a box (Liang and Barsky) and reports whether
// something is left.
func cuts(b canvas.Rect, p, q point) bool {
	from, to := 0.0, 1.0
	dx, dy := q.X-p.X, q.Y-p.Y
	for _, side := range [][2]float64{{-dx, p.X - b.X0}, {dx, b.X1 - p.X}, {-dy, p.Y - b.Y0}, {dy, b.Y1 - p.Y}} {
		switch t := side[1] / side[0]; {
		case side[0] == 0 && side[1] < 0:
			return false
		case side[0] < 0:
			from = max(from, t)
		case side[0] > 0:
			to = min(to, t)
		}
	}
	return from < to
}

// wiped reports whether a white shape drawn after a mark covers the box.
func (d Drawing) wiped(after int, b canvas.Rect) bool {
	for _, m := range d.marks[after+1:] {
		if m.fill && m.line.color == canvas.White && m.box.X0 <= b.X0 && m.box.Y0 <= b.Y0 && m.box.X1 >= b.X1 && m.box.Y1 >= b.Y1 {
			return true
		}
	}
	return false
}
