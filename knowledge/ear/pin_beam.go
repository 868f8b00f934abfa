package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// PinBeamInputs are a pin through one inner and two outer parts.
type PinBeamInputs struct {
	PinMM       float64         `name:"pin_diameter" symbol:"d" kind:"length" means:"pin"`
	ForceN      float64         `name:"force" symbol:"F" kind:"force" means:"load of the joint"`
	CentreMM    float64         `name:"centre_thickness" symbol:"t_1" kind:"length" means:"thickness of the inner part"`
	OuterMM     float64         `name:"outer_thickness" symbol:"t_2" kind:"length" means:"thickness of each outer part"`
	GapMM       float64         `name:"gap" symbol:"g" kind:"length" default:"0 mm" means:"gap between inner and outer part, each side"`
	MomentModel string          `name:"moment_model" choices:"uniform,triangular_fork,point_loads" default:"uniform" means:"how the load is spread along the pin"`
	BendingMPa  worked.Optional `name:"allowable_bending" symbol:"s_0" kind:"stress" means:"bending stress allowed"`
	AllowShear  worked.Optional `name:"allowable_shear" symbol:"q_0" kind:"stress" means:"shear stress allowed"`
}

// PinBeamOutputs are the stresses and the pins that would do.
type PinBeamOutputs struct {
	MomentNM   float64         `name:"moment" symbol:"M" kind:"torque" means:"largest bending moment"`
	ShearMPa   float64         `name:"shear_stress" symbol:"q" kind:"stress" means:"mean shear stress"`
	BendingMPa float64         `name:"bending_stress" symbol:"s" kind:"stress" means:"largest bending stress"`
	ForShearMM worked.Optional `name:"diameter_for_shear" symbol:"d_q" kind:"length" means:"pin that shear alone asks for"`
	ForBendMM  worked.Optional `name:"diameter_for_bending" symbol:"d_s" kind:"length" means:"pin that bending alone asks for"`
	ForceArmMM float64         `name:"force_arm" symbol:"l" kind:"length" means:"arm of half the load about the middle"`
}

// PinBeam computes shear and bending of a pin in double shear.
//
//	l   = t_1/4 + g + t_2/2      uniform: both parts press evenly
//	      t_1/4 + g + t_2/3      triangular_fork: the fork presses more near the gap
//	      t_1/2 + g + t_2/2      point_loads: the worst there can be
//	M   = F/2 l
//	q   = 2 F/(pi d^2)
//	s   = 32 M/(pi d^3)
//	d_q = sqrt[2 F/(pi q_0)],  d_s = cube root of 32 M/(pi s_0)
//
// F is the load [N], d the pin, t_1 the inner and t_2 each outer part, g the gap
// [mm], stress in MPa, M in N*m.
//
// Bending sizes the pin almost always. The gap enters directly: worn side faces
// raise the stress in the pin.
//
// Validity: a solid round pin, elastic.
//
// Error: the spread of the load; uniform and point_loads bound it.
//
// Source: any text on machine elements; the case with a triangular fork is a
// textbook knuckle joint, its answers remembered.
func PinBeam(in PinBeamInputs) (PinBeamOutputs, error) {
	var c worked.Checks
	c.Positive("pin_diameter", in.PinMM)
	c.Positive("force", in.ForceN)
	c.Positive("centre_thickness", in.CentreMM)
	c.Positive("outer_thickness", in.OuterMM)
	c.NotNegative("gap", in.GapMM)
	c.OneOf("moment_model", in.MomentModel, "uniform", "triangular_fork", "point_loads")
	if in.BendingMPa.Known {
		c.Positive("allowable_bending", in.BendingMPa.Value)
	}
	if in.AllowShear.Known {
		c.Positive("allowable_shear", in.AllowShear.Value)
	}
	if err := c.Err(); err != nil {
		return PinBeamOutputs{}, err
	}
	out := PinBeamOutputs{ForceArmMM: in.arm()}
	out.MomentNM = in.ForceN / 2 * out.ForceArmMM / 1000
	out.ShearMPa = 2 * in.ForceN / (math.Pi * in.PinMM * in.PinMM)
	out.BendingMPa = 32 * 1000 * out.MomentNM / (math.Pi * in.PinMM * in.PinMM * in.PinMM)
	if in.AllowShear.Known {
		out.ForShearMM = worked.Some(math.Sqrt(2 * in.ForceN / (math.Pi * in.AllowShear.Value)))
	}
	if in.BendingMPa.Known {
		out.ForBendMM = worked.Some(math.Cbrt(32 * 1000 * out.MomentNM / (math.Pi * in.BendingMPa.Value)))
	}
	return out, nil
}

func (in PinBeamInputs) arm() float64 {
	switch in.MomentModel {
	case "triangular_fork":
		return in.CentreMM/4 + in.GapMM + in.OuterMM/3
	case "point_loads":
		return in.CentreMM/2 + in.GapMM + in.OuterMM/2
	}
	return in.CentreMM/4 + in.GapMM + in.OuterMM/2
}

// PinBeamCalculation is the catalogue entry of PinBeam.
func PinBeamCalculation() worked.Calculation {
	type in = PinBeamInputs
	type out = PinBeamOutputs
	const text = "any text on machine elements"
	model := func(name string) func(in, out) bool {
		return func(i in, _ out) bool { return i.MomentModel == name }
	}
	return worked.Define("pin_beam", PinBeam, worked.Page[in, out]{
		Title:    "Shear and bending of a pin in double shear",
		Sources:  []string{text + "; textbook knuckle joint for the triangular fork, answers remembered"},
		Validity: "solid round pin, elastic",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "l", Is: "t_1 / 4 + g + t_2 / 2", Source: text, When: model("uniform")},
			{Symbol: "l", Is: "t_1 / 4 + g + t_2 / 3", Source: text, When: model("triangular_fork")},
			{Symbol: "l", Is: "t_1 / 2 + g + t_2 / 2", Source: text, When: model("point_loads")},
			{Symbol: "M", Is: "F / 2 * l / 1000", Source: "statics"},
			{Symbol: "q", Is: "2 * F / (pi * d^2)", Source: "statics"},
			{Symbol: "s", Is: "32 * 1000 * M / (pi * d^3)", Source: "beam theory"},
			{Symbol: "d_q", Is: "sqrt(2 * F / (pi * q_0))", Source: "shear", When: func(i in, _ out) bool { return i.AllowShear.Known }},
			{Symbol: "d_s", Is: "(32 * 1000 * M / (pi * s_0))^(1 / 3)", Source: "bending", When: func(i in, _ out) bool { return i.BendingMPa.Known }},
		},
		Warnings: func(in, out) []string {
			return []string{notCovered, "Worn side faces widen the gap and raise the bending of the pin."}
		},
		Example: map[string]string{
			"pin_diameter": "40 mm", "force": "50 kN", "centre_thickness": "40 mm", "outer_thickness": "25 mm",
			"allowable_bending": "80 MPa", "allowable_shear": "40 MPa",
		},
	})
}
