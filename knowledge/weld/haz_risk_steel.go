package weld

import "boremend/knowledge/worked"

// HAZRiskSteelInputs are the steel, the wall and the procedure as planned.
type HAZRiskSteelInputs struct {
	Analysis
	ThicknessMM       float64 `name:"thickness" symbol:"d" kind:"length" means:"thinnest wall that the bead crosses"`
	PreheatC          float64 `name:"preheat" symbol:"T_1" kind:"temperature" means:"least preheat and interpass temperature planned"`
	HeatInput         float64 `name:"heat_input" symbol:"Q" kind:"heat_input" means:"heat input of a bead"`
	Hydrogen          float64 `name:"hydrogen" symbol:"HD" kind:"hydrogen" means:"diffusible hydrogen of the weld metal"`
	SiteMaxPreheatC   float64 `name:"site_max_preheat" symbol:"T_s" kind:"temperature" default:"250 degC" means:"highest preheat that can be held on site"`
	QuenchedTempered  string  `name:"quenched_tempered" choices:"yes,no" default:"no" means:"whether the plate is quenched and tempered"`
	AnalysisIsAssumed string  `name:"analysis_assumed" choices:"yes,no" default:"no" means:"whether the analysis is that of the class and not of the part"`
}

// HAZRiskSteelOutputs are the risk and what settles it.
type HAZRiskSteelOutputs struct {
	CET        float64 `name:"cet_pct" symbol:"CET" kind:"ratio" means:"carbon equivalent CET of the steel"`
	RequiredC  float64 `name:"required_preheat" symbol:"T_p" kind:"temperature" means:"preheat by method B"`
	PartC      float64 `name:"preheat_used" symbol:"T_0" kind:"temperature" means:"temperature of the part when the bead is laid"`
	ShortfallK float64 `name:"preheat_shortfall" symbol:"T_m" kind:"temperature_change" means:"preheat that the plan lacks"`
	ThickS     float64 `name:"t85_thick" symbol:"t_3" kind:"time" means:"cooling time if heat flows off in three dimensions"`
	ThinS      float64 `name:"t85_thin" symbol:"t_2" kind:"time" means:"cooling time if heat flows off in two dimensions"`
	T85S       float64 `name:"t85" symbol:"t85" kind:"time" means:"cooling time from 800 to 500 degC"`
	HVYurioka  float64 `name:"hv_yurioka87" symbol:"HV_1" kind:"hardness_vickers" means:"hardness by Yurioka 1987"`
	HVBL70S    float64 `name:"hv_bl70s" symbol:"HV_2" kind:"hardness_vickers" means:"hardness by BL70S"`
	HVDesign   float64 `name:"hv_design" symbol:"HV" kind:"hardness_vickers" means:"hardness to reckon with"`
	Risk       string  `name:"risk" choices:"low,medium,high,unweldable_field" means:"risk of a crack beside the weld, as planned"`
	Governs    string  `name:"governs" choices:"preheat_beyond_site,outside_formulas,softening,hardness,preheat_lacking,in_order" means:"what settles the risk"`
}

