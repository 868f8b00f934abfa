package weld

import "boremend/knowledge/worked"

// HAZHardnessInputs are what is known of the ear and of the procedure.
type HAZHardnessInputs struct {
	Material         string  `name:"material" choices:"mild_steel,hsla_steel,qt_steel,cast_steel_weldable,cast_steel_alloy" means:"class of the steel"`
	CarbonEquivalent float64 `name:"carbon_equivalent" symbol:"CE" kind:"ratio" means:"carbon equivalent CE (IIW) from the analysis of this part"`
	WallMM           float64 `name:"wall_now" symbol:"d" kind:"length" means:"thinnest wall that the bead crosses"`
	HeatInput        float64 `name:"heat_input" symbol:"Q" kind:"heat_input" default:"1 kJ/mm" means:"heat input of a bead"`
	Hydrogen         float64 `name:"hydrogen" symbol:"HD" kind:"hydrogen" default:"5 ml/100g" means:"diffusible hydrogen of the weld metal"`
	SiteMaxPreheatC  float64 `name:"site_max_preheat" symbol:"T_s" kind:"temperature" default:"250 degC" means:"highest preheat that can be held on site"`
	AmbientC         float64 `name:"ambient_temp" symbol:"T_a" kind:"temperature" default:"20 degC" means:"temperature of the part before heating"`
}

// HAZHardnessTypicalInputs are the same without a carbon equivalent.
type HAZHardnessTypicalInputs struct {
	Material        string  `name:"material" choices:"mild_steel,hsla_steel,qt_steel,cast_steel_weldable,cast_steel_alloy" means:"class of the steel, its typical analysis assumed"`
	WallMM          float64 `name:"wall_now" symbol:"d" kind:"length" means:"thinnest wall that the bead crosses"`
	HeatInput       float64 `name:"heat_input" symbol:"Q" kind:"heat_input" default:"1 kJ/mm" means:"heat input of a bead"`
	Hydrogen        float64 `name:"hydrogen" symbol:"HD" kind:"hydrogen" default:"5 ml/100g" means:"diffusible hydrogen of the weld metal"`
	SiteMaxPreheatC float64 `name:"site_max_preheat" symbol:"T_s" kind:"temperature" default:"250 degC" means:"highest preheat that can be held on site"`
	AmbientC        float64 `name:"ambient_temp" symbol:"T_a" kind:"temperature" default:"20 degC" means:"temperature of the part before heating"`
}

// HAZHardnessOutputs are the hardness and the steps to it.
type HAZHardnessOutputs struct {
	C              float64         `name:"c_pct" symbol:"C" kind:"ratio" means:"carbon that the estimate assumes, percent of mass"`
	CEAssumed      float64         `name:"ce_iiw_pct" symbol:"CE_1" kind:"ratio" means:"carbon equivalent CE (IIW) that the estimate assumes"`
	CET            float64         `name:"cet_pct" symbol:"CET" kind:"ratio" means:"carbon equivalent CET that goes with it"`
	WallUsedMM     float64         `name:"wall_used" symbol:"d_1" kind:"length" means:"wall as the preheat formula takes it, at most 90 mm"`
	PreheatNeededC worked.Optional `name:"preheat_needed" symbol:"T_p" kind:"temperature" means:"preheat that method B asks for; below the part's own temperature it means none"`
	PreheatUsedC   float64         `name:"preheat_used" symbol:"T_0" kind:"temperature" means:"temperature of the part that the estimate assumes"`
	ShortfallK     float64         `name:"preheat_shortfall" symbol:"T_m" kind:"temperature_change" means:"preheat that the site cannot give"`
	ThickS         float64         `name:"t85_thick" symbol:"t_3" kind:"time" means:"cooling time if heat flows off in three dimensions"`
	ThinS          float64         `name:"t85_thin" symbol:"t_2" kind:"time" means:"cooling time if heat flows off in two dimensions"`
	T85S           float64         `name:"t85" symbol:"t85" kind:"time" means:"cooling time from 800 to 500 degC"`
	HVYurioka      float64         `name:"hv_yurioka87" symbol:"HV_1" kind:"hardness_vickers" means:"hardness by Yurioka 1987"`
	HVBL70S        float64         `name:"hv_bl70s" symbol:"HV_2" kind:"hardness_vickers" means:"hardness by BL70S"`
	Hardness       float64         `name:"hardness" symbol:"HV" kind:"hardness_vickers" means:"hardness beside the bead to reckon with"`
}

