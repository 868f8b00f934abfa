package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// PressureForTorqueInputs are the torque that a fit must carry and its size.
type PressureForTorqueInputs struct {
	TorqueNM       float64 `name:"torque" symbol:"T" kind:"torque" means:"torque to be carried"`
	SeatDiameterMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"diameter where sleeve and ear meet"`
	LengthMM       float64 `name:"length" symbol:"L" kind:"length" means:"length in contact"`
	Mu             float64 `name:"mu" symbol:"mu" kind:"ratio" means:"friction, the low value"`
}

// PressureForTorqueOutputs are the pressure needed and the way to it.
type PressureForTorqueOutputs struct {
	TangentialN    float64 `name:"tangential_force" symbol:"F_t" kind:"force" means:"force at the seat that the torque makes"`
	NormalForceN   float64 `name:"normal_force" symbol:"N" kind:"force" means:"sum of all contact forces needed"`
	ContactAreaMM2 float64 `name:"contact_area" symbol:"A" kind:"area" means:"area in contact"`
	PressureMPa    float64 `name:"pressure" symbol:"p" kind:"pressure" means:"contact pressure needed"`
}

// PressureForTorque computes the contact pressure that a torque asks for.
//
//	F_t = 2T/d    N = F_t/mu    A = pi d L    p = N/A
//
// T is the torque [N m]; d the seat diameter, L the length in contact [mm]; mu
// the friction.
//
// Validity: even pressure, no force along the axis, mu between 0.01 and 1.
//
// Error: that of mu, easily 30 %; add a safety.
//
// Source: Coulomb friction on a cylinder; Fairfield University ME311 homework
// HW8.1 (figures read, recomputed).
func PressureForTorque(in PressureForTorqueInputs) (PressureForTorqueOutputs, error) {
	var c worked.Checks
	c.Positive("torque", in.TorqueNM)
	c.Positive("seat_diameter", in.SeatDiameterMM)
	c.Positive("length", in.LengthMM)
	checkFriction(&c, "mu", in.Mu)
	if err := c.Err(); err != nil {
		return PressureForTorqueOutputs{}, err
	}
	out := PressureForTorqueOutputs{
		TangentialN:    2 * in.TorqueNM * 1000 / in.SeatDiameterMM,
		ContactAreaMM2: math.Pi * in.SeatDiameterMM * in.LengthMM,
	}
	out.NormalForceN = out.TangentialN / in.Mu
	out.PressureMPa = out.NormalForceN / out.ContactAreaMM2
	return out, nil
}

// PressureForTorqueCalculation is the catalogue entry of PressureForTorque.
func PressureForTorqueCalculation() worked.Calculation {
	return worked.Define("pressure_for_torque", PressureForTorque, worked.Page[PressureForTorqueInputs, PressureForTorqueOutputs]{
		Title:    "Pressure that a torque asks for",
		Sources:  []string{"Coulomb friction on a cylinder (recomputed)", "Fairfield University ME311, homework HW8.1 (figures read)"},
		Validity: "even pressure over the length, no force along the axis",
		Formulas: []worked.Formula[PressureForTorqueInputs, PressureForTorqueOutputs]{
			{Symbol: "F_t", Is: "2 * T * 1000 / d", Source: "lever of half the diameter; N m to N mm"},
			{Symbol: "N", Is: "F_t / mu", Source: "Coulomb friction"},
			{Symbol: "A", Is: "pi * d * L", Source: "cylinder"},
			{Symbol: "p", Is: "N / A", Source: "even pressure"},
		},
		Example: map[string]string{"torque": "5000 N*m", "seat_diameter": "110 mm", "length": "80 mm", "mu": "0.12"},
	})
}
