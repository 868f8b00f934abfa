package price

import (
	"math"

	"boremend/knowledge/worked"
)

// ThreePointInputs are three guesses at one figure, in any one unit.
type ThreePointInputs struct {
	Low    float64 `name:"low" symbol:"a" kind:"ratio" means:"least that a good day gives"`
	Likely float64 `name:"likely" symbol:"m" kind:"ratio" means:"usual"`
	High   float64 `name:"high" symbol:"b" kind:"ratio" means:"most that a bad day takes"`
}

// ThreePointOutputs are what to expect of such a figure.
type ThreePointOutputs struct {
	Expected     float64         `name:"expected" symbol:"mu" kind:"ratio" means:"mean"`
	SD           float64         `name:"standard_deviation" symbol:"sigma" kind:"ratio" means:"standard deviation, a sixth of the range"`
	Variance     float64         `name:"variance" symbol:"V" kind:"ratio" means:"variance"`
	Alpha        worked.Optional `name:"alpha" symbol:"alpha" kind:"ratio" means:"first shape of the beta distribution; none where low equals high"`
	Beta         worked.Optional `name:"beta" symbol:"beta" kind:"ratio" means:"second shape of the beta distribution"`
	BetaVariance float64         `name:"beta_variance" symbol:"V_b" kind:"ratio" means:"variance of that beta distribution"`
}

// ThreePoint computes mean and spread of a figure from three guesses at it.
//
//	mu    = (a + 4 m + b)/6
//	sigma = (b - a)/6,  V = sigma^2
//	alpha = 1 + 4 (m - a)/(b - a),  beta = 1 + 4 (b - m)/(b - a)
//	V_b   = (mu - a)(b - mu)/7
//
// a is the low, m the likely and b the high figure, in any one unit. The beta
// distribution with alpha and beta between a and b has exactly the mean mu; its
// variance V_b lies between 5/7 of V (m at one end) and 9/7 of V (m in the middle).
//
// Validity: a <= m <= b, zero or more.
//
// Error: that of the guesses. People set low and high too near together.
//
// Source: Malcolm, Roseboom, Clark and Fazar 1959, Application of a technique for
// research and development program evaluation, Operations Research 7(5), 646-669
// (from memory); V_b recomputed.
func ThreePoint(in ThreePointInputs) (ThreePointOutputs, error) {
	var c worked.Checks
	Estimate(in).check(&c)
	if err := c.Err(); err != nil {
		return ThreePointOutputs{}, err
	}
	e := Estimate(in)
	out := ThreePointOutputs{Expected: e.Mean(), SD: (e.High - e.Low) / 6, Variance: e.Variance(), BetaVariance: e.BetaVariance()}
	if alpha, beta, ok := e.shape(); ok {
		out.Alpha, out.Beta = worked.Some(alpha), worked.Some(beta)
	}
	return out, nil
}

// check asks for three figures in order that can be worked with.
func (e Estimate) check(c *worked.Checks) {
	c.NotNegative("low", e.Low)
	c.NotNegative("likely", e.Likely)
	c.NotNegative("high", e.High)
	if e.Low > e.Likely {
		c.Refuse("low", "is %g, more than likely, which is %g", e.Low, e.Likely)
	}
	if e.Likely > e.High {
		c.Refuse("likely", "is %g, more than high, which is %g", e.Likely, e.High)
	}
}

// Mean is the mean of a figure guessed so: four parts likely, one part each low
// and high.
func (e Estimate) Mean() float64 { return (e.Low + 4*e.Likely + e.High) / 6 }

// Variance is the variance that the method of three guesses gives the figure.
func (e Estimate) Variance() float64 {
	sd := (e.High - e.Low) / 6
	return sd * sd
}

// BetaVariance is the variance of the beta distribution from which the figure is
// drawn.
func (e Estimate) BetaVariance() float64 {
	mean := e.Mean()
	return math.Max(0, (mean-e.Low)*(e.High-mean)/7)
}

// shape returns the parameters of the beta distribution between low and high;
// false where these are one.
func (e Estimate) shape() (alpha, beta float64, ok bool) {
	width := e.High - e.Low
	if !(width > 0) {
		return 0, 0, false
	}
	return 1 + 4*(e.Likely-e.Low)/width, 1 + 4*(e.High-e.Likely)/width, true
}

// ThreePointCalculation is the catalogue entry of ThreePoint.
func ThreePointCalculation() worked.Calculation {
	const pert = "Malcolm et al. 1959 (from memory)"
	isSpread := func(_ ThreePointInputs, out ThreePointOutputs) bool { return out.Alpha.Known }
	return worked.Define("three_point", ThreePoint, worked.Page[ThreePointInputs, ThreePointOutputs]{
		Title:    "Mean and spread from three guesses",
		Sources:  []string{malcolm},
		Validity: "low <= likely <= high, zero or more",
		Formulas: []worked.Formula[ThreePointInputs, ThreePointOutputs]{
			{Symbol: "mu", Is: "(a + 4 * m + b) / 6", Source: pert},
			{Symbol: "sigma", Is: "(b - a) / 6", Source: pert},
			{Symbol: "V", Is: "sigma^2", Source: pert},
			{Symbol: "alpha", Is: "1 + 4 * (m - a) / (b - a)", Source: "beta distribution with that mean", When: isSpread},
			{Symbol: "beta", Is: "1 + 4 * (b - m) / (b - a)", Source: "beta distribution with that mean", When: isSpread},
			{Symbol: "V_b", Is: "(mu - a) * (b - mu) / 7", Source: "variance of a beta distribution, recomputed"},
		},
		Example: map[string]string{"low": "1", "likely": "3", "high": "8"},
	})
}

// malcolm is where the method of three guesses stands.
const malcolm = "D. G. Malcolm, J. H. Roseboom, C. E. Clark, W. Fazar, Application of a technique for research and development program evaluation, Operations Research 7(5), 1959, 646-669 (from memory)"
