package draw

import (
	"cmp"
	"math"
	"slices"
	"strconv"

	"boremend/engine/quantity"
)

// scale is how large a part is drawn. ISO 5455 names the ones there are.
type scale struct {
	name string
	of   float64 // mm on paper for a mm of the part
}

var scales = func() []scale {
	var all []scale
	for _, n := range []float64{50, 20, 10, 5, 2} {
		all = append(all, scale{strconv.FormatFloat(n, 'g', -1, 64) + ":1", n})
	}
	for _, n := range []float64{1, 2, 5, 10, 20, 50, 100, 200, 500, 1000} {
		all = append(all, scale{"1:" + strconv.FormatFloat(n, 'f', -1, 64), 1 / n})
	}
	return all
}()

// fitting picks the largest scale at which a part of that width and height has
// room on the paper.
func fitting(width, height, roomWide, roomHigh float64) scale {
	for _, s := range scales {
		if width*s.of <= roomWide && height*s.of <= roomHigh {
			return s
		}
	}
	return scales[len(scales)-1]
}

// barLengths are the lengths that a scale bar may show, in the reader's unit.
var barLengths = []float64{0.05, 0.1, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000}

// scaleBar draws a bar of a round true length with its scale, the top at y, and
// returns where it ends below.
func (s *sheet) scaleBar(x, y float64, sc scale, units quantity.System) float64 {
	unit, word := 1.0, "mm"
	if units == quantity.Inch {
		unit, word = 25.4, "in"
	}
	const least, height = 14.0, 1.6
	length := barLengths[len(barLengths)-1]
	for _, l := range barLengths {
		if l*unit*sc.of >= least {
			length = l
			break
		}
	}
	long := length * unit * sc.of
	base := y - crown*small
	name := "Scale " + sc.name
	s.text(x, base, -1, small, name)
	x += s.width(name, small) + 5
	s.text(x, base, -1, small, "0")
	x += s.width("0", small) + textGap
	s.draw(narrow, box(x, base, x+long, base+height))
	s.fill(narrow, box(x, base, x+long/2, base+height))
	s.text(x+long+textGap, base, -1, small, strconv.FormatFloat(length, 'g', -1, 64)+" "+word)
	return base - tail*small
}

// leastFoot is how wide notes run at least under a narrow drawing.
const leastFoot = 100.0

// foot sets the scale and the notes under all that is drawn so far.
func (s *sheet) foot(sc scale, units quantity.System, width float64, notes ...string) {
	b := s.bounds()
	width = max(width, leastFoot, b.X1-b.X0)
	y := s.scaleBar(b.X0, b.Y0-4, sc, units)
	s.notes(b.X0, y-1.2, width, notes...)
}

// notes sets paragraphs from y downward.
func (s *sheet) notes(x, y, width float64, notes ...string) {
	for _, n := range notes {
		if lines := s.wrap(n, width); len(lines) > 0 {
			s.block(x, y, -1, lines)
			y -= blockHeight(lines) + 0.6
		}
	}
}

// sortBy sorts by a number, equal ones staying as they were.
func sortBy[T any](list []T, by func(T) float64) {
	slices.SortStableFunc(list, func(a, b T) int { return cmp.Compare(by(a), by(b)) })
}

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }
