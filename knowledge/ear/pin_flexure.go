package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// PinFlexureInputs are a pin on two supports.
type PinFlexureInputs struct {
	PinMM    float64 `name:"pin_diameter" symbol:"d" kind:"length" means:"pin"`
	YieldMPa float64 `name:"yield_strength" symbol:"F_y" kind:"stress" means:"yield strength of the pin"`
	SpanMM   float64 `name:"span" symbol:"L" kind:"length" means:"distance of the supports, load in the middle"`
}

// PinFlexureOutputs are the plastic moment and its load.
type PinFlexureOutputs struct {
	AreaMM2  float64 `name:"area" symbol:"A" kind:"area" means:"cross-section"`
	MomentNM float64 `name:"plastic_moment" symbol:"M_p" kind:"torque" means:"moment that the whole section yields under"`
	LoadN    float64 `name:"load_at_plastic_moment" symbol:"P" kind:"force" means:"load in the middle that brings it"`
	ASDN     float64 `name:"load_asd" symbol:"P_a" kind:"force" means:"allowable load"`
}

// PinFlexure computes the load under which a pin yields through in bending.
//
//	A   = pi/4 d^2
//	M_p = F_y d^3/6
//	P   = 4 M_p/L
//	P_a = P/1.67
//
// d is the pin and L its span [mm], F_y in MPa, M_p in N*m, loads in N.
//
// Validity: a solid round pin, load in the middle of the span.
//
// Error: a load that is spread is carried better.
//
// Source: published calculation sheet on pin design to AISC (scribd.com document
// 306757603), read.
func PinFlexure(in PinFlexureInputs) (PinFlexureOutputs, error) {
	var c worked.Checks
	c.Positive("pin_diameter", in.PinMM)
	c.Positive("yield_strength", in.YieldMPa)
	c.Positive("span", in.SpanMM)
	if err := c.Err(); err != nil {
		return PinFlexureOutputs{}, err
	}
	out := PinFlexureOutputs{AreaMM2: math.Pi / 4 * in.PinMM * in.PinMM}
	out.MomentNM = in.YieldMPa * in.PinMM * in.PinMM * in.PinMM / 6 / 1000
	out.LoadN = 4 * 1000 * out.MomentNM / in.SpanMM
	out.ASDN = out.LoadN / 1.67
	return out, nil
}

// PinFlexureCalculation is the catalogue entry of PinFlexure.
func PinFlexureCalculation() worked.Calculation {
	const sheet = "published sheet on pin design to AISC"
	return worked.Define("pin_flexure", PinFlexure, worked.Page[PinFlexureInputs, PinFlexureOutputs]{
		Title:    "Load under which a pin yields in bending",
		Sources:  []string{sheet + " (scribd.com/doc/306757603), read"},
		Validity: "solid round pin, load in the middle of the span",
		Formulas: []worked.Formula[PinFlexureInputs, PinFlexureOutputs]{
			{Symbol: "A", Is: "pi / 4 * d^2", Source: "plain geometry"},
			{Symbol: "M_p", Is: "F_y * d^3 / 6 / 1000", Source: sheet},
			{Symbol: "P", Is: "4 * 1000 * M_p / L", Source: sheet},
			{Symbol: "P_a", Is: "P / 1.67", Source: sheet},
		},
		Warnings: func(PinFlexureInputs, PinFlexureOutputs) []string { return []string{notCovered} },
		Example:  map[string]string{"pin_diameter": "5 in", "yield_strength": "70 ksi", "span": "4.79 in"},
	})
}
