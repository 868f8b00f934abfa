package wear

import (
	"fmt"
	"math"
	"slices"

	"boremend/knowledge/worked"
)

// PointsInputs are points on the wall of a bore, all in one section square to
// its axis.
type PointsInputs struct {
	X worked.List `name:"x" symbol:"x" kind:"length" means:"places of the points toward 3 o'clock"`
	Y worked.List `name:"y" symbol:"y" kind:"length" means:"places of the same points toward 12 o'clock"`
}

// What the calculations on points will take.
const (
	mostPoints  = 1000
	farthestMM  = 1e7
	flatness    = 1e-12 // of the spreads along and across: below it, a line
	tinyShare   = 1e-12 // what rounding may do to a length
	halfTurnDeg = 180.0
	fullTurnDeg = 360.0
)

// point is a place in the section.
type point struct{ x, y float64 }

// to is the distance between two places. It is written out, and not with Hypot,
// so that it is bit for bit what the formula shown gives.
func (p point) to(q point) float64 {
	dx, dy := p.x-q.x, p.y-q.y
	return math.Sqrt(dx*dx + dy*dy)
}

// points checks the inputs and pairs them up; least is how few will do.
func (in PointsInputs) points(least int) ([]point, error) {
	var c worked.Checks
	checkList(&c, "x", in.X, -farthestMM, farthestMM)
	checkList(&c, "y", in.Y, -farthestMM, farthestMM)
	if len(in.X) != len(in.Y) {
		c.Refuse("y", "holds %d numbers and x holds %d: each point needs both", len(in.Y), len(in.X))
	} else if len(in.X) < least || len(in.X) > mostPoints {
		c.Refuse("x", "holds %d points, must hold %d to %d", len(in.X), least, mostPoints)
	}
	if err := c.Err(); err != nil {
		return nil, err
	}
	points := make([]point, len(in.X))
	for i := range points {
		points[i] = point{in.X[i], in.Y[i]}
	}
	return points, nil
}

// checkList asks of every number of a list that it lies between least and most.
func checkList(c *worked.Checks, name string, list worked.List, least, most float64) {
	for i, v := range list {
		if !(v >= least && v <= most) {
			c.Refuse(name, "has %g as number %d, must lie between %g and %g", v, i+1, least, most)
			return
		}
	}
}

func mean(points []point) point {
	var m point
	for _, p := range points {
		m.x += p.x
		m.y += p.y
	}
	n := float64(len(points))
	return point{m.x / n, m.y / n}
}

// roundFrom returns the largest and the smallest distance from a centre, and
// which points have it.
func roundFrom(centre point, points []point) (far, near float64, farthest, nearest int) {
	near = math.Inf(1)
	for i, p := range points {
		d := p.to(centre)
		if d > far {
			far, farthest = d, i
		}
		if d < near {
			near, nearest = d, i
		}
	}
	return far, near, farthest, nearest
}

// residuals returns the mean distance from a centre and the sum of the squared
// differences between the distances and a radius.
func residuals(centre point, radius float64, points []point) (meanRadius, sumOfSquares float64) {
	for _, p := range points {
		d := p.to(centre)
		meanRadius += d
		sumOfSquares += (d - radius) * (d - radius)
	}
	return meanRadius / float64(len(points)), sumOfSquares
}

// The same two as formulas over the lists x and y.
const (
	distance         = "sqrt((# - x_0)^2 + (y[#index] - y_0)^2)"
	meanRadiusText   = "sum(x, " + distance + ") / n"
	sumOfSquaresText = "sum(x, (" + distance + " - R)^2)"
)

// widestGap returns the largest angle, in degrees, between neighbours as seen
// from a centre: 180 and more means that the points do not go round it.
func widestGap(centre point, points []point) float64 {
	clocks := make([]float64, len(points))
	for i, p := range points {
		clocks[i] = clockOf(p.x-centre.x, p.y-centre.y)
	}
	return widestStep(clocks)
}

// widestStep returns the largest step between clock angles all round.
func widestStep(clocks []float64) float64 {
	sorted := slices.Sorted(slices.Values(clocks))
	step := sorted[0] + fullTurnDeg - sorted[len(sorted)-1]
	for i := 1; i < len(sorted); i++ {
		step = max(step, sorted[i]-sorted[i-1])
	}
	return step
}

// clockOf is the angle of a direction, clockwise from 12, in degrees from 0 up to
// 360.
func clockOf(towardThree, towardTwelve float64) float64 {
	clock := math.Atan2(towardThree, towardTwelve) * halfTurnDeg / math.Pi
	if clock < 0 {
		clock += fullTurnDeg
	}
	if clock >= fullTurnDeg {
		return 0 // a direction a hair to the left of 12
	}
	return clock
}

// at is the place at a clock angle and a distance from the origin.
func at(clockDeg, distance float64) point {
	sin, cos := math.Sincos(clockDeg * math.Pi / halfTurnDeg)
	return point{distance * sin, distance * cos}
}

// arcWarning says what a fit to part of a circle is worth.
func arcWarning(centre point, in PointsInputs, fit string) []string {
	points, err := in.points(1)
	if err != nil {
		return nil // the calculation itself has refused
	}
	if gap := widestGap(centre, points); gap > halfTurnDeg {
		return []string{fmt.Sprintf("The points cover only %.0f degrees of the circle. %s", fullTurnDeg-gap, fit)}
	}
	return nil
}

func refuseLine() error {
	var c worked.Checks
	c.Refuse("x", "and y give points on one straight line, through which no circle goes")
	return c.Err()
}
