package wear

import (
	"cmp"
	"math"
	"slices"
)

// hullOf returns the corners of the smallest convex figure round the points,
// anticlockwise (Andrew's monotone chain).
func hullOf(points []point) []point {
	sorted := slices.SortedFunc(slices.Values(points), func(a, b point) int {
		return cmp.Or(cmp.Compare(a.x, b.x), cmp.Compare(a.y, b.y))
	})
	sorted = slices.Compact(sorted)
	if len(sorted) < 3 {
		return sorted
	}
	lower := chain(sorted)
	slices.Reverse(sorted)
	upper := chain(sorted)
	return append(lower[:len(lower)-1], upper[:len(upper)-1]...)
}

// chain keeps the points at which the way along the sorted points turns left.
func chain(sorted []point) []point {
	var kept []point
	for _, p := range sorted {
		for len(kept) > 1 && turn(kept[len(kept)-2], kept[len(kept)-1], p) <= 0 {
			kept = kept[:len(kept)-1]
		}
		kept = append(kept, p)
	}
	return kept
}

// turn is twice the area of the triangle, positive when it runs anticlockwise.
func turn(a, b, c point) float64 { return (b.x-a.x)*(c.y-a.y) - (b.y-a.y)*(c.x-a.x) }

// insideHull reports whether a place lies in the figure or on its edge.
func insideHull(hull []point, p point) bool {
	for i, corner := range hull {
		next := hull[(i+1)%len(hull)]
		if turn(corner, next, p) < -tinyShare*corner.to(next)*(corner.to(p)+next.to(p)) {
			return false
		}
	}
	return true
}

// line holds the places with a x + b y = c.
type line struct{ a, b, c float64 }

// between is the line of all places as far from p as from q.
func between(p, q point) line {
	a, b := q.x-p.x, q.y-p.y
	return line{a, b, a*(p.x+q.x)/2 + b*(p.y+q.y)/2}
}

// meet is where two lines cross.
func (l line) meet(m line) (point, bool) {
	across := l.a*m.b - l.b*m.a
	if !(math.Abs(across) > flatness*(math.Abs(l.a)+math.Abs(l.b))*(math.Abs(m.a)+math.Abs(m.b))) {
		return point{}, false
	}
	return point{(l.c*m.b - l.b*m.c) / across, (l.a*m.c - l.c*m.a) / across}, true
}

// through is the line through two places.
func through(p, q point) line {
	a, b := p.y-q.y, q.x-p.x
	return line{a, b, a*p.x + b*p.y}
}
