package draw

import (
	"slices"

	"github.com/tdewolff/canvas"
)

// Drawing is one finished drawing or plot. It is at most 170 mm wide, the usable
// width of Letter and A4, and its texts are at least 2.5 mm high at that size.
// Words says in a sentence or two what it shows, for a person who cannot see it.
type Drawing struct {
	Name   string // a plain word for file names: ear, section, sleeve, wear, ...
	Title  string // a heading in the trade's words
	Words  string
	Canvas *canvas.Canvas // for placing it on a page of one's own; W and H are in mm

	marks []mark
}

// WidthMM is how wide the drawing is when printed to scale.
func (d Drawing) WidthMM() float64 { return d.Canvas.W }

// HeightMM is how high the drawing is when printed to scale.
func (d Drawing) HeightMM() float64 { return d.Canvas.H }

// runes lists the characters that the drawing uses, each once.
func (d Drawing) runes() []rune {
	var used []rune
	for _, m := range d.marks {
		used = append(used, []rune(m.text)...)
	}
	slices.Sort(used)
	return slices.Compact(used)
}
