package draw

import (
	"math"

	"github.com/tdewolff/canvas"
)

// Radius is how far the metal lies from the true axis at a clock position, in
// degrees clockwise from 12.
type Radius struct {
	ClockDeg float64
	MM       float64
}

// profile gives the radius of a hole at each clock position, in degrees.
type profile func(clock float64) float64

// steps is into how many parts a hole's outline is broken: every degree.
const steps = 360

// read is the profile through readings, their largest at each clock position.
// Between two it goes over smoothly, never beyond either. One reading alone
// leaves a round hole.
func read(readings []Radius) profile {
	var knots []Radius
	for _, r := range readings {
		r.ClockDeg = math.Mod(math.Mod(r.ClockDeg, 360)+360, 360)
		known := false
		for i := range knots {
			if knots[i].ClockDeg == r.ClockDeg {
				knots[i].MM, known = max(knots[i].MM, r.MM), true
			}
		}
		if !known {
			knots = append(knots, r)
		}
	}
	sortBy(knots, func(r Radius) float64 { return r.ClockDeg })
	return func(clock float64) float64 {
		clock = math.Mod(math.Mod(clock, 360)+360, 360)
		a, b := knots[len(knots)-1], knots[0]
		a.ClockDeg -= 360
		for i, k := range knots {
			if k.ClockDeg <= clock {
				a, b = k, knots[(i+1)%len(knots)]
			}
		}
		if b.ClockDeg <= a.ClockDeg {
			b.ClockDeg += 360
		}
		return a.MM + (b.MM-a.MM)*(1-math.Cos(math.Pi*(clock-a.ClockDeg)/(b.ClockDeg-a.ClockDeg)))/2
	}
}

// deepest is the clock position at which the profile reaches farthest.
func (p profile) deepest() float64 {
	best := 0.0
	for c := range steps {
		if p(float64(c)) > p(best) {
			best = float64(c)
		}
	}
	return best
}

// most is how far the profile reaches.
func (p profile) most() float64 { return p(p.deepest()) }

// turned is the profile turned clockwise by an angle in degrees.
func (p profile) turned(by float64) profile {
	return func(clock float64) float64 { return p(clock - by) }
}

// exaggerated is the profile with its distance from a round hole enlarged.
func (p profile) exaggerated(round, times float64) profile {
	return func(clock float64) float64 { return round + times*(p(clock)-round) }
}

// path is the outline of the hole on paper, 12 o'clock at the top.
func (p profile) path(c point, sc float64) *canvas.Path {
	var points []point
	for i := range steps {
		sin, cos := math.Sincos(float64(i) * 2 * math.Pi / steps)
		r := p(float64(i)) * sc
		points = append(points, at(c.X+r*sin, c.Y+r*cos))
	}
	return polyline(true, points...)
}

// oval is the profile of a hole of which only diameters are known, worn to that
// depth at 12 o'clock and at 6, and that much all round.
func oval(round, allRound, depthAt12, depthAt6 float64) profile {
	return func(clock float64) float64 {
		cos := math.Cos(clock * math.Pi / 180)
		depth := depthAt12
		if cos < 0 {
			depth = depthAt6
		}
		return round + allRound + (depth-allRound)*cos*cos
	}
}
