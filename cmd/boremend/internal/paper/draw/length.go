package draw

import (
	"errors"
	"fmt"
	"strings"

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

// The lengths that can be drawn: a tenth of a micrometre to 25 metres, for which
// there is a scale.
const (
	leastMM = 1e-4
	mostMM  = 25_000
)

// shown writes a length for the reader.
func shown(mm float64, units quantity.System) string {
	text := quantity.Quantity{Value: mm, Kind: quantity.Length}.Format(units)
	return strings.ReplaceAll(text, " ", string(held))
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
		c.wrong = append(c.wrong, fmt.Errorf("%s of %s mm cannot be drawn", name, plainNumber(l.MM)))
	}
}

// larger says that a length must be larger than another, if both are known.
func (c *checks) larger(name string, l Length, other string, than Length) {
	if l.Known && than.Known && l.MM <= than.MM {
		c.wrong = append(c.wrong, fmt.Errorf("%s of %s mm must be larger than %s of %s mm", name, plainNumber(l.MM), other, plainNumber(than.MM)))
	}
}

// readings says that what was read round a bore must be of a size that can be drawn.
func (c *checks) readings(list []Radius) {
	for _, r := range list {
		c.may("a reading", MM(r.MM))
		if !finite(r.ClockDeg) {
			c.wrong = append(c.wrong, errors.New("a reading has no clock position"))
		}
	}
}

// plainNumber writes a number that may be none.
func plainNumber(v float64) string {
	if !finite(v) {
		return "no finite number"
	}
	return fmt.Sprintf("%g", v)
}

func (c *checks) err() error { return errors.Join(c.wrong...) }
