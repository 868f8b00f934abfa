package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// shearLoad is a force in the plane of a group of bolts and the place where it
// acts.
type shearLoad struct{ forceXN, forceYN, xMM, yMM float64 }

func (load shearLoad) check(c *worked.Checks) {
	c.Finite("force_x", load.forceXN)
	c.Finite("force_y", load.forceYN)
	if load.forceXN == 0 && load.forceYN == 0 {
		c.Refuse("force_y", "is 0, and so is force_x: there is no load")
	}
	checkPlace(c, "load_x", load.xMM)
	checkPlace(c, "load_y", load.yMM)
}

// checkPlace asks for a place that can be part of a machine.
func checkPlace(c *worked.Checks, name string, mm float64) {
	if !(math.Abs(mm) <= 1e6) {
		c.Refuse(name, "is %g, must lie within a kilometre of the group", mm)
	}
}

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
