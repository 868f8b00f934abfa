package wear

import (
	"fmt"
	"math"

	"boremend/knowledge/worked"
)

// BoreFromDiametersInputs are the readings of a two-point gauge.
type BoreFromDiametersInputs struct {
	OriginalMM worked.Optional `name:"original_diameter" symbol:"D_0" kind:"length" means:"bore as it was new, where it is trusted"`
	DepthMM    worked.List     `name:"depth" symbol:"z" kind:"length" means:"depths from the datum face at which was measured"`
	ClockDeg   worked.List     `name:"clock" symbol:"phi" kind:"angle" means:"clock angles at each depth, clockwise from 12; 0 is 12 to 6"`
	DiameterMM worked.List     `name:"diameter" symbol:"D" kind:"length" means:"diameters: all clock angles at the first depth, then all at the next"`
}

// BoreFromDiametersOutputs are what diameters can tell.
type BoreFromDiametersOutputs struct {
	MaxMM      float64         `name:"max_diameter" symbol:"D_max" kind:"length" means:"largest diameter"`
	MaxClock   float64         `name:"max_at_clock" kind:"angle" means:"clock angle of the largest diameter, at one end or the other"`
	MaxDepthMM float64         `name:"max_at_depth" kind:"length" means:"depth of the largest diameter"`
	MinMM      float64         `name:"min_diameter" symbol:"D_min" kind:"length" means:"smallest diameter"`
	OutOfRound float64         `name:"out_of_round" symbol:"o" kind:"length" means:"largest difference of diameters at one depth"`
	TaperMM    float64         `name:"taper" symbol:"c" kind:"length" means:"largest difference of diameters along one clock angle"`
	BellMM     worked.Optional `name:"bell_mouth" symbol:"b" kind:"length" means:"mean of the larger end less mean between the ends; negative is barrel-shaped"`
	OvalityMM  worked.Optional `name:"fitted_ovality" symbol:"v" kind:"length" means:"long less short axis of the oval through the diameters at the depth of the largest"`
	AxisClock  worked.Optional `name:"wear_axis_clock" symbol:"w" kind:"angle" means:"clock angle of its long axis; the wear lies there or opposite"`
	LowMM      float64         `name:"cleanup_original_axis_low" symbol:"D_low" kind:"length" means:"bore on the first axis that takes in the wear, if both ends wore alike; no cut beyond it"`
	HighMM     worked.Optional `name:"cleanup_original_axis_high" symbol:"D_high" kind:"length" means:"the same if one end wore alone"`
	FreeMM     float64         `name:"cleanup_free_axis_high" symbol:"D_f" kind:"length" means:"the most that a bore on an axis free to move can need; the least is the largest diameter"`
}

// BoreFromDiameters works out what the readings of a two-point gauge say of a
// worn bore, and leaves open what they cannot say.
//
//	o = max over depths of (max D - min D over the clock)
//	c = max over the clock of (max D - min D along the depths)
//	b = larger mean D of the two ends - mean D between them
//	D = m + (v/2) cos(2 (phi - w)), fitted at the depth of the largest diameter
//	D_low = D_max, D_high = 2 D_max - D_0, D_f = 2/sqrt(3) D_max
//
// D are the diameters [mm] at the depths z [mm] and clock angles phi [deg], D_0
// the bore as new [mm], v the ovality and w the clock of its long axis. For the
// clock angles 0, 45, 90, 135 the fit comes to sqrt(p^2 + q^2), where p is the
// difference of the diameters at 0 and 90 and q of those at 45 and 135.
//
// What diameters never show: where the centre went, which end wore, and any shape
// of three lobes, which reads one diameter all round. On two clock angles an oval
// that lies between them does not show either. So the bore that comes clean on
// the first axis is a bracket; a radius from the true axis settles it.
//
// Validity: at least two clock angles at each depth. The bracket holds where D_0
// is trusted, the largest diameter was found and no reading is below D_0.
//
// Error: that of the gauge; D_high carries twice that of D_max.
//
// Source: definitions as printed in a small-diesel service manual, cylinder bore
// page (read); bell-mouth, bracket and oval recomputed; 2/sqrt(3) is Jung's
// theorem (from memory).
func BoreFromDiameters(in BoreFromDiametersInputs) (BoreFromDiametersOutputs, error) {
	if err := in.check(); err != nil {
		return BoreFromDiametersOutputs{}, err
	}
	out := BoreFromDiametersOutputs{MinMM: math.Inf(1)}
	worst := 0
	for i, d := range in.DiameterMM {
		out.MinMM = min(out.MinMM, d)
		if d > out.MaxMM {
			worst = i / len(in.ClockDeg)
			out.MaxMM, out.MaxDepthMM, out.MaxClock = d, in.DepthMM[worst], in.ClockDeg[i%len(in.ClockDeg)]
		}
	}
	out.OutOfRound, out.TaperMM, out.BellMM = in.outOfRound(), in.taper(), in.bellMouth()
	out.OvalityMM, out.AxisClock = oval(in.ClockDeg, in.row(worst))
	out.LowMM = out.MaxMM
	out.FreeMM = 2 / math.Sqrt(3) * out.MaxMM
	if in.OriginalMM.Known {
		out.HighMM = worked.Some(2*out.MaxMM - in.OriginalMM.Value)
	}
	return out, nil
}

