package fit

import "boremend/knowledge/worked"

// ISO286FitInputs are a nominal size and the zones of hole and shaft.
type ISO286FitInputs struct {
	NominalMM float64 `name:"nominal" symbol:"d" kind:"length" means:"nominal size"`
	Hole      string  `name:"hole" means:"zone of the bore, as H7"`
	Shaft     string  `name:"shaft" means:"zone of the sleeve OD or pin, as s6"`
}

// ISO286FitOutputs are the limits of both parts and of the fit.
type ISO286FitOutputs struct {
	HoleMinMM         float64 `name:"hole_min" symbol:"b_1" kind:"length" means:"smallest bore"`
	HoleMaxMM         float64 `name:"hole_max" symbol:"b_2" kind:"length" means:"largest bore"`
	ShaftMinMM        float64 `name:"shaft_min" symbol:"d_1" kind:"length" means:"smallest sleeve OD or pin"`
	ShaftMaxMM        float64 `name:"shaft_max" symbol:"d_2" kind:"length" means:"largest sleeve OD or pin"`
	InterferenceMaxMM float64 `name:"interference_max" symbol:"delta_2" kind:"length" means:"most interference; below 0 it is a gap"`
	InterferenceMinMM float64 `name:"interference_min" symbol:"delta_1" kind:"length" means:"least interference; below 0 it is a gap"`
}

// ISO286Fit looks both zones of an ISO 286 fit up and gives the interferences
// that can happen.
//
//	delta_2 = d_2 - b_1    delta_1 = d_1 - b_2
//
// d is the nominal size [mm]; b_1 and b_2 are the smallest and largest bore, d_1
// and d_2 the smallest and largest shaft.
//
// Validity: sizes up to 500 mm, grades 5 to 12.
//
// Error: none, except that ISO 286:2010 itself was not seen.
//
// Source: as ISO286Limits.
func ISO286Fit(in ISO286FitInputs) (ISO286FitOutputs, error) {
	var c worked.Checks
	checkISOSize(&c, "nominal", in.NominalMM)
	hole, shaft := parseZone(&c, "hole", in.Hole), parseZone(&c, "shaft", in.Shaft)
	if !hole.hole {
		c.Refuse("hole", "is %q, a hole has a capital letter", in.Hole)
	}
	if shaft.hole {
		c.Refuse("shaft", "is %q, a shaft has a small letter", in.Shaft)
	}
	if err := c.Err(); err != nil {
		return ISO286FitOutputs{}, err
	}
	table, err := iso286()
	if err != nil {
		return ISO286FitOutputs{}, err
	}
	h, s := table.deviations(&c, "hole", in.NominalMM, hole), table.deviations(&c, "shaft", in.NominalMM, shaft)
	if err := c.Err(); err != nil {
		return ISO286FitOutputs{}, err
	}
	out := ISO286FitOutputs{
		HoleMinMM: in.NominalMM + h.lower/1000, HoleMaxMM: in.NominalMM + h.upper/1000,
		ShaftMinMM: in.NominalMM + s.lower/1000, ShaftMaxMM: in.NominalMM + s.upper/1000,
		InterferenceMaxMM: (s.upper - h.lower) / 1000, InterferenceMinMM: (s.lower - h.upper) / 1000,
	}
	return out, nil
}

// ISO286FitCalculation is the catalogue entry of ISO286Fit.
func ISO286FitCalculation() worked.Calculation {
	return worked.Define("iso286_fit", ISO286Fit, worked.Page[ISO286FitInputs, ISO286FitOutputs]{
		Title:    "A fit of ISO 286",
		Sources:  []string{isoSource},
		Validity: "sizes to 500 mm; letters d to h, js, k, m, n, p, r, s, t, u and their capitals; grades 5 to 12",
		Formulas: []worked.Formula[ISO286FitInputs, ISO286FitOutputs]{
			{Symbol: "b_1", Table: "ISO 286, lower limit of the hole", Source: isoSource},
			{Symbol: "b_2", Table: "ISO 286, upper limit of the hole", Source: isoSource},
			{Symbol: "d_1", Table: "ISO 286, lower limit of the shaft", Source: isoSource},
			{Symbol: "d_2", Table: "ISO 286, upper limit of the shaft", Source: isoSource},
			{Symbol: "delta_2", Is: "d_2 - b_1", Source: "difference of sizes"},
			{Symbol: "delta_1", Is: "d_1 - b_2", Source: "difference of sizes"},
		},
		Example: map[string]string{"nominal": "110 mm", "hole": "H7", "shaft": "s6"},
	})
}
