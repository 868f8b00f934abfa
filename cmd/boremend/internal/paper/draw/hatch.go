package draw

import (
	"math"
	"slices"

	"github.com/tdewolff/canvas"
)

// flat is how far a flattened curve may lie beside the true one, in mm.
const flat = 0.01

// edges are the straight pieces of a path's outline.
func edges(p *canvas.Path) [][2]point {
	var list [][2]point
	for scan := p.Flatten(flat).Scanner(); scan.Scan(); {
		if scan.Cmd() != canvas.MoveToCmd {
			list = append(list, [2]point{scan.Start(), scan.End()})
		}
	}
	return list
}

// hatch draws the hatching of a cut face inside a closed path, at an angle in
// degrees, that many millimetres apart. Where the path has a hole in it, the hole
// stays clear.
func (s *sheet) hatch(p *canvas.Path, angle, apart float64) {
	sin, cos := math.Sincos(angle * math.Pi / 180)
	turn := func(q point) point { return at(q.X*cos+q.Y*sin, -q.X*sin+q.Y*cos) }
	back := func(q point) point { return at(q.X*cos-q.Y*sin, q.X*sin+q.Y*cos) }
	least, most := math.Inf(1), math.Inf(-1)
	var turned [][2]point
	for _, e := range edges(p) {
		a, b := turn(e[0]), turn(e[1])
		turned = append(turned, [2]point{a, b})
		least, most = min(least, a.Y), max(most, a.Y)
	}
	all := &canvas.Path{}
	// Lines of all parts of one drawing lie on one grid, so that a part cut in two
	// is hatched as one.
	for k := math.Ceil(least / apart); k*apart < most; k++ {
		crossings := crossingsAt(turned, k*apart)
		for i := 0; i+1 < len(crossings); i += 2 {
			a, b := back(at(crossings[i], k*apart)), back(at(crossings[i+1], k*apart))
			all.MoveTo(a.X, a.Y)
			all.LineTo(b.X, b.Y)
		}
	}
	if !all.Empty() {
		s.draw(hatching, all)
	}
}

// crossingsAt finds where a level line crosses edges, from left to right.
func crossingsAt(edges [][2]point, y float64) []float64 {
	var xs []float64
	for _, e := range edges {
		a, b := e[0], e[1]
		if (a.Y <= y) != (b.Y <= y) {
			xs = append(xs, a.X+(y-a.Y)/(b.Y-a.Y)*(b.X-a.X))
		}
	}
	slices.Sort(xs)
	return xs
}
