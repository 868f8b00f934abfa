package draw

import (
	"math"

	"github.com/tdewolff/canvas"
)

// Measures of dimensions, in mm, in the spirit of ISO 129-1.
const (
	arrowLength = 2.5
	arrowWidth  = 0.9
	overshoot   = 1.2 // of an extension line past its dimension line
	offGap      = 0.8 // between an edge and its extension line
	firstLevel  = 6.0 // from a view to its first dimension line
	nextLevel   = 5.0 // from one dimension line to the next
	textGap     = 1.5 // between a text and the line that leads to it
	blockGap    = 2.2 // between two blocks of text
)

// arrow draws a filled arrowhead with its tip at a point.
func (s *sheet) arrow(tip, from point, length, width float64) {
	d := math.Hypot(tip.X-from.X, tip.Y-from.Y)
	if d == 0 {
		return
	}
	ux, uy := (tip.X-from.X)/d, (tip.Y-from.Y)/d
	root := at(tip.X-ux*length, tip.Y-uy*length)
	s.fill(narrow, polyline(true, tip, at(root.X-uy*width/2, root.Y+ux*width/2), at(root.X+uy*width/2, root.Y-ux*width/2)))
}

// dotRadius is that of the dot in which a leader ends inside a surface.
const dotRadius = 0.6

// leader draws a line through points to what it points at: an arrowhead on an
// edge, or a dot inside a surface.
func (s *sheet) leader(inside bool, points ...point) {
	last := len(points) - 1
	s.draw(narrow, polyline(false, points...))
	if inside {
		s.fill(narrow, circle(points[last], dotRadius))
		return
	}
	s.arrow(points[last], points[last-1], arrowLength, arrowWidth)
}

// halo breaks the lines that a line to come will cross, so that each can be told
// from the other.
func (s *sheet) halo(points ...point) {
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		d := math.Hypot(b.X-a.X, b.Y-a.Y)
		if d < 3 {
			continue
		}
		// The ends stay as they are, where the line meets what it belongs to.
		ux, uy := (b.X-a.X)/d, (b.Y-a.Y)/d
		const half, keep = 0.6, 1.0
		a, b = at(a.X+ux*keep, a.Y+uy*keep), at(b.X-ux*keep, b.Y-uy*keep)
		s.blank(polyline(true, at(a.X-uy*half, a.Y+ux*half), at(b.X-uy*half, b.Y+ux*half), at(b.X+uy*half, b.Y-ux*half), at(a.X+uy*half, a.Y-ux*half)))
	}
}

// arrows draws a dimension line between two points with its heads: inside where
// there is room, else from outside.
func (s *sheet) arrows(a, b point) {
	d := math.Hypot(b.X-a.X, b.Y-a.Y)
	if d >= 2*arrowLength+1 {
		s.segment(narrow, a, b)
		s.arrow(a, b, arrowLength, arrowWidth)
		s.arrow(b, a, arrowLength, arrowWidth)
		return
	}
	ux, uy := 0.0, 1.0
	if d > 0 {
		ux, uy = (b.X-a.X)/d, (b.Y-a.Y)/d
	}
	const reach = arrowLength + 1
	before, after := at(a.X-ux*reach, a.Y-uy*reach), at(b.X+ux*reach, b.Y+uy*reach)
	s.segment(narrow, before, after)
	s.arrow(a, before, arrowLength, arrowWidth)
	s.arrow(b, after, arrowLength, arrowWidth)
}

// row is a horizontal dimension between x1 and x2. Its extension lines start at
// from1 and from2.
type row struct {
	x1, x2       float64
	from1, from2 float64
	lines        []string
}

// rows stacks horizontal dimensions under y, the first nearest, each on a level
// of its own with its text on its line. A text that is wider than its dimension, or
// that an extension line of a later one would cross, stands beside it to the right.
func (s *sheet) rows(y float64, list ...row) float64 {
	for i, r := range list {
		line := y - blockHeight(r.lines) - 1
		for _, e := range [][2]float64{{r.x1, r.from1}, {r.x2, r.from2}} {
			s.segment(narrow, at(e[0], e[1]-offGap), at(e[0], line-overshoot))
		}
		s.arrows(at(r.x1, line), at(r.x2, line))
		w := s.widest(r.lines)
		start := r.besides(w, list[i+1:])
		if start > r.x2 {
			s.segment(narrow, at(r.x2, line), at(start+w, line))
			s.block(start, y-0.5, -1, r.lines)
		} else {
			s.block((r.x1+r.x2)/2, y-0.5, 0, r.lines)
		}
		y = line - overshoot
	}
	return y
}

