package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// BarSectionInputs are a round bar.
type BarSectionInputs struct {
	BarMM       float64 `name:"bar_diameter" symbol:"d" kind:"length" means:"diameter of the bar"`
	BarBoreMM   float64 `name:"bar_bore" symbol:"d_0" kind:"length" default:"0 mm" means:"bore of a hollow bar"`
	DensityKGM3 float64 `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the bar"`
}

// BarSectionOutputs are the figures of its section.
type BarSectionOutputs struct {
	AreaMM2        float64 `name:"area" symbol:"A" kind:"area" means:"cross-section"`
	SecondMomentMM float64 `name:"second_moment_mm4" symbol:"I" kind:"ratio" means:"second moment of area, in mm4"`
	ModulusMM3     float64 `name:"section_modulus" symbol:"W" kind:"volume" means:"section modulus"`
	MetreKG        float64 `name:"mass_per_metre" symbol:"m_1" kind:"mass" means:"mass of one metre"`
}

// BarSection computes the figures of a round bar's section.
//
//	A   = pi (d^2 - d_0^2) / 4
//	I   = pi (d^4 - d_0^4) / 64
//	W   = 2 I / d
//	m_1 = rho A / 10^6
//
// d is the bar, d_0 its bore [mm], rho its density [kg/m3]; I in mm4, m_1 the mass
// of a metre [kg]. Stiffness goes with d^4: 10 % more bar is 46 % stiffer. A bore
// of half the bar costs 6 % of the stiffness and a quarter of the weight.
//
// Validity: round section.
//
// Error: 4 % of I for 1 % of d; keyways and tool slots weaken the bar and are not
// in it.
//
// Source: geometry; E. Isakov, Cutting Tool Engineering, July 2019 (read).
func BarSection(in BarSectionInputs) (BarSectionOutputs, error) {
	var c worked.Checks
	checkBar(&c, in.BarMM, in.BarBoreMM)
	c.Between("density", in.DensityKGM3, 1000, 20000)
	if err := c.Err(); err != nil {
		return BarSectionOutputs{}, err
	}
	out := BarSectionOutputs{AreaMM2: barArea(in.BarMM, in.BarBoreMM), SecondMomentMM: secondMoment(in.BarMM, in.BarBoreMM)}
	out.ModulusMM3 = 2 * out.SecondMomentMM / in.BarMM
	out.MetreKG = in.DensityKGM3 * out.AreaMM2 / 1e6
	return out, nil
}

func barArea(outerMM, boreMM float64) float64 {
	return math.Pi * (outerMM*outerMM - boreMM*boreMM) / 4
}

// BarSectionCalculation is the catalogue entry of BarSection.
func BarSectionCalculation() worked.Calculation {
	const geometry = "geometry"
	return worked.Define("bar_section", BarSection, worked.Page[BarSectionInputs, BarSectionOutputs]{
		Title:    "Section of a boring bar",
		Sources:  []string{"geometry; E. Isakov, Cutting Tool Engineering, July 2019 (read)"},
		Validity: "round bar, solid or hollow",
		Formulas: []worked.Formula[BarSectionInputs, BarSectionOutputs]{
			{Symbol: "A", Is: "pi * (d^2 - d_0^2) / 4", Source: geometry},
			{Symbol: "I", Is: secondMomentF, Source: geometry},
			{Symbol: "W", Is: "2 * I / d", Source: geometry},
			{Symbol: "m_1", Is: "rho * A / 1000000", Source: geometry},
		},
		Example: map[string]string{"bar_diameter": "50 mm", "bar_bore": "20 mm"},
	})
}
