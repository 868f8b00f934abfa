package ear

import "boremend/knowledge/worked"

// curve is a stress factor of a round ear over x = R/r - 1, the wall over the
// radius of the bore: a + b/x + c/x^2. thin is what must be added for each unit
// that x lies below 0.35, where the fit alone would run low.
type curve struct{ a, b, c, thin float64 }

// at evaluates the curve on an x already checked.
func (k curve) at(x float64) float64 {
	return (k.a + k.b/x + k.c/(x*x)) * (1 + k.thin*max(0, fittedX-x))
}

// The range of R/r - 1: fitted within one percent from fittedX up, within five
// percent down to leastX, not known beyond.
const leastX, fittedX, mostX = 0.25, 0.35, 1.5

// Stress factors K_b = peak hoop stress over F/(d t) of a neat pin, that is for
// pressure after the cosine of the angle.
var (
	pullCurve = curve{0.650, 2.125, 0.359, 0}
	pushCurve = curve{0.322, 0.816, -0.090, 0.45}
	sideCurve = curve{0.603, 3.403, 0.539, 0.45}
)

// Stress factors of a pin that touches along a line: the most that clearance can do.
var (
	pullLineCurve = curve{0.514, 2.753, 0.980, 0}
	sideLineCurve = curve{0.854, 4.164, 0.898, 0.45}
)

// rounding is what a wall at the very edge of the range may lose in arithmetic.
const rounding = 1e-9

// checkX refuses an ear outside the range of the curves.
func checkX(c *worked.Checks, input string, x float64) {
	switch {
	case !(x >= leastX-rounding):
		c.Refuse(input, "leaves an effective wall of %.3g times the bore radius, outside the range %g to %g in which the factors hold: the ear is too thin to be judged", x, leastX, mostX)
	case x > mostX+rounding:
		c.Refuse(input, "leaves an effective wall of %.3g times the bore radius, outside the range %g to %g in which the factors hold: enter %g times the bore radius as the end radius for a safe bound", x, leastX, mostX, 1+mostX)
	}
}

const finiteElements = "finite elements of this project (plane stress, cosine pressure)"

// lugSources says where the factors come from.
var lugSources = []string{
	"finite elements of this project: plane stress, 8-node elements, cosine bearing pressure, by two programs that agree within 0.5 %; fits recomputed",
}
