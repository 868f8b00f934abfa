package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// BarMinDiameterInputs are a length and the frequency wanted.
type BarMinDiameterInputs struct {
	Support     string          `name:"support" choices:"simply_supported,cantilever,fixed" default:"cantilever" means:"two bearings that let it tilt, held at one end, or held at both ends so that it cannot tilt"`
	OwnRoot     worked.Optional `name:"root_squared_own" symbol:"B_0" kind:"ratio" means:"square of the first root for a support of your own, or as a book rounds it"`
	LengthMM    float64         `name:"length" symbol:"L" kind:"length" means:"span, or overhang"`
	ModulusMPa  float64         `name:"modulus" symbol:"E" kind:"stress" default:"207 GPa" means:"modulus of elasticity of the bar"`
	DensityKGM3 float64         `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the bar"`
	FrequencyHz float64         `name:"frequency_hz" symbol:"f_1" kind:"ratio" means:"least first frequency, in Hz"`
}

// BarMinDiameterOutputs is the bar.
type BarMinDiameterOutputs struct {
	RootSquared float64 `name:"root_squared" symbol:"B" kind:"ratio" means:"square of the first root of the beam equation"`
	BarMM       float64 `name:"bar_diameter" symbol:"d" kind:"length" means:"smallest solid bar with this frequency"`
}

// BarMinDiameter computes the smallest solid bar with a first natural frequency.
//
//	d = 8 pi L^2 f_1 / (10^6 B) sqrt(rho / E)
//
// L is the length [mm], E the modulus [MPa], rho the density [kg/m3], f_1 the
// frequency [Hz], B that of BarFrequency, or B_0 where it is given: a support
// between two bearings and rigid ends has a B between 9.870 and 22.37.
//
// Validity: slender solid bar, rigid supports; the answer must be thinner than the
// bar is long.
//
// Error: that of BarFrequency.
//
// Source: BarFrequency, solved for the diameter.
func BarMinDiameter(in BarMinDiameterInputs) (BarMinDiameterOutputs, error) {
	var c worked.Checks
	c.OneOf("support", in.Support, "simply_supported", "cantilever", "fixed")
	c.Between("length", in.LengthMM, 1, 2e4)
	checkModulus(&c, in.ModulusMPa)
	c.Between("density", in.DensityKGM3, 1000, 20000)
	c.Between("frequency_hz", in.FrequencyHz, 0.1, 1e5)
	if in.OwnRoot.Known {
		c.Between("root_squared_own", in.OwnRoot.Value, 1, 100)
	}
	if err := c.Err(); err != nil {
		return BarMinDiameterOutputs{}, err
	}
	out := BarMinDiameterOutputs{RootSquared: rootSquared(in.Support)}
	if in.OwnRoot.Known {
		out.RootSquared = in.OwnRoot.Value
	}
	out.BarMM = 8 * math.Pi * in.LengthMM * in.LengthMM * in.FrequencyHz / (1e6 * out.RootSquared) * math.Sqrt(in.DensityKGM3/in.ModulusMPa)
	if !(out.BarMM <= in.LengthMM) {
		c.Refuse("frequency_hz", "needs a bar %.3g mm thick, more than its length: beam formulas no longer hold", out.BarMM)
		return BarMinDiameterOutputs{}, c.Err()
	}
	return out, nil
}

// BarMinDiameterCalculation is the catalogue entry of BarMinDiameter.
func BarMinDiameterCalculation() worked.Calculation {
	own := func(in BarMinDiameterInputs, _ BarMinDiameterOutputs) bool { return in.OwnRoot.Known }
	ofSupport := func(in BarMinDiameterInputs, _ BarMinDiameterOutputs) bool { return !in.OwnRoot.Known }
	return worked.Define("bar_min_diameter_for_frequency", BarMinDiameter, worked.Page[BarMinDiameterInputs, BarMinDiameterOutputs]{
		Title:    "Smallest bar for a natural frequency",
		Sources:  []string{"Euler-Bernoulli beam, as bar_frequency"},
		Validity: "slender solid bar, rigid supports",
		Formulas: []worked.Formula[BarMinDiameterInputs, BarMinDiameterOutputs]{
			{Symbol: "B", Is: "B_0", Source: "as given", When: own},
			{Symbol: "B", Table: rootTable, Source: "Euler-Bernoulli beam", When: ofSupport},
			{Symbol: "d", Is: "8 * pi * L^2 * f_1 / (1000000 * B) * sqrt(rho / E)", Source: "Euler-Bernoulli beam"},
		},
		Example: map[string]string{"length": "400 mm", "frequency_hz": "150"},
	})
}
