package wear

import (
	"math"

	"boremend/knowledge/worked"
)

// AlgebraicFitOutputs are the circle of the fits of Pratt and Taubin and what
// leads to it. Moments are means over points that were moved to their middle and
// divided by their spread, so that M_xx + M_yy = 1.
type AlgebraicFitOutputs struct {
	Count        float64 `name:"count" symbol:"n" kind:"count" means:"how many points"`
	MeanXMM      float64 `name:"mean_x" symbol:"x_m" kind:"length" means:"middle of the points toward 3 o'clock"`
	MeanYMM      float64 `name:"mean_y" symbol:"y_m" kind:"length" means:"middle of the points toward 12 o'clock"`
	SpreadMM     float64 `name:"spread" symbol:"s" kind:"length" means:"root of the mean square distance from their middle"`
	MomentXX     float64 `name:"moment_xx" symbol:"M_xx" kind:"ratio" means:"mean of u^2, where u = (x - x_m) / s"`
	MomentYY     float64 `name:"moment_yy" symbol:"M_yy" kind:"ratio" means:"mean of v^2, where v = (y - y_m) / s"`
	MomentXY     float64 `name:"moment_xy" symbol:"M_xy" kind:"ratio" means:"mean of u v"`
	MomentXZ     float64 `name:"moment_xz" symbol:"M_xz" kind:"ratio" means:"mean of u z, where z = u^2 + v^2"`
	MomentYZ     float64 `name:"moment_yz" symbol:"M_yz" kind:"ratio" means:"mean of v z"`
	MomentZZ     float64 `name:"moment_zz" symbol:"M_zz" kind:"ratio" means:"mean of z^2"`
	Area         float64 `name:"spread_area" symbol:"C" kind:"ratio" means:"nothing when the points lie on a line"`
	A0           float64 `name:"coefficient_0" symbol:"A_0" kind:"ratio" means:"of the polynomial in eta, constant"`
	A1           float64 `name:"coefficient_1" symbol:"A_1" kind:"ratio" means:"of eta"`
	A2           float64 `name:"coefficient_2" symbol:"A_2" kind:"ratio" means:"of eta^2"`
	A3           float64 `name:"coefficient_3" symbol:"A_3" kind:"ratio" means:"of eta^3"`
	A4           float64 `name:"coefficient_4" symbol:"A_4" kind:"ratio" means:"of eta^4"`
	Eta          float64 `name:"root" symbol:"eta" kind:"ratio" means:"root of the polynomial next to 0; 0 when the points lie on a circle"`
	CentreXMM    float64 `name:"centre_x" symbol:"x_0" kind:"length" means:"centre toward 3 o'clock"`
	CentreYMM    float64 `name:"centre_y" symbol:"y_0" kind:"length" means:"centre toward 12 o'clock"`
	RadiusMM     float64 `name:"radius" symbol:"R" kind:"length" means:"radius of the fit"`
	MeanRadiusMM float64 `name:"mean_radius" symbol:"r_m" kind:"length" means:"mean distance of the points from the centre, which is not R"`
	SumSquares   float64 `name:"sum_sq_residual" symbol:"S" kind:"area" means:"sum of the squared distances from the circle"`
}

// moments fills in everything that both fits share before the polynomial.
func (out *AlgebraicFitOutputs) moments(points []point) error {
	m, n := mean(points), float64(len(points))
	out.Count, out.MeanXMM, out.MeanYMM = n, m.x, m.y
	var uu, vv, uv, uz, vz, zz float64
	for _, p := range points {
		u, v := p.x-m.x, p.y-m.y
		z := u*u + v*v
		uu += u * u
		vv += v * v
		uv += u * v
		uz += u * z
		vz += v * z
		zz += z * z
	}
	s := math.Sqrt((uu + vv) / n)
	if !(s > 0) {
		return refuseLine() // all points in one place
	}
	out.SpreadMM = s
	out.MomentXX, out.MomentYY, out.MomentXY = uu/(n*(s*s)), vv/(n*(s*s)), uv/(n*(s*s))
	out.MomentXZ, out.MomentYZ, out.MomentZZ = uz/(n*(s*s*s)), vz/(n*(s*s*s)), zz/(n*(s*s*s*s))
	out.Area = out.MomentXX*out.MomentYY - out.MomentXY*out.MomentXY
	if !(out.Area > flatness) {
		return refuseLine()
	}
	out.A0 = out.MomentXZ*(out.MomentXZ*out.MomentYY-out.MomentYZ*out.MomentXY) +
		out.MomentYZ*(out.MomentYZ*out.MomentXX-out.MomentXZ*out.MomentXY) - (out.MomentZZ-1)*out.Area
	out.A1 = out.MomentZZ - 1 + 4*out.Area - out.MomentXZ*out.MomentXZ - out.MomentYZ*out.MomentYZ
	return nil
}

