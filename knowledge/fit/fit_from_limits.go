package fit

import "boremend/knowledge/worked"

// FitFromLimitsInputs are the limits of size of a sleeve and of its bore.
type FitFromLimitsInputs struct {
	SleeveODMaxMM float64 `name:"sleeve_od_max" symbol:"d_2" kind:"length" means:"largest sleeve OD"`
	SleeveODMinMM float64 `name:"sleeve_od_min" symbol:"d_1" kind:"length" means:"smallest sleeve OD"`
	BoreMaxMM     float64 `name:"bore_max" symbol:"b_2" kind:"length" means:"largest bore"`
	BoreMinMM     float64 `name:"bore_min" symbol:"b_1" kind:"length" means:"smallest bore"`
}

// FitFromLimitsOutputs are the interferences that can happen.
type FitFromLimitsOutputs struct {
	InterferenceMaxMM float64 `name:"interference_max" symbol:"delta_2" kind:"length" means:"most interference: for stress, closure and press force"`
	InterferenceMinMM float64 `name:"interference_min" symbol:"delta_1" kind:"length" means:"least interference: for holding; below 0 it is a gap"`
	MaxPerDiameter    float64 `name:"interference_max_per_diameter" symbol:"n_2" kind:"ratio" means:"most interference over the bore"`
	MinPerDiameter    float64 `name:"interference_min_per_diameter" symbol:"n_1" kind:"ratio" means:"least interference over the bore"`
}

// FitFromLimits computes the most and the least interference of limits of size.
//
//	delta_2 = d_2 - b_1    delta_1 = d_1 - b_2
//	n_2 = delta_2/b_1      n_1 = delta_1/b_1
//
// d_2 and d_1 are the largest and smallest sleeve OD, b_2 and b_1 the largest and
// smallest bore [mm].
//
// Validity: all four at one temperature.
//
// Error: that of the readings. In the field measure the bore first and make the
// sleeve to it: then only the sleeve has limits.
//
// Source: difference of sizes; checked with US Army TM 5-3810-294-34 table 1-4
// (read).
func FitFromLimits(in FitFromLimitsInputs) (FitFromLimitsOutputs, error) {
	var c worked.Checks
	c.Positive("sleeve_od_max", in.SleeveODMaxMM)
	c.Positive("sleeve_od_min", in.SleeveODMinMM)
	c.Positive("bore_max", in.BoreMaxMM)
	c.Positive("bore_min", in.BoreMinMM)
	if in.SleeveODMaxMM < in.SleeveODMinMM {
		c.Refuse("sleeve_od_max", "is %g, must not be below sleeve_od_min, which is %g", in.SleeveODMaxMM, in.SleeveODMinMM)
	}
	if in.BoreMaxMM < in.BoreMinMM {
		c.Refuse("bore_max", "is %g, must not be below bore_min, which is %g", in.BoreMaxMM, in.BoreMinMM)
	}
	if err := c.Err(); err != nil {
		return FitFromLimitsOutputs{}, err
	}
	out := FitFromLimitsOutputs{InterferenceMaxMM: in.SleeveODMaxMM - in.BoreMinMM, InterferenceMinMM: in.SleeveODMinMM - in.BoreMaxMM}
	out.MaxPerDiameter = out.InterferenceMaxMM / in.BoreMinMM
	out.MinPerDiameter = out.InterferenceMinMM / in.BoreMinMM
	return out, nil
}

// FitFromLimitsCalculation is the catalogue entry of FitFromLimits.
func FitFromLimitsCalculation() worked.Calculation {
	return worked.Define("fit_from_limits", FitFromLimits, worked.Page[FitFromLimitsInputs, FitFromLimitsOutputs]{
		Title:    "Interference from limits of size",
		Sources:  []string{"difference of sizes; US Army TM 5-3810-294-34 table 1-4 (read)"},
		Validity: "all sizes at one temperature",
		Formulas: []worked.Formula[FitFromLimitsInputs, FitFromLimitsOutputs]{
			{Symbol: "delta_2", Is: "d_2 - b_1", Source: "difference of sizes"},
			{Symbol: "delta_1", Is: "d_1 - b_2", Source: "difference of sizes"},
			{Symbol: "n_2", Is: "delta_2 / b_1", Source: "over the bore"},
			{Symbol: "n_1", Is: "delta_1 / b_1", Source: "over the bore"},
		},
		Warnings: func(_ FitFromLimitsInputs, out FitFromLimitsOutputs) []string {
			if out.InterferenceMinMM <= 0 {
				return []string{"At these limits a loose fit can happen."}
			}
			return nil
		},
		Example: map[string]string{"sleeve_od_max": "3.506 in", "sleeve_od_min": "3.504 in", "bore_max": "3.502 in", "bore_min": "3.500 in"},
	})
}
