package cut

import (
	"fmt"
	"math"

	"boremend/knowledge/worked"
)

// Sources that the beam sheets share.
const (
	beamTables    = "beam tables: Roark; Shigley, table A-9 (from memory)"
	beamsChecked  = "checked by integrating the bending moment numerically"
	secondMomentF = "pi * (d^4 - d_0^4) / 64"
	gravityMS2    = 9.80665
)

// checkBar asks for a round bar, solid or hollow.
func checkBar(c *worked.Checks, outerMM, boreMM float64) {
	c.Between("bar_diameter", outerMM, 1, 1000)
	c.NotNegative("bar_bore", boreMM)
	c.Below("bar_bore", boreMM, "bar_diameter", outerMM)
}

// checkModulus asks for the stiffness of some metal or carbide.
func checkModulus(c *worked.Checks, modulusMPa float64) { c.Between("modulus", modulusMPa, 5e4, 7e5) }

// checkSpan asks for a bar that bends as a beam and not as a block.
func checkSpan(c *worked.Checks, input string, lengthMM, outerMM float64) {
	c.Between(input, lengthMM, 1, 2e4)
	if c.Err() == nil && lengthMM < outerMM {
		c.Refuse(input, "is %g mm, shorter than the bar is thick: beam formulas no longer hold", lengthMM)
	}
}

// checkBend refuses an answer that no elastic bar would give.
func checkBend(c *worked.Checks, deflectionMM, lengthMM float64) {
	if !(deflectionMM <= lengthMM/20) {
		c.Refuse("force", "would bend the bar by %.3g mm over %g mm: the formula holds for small bends, up to a twentieth of the length", deflectionMM, lengthMM)
	}
}

// secondMoment of area of a round bar, in mm4.
func secondMoment(outerMM, boreMM float64) float64 {
	return math.Pi * (fourth(outerMM) - fourth(boreMM)) / 64
}

func fourth(v float64) float64 { return v * v * v * v }

func cube(v float64) float64 { return v * v * v }

// shortBarWarnings say where shear, which these formulas leave out, shows.
func shortBarWarnings(lengthMM, outerMM float64) []string {
	if lengthMM < 4*outerMM {
		share := 0.55 * outerMM * outerMM / (lengthMM * lengthMM)
		return []string{fmt.Sprintf("The bar is short: shear, which is not in the formula, adds about %.0f %% to the bend.", 100*share)}
	}
	return nil
}
