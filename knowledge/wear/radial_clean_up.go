package wear

import (
	"fmt"
	"math"

	"boremend/knowledge/worked"
)

// RadialCleanUpInputs are radii from the true axis, as an indicator on the bar
// shows them.
type RadialCleanUpInputs struct {
	OriginalMM float64     `name:"original_diameter" symbol:"D_0" kind:"length" means:"bore as it was new"`
	ClockDeg   worked.List `name:"clock" symbol:"phi" kind:"angle" means:"clock angles at each depth, clockwise from 12 seen from the datum face"`
	RadiusMM   worked.List `name:"radius" symbol:"r" kind:"length" means:"radii from the true axis: all clock angles at the first depth, then all at the next"`
	StockMM    float64     `name:"stock_per_side" symbol:"s" kind:"length" default:"0.5 mm" means:"cut beyond the deepest wear, a side"`
}

// RadialCleanUpOutputs are the bores that come clean and what leads to them.
type RadialCleanUpOutputs struct {
	Sections      float64         `name:"sections" symbol:"m" kind:"count" means:"depths at which was measured"`
	MaxRadiusMM   float64         `name:"max_radius" symbol:"r_x" kind:"length" means:"largest radius: the worn reach"`
	MinRadiusMM   float64         `name:"min_radius" symbol:"r_n" kind:"length" means:"smallest radius"`
	DeepestClock  float64         `name:"deepest_wear_clock" kind:"angle" means:"clock angle of the deepest wear"`
	DeepestDepth  float64         `name:"deepest_wear_section" kind:"count" means:"at which of the depths, counted from the first"`
	MaxWearMM     float64         `name:"max_radial_wear" symbol:"w" kind:"length" means:"deepest wear, a side"`
	OriginalAxis  float64         `name:"cleanup_original_axis_diameter" symbol:"D_c" kind:"length" means:"smallest bore on the true axis that comes clean all round"`
	EnclosingMM   float64         `name:"enclosing_radius" symbol:"R_c" kind:"length" means:"smallest circle round all points, its centre free to move"`
	FreeAxis      float64         `name:"cleanup_free_axis_diameter" symbol:"D_f" kind:"length" means:"smallest bore that comes clean if the axis may move"`
	ShiftXMM      float64         `name:"free_axis_shift_x" symbol:"e_x" kind:"length" means:"that move toward 3 o'clock"`
	ShiftYMM      float64         `name:"free_axis_shift_y" symbol:"e_y" kind:"length" means:"that move toward 12 o'clock"`
	ShiftMM       float64         `name:"free_axis_shift" symbol:"e" kind:"length" means:"how far the axis would move"`
	ShiftClock    float64         `name:"free_axis_shift_clock" kind:"angle" means:"and toward which clock angle"`
	LargestCutMM  float64         `name:"largest_cut" symbol:"a_x" kind:"length" means:"deepest cut round the bore on the true axis"`
	MaxDiameterMM worked.Optional `name:"max_diameter_through_original_centre" kind:"length" means:"what a two-point gauge would have shown; where readings face each other"`
	MeanRadiusMM  float64         `name:"ls_radius" symbol:"R_l" kind:"length" means:"radius of the worn hole, fitted"`
	CentreXMM     float64         `name:"ls_centre_x" symbol:"x_l" kind:"length" means:"centre of the worn hole toward 3 o'clock, fitted"`
	CentreYMM     float64         `name:"ls_centre_y" symbol:"y_l" kind:"length" means:"centre of the worn hole toward 12 o'clock, fitted"`
	StepDeg       float64         `name:"largest_step" symbol:"h" kind:"angle" means:"largest step between neighbouring readings"`
	MissedMM      float64         `name:"peak_missed" symbol:"w_m" kind:"length" means:"what may have been missed of the deepest wear between two readings"`
}

