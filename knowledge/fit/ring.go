package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// The formulas of Lame for two rings in plane stress. Q is the square of bore
// over outside diameter, for the hub as for the sleeve; a solid inner part has
// Q = 0.

// hubGive is the growth of a hub bore under pressure, as (growth/d) E/p.
func hubGive(q, nu float64) float64 { return (1+q)/(1-q) + nu }

// sleeveGive is the shrinkage of a sleeve OD under pressure, as (shrinkage/d) E/p.
func sleeveGive(q, nu float64) float64 { return (1+q)/(1-q) - nu }

// sleeveBoreHoop is the hoop stress at the bore of a sleeve under an outside
// pressure. A solid part has no bore: there the stress is -p everywhere.
func sleeveBoreHoop(p, q float64) float64 {
	if q == 0 {
		return -p
	}
	return -2 * p / (1 - q)
}

func square(v float64) float64 { return v * v }

// equivalentStress is the von Mises stress of a hoop and a radial stress with no
// stress along the axis.
func equivalentStress(hoop, radial float64) float64 {
	return math.Sqrt(hoop*hoop - hoop*radial + radial*radial)
}

// thinnestWall is the least wall of a ring over its diameter that is worked
// with; a ring of no wall has no stress that means anything.
const thinnestWall = 5e-4

// mostInterference over the diameter: far beyond what any metal takes
// elastically, so more is a slip of unit.
const mostInterference = 0.02

// checkRings refuses rings that do not fit into each other. A sleeve bore of
// zero is a solid pin.
func checkRings(c *worked.Checks, seat, hubOD, sleeveID float64) {
	checkHub(c, seat, hubOD)
	checkSleeve(c, seat, sleeveID)
}

func checkHub(c *worked.Checks, seat, hubOD float64) {
	c.Positive("seat_diameter", seat)
	c.Positive("hub_od", hubOD)
	if !(hubOD >= seat*(1+2*thinnestWall)) {
		c.Refuse("hub_od", "is %g, must exceed seat_diameter, which is %g: the hub has no wall", hubOD, seat)
	}
}

func checkSleeve(c *worked.Checks, seat, sleeveID float64) {
	c.NotNegative("sleeve_id", sleeveID)
	if !(sleeveID <= seat*(1-2*thinnestWall)) {
		c.Refuse("sleeve_id", "is %g, must be below seat_diameter, which is %g: the sleeve has no wall", sleeveID, seat)
	}
}

// checkInterference refuses an interference that is none, or that no metal
// stands.
func checkInterference(c *worked.Checks, input string, interference, seat float64) {
	c.Positive(input, interference)
	if interference > mostInterference*seat {
		c.Refuse(input, "is %g, more than %g of the diameter %g: no metal stays elastic so far", interference, mostInterference, seat)
	}
}

// checkElastic refuses elastic constants that no metal has.
func checkElastic(c *worked.Checks, e, nu string, modulus, poisson float64) {
	c.Between(e, modulus, 1e3, 700e3)
	c.Between(nu, poisson, 0, 0.5)
}

func isSolid(sleeveID float64) bool { return sleeveID == 0 }

// The pages that the ring formulas stand on.
const (
	lame       = "Lame, plane stress"
	shigley    = "Budynas and Nisbett, Shigley's Mechanical Engineering Design, 9th ed., sections 3-14 and 3-16 (opening page read, equations from memory)"
	norton     = "R. L. Norton, Machine Design, 4th ed., eq. 10.14 (read)"
	recomputed = "solved again by finite elements and by Runge-Kutta without these formulas; pressure agrees to 1e-8 (recomputed)"
)
