package ear

import "math"

// DesignFactorA is the design factor of ASME BTH-1 category A, for loads that are
// known. Category B asks for 3.
const DesignFactorA = 2.0

// bth1 is a pin plate as ASME BTH-1 section 3-3.3 sees it; lengths in mm, stress
// in MPa.
type bth1 struct {
	thickness, sideWall, endWall, edgeRadius float64
	pin, hole                                float64
	yield, tensile                           float64
	designFactor                             float64
	looseness                                bool // reduce for a pin smaller than the hole
	round                                    bool // deduct what a round edge lacks to a square one
	fixedPlanes                              bool // shear planes of the edition of 2005
	turns                                    bool // the pin turns under load many times
}

// bth1Result holds the intermediate values and the allowable loads in N.
type bth1Result struct {
	effectiveWall, looseness, angleDeg, deduction, shearArea float64
	tension, splitting, shear, bearing, least                float64
	governs                                                  string
}

// work carries the formulas through on values already checked.
func (p bth1) work() bth1Result {
	r := bth1Result{looseness: 1}
	r.effectiveWall = min(p.sideWall, 4*p.thickness, p.sideWall*0.6*p.tensile/p.yield*math.Sqrt(p.hole/p.sideWall))
	if p.looseness {
		r.looseness = 1 - 0.275*math.Sqrt(1-p.pin*p.pin/(p.hole*p.hole))
	}
	half := p.pin / 2
	r.angleDeg = 55 * p.pin / p.hole
	if p.fixedPlanes {
		half, r.angleDeg = p.hole/2, 45
	}
	angle := r.angleDeg * math.Pi / 180
	if p.round {
		reach := half * math.Sin(angle)
		r.deduction = p.edgeRadius - math.Sqrt(p.edgeRadius*p.edgeRadius-reach*reach)
	}
	r.shearArea = 2 * (p.endWall + half*(1-math.Cos(angle)) - r.deduction) * p.thickness
	stress := p.tensile / (1.2 * p.designFactor)
	r.tension = r.looseness * stress * 2 * p.thickness * r.effectiveWall
	r.splitting = r.looseness * stress * splitWidth(p.edgeRadius-p.hole/2, p.sideWall, p.hole) * p.thickness
	r.shear = 0.70 * stress * r.shearArea
	r.bearing = p.bearingFactor() * p.yield / p.designFactor * p.pin * p.thickness
	r.least, r.governs = r.tension, "tension"
	for _, other := range [...]struct {
		load float64
		name string
	}{{r.splitting, "splitting"}, {r.shear, "shear"}, {r.bearing, "bearing"}} {
		if other.load < r.least {
			r.least, r.governs = other.load, other.name
		}
	}
	return r
}

// bearingFactor is smaller where the pin turns under load.
func (p bth1) bearingFactor() float64 {
	if p.turns {
		return 0.63
	}
	return 1.25
}

// splitWidth is the width of metal that the code counts against splitting.
func splitWidth(endWall, sideWall, hole float64) float64 {
	return 1.13*endWall + 0.92*sideWall/(1+sideWall/hole)
}
