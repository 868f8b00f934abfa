package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// BoltGroupShearInputs are bolts in rows and columns and a load in their plane.
type BoltGroupShearInputs struct {
	Columns       float64 `name:"columns" symbol:"n_x" kind:"count" means:"bolts side by side, along x"`
	Rows          float64 `name:"rows" symbol:"n_y" kind:"count" means:"bolts one above the other, along y"`
	ColumnPitchMM float64 `name:"column_pitch" symbol:"p_x" kind:"length" means:"from bolt to bolt along x"`
	RowPitchMM    float64 `name:"row_pitch" symbol:"p_y" kind:"length" means:"from bolt to bolt along y"`
	ForceXN       float64 `name:"force_x" symbol:"F_x" kind:"force" means:"load along x"`
	ForceYN       float64 `name:"force_y" symbol:"F_y" kind:"force" means:"load along y"`
	LoadXMM       float64 `name:"load_x" symbol:"e_x" kind:"length" means:"from the middle of the group to the load, along x"`
	LoadYMM       float64 `name:"load_y" symbol:"e_y" kind:"length" means:"from the middle of the group to the load, along y"`
}

// BoltGroupShearOutputs are what the bolts carry.
type BoltGroupShearOutputs struct {
	Bolts    float64 `name:"bolts" symbol:"n" kind:"count" means:"bolts in the group"`
	FarXMM   float64 `name:"far_x" symbol:"x_m" kind:"length" means:"from the middle to the corner bolts, along x"`
	FarYMM   float64 `name:"far_y" symbol:"y_m" kind:"length" means:"from the middle to the corner bolts, along y"`
	PolarMM2 float64 `name:"sum_of_squares" symbol:"I" kind:"area" means:"sum of the squares of the distances from the middle"`
	MomentNM float64 `name:"moment" symbol:"M" kind:"torque" means:"moment about the middle, counter-clockwise positive"`
	MostXN   float64 `name:"max_bolt_x" symbol:"V_x" kind:"force" means:"its part along x on the worst bolt"`
	MostYN   float64 `name:"max_bolt_y" symbol:"V_y" kind:"force" means:"its part along y on the worst bolt"`
	MostN    float64 `name:"max_bolt" symbol:"V" kind:"force" means:"force across the worst bolt"`
	LeastN   float64 `name:"min_bolt" kind:"force" means:"force across the least loaded bolt"`
}

// BoltGroupShear spreads a load in the plane of a plate over bolts in rows and
// columns.
//
//	n   = n_x n_y
//	x_m = (n_x - 1) p_x/2,  y_m = (n_y - 1) p_y/2
//	I   = n [(n_x^2 - 1) p_x^2 + (n_y^2 - 1) p_y^2]/12
//	M   = F_y e_x - F_x e_y
//	V_x = |F_x|/n + |M| y_m/I,  V_y = |F_y|/n + |M| x_m/I
//	V   = sqrt(V_x^2 + V_y^2)
//
// n_x and n_y are the bolts along x and y, p_x and p_y their pitches, e_x and e_y
// the place of the load from the middle [mm]; F_x and F_y the load [N]; M in N*m.
// Every bolt takes its share of the force, and of the moment a share by its
// distance from the middle, at right angles to the line from it. At one of the
// corners both parts add.
//
// Validity: a stiff plate, bolts of one size, at least two. It is elastic: bolts in
// clearance holes bear one after the other, and a group that has slipped is not
// this one.
//
// Error: none as statics. The spread over the bolts is an assumption on the safe
// side of the ultimate strength.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., section 8-12 and
// example 8-7 p. 457 (read).
func BoltGroupShear(in BoltGroupShearInputs) (BoltGroupShearOutputs, error) {
	g := grid{in.Columns, in.Rows, in.ColumnPitchMM, in.RowPitchMM}
	var c worked.Checks
	g.check(&c)
	shearLoad{in.ForceXN, in.ForceYN, in.LoadXMM, in.LoadYMM}.check(&c)
	if err := c.Err(); err != nil {
		return BoltGroupShearOutputs{}, err
	}
	out := BoltGroupShearOutputs{Bolts: g.count(), FarXMM: g.farXMM(), FarYMM: g.farYMM(), PolarMM2: g.squaresX() + g.squaresY()}
	moment := in.ForceYN*in.LoadXMM - in.ForceXN*in.LoadYMM
	out.MomentNM = moment / 1000
	out.MostXN = math.Abs(in.ForceXN)/out.Bolts + math.Abs(moment)*out.FarYMM/out.PolarMM2
	out.MostYN = math.Abs(in.ForceYN)/out.Bolts + math.Abs(moment)*out.FarXMM/out.PolarMM2
	out.MostN = math.Hypot(out.MostXN, out.MostYN)
	out.LeastN = g.least(in.ForceXN/out.Bolts, in.ForceYN/out.Bolts, moment/out.PolarMM2)
	return out, nil
}

// least is the smallest force on a bolt of the grid; turn is the force of the
// moment for each millimetre from the middle.
func (g grid) least(shareX, shareY, turn float64) float64 {
	least := math.Inf(1)
	for i := 0.0; i < g.columns; i++ {
		for j := 0.0; j < g.rows; j++ {
			x, y := i*g.columnPitchMM-g.farXMM(), j*g.rowPitchMM-g.farYMM()
			least = min(least, math.Hypot(shareX-turn*y, shareY+turn*x))
		}
	}
	return least
}

const groupSource = "Shigley's Mechanical Engineering Design, 9th ed., section 8-12 (read)"

// BoltGroupShearCalculation is the catalogue entry of BoltGroupShear.
func BoltGroupShearCalculation() worked.Calculation {
	return worked.Define("bolt_group_shear", BoltGroupShear, worked.Page[BoltGroupShearInputs, BoltGroupShearOutputs]{
		Title:    "Bolts in rows under a load in their plane",
		Sources:  []string{groupSource},
		Validity: "stiff plate, bolts of one size in rows and columns, elastic",
		Formulas: []worked.Formula[BoltGroupShearInputs, BoltGroupShearOutputs]{
			{Symbol: "n", Is: "n_x * n_y", Source: "count"},
			{Symbol: "x_m", Is: "(n_x - 1) * p_x / 2", Source: "plain geometry"},
			{Symbol: "y_m", Is: "(n_y - 1) * p_y / 2", Source: "plain geometry"},
			{Symbol: "I", Is: "n * ((n_x^2 - 1) * p_x^2 + (n_y^2 - 1) * p_y^2) / 12", Source: "sum over a grid"},
			{Symbol: "M", Is: "(F_y * e_x - F_x * e_y) / 1000", Source: "statics"},
			{Symbol: "V_x", Is: "abs(F_x) / n + 1000 * abs(M) * y_m / I", Source: groupSource},
			{Symbol: "V_y", Is: "abs(F_y) / n + 1000 * abs(M) * x_m / I", Source: groupSource},
			{Symbol: "V", Is: "sqrt(V_x^2 + V_y^2)", Source: "the parts add as vectors"},
		},
		Warnings: func(BoltGroupShearInputs, BoltGroupShearOutputs) []string {
			return []string{clearanceHoles, notCovered}
		},
		Example: map[string]string{
			"columns": "2", "rows": "2", "column_pitch": "150 mm", "row_pitch": "120 mm", "force_x": "0 N", "force_y": "-16 kN", "load_x": "425 mm", "load_y": "0 mm",
		},
	})
}
