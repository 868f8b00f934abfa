package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// CombinedGripInputs are a fit and the loads that act on it together.
type CombinedGripInputs struct {
	SeatDiameterMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"diameter where sleeve and ear meet"`
	LengthMM       float64 `name:"length" symbol:"L" kind:"length" means:"length in contact"`
	PressureMPa    float64 `name:"pressure" symbol:"p" kind:"pressure" means:"contact pressure, the least"`
	Mu             float64 `name:"mu" symbol:"mu" kind:"ratio" means:"friction, the low value"`
	AxialLoadN     float64 `name:"axial_load" symbol:"F_a" kind:"force" means:"force along the axis; 0 if none"`
	TorqueNM       float64 `name:"torque" symbol:"T" kind:"torque" means:"torque on the sleeve, as from a tight pin; 0 if none"`
}

// CombinedGripOutputs are the load on the seat and the safety against slip.
type CombinedGripOutputs struct {
	TangentialN float64 `name:"tangential_force" symbol:"F_t" kind:"force" means:"force at the seat that the torque makes"`
	ResultantN  float64 `name:"resultant" symbol:"F_r" kind:"force" means:"both forces together"`
	SlipForceN  float64 `name:"slip_force" symbol:"F_s" kind:"force" means:"force at which the sleeve slips"`
	Safety      float64 `name:"safety_against_slip" symbol:"S" kind:"ratio" means:"slip force over load; below 1 the sleeve moves"`
}

// CombinedGrip computes the safety against slip when a force along the axis and
// a torque act together.
//
//	F_t = 2T/d    F_r = sqrt(F_a^2 + F_t^2)    F_s = pi d L p mu    S = F_s/F_r
//
// d is the seat diameter, L the length in contact [mm]; p the least pressure
// [MPa]; mu the friction; F_a the force along the axis [N]; T the torque [N m].
//
// Validity: even pressure; at least one load; mu between 0.01 and 1.
//
// Error: that of mu, easily 30 %. Friction alone does not hold a hammered sleeve
// whatever S says.
//
// Source: Coulomb friction, the direction of slip is that of the resultant
// (recomputed).
func CombinedGrip(in CombinedGripInputs) (CombinedGripOutputs, error) {
	var c worked.Checks
	c.Positive("seat_diameter", in.SeatDiameterMM)
	c.Positive("length", in.LengthMM)
	c.Positive("pressure", in.PressureMPa)
	checkFriction(&c, "mu", in.Mu)
	c.NotNegative("axial_load", in.AxialLoadN)
	c.NotNegative("torque", in.TorqueNM)
	if in.AxialLoadN < 1e-9 && in.TorqueNM < 1e-9 {
		c.Refuse("axial_load", "and torque are both 0: there is no load to compare with")
	}
	if err := c.Err(); err != nil {
		return CombinedGripOutputs{}, err
	}
	out := CombinedGripOutputs{
		TangentialN: 2 * in.TorqueNM * 1000 / in.SeatDiameterMM,
		SlipForceN:  math.Pi * in.SeatDiameterMM * in.LengthMM * in.PressureMPa * in.Mu,
	}
	out.ResultantN = math.Hypot(in.AxialLoadN, out.TangentialN)
	out.Safety = out.SlipForceN / out.ResultantN
	return out, nil
}

// CombinedGripCalculation is the catalogue entry of CombinedGrip.
func CombinedGripCalculation() worked.Calculation {
	return worked.Define("combined_grip", CombinedGrip, worked.Page[CombinedGripInputs, CombinedGripOutputs]{
		Title:    "Safety against slip under force and torque together",
		Sources:  []string{"Coulomb friction (recomputed)"},
		Validity: "even pressure over the length",
		Formulas: []worked.Formula[CombinedGripInputs, CombinedGripOutputs]{
			{Symbol: "F_t", Is: "2 * T * 1000 / d", Source: "lever of half the diameter; N m to N mm"},
			{Symbol: "F_r", Is: "sqrt(F_a^2 + F_t^2)", Source: "resultant"},
			{Symbol: "F_s", Is: "pi * d * L * p * mu", Source: "Coulomb friction"},
			{Symbol: "S", Is: "F_s / F_r", Source: "comparison"},
		},
		Example: map[string]string{
			"seat_diameter": "110 mm", "length": "80 mm", "pressure": "25 MPa", "mu": "0.12", "axial_load": "20 kN", "torque": "2000 N*m",
		},
	})
}
