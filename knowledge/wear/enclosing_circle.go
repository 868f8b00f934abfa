package wear

import (
	"boremend/knowledge/worked"
)

// EnclosingCircleOutputs are the smallest circle round all points.
type EnclosingCircleOutputs struct {
	CentreXMM  float64 `name:"centre_x" symbol:"x_0" kind:"length" means:"centre toward 3 o'clock"`
	CentreYMM  float64 `name:"centre_y" symbol:"y_0" kind:"length" means:"centre toward 12 o'clock"`
	RadiusMM   float64 `name:"radius" symbol:"R" kind:"length" means:"its radius"`
	DiameterMM float64 `name:"diameter" symbol:"D" kind:"length" means:"its diameter: the smallest bore, on an axis that is free to move, that takes in all points"`
}

// EnclosingCircle finds the smallest circle with all points in it or on it: the
// minimum circumscribed circle of roundness measurement.
//
//	R = max of sqrt((x - x_0)^2 + (y - y_0)^2), made least over x_0 and y_0
//	D = 2 R
//
// x and y are the places of the points [mm]. Two points across or three around
// decide; the search adds one point after another and, where one lies outside,
// makes the circle anew with that point on its edge.
//
// Validity: one point or more.
//
// Error: that of the points that decide. One burr or chip counts in full: clean
// the bore first.
//
// Source: E. Welzl, Smallest enclosing disks (1991), names the problem (from
// memory); M. de Berg and others, Computational Geometry, section 4.7, has the
// search (from memory). A test tries all pairs and triples.
func EnclosingCircle(in PointsInputs) (EnclosingCircleOutputs, error) {
	points, err := in.points(1)
	if err != nil {
		return EnclosingCircleOutputs{}, err
	}
	c := enclosing(points)
	out := EnclosingCircleOutputs{CentreXMM: c.centre.x, CentreYMM: c.centre.y}
	out.RadiusMM, _, _, _ = roundFrom(c.centre, points)
	out.DiameterMM = 2 * out.RadiusMM
	return out, nil
}

// circle is a centre and a radius.
type circle struct {
	centre point
	radius float64
}

// holds reports whether a point lies in the circle or on it, but for rounding.
func (c circle) holds(p point) bool { return p.to(c.centre) <= c.radius*(1+tinyShare) }

// enclosing works on points moved to their middle, where lengths are rounded
// least.
func enclosing(points []point) circle {
	m := mean(points)
	moved := make([]point, len(points))
	for i, p := range points {
		moved[i] = point{p.x - m.x, p.y - m.y}
	}
	c := circle{centre: moved[0]}
	for i, p := range moved {
		if !c.holds(p) {
			c = enclosingWith(moved[:i], p)
		}
	}
	return circle{point{c.centre.x + m.x, c.centre.y + m.y}, c.radius}
}

// enclosingWith is the smallest circle round the points with p on its edge.
func enclosingWith(points []point, p point) circle {
	c := circle{centre: p}
	for i, q := range points {
		if !c.holds(q) {
			c = enclosingWithBoth(points[:i], p, q)
		}
	}
	return c
}

// enclosingWithBoth is the smallest circle round the points with p and q on its
// edge.
func enclosingWithBoth(points []point, p, q point) circle {
	c := across(p, q)
	for _, r := range points {
		if !c.holds(r) {
			c = around(p, q, r)
		}
	}
	return c
}

// across is the circle with two points at the ends of a diameter.
func across(p, q point) circle {
	centre := point{p.x + (q.x-p.x)/2, p.y + (q.y-p.y)/2}
	return circle{centre, max(p.to(centre), q.to(centre))}
}

// around is the circle through three points; for points on a line it is the
// circle across the two that lie farthest apart.
func around(p, q, r point) circle {
	if centre, ok := equidistant(p, q, r); ok {
		return circle{centre, max(p.to(centre), q.to(centre), r.to(centre))}
	}
	c := across(p, q)
	for _, other := range [...]circle{across(p, r), across(q, r)} {
		if other.radius > c.radius {
			c = other
		}
	}
	return c
}

// equidistant is the point as far from p as from q and from r.
func equidistant(p, q, r point) (point, bool) {
	qx, qy, rx, ry := q.x-p.x, q.y-p.y, r.x-p.x, r.y-p.y
	across := 2 * (qx*ry - qy*rx)
	qq, rr := qx*qx+qy*qy, rx*rx+ry*ry
	if !(across*across > flatness*flatness*qq*rr) {
		return point{}, false
	}
	return point{p.x + (ry*qq-qy*rr)/across, p.y + (qx*rr-rx*qq)/across}, true
}

// EnclosingCircleCalculation is the catalogue entry of EnclosingCircle.
func EnclosingCircleCalculation() worked.Calculation {
	const search = "search over circles across two points and around three"
	return worked.Define("min_circumscribed_circle", EnclosingCircle, worked.Page[PointsInputs, EnclosingCircleOutputs]{
		Title:    "Smallest circle round all points",
		Sources:  []string{"E. Welzl, Smallest enclosing disks (1991) (from memory)", "checked by trying all pairs and triples of points"},
		Validity: "one point or more",
		Formulas: []worked.Formula[PointsInputs, EnclosingCircleOutputs]{
			{Symbol: "x_0", Table: search, Source: "Welzl 1991"},
			{Symbol: "y_0", Table: search, Source: "Welzl 1991"},
			{Symbol: "R", Is: "max(map(x, " + distance + "))", Source: "definition"},
			{Symbol: "D", Is: "2 * R", Source: "definition"},
		},
		Example: map[string]string{"x": "2, 0, 2.5 mm", "y": "4, 0, 2 mm"},
	})
}
