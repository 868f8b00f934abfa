package cut

import "boremend/knowledge/worked"

// BarSagInputs are a bar lying in two bearings.
type BarSagInputs struct {
	BarMM       float64 `name:"bar_diameter" symbol:"d" kind:"length" means:"diameter of the bar"`
	BarBoreMM   float64 `name:"bar_bore" symbol:"d_0" kind:"length" default:"0 mm" means:"bore of a hollow bar"`
	SpanMM      float64 `name:"span" symbol:"L" kind:"length" means:"between the middles of the bearings"`
	ModulusMPa  float64 `name:"modulus" symbol:"E" kind:"stress" default:"207 GPa" means:"modulus of elasticity of the bar"`
	DensityKGM3 float64 `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the bar"`
}

// BarSagOutputs are the sag under the bar's own weight.
type BarSagOutputs struct {
	AreaMM2        float64 `name:"area" symbol:"A" kind:"area" means:"cross-section"`
	SecondMomentMM float64 `name:"second_moment_mm4" symbol:"I" kind:"ratio" means:"second moment of area, in mm4"`
	WeightN        float64 `name:"weight" symbol:"G" kind:"force" means:"weight of the bar between the bearings"`
	SagMM          float64 `name:"sag" symbol:"y" kind:"length" means:"sag in the middle, bearings that let the bar tilt"`
	FixedMM        float64 `name:"fixed_ends_sag" symbol:"y_f" kind:"length" means:"sag in the middle, ends that cannot tilt"`
}

// BarSag computes how far a bar sags under its own weight.
//
//	A   = pi (d^2 - d_0^2) / 4, I = pi (d^4 - d_0^4) / 64
//	G   = 9.80665 rho A L / 10^9
//	y   = 5 G L^3 / (384 E I)
//	y_f = G L^3 / (384 E I)
//
// d is the bar, d_0 its bore, L the span [mm], E the modulus [MPa], rho the density
// [kg/m3].
//
// The sag stays where it is in space while the bar turns: it does not average out
// but bows the axis that is bored. Put a bearing in the middle, which takes 15
// parts of 16 off. A stiffer diameter helps only with its square, for a thicker bar
// is heavier.
//
// Validity: level bar, small bends; a bar that stands upright does not sag.
//
// Error: 2 %; tool heads and drives add their own weight.
//
// Source: beam tables (from memory), integrated numerically in a test.
func BarSag(in BarSagInputs) (BarSagOutputs, error) {
	var c worked.Checks
	checkBar(&c, in.BarMM, in.BarBoreMM)
	checkSpan(&c, "span", in.SpanMM, in.BarMM)
	checkModulus(&c, in.ModulusMPa)
	c.Between("density", in.DensityKGM3, 1000, 20000)
	if err := c.Err(); err != nil {
		return BarSagOutputs{}, err
	}
	out := BarSagOutputs{AreaMM2: barArea(in.BarMM, in.BarBoreMM), SecondMomentMM: secondMoment(in.BarMM, in.BarBoreMM)}
	out.WeightN = gravityMS2 * in.DensityKGM3 * out.AreaMM2 * in.SpanMM / 1e9
	out.FixedMM = out.WeightN * cube(in.SpanMM) / (384 * in.ModulusMPa * out.SecondMomentMM)
	out.SagMM = 5 * out.FixedMM
	if !(out.SagMM <= in.SpanMM/20) {
		c.Refuse("span", "is so long that the bar sags %.3g mm: the formula holds for small bends", out.SagMM)
		return BarSagOutputs{}, c.Err()
	}
	return out, nil
}

// BarSagCalculation is the catalogue entry of BarSag.
func BarSagCalculation() worked.Calculation {
	return worked.Define("bar_sag", BarSag, worked.Page[BarSagInputs, BarSagOutputs]{
		Title:    "Sag of a bar under its own weight",
		Sources:  []string{beamTables, beamsChecked},
		Validity: "level bar, small bends",
		Formulas: []worked.Formula[BarSagInputs, BarSagOutputs]{
			{Symbol: "A", Is: "pi * (d^2 - d_0^2) / 4", Source: "geometry"},
			{Symbol: "I", Is: secondMomentF, Source: "geometry"},
			{Symbol: "G", Is: "9.80665 * rho * A * L / 1000000000", Source: "weight"},
			{Symbol: "y", Is: "5 * G * L^3 / (384 * E * I)", Source: beamTables},
			{Symbol: "y_f", Is: "G * L^3 / (384 * E * I)", Source: beamTables},
		},
		Warnings: func(BarSagInputs, BarSagOutputs) []string {
			return []string{"The sag does not turn with the bar: it bows the axis that is bored. A bearing in the middle cures it."}
		},
		Example: map[string]string{"bar_diameter": "50 mm", "span": "1500 mm"},
	})
}
