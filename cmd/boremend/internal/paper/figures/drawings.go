package figures

import (
	"boremend/cases"
	"boremend/cmd/boremend/internal/paper/draw"
	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// Bore is what the drawings of one bore are made from.
type Bore struct {
	Method   string // the method drawn: the one advised, or the one that was sized
	Facts    map[string]engine.FactShown
	Sheets   []worked.Sheet // that size the method
	Readings []cases.Reading
	Units    quantity.System // of the reader; the shop print shows both
}

// Drawings returns the drawings that apply to a bore, in the order in which a
// person reads them: the wear if it was read round the bore, the ear before and
// after, and what the method makes: section, sleeve, build-up or bolts. What has
// too few known numbers to be drawn is left out. The error says what could not be
// drawn although its numbers are there; the drawings that could be are returned
// with it.
func Drawings(b Bore) ([]draw.Drawing, error) { return nil, nil }
