package price

import (
	"math"

	"boremend/knowledge/worked"
)

// ThreePointSumInputs are three guesses at each of several figures that are added
// up: the hours of the items of a job, say, in any one unit.
type ThreePointSumInputs struct {
	Low    worked.List     `name:"low" symbol:"a" kind:"ratio" means:"low figure of each item"`
	Likely worked.List     `name:"likely" symbol:"m" kind:"ratio" means:"likely figure of each, in the same order"`
	High   worked.List     `name:"high" symbol:"b" kind:"ratio" means:"high figure of each, in the same order"`
	Limit  worked.Optional `name:"limit" symbol:"D" kind:"ratio" means:"what the sum should not pass, such as a deadline"`
}

// ThreePointSumOutputs are what to expect of the sum.
type ThreePointSumOutputs struct {
	Expected     float64         `name:"expected" symbol:"mu" kind:"ratio" means:"mean of the sum"`
	Variance     float64         `name:"variance" symbol:"V" kind:"ratio" means:"variance of the sum"`
	SD           float64         `name:"standard_deviation" symbol:"sigma" kind:"ratio" means:"standard deviation of the sum"`
	FourOfFive   float64         `name:"four_of_five" symbol:"P_80" kind:"ratio" means:"what the sum stays below in four of five cases, by the normal distribution"`
	Standardised worked.Optional `name:"standardised" symbol:"z" kind:"ratio" means:"standard deviations from the mean to the limit"`
	Probability  worked.Optional `name:"probability" symbol:"p" kind:"ratio" means:"share of cases in which the sum stays within the limit"`
}

// z80 is the value that a standard normal variable stays below in four of five
// cases.
const z80 = 0.8416212335729143

// ThreePointSum adds up figures of which each was guessed three times.
//
//	mu    = sum of (a + 4 m + b)/6
//	V     = sum of [(b - a)/6]^2,  sigma = sqrt(V)
//	P_80  = mu + 0.8416 sigma
//	z     = (D - mu)/sigma,  p = share of the standard normal distribution below z
//
// a, m and b are the low, likely and high figures of the items, D the limit, all in
// any one unit.
//
// Validity: items that do not depend on one another; a <= m <= b, zero or more.
//
// Error: the normal distribution is symmetric and sums of few items are not. Against
// beta distributions of the same guesses, drawn, P_80 lies within a fifth of sigma
// and mu within a quarter of the figure of half of all cases, however few the items.
// Where one cause moves several items at once the true spread is wider than V.
//
// Source: as ThreePoint.
func ThreePointSum(in ThreePointSumInputs) (ThreePointSumOutputs, error) {
	var c worked.Checks
	in.check(&c)
	if err := c.Err(); err != nil {
		return ThreePointSumOutputs{}, err
	}
	var out ThreePointSumOutputs
	for i := range in.Low {
		e := Estimate{in.Low[i], in.Likely[i], in.High[i]}
		out.Expected += e.Mean()
		out.Variance += e.Variance()
	}
	out.SD = math.Sqrt(out.Variance)
	out.FourOfFive = out.Expected + z80*out.SD
	if in.Limit.Known && out.SD > 0 {
		z := (in.Limit.Value - out.Expected) / out.SD
		out.Standardised, out.Probability = worked.Some(z), worked.Some(normalShare(z))
	}
	return out, nil
}

// normalShare is the share of a standard normal distribution below z.
func normalShare(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

func (in ThreePointSumInputs) check(c *worked.Checks) {
	const most = 1e9
	for _, list := range []struct {
		name string
		list worked.List
	}{{"low", in.Low}, {"likely", in.Likely}, {"high", in.High}} {
		if len(list.list) != len(in.Low) {
			c.Refuse(list.name, "has %d figures and low has %d: give one for each item", len(list.list), len(in.Low))
		}
		for _, v := range list.list {
			if !(v >= 0 && v <= most) {
				c.Refuse(list.name, "holds %g, every figure must be from 0 to %g", v, most)
				break
			}
		}
	}
	if in.Limit.Known {
		c.Between("limit", in.Limit.Value, 0, most)
	}
	if c.Err() != nil {
		return
	}
	for i := range in.Low {
		if in.Low[i] > in.Likely[i] || in.Likely[i] > in.High[i] {
			c.Refuse("likely", "of item %d is %g, must lie between its low %g and its high %g", i+1, in.Likely[i], in.Low[i], in.High[i])
		}
	}
}

// ThreePointSumCalculation is the catalogue entry of ThreePointSum.
func ThreePointSumCalculation() worked.Calculation {
	const pert = "Malcolm et al. 1959 (from memory)"
	isLimited := func(_ ThreePointSumInputs, out ThreePointSumOutputs) bool { return out.Probability.Known }
	return worked.Define("three_point_sum", ThreePointSum, worked.Page[ThreePointSumInputs, ThreePointSumOutputs]{
		Title:    "Sum of figures that were each guessed three times",
		Sources:  []string{malcolm},
		Validity: "items that do not depend on one another",
		Formulas: []worked.Formula[ThreePointSumInputs, ThreePointSumOutputs]{
			{Symbol: "mu", Is: "(sum(a) + 4 * sum(m) + sum(b)) / 6", Source: pert},
			{Symbol: "V", Is: "sum(0..(len(a) - 1), ((b[#] - a[#]) / 6)^2)", Source: pert},
			{Symbol: "sigma", Is: "sqrt(V)", Source: pert},
			{Symbol: "P_80", Is: "mu + 0.8416212335729143 * sigma", Source: "standard normal distribution"},
			{Symbol: "z", Is: "(D - mu) / sigma", Source: pert, When: isLimited},
			{Symbol: "p", Table: "standard normal distribution at z", When: isLimited},
		},
		Warnings: func(ThreePointSumInputs, ThreePointSumOutputs) []string {
			return []string{"Where one cause moves several items at once, such as a casting that is harder than thought, the true spread is wider."}
		},
		Example: map[string]string{"low": "1, 2, 0.5", "likely": "2, 3, 1", "high": "4, 6, 3", "limit": "8"},
	})
}