func (in BoreFromDiametersInputs) check() error {
	var c worked.Checks
	if in.OriginalMM.Known {
		c.Between("original_diameter", in.OriginalMM.Value, 1e-3, 1e5)
	}
	checkList(&c, "depth", in.DepthMM, 0, 1e5)
	checkList(&c, "clock", in.ClockDeg, 0, fullTurnDeg)
	checkList(&c, "diameter", in.DiameterMM, 1e-3, 1e5)
	if len(in.ClockDeg) < 2 {
		c.Refuse("clock", "holds %d angles, must hold 2 or more (better 0, 45, 90 and 135)", len(in.ClockDeg))
	}
	if want := len(in.DepthMM) * len(in.ClockDeg); len(in.DiameterMM) != want {
		c.Refuse("diameter", "holds %d numbers, must hold %d: one for each of %d clock angles at each of %d depths", len(in.DiameterMM), want, len(in.ClockDeg), len(in.DepthMM))
	}
	for i := 1; i < len(in.DepthMM); i++ {
		if !(in.DepthMM[i] > in.DepthMM[i-1]) {
			c.Refuse("depth", "must rise from one number to the next")
			break
		}
	}
	if err := c.Err(); err != nil || !in.OriginalMM.Known {
		return err
	}
	if _, most := bounds(in.DiameterMM); most < in.OriginalMM.Value {
		c.Refuse("original_diameter", "is %g mm, more than the largest diameter, which is %g mm: a worn bore is not smaller than new", in.OriginalMM.Value, most)
	}
	return c.Err()
}

// row returns the diameters at one depth.
func (in BoreFromDiametersInputs) row(depth int) []float64 {
	n := len(in.ClockDeg)
	return in.DiameterMM[depth*n : (depth+1)*n]
}

func (in BoreFromDiametersInputs) outOfRound() (largest float64) {
	for depth := range in.DepthMM {
		least, most := bounds(in.row(depth))
		largest = max(largest, most-least)
	}
	return largest
}

func (in BoreFromDiametersInputs) taper() (largest float64) {
	for clock := range in.ClockDeg {
		least, most := math.Inf(1), math.Inf(-1)
		for depth := range in.DepthMM {
			d := in.row(depth)[clock]
			least, most = min(least, d), max(most, d)
		}
		largest = max(largest, most-least)
	}
	return largest
}

// bellMouth needs a depth between the ends.
func (in BoreFromDiametersInputs) bellMouth() worked.Optional {
	last := len(in.DepthMM) - 1
	if last < 2 {
		return worked.Optional{}
	}
	between := average(in.DiameterMM[len(in.ClockDeg) : last*len(in.ClockDeg)])
	return worked.Some(max(average(in.row(0)), average(in.row(last))) - between)
}

func bounds(list []float64) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for _, v := range list {
		least, most = min(least, v), max(most, v)
	}
	return least, most
}

func average(list []float64) float64 {
	sum := 0.0
	for _, v := range list {
		sum += v
	}
	return sum / float64(len(list))
}

// oval fits m + p cos 2 phi + q sin 2 phi to diameters by least squares. It needs
// three clock angles that stand for three different diameters.
func oval(clocks, diameters []float64) (ovality, axis worked.Optional) {
	var a [3][3]float64
	var b [3]float64
	middle := average(diameters)
	for i, clock := range clocks {
		sin, cos := math.Sincos(2 * clock * math.Pi / halfTurnDeg)
		row := [3]float64{1, cos, sin}
		for j := range row {
			for k := range row {
				a[j][k] += row[j] * row[k]
			}
			b[j] += row[j] * (diameters[i] - middle)
		}
	}
	if !(determinant(a) > 1e-6) {
		return worked.Optional{}, worked.Optional{}
	}
	fit := solve3(a, b)
	at := math.Atan2(fit[2], fit[1]) / 2 * halfTurnDeg / math.Pi
	if at < 0 {
		at += halfTurnDeg
	}
	return worked.Some(2 * math.Hypot(fit[1], fit[2])), worked.Some(at)
}

