package wear

import (
	"math"

	"boremend/knowledge/worked"
)

// UnitNormOutputs are the circle and the four numbers that it comes from.
type UnitNormOutputs struct {
	Count        float64 `name:"count" symbol:"n" kind:"count" means:"how many points"`
	Square       float64 `name:"square_term" symbol:"p" kind:"ratio" means:"factor of x^2 + y^2"`
	XTerm        float64 `name:"x_term" symbol:"q" kind:"ratio" means:"factor of x"`
	YTerm        float64 `name:"y_term" symbol:"t" kind:"ratio" means:"factor of y"`
	Constant     float64 `name:"constant_term" symbol:"c" kind:"ratio" means:"what stands alone"`
	CentreXMM    float64 `name:"centre_x" symbol:"x_0" kind:"length" means:"centre toward 3 o'clock"`
	CentreYMM    float64 `name:"centre_y" symbol:"y_0" kind:"length" means:"centre toward 12 o'clock"`
	RadiusMM     float64 `name:"radius" symbol:"R" kind:"length" means:"radius of the fit"`
	MeanRadiusMM float64 `name:"mean_radius" symbol:"r_m" kind:"length" means:"mean distance of the points from the centre"`
	SumSquares   float64 `name:"sum_sq_residual" symbol:"S" kind:"area" means:"sum of the squared distances from the circle"`
}

// CircleFitUnitNorm fits p (x^2 + y^2) + q x + t y + c = 0 with p^2 + q^2 + t^2 +
// c^2 = 1, which textbooks of linear algebra show as the obvious fit.
//
//	[p q t c]: the direction in which the rows (x^2 + y^2, x, y, 1) are shortest
//	x_0 = -q / (2 p), y_0 = -t / (2 p)
//	R   = sqrt((q^2 + t^2) / (4 p^2) - c / p)
//
// x and y are the places of the points, in mm: the answer depends on the unit and
// on where the origin lies, which no property of a bore may do. It is here to
// compare with published results and to show how far out such a fit can be.
//
// Validity: three points or more that do not lie on a line.
//
// Error: without bound on ragged arcs. Use CircleFitGeometric.
//
// Source: W. Gander, G. H. Golub, R. Strebel, Least-Squares Fitting of Circles and
// Ellipses, BIT 34 (1994) 558, whose first example comes back (from memory).
func CircleFitUnitNorm(in PointsInputs) (UnitNormOutputs, error) {
	points, err := in.points(3)
	if err != nil {
		return UnitNormOutputs{}, err
	}
	var check AlgebraicFitOutputs
	if err := check.moments(points); err != nil {
		return UnitNormOutputs{}, err
	}
	rows := make([][4]float64, len(points))
	for i, p := range points {
		rows[i] = [4]float64{p.x*p.x + p.y*p.y, p.x, p.y, 1}
	}
	u := shortestDirection(rows)
	out := UnitNormOutputs{Count: float64(len(points)), Square: u[0], XTerm: u[1], YTerm: u[2], Constant: u[3]}
	out.CentreXMM, out.CentreYMM = -u[1]/(2*u[0]), -u[2]/(2*u[0])
	out.RadiusMM = math.Sqrt((u[1]*u[1]+u[2]*u[2])/(4*u[0]*u[0]) - u[3]/u[0])
	if !(out.RadiusMM > 0) || math.IsInf(out.RadiusMM, 0) {
		var c worked.Checks
		c.Refuse("x", "and y give no circle by this fit, which depends on where the origin lies; take circle_fit_geometric")
		return UnitNormOutputs{}, c.Err()
	}
	out.MeanRadiusMM, out.SumSquares = residuals(point{out.CentreXMM, out.CentreYMM}, out.RadiusMM, points)
	return out, nil
}