// HAZHardness estimates how hard the zone beside a bead gets in the wall of a
// bore, for a class of steel whose carbon equivalent is known.
//
//	analysis   the typical one of the class; C, Mn, Cr, Mo, V, Ni and Cu all
//	           multiplied by CE/CE_typical, so that their proportions stay and
//	           the carbon equivalent is that of the part
//	T_p        method B (PreheatCET) at that analysis and the wall, 90 mm at most
//	T_0 = max(min(T_p, T_s), T_a, 20)
//	t85        CoolingTimeT85 at T_0, a bead on a wall
//	HV  = max(Yurioka 1987, BL70S) at t85
//
// The hardness is judged at the preheat that the procedure would call for, as
// far as the site allows (T_s), and not at ambient temperature.
//
// CE is the carbon equivalent of the International Institute of Welding [-], d
// the wall [mm], Q the heat input [kJ/mm], HD the hydrogen [ml/100g],
// temperatures in degC, hardness in HV10.
//
// Validity: steels of the classes named. What is done at the edges:
//   - CET above 0.50: refused, since neither preheat nor hardness is known there.
//   - CET below 0.20, or wall under 10 mm: method B does not reach there, so no
//     preheat is assumed beyond the part's own warmth, which gives the harder
//     zone.
//   - Wall above 90 mm: taken as 90 in the preheat, less than 2 degC away.
//   - Carbon above 0.33 %: BL70S is then read beyond its steels. It can only
//     raise the answer, because the larger of both counts.
//   - Hydrogen 1-20 ml/100g and heat input 0.5-4.0 kJ/mm, else refused.
//
// Error: the scatter of such formulas is 56 HV (two standard deviations), the
// typical analysis adds its own. Carbon splits differently from the alloy
// elements between foundries: the same CE with more carbon is harder.
//
// Source: EN 1011-2:2001 annexes C and D from secondary texts; Yurioka 1987 and
// BL70S from memory; class analyses of package material.
func HAZHardness(in HAZHardnessInputs) (HAZHardnessOutputs, error) {
	var c worked.Checks
	c.Between("carbon_equivalent", in.CarbonEquivalent, 0.1, 1.2)
	typical, err := typicalOf(&c, in.Material)
	if err != nil {
		return HAZHardnessOutputs{}, err
	}
	p := procedure{in.WallMM, in.HeatInput, in.Hydrogen, in.SiteMaxPreheatC, in.AmbientC}
	p.check(&c)
	if err := c.Err(); err != nil {
		return HAZHardnessOutputs{}, err
	}
	return p.hardness(&c, typical.scaledTo(in.CarbonEquivalent), "carbon_equivalent")
}

// HAZHardnessTypical is HAZHardness for a part whose carbon equivalent is not
// known: the typical analysis of the class is assumed as it stands.
//
//	T_0 = max(min(T_p, T_s), T_a, 20), with T_p by method B at d, HD and Q
//	HV  = max(Yurioka 1987, BL70S) at the cooling time of T_0
//
// d is the wall [mm], Q the heat input [kJ/mm], HD the hydrogen [ml/100g], T_s what
// the site can hold and T_a the part's own temperature [degC], hardness in HV10.
//
// Validity: that of HAZHardness.
//
// Error: two foundries can deliver one grade in two risk classes, so the answer is
// an assumption until the part has been analysed; the scatter of HAZHardness comes
// on top.
//
// Source: that of HAZHardness; analyses of package material.
func HAZHardnessTypical(in HAZHardnessTypicalInputs) (HAZHardnessOutputs, error) {
	var c worked.Checks
	typical, err := typicalOf(&c, in.Material)
	if err != nil {
		return HAZHardnessOutputs{}, err
	}
	p := procedure{in.WallMM, in.HeatInput, in.Hydrogen, in.SiteMaxPreheatC, in.AmbientC}
	p.check(&c)
	if err := c.Err(); err != nil {
		return HAZHardnessOutputs{}, err
	}
	return p.hardness(&c, typical, "material")
}

