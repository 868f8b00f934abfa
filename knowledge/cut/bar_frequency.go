package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// BarFrequencyInputs are a bar and how it is held.
type BarFrequencyInputs struct {
	Support     string  `name:"support" choices:"simply_supported,cantilever,fixed" default:"simply_supported" means:"two bearings that let it tilt, held at one end, or held at both ends so that it cannot tilt"`
	BarMM       float64 `name:"bar_diameter" symbol:"d" kind:"length" means:"diameter of the bar"`
	BarBoreMM   float64 `name:"bar_bore" symbol:"d_0" kind:"length" default:"0 mm" means:"bore of a hollow bar"`
	LengthMM    float64 `name:"length" symbol:"L" kind:"length" means:"span, or overhang"`
	ModulusMPa  float64 `name:"modulus" symbol:"E" kind:"stress" default:"207 GPa" means:"modulus of elasticity of the bar"`
	DensityKGM3 float64 `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the bar"`
}

// BarFrequencyOutputs are the first frequency and what leads to it.
type BarFrequencyOutputs struct {
	RootSquared float64 `name:"root_squared" symbol:"B" kind:"ratio" means:"square of the first root of the beam equation"`
	FirstHz     float64 `name:"first_frequency_hz" symbol:"f_1" kind:"ratio" means:"first natural frequency, in Hz"`
}

// BarFrequency computes the first natural frequency of a bar.
//
//	f_1 = 10^6 B / (2 pi L^2) sqrt(E (d^2 + d_0^2) / (16 rho))
//	B   = 9.870 in two bearings, 3.516 held at one end, 22.37 held at both
//
// d is the bar, d_0 its bore, L the length [mm], E the modulus [MPa], rho the
// density [kg/m3], f_1 in Hz.
//
// Compare: a portable bar turns about once a second, its frequency is in the
// hundreds. It never comes near, so no choice of speed escapes chatter; stiffness
// does.
//
// Validity: slender uniform bar, rigid supports.
//
// Error: real supports lower it, by a third easily (judgement).
//
// Source: Euler-Bernoulli beam; root 1.8751 of the cantilever read in a strain-gauge
// maker's manual, 4.7300 from memory. A test finds the roots anew.
func BarFrequency(in BarFrequencyInputs) (BarFrequencyOutputs, error) {
	var c worked.Checks
	c.OneOf("support", in.Support, "simply_supported", "cantilever", "fixed")
	checkBar(&c, in.BarMM, in.BarBoreMM)
	checkSpan(&c, "length", in.LengthMM, in.BarMM)
	checkModulus(&c, in.ModulusMPa)
	c.Between("density", in.DensityKGM3, 1000, 20000)
	if err := c.Err(); err != nil {
		return BarFrequencyOutputs{}, err
	}
	out := BarFrequencyOutputs{RootSquared: rootSquared(in.Support)}
	out.FirstHz = firstFrequency(out.RootSquared, in.LengthMM, in.BarMM, in.BarBoreMM, in.ModulusMPa, in.DensityKGM3)
	return out, nil
}

func firstFrequency(rootSquared, lengthMM, outerMM, boreMM, modulusMPa, density float64) float64 {
	return 1e6 * rootSquared / (2 * math.Pi * lengthMM * lengthMM) * math.Sqrt(modulusMPa*(outerMM*outerMM+boreMM*boreMM)/(16*density))
}

// First roots of the beam equations cosh b cos b = -1 and cosh b cos b = 1.
const (
	cantileverRoot = 1.8751040687119611
	fixedRoot      = 4.7300407448627040
)

func rootSquared(support string) float64 {
	switch support {
	case "cantilever":
		return cantileverRoot * cantileverRoot
	case "fixed":
		return fixedRoot * fixedRoot
	}
	return math.Pi * math.Pi
}

const rootTable = "first roots of the beam equations: pi, 1.875104, 4.730041"

// BarFrequencyCalculation is the catalogue entry of BarFrequency.
func BarFrequencyCalculation() worked.Calculation {
	return worked.Define("bar_frequency", BarFrequency, worked.Page[BarFrequencyInputs, BarFrequencyOutputs]{
		Title:    "First natural frequency of a bar",
		Sources:  []string{"Euler-Bernoulli beam; root 1.8751 in a strain-gauge maker's manual (read), 4.7300 (from memory)"},
		Validity: "slender uniform bar, rigid supports",
		Formulas: []worked.Formula[BarFrequencyInputs, BarFrequencyOutputs]{
			{Symbol: "B", Table: rootTable, Source: "Euler-Bernoulli beam"},
			{Symbol: "f_1", Is: "1000000 * B / (2 * pi * L^2) * sqrt(E * (d^2 + d_0^2) / (16 * rho))", Source: "Euler-Bernoulli beam"},
		},
		Example: map[string]string{"bar_diameter": "50 mm", "length": "800 mm"},
	})
}
