package fit

import "boremend/knowledge/worked"

// ISO286LimitsInputs are a nominal size and a tolerance zone.
type ISO286LimitsInputs struct {
	NominalMM float64 `name:"nominal" symbol:"d" kind:"length" means:"nominal size"`
	Zone      string  `name:"zone" means:"tolerance zone: H7, K7, s6 ... capital for a hole, small for a shaft"`
}

// ISO286LimitsOutputs are the limits of the zone.
type ISO286LimitsOutputs struct {
	ToleranceMM float64 `name:"tolerance" symbol:"IT" kind:"length" means:"width of the zone"`
	LowerMM     float64 `name:"lower" symbol:"e_l" kind:"length" means:"lower deviation from the nominal size"`
	UpperMM     float64 `name:"upper" symbol:"e_u" kind:"length" means:"upper deviation from the nominal size"`
	SmallestMM  float64 `name:"smallest" symbol:"d_1" kind:"length" means:"smallest size"`
	LargestMM   float64 `name:"largest" symbol:"d_2" kind:"length" means:"largest size"`
}

// ISO286Limits looks the limits of a tolerance zone of ISO 286 up.
//
//	e_l, e_u = table and rules by d and zone    IT = e_u - e_l
//	d_1 = d + e_l    d_2 = d + e_u
//
// d is the nominal size [mm]; e_l and e_u are the deviations, IT the tolerance.
//
// Holes D to H mirror the shafts; K, M, N to grade 8 and P to U to grade 7 get
// delta = IT(n) - IT(n-1) back; M6 over 250 to 315 mm is -9; N above grade 8 is 0.
//
// Traps: a row reaches up to and including its end: 30 mm is in 18 to 30, so H7
// is +21 and not +25. An ISO fit turned into inches is not the ANSI fit.
//
// Validity: above 0, up to 500 mm; letters d to h, js, k, m, n, p, r, s, t, u and
// their capitals; grades 5 to 12.
//
// Error: none, except that ISO 286:2010 itself was not seen.
//
// Source: Narayana, Kannaiah, Reddy, Machine Drawing, tables 15.1 to 15.4 (read),
// with Technical Corrigendum 1:2006 to ISO 286-2 (read).
func ISO286Limits(in ISO286LimitsInputs) (ISO286LimitsOutputs, error) {
	var c worked.Checks
	checkISOSize(&c, "nominal", in.NominalMM)
	zone := parseZone(&c, "zone", in.Zone)
	if err := c.Err(); err != nil {
		return ISO286LimitsOutputs{}, err
	}
	table, err := iso286()
	if err != nil {
		return ISO286LimitsOutputs{}, err
	}
	e := table.deviations(&c, "zone", in.NominalMM, zone)
	if err := c.Err(); err != nil {
		return ISO286LimitsOutputs{}, err
	}
	out := ISO286LimitsOutputs{LowerMM: e.lower / 1000, UpperMM: e.upper / 1000, ToleranceMM: e.tolerance / 1000}
	out.SmallestMM, out.LargestMM = in.NominalMM+out.LowerMM, in.NominalMM+out.UpperMM
	return out, nil
}

func checkISOSize(c *worked.Checks, input string, sizeMM float64) {
	c.Positive(input, sizeMM)
	if sizeMM > 500 {
		c.Refuse(input, "is %g, the tables end at 500 mm", sizeMM)
	}
}

const isoSource = "Narayana, Kannaiah, Reddy, Machine Drawing, tables 15.1 to 15.4 (read); ISO 286-2 Technical Corrigendum 1:2006 (read)"

// ISO286LimitsCalculation is the catalogue entry of ISO286Limits.
func ISO286LimitsCalculation() worked.Calculation {
	return worked.Define("iso286_limits", ISO286Limits, worked.Page[ISO286LimitsInputs, ISO286LimitsOutputs]{
		Title:    "Limits of size, ISO 286",
		Sources:  []string{isoSource},
		Validity: "sizes to 500 mm; letters d to h, js, k, m, n, p, r, s, t, u and their capitals; grades 5 to 12",
		Formulas: []worked.Formula[ISO286LimitsInputs, ISO286LimitsOutputs]{
			{Symbol: "IT", Table: "ISO 286 standard tolerances", Source: isoSource},
			{Symbol: "e_l", Table: "ISO 286 deviations", Source: isoSource},
			{Symbol: "e_u", Table: "ISO 286 deviations", Source: isoSource},
			{Symbol: "d_1", Is: "d + e_l", Source: "lower limit"},
			{Symbol: "d_2", Is: "d + e_u", Source: "upper limit"},
		},
		Example: map[string]string{"nominal": "110 mm", "zone": "s6"},
	})
}
