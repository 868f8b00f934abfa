package wear

import (
	"fmt"
	"math"

	"boremend/knowledge/worked"
)

// RoundnessInputs are points on the wall of a bore in one section, as places or
// as distances from a centre near the middle.
type RoundnessInputs struct {
	X        worked.List `name:"x" kind:"length" optional:"yes" means:"places of the points toward 3 o'clock"`
	Y        worked.List `name:"y" kind:"length" optional:"yes" means:"places of the points toward 12 o'clock"`
	ClockDeg worked.List `name:"clock" kind:"angle" optional:"yes" means:"in place of x and y: clock angles from 12, clockwise seen from the datum face"`
	RadiusMM worked.List `name:"radius" kind:"length" optional:"yes" means:"and the distances from the centre of the bar or the table at these angles"`
}

// RoundnessOutputs are the four circles and the roundness from each.
type RoundnessOutputs struct {
	LeastSquaresXMM float64         `name:"lsc_centre_x" kind:"length" means:"centre of the least-squares circle toward 3 o'clock"`
	LeastSquaresYMM float64         `name:"lsc_centre_y" kind:"length" means:"the same toward 12 o'clock"`
	LeastSquaresR   float64         `name:"lsc_radius" kind:"length" means:"radius of the least-squares circle"`
	LeastSquaresMM  float64         `name:"lsc_deviation" kind:"length" means:"roundness from its centre"`
	ZoneXMM         float64         `name:"mzc_centre_x" kind:"length" means:"centre of the minimum zone circles toward 3 o'clock"`
	ZoneYMM         float64         `name:"mzc_centre_y" kind:"length" means:"the same toward 12 o'clock"`
	ZoneOuterMM     float64         `name:"mzc_outer_radius" symbol:"R_o" kind:"length" means:"outer circle of the minimum zone"`
	ZoneInnerMM     float64         `name:"mzc_inner_radius" symbol:"R_i" kind:"length" means:"inner circle of the minimum zone"`
	ZoneMM          float64         `name:"mzc_deviation" symbol:"t" kind:"length" means:"roundness by the minimum zone: what a drawing's tolerance is held against"`
	EnclosingXMM    float64         `name:"mcc_centre_x" kind:"length" means:"centre of the smallest circle round all points toward 3 o'clock"`
	EnclosingYMM    float64         `name:"mcc_centre_y" kind:"length" means:"the same toward 12 o'clock"`
	EnclosingR      float64         `name:"mcc_radius" symbol:"R_c" kind:"length" means:"radius of the smallest circle round all points: what must be bored away"`
	EnclosingMM     float64         `name:"mcc_deviation" kind:"length" means:"roundness from its centre"`
	InscribedXMM    float64         `name:"mic_centre_x" kind:"length" means:"centre of the largest circle with no point inside toward 3 o'clock"`
	InscribedYMM    float64         `name:"mic_centre_y" kind:"length" means:"the same toward 12 o'clock"`
	InscribedR      float64         `name:"mic_radius" symbol:"R_p" kind:"length" means:"radius of the largest circle with no point inside: the largest pin that enters"`
	InscribedMM     float64         `name:"mic_deviation" kind:"length" means:"roundness from its centre"`
	PinMM           float64         `name:"largest_pin" symbol:"d_p" kind:"length" means:"diameter of the largest pin that enters"`
	BoreMM          float64         `name:"smallest_bore" symbol:"D_c" kind:"length" means:"smallest bore, on an axis free to move, that takes in all points"`
	DiameterRange   worked.Optional `name:"diameter_range" kind:"length" means:"largest less smallest diameter, the workshop's out-of-round; where readings face each other"`
}

