package wear

import (
	"math"

	"boremend/knowledge/worked"
)

// GeometricFitOutputs are the circle and how well the points lie on it.
type GeometricFitOutputs struct {
	Count       float64 `name:"count" symbol:"n" kind:"count" means:"how many points"`
	CentreXMM   float64 `name:"centre_x" symbol:"x_0" kind:"length" means:"centre toward 3 o'clock"`
	CentreYMM   float64 `name:"centre_y" symbol:"y_0" kind:"length" means:"centre toward 12 o'clock"`
	RadiusMM    float64 `name:"radius" symbol:"R" kind:"length" means:"radius, which for this fit is the mean distance from the centre"`
	MeanRadius  float64 `name:"mean_radius" symbol:"r_m" kind:"length" means:"mean distance of the points from the centre"`
	SumSquares  float64 `name:"sum_sq_residual" symbol:"S" kind:"area" means:"sum of the squared distances from the circle, the least that there is"`
	Iterations  float64 `name:"steps" kind:"count" means:"steps that the search took"`
	DeviationMM float64 `name:"radial_deviation" symbol:"f" kind:"length" means:"largest less smallest distance from the centre"`
}

// CircleFitGeometric fits the circle from which the points lie least far away:
// the least-squares circle of roundness measurement.
//
//	S   = sum of (d - R)^2, made least over x_0, y_0 and R
//	d   = sqrt((x - x_0)^2 + (y - y_0)^2)
//	r_m = R where S is least
//
// x and y are the places of the points [mm], d their distances from the centre.
// Levenberg and Marquardt's search starts at the circle of Taubin, on points
// moved to their middle, so that it is all the same where the origin lies; it
// stops when a step has fallen below 1e-12 of R, not when S stops falling, which
// it does long before.
//
// Validity: three points or more; points so nearly on a line that no circle is
// best are refused.
//
// Error: that of the readings, 1.4 times, divided by the root of their number; on
// an arc of 60 degrees the centre moves 18 times as far as on a full circle
// (recomputed).
//
// Source: W. Gander and J. Hrebicek, Solving Problems in Scientific Computing
// Using Maple and MATLAB, circle-fit chapter (points read, answer from memory);
// SciPy Cookbook, Least Squares Circle (read).
func CircleFitGeometric(in PointsInputs) (GeometricFitOutputs, error) {
	points, err := in.points(3)
	if err != nil {
		return GeometricFitOutputs{}, err
	}
	return geometric(points)
}

func geometric(points []point) (GeometricFitOutputs, error) {
	start, err := taubin(points)
	if err != nil {
		return GeometricFitOutputs{}, err
	}
	m, s := point{start.MeanXMM, start.MeanYMM}, start.SpreadMM
	scaled := make([]point, len(points))
	for i, p := range points {
		scaled[i] = point{(p.x - m.x) / s, (p.y - m.y) / s}
	}
	found := search{point{(start.CentreXMM - m.x) / s, (start.CentreYMM - m.y) / s}, start.RadiusMM / s}
	steps, err := found.settle(scaled)
	if err != nil {
		return GeometricFitOutputs{}, err
	}
	out := GeometricFitOutputs{
		Count: start.Count, Iterations: float64(steps),
		CentreXMM: m.x + s*found.centre.x, CentreYMM: m.y + s*found.centre.y, RadiusMM: s * found.radius,
	}
	centre := point{out.CentreXMM, out.CentreYMM}
	out.MeanRadius, out.SumSquares = residuals(centre, out.RadiusMM, points)
	far, near, _, _ := roundFrom(centre, points)
	out.DeviationMM = far - near
	return out, nil
}

// search is a circle on its way to the best one.
type search struct {
	centre point
	radius float64
}

// What ends the search.
const (
	mostSteps   = 500
	settledStep = 1e-12 // of the radius
	endlessRing = 1e5   // a radius of so many spreads is as good as a line
)

