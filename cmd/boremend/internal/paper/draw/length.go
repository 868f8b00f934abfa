package draw

import (
	"errors"
	"fmt"

	"boremend/engine/quantity"
)

// Length is a length of the part in mm, or one that is not known. Assumed marks
// one that was not measured but taken, as the least or the most that can be.
type Length struct {
	MM      float64
	Known   bool
	Assumed bool
}

// MM is a known length.
func MM(mm float64) Length { return Length{MM: mm, Known: true} }

// The lengths that can be drawn: a tenth of a micrometre to a hundred metres.
const (
	leastMM = 1e-4
	mostMM  = 1e5
)

// shown writes a length for the reader.
func shown(mm float64, units quantity.System) string {
	return quantity.Quantity{Value: mm, Kind: quantity.Length}.Format(units)
}

// text writes a length for the reader, or that it is not known.
func (l Length) text(units quantity.System) string {
	switch {
	case !l.Known:
		return "not measured"
	case l.Assumed:
		return shown(l.MM, units) + ", assumed"
	}
	return shown(l.MM, units)
}

// checks collects what cannot be drawn about the numbers of a drawing.
type checks struct{ wrong []error }

// needs says that a length must be known and of a size that can be drawn.
func (c *checks) needs(name string, l Length) {
	if !l.Known {
		c.wrong = append(c.wrong, fmt.Errorf("%s is not known", name))
		return
	}
	c.may(name, l)
}

// may says that a length must be of a size that can be drawn if it is known.
func (c *checks) may(name string, l Length) {
	if l.Known && !(l.MM >= leastMM && l.MM <= mostMM) {
		c.wrong = append(c.wrong, fmt.Errorf("%s of %g mm cannot be drawn", name, l.MM))
	}
}

// larger says that a length must be larger than another, if both are known.
func (c *checks) larger(name string, l Length, other string, than Length) {
	if l.Known && than.Known && !(l.MM > than.MM) {
		c.wrong = append(c.wrong, fmt.Errorf("%s of %g mm must be larger than %s of %g mm", name, l.MM, other, than.MM))
	}
}

func (c *checks) err() error { return errors.Join(c.wrong...) }
