package wear

import (
	"math"
	"testing"

	"boremend/knowledge/worked"

	"pgregory.net/rapid"
)

// The slow ways of this file try every centre that geometry allows; the searches
// must find the same.

// slowEnclosing tries the circles across all pairs and around all triples.
func slowEnclosing(points []point) float64 {
	best := math.Inf(1)
	try := func(centre point) {
		far, _, _, _ := roundFrom(centre, points)
		best = min(best, far)
	}
	everyCentre(points, try)
	return best
}

// slowZone tries every crossing of two lines midway between two points.
func slowZone(points, hull []point) float64 {
	best := math.Inf(1)
	for i := range points {
		for j := range i {
			for k := range points {
				for l := range k {
					centre, ok := between(points[i], points[j]).meet(between(points[k], points[l]))
					if far, near, _, _ := roundFrom(centre, points); ok && insideHull(hull, centre) {
						best = min(best, far-near)
					}
				}
			}
		}
	}
	return best
}

// slowInside tries every triple, and a fine walk along the edge of the figure.
func slowInside(points, hull []point) float64 {
	best := 0.0
	try := func(centre point) {
		if _, near, _, _ := roundFrom(centre, points); insideHull(hull, centre) {
			best = max(best, near)
		}
	}
	everyCentre(points, try)
	const steps = 2000
	for i, p := range hull {
		q := hull[(i+1)%len(hull)]
		for k := range steps {
			share := float64(k) / steps
			try(point{p.x + share*(q.x-p.x), p.y + share*(q.y-p.y)})
		}
	}
	return best
}

func everyCentre(points []point, try func(point)) {
	for i, p := range points {
		for j, q := range points[:i] {
			try(across(p, q).centre)
			for _, r := range points[:j] {
				if centre, ok := equidistant(p, q, r); ok {
					try(centre)
				}
			}
		}
	}
}

// drawBore is a worn bore: round but for an oval, wear on one side and scatter.
func drawBore(t *rapid.T) []point {
	n := rapid.IntRange(5, 14).Draw(t, "n")
	radius := rapid.Float64Range(10, 200).Draw(t, "radius")
	points := make([]point, n)
	for i := range points {
		clock := fullTurnDeg / float64(n) * (float64(i) + rapid.Float64Range(0, 0.5).Draw(t, "off"))
		points[i] = at(clock, radius*(1+rapid.Float64Range(0, 0.1).Draw(t, "wear")))
	}
	return points
}

func TestSearchesFindTheBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		points := drawBore(t)
		hull := hullOf(points)
		tiny := 1e-9 * points[0].to(point{})
		if got, want := enclosing(points).radius, slowEnclosing(points); math.Abs(got-want) > tiny {
			t.Errorf("smallest circle round: %.12g, by trying all %.12g", got, want)
		}
		centre, ok := newRoundSearch(points).leastZone()
		far, near, _, _ := roundFrom(centre, points)
		if want := slowZone(points, hull); !ok || math.Abs(far-near-want) > tiny {
			t.Errorf("least zone: %.12g, by trying all %.12g", far-near, want)
		}
		centre, ok = newRoundSearch(points).largestInside()
		_, near, _, _ = roundFrom(centre, points)
		want := slowInside(points, hull)
		if walk := want * 1e-2; !ok || near < want-tiny || near > want+walk {
			t.Errorf("largest inside: %.12g, by trying all %.12g", near, want)
		}
		if !insideHull(hull, centre) {
			t.Error("the centre of the largest circle inside has left the figure")
		}
	})
}

// What may be drawn of points for the circles round them: scattered anyhow, with
// repeats and points on lines.
func TestSmallestCircleOfScatteredPoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		points := make([]point, rapid.IntRange(2, 12).Draw(t, "n"))
		for i := range points {
			points[i] = point{float64(rapid.IntRange(-3, 3).Draw(t, "x")), float64(rapid.IntRange(-3, 3).Draw(t, "y"))}
		}
		got, _, _, _ := roundFrom(enclosing(points).centre, points)
		want := slowEnclosing(points)
		if math.Abs(got-want) > 1e-9 {
			t.Errorf("%v: radius %.12g, by trying all %.12g", points, got, want)
		}
	})
}

// fits are the calculations that give a centre and a radius and must not care
// where the points lie.
var fits = map[string]func(PointsInputs) (point, float64, error){
	"kasa": func(in PointsInputs) (point, float64, error) {
		out, err := CircleFitKasa(in)
		return point{out.CentreXMM, out.CentreYMM}, out.RadiusMM, err
	},
	"taubin": func(in PointsInputs) (point, float64, error) {
		out, err := CircleFitTaubin(in)
		return point{out.CentreXMM, out.CentreYMM}, out.RadiusMM, err
	},
	"pratt": func(in PointsInputs) (point, float64, error) {
		out, err := CircleFitPratt(in)
		return point{out.CentreXMM, out.CentreYMM}, out.RadiusMM, err
	},
	"geometric": func(in PointsInputs) (point, float64, error) {
		out, err := CircleFitGeometric(in)
		return point{out.CentreXMM, out.CentreYMM}, out.RadiusMM, err
	},
	"enclosing": func(in PointsInputs) (point, float64, error) {
		out, err := EnclosingCircle(in)
		return point{out.CentreXMM, out.CentreYMM}, out.RadiusMM, err
	},
	"minimum zone": func(in PointsInputs) (point, float64, error) {
		out, err := Roundness(RoundnessInputs{X: in.X, Y: in.Y})
		return point{out.ZoneXMM, out.ZoneYMM}, out.ZoneOuterMM, err
	},
	"inscribed": func(in PointsInputs) (point, float64, error) {
		out, err := Roundness(RoundnessInputs{X: in.X, Y: in.Y})
		return point{out.InscribedXMM, out.InscribedYMM}, out.InscribedR, err
	},
}

