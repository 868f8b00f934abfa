package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// BL70SOutputs are the hardness and the steps to it.
type BL70SOutputs struct {
	Pcm     float64 `name:"pcm_pct" symbol:"Pcm" kind:"ratio" means:"cracking parameter of Ito and Bessyo"`
	Rise    float64 `name:"rise" symbol:"K" kind:"hardness_vickers" means:"from slow to fast cooling"`
	Slope   float64 `name:"slope" symbol:"a" kind:"ratio" means:"steepness of the change"`
	LogTime float64 `name:"log_time" symbol:"Y_5" kind:"ratio" means:"logarithm of the cooling time halfway"`
	HVSlow  float64 `name:"hv_slow" symbol:"H_inf" kind:"hardness_vickers" means:"hardness after slow cooling"`
	HVMax   float64 `name:"hv_max" symbol:"HV" kind:"hardness_vickers" means:"highest hardness beside the bead"`
}

// HAZHardnessBL70S computes the highest hardness beside a bead by Suzuki's
// S-curve BL70S.
//
//	HV    = H_inf + K / {1 + exp[a (log10 t85 - Y_5)]}
//	K     = 237 + 1633 C - 1157 Pcm
//	a     = (566 + 5532 C - 2880 Pcm) / K
//	Y_5   = -0.03 - 6.00 C + 7.77 Pcm
//	H_inf = 884 C + 287 - K
//
// Pcm as in CarbonEquivalent; elements in percent of mass [-], t85 the cooling
// time from 800 to 500 degC [s], hardness in HV10.
//
// Validity: fitted on steels of 490 to 980 MPa strength with C 0.017-0.33 %
// (read); the calculation refuses beyond, and where K or a would not be above
// zero.
//
// Error: scatter as for every such formula, see HAZHardnessYurioka87.
//
// Source: H. Suzuki, BL70S, IIW document IX-1351-85; form read in an abstract
// (CiNii), constants from memory.
func HAZHardnessBL70S(in CooledAnalysis) (BL70SOutputs, error) {
	var c worked.Checks
	in.check(&c)
	if c.Err() == nil {
		c.Between("c_pct", in.C, bl70sLeastC, bl70sMostC)
	}
	if err := c.Err(); err != nil {
		return BL70SOutputs{}, err
	}
	out := bl70s(in.Analysis, in.T85S)
	if !(out.Rise > 0 && out.Slope > 0) {
		c.Refuse("c_pct", "and the other elements give K = %.3g HV and a = %.3g, which must both be above zero: outside the steels of the fit", out.Rise, out.Slope)
		return BL70SOutputs{}, c.Err()
	}
	return out, nil
}

// Carbon of the steels behind the fit.
const bl70sLeastC, bl70sMostC = 0.017, 0.33

// bl70s works the formula on inputs already checked.
func bl70s(a Analysis, t85 float64) BL70SOutputs {
	out := BL70SOutputs{Pcm: a.pcm()}
	out.Rise = 237 + 1633*a.C - 1157*out.Pcm
	out.Slope = (566 + 5532*a.C - 2880*out.Pcm) / out.Rise
	out.LogTime = -0.03 - 6.00*a.C + 7.77*out.Pcm
	out.HVSlow = 884*a.C + 287 - out.Rise
	out.HVMax = out.HVSlow + out.Rise/(1+math.Exp(out.Slope*(math.Log10(t85)-out.LogTime)))
	return out
}

// HAZHardnessBL70SCalculation is the catalogue entry of HAZHardnessBL70S.
func HAZHardnessBL70SCalculation() worked.Calculation {
	const paper = "Suzuki BL70S, from memory"
	return worked.Define("haz_hardness_bl70s", HAZHardnessBL70S, worked.Page[CooledAnalysis, BL70SOutputs]{
		Title:    "Hardness beside the bead, BL70S",
		Sources:  []string{"H. Suzuki, BL70S, IIW document IX-1351-85: form and range read in an abstract (CiNii), constants from memory"},
		Validity: "carbon 0.017-0.33 %, steels of 490 to 980 MPa strength",
		Formulas: []worked.Formula[CooledAnalysis, BL70SOutputs]{
			{Symbol: "Pcm", Is: "C + Si / 30 + (Mn + Cu + Cr) / 20 + Ni / 60 + Mo / 15 + V / 10 + 5 * B", Source: "Ito and Bessyo"},
			{Symbol: "K", Is: "237 + 1633 * C - 1157 * Pcm", Source: paper},
			{Symbol: "a", Is: "(566 + 5532 * C - 2880 * Pcm) / K", Source: paper},
			{Symbol: "Y_5", Is: "-0.03 - 6 * C + 7.77 * Pcm", Source: paper},
			{Symbol: "H_inf", Is: "884 * C + 287 - K", Source: paper},
			{Symbol: "HV", Is: "H_inf + K / (1 + exp(a * (log10(t85) - Y_5)))", Source: paper},
		},
		Warnings: func(CooledAnalysis, BL70SOutputs) []string { return []string{hardnessScatter} },
		Example:  map[string]string{"c_pct": "0.2", "mn_pct": "0.9", "si_pct": "0.25", "cu_pct": "0.2", "t85": "5.3 s"},
	})
}
