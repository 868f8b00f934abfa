package fit

import (
	"math"

	"boremend/knowledge/worked"
)

// ThickCylinderYieldInputs are a ring under pressure inside and outside.
type ThickCylinderYieldInputs struct {
	InnerDiameterMM float64 `name:"inner_diameter" symbol:"d" kind:"length" means:"bore of the ring"`
	OuterDiameterMM float64 `name:"outer_diameter" symbol:"D" kind:"length" means:"outside of the ring"`
	PressureRatio   float64 `name:"external_to_internal_pressure_ratio" symbol:"rho" kind:"ratio" default:"0" means:"pressure outside over pressure inside"`
	YieldMPa        float64 `name:"yield" symbol:"S" kind:"stress" means:"yield strength (tensile strength for the largest tension)"`
}

// ThickCylinderYieldOutputs are the pressures at which the bore gives way.
type ThickCylinderYieldOutputs struct {
	HoopPerPressure float64 `name:"hoop_per_pressure" symbol:"h" kind:"ratio" means:"hoop stress at the bore over the inside pressure"`
	TrescaMPa       float64 `name:"internal_pressure_tresca" symbol:"p_t" kind:"pressure" means:"inside pressure at yield after Tresca"`
	VonMisesMPa     float64 `name:"internal_pressure_von_mises" symbol:"p_v" kind:"pressure" means:"inside pressure at yield after von Mises"`
	MaxPrincipalMPa float64 `name:"internal_pressure_max_principal" symbol:"p_m" kind:"pressure" means:"inside pressure at which the largest principal stress reaches the limit"`
}

// ThickCylinderYield computes the inside pressure at which the bore of a ring
// yields, by three criteria.
//
//	h = (d^2 + D^2 - 2 rho D^2)/(D^2 - d^2)     hoop over pressure at the bore
//	p_t = S / max(|h+1|, |h|, 1)
//	p_v = S / sqrt(h^2 + h + 1)
//	p_m = S / max(|h|, 1)
//
// d is the bore, D the outside [mm]; rho the outside over the inside pressure; S
// the strength [MPa]. The radial stress at the bore is minus the pressure, the
// stress along the axis zero.
//
// Validity: plane stress, elastic up to the answer, rho from 0 to 10.
//
// Error: Tresca is up to 15 % more careful than von Mises and serves for design.
//
// Source: Ugural and Fenster, Advanced Strength and Applied Elasticity, Example
// 8.2 p. 241 (figures read, recomputed).
func ThickCylinderYield(in ThickCylinderYieldInputs) (ThickCylinderYieldOutputs, error) {
	var c worked.Checks
	c.Positive("inner_diameter", in.InnerDiameterMM)
	c.Positive("outer_diameter", in.OuterDiameterMM)
	if !(in.OuterDiameterMM >= in.InnerDiameterMM*(1+2*thinnestWall)) {
		c.Refuse("outer_diameter", "is %g, must exceed inner_diameter, which is %g", in.OuterDiameterMM, in.InnerDiameterMM)
	}
	c.Between("external_to_internal_pressure_ratio", in.PressureRatio, 0, 10)
	c.Positive("yield", in.YieldMPa)
	if err := c.Err(); err != nil {
		return ThickCylinderYieldOutputs{}, err
	}
	d2, D2 := square(in.InnerDiameterMM), square(in.OuterDiameterMM)
	h := (d2 + D2 - 2*in.PressureRatio*D2) / (D2 - d2)
	return ThickCylinderYieldOutputs{
		HoopPerPressure: h,
		TrescaMPa:       in.YieldMPa / max(math.Abs(h+1), math.Abs(h), 1),
		VonMisesMPa:     in.YieldMPa / math.Sqrt(h*h+h+1),
		MaxPrincipalMPa: in.YieldMPa / max(math.Abs(h), 1),
	}, nil
}

// ThickCylinderYieldCalculation is the catalogue entry of ThickCylinderYield.
func ThickCylinderYieldCalculation() worked.Calculation {
	return worked.Define("thick_cylinder_yield_pressure", ThickCylinderYield, worked.Page[ThickCylinderYieldInputs, ThickCylinderYieldOutputs]{
		Title:    "Pressure at which a ring yields",
		Sources:  []string{"Lame; Ugural and Fenster, Advanced Strength and Applied Elasticity, Example 8.2 p. 241 (figures read)"},
		Validity: "plane stress, elastic up to the answer",
		Formulas: []worked.Formula[ThickCylinderYieldInputs, ThickCylinderYieldOutputs]{
			{Symbol: "h", Is: "(d^2 + D^2 - 2 * rho * D^2) / (D^2 - d^2)", Source: lame},
			{Symbol: "p_t", Is: "S / max(abs(h + 1), abs(h), 1)", Source: "Tresca"},
			{Symbol: "p_v", Is: "S / sqrt(h^2 + h + 1)", Source: "von Mises"},
			{Symbol: "p_m", Is: "S / max(abs(h), 1)", Source: "largest principal stress"},
		},
		Example: map[string]string{"inner_diameter": "200 mm", "outer_diameter": "300 mm", "external_to_internal_pressure_ratio": "0.25", "yield": "340 MPa"},
	})
}
