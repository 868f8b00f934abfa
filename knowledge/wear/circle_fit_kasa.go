package wear

import (
	"math"

	"boremend/knowledge/worked"
)

// KasaOutputs are the circle and the sums that lead to it.
type KasaOutputs struct {
	Count        float64 `name:"count" symbol:"n" kind:"count" means:"how many points"`
	MeanXMM      float64 `name:"mean_x" symbol:"x_m" kind:"length" means:"middle of the points toward 3 o'clock"`
	MeanYMM      float64 `name:"mean_y" symbol:"y_m" kind:"length" means:"middle of the points toward 12 o'clock"`
	SumUU        float64 `name:"sum_uu" symbol:"S_uu" kind:"area" means:"sum of u^2, where u = x - x_m"`
	SumUV        float64 `name:"sum_uv" symbol:"S_uv" kind:"area" means:"sum of u v, where v = y - y_m"`
	SumVV        float64 `name:"sum_vv" symbol:"S_vv" kind:"area" means:"sum of v^2"`
	SumUZ        float64 `name:"sum_uz" symbol:"S_uz" kind:"volume" means:"sum of u (u^2 + v^2)"`
	SumVZ        float64 `name:"sum_vz" symbol:"S_vz" kind:"volume" means:"sum of v (u^2 + v^2)"`
	ShiftUMM     float64 `name:"shift_u" symbol:"u_c" kind:"length" means:"from the middle of the points to the centre, toward 3 o'clock"`
	ShiftVMM     float64 `name:"shift_v" symbol:"v_c" kind:"length" means:"the same toward 12 o'clock"`
	CentreXMM    float64 `name:"centre_x" symbol:"x_0" kind:"length" means:"centre toward 3 o'clock"`
	CentreYMM    float64 `name:"centre_y" symbol:"y_0" kind:"length" means:"centre toward 12 o'clock"`
	RadiusMM     float64 `name:"radius" symbol:"R" kind:"length" means:"radius of the fit"`
	MeanRadiusMM float64 `name:"mean_radius" symbol:"r_m" kind:"length" means:"mean distance of the points from the centre, which is not R"`
	SumSquares   float64 `name:"sum_sq_residual" symbol:"S" kind:"area" means:"sum of the squared distances from the circle"`
}

// CircleFitKasa fits a circle in the quickest way: it makes the squares of
// d^2 - R^2 least, which needs no more than two linear equations.
//
//	u = x - x_m, v = y - y_m, z = u^2 + v^2
//	u_c = (S_uz S_vv - S_vz S_uv) / (2 (S_uu S_vv - S_uv^2))
//	v_c = (S_vz S_uu - S_uz S_uv) / (2 (S_uu S_vv - S_uv^2))
//	R   = sqrt(u_c^2 + v_c^2 + (S_uu + S_vv) / n)
//
// x and y are the places of the points [mm], d the distance of a point from the
// centre [mm], n how many points there are, S_uz the sum of u z and so on.
//
// Two figures are both called the radius of this fit: R, and the mean distance
// r_m of the points. They differ; R belongs to the fit.
//
// Validity: three points or more that do not lie on a line. Use it on a full
// circle. On a short arc R comes out small, by tens of percent.
//
// Error: all round, of second order in the out-of-round; see CircleFitGeometric
// for the circle that measures distances and not their squares.
//
// Source: I. Kasa, IEEE Trans. Instrum. Meas. 25 (1976) 8 (from memory); the
// figures of the SciPy Cookbook, Least Squares Circle, come back (read).
func CircleFitKasa(in PointsInputs) (KasaOutputs, error) {
	points, err := in.points(3)
	if err != nil {
		return KasaOutputs{}, err
	}
	m := mean(points)
	out := KasaOutputs{Count: float64(len(points)), MeanXMM: m.x, MeanYMM: m.y}
	for _, p := range points {
		u, v := p.x-m.x, p.y-m.y
		z := u*u + v*v
		out.SumUU += u * u
		out.SumUV += u * v
		out.SumVV += v * v
		out.SumUZ += u * z
		out.SumVZ += v * z
	}
	across := 2 * (out.SumUU*out.SumVV - out.SumUV*out.SumUV)
	if spread := out.SumUU + out.SumVV; !(across > flatness*spread*spread) {
		return KasaOutputs{}, refuseLine()
	}
	out.ShiftUMM = (out.SumUZ*out.SumVV - out.SumVZ*out.SumUV) / across
	out.ShiftVMM = (out.SumVZ*out.SumUU - out.SumUZ*out.SumUV) / across
	out.CentreXMM, out.CentreYMM = m.x+out.ShiftUMM, m.y+out.ShiftVMM
	out.RadiusMM = math.Sqrt(out.ShiftUMM*out.ShiftUMM + out.ShiftVMM*out.ShiftVMM + (out.SumUU+out.SumVV)/out.Count)
	out.MeanRadiusMM, out.SumSquares = residuals(point{out.CentreXMM, out.CentreYMM}, out.RadiusMM, points)
	return out, nil
}

