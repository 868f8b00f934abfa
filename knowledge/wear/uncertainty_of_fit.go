package wear

import (
	"math"

	"boremend/knowledge/worked"
)

// FitUncertaintyInputs are two measured diameters and how sure each is.
type FitUncertaintyInputs struct {
	BoreMM     float64 `name:"bore" symbol:"D" kind:"length" means:"bore as measured"`
	BoreU      float64 `name:"bore_expanded" symbol:"U_b" kind:"length" means:"its expanded uncertainty, coverage factor 2"`
	SleeveMM   float64 `name:"sleeve" symbol:"d" kind:"length" means:"outside of the sleeve as measured"`
	SleeveU    float64 `name:"sleeve_expanded" symbol:"U_s" kind:"length" means:"its expanded uncertainty, coverage factor 2"`
	LeastTimes float64 `name:"least_times" symbol:"m" kind:"ratio" default:"2" means:"uncertainties that an interference must reach to be trusted"`
}

// FitUncertaintyOutputs are the interference and how far it can be trusted.
type FitUncertaintyOutputs struct {
	InterferenceMM float64 `name:"interference" symbol:"delta" kind:"length" means:"sleeve less bore; negative is a gap"`
	ExpandedMM     float64 `name:"expanded" symbol:"U" kind:"length" means:"uncertainty of the interference, coverage factor 2"`
	LowMM          float64 `name:"low" symbol:"delta_1" kind:"length" means:"least interference that may be there"`
	HighMM         float64 `name:"high" symbol:"delta_2" kind:"length" means:"most interference that may be there"`
	LeastMM        float64 `name:"least_trusted" symbol:"delta_t" kind:"length" means:"least interference that these gauges can vouch for"`
	Verdict        string  `name:"verdict" choices:"press,do_not_press,gap" means:"whether the measurement vouches for a press fit: press, do_not_press, or gap when there is none"`
}

// FitUncertainty computes how sure the interference of two measured parts is.
//
//	delta   = d - D
//	U       = sqrt(U_b^2 + U_s^2)
//	delta_1 = delta - U, delta_2 = delta + U
//	delta_t = m U: below this do not press
//
// D is the bore and d the sleeve as measured, U_b and U_s their expanded
// uncertainties [mm], m how many of them an interference must reach.
//
// Bore first, let it cool, measure, and turn the sleeve to what was measured: then
// the tolerance of the bore drops out and only U is left. Measuring both with the
// same micrometer cancels its offset.
//
// Validity: the two measurements do not depend on one another; both parts at one
// temperature.
//
// Error: that of U_b and U_s, which are judged more often than proven.
//
// Source: GUM (JCGM 100), clause 5.1 (from memory); the factor 2 for a fit to be
// trusted is common practice, no source.
func FitUncertainty(in FitUncertaintyInputs) (FitUncertaintyOutputs, error) {
	var c worked.Checks
	c.Positive("bore", in.BoreMM)
	c.Positive("sleeve", in.SleeveMM)
	c.Positive("bore_expanded", in.BoreU)
	c.Positive("sleeve_expanded", in.SleeveU)
	c.Between("least_times", in.LeastTimes, 1, 10)
	if err := c.Err(); err != nil {
		return FitUncertaintyOutputs{}, err
	}
	out := FitUncertaintyOutputs{InterferenceMM: in.SleeveMM - in.BoreMM, ExpandedMM: math.Sqrt(in.BoreU*in.BoreU + in.SleeveU*in.SleeveU)}
	out.LowMM, out.HighMM = out.InterferenceMM-out.ExpandedMM, out.InterferenceMM+out.ExpandedMM
	out.LeastMM = in.LeastTimes * out.ExpandedMM
	switch {
	case out.InterferenceMM <= 0:
		out.Verdict = "gap"
	case out.InterferenceMM < out.LeastMM:
		out.Verdict = "do_not_press"
	default:
		out.Verdict = "press"
	}
	return out, nil
}

// FitUncertaintyCalculation is the catalogue entry of FitUncertainty.
func FitUncertaintyCalculation() worked.Calculation {
	const gum = "GUM (JCGM 100), 5.1"
	return worked.Define("uncertainty_of_fit", FitUncertainty, worked.Page[FitUncertaintyInputs, FitUncertaintyOutputs]{
		Title:    "How sure the interference of two measured parts is",
		Sources:  []string{"GUM (JCGM 100), clause 5.1 (from memory)", "twice the uncertainty to trust a fit: common practice, no source"},
		Validity: "both parts at one temperature, the two measurements independent",
		Formulas: []worked.Formula[FitUncertaintyInputs, FitUncertaintyOutputs]{
			{Symbol: "delta", Is: "d - D", Source: "definition"},
			{Symbol: "U", Is: "sqrt(U_b^2 + U_s^2)", Source: gum},
			{Symbol: "delta_1", Is: "delta - U", Source: gum},
			{Symbol: "delta_2", Is: "delta + U", Source: gum},
			{Symbol: "delta_t", Is: "m * U", Source: "common practice, no source"},
		},
		Warnings: func(_ FitUncertaintyInputs, out FitUncertaintyOutputs) []string {
			switch out.Verdict {
			case "gap":
				return []string{"There is no interference: as measured the sleeve is not larger than the bore."}
			case "do_not_press":
				return []string{"Do not press: the interference is below what these gauges can vouch for. Measure both parts better, with one micrometer, or make a tighter sleeve."}
			}
			return nil
		},
		Example: map[string]string{"bore": "100 mm", "bore_expanded": "18 um", "sleeve": "100.08 mm", "sleeve_expanded": "8 um"},
	})
}