func inputsOf(points []point) (in PointsInputs) {
	for _, p := range points {
		in.X, in.Y = append(in.X, p.x), append(in.Y, p.y)
	}
	return in
}

// Turning and moving all points turns and moves the centre, and nothing else.
func TestCirclesMoveWithThePoints(t *testing.T) {
	for name, fit := range fits {
		t.Run(name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				points := drawBore(t)
				sin, cos := math.Sincos(rapid.Float64Range(0, 7).Draw(t, "turn"))
				move := point{rapid.Float64Range(-1e4, 1e4).Draw(t, "dx"), rapid.Float64Range(-1e4, 1e4).Draw(t, "dy")}
				place := func(p point) point { return point{cos*p.x - sin*p.y + move.x, sin*p.x + cos*p.y + move.y} }
				moved := make([]point, len(points))
				for i, p := range points {
					moved[i] = place(p)
				}
				centre, radius, err := fit(inputsOf(points))
				if err != nil {
					t.Fatal(err)
				}
				at, size, err := fit(inputsOf(moved))
				if err != nil {
					t.Fatal(err)
				}
				if math.Abs(size-radius) > 1e-8*radius || place(centre).to(at) > 1e-6*radius {
					t.Errorf("radius %.12g and %.12g, centre off by %g", radius, size, place(centre).to(at))
				}
			})
		})
	}
}

// Points on a circle give that circle, whichever way it is fitted.
func TestPointsOnACircle(t *testing.T) {
	for name, fit := range fits {
		t.Run(name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				centre := point{rapid.Float64Range(-50, 50).Draw(t, "x"), rapid.Float64Range(-50, 50).Draw(t, "y")}
				radius := rapid.Float64Range(5, 300).Draw(t, "radius")
				n := rapid.IntRange(4, 40).Draw(t, "n")
				var points []point
				for i := range n {
					p := at(fullTurnDeg*(float64(i)+0.3)/float64(n), radius)
					points = append(points, point{p.x + centre.x, p.y + centre.y})
				}
				at, size, err := fit(inputsOf(points))
				if err != nil {
					t.Fatal(err)
				}
				if math.Abs(size-radius) > 1e-9*radius || at.to(centre) > 1e-8*radius {
					t.Errorf("%g at %v, want %g at %v", size, at, radius, centre)
				}
			})
		})
	}
}

// The geometric fit is best: no circle near it has a smaller sum of squares.
func TestGeometricFitIsLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		points := drawBore(t)
		out, err := CircleFitGeometric(inputsOf(points))
		if err != nil {
			t.Fatal(err)
		}
		step := out.RadiusMM * rapid.Float64Range(1e-5, 1e-2).Draw(t, "step")
		for _, by := range [][3]float64{{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}} {
			centre := point{out.CentreXMM + by[0]*step, out.CentreYMM + by[1]*step}
			if _, sum := residuals(centre, out.RadiusMM+by[2]*step, points); sum < out.SumSquares {
				t.Errorf("%g lies below the least sum of squares %g", sum, out.SumSquares)
			}
		}
	})
}

// The first data of Gander, Golub and Strebel, BIT 34 (1994): centre 4.7398,
// 2.9835, radius 4.7142 by distances (from memory).
func TestGeometricFitOnAnArc(t *testing.T) {
	out, err := CircleFitGeometric(PointsInputs{X: worked.List{1, 2, 5, 7, 9, 3}, Y: worked.List{7, 6, 8, 7, 5, 7}})
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(out.CentreXMM-4.7398) > 5e-5 || math.Abs(out.CentreYMM-2.9835) > 5e-5 || math.Abs(out.RadiusMM-4.7142) > 5e-5 {
		t.Errorf("centre %.5f, %.5f, radius %.5f", out.CentreXMM, out.CentreYMM, out.RadiusMM)
	}
}

// Many points must not take long: a search that tried them all would never end.
func TestManyPoints(t *testing.T) {
	var in PointsInputs
	for i := range mostPoints {
		clock := fullTurnDeg * float64(i) / mostPoints
		p := at(clock, 50+0.5*math.Sin(2*clock*math.Pi/halfTurnDeg)+0.01*math.Sin(float64(i*i)))
		in.X, in.Y = append(in.X, p.x), append(in.Y, p.y)
	}
	out, err := Roundness(RoundnessInputs{X: in.X, Y: in.Y})
	if err != nil {
		t.Fatal(err)
	}
	// The oval is 1 mm by radii, the scatter adds up to 0.02.
	if out.ZoneMM > out.LeastSquaresMM || out.ZoneMM > out.EnclosingMM || out.ZoneMM > out.InscribedMM || !(out.ZoneMM > 1 && out.ZoneMM < 1.02) {
		t.Errorf("zone %g, from the other centres %g, %g, %g", out.ZoneMM, out.LeastSquaresMM, out.EnclosingMM, out.InscribedMM)
	}
}
