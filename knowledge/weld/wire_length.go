package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// WireLengthInputs are the wire, or the figure that its maker prints.
type WireLengthInputs struct {
	WireMM         worked.Optional `name:"wire_dia" symbol:"d" kind:"length" means:"wire diameter"`
	DensityKGM3    float64         `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the wire"`
	InchesPerPound worked.Optional `name:"inches_per_pound" symbol:"n" kind:"ratio" means:"inches in a pound, as a wire table prints it"`
}

// WireLengthOutputs is the yield of the wire.
type WireLengthOutputs struct {
	LengthMM float64 `name:"length_per_kg" symbol:"l" kind:"length" means:"length of wire in one kilogram"`
}

// WireLengthPerMass computes how much wire a kilogram is.
//
//	l = 4 10^9 / (rho pi d^2)     from the wire
//	l = 25.4 n / 0.45359237       from a table in inches a pound
//
// d is the wire diameter [mm], rho the density [kg/m3], n the inches in a pound
// [-], l the length in one kilogram [mm].
//
// Validity: solid wire; exactly one of diameter and table figure is given.
//
// Error: the geometry lies up to 1.2 % above the table of the source, which
// allows for the wire's tolerance.
//
// Source: ESAB MIG handbook, page 7-10, read.
func WireLengthPerMass(in WireLengthInputs) (WireLengthOutputs, error) {
	var c worked.Checks
	if in.WireMM.Known == in.InchesPerPound.Known {
		c.Refuse("wire_dia", "or inches_per_pound: give one of the two")
	}
	if in.WireMM.Known {
		c.Positive("wire_dia", in.WireMM.Value)
	}
	if in.InchesPerPound.Known {
		c.Positive("inches_per_pound", in.InchesPerPound.Value)
	}
	c.Positive("density", in.DensityKGM3)
	if err := c.Err(); err != nil {
		return WireLengthOutputs{}, err
	}
	if in.WireMM.Known {
		return WireLengthOutputs{4e9 / (in.DensityKGM3 * math.Pi * in.WireMM.Value * in.WireMM.Value)}, nil
	}
	return WireLengthOutputs{25.4 * in.InchesPerPound.Value / 0.45359237}, nil
}

// WireLengthPerMassCalculation is the catalogue entry of WireLengthPerMass.
func WireLengthPerMassCalculation() worked.Calculation {
	fromWire := func(in WireLengthInputs, _ WireLengthOutputs) bool { return in.WireMM.Known }
	fromTable := func(in WireLengthInputs, _ WireLengthOutputs) bool { return in.InchesPerPound.Known }
	return worked.Define("wire_length_per_mass", WireLengthPerMass, worked.Page[WireLengthInputs, WireLengthOutputs]{
		Title:    "Length of wire in a kilogram",
		Sources:  []string{"ESAB MIG handbook, page 7-10, read"},
		Validity: "solid wire",
		Formulas: []worked.Formula[WireLengthInputs, WireLengthOutputs]{
			{Symbol: "l", Is: "4000000000 / (rho * pi * d^2)", Source: "plain geometry", When: fromWire},
			{Symbol: "l", Is: "25.4 * n / 0.45359237", Source: "units", When: fromTable},
		},
		Example: map[string]string{"wire_dia": "1/16 in"},
	})
}