func determinant(a [3][3]float64) float64 {
	return a[0][0]*(a[1][1]*a[2][2]-a[1][2]*a[2][1]) - a[0][1]*(a[1][0]*a[2][2]-a[1][2]*a[2][0]) + a[0][2]*(a[1][0]*a[2][1]-a[1][1]*a[2][0])
}

// BoreFromDiametersCalculation is the catalogue entry of BoreFromDiameters.
func BoreFromDiametersCalculation() worked.Calculation {
	const workshop, geometry = "service manual, cylinder bore page", "plain geometry"
	known := func(o worked.Optional) bool { return o.Known }
	return worked.Define("bore_from_diameters", BoreFromDiameters, worked.Page[BoreFromDiametersInputs, BoreFromDiametersOutputs]{
		Title:    "What diameters say of a worn bore",
		Sources:  []string{"small-diesel service manual, cylinder bore measurement page (read)", "bell-mouth, oval and bracket recomputed; Jung's theorem (from memory)"},
		Validity: "two clock angles or more at each depth; the bracket needs a trusted original bore, the largest diameter found and nowhere tighter than new",
		Formulas: []worked.Formula[BoreFromDiametersInputs, BoreFromDiametersOutputs]{
			{Symbol: "D_max", Is: "max(D)", Source: workshop},
			{Symbol: "D_min", Is: "min(D)", Source: workshop},
			{Symbol: "o", Table: "largest less smallest D at each depth, the largest of these", Source: workshop},
			{Symbol: "c", Table: "largest less smallest D along each clock angle, the largest of these", Source: workshop},
			{Symbol: "b", Table: "larger mean of the two ends less the mean of all depths between them", Source: geometry, When: func(_ BoreFromDiametersInputs, out BoreFromDiametersOutputs) bool { return known(out.BellMM) }},
			{Symbol: "v", Table: "least squares of m + (v/2) cos(2 (phi - w)) at the depth of D_max", Source: geometry, When: func(_ BoreFromDiametersInputs, out BoreFromDiametersOutputs) bool { return known(out.OvalityMM) }},
			{Symbol: "w", Table: "the same", Source: geometry, When: func(_ BoreFromDiametersInputs, out BoreFromDiametersOutputs) bool { return known(out.AxisClock) }},
			{Symbol: "D_low", Is: "D_max", Source: geometry},
			{Symbol: "D_high", Is: "2 * D_max - D_0", Source: geometry, When: func(in BoreFromDiametersInputs, _ BoreFromDiametersOutputs) bool { return known(in.OriginalMM) }},
			{Symbol: "D_f", Is: "2 / sqrt(3) * D_max", Source: "Jung's theorem"},
		},
		Warnings: boreFromDiametersWarnings,
		Example: map[string]string{
			"original_diameter": "80 mm", "depth": "10, 45, 80 mm", "clock": "0, 45, 90, 135 deg",
			"diameter": "81.42, 81.05, 80.12, 80.38, 80.6, 80.44, 80.08, 80.15, 80.95, 80.7, 80.06, 80.3 mm",
		},
	})
}

func boreFromDiametersWarnings(in BoreFromDiametersInputs, out BoreFromDiametersOutputs) []string {
	says := []string{
		"Diameters cannot say which of their ends wore, nor where the centre went, and a three-lobed bore reads one diameter all round. Take a radius from the true axis before a sleeve is made.",
		"The clean-up bores hold no cut beyond the wear: add twice that.",
	}
	if !out.OvalityMM.Known {
		says = append(says, "With these clock angles an oval that lies between them does not show at all: measure at 0, 45, 90 and 135 degrees.")
	}
	if len(in.DepthMM) < 3 {
		says = append(says, fmt.Sprintf("Measured at %d of the three depths that show taper and bell-mouth: near each end and in the middle.", len(in.DepthMM)))
	}
	if in.OriginalMM.Known && out.MinMM < in.OriginalMM.Value {
		says = append(says, "A reading is tighter than new: the ear has closed in or was bored before on another axis, and the bracket does not hold.")
	}
	return says
}