// CircleFitKasaCalculation is the catalogue entry of CircleFitKasa.
func CircleFitKasaCalculation() worked.Calculation {
	const kasa, definition = "I. Kasa, 1976", "definition"
	return worked.Define("circle_fit_kasa", CircleFitKasa, worked.Page[PointsInputs, KasaOutputs]{
		Title:    "Circle through points, quick algebraic fit (Kasa)",
		Sources:  []string{"I. Kasa, IEEE Trans. Instrum. Meas. 25 (1976) 8 (from memory)", "checked on the SciPy Cookbook, Least Squares Circle (read)"},
		Validity: "points all round; on a short arc the radius comes out small by tens of percent",
		Formulas: []worked.Formula[PointsInputs, KasaOutputs]{
			{Symbol: "n", Is: "len(x)", Source: definition},
			{Symbol: "x_m", Is: "sum(x) / n", Source: definition},
			{Symbol: "y_m", Is: "sum(y) / n", Source: definition},
			{Symbol: "S_uu", Is: "sum(x, (# - x_m)^2)", Source: definition},
			{Symbol: "S_uv", Is: "sum(x, (# - x_m) * (y[#index] - y_m))", Source: definition},
			{Symbol: "S_vv", Is: "sum(y, (# - y_m)^2)", Source: definition},
			{Symbol: "S_uz", Is: "sum(x, (# - x_m) * ((# - x_m)^2 + (y[#index] - y_m)^2))", Source: definition},
			{Symbol: "S_vz", Is: "sum(y, (# - y_m) * ((x[#index] - x_m)^2 + (# - y_m)^2))", Source: definition},
			{Symbol: "u_c", Is: "(S_uz * S_vv - S_vz * S_uv) / (2 * (S_uu * S_vv - S_uv^2))", Source: kasa},
			{Symbol: "v_c", Is: "(S_vz * S_uu - S_uz * S_uv) / (2 * (S_uu * S_vv - S_uv^2))", Source: kasa},
			{Symbol: "x_0", Is: "x_m + u_c", Source: kasa},
			{Symbol: "y_0", Is: "y_m + v_c", Source: kasa},
			{Symbol: "R", Is: "sqrt(u_c^2 + v_c^2 + (S_uu + S_vv) / n)", Source: kasa},
			{Symbol: "r_m", Is: meanRadiusText, Source: definition},
			{Symbol: "S", Is: sumOfSquaresText, Source: definition},
		},
		Warnings: func(in PointsInputs, out KasaOutputs) []string {
			return arcWarning(point{out.CentreXMM, out.CentreYMM}, in, "This fit makes short arcs too small; take circle_fit_geometric.")
		},
		Example: map[string]string{"x": "9, 35, -13, 10, 23, 0 mm", "y": "34, 10, 6, -14, 27, -10 mm"},
	})
}