// root fills in eta. Newton's method from 0 runs up to the root from one side
// and never past it, so it stops as soon as rounding turns it back.
func (out *AlgebraicFitOutputs) root() {
	x := 0.0
	for range 100 {
		value := out.A0 + x*(out.A1+x*(out.A2+x*(out.A3+x*out.A4)))
		slope := out.A1 + x*(2*out.A2+x*(3*out.A3+x*4*out.A4))
		next := x - value/slope
		if !(next > x) || math.IsInf(next, 0) {
			break
		}
		x = next
	}
	out.Eta = x
}

// circle fills in centre and radius; more is what the fit adds to the square of
// the radius.
func (out *AlgebraicFitOutputs) circle(points []point, more float64) {
	s, eta := out.SpreadMM, out.Eta
	below := 2 * (eta*eta - eta + out.Area)
	u := (out.MomentXZ*(out.MomentYY-eta) - out.MomentYZ*out.MomentXY) / below
	v := (out.MomentYZ*(out.MomentXX-eta) - out.MomentXZ*out.MomentXY) / below
	out.CentreXMM, out.CentreYMM = out.MeanXMM+s*u, out.MeanYMM+s*v
	out.RadiusMM = s * math.Sqrt(u*u+v*v+1+more)
	out.MeanRadiusMM, out.SumSquares = residuals(point{out.CentreXMM, out.CentreYMM}, out.RadiusMM, points)
}

type algebraicFormula = worked.Formula[PointsInputs, AlgebraicFitOutputs]

// algebraicFormulas lays out the working of a fit: its polynomial and radius
// stand between what the two have in common.
func algebraicFormulas(a2, a3, a4, radius, source string) []algebraicFormula {
	const definition = "definition"
	return []algebraicFormula{
		{Symbol: "n", Is: "len(x)", Source: definition},
		{Symbol: "x_m", Is: "sum(x) / n", Source: definition},
		{Symbol: "y_m", Is: "sum(y) / n", Source: definition},
		{Symbol: "s", Is: "sqrt((sum(x, (# - x_m)^2) + sum(y, (# - y_m)^2)) / n)", Source: definition},
		{Symbol: "M_xx", Is: "sum(x, (# - x_m)^2) / (n * s^2)", Source: definition},
		{Symbol: "M_yy", Is: "sum(y, (# - y_m)^2) / (n * s^2)", Source: definition},
		{Symbol: "M_xy", Is: "sum(x, (# - x_m) * (y[#index] - y_m)) / (n * s^2)", Source: definition},
		{Symbol: "M_xz", Is: "sum(x, (# - x_m) * ((# - x_m)^2 + (y[#index] - y_m)^2)) / (n * s^3)", Source: definition},
		{Symbol: "M_yz", Is: "sum(y, (# - y_m) * ((x[#index] - x_m)^2 + (# - y_m)^2)) / (n * s^3)", Source: definition},
		{Symbol: "M_zz", Is: "sum(x, ((# - x_m)^2 + (y[#index] - y_m)^2)^2) / (n * s^4)", Source: definition},
		{Symbol: "C", Is: "M_xx * M_yy - M_xy * M_xy", Source: source},
		{Symbol: "A_0", Is: "M_xz * (M_xz * M_yy - M_yz * M_xy) + M_yz * (M_yz * M_xx - M_xz * M_xy) - (M_zz - 1) * C", Source: source},
		{Symbol: "A_1", Is: "M_zz - 1 + 4 * C - M_xz * M_xz - M_yz * M_yz", Source: source},
		{Symbol: "A_2", Is: a2, Source: source},
		{Symbol: "A_3", Is: a3, Source: source},
		{Symbol: "A_4", Is: a4, Source: source},
		{Symbol: "eta", Table: "Newton's method from 0 on A_0 + A_1 eta + A_2 eta^2 + A_3 eta^3 + A_4 eta^4 = 0", Source: source},
		{Symbol: "x_0", Is: "x_m + s * (M_xz * (M_yy - eta) - M_yz * M_xy) / (2 * (eta^2 - eta + C))", Source: source},
		{Symbol: "y_0", Is: "y_m + s * (M_yz * (M_xx - eta) - M_xz * M_xy) / (2 * (eta^2 - eta + C))", Source: source},
		{Symbol: "R", Is: radius, Source: source},
		{Symbol: "r_m", Is: meanRadiusText, Source: definition},
		{Symbol: "S", Is: sumOfSquaresText, Source: definition},
	}
}
