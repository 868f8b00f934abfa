package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// DuerenOutputs are the hardness and the steps to it.
type DuerenOutputs struct {
	CEB          float64 `name:"ceb_pct" symbol:"CEB" kind:"ratio" means:"equivalent for the part without martensite"`
	HVMartensite float64 `name:"hv_martensite" symbol:"H_M" kind:"hardness_vickers" means:"hardness of martensite alone, the cap"`
	HVSlow       float64 `name:"hv_slow" symbol:"H_B" kind:"hardness_vickers" means:"hardness after slow cooling, the floor"`
	HVX          float64 `name:"hv_x" symbol:"H_x" kind:"hardness_vickers" means:"hardness by the mixed formula, capped at martensite"`
	HVMax        float64 `name:"hv_max" symbol:"HV" kind:"hardness_vickers" means:"highest hardness beside the bead"`
}

// HAZHardnessDueren computes the highest hardness beside a bead by the formula
// of Lorenz and Dueren.
//
//	CEB = C + Si/11 + Mn/8 + Cu/9 + Cr/5 + Ni/17 + Mo/6 + V/3
//	H_M = 802 C + 305
//	H_B = 350 CEB + 101
//	H_x = min(H_M, 2019 [C (1 - 0.5 log10 t85) + 0.3 (CEB - C)] + 66 (1 - 0.8 log10 t85))
//	HV  = max(H_x, H_B)
//
// Elements in percent of mass [-], t85 the cooling time from 800 to 500 degC
// [s], hardness in HV10.
//
// Validity: the authors' range was not found; the calculation takes low-alloy
// steels with C to 0.45 % and serves for comparison, not for a decision.
//
// Error: on lean steels it lies up to 80 HV above Yurioka 1987.
//
// Source: Lorenz and Dueren (1981/82), constants from memory.
func HAZHardnessDueren(in CooledAnalysis) (DuerenOutputs, error) {
	var c worked.Checks
	in.check(&c)
	if in.C > 0.45 {
		c.Refuse("c_pct", "is %g, above 0.45, where the formula is not used here", in.C)
	}
	if err := c.Err(); err != nil {
		return DuerenOutputs{}, err
	}
	out := DuerenOutputs{
		CEB:          in.C + in.Si/11 + in.Mn/8 + in.Cu/9 + in.Cr/5 + in.Ni/17 + in.Mo/6 + in.V/3,
		HVMartensite: 802*in.C + 305,
	}
	out.HVSlow = 350*out.CEB + 101
	logT := math.Log10(in.T85S)
	out.HVX = min(out.HVMartensite, 2019*(in.C*(1-0.5*logT)+0.3*(out.CEB-in.C))+66*(1-0.8*logT))
	out.HVMax = max(out.HVX, out.HVSlow)
	return out, nil
}

// HAZHardnessDuerenCalculation is the catalogue entry of HAZHardnessDueren.
func HAZHardnessDuerenCalculation() worked.Calculation {
	const paper = "Lorenz and Dueren, from memory"
	return worked.Define("haz_hardness_dueren", HAZHardnessDueren, worked.Page[CooledAnalysis, DuerenOutputs]{
		Title:    "Hardness beside the bead, Lorenz and Dueren",
		Sources:  []string{"Lorenz and Dueren (1981/82), constants from memory"},
		Validity: "low-alloy steels with carbon to 0.45 %; the authors' own range was not found",
		Formulas: []worked.Formula[CooledAnalysis, DuerenOutputs]{
			{Symbol: "CEB", Is: "C + Si / 11 + Mn / 8 + Cu / 9 + Cr / 5 + Ni / 17 + Mo / 6 + V / 3", Source: paper},
			{Symbol: "H_M", Is: "802 * C + 305", Source: paper},
			{Symbol: "H_B", Is: "350 * CEB + 101", Source: paper},
			{Symbol: "H_x", Is: "min(H_M, 2019 * (C * (1 - 0.5 * log10(t85)) + 0.3 * (CEB - C)) + 66 * (1 - 0.8 * log10(t85)))", Source: paper},
			{Symbol: "HV", Is: "max(H_x, H_B)", Source: paper},
		},
		Warnings: func(CooledAnalysis, DuerenOutputs) []string { return []string{hardnessScatter} },
		Example:  map[string]string{"c_pct": "0.2", "mn_pct": "0.9", "si_pct": "0.25", "cu_pct": "0.2", "t85": "5.3 s"},
	})
}
