package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// CapacityInputs are a fit under pressure and its friction.
type CapacityInputs struct {
	SeatDiameterMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"diameter where sleeve and ear meet"`
	LengthMM       float64 `name:"length" symbol:"L" kind:"length" means:"length in contact"`
	PressureMPa    float64 `name:"pressure" symbol:"p" kind:"pressure" means:"contact pressure; the least for holding, the most for pressing in"`
	Mu             float64 `name:"mu" symbol:"mu" kind:"ratio" means:"friction; low for holding, high for pressing in"`
}

// CapacityOutputs are the loads at which the fit slips.
type CapacityOutputs struct {
	ContactAreaMM2 float64 `name:"contact_area" symbol:"A" kind:"area" means:"area in contact"`
	AxialForceN    float64 `name:"axial_force" symbol:"F" kind:"force" means:"force along the axis at which the sleeve slips"`
	TorqueNM       float64 `name:"torque" symbol:"T" kind:"torque" means:"torque at which the sleeve turns, with no force along the axis"`
}

// Capacity computes the force and the torque at which a fit slips.
//
//	A = pi d L    F = mu p A    T = F d/2
//
// d is the seat diameter, L the length in contact [mm]; p the pressure [MPa]; mu
// the friction. F and T share the same friction: not both at once.
//
// Traps: holding takes the low friction and the least interference after the
// loss to roughness; pressing in takes the high friction and the most.
//
// Validity: even pressure over the length; mu between 0.01 and 1.
//
// Error: that of mu, easily 30 %.
//
// Source: Coulomb friction on a cylinder (recomputed).
func Capacity(in CapacityInputs) (CapacityOutputs, error) {
	var c worked.Checks
	c.Positive("seat_diameter", in.SeatDiameterMM)
	c.Positive("length", in.LengthMM)
	c.Positive("pressure", in.PressureMPa)
	checkFriction(&c, "mu", in.Mu)
	if err := c.Err(); err != nil {
		return CapacityOutputs{}, err
	}
	area := math.Pi * in.SeatDiameterMM * in.LengthMM
	force := in.Mu * in.PressureMPa * area
	return CapacityOutputs{ContactAreaMM2: area, AxialForceN: force, TorqueNM: force * in.SeatDiameterMM / 2 / 1000}, nil
}

func checkFriction(c *worked.Checks, input string, mu float64) { c.Between(input, mu, 0.01, 1) }

// CapacityCalculation is the catalogue entry of Capacity.
func CapacityCalculation() worked.Calculation {
	return worked.Define("press_fit_capacity", Capacity, worked.Page[CapacityInputs, CapacityOutputs]{
		Title:    "Force and torque at which a fit slips",
		Sources:  []string{"Coulomb friction on a cylinder (recomputed)"},
		Validity: "even pressure over the length; force and torque not both at once",
		Formulas: []worked.Formula[CapacityInputs, CapacityOutputs]{
			{Symbol: "A", Is: "pi * d * L", Source: "cylinder"},
			{Symbol: "F", Is: "mu * p * A", Source: "Coulomb friction"},
			{Symbol: "T", Is: "F * d / 2 / 1000", Source: "lever of half the diameter; N mm to N m"},
		},
		Example: map[string]string{"seat_diameter": "110 mm", "length": "80 mm", "pressure": "37.1 MPa", "mu": "0.12"},
	})
}
