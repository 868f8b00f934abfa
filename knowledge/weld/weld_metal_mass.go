package weld

import "boremend/knowledge/worked"

// WeldMetalMassInputs are a fillet or the cross-section of another weld.
type WeldMetalMassInputs struct {
	LegMM       worked.Optional `name:"leg" symbol:"z" kind:"length" means:"leg of an equal-legged fillet"`
	AreaMM2     worked.Optional `name:"area" symbol:"A_0" kind:"area" means:"cross-section of the weld, where it is no fillet"`
	LengthMM    float64         `name:"length" symbol:"L" kind:"length" means:"length of the weld"`
	DensityKGM3 float64         `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the weld metal"`
}

// WeldMetalMassOutputs are cross-section and mass.
type WeldMetalMassOutputs struct {
	AreaMM2 float64 `name:"section" symbol:"A" kind:"area" means:"cross-section used"`
	MassKG  float64 `name:"mass" symbol:"m" kind:"mass" means:"weld metal by mass"`
}

// WeldMetalMass computes the weld metal of a fillet, or of a weld of given
// cross-section.
//
//	A = z^2/2 for an equal-legged fillet without reinforcement, else A_0
//	m = rho A L / 10^9
//
// z is the leg and L the length [mm], A the cross-section [mm2], rho the density
// [kg/m3], m in kg.
//
// Validity: exactly one of leg and area is given.
//
// Error: the least; a convex fillet takes 10 % more (judgement).
//
// Source: ESAB handbook, Calculating Filler Metal Consumption (public copy), read.
func WeldMetalMass(in WeldMetalMassInputs) (WeldMetalMassOutputs, error) {
	var c worked.Checks
	if in.LegMM.Known == in.AreaMM2.Known {
		c.Refuse("leg", "or area: give one of the two")
	}
	if in.LegMM.Known {
		c.Positive("leg", in.LegMM.Value)
	}
	if in.AreaMM2.Known {
		c.Positive("area", in.AreaMM2.Value)
	}
	c.Positive("length", in.LengthMM)
	c.Positive("density", in.DensityKGM3)
	if err := c.Err(); err != nil {
		return WeldMetalMassOutputs{}, err
	}
	area := in.AreaMM2.Value
	if in.LegMM.Known {
		area = in.LegMM.Value * in.LegMM.Value / 2
	}
	return WeldMetalMassOutputs{AreaMM2: area, MassKG: in.DensityKGM3 * area * in.LengthMM / 1e9}, nil
}

// WeldMetalMassCalculation is the catalogue entry of WeldMetalMass.
func WeldMetalMassCalculation() worked.Calculation {
	isFillet := func(in WeldMetalMassInputs, _ WeldMetalMassOutputs) bool { return in.LegMM.Known }
	isOther := func(in WeldMetalMassInputs, _ WeldMetalMassOutputs) bool { return in.AreaMM2.Known }
	return worked.Define("weld_metal_mass", WeldMetalMass, worked.Page[WeldMetalMassInputs, WeldMetalMassOutputs]{
		Title:    "Weld metal of a fillet",
		Sources:  []string{"ESAB handbook, Calculating Filler Metal Consumption (public copy), read"},
		Validity: "equal-legged fillet without reinforcement, or a given cross-section",
		Formulas: []worked.Formula[WeldMetalMassInputs, WeldMetalMassOutputs]{
			{Symbol: "A", Is: "z^2 / 2", Source: "plain geometry", When: isFillet},
			{Symbol: "A", Is: "A_0", Source: "as given", When: isOther},
			{Symbol: "m", Is: "rho * A * L / 1000000000", Source: "plain geometry"},
		},
		Example: map[string]string{"leg": "1/2 in", "length": "12 in"},
	})
}
