package weld

import "boremend/knowledge/worked"

// GraphiteCarbonEquivalentInputs are the three elements that shift the eutectic.
type GraphiteCarbonEquivalentInputs struct {
	C      float64 `name:"c_pct" symbol:"C" kind:"ratio" means:"carbon, percent of mass"`
	Si     float64 `name:"si_pct" symbol:"Si" kind:"ratio" means:"silicon, percent of mass"`
	P      float64 `name:"p_pct" symbol:"P" kind:"ratio" default:"0" means:"phosphorus, percent of mass"`
	Weight float64 `name:"weight" symbol:"k" kind:"ratio" default:"0.3333333333333333" means:"weight of silicon and phosphorus: a third in the foundry, 0.3 in ASTM A476"`
}

// GraphiteCarbonEquivalentOutputs is the equivalent and what it says.
type GraphiteCarbonEquivalentOutputs struct {
	CE      float64 `name:"ce_graphite_pct" symbol:"CE_g" kind:"ratio" means:"carbon equivalent of a graphite iron"`
	Freezes string  `name:"freezes" choices:"below_eutectic,eutectic,above_eutectic" means:"where the iron stands to the eutectic at 4.3"`
}

// GraphiteCarbonEquivalent computes the carbon equivalent of a cast iron, which
// says how it freezes.
//
//	CE_g = C + k (Si + P)
//
// C, Si and P are contents in percent of mass [-]; k is a third in foundry
// practice and 0.3 in the wording of ASTM A476 (from memory).
//
// It is not the carbon equivalent of steels and says nothing of how an iron
// welds: every graphite iron carries carbon enough to harden beside a weld.
//
// Validity: irons with C 1.8-4.5, Si 0.3-6, P 0-2 %. The eutectic is at 4.3.
//
// Error: 0.05 from the usual analysis.
//
// Source: foundry practice; ASTM A476 window 3.8-4.5 read in a public table
// (rewon.com.my table 10-2).
func GraphiteCarbonEquivalent(in GraphiteCarbonEquivalentInputs) (GraphiteCarbonEquivalentOutputs, error) {
	var c worked.Checks
	c.Between("c_pct", in.C, 1.8, 4.5)
	c.Between("si_pct", in.Si, 0.3, 6)
	c.Between("p_pct", in.P, 0, 2)
	c.Between("weight", in.Weight, 0.3, 0.34)
	if err := c.Err(); err != nil {
		return GraphiteCarbonEquivalentOutputs{}, err
	}
	out := GraphiteCarbonEquivalentOutputs{CE: in.C + in.Weight*(in.Si+in.P), Freezes: "eutectic"}
	const eutectic, near = 4.3, 0.05
	switch {
	case out.CE > eutectic+near:
		out.Freezes = "above_eutectic"
	case out.CE < eutectic-near:
		out.Freezes = "below_eutectic"
	}
	return out, nil
}

// GraphiteCarbonEquivalentCalculation is the catalogue entry of GraphiteCarbonEquivalent.
func GraphiteCarbonEquivalentCalculation() worked.Calculation {
	return worked.Define("graphite_carbon_equivalent", GraphiteCarbonEquivalent, worked.Page[GraphiteCarbonEquivalentInputs, GraphiteCarbonEquivalentOutputs]{
		Title:    "Carbon equivalent of a graphite iron",
		Sources:  []string{"foundry practice; window 3.8-4.5 of ASTM A476 read in a public table (rewon.com.my table 10-2)"},
		Validity: "cast irons, C 1.8-4.5 %, Si 0.3-6 %",
		Formulas: []worked.Formula[GraphiteCarbonEquivalentInputs, GraphiteCarbonEquivalentOutputs]{
			{Symbol: "CE_g", Is: "C + k * (Si + P)", Source: "foundry practice"},
		},
		Warnings: func(GraphiteCarbonEquivalentInputs, GraphiteCarbonEquivalentOutputs) []string {
			return []string{"This figure says how the iron freezes, not how it welds."}
		},
		Example: map[string]string{"c_pct": "3.6", "si_pct": "2.55", "p_pct": "0.03"},
	})
}
