package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

func (in BoltedReinforcementInputs) check(c *worked.Checks) {
	c.Positive("pin_load", in.PinLoadN)
	if in.LoadAngleDeg.Known {
		c.Between("load_angle", in.LoadAngleDeg.Value, -360, 360)
	}
	c.Positive("bore", in.BoreMM)
	c.OneOf("bore_finish", in.BoreFinish, "together", "apart")
	if in.BoreFinish == "apart" {
		c.Refuse("bore_finish", "is apart: a plate that is not bored together with the ear carries nothing that can be counted")
	}
	c.Positive("ear_thickness", in.EarMM)
	c.Positive("plate_thickness", in.PlateMM)
	c.Between("ear_e", in.EarEMPa, 20e3, 300e3)
	c.Between("plate_e", in.PlateEMPa, 20e3, 300e3)
	checkWhole(c, "plates", in.Plates, 1, 2)
	c.Positive("plate_yield", in.PlateYieldMPa)
	c.Positive("ear_yield", in.EarYieldMPa)
	c.Between("safety_wanted", in.SafetyWanted, 1, 10)
	c.Between("slip_safety_wanted", in.SlipWanted, 1, 10)
	c.OneOf("ear_metal", in.EarMetal, "steel", "iron")
}

func (in BoltedReinforcementInputs) checkBolts(c *worked.Checks) {
	checkWhole(c, "columns", in.Columns, 2, 20)
	checkWhole(c, "rows", in.Rows, 2, 20)
	c.Positive("column_pitch", in.ColumnPitchMM)
	c.Positive("row_pitch", in.RowPitchMM)
	c.NotNegative("eccentricity", in.Eccentricity)
	c.Positive("edge_distance", in.EdgeMM)
	c.OneOf("joint", in.Joint, "fitted", "slip")
	c.OneOf("fastening", in.Fastening, "through", "tapped")
	if in.DepthMM.Known {
		c.NotNegative("thread_depth", in.DepthMM.Value)
		if in.Fastening == "through" {
			c.Refuse("thread_depth", "is given, but through bolts have no thread in the ear")
		}
	}
	c.Between("slip_coefficient", in.SlipMu, 0.05, 0.6)
	c.Between("preload_fraction", in.Fraction, 0.1, 0.9)
	checkNutRange(c, in.FactorLeast, in.FactorMost)
	c.Between("stiffness_ratio", in.Stiffness, 0.01, 0.99)
}

// checkSpacing refuses holes so near to an edge or to each other that the bearing
// figures do not hold.
func (in BoltedReinforcementInputs) checkSpacing(c *worked.Checks, diameter, nearest float64) {
	if !(diameter > 0) {
		return // the size was refused
	}
	for _, gap := range [...]struct {
		name     string
		mm, from float64
	}{{"edge_distance", in.EdgeMM, 1.2}, {"column_pitch", in.ColumnPitchMM, 2.2}, {"row_pitch", in.RowPitchMM, 2.2}} {
		if gap.mm < gap.from*diameter*(1-stepSlack) {
			c.Refuse(gap.name, "is %g, below %g times the bolt (%g): the hole tears out before the bolt bears", gap.mm, gap.from, gap.from*diameter)
		}
	}
	if least := in.BoreMM/2 + 1.2*diameter; nearest < least*(1-stepSlack) {
		c.Refuse("eccentricity", "puts a bolt %g from the pin, where the bore and the metal round it need %g", nearest, least)
	}
}

// nearest is the distance from the pin to the bolt next to it, the middle of the
// grid being away from the pin by the eccentricity.
func (g grid) nearest(eccentricity float64) float64 {
	if !(g.columns <= 50 && g.rows <= 50) {
		return math.Inf(1) // refused elsewhere
	}
	nearest := math.Inf(1)
	for i := 0.0; i < g.columns; i++ {
		for j := 0.0; j < g.rows; j++ {
			nearest = min(nearest, math.Hypot(eccentricity+i*g.columnPitchMM-g.farXMM(), j*g.rowPitchMM-g.farYMM()))
		}
	}
	return nearest
}