// shortestDirection returns the unit vector whose product with the rows is
// shortest: the last right singular vector, by one-sided Jacobi rotations of
// pairs of columns until all are square to each other.
func shortestDirection(rows [][4]float64) [4]float64 {
	turns := [4][4]float64{{1}, {0, 1}, {0, 0, 1}, {0, 0, 0, 1}}
	for range 60 {
		worst := 0.0
		for i := range 3 {
			for j := i + 1; j < 4; j++ {
				worst = max(worst, squareUp(rows, &turns, i, j))
			}
		}
		if worst < 1e-15 {
			break
		}
	}
	var length [4]float64
	shortest := 0
	for j := range 4 {
		for _, row := range rows {
			length[j] += row[j] * row[j]
		}
		if length[j] < length[shortest] {
			shortest = j
		}
	}
	return [4]float64{turns[0][shortest], turns[1][shortest], turns[2][shortest], turns[3][shortest]}
}

// squareUp turns two columns until they are square to each other and returns how
// far they were from it.
func squareUp(rows [][4]float64, turns *[4][4]float64, i, j int) float64 {
	var ii, jj, ij float64
	for _, row := range rows {
		ii += row[i] * row[i]
		jj += row[j] * row[j]
		ij += row[i] * row[j]
	}
	if ij == 0 {
		return 0
	}
	zeta := (jj - ii) / (2 * ij)
	tan := math.Copysign(1, zeta) / (math.Abs(zeta) + math.Sqrt(1+zeta*zeta))
	cos := 1 / math.Sqrt(1+tan*tan)
	sin := tan * cos
	for k := range rows {
		a, b := rows[k][i], rows[k][j]
		rows[k][i], rows[k][j] = cos*a-sin*b, sin*a+cos*b
	}
	for k := range turns {
		a, b := turns[k][i], turns[k][j]
		turns[k][i], turns[k][j] = cos*a-sin*b, sin*a+cos*b
	}
	return math.Abs(ij) / math.Sqrt(ii*jj)
}

// CircleFitUnitNormCalculation is the catalogue entry of CircleFitUnitNorm.
func CircleFitUnitNormCalculation() worked.Calculation {
	const gander, definition = "Gander, Golub, Strebel 1994", "definition"
	return worked.Define("circle_fit_unit_norm", CircleFitUnitNorm, worked.Page[PointsInputs, UnitNormOutputs]{
		Title:    "Circle through points, algebraic fit of unit norm (for comparison only)",
		Sources:  []string{"W. Gander, G. H. Golub, R. Strebel, Least-Squares Fitting of Circles and Ellipses, BIT 34 (1994) 558 (from memory)"},
		Validity: "for comparison with published results; the answer depends on the unit, which is mm, and on the origin",
		Formulas: []worked.Formula[PointsInputs, UnitNormOutputs]{
			{Symbol: "n", Is: "len(x)", Source: definition},
			{Symbol: "p", Table: "last right singular vector of the rows (x^2 + y^2, x, y, 1), first part", Source: gander},
			{Symbol: "q", Table: "the same, second part", Source: gander},
			{Symbol: "t", Table: "the same, third part", Source: gander},
			{Symbol: "c", Table: "the same, fourth part", Source: gander},
			{Symbol: "x_0", Is: "-q / (2 * p)", Source: gander},
			{Symbol: "y_0", Is: "-t / (2 * p)", Source: gander},
			{Symbol: "R", Is: "sqrt((q^2 + t^2) / (4 * p * p) - c / p)", Source: gander},
			{Symbol: "r_m", Is: meanRadiusText, Source: definition},
			{Symbol: "S", Is: sumOfSquaresText, Source: definition},
		},
		Warnings: func(PointsInputs, UnitNormOutputs) []string {
			return []string{"This fit changes with the place of the origin and can be far out on an arc: never size a repair on it. Take circle_fit_geometric."}
		},
		Example: map[string]string{"x": "1, 2, 5, 7, 9, 3 mm", "y": "7, 6, 8, 7, 5, 7 mm"},
	})
}