// settle runs the search and returns its number of steps.
func (s *search) settle(points []point) (int, error) {
	damping := 1e-3
	_, now := residuals(s.centre, s.radius, points)
	for step := 1; step <= mostSteps; step++ {
		next, length := s.step(points, damping)
		_, then := residuals(next.centre, next.radius, points)
		if length <= settledStep*s.radius && then <= now*(1+1e-9)+1e-30 {
			*s = next
			return step, nil
		}
		if then <= now {
			*s, now, damping = next, then, damping/10
		} else {
			damping *= 10
			if damping > 1e9 {
				return step, nil // no step of any length makes it better
			}
		}
		if !(s.radius < endlessRing) {
			break
		}
	}
	return 0, refuseLine()
}

// step solves the damped normal equations of the residuals d - R.
func (s search) step(points []point, damping float64) (next search, length float64) {
	var a [3][3]float64
	var b [3]float64
	for _, p := range points {
		d := p.to(s.centre)
		row := [3]float64{0, 0, -1}
		if d > 0 {
			row[0], row[1] = (s.centre.x-p.x)/d, (s.centre.y-p.y)/d
		}
		for i := range row {
			for j := range row {
				a[i][j] += row[i] * row[j]
			}
			b[i] -= row[i] * (d - s.radius)
		}
	}
	for i := range a {
		a[i][i] *= 1 + damping
	}
	move := solve3(a, b)
	next = search{point{s.centre.x + move[0], s.centre.y + move[1]}, s.radius + move[2]}
	return next, math.Sqrt(move[0]*move[0] + move[1]*move[1] + move[2]*move[2])
}

// solve3 solves three linear equations by elimination with the largest pivot. A
// singular system gives numbers that are not finite.
func solve3(a [3][3]float64, b [3]float64) [3]float64 {
	for k := range 3 {
		pivot := k
		for i := k + 1; i < 3; i++ {
			if math.Abs(a[i][k]) > math.Abs(a[pivot][k]) {
				pivot = i
			}
		}
		a[k], a[pivot], b[k], b[pivot] = a[pivot], a[k], b[pivot], b[k]
		for i := k + 1; i < 3; i++ {
			times := a[i][k] / a[k][k]
			for j := k; j < 3; j++ {
				a[i][j] -= times * a[k][j]
			}
			b[i] -= times * b[k]
		}
	}
	for k := 2; k >= 0; k-- {
		for j := k + 1; j < 3; j++ {
			b[k] -= a[k][j] * b[j]
		}
		b[k] /= a[k][k]
	}
	return b
}

// CircleFitGeometricCalculation is the catalogue entry of CircleFitGeometric.
func CircleFitGeometricCalculation() worked.Calculation {
	const definition, least, lm = "definition", "least squares of distances", "Levenberg-Marquardt search from the circle of Taubin, until a step is below 1e-12 of R"
	return worked.Define("circle_fit_geometric", CircleFitGeometric, worked.Page[PointsInputs, GeometricFitOutputs]{
		Title: "Circle through points, least squares of the distances",
		Sources: []string{
			"W. Gander, J. Hrebicek, Solving Problems in Scientific Computing Using Maple and MATLAB, circle-fit chapter (points read, answer from memory)",
			"SciPy Cookbook, Least Squares Circle (read)",
		},
		Validity: "three points or more that do not lie on a line",
		Formulas: []worked.Formula[PointsInputs, GeometricFitOutputs]{
			{Symbol: "n", Is: "len(x)", Source: definition},
			{Symbol: "x_0", Table: lm, Source: least},
			{Symbol: "y_0", Table: lm, Source: least},
			{Symbol: "R", Is: meanRadiusText, Source: "where the squares are least, R is the mean distance"},
			{Symbol: "r_m", Is: meanRadiusText, Source: definition},
			{Symbol: "S", Is: sumOfSquaresText, Source: definition},
			{Symbol: "f", Is: "max(map(x, " + distance + ")) - min(map(x, " + distance + "))", Source: definition},
		},
		Warnings: func(in PointsInputs, out GeometricFitOutputs) []string {
			return arcWarning(point{out.CentreXMM, out.CentreYMM}, in, "A small error of a reading moves the centre far.")
		},
		Example: map[string]string{"x": "0.7, 3.3, 5.6, 7.5, 6.4, 4.4, 0.3, -1.1 mm", "y": "4, 4.7, 4, 1.3, -1.1, -3, -2.5, 1.3 mm"},
	})
}