// Roundness computes how far from round a section is, by the four circles that
// roundness measurement knows.
//
//	least squares (LSC): sum of (d - R)^2 least
//	minimum zone (MZC):  t = R_o - R_i least, all points between two circles of one centre
//	smallest round (MCC): R_c = max d least
//	largest inside (MIC): R_p = min d largest, the centre kept inside the points
//	d_p = 2 R_p, D_c = 2 R_c
//
// d is the distance of a point from the centre [mm]. Give the points by x and y,
// or by clock angle and radius.
//
// The trap of the factor 2: roundness is a difference of radii. The workshop's
// out-of-round is a difference of diameters. On a plain oval it is twice as much.
//
// Validity: four points or more that go round the bore, no step of 180 degrees or
// more between neighbours. Few points miss the worst place: see the sampling loss
// of RadialCleanUp.
//
// Error: that of the readings at the two to four points that decide.
//
// Source: the reference circles of ISO 12181-1 and ISO 4291 (names read,
// definitions from memory); checked on four points after Gass, Witzgall and
// Harary 1998 (points read) and, in a test, by trying all pairs and triples.
func Roundness(in RoundnessInputs) (RoundnessOutputs, error) {
	points, err := in.points()
	if err != nil {
		return RoundnessOutputs{}, err
	}
	fit, err := geometric(points)
	if err != nil {
		return RoundnessOutputs{}, err
	}
	middle := point{fit.CentreXMM, fit.CentreYMM}
	if gap := widestGap(middle, points); gap >= halfTurnDeg {
		return RoundnessOutputs{}, in.refuse("leave a gap of %.0f degrees: roundness needs points all round", gap)
	}
	out := RoundnessOutputs{LeastSquaresXMM: middle.x, LeastSquaresYMM: middle.y, LeastSquaresR: fit.RadiusMM, LeastSquaresMM: fit.DeviationMM}
	m := mean(points)
	moved := make([]point, len(points))
	for i, p := range points {
		moved[i] = point{p.x - m.x, p.y - m.y}
	}
	if !out.zones(moved, m) {
		return RoundnessOutputs{}, in.refuse("give no centre inside the points")
	}
	out.PinMM, out.BoreMM = 2*out.InscribedR, 2*out.EnclosingR
	out.DiameterRange = diameterRange(points, middle)
	return out, nil
}

// zones fills in the three circles that touch points; m is where the points were
// moved from.
func (out *RoundnessOutputs) zones(points []point, m point) bool {
	c := enclosing(points)
	far, near, _, _ := roundFrom(c.centre, points)
	out.EnclosingXMM, out.EnclosingYMM, out.EnclosingR, out.EnclosingMM = c.centre.x+m.x, c.centre.y+m.y, far, far-near
	centre, ok := newRoundSearch(points).leastZone()
	if !ok {
		return false
	}
	out.ZoneOuterMM, out.ZoneInnerMM, _, _ = roundFrom(centre, points)
	out.ZoneXMM, out.ZoneYMM, out.ZoneMM = centre.x+m.x, centre.y+m.y, out.ZoneOuterMM-out.ZoneInnerMM
	if centre, ok = newRoundSearch(points).largestInside(); !ok {
		return false
	}
	far, near, _, _ = roundFrom(centre, points)
	out.InscribedXMM, out.InscribedYMM, out.InscribedR, out.InscribedMM = centre.x+m.x, centre.y+m.y, near, far-near
	return true
}

// points reads whichever pair of lists was given.
func (in RoundnessInputs) points() ([]point, error) {
	const least = 4
	byPlace, byClock := in.X != nil || in.Y != nil, in.ClockDeg != nil || in.RadiusMM != nil
	var c worked.Checks
	switch {
	case byPlace && byClock:
		c.Refuse("x", "and y, or clock and radius: give one pair and not both")
		checkList(&c, "x", in.X, -farthestMM, farthestMM)
		checkList(&c, "y", in.Y, -farthestMM, farthestMM)
		checkClocks(&c, in.ClockDeg)
		checkList(&c, "radius", in.RadiusMM, 0, farthestMM)
		return nil, c.Err()
	case byPlace:
		return PointsInputs{X: in.X, Y: in.Y}.points(least)
	}
	checkClocks(&c, in.ClockDeg)
	checkList(&c, "radius", in.RadiusMM, 0, farthestMM)
	if len(in.ClockDeg) != len(in.RadiusMM) || len(in.RadiusMM) < least || len(in.RadiusMM) > mostPoints {
		c.Refuse("radius", "holds %d numbers and clock %d: give %d to %d of each, or x and y", len(in.RadiusMM), len(in.ClockDeg), least, mostPoints)
	}
	if err := c.Err(); err != nil {
		return nil, err
	}
	points := make([]point, len(in.RadiusMM))
	for i, r := range in.RadiusMM {
		points[i] = at(in.ClockDeg[i], r)
	}
	return points, nil
}