// HAZRiskSteel judges the risk of a crack beside a weld in steel, for the
// procedure as planned. The scheme is this project's own; its thresholds are
// anchored to published ones.
//
//	T_p        method B (PreheatCET) for the steel, d, HD and Q
//	T_0 = max(T_1, 20)
//	t85        CoolingTimeT85 at T_0, a bead on a wall
//	HV  = max(Yurioka 1987, BL70S)
//
// In this order:
//
//	T_p above T_s                                   -> unweldable_field
//	analysis outside the range of CET               -> high
//	quenched and tempered plate above 200 degC      -> high (it softens)
//	T_0 >= T_p and HV <= 350                        -> low
//	HV <= 450 and (T_0 >= T_p or T_p <= 150)        -> medium
//	else                                            -> high
//
// T_1 is the preheat planned, T_s what the site can hold [degC], d the wall [mm],
// HD the hydrogen [ml/100g], Q the heat input [kJ/mm], hardness in HV10.
//
// Validity: hydrogen 1-20 ml/100g and heat input 0.5-4.0 kJ/mm, else refused.
// A wall above 90 mm counts as 90 and one under 10 mm as 10 in the preheat, a CET
// under 0.20 as 0.20: each asks for more preheat, not less. A CET above 0.50 is
// computed all the same, because the answer can only be high or
// unweldable_field there.
//
// Error: hardness scatters by 56 HV; compare with 294 where nothing is tested.
//
// Source: own scheme. 350 HV against cold cracking: Japan Welding Engineering
// Society (2009), read; 450 HV: EN ISO 15614-1 group 3, from memory; 150 degC:
// judgement of what is easily reached.
func HAZRiskSteel(in HAZRiskSteelInputs) (HAZRiskSteelOutputs, error) {
	a := in.Analysis
	var c worked.Checks
	a.check(&c)
	c.Positive("thickness", in.ThicknessMM)
	c.Between("preheat", in.PreheatC, -50, 400)
	c.Between("heat_input", in.HeatInput, methodBLeastQ, methodBMostQ)
	c.Between("hydrogen", in.Hydrogen, methodBLeastHD, methodBMostHD)
	c.Between("site_max_preheat", in.SiteMaxPreheatC, warmPartC, 400)
	c.OneOf("quenched_tempered", in.QuenchedTempered, "yes", "no")
	c.OneOf("analysis_assumed", in.AnalysisIsAssumed, "yes", "no")
	if err := c.Err(); err != nil {
		return HAZRiskSteelOutputs{}, err
	}
	wall := min(max(in.ThicknessMM, methodBLeastWall), methodBMostWall)
	out := HAZRiskSteelOutputs{CET: a.cet(), PartC: max(in.PreheatC, warmPartC)}
	out.RequiredC = methodB(max(out.CET, methodBLeastCET), wall, in.Hydrogen, in.HeatInput).PreheatC
	out.ShortfallK = max(out.RequiredC-out.PartC, 0)
	out.ThickS = coolingThick(in.HeatInput, out.PartC)
	out.ThinS = coolingThin(in.HeatInput, out.PartC, in.ThicknessMM)
	out.T85S = max(out.ThickS, out.ThinS)
	if out.T85S > mostT85S {
		c.Refuse("thickness", "is %g mm: the bead would cool in %.3g s, longer than the %g s in which the formulas hold", in.ThicknessMM, out.T85S, float64(mostT85S))
		return HAZRiskSteelOutputs{}, c.Err()
	}
	out.HVYurioka = yurioka87(a, out.T85S).HVMax
	out.HVBL70S = bl70s(a, out.T85S).HVMax
	out.HVDesign = max(out.HVYurioka, out.HVBL70S)
	out.Risk, out.Governs = steelRisk(in, a, out)
	return out, nil
}

// steelRisk walks the scheme from the worst answer down.
func steelRisk(in HAZRiskSteelInputs, a Analysis, out HAZRiskSteelOutputs) (risk, governs string) {
	const coldCracking, ceiling, easilyReachedC = 350, 450, 150
	warm := out.PartC >= out.RequiredC
	switch {
	case out.RequiredC > in.SiteMaxPreheatC:
		return "unweldable_field", "preheat_beyond_site"
	case !insideMethodB(a, out.CET):
		return "high", "outside_formulas"
	case in.QuenchedTempered == "yes" && in.PreheatC > qtMostPreheatC:
		return "high", "softening"
	case warm && out.HVDesign <= coldCracking:
		return "low", "in_order"
	case out.HVDesign <= ceiling && warm:
		return "medium", "hardness"
	case out.HVDesign <= ceiling && out.RequiredC <= easilyReachedC:
		return "medium", "preheat_lacking"
	case out.HVDesign > ceiling:
		return "high", "hardness"
	}
	return "high", "preheat_lacking"
}

// insideMethodB reports whether the steel is one that method B and the hardness
// formulas were made for. What is leaner than their range is judged as its edge.
func insideMethodB(a Analysis, cet float64) bool {
	a.C = max(a.C, 0.05)
	a.Mn = max(a.Mn, 0.5)
	return cet <= methodBMostCET && a.insideCET()
}

