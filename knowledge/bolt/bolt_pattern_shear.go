package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// BoltPatternShearInputs are bolts in any pattern and a load in their plane.
type BoltPatternShearInputs struct {
	XMM     worked.List `name:"bolt_x" symbol:"x" kind:"length" means:"places of the bolts along x, one after the other"`
	YMM     worked.List `name:"bolt_y" symbol:"y" kind:"length" means:"places of the bolts along y, in the same order"`
	ForceXN float64     `name:"force_x" symbol:"F_x" kind:"force" means:"load along x"`
	ForceYN float64     `name:"force_y" symbol:"F_y" kind:"force" means:"load along y"`
	LoadXMM float64     `name:"load_x" symbol:"e_x" kind:"length" means:"place of the load along x, from the same zero as the bolts"`
	LoadYMM float64     `name:"load_y" symbol:"e_y" kind:"length" means:"place of the load along y, from the same zero as the bolts"`
}

// BoltPatternShearOutputs are what the bolts carry.
type BoltPatternShearOutputs struct {
	Bolts     float64 `name:"bolts" symbol:"n" kind:"count" means:"bolts in the group"`
	MiddleXMM float64 `name:"middle_x" symbol:"x_c" kind:"length" means:"middle of the group along x"`
	MiddleYMM float64 `name:"middle_y" symbol:"y_c" kind:"length" means:"middle of the group along y"`
	PolarMM2  float64 `name:"sum_of_squares" symbol:"I" kind:"area" means:"sum of the squares of the distances from the middle"`
	MomentNM  float64 `name:"moment" symbol:"M" kind:"torque" means:"moment about the middle, counter-clockwise positive"`
	TurningN  float64 `name:"turning" symbol:"q" kind:"force" means:"force of the moment on a bolt for each millimetre from the middle"`
	MostN     float64 `name:"max_bolt" symbol:"V" kind:"force" means:"force across the worst bolt"`
	Worst     float64 `name:"worst_bolt" kind:"count" means:"which bolt that is, in the order of the list"`
	LeastN    float64 `name:"min_bolt" symbol:"V_l" kind:"force" means:"force across the least loaded bolt"`
}

// BoltPatternShear spreads a load in the plane of a plate over bolts that stand in
// any pattern.
//
//	x_c = (sum of x)/n,  y_c = (sum of y)/n
//	I   = sum of (x - x_c)^2 + sum of (y - y_c)^2
//	M   = F_y (e_x - x_c) - F_x (e_y - y_c),  q = M/I
//	V   = the largest of sqrt([F_x/n - q (y - y_c)]^2 + [F_y/n + q (x - x_c)]^2), V_l the smallest
//
// x and y are the places of the bolts, e_x and e_y that of the load, all from one
// zero [mm]; F_x and F_y the load [N]; M in N*m. Every bolt takes its share of the
// force, and of the moment a share by its distance from the middle, at right angles
// to the line from it; the two add as vectors.
//
// Validity: a stiff plate, two bolts or more of one size, not all in one place. It
// is elastic: bolts in clearance holes bear one after the other.
//
// Error: none as statics. The spread over the bolts is an assumption on the safe
// side of the ultimate strength.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., section 8-12 and
// example 8-7 p. 457 (read).
func BoltPatternShear(in BoltPatternShearInputs) (BoltPatternShearOutputs, error) {
	var c worked.Checks
	in.check(&c)
	if err := c.Err(); err != nil {
		return BoltPatternShearOutputs{}, err
	}
	out := BoltPatternShearOutputs{Bolts: float64(len(in.XMM)), LeastN: math.Inf(1)}
	out.MiddleXMM, out.MiddleYMM = mean(in.XMM), mean(in.YMM)
	for i := range in.XMM {
		x, y := in.XMM[i]-out.MiddleXMM, in.YMM[i]-out.MiddleYMM
		out.PolarMM2 += x*x + y*y
	}
	if !(out.PolarMM2 > 1e-6) {
		c.Refuse("bolt_x", "and bolt_y put all bolts in one place, which holds no moment")
		return BoltPatternShearOutputs{}, c.Err()
	}
	moment := in.ForceYN*(in.LoadXMM-out.MiddleXMM) - in.ForceXN*(in.LoadYMM-out.MiddleYMM)
	out.MomentNM, out.TurningN = moment/1000, moment/out.PolarMM2
	out.extremes(in)
	return out, nil
}

