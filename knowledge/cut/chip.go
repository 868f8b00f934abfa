package cut

import (
	"fmt"
	"math"

	"boremend/knowledge/worked"
)

// The chips for which Kienzle's law was fitted, and those beyond which it says
// nothing. Between the two the sheets warn.
const (
	fittedLeastMM = 0.11
	fittedMostMM  = 1.13
	thinnestMM    = 0.05
	thickestMM    = 1.6
)

// chipThickness is the thickness of the chip square to the edge.
func chipThickness(feedMM, enteringDeg float64) float64 {
	return feedMM * math.Sin(enteringDeg*math.Pi/180)
}

// checkChip asks for a chip that the law can say something of; input names the
// feed.
func checkChip(c *worked.Checks, input string, feedMM, enteringDeg float64) {
	c.Positive(input, feedMM)
	checkEntering(c, "entering_angle", enteringDeg)
	if c.Err() != nil {
		return
	}
	if h := chipThickness(feedMM, enteringDeg); !(h >= thinnestMM && h <= thickestMM) {
		c.Refuse(input, "gives a chip %.3g mm thick; the law of the cutting force was fitted for %g to %g mm and is not used outside %g to %g mm", h, fittedLeastMM, fittedMostMM, thinnestMM, thickestMM)
	}
}

// checkEntering asks for the angle between edge and feed.
func checkEntering(c *worked.Checks, input string, deg float64) { c.Between(input, deg, 15, 150) }

// chipWarnings say where a chip lies outside the fit.
func chipWarnings(name string, chipMM float64) []string {
	switch {
	case chipMM < fittedLeastMM:
		return []string{fmt.Sprintf("%s is %.3g mm, thinner than the %g mm down to which the law was fitted: the force is larger than shown.", name, chipMM, fittedLeastMM)}
	case chipMM > fittedMostMM:
		return []string{fmt.Sprintf("%s is %.3g mm, thicker than the %g mm up to which the law was fitted: the force is a guess.", name, chipMM, fittedMostMM)}
	}
	return nil
}