// HAZRiskSteelCalculation is the catalogue entry of HAZRiskSteel.
func HAZRiskSteelCalculation() worked.Calculation {
	const annexC, annexD = "EN 1011-2:2001 annex C.3, from secondary pages", "EN 1011-2:2001 annex D, from secondary texts"
	return worked.Define("haz_risk_steel", HAZRiskSteel, worked.Page[HAZRiskSteelInputs, HAZRiskSteelOutputs]{
		Title: "Risk of a crack beside a weld in steel",
		Sources: []string{
			"own scheme; 350 HV read in Japan Welding Engineering Society (2009), 450 HV from EN ISO 15614-1 from memory",
			"preheat and cooling time: EN 1011-2:2001 annexes C and D, from secondary texts; hardness: Yurioka 1987 and BL70S, from memory",
		},
		Validity: "low-alloy steels, hydrogen 1-20 ml/100g, heat input 0.5-4.0 kJ/mm",
		Formulas: []worked.Formula[HAZRiskSteelInputs, HAZRiskSteelOutputs]{
			{Symbol: "CET", Is: "C + (Mn + Mo) / 10 + (Cr + Cu) / 20 + Ni / 40", Source: annexC},
			{Symbol: "T_p", Is: "697 * max(CET, 0.2) + 160 * tanh(min(max(d, 10), 90) / 35) + 62 * HD^0.35 + (53 * max(CET, 0.2) - 32) * Q - 328", Source: annexC},
			{Symbol: "T_0", Is: "max(T_1, 20)", Source: "common practice, no source"},
			{Symbol: "T_m", Is: "max(T_p - T_0, 0)", Source: "what the plan lacks"},
			{Symbol: "t_3", Is: "(6700 - 5 * T_0) * Q * (1 / (500 - T_0) - 1 / (800 - T_0))", Source: annexD},
			{Symbol: "t_2", Is: "(4300 - 4.3 * T_0) * 100000 * (Q / d)^2 * (1 / (500 - T_0)^2 - 1 / (800 - T_0)^2)", Source: annexD},
			{Symbol: "t85", Is: "max(t_2, t_3)", Source: annexD},
			{Symbol: "HV_1", Table: "haz_hardness_yurioka87 at this analysis and t85", Source: "Yurioka 1987, from memory"},
			{Symbol: "HV_2", Table: "haz_hardness_bl70s at this analysis and t85", Source: "Suzuki BL70S, from memory"},
			{Symbol: "HV", Is: "max(HV_1, HV_2)", Source: "the safer of both"},
		},
		Warnings: hazRiskSteelWarnings,
		Example: map[string]string{
			"c_pct": "0.2", "mn_pct": "0.9", "si_pct": "0.25", "cu_pct": "0.2",
			"thickness": "25 mm", "preheat": "100 degC", "heat_input": "1 kJ/mm", "hydrogen": "5 ml/100g",
		},
	})
}

func hazRiskSteelWarnings(in HAZRiskSteelInputs, out HAZRiskSteelOutputs) []string {
	says := []string{hardnessScatter + " 294 HV is the figure that keeps it below 350."}
	if out.ShortfallK > 0 {
		says = append(says, "The plan is too cold: hold required_preheat before the first bead and between all of them.")
	}
	if !insideMethodB(in.Analysis, out.CET) {
		says = append(says, "The steel lies outside the range of these formulas: the figures are no values to work to, and the risk is never less than high.")
	}
	if in.C > bl70sMostC {
		says = append(says, "Carbon lies beyond the steels of BL70S (0.33 %).")
	}
	if in.QuenchedTempered == "yes" {
		says = append(says, "Quenched and tempered plate has an upper limit too: preheat and interpass to the mill's table, as a rule not above 200 degC.")
	}
	if in.AnalysisIsAssumed == "yes" {
		says = append(says, "Assumed analysis: have drillings analysed before the procedure is settled.")
	}
	return says
}