// extremes finds the most and the least loaded bolt.
func (out *BoltPatternShearOutputs) extremes(in BoltPatternShearInputs) {
	shareX, shareY := in.ForceXN/out.Bolts, in.ForceYN/out.Bolts
	for i := range in.XMM {
		force := math.Hypot(shareX-out.TurningN*(in.YMM[i]-out.MiddleYMM), shareY+out.TurningN*(in.XMM[i]-out.MiddleXMM))
		// Of bolts that rounding alone tells apart, the first is the worst.
		if force > out.MostN*(1+stepSlack) {
			out.Worst = float64(i + 1)
		}
		out.MostN, out.LeastN = max(out.MostN, force), min(out.LeastN, force)
	}
}

func (in BoltPatternShearInputs) check(c *worked.Checks) {
	if len(in.XMM) < 2 {
		c.Refuse("bolt_x", "holds %d numbers, must hold 2 or more: one bolt is no group", len(in.XMM))
	}
	if len(in.YMM) != len(in.XMM) {
		c.Refuse("bolt_y", "holds %d numbers, must hold as many as bolt_x, which holds %d", len(in.YMM), len(in.XMM))
	}
	for _, x := range in.XMM {
		checkPlace(c, "bolt_x", x)
	}
	for _, y := range in.YMM {
		checkPlace(c, "bolt_y", y)
	}
	shearLoad{in.ForceXN, in.ForceYN, in.LoadXMM, in.LoadYMM}.check(c)
}

func mean(list worked.List) float64 {
	sum := 0.0
	for _, v := range list {
		sum += v
	}
	return sum / float64(len(list))
}

// BoltPatternShearCalculation is the catalogue entry of BoltPatternShear.
func BoltPatternShearCalculation() worked.Calculation {
	return worked.Define("bolt_pattern_shear", BoltPatternShear, worked.Page[BoltPatternShearInputs, BoltPatternShearOutputs]{
		Title:    "Bolts in any pattern under a load in their plane",
		Sources:  []string{groupSource},
		Validity: "stiff plate, two bolts or more of one size, not all in one place, elastic",
		Formulas: []worked.Formula[BoltPatternShearInputs, BoltPatternShearOutputs]{
			{Symbol: "n", Is: "len(x)", Source: "count"},
			{Symbol: "x_c", Is: "sum(x) / n", Source: "middle of the places"},
			{Symbol: "y_c", Is: "sum(y) / n", Source: "middle of the places"},
			{Symbol: "I", Is: "sum(x, (# - x_c)^2) + sum(y, (# - y_c)^2)", Source: groupSource},
			{Symbol: "M", Is: "(F_y * (e_x - x_c) - F_x * (e_y - y_c)) / 1000", Source: "statics"},
			{Symbol: "q", Is: "1000 * M / I", Source: groupSource},
			{Symbol: "V", Is: "max(map(x, sqrt((F_x / n - q * (y[#index] - y_c))^2 + (F_y / n + q * (# - x_c))^2)))", Source: groupSource + ", the largest of all bolts"},
			{Symbol: "V_l", Is: "min(map(x, sqrt((F_x / n - q * (y[#index] - y_c))^2 + (F_y / n + q * (# - x_c))^2)))", Source: groupSource + ", the smallest of all bolts"},
		},
		Warnings: func(BoltPatternShearInputs, BoltPatternShearOutputs) []string {
			return []string{clearanceHoles, notCovered}
		},
		Example: map[string]string{
			"bolt_x": "0, 60, 30 mm", "bolt_y": "0, 0, 50 mm", "force_x": "0 N", "force_y": "-9 kN", "load_x": "130 mm", "load_y": "0 mm",
		},
	})
}

// clearanceHoles stands on the sheets of groups in shear.
const clearanceHoles = "In clearance holes the bolts bear one after the other: count on this spread only with fitted bolts, or while the joint does not slip."