// RadialCleanUp computes the bore that comes clean from radii about the true
// axis: on that axis, and on one that is free to move.
//
//	D_c = 2 (r_x + s)            on the true axis, r_x the largest radius
//	D_f = 2 (R_c + s)            on the centre of the smallest circle round all points
//	w   = r_x - D_0 / 2
//	a_x = s + r_x - r_n          the cut is uneven: from s to this
//	r   = R_l + x_l sin phi + y_l cos phi, fitted
//	w_m = w (1 - cos(h / 2))     what a step h between readings can miss
//
// D_0 is the bore as new, r the radii [mm] at the clock angles phi [deg], s the
// cut beyond the wear on each side [mm]; x points to 3 o'clock, y to 12.
//
// Wear of w on one side needs D_0 + 2 w on the true axis and about D_0 + w on an
// axis that moves w/2 toward the wear. Moving it changes the geometry of the
// linkage, and both ears of a joint must share one axis.
//
// Validity: the axis is the true one (from an unworn land, a counterbore, the
// opposite ear), readings go round the bore in steps below 180 degrees. All depths
// are pooled: the axis may move but not tilt. A tilted one may need less.
//
// Error: D_c twice that of r, and w_m on top. R_l and x_l are of second order in
// the shift over the radius.
//
// Source: plain geometry, recomputed; the smallest circle as in EnclosingCircle;
// the fit is the small-eccentricity form of ISO 4291 (from memory).
func RadialCleanUp(in RadialCleanUpInputs) (RadialCleanUpOutputs, error) {
	if err := in.check(); err != nil {
		return RadialCleanUpOutputs{}, err
	}
	n := len(in.ClockDeg)
	out := RadialCleanUpOutputs{Sections: float64(len(in.RadiusMM) / n), StepDeg: widestStep(in.ClockDeg)}
	points := make([]point, len(in.RadiusMM))
	for i, r := range in.RadiusMM {
		points[i] = at(in.ClockDeg[i%n], r)
		if r > out.MaxRadiusMM {
			out.MaxRadiusMM, out.DeepestClock, out.DeepestDepth = r, in.ClockDeg[i%n], float64(i/n+1)
		}
	}
	out.MinRadiusMM, _ = bounds(in.RadiusMM)
	out.MaxWearMM = out.MaxRadiusMM - in.OriginalMM/2
	out.OriginalAxis = 2 * (out.MaxRadiusMM + in.StockMM)
	out.LargestCutMM = in.StockMM + out.MaxRadiusMM - out.MinRadiusMM
	out.MissedMM = out.MaxWearMM * (1 - math.Cos(out.StepDeg/2*math.Pi/halfTurnDeg))
	c := enclosing(points)
	out.EnclosingMM, _, _, _ = roundFrom(c.centre, points)
	out.FreeAxis = 2 * (out.EnclosingMM + in.StockMM)
	out.ShiftXMM, out.ShiftYMM, out.ShiftMM = c.centre.x, c.centre.y, c.centre.to(point{})
	out.ShiftClock = clockOf(c.centre.x, c.centre.y)
	out.MaxDiameterMM = in.facingDiameter()
	return out, out.fit(in)
}

func (in RadialCleanUpInputs) check() error {
	var c worked.Checks
	c.Between("original_diameter", in.OriginalMM, 1e-3, 1e5)
	c.NotNegative("stock_per_side", in.StockMM)
	checkList(&c, "clock", in.ClockDeg, 0, fullTurnDeg)
	checkList(&c, "radius", in.RadiusMM, 1e-3, 1e5)
	n := len(in.ClockDeg)
	switch {
	case n < 3 || n > mostPoints:
		c.Refuse("clock", "holds %d angles, must hold 3 to %d", n, mostPoints)
	case len(in.RadiusMM) == 0 || len(in.RadiusMM)%n != 0 || len(in.RadiusMM) > mostPoints:
		c.Refuse("radius", "holds %d numbers, must hold %d for each depth and no more than %d", len(in.RadiusMM), n, mostPoints)
	}
	if err := c.Err(); err != nil {
		return err
	}
	if step := widestStep(in.ClockDeg); step >= halfTurnDeg {
		c.Refuse("clock", "leaves a step of %g degrees: radii must go round the bore", step)
	}
	if _, most := bounds(in.RadiusMM); most < in.OriginalMM/2 {
		c.Refuse("radius", "is at most %g mm, less than half of the original bore, which is %g mm: measure from the true axis", most, in.OriginalMM/2)
	}
	return c.Err()
}

// facingDiameter is the largest sum of two radii that face each other.
func (in RadialCleanUpInputs) facingDiameter() (largest worked.Optional) {
	const hairDeg = 1e-6
	n := len(in.ClockDeg)
	for i, clock := range in.ClockDeg {
		for j, other := range in.ClockDeg[:i] {
			if math.Abs(math.Abs(clock-other)-halfTurnDeg) > hairDeg {
				continue
			}
			for depth := 0; depth < len(in.RadiusMM); depth += n {
				d := in.RadiusMM[depth+i] + in.RadiusMM[depth+j]
				largest = worked.Some(max(d, largest.Value))
			}
		}
	}
	return largest
}