// checkClocks asks for angles of a clock face.
func checkClocks(c *worked.Checks, clocks worked.List) {
	checkList(c, "clock", clocks, 0, fullTurnDeg)
}

// refuse names the list that the points came in.
func (in RoundnessInputs) refuse(says string, args ...any) error {
	name := "x"
	if in.X == nil {
		name = "radius"
	}
	var c worked.Checks
	c.Refuse(name, says, args...)
	return c.Err()
}

// diameterRange takes the first half of the points against the second. It is
// known only where each pair faces each other across the centre.
func diameterRange(points []point, centre point) worked.Optional {
	const squintDeg = 3 // how far from opposite two readings may be
	if len(points)%2 != 0 {
		return worked.Optional{}
	}
	half := len(points) / 2
	most, least := 0.0, math.Inf(1)
	for i, p := range points[:half] {
		q := points[half+i]
		between := math.Abs(clockOf(p.x-centre.x, p.y-centre.y) - clockOf(q.x-centre.x, q.y-centre.y))
		if math.Abs(between-halfTurnDeg) > squintDeg {
			return worked.Optional{}
		}
		most, least = max(most, p.to(q)), min(least, p.to(q))
	}
	return worked.Some(most - least)
}

// RoundnessCalculation is the catalogue entry of Roundness.
func RoundnessCalculation() worked.Calculation {
	const iso = "ISO 12181-1, ISO 4291 (from memory)"
	return worked.Define("roundness_four_circles", Roundness, worked.Page[RoundnessInputs, RoundnessOutputs]{
		Title:    "Roundness of a section by four circles",
		Sources:  []string{"reference circles of ISO 12181-1 and ISO 4291 (names read, definitions from memory)", "checked by trying all pairs and triples of points"},
		Validity: "four points or more that go round the bore",
		Formulas: []worked.Formula[RoundnessInputs, RoundnessOutputs]{
			{Symbol: "R_o", Table: "farthest point from the centre of the minimum zone, which is searched for", Source: iso},
			{Symbol: "R_i", Table: "nearest point to the same centre", Source: iso},
			{Symbol: "t", Is: "R_o - R_i", Source: iso},
			{Symbol: "R_c", Table: "search over circles across two points and around three", Source: iso},
			{Symbol: "D_c", Is: "2 * R_c", Source: "definition"},
			{Symbol: "R_p", Table: "search over circles through three points, and through two on the edge of the figure", Source: iso},
			{Symbol: "d_p", Is: "2 * R_p", Source: "definition"},
		},
		Warnings: roundnessWarnings,
		Example: map[string]string{
			"clock":  "0, 30, 60, 90, 120, 150, 180, 210, 240, 270, 300, 330 deg",
			"radius": "45.02, 45, 45.02, 45.8, 46.41, 46.6, 46.41, 45.8, 45.02, 45, 45.02, 45 mm",
		},
	})
}

func roundnessWarnings(in RoundnessInputs, out RoundnessOutputs) []string {
	says := []string{"Roundness is a difference of radii; the workshop's out-of-round is one of diameters, on a plain oval twice as much."}
	points, err := in.points()
	if err != nil {
		return says // the calculation itself has refused
	}
	if step := widestGap(point{out.LeastSquaresXMM, out.LeastSquaresYMM}, points); step > 46 {
		says = append(says, fmt.Sprintf("Readings %.0f degrees apart can miss the deepest place: take twelve or more.", step))
	}
	return says
}
