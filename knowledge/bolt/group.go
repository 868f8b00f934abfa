package bolt

import (
	"errors"
	"math"

	"boremend/knowledge/worked"
)

// Point is a bolt of a group, seen along its axis.
type Point struct{ XMM, YMM float64 }

// ShearLoad is a force in the plane of a group and the point where it acts, in the
// same axes as the bolts.
type ShearLoad struct{ ForceXN, ForceYN, XMM, YMM float64 }

// GroupForces are what the bolts of a group carry across their axes.
type GroupForces struct {
	CentroidMM Point
	MomentNM   float64 // about the centroid, counter-clockwise positive
	MostN      float64 // on the bolt that carries the most
	LeastN     float64 // on the bolt that carries the least
}

// ShearOnGroup spreads a load over bolts of equal size in any pattern: an equal
// share of the force, and of the moment about the centroid a share by the distance
// from it, at right angles to the line from it; the two add as vectors.
//
//	F_i = F/n + M r_i/(sum of r^2), at right angles to r_i
//
// It holds for a stiff plate on elastic bolts. Bolts in clearance holes bear one
// after the other and not all at once.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., section 8-12 and
// example 8-7 (read).
func ShearOnGroup(bolts []Point, load ShearLoad) (GroupForces, error) {
	out, polar, err := centre(bolts, load)
	if err != nil {
		return GroupForces{}, err
	}
	n := float64(len(bolts))
	moment := load.ForceYN*(load.XMM-out.CentroidMM.XMM) - load.ForceXN*(load.YMM-out.CentroidMM.YMM)
	turn := 0.0 // force for each millimetre from the centroid
	if moment != 0 {
		turn = moment / polar
	}
	out.MomentNM = moment / 1000
	out.LeastN = math.Inf(1)
	for _, b := range bolts {
		x, y := b.XMM-out.CentroidMM.XMM, b.YMM-out.CentroidMM.YMM
		force := math.Hypot(load.ForceXN/n-turn*y, load.ForceYN/n+turn*x)
		out.MostN, out.LeastN = max(out.MostN, force), min(out.LeastN, force)
	}
	return out, nil
}

// centre finds the centroid of a group and the sum of the squares of the
// distances from it.
func centre(bolts []Point, load ShearLoad) (out GroupForces, polar float64, err error) {
	var c worked.Checks
	if len(bolts) == 0 {
		c.Refuse("bolts", "are none")
	}
	for i, b := range bolts {
		if !within(b.XMM, 1e6) || !within(b.YMM, 1e6) {
			c.Refuse("bolts", "number %d lies at %g, %g mm: no such place", i+1, b.XMM, b.YMM)
		}
		out.CentroidMM.XMM += b.XMM / float64(len(bolts))
		out.CentroidMM.YMM += b.YMM / float64(len(bolts))
	}
	checkLoad(&c, load)
	if err := c.Err(); err != nil {
		return GroupForces{}, 0, err
	}
	for _, b := range bolts {
		x, y := b.XMM-out.CentroidMM.XMM, b.YMM-out.CentroidMM.YMM
		polar += x*x + y*y
	}
	if !(polar > 1e-6) && (load.XMM != out.CentroidMM.XMM || load.YMM != out.CentroidMM.YMM) {
		return GroupForces{}, 0, errors.New("bolts: all sit in one place, which holds no moment")
	}
	return out, polar, nil
}

func checkLoad(c *worked.Checks, load ShearLoad) {
	c.Finite("force_x", load.ForceXN)
	c.Finite("force_y", load.ForceYN)
	if load.ForceXN == 0 && load.ForceYN == 0 {
		c.Refuse("force_y", "is 0, and so is force_x: there is no load")
	}
	for _, at := range [...]struct {
		name string
		mm   float64
	}{{"load_x", load.XMM}, {"load_y", load.YMM}} {
		if !within(at.mm, 1e6) {
			c.Refuse(at.name, "is %g, must lie within a kilometre of the group", at.mm)
		}
	}
}

// within is false for a number that is none.
func within(v, most float64) bool { return math.Abs(v) <= most }

// grid is a pattern of rows and columns about its centroid.
type grid struct{ columns, rows, columnPitchMM, rowPitchMM float64 }

func (g grid) check(c *worked.Checks) {
	checkWhole(c, "columns", g.columns, 1, 50)
	checkWhole(c, "rows", g.rows, 1, 50)
	c.Positive("column_pitch", g.columnPitchMM)
	c.Positive("row_pitch", g.rowPitchMM)
	if g.columns*g.rows == 1 {
		c.Refuse("rows", "is 1, and so is columns: one bolt is no group")
	}
}

func (g grid) count() float64 { return g.columns * g.rows }

// farXMM and farYMM are the reach of the corner bolts from the centroid.
func (g grid) farXMM() float64 { return (g.columns - 1) * g.columnPitchMM / 2 }
func (g grid) farYMM() float64 { return (g.rows - 1) * g.rowPitchMM / 2 }

// squaresX and squaresY are the sums of the squares of the distances from the
// centroid, in mm2.
func (g grid) squaresX() float64 {
	return g.count() * (g.columns*g.columns - 1) * g.columnPitchMM * g.columnPitchMM / 12
}
func (g grid) squaresY() float64 {
	return g.count() * (g.rows*g.rows - 1) * g.rowPitchMM * g.rowPitchMM / 12
}