// typicalOf looks the class up and refuses what is none of them.
func typicalOf(c *worked.Checks, class string) (Analysis, error) {
	all, err := typicalAnalyses()
	if err != nil {
		return Analysis{}, err
	}
	typical, ok := all.of(class)
	if !ok {
		c.Refuse("material", "is %q, must be one of %s: for other metals no hardness can be estimated", class, weldableClasses)
	}
	return typical, nil
}

// procedure is the welding of a bore as far as hardness depends on it.
type procedure struct{ wallMM, heatInput, hydrogen, siteMaxC, ambientC float64 }

func (p procedure) check(c *worked.Checks) {
	c.Positive("wall_now", p.wallMM)
	c.Between("heat_input", p.heatInput, methodBLeastQ, methodBMostQ)
	c.Between("hydrogen", p.hydrogen, methodBLeastHD, methodBMostHD)
	c.Between("site_max_preheat", p.siteMaxC, warmPartC, 400)
	c.Between("ambient_temp", p.ambientC, -40, 60)
}

// hardness carries the chain through for one analysis; blame names the input
// that settles it.
func (p procedure) hardness(c *worked.Checks, a Analysis, blame string) (HAZHardnessOutputs, error) {
	out := HAZHardnessOutputs{C: a.C, CEAssumed: a.ceIIW(), CET: a.cet(), WallUsedMM: min(p.wallMM, methodBMostWall)}
	if out.CET > methodBMostCET {
		c.Refuse(blame, "gives CET %.3g, above 0.50: beyond method B, no hardness is estimated for such a steel", out.CET)
		return HAZHardnessOutputs{}, c.Err()
	}
	out.PreheatUsedC = max(p.ambientC, warmPartC)
	if out.CET >= methodBLeastCET && out.WallUsedMM >= methodBLeastWall {
		needed := methodB(out.CET, out.WallUsedMM, p.hydrogen, p.heatInput).PreheatC
		out.PreheatNeededC = worked.Some(needed)
		out.PreheatUsedC = max(min(needed, p.siteMaxC), out.PreheatUsedC)
		out.ShortfallK = max(needed-out.PreheatUsedC, 0)
	}
	out.ThickS = coolingThick(p.heatInput, out.PreheatUsedC)
	out.ThinS = coolingThin(p.heatInput, out.PreheatUsedC, p.wallMM)
	out.T85S = max(out.ThickS, out.ThinS)
	if out.T85S > mostT85S {
		c.Refuse("wall_now", "is %g mm: the bead would cool in %.3g s, longer than the %g s in which the formulas hold; such a wall is burnt through", p.wallMM, out.T85S, float64(mostT85S))
		return HAZHardnessOutputs{}, c.Err()
	}
	out.HVYurioka = yurioka87(a, out.T85S).HVMax
	out.HVBL70S = bl70s(a, out.T85S).HVMax
	out.Hardness = max(out.HVYurioka, out.HVBL70S)
	return out, nil
}

// HAZHardnessCalculation is the catalogue entry of HAZHardness.
func HAZHardnessCalculation() worked.Calculation {
	page := worked.Page[HAZHardnessInputs, HAZHardnessOutputs]{
		Title:    "Hardness beside the bead in the wall of a bore",
		Sources:  hazHardnessSources,
		Validity: hazHardnessValidity,
		Warnings: func(in HAZHardnessInputs, out HAZHardnessOutputs) []string {
			return hazHardnessWarnings(in.WallMM, in.Material, out)
		},
		Formulas: hazHardnessFormulas[HAZHardnessInputs](),
		Example:  map[string]string{"material": "cast_steel_weldable", "carbon_equivalent": "0.41", "wall_now": "39 mm"},
	}
	return worked.Define("haz_hardness", HAZHardness, page)
}

// HAZHardnessTypicalCalculation is the catalogue entry of HAZHardnessTypical.
func HAZHardnessTypicalCalculation() worked.Calculation {
	page := worked.Page[HAZHardnessTypicalInputs, HAZHardnessOutputs]{
		Title:    "Hardness beside the bead, analysis of the class assumed",
		Sources:  hazHardnessSources,
		Validity: hazHardnessValidity,
		Warnings: func(in HAZHardnessTypicalInputs, out HAZHardnessOutputs) []string {
			return append(hazHardnessWarnings(in.WallMM, in.Material, out),
				"Assumed analysis: have drillings analysed before the procedure is settled.")
		},
		Formulas: hazHardnessFormulas[HAZHardnessTypicalInputs](),
		Example:  map[string]string{"material": "cast_steel_weldable", "wall_now": "39 mm"},
	}
	return worked.Define("haz_hardness_typical", HAZHardnessTypical, page)
}

