package bolt

import "boremend/knowledge/worked"

// BoltGroupTensionInputs are rows of bolts that an overturning moment pulls.
type BoltGroupTensionInputs struct {
	Columns    float64 `name:"columns" symbol:"n_x" kind:"count" means:"bolts in each row, along the axis of tipping"`
	Rows       float64 `name:"rows" symbol:"n_y" kind:"count" means:"rows, one beyond the other"`
	RowPitchMM float64 `name:"row_pitch" symbol:"p_y" kind:"length" means:"from row to row"`
	EdgeMM     float64 `name:"compression_edge" symbol:"e" kind:"length" means:"from the nearest row to the edge on which the plate tips"`
	MomentNM   float64 `name:"moment" symbol:"M" kind:"torque" means:"overturning moment"`
	TensionN   float64 `name:"tension" symbol:"N" kind:"force" default:"0 N" means:"straight pull on the whole group besides"`
}

// BoltGroupTensionOutputs are the pulls on the worst bolt.
type BoltGroupTensionOutputs struct {
	FarMM     float64 `name:"far" symbol:"y_m" kind:"length" means:"from the middle of the group to the outer rows"`
	MiddleMM2 float64 `name:"sum_of_squares_middle" symbol:"I_m" kind:"area" means:"sum of the squares of the distances from the middle"`
	EdgeMM2   float64 `name:"sum_of_squares_edge" symbol:"I_e" kind:"area" means:"sum of the squares of the distances from the edge"`
	MostN     float64 `name:"max_bolt" symbol:"F_m" kind:"force" means:"pull on the worst bolt, tipping about the middle: use this"`
	EdgeN     float64 `name:"max_bolt_edge" symbol:"F_e" kind:"force" means:"pull on the worst bolt, tipping about the edge"`
}

// BoltGroupTension computes how hard an overturning moment pulls at the bolts of a
// bracket or a plate.
//
//	y_m = (n_y - 1) p_y/2
//	I_m = n_x n_y (n_y^2 - 1) p_y^2/12
//	I_e = n_x [n_y e^2 + e p_y n_y (n_y - 1) + p_y^2 (n_y - 1) n_y (2 n_y - 1)/6]
//	F_m = M y_m/I_m + N/(n_x n_y)
//	F_e = M (e + 2 y_m)/I_e + N/(n_x n_y)
//
// n_x bolts stand in each of n_y rows, p_y apart, e from the edge on which the plate
// tips [mm]; M is the moment [N*m], N a straight pull besides [N]. A stiff, tightly
// clamped plate tips about the middle of the group, a loose one about its edge.
// The middle gives more pull and is the safe figure.
//
// Validity: a stiff plate; at least two rows. A plate that bends pries besides: see
// Prying.
//
// Error: none as statics; the axis of tipping is the assumption.
//
// Source: statics of rigid plates (common to textbooks, from memory).
func BoltGroupTension(in BoltGroupTensionInputs) (BoltGroupTensionOutputs, error) {
	var c worked.Checks
	checkWhole(&c, "columns", in.Columns, 1, 50)
	checkWhole(&c, "rows", in.Rows, 2, 50)
	c.Positive("row_pitch", in.RowPitchMM)
	c.NotNegative("compression_edge", in.EdgeMM)
	c.Positive("moment", in.MomentNM)
	c.NotNegative("tension", in.TensionN)
	if err := c.Err(); err != nil {
		return BoltGroupTensionOutputs{}, err
	}
	p, n, e := in.RowPitchMM, in.Rows, in.EdgeMM
	out := BoltGroupTensionOutputs{FarMM: (n - 1) * p / 2, MiddleMM2: in.Columns * n * (n*n - 1) * p * p / 12}
	out.EdgeMM2 = in.Columns * (n*e*e + e*p*n*(n-1) + p*p*(n-1)*n*(2*n-1)/6)
	straight := in.TensionN / (in.Columns * n)
	out.MostN = 1000*in.MomentNM*out.FarMM/out.MiddleMM2 + straight
	out.EdgeN = 1000*in.MomentNM*(e+2*out.FarMM)/out.EdgeMM2 + straight
	return out, nil
}

// BoltGroupTensionCalculation is the catalogue entry of BoltGroupTension.
func BoltGroupTensionCalculation() worked.Calculation {
	const source = "statics of rigid plates, from memory"
	return worked.Define("bolt_group_tension", BoltGroupTension, worked.Page[BoltGroupTensionInputs, BoltGroupTensionOutputs]{
		Title:    "Bolts under an overturning moment",
		Sources:  []string{source},
		Validity: "stiff plate, at least two rows",
		Formulas: []worked.Formula[BoltGroupTensionInputs, BoltGroupTensionOutputs]{
			{Symbol: "y_m", Is: "(n_y - 1) * p_y / 2", Source: "plain geometry"},
			{Symbol: "I_m", Is: "n_x * n_y * (n_y^2 - 1) * p_y^2 / 12", Source: "sum over the rows"},
			{Symbol: "I_e", Is: "n_x * (n_y * e^2 + e * p_y * n_y * (n_y - 1) + p_y^2 * (n_y - 1) * n_y * (2 * n_y - 1) / 6)", Source: "sum over the rows"},
			{Symbol: "F_m", Is: "1000 * M * y_m / I_m + N / (n_x * n_y)", Source: source},
			{Symbol: "F_e", Is: "1000 * M * (e + 2 * y_m) / I_e + N / (n_x * n_y)", Source: source},
		},
		Warnings: func(BoltGroupTensionInputs, BoltGroupTensionOutputs) []string {
			return []string{"A plate that bends pries at the bolts besides.", notCovered}
		},
		Example: map[string]string{"columns": "2", "rows": "3", "row_pitch": "80 mm", "compression_edge": "40 mm", "moment": "6 kN*m"},
	})
}
