package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// VonMisesInputs are the three principal stresses at a point.
type VonMisesInputs struct {
	HoopMPa   float64 `name:"hoop" symbol:"sigma_t" kind:"stress" means:"hoop stress, tension positive"`
	RadialMPa float64 `name:"radial" symbol:"sigma_r" kind:"stress" means:"radial stress, compression negative"`
	AxialMPa  float64 `name:"axial" symbol:"sigma_a" kind:"stress" default:"0 MPa" means:"stress along the axis; 0 in plane stress"`
}

// VonMisesOutputs is the stress to compare with yield strength.
type VonMisesOutputs struct {
	VonMisesMPa float64 `name:"von_mises" symbol:"sigma_v" kind:"stress" means:"equivalent stress, to be compared with the yield strength"`
}

// VonMises computes the equivalent stress of three principal stresses.
//
//	sigma_v = sqrt(((sigma_t-sigma_r)^2 + (sigma_r-sigma_a)^2 + (sigma_a-sigma_t)^2)/2)
//
// sigma_t is the hoop, sigma_r the radial and sigma_a the axial stress [MPa],
// each with its sign.
//
// Validity: ductile metals, and principal stresses (no shear in these
// directions). A brittle iron is judged by its largest tension instead.
//
// Error: none of its own; yield strengths scatter by 5 to 10 %.
//
// Source: von Mises; Boresi and Schmidt, Advanced Mechanics of Materials, Example
// 11.4 p. 403 (figures read, recomputed).
func VonMises(in VonMisesInputs) (VonMisesOutputs, error) {
	var c worked.Checks
	c.Finite("hoop", in.HoopMPa)
	c.Finite("radial", in.RadialMPa)
	c.Finite("axial", in.AxialMPa)
	if err := c.Err(); err != nil {
		return VonMisesOutputs{}, err
	}
	t, r, a := in.HoopMPa, in.RadialMPa, in.AxialMPa
	return VonMisesOutputs{VonMisesMPa: math.Sqrt((square(t-r) + square(r-a) + square(a-t)) / 2)}, nil
}

// VonMisesCalculation is the catalogue entry of VonMises.
func VonMisesCalculation() worked.Calculation {
	return worked.Define("von_mises_biaxial", VonMises, worked.Page[VonMisesInputs, VonMisesOutputs]{
		Title:    "Equivalent stress of hoop, radial and axial stress",
		Sources:  []string{"von Mises; Boresi and Schmidt, Advanced Mechanics of Materials, Example 11.4 p. 403 (figures read)"},
		Validity: "ductile metals, principal stresses",
		Formulas: []worked.Formula[VonMisesInputs, VonMisesOutputs]{
			{Symbol: "sigma_v", Is: "sqrt(((sigma_t - sigma_r)^2 + (sigma_r - sigma_a)^2 + (sigma_a - sigma_t)^2) / 2)", Source: "von Mises"},
		},
		Example: map[string]string{"hoop": "68.6 MPa", "radial": "-34.2 MPa"},
	})
}