const hazHardnessValidity = "steels with CET to 0.50, hydrogen 1-20 ml/100g, heat input 0.5-4.0 kJ/mm; under 10 mm of wall or CET 0.20 no preheat is assumed, above 90 mm the wall counts as 90"

var hazHardnessSources = []string{
	"preheat and cooling time: EN 1011-2:2001 annexes C and D, from secondary texts, standard not read",
	"hardness: Yurioka 1987 and BL70S, from memory; the larger counts",
	"analysis: typical of the class, scaled to the carbon equivalent where that is known",
}

// hazHardnessFormulas are the worked lines that both calculations share.
func hazHardnessFormulas[In any]() []worked.Formula[In, HAZHardnessOutputs] {
	const annexC, annexD = "EN 1011-2:2001 annex C.3, from secondary pages", "EN 1011-2:2001 annex D, from secondary texts"
	hasPreheat := func(_ In, out HAZHardnessOutputs) bool { return out.PreheatNeededC.Known }
	noPreheat := func(_ In, out HAZHardnessOutputs) bool { return !out.PreheatNeededC.Known }
	const table = "typical analysis of the class, scaled to CE where that is known"
	return []worked.Formula[In, HAZHardnessOutputs]{
		{Symbol: "C", Table: table, Source: "package material"},
		{Symbol: "CE_1", Table: table, Source: "carbon_equivalent"},
		{Symbol: "CET", Table: table, Source: "carbon_equivalent"},
		{Symbol: "d_1", Is: "min(d, 90)", Source: "range of method B"},
		{Symbol: "T_p", Is: "697 * CET + 160 * tanh(d_1 / 35) + 62 * HD^0.35 + (53 * CET - 32) * Q - 328", Source: annexC, When: hasPreheat},
		{Symbol: "T_0", Is: "max(min(T_p, T_s), T_a, 20)", Source: "what the site can hold", When: hasPreheat},
		{Symbol: "T_0", Is: "max(T_a, 20)", Source: "outside method B: no preheat assumed", When: noPreheat},
		{Symbol: "T_m", Is: "max(T_p - T_0, 0)", Source: "what is missing", When: hasPreheat},
		{Symbol: "t_3", Is: "(6700 - 5 * T_0) * Q * (1 / (500 - T_0) - 1 / (800 - T_0))", Source: annexD},
		{Symbol: "t_2", Is: "(4300 - 4.3 * T_0) * 100000 * (Q / d)^2 * (1 / (500 - T_0)^2 - 1 / (800 - T_0)^2)", Source: annexD},
		{Symbol: "t85", Is: "max(t_2, t_3)", Source: annexD},
		{Symbol: "HV_1", Table: "haz_hardness_yurioka87 at this analysis and t85", Source: "Yurioka 1987, from memory"},
		{Symbol: "HV_2", Table: "haz_hardness_bl70s at this analysis and t85", Source: "Suzuki BL70S, from memory"},
		{Symbol: "HV", Is: "max(HV_1, HV_2)", Source: "the safer of both"},
	}
}

// hazHardnessWarnings says what the figure rests on.
func hazHardnessWarnings(wallMM float64, class string, out HAZHardnessOutputs) []string {
	says := []string{hardnessScatter}
	if !out.PreheatNeededC.Known {
		says = append(says, "Method B does not reach this wall or steel: no preheat is assumed, which gives the harder zone.")
	}
	if wallMM > methodBMostWall {
		says = append(says, "The wall is taken as 90 mm in the preheat, which is less than 2 degC away.")
	}
	if out.ShortfallK > 0 {
		says = append(says, "The site cannot give the preheat that method B asks for: cracks can start whatever the hardness.")
	}
	if out.C > bl70sMostC {
		says = append(says, "Carbon lies beyond the steels of BL70S; its figure counts only where it is the higher one.")
	}
	if class == "qt_steel" && out.PreheatUsedC > qtMostPreheatC {
		says = append(says, "Quenched and tempered plate softens above 200 degC of preheat and interpass: keep the mill's limits.")
	}
	return says
}

// qtMostPreheatC is where quenched and tempered plate begins to suffer (400 degF, from memory).
const qtMostPreheatC = 200
