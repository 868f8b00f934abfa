package wear

import "boremend/knowledge/worked"

// CircleFitPratt fits a circle by the algebraic way of Pratt.
//
//	A_0 = M_xz (M_xz M_yy - M_yz M_xy) + M_yz (M_yz M_xx - M_xz M_xy) - (M_zz - 1) C
//	A_1 = M_zz - 1 + 4 C - M_xz^2 - M_yz^2
//	A_2 = 4 C - 3 - M_zz, A_3 = 0, A_4 = 4
//	eta: the root of the polynomial next to 0
//	x_0 = x_m + s (M_xz (M_yy - eta) - M_yz M_xy) / (2 (eta^2 - eta + C)), y_0 likewise
//	R   = sqrt((x_0 - x_m)^2 + (y_0 - y_m)^2 + s^2 (1 + 2 eta))
//
// x and y are the places of the points [mm], s their spread, M_xz the mean of
// u z and so on with u, v moved to the middle and divided by s, z = u^2 + v^2,
// C = M_xx M_yy - M_xy^2.
//
// For nearly the same centre its radius is larger than that of CircleFitTaubin,
// by the term with eta.
//
// Validity: three points or more that do not lie on a line.
//
// Error: small on any arc, a little more than that of CircleFitTaubin.
//
// Source: N. Chernov, Circular and Linear Regression (2010), Newton form (from
// memory); V. Pratt, Computer Graphics 21 (1987) 145.
func CircleFitPratt(in PointsInputs) (AlgebraicFitOutputs, error) {
	points, err := in.points(3)
	if err != nil {
		return AlgebraicFitOutputs{}, err
	}
	var out AlgebraicFitOutputs
	if err := out.moments(points); err != nil {
		return AlgebraicFitOutputs{}, err
	}
	out.A2, out.A4 = 4*out.Area-3-out.MomentZZ, 4
	out.root()
	out.circle(points, 2*out.Eta)
	return out, nil
}

// CircleFitPrattCalculation is the catalogue entry of CircleFitPratt.
func CircleFitPrattCalculation() worked.Calculation {
	return worked.Define("circle_fit_pratt", CircleFitPratt, worked.Page[PointsInputs, AlgebraicFitOutputs]{
		Title:    "Circle through points, algebraic fit of Pratt",
		Sources:  []string{"N. Chernov, Circular and Linear Regression (2010), Newton form (from memory)", "V. Pratt, Computer Graphics 21 (1987) 145 (from memory)"},
		Validity: "three points or more that do not lie on a line",
		Formulas: algebraicFormulas("4 * C - 3 - M_zz", "0", "4", "sqrt((x_0 - x_m)^2 + (y_0 - y_m)^2 + s^2 * (1 + 2 * eta))", "Chernov 2010, Pratt"),
		Warnings: func(in PointsInputs, out AlgebraicFitOutputs) []string {
			return arcWarning(point{out.CentreXMM, out.CentreYMM}, in, "A small error of a reading moves the centre far.")
		},
		Example: map[string]string{"x": "9, 35, -13, 10, 23, 0 mm", "y": "34, 10, 6, -14, 27, -10 mm"},
	})
}
