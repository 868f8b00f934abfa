package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// AntiRotationInputs are a sleeve that a pin tries to turn, and what holds it.
type AntiRotationInputs struct {
	Friction    float64 `name:"pin_friction" symbol:"mu" kind:"ratio" default:"0.2" means:"friction of the pin in the sleeve: 0.2 dry"`
	LoadN       float64 `name:"radial_load" symbol:"F" kind:"force" means:"load of the pin on this sleeve"`
	PinMM       float64 `name:"pin_diameter" symbol:"d" kind:"length" means:"pin"`
	KeyRadiusMM float64 `name:"key_radius" symbol:"r" kind:"length" means:"from the axis to the bolt or dowel that holds the sleeve"`
	KeyMM       float64 `name:"key_diameter" symbol:"d_k" kind:"length" means:"bolt or dowel, at the thread root where the thread lies in the joint"`
	KeyLengthMM float64 `name:"key_contact_length" symbol:"l" kind:"length" means:"length on which it bears, in the weaker of sleeve and ear"`
	Keys        float64 `name:"keys" symbol:"n" kind:"count" default:"1" means:"bolts or dowels that share it"`
}

// AntiRotationOutputs are the forces and stresses.
type AntiRotationOutputs struct {
	TorqueNM    float64 `name:"torque" symbol:"T" kind:"torque" means:"torque that turns the sleeve"`
	TangentialN float64 `name:"tangential_force" symbol:"F_t" kind:"force" means:"force on one bolt or dowel"`
	ShearMPa    float64 `name:"key_shear_stress" symbol:"q" kind:"stress" means:"shear stress in it"`
	BearingMPa  float64 `name:"key_bearing_stress" symbol:"s" kind:"stress" means:"bearing stress on it"`
}

// AntiRotation computes what a capture bolt or dowel must hold when the pin drags
// the sleeve round.
//
//	T   = mu F d/2
//	F_t = T/(n r)
//	q   = F_t/(pi/4 d_k^2)
//	s   = F_t/(d_k l)
//
// F is the load of the pin [N], d the pin, r the axis to the bolt, d_k the bolt, l
// the length on which it bears [mm], T in N*m, stress in MPa.
//
// The press fit is counted as nothing and the pin as dry: that is the day on which
// the bolt is needed. Keep the hole out of the loaded arc, 55 degrees either side
// of the load, and off the thinnest wall.
//
// Validity: r above half the pin; two or more bolts share evenly only when
// reamed together. A seized pin brings the whole torque of the machine, which no
// bolt holds.
//
// Error: friction.
//
// Source: statics, recomputed.
func AntiRotation(in AntiRotationInputs) (AntiRotationOutputs, error) {
	var c worked.Checks
	c.Between("pin_friction", in.Friction, 0.01, 1)
	c.Positive("radial_load", in.LoadN)
	c.Positive("pin_diameter", in.PinMM)
	c.Positive("key_radius", in.KeyRadiusMM)
	c.Below("pin_diameter", in.PinMM, "twice key_radius", 2*in.KeyRadiusMM)
	c.Positive("key_diameter", in.KeyMM)
	c.Positive("key_contact_length", in.KeyLengthMM)
	c.Between("keys", in.Keys, 1, 12)
	if err := c.Err(); err != nil {
		return AntiRotationOutputs{}, err
	}
	out := AntiRotationOutputs{TorqueNM: in.Friction * in.LoadN * in.PinMM / 2 / 1000}
	out.TangentialN = 1000 * out.TorqueNM / (in.Keys * in.KeyRadiusMM)
	out.ShearMPa = out.TangentialN / (math.Pi / 4 * in.KeyMM * in.KeyMM)
	out.BearingMPa = out.TangentialN / (in.KeyMM * in.KeyLengthMM)
	return out, nil
}

// AntiRotationCalculation is the catalogue entry of AntiRotation.
func AntiRotationCalculation() worked.Calculation {
	return worked.Define("anti_rotation", AntiRotation, worked.Page[AntiRotationInputs, AntiRotationOutputs]{
		Title:    "What a capture bolt must hold",
		Sources:  []string{"statics of a captured sleeve, recomputed"},
		Validity: "dry pin, no help from the press fit; not a seized pin",
		Formulas: []worked.Formula[AntiRotationInputs, AntiRotationOutputs]{
			{Symbol: "T", Is: "mu * F * d / 2 / 1000", Source: "statics"},
			{Symbol: "F_t", Is: "1000 * T / (n * r)", Source: "statics"},
			{Symbol: "q", Is: "F_t / (pi / 4 * d_k^2)", Source: "statics"},
			{Symbol: "s", Is: "F_t / (d_k * l)", Source: "statics"},
		},
		Warnings: func(AntiRotationInputs, AntiRotationOutputs) []string {
			return []string{notCovered,
				"Keep the hole out of the loaded arc, 55 degrees either side of the load, and off the thinnest wall.",
				"A seized pin brings the whole torque of the machine, which no bolt holds.",
			}
		},
		Example: map[string]string{
			"radial_load": "200 kN", "pin_diameter": "80 mm", "key_radius": "50 mm", "key_diameter": "16 mm", "key_contact_length": "20 mm",
		},
	})
}
