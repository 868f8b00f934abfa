package wear

import (
	"math"

	"boremend/knowledge/worked"
)

// UncertaintyInputs are the parts of a measuring uncertainty, each by what is
// known of it.
type UncertaintyInputs struct {
	Standard    worked.List `name:"standard" symbol:"u" kind:"length" optional:"yes" means:"parts known as a standard deviation, such as repeatability"`
	Rectangular worked.List `name:"rectangular_half" symbol:"a" kind:"length" optional:"yes" means:"parts known as limits that nothing within is likelier: half-widths"`
	Triangular  worked.List `name:"triangular_half" symbol:"t" kind:"length" optional:"yes" means:"parts known as limits with the middle likeliest: half-widths"`
	Coverage    float64     `name:"coverage_factor" symbol:"k" kind:"ratio" default:"2" means:"standard deviations in the expanded uncertainty; 2 covers about 95 %"`
}

// UncertaintyOutputs are the sum of all parts.
type UncertaintyOutputs struct {
	SumSquares float64 `name:"sum_of_squares" symbol:"q" kind:"area" means:"sum of the squared standard uncertainties"`
	CombinedMM float64 `name:"combined" symbol:"u_c" kind:"length" means:"standard uncertainty of the measurement"`
	ExpandedMM float64 `name:"expanded" symbol:"U" kind:"length" means:"expanded uncertainty: give or take this much"`
}

// UncertaintyRSS adds up the parts of a measuring uncertainty by the root of the
// sum of squares.
//
//	q   = sum u^2 + sum a^2/3 + sum t^2/6
//	u_c = sqrt(q)
//	U   = k u_c
//
// u are standard uncertainties, a half-widths of rectangular and t of triangular
// limits, all in mm and all of the same diameter; k the coverage factor [-].
//
// Validity: parts that do not depend on one another; an offset that is the same
// in both measurements of a fit cancels and belongs in neither.
//
// Error: that of the parts; a part that was forgotten is the commonest.
//
// Source: GUM (JCGM 100), clauses 4.3 and 5.1; NIST Technical Note 1297, table D.1
// comes back (read).
func UncertaintyRSS(in UncertaintyInputs) (UncertaintyOutputs, error) {
	var c worked.Checks
	const most = 1e4
	checkList(&c, "standard", in.Standard, 0, most)
	checkList(&c, "rectangular_half", in.Rectangular, 0, most)
	checkList(&c, "triangular_half", in.Triangular, 0, most)
	c.Between("coverage_factor", in.Coverage, 1, 4)
	if len(in.Standard)+len(in.Rectangular)+len(in.Triangular) == 0 {
		c.Refuse("standard", "rectangular_half or triangular_half: give at least one part")
	}
	if err := c.Err(); err != nil {
		return UncertaintyOutputs{}, err
	}
	out := UncertaintyOutputs{SumSquares: sumOfSquares(in.Standard) + sumOfSquares(in.Rectangular)/3 + sumOfSquares(in.Triangular)/6}
	out.CombinedMM = math.Sqrt(out.SumSquares)
	out.ExpandedMM = in.Coverage * out.CombinedMM
	return out, nil
}

func sumOfSquares(list worked.List) (sum float64) {
	for _, v := range list {
		sum += v * v
	}
	return sum
}

// UncertaintyRSSCalculation is the catalogue entry of UncertaintyRSS.
func UncertaintyRSSCalculation() worked.Calculation {
	const gum = "GUM (JCGM 100), 4.3 and 5.1"
	given := func(s, a, t bool) func(UncertaintyInputs, UncertaintyOutputs) bool {
		return func(in UncertaintyInputs, _ UncertaintyOutputs) bool {
			return (in.Standard != nil) == s && (in.Rectangular != nil) == a && (in.Triangular != nil) == t
		}
	}
	const s, a, t = "sum(u, #^2)", "sum(a, #^2) / 3", "sum(t, #^2) / 6"
	return worked.Define("uncertainty_rss", UncertaintyRSS, worked.Page[UncertaintyInputs, UncertaintyOutputs]{
		Title:    "Measuring uncertainty from its parts",
		Sources:  []string{"GUM (JCGM 100), clauses 4.3 and 5.1 (from memory)", "NIST Technical Note 1297, table D.1 (read)"},
		Validity: "parts that do not depend on one another",
		Formulas: []worked.Formula[UncertaintyInputs, UncertaintyOutputs]{
			{Symbol: "q", Is: s, Source: gum, When: given(true, false, false)},
			{Symbol: "q", Is: a, Source: gum, When: given(false, true, false)},
			{Symbol: "q", Is: t, Source: gum, When: given(false, false, true)},
			{Symbol: "q", Is: s + " + " + a, Source: gum, When: given(true, true, false)},
			{Symbol: "q", Is: s + " + " + t, Source: gum, When: given(true, false, true)},
			{Symbol: "q", Is: a + " + " + t, Source: gum, When: given(false, true, true)},
			{Symbol: "q", Is: s + " + " + a + " + " + t, Source: gum, When: given(true, true, true)},
			{Symbol: "u_c", Is: "sqrt(q)", Source: gum},
			{Symbol: "U", Is: "k * u_c", Source: gum},
		},
		Example: map[string]string{"standard": "5, 2 um", "rectangular_half": "10, 5, 5.8 um"},
	})
}
