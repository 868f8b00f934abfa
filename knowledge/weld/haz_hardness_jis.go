package weld

import "boremend/knowledge/worked"

// JISOutputs are the hardness and its band.
type JISOutputs struct {
	Ceq     float64 `name:"ceq_pct" symbol:"Ceq" kind:"ratio" means:"carbon equivalent of the Japanese standards"`
	HVMax   float64 `name:"hv_max" symbol:"HV" kind:"hardness_vickers" means:"highest hardness beside the standard bead"`
	HVLeast float64 `name:"hv_least" symbol:"HV_1" kind:"hardness_vickers" means:"lower end of the band"`
	HVMost  float64 `name:"hv_most" symbol:"HV_2" kind:"hardness_vickers" means:"upper end of the band"`
}

// HAZHardnessJIS computes the highest hardness beside the standard bead of the
// Japanese test: one bead on a 20 mm plate without preheat.
//
//	Ceq = C + Mn/6 + Si/24 + Ni/40 + Cr/5 + Mo/4 + V/14
//	HV  = 666 Ceq + 40, within 40 HV either way
//
// Elements in percent of mass [-].
//
// It knows neither wall nor preheat, so it ranks steels and does not judge a
// procedure.
//
// Validity: low-alloy steels with C to 0.45 %, the standard bead.
//
// Error: 40 HV either way.
//
// Source: JIS/WES, from memory.
func HAZHardnessJIS(in Analysis) (JISOutputs, error) {
	var c worked.Checks
	in.check(&c)
	if in.C > 0.45 {
		c.Refuse("c_pct", "is %g, above 0.45, where the formula is not used here", in.C)
	}
	if err := c.Err(); err != nil {
		return JISOutputs{}, err
	}
	out := JISOutputs{Ceq: in.C + in.Mn/6 + in.Si/24 + in.Ni/40 + in.Cr/5 + in.Mo/4 + in.V/14}
	out.HVMax = 666*out.Ceq + 40
	out.HVLeast, out.HVMost = out.HVMax-40, out.HVMax+40
	return out, nil
}

// HAZHardnessJISCalculation is the catalogue entry of HAZHardnessJIS.
func HAZHardnessJISCalculation() worked.Calculation {
	const standard = "JIS/WES, from memory"
	return worked.Define("haz_hardness_jis", HAZHardnessJIS, worked.Page[Analysis, JISOutputs]{
		Title:    "Hardness beside the standard bead, JIS",
		Sources:  []string{"JIS/WES, standard bead on 20 mm plate, from memory"},
		Validity: "low-alloy steels with carbon to 0.45 %; one bead on 20 mm plate, no preheat",
		Formulas: []worked.Formula[Analysis, JISOutputs]{
			{Symbol: "Ceq", Is: "C + Mn / 6 + Si / 24 + Ni / 40 + Cr / 5 + Mo / 4 + V / 14", Source: standard},
			{Symbol: "HV", Is: "666 * Ceq + 40", Source: standard},
			{Symbol: "HV_1", Is: "HV - 40", Source: standard},
			{Symbol: "HV_2", Is: "HV + 40", Source: standard},
		},
		Warnings: func(Analysis, JISOutputs) []string {
			return []string{"Neither the wall nor the preheat of the job enters this figure."}
		},
		Example: map[string]string{"c_pct": "0.24", "mn_pct": "0.85", "si_pct": "0.45"},
	})
}
