package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// PressForceInputs are a fit under its most pressure and the range of friction.
type PressForceInputs struct {
	SeatDiameterMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"diameter where sleeve and ear meet"`
	LengthMM       float64 `name:"length" symbol:"L" kind:"length" means:"length in contact when it is home"`
	PressureMPa    float64 `name:"pressure" symbol:"p" kind:"pressure" means:"contact pressure at the most interference, nothing taken off for roughness"`
	FrictionLow    float64 `name:"friction_low" symbol:"mu_l" kind:"ratio" default:"0.12" means:"least friction while pressing"`
	FrictionHigh   float64 `name:"friction_high" symbol:"mu_h" kind:"ratio" default:"0.20" means:"most friction while pressing"`
}

// PressForceOutputs are the forces to plan for.
type PressForceOutputs struct {
	ContactAreaMM2 float64 `name:"contact_area" symbol:"A" kind:"area" means:"area in contact when it is home"`
	ForceLowN      float64 `name:"press_force_low" symbol:"F_l" kind:"force" means:"press force at the least friction"`
	ForceHighN     float64 `name:"press_force_high" symbol:"F_h" kind:"force" means:"press force at the most friction: what press or jack must be able to give"`
}

// PressForce computes the force that presses a sleeve home, as a range.
//
//	A = pi d L    F_l = mu_l p A    F_h = mu_h p A
//
// d is the seat diameter, L the length in contact [mm]; p the pressure at the
// most interference [MPa]; mu_l, mu_h the least and the most friction. The force
// grows about evenly with the length engaged: half way in it is half.
//
// Traps: the pressure factor of the machinists' handbooks amounts to a friction
// of 0.04 in steel, a well oiled press; a jack in the field meets three to five
// times that.
//
// Validity: even pressure; friction between 0.01 and 1. A sleeve that tilts or
// picks up metal takes more than any figure here.
//
// Error: the range is the error.
//
// Source: Coulomb friction on a cylinder; friction 0.12 to 0.20 from the holding
// friction of DIN 7190-1 section 5.3 (read second-hand).
func PressForce(in PressForceInputs) (PressForceOutputs, error) {
	var c worked.Checks
	c.Positive("seat_diameter", in.SeatDiameterMM)
	c.Positive("length", in.LengthMM)
	c.Positive("pressure", in.PressureMPa)
	checkFrictionRange(&c, in.FrictionLow, in.FrictionHigh)
	if err := c.Err(); err != nil {
		return PressForceOutputs{}, err
	}
	area := math.Pi * in.SeatDiameterMM * in.LengthMM
	return PressForceOutputs{
		ContactAreaMM2: area,
		ForceLowN:      in.FrictionLow * in.PressureMPa * area,
		ForceHighN:     in.FrictionHigh * in.PressureMPa * area,
	}, nil
}

func checkFrictionRange(c *worked.Checks, low, high float64) {
	checkFriction(c, "friction_low", low)
	checkFriction(c, "friction_high", high)
	if high < low {
		c.Refuse("friction_high", "is %g, must not be below friction_low, which is %g", high, low)
	}
}

// PressForceCalculation is the catalogue entry of PressForce.
func PressForceCalculation() worked.Calculation {
	return worked.Define("press_force", PressForce, worked.Page[PressForceInputs, PressForceOutputs]{
		Title:    "Force that presses a sleeve home",
		Sources:  []string{"Coulomb friction on a cylinder (recomputed)", "friction of steel on steel: DIN 7190-1 section 5.3 (read second-hand)"},
		Validity: "even pressure over the length, sleeve entering square",
		Formulas: []worked.Formula[PressForceInputs, PressForceOutputs]{
			{Symbol: "A", Is: "pi * d * L", Source: "cylinder"},
			{Symbol: "F_l", Is: "mu_l * p * A", Source: "Coulomb friction"},
			{Symbol: "F_h", Is: "mu_h * p * A", Source: "Coulomb friction"},
		},
		Example: map[string]string{"seat_diameter": "2.5 in", "length": "3 in", "pressure": "62.6 MPa"},
	})
}
