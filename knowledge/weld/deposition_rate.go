package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// DepositionRateInputs are the wire and how fast it is fed.
type DepositionRateInputs struct {
	WireFeedMPerMin float64         `name:"wire_feed" symbol:"v_w" kind:"speed" means:"wire feed speed"`
	WireMM          worked.Optional `name:"wire_dia" symbol:"d" kind:"length" means:"wire diameter"`
	DensityKGM3     float64         `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the wire"`
	LengthPerKGMM   worked.Optional `name:"length_per_kg" symbol:"l_0" kind:"length" means:"length of wire in one kilogram, where a table gives it"`
	Efficiency      float64         `name:"deposition_efficiency" symbol:"eta" kind:"ratio" default:"1" means:"share of the wire that becomes weld metal"`
}

// DepositionRateOutputs are the rates.
type DepositionRateOutputs struct {
	LengthPerKGMM float64 `name:"length_per_kg_used" symbol:"l" kind:"length" means:"length of wire in one kilogram"`
	MeltOffKG     float64 `name:"melt_off" symbol:"r_0" kind:"mass" means:"wire melted in an hour of arc"`
	DepositKG     float64 `name:"deposition" symbol:"r" kind:"mass" means:"weld metal laid down in an hour of arc"`
}

// DepositionRate computes how much wire melts and how much weld metal is laid
// down in an hour of arc.
//
//	l   = l_0 where a table gives it, else 4 10^9 / (rho pi d^2)
//	r_0 = 60000 v_w / l
//	r   = eta r_0
//
// v_w is the wire feed [m/min], l the length of wire in a kilogram [mm], d the
// wire [mm], rho its density [kg/m3]; r_0 and r in kg for an hour of arc.
//
// Validity: solid wire; a diameter or a table figure is given. The table rules
// where both are.
//
// Error: geometry and table are up to 1.2 % apart.
//
// Source: ESAB MIG handbook, page 7-10, read.
func DepositionRate(in DepositionRateInputs) (DepositionRateOutputs, error) {
	var c worked.Checks
	c.Positive("wire_feed", in.WireFeedMPerMin)
	if !in.WireMM.Known && !in.LengthPerKGMM.Known {
		c.Refuse("wire_dia", "or length_per_kg: give one of the two")
	}
	if in.WireMM.Known {
		c.Positive("wire_dia", in.WireMM.Value)
	}
	if in.LengthPerKGMM.Known {
		c.Positive("length_per_kg", in.LengthPerKGMM.Value)
	}
	c.Positive("density", in.DensityKGM3)
	c.Between("deposition_efficiency", in.Efficiency, 0.1, 1)
	if err := c.Err(); err != nil {
		return DepositionRateOutputs{}, err
	}
	out := DepositionRateOutputs{LengthPerKGMM: in.LengthPerKGMM.Value}
	if !in.LengthPerKGMM.Known {
		out.LengthPerKGMM = 4e9 / (in.DensityKGM3 * math.Pi * in.WireMM.Value * in.WireMM.Value)
	}
	out.MeltOffKG = 60000 * in.WireFeedMPerMin / out.LengthPerKGMM
	out.DepositKG = in.Efficiency * out.MeltOffKG
	return out, nil
}

// DepositionRateCalculation is the catalogue entry of DepositionRate.
func DepositionRateCalculation() worked.Calculation {
	fromTable := func(in DepositionRateInputs, _ DepositionRateOutputs) bool { return in.LengthPerKGMM.Known }
	fromWire := func(in DepositionRateInputs, _ DepositionRateOutputs) bool { return !in.LengthPerKGMM.Known }
	return worked.Define("deposition_rate", DepositionRate, worked.Page[DepositionRateInputs, DepositionRateOutputs]{
		Title:    "Weld metal in an hour of arc",
		Sources:  []string{"ESAB MIG handbook, page 7-10, read"},
		Validity: "solid wire",
		Formulas: []worked.Formula[DepositionRateInputs, DepositionRateOutputs]{
			{Symbol: "l", Is: "l_0", Source: "as given", When: fromTable},
			{Symbol: "l", Is: "4000000000 / (rho * pi * d^2)", Source: "plain geometry", When: fromWire},
			{Symbol: "r_0", Is: "60000 * v_w / l", Source: "MIG handbook, page 7-10"},
			{Symbol: "r", Is: "eta * r_0", Source: "definition of the efficiency"},
		},
		Example: map[string]string{"wire_feed": "300 in/min", "wire_dia": "0.045 in", "deposition_efficiency": "0.96"},
	})
}