// besides finds where the text of a dimension starts, so that the extension lines of
// the later ones, which pass by, do not cross it.
func (r row) besides(wide float64, later []row) float64 {
	passing := func(from float64) (x float64, crossed bool) {
		for _, l := range later {
			for _, x := range []float64{l.x1, l.x2} {
				if x > from-textGap && x < from+wide+textGap {
					return x, true
				}
			}
		}
		return 0, false
	}
	middle := (r.x1+r.x2)/2 - wide/2
	if _, crossed := passing(middle); !crossed && wide+2*textGap <= r.x2-r.x1 {
		return middle
	}
	start := r.x2 + arrowLength + 1 + textGap
	for x, crossed := passing(start); crossed; x, crossed = passing(start) {
		start = x + textGap
	}
	return start
}

// label is a text in the column beside a view: a vertical dimension, or a note
// that points at something.
type label struct {
	lines []string
	// A dimension from y1 to y2, its extension lines starting at from1 and from2.
	dimension    bool
	y1, y2       float64
	from1, from2 float64
	// What a note points at: an edge, or with inside a surface.
	target point
	inside bool
}

// wanted is the height at which the label would like to stand.
func (l label) wanted() float64 {
	if l.dimension {
		return (l.y1 + l.y2) / 2
	}
	return l.target.Y
}

// column sets labels beside a view whose edge is at x, at its right (side 1) or
// its left (side -1), and returns the box of all. The blocks of text stand as near
// to what they belong to as they can without touching each other.
func (s *sheet) column(x float64, side int, labels ...label) canvas.Rect {
	var dims []int
	for i, l := range labels {
		if l.dimension {
			dims = append(dims, i)
		}
	}
	sortBy(dims, func(i int) float64 { return math.Abs(labels[i].y2 - labels[i].y1) })
	way := float64(side)
	levels := map[int]float64{}
	for level, i := range dims {
		levels[i] = x + way*(firstLevel+nextLevel*float64(level))
	}
	edge := x + way*(firstLevel+nextLevel*float64(len(dims)))
	middles := spread(labels)
	for i, l := range labels {
		if l.dimension {
			for _, e := range [][2]float64{{l.y1, l.from1}, {l.y2, l.from2}} {
				s.segment(narrow, at(e[1]+way*offGap, e[0]), at(levels[i]+way*overshoot, e[0]))
			}
			s.arrows(at(levels[i], l.y1), at(levels[i], l.y2))
		}
	}
	all := canvas.Rect{X0: edge, X1: edge, Y0: math.Inf(1), Y1: math.Inf(-1)}
	for i, l := range labels {
		h, w := blockHeight(l.lines), s.widest(l.lines)
		s.block(edge+way*textGap, middles[i]+h/2, -side, l.lines)
		s.lead(l, levels[i], edge+way*(textGap-0.8), middles[i], way)
		all.Y0, all.Y1 = min(all.Y0, middles[i]-h/2), max(all.Y1, middles[i]+h/2)
		all.X0, all.X1 = min(all.X0, edge+way*(textGap+w)), max(all.X1, edge+way*(textGap+w))
	}
	return all
}

// lead joins the text of a label to its dimension line or to its target.
func (s *sheet) lead(l label, level, x, y, way float64) {
	knee := at(x-way*2, y)
	if !l.dimension {
		s.leader(l.inside, at(x, y), knee, l.target)
		return
	}
	low, high := min(l.y1, l.y2), max(l.y1, l.y2)
	on := at(level, y)
	if y < low || y > high {
		on.Y = (low + high) / 2
	}
	s.halo(at(x, y), knee, on)
	s.draw(narrow, polyline(false, at(x, y), knee, on))
}

// spread finds heights for the middles of labels: in the order wanted, clear of
// each other, and together as near as can be to where they want to be (pooling
// neighbours that would touch).
func spread(labels []label) []float64 {
	order := make([]int, len(labels))
	for i := range order {
		order[i] = i
	}
	sortBy(order, func(i int) float64 { return -labels[i].wanted() })
	type pool struct {
		sum  float64 // of wanted heights, each less its place below the first of all
		size int
	}
	var pools []pool
	offsets := make([]float64, len(labels))
	below := 0.0
	for k, i := range order {
		if k > 0 {
			below += (blockHeight(labels[order[k-1]].lines)+blockHeight(labels[i].lines))/2 + blockGap
		}
		offsets[k] = below
		pools = append(pools, pool{labels[i].wanted() + below, 1})
		for n := len(pools); n > 1 && pools[n-1].sum/float64(pools[n-1].size) > pools[n-2].sum/float64(pools[n-2].size); n = len(pools) {
			pools[n-2] = pool{pools[n-2].sum + pools[n-1].sum, pools[n-2].size + pools[n-1].size}
			pools = pools[:n-1]
		}
	}
	middles := make([]float64, len(labels))
	k := 0
	for _, p := range pools {
		for range p.size {
			middles[order[k]] = p.sum/float64(p.size) - offsets[k]
			k++
		}
	}
	return middles
}
