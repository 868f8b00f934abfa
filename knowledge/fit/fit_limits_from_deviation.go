package fit

import "boremend/knowledge/worked"

// DeviationInputs are a basic-hole fit given by tolerances and a deviation.
type DeviationInputs struct {
	NominalMM   float64 `name:"nominal" symbol:"d" kind:"length" means:"nominal size, the smallest hole"`
	HoleITMM    float64 `name:"hole_it" symbol:"IT_b" kind:"length" means:"tolerance of the hole"`
	ShaftITMM   float64 `name:"shaft_it" symbol:"IT_s" kind:"length" means:"tolerance of the shaft"`
	DeviationMM float64 `name:"shaft_fundamental_deviation" symbol:"e" kind:"length" means:"fundamental deviation of the shaft, with its sign"`
	DeviationIs string  `name:"deviation_is" choices:"lower,upper" means:"which limit of the shaft it is: lower for k and tighter, upper for h and looser"`
}

// DeviationOutputs are the limits of hole and shaft.
type DeviationOutputs struct {
	HoleMaxMM         float64 `name:"hole_max" symbol:"b_2" kind:"length" means:"largest hole"`
	HoleMinMM         float64 `name:"hole_min" symbol:"b_1" kind:"length" means:"smallest hole"`
	ShaftMaxMM        float64 `name:"shaft_max" symbol:"d_2" kind:"length" means:"largest shaft"`
	ShaftMinMM        float64 `name:"shaft_min" symbol:"d_1" kind:"length" means:"smallest shaft"`
	InterferenceMaxMM float64 `name:"interference_max" symbol:"delta_2" kind:"length" means:"most interference; below 0 it is a gap"`
	InterferenceMinMM float64 `name:"interference_min" symbol:"delta_1" kind:"length" means:"least interference; below 0 it is a gap"`
}

// LimitsFromDeviation computes the limits of a basic-hole fit from tolerances and
// the fundamental deviation of the shaft.
//
//	b_1 = d            b_2 = d + IT_b
//	e lower: d_1 = d + e,  d_2 = d_1 + IT_s
//	e upper: d_2 = d + e,  d_1 = d_2 - IT_s
//	delta_2 = d_2 - b_1    delta_1 = d_1 - b_2
//
// d is the nominal size, IT_b and IT_s the tolerances of hole and shaft, e the
// deviation with its sign [mm].
//
// Traps: H7/s6 turned into inches at 2 in (2.0017 to 2.0023) is not the ANSI fit
// FN2 (2.0020 to 2.0027). Do not mix the two.
//
// Validity: basic-hole fits.
//
// Error: inch tables are rounded to a tenth of a thousandth.
//
// Source: Shigley 9th ed., section 7-8 and Example 7-8 p. 398 (read).
func LimitsFromDeviation(in DeviationInputs) (DeviationOutputs, error) {
	var c worked.Checks
	c.Positive("nominal", in.NominalMM)
	c.Positive("hole_it", in.HoleITMM)
	c.Positive("shaft_it", in.ShaftITMM)
	c.Between("shaft_fundamental_deviation", in.DeviationMM, -in.NominalMM/10, in.NominalMM/10)
	c.OneOf("deviation_is", in.DeviationIs, "lower", "upper")
	if err := c.Err(); err != nil {
		return DeviationOutputs{}, err
	}
	out := DeviationOutputs{HoleMinMM: in.NominalMM, HoleMaxMM: in.NominalMM + in.HoleITMM}
	if in.DeviationIs == "lower" {
		out.ShaftMinMM = in.NominalMM + in.DeviationMM
		out.ShaftMaxMM = out.ShaftMinMM + in.ShaftITMM
	} else {
		out.ShaftMaxMM = in.NominalMM + in.DeviationMM
		out.ShaftMinMM = out.ShaftMaxMM - in.ShaftITMM
	}
	out.InterferenceMaxMM = out.ShaftMaxMM - out.HoleMinMM
	out.InterferenceMinMM = out.ShaftMinMM - out.HoleMaxMM
	return out, nil
}

// LimitsFromDeviationCalculation is the catalogue entry of LimitsFromDeviation.
func LimitsFromDeviationCalculation() worked.Calculation {
	is := func(word string) func(DeviationInputs, DeviationOutputs) bool {
		return func(in DeviationInputs, _ DeviationOutputs) bool { return in.DeviationIs == word }
	}
	const source = "Shigley 9th ed., section 7-8 (read)"
	return worked.Define("fit_limits_from_deviation", LimitsFromDeviation, worked.Page[DeviationInputs, DeviationOutputs]{
		Title:    "Limits of size from tolerances and a deviation",
		Sources:  []string{"Budynas and Nisbett, Shigley's Mechanical Engineering Design, 9th ed., section 7-8, Example 7-8 p. 398 (read)"},
		Validity: "basic-hole fits",
		Formulas: []worked.Formula[DeviationInputs, DeviationOutputs]{
			{Symbol: "b_1", Is: "d", Source: source},
			{Symbol: "b_2", Is: "d + IT_b", Source: source},
			{Symbol: "d_1", Is: "d + e", Source: source, When: is("lower")},
			{Symbol: "d_2", Is: "d_1 + IT_s", Source: source, When: is("lower")},
			{Symbol: "d_2", Is: "d + e", Source: source, When: is("upper")},
			{Symbol: "d_1", Is: "d_2 - IT_s", Source: source, When: is("upper")},
			{Symbol: "delta_2", Is: "d_2 - b_1", Source: "difference of sizes"},
			{Symbol: "delta_1", Is: "d_1 - b_2", Source: "difference of sizes"},
		},
		Example: map[string]string{
			"nominal": "2 in", "hole_it": "0.001 in", "shaft_it": "0.0006 in", "shaft_fundamental_deviation": "0.0017 in", "deviation_is": "lower",
		},
	})
}