// fit fills in the centre of the worn hole by least squares of the radii.
func (out *RadialCleanUpOutputs) fit(in RadialCleanUpInputs) error {
	var a [3][3]float64
	var b [3]float64
	middle := average(in.RadiusMM)
	for i, r := range in.RadiusMM {
		p := at(in.ClockDeg[i%len(in.ClockDeg)], 1)
		row := [3]float64{1, p.x, p.y}
		for j := range row {
			for k := range row {
				a[j][k] += row[j] * row[k]
			}
			b[j] += row[j] * (r - middle)
		}
	}
	if !(determinant(a) > 1e-9) {
		var c worked.Checks
		c.Refuse("clock", "holds fewer than three different angles")
		return c.Err()
	}
	fitted := solve3(a, b)
	out.MeanRadiusMM, out.CentreXMM, out.CentreYMM = middle+fitted[0], fitted[1], fitted[2]
	return nil
}

// RadialCleanUpCalculation is the catalogue entry of RadialCleanUp.
func RadialCleanUpCalculation() worked.Calculation {
	const geometry, fitted = "plain geometry", "least squares of r = R_l + x_l sin(phi) + y_l cos(phi)"
	return worked.Define("radial_cleanup", RadialCleanUp, worked.Page[RadialCleanUpInputs, RadialCleanUpOutputs]{
		Title:    "Clean-up bore from radii about the true axis",
		Sources:  []string{"plain geometry, recomputed", "smallest circle: E. Welzl 1991 (from memory); fitted centre: ISO 4291, small-eccentricity form (from memory)"},
		Validity: "radii from the true axis, all round; one straight axis parallel to it through all depths",
		Formulas: []worked.Formula[RadialCleanUpInputs, RadialCleanUpOutputs]{
			{Symbol: "m", Is: "len(r) / len(phi)", Source: geometry},
			{Symbol: "r_x", Is: "max(r)", Source: geometry},
			{Symbol: "r_n", Is: "min(r)", Source: geometry},
			{Symbol: "w", Is: "r_x - D_0 / 2", Source: geometry},
			{Symbol: "D_c", Is: "2 * (r_x + s)", Source: geometry},
			{Symbol: "a_x", Is: "s + r_x - r_n", Source: geometry},
			{Symbol: "R_c", Table: "search for the smallest circle round all points", Source: "Welzl 1991"},
			{Symbol: "e_x", Table: "its centre toward 3 o'clock", Source: "Welzl 1991"},
			{Symbol: "e_y", Table: "its centre toward 12 o'clock", Source: "Welzl 1991"},
			{Symbol: "e", Is: "sqrt(e_x^2 + e_y^2)", Source: geometry},
			{Symbol: "D_f", Is: "2 * (R_c + s)", Source: geometry},
			{Symbol: "R_l", Table: fitted, Source: "ISO 4291"},
			{Symbol: "x_l", Table: fitted, Source: "ISO 4291"},
			{Symbol: "y_l", Table: fitted, Source: "ISO 4291"},
			{Symbol: "h", Table: "largest step between neighbouring clock angles", Source: geometry},
			{Symbol: "w_m", Is: "w * (1 - cos(h / 2 * pi / 180))", Source: geometry},
		},
		Warnings: radialCleanUpWarnings,
		Example: map[string]string{
			"original_diameter": "90 mm", "clock": "0, 30, 60, 90, 120, 150, 180, 210, 240, 270, 300, 330 deg",
			"radius": "45.02, 45, 45.02, 45.8, 46.41, 46.6, 46.41, 45.8, 45.02, 45, 45.02, 45 mm", "stock_per_side": "0.25 mm",
		},
	})
}

func radialCleanUpWarnings(in RadialCleanUpInputs, out RadialCleanUpOutputs) []string {
	says := []string{
		"Moving the axis changes the geometry of the linkage, and both ears of a joint must share one axis: bore on the true axis unless the maker or an engineer agrees.",
		fmt.Sprintf("Between readings %.0f degrees apart up to %.3g mm of wear a side may have been missed.", out.StepDeg, out.MissedMM),
	}
	if out.MinRadiusMM < in.OriginalMM/2-0.05 {
		says = append(says, "A radius is below half of the original bore: the axis is not the true one, or the ear has closed in.")
	}
	return says
}
