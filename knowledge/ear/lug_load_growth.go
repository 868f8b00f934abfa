package ear

import "boremend/knowledge/worked"

// LugLoadGrowthInputs are an ear and its bore before and after.
type LugLoadGrowthInputs struct {
	BoreBeforeMM float64 `name:"bore_dia_before" symbol:"d_1" kind:"length" means:"bore before"`
	BoreAfterMM  float64 `name:"bore_dia_after" symbol:"d_2" kind:"length" means:"bore after"`
	EndRadiusMM  float64 `name:"end_radius" symbol:"R" kind:"length" means:"bore centre to the free edge of the round end"`
}

// LugLoadGrowthOutputs are stress after over stress before.
type LugLoadGrowthOutputs struct {
	XBefore float64 `name:"wall_over_radius_before" symbol:"x_1" kind:"ratio" means:"wall over the radius of the bore, before"`
	XAfter  float64 `name:"wall_over_radius_after" symbol:"x_2" kind:"ratio" means:"wall over the radius of the bore, after"`
	Pull    float64 `name:"growth_pull" symbol:"g_pull" kind:"ratio" means:"stress after over before, pull"`
	Push    float64 `name:"growth_push" symbol:"g_push" kind:"ratio" means:"stress after over before, push"`
	Side    float64 `name:"growth_side" symbol:"g_side" kind:"ratio" means:"stress after over before, load across"`
}

// LugLoadGrowth computes by how much the peak stress at the bore grows when the
// bore is opened and ear and load stay.
//
//	x = (R - d/2)/(d/2), before and after
//	g = [K(x_2)/d_2] / [K(x_1)/d_1]
//
// K is the stress factor of LugLoad for a pull, a push or a load across; d the
// bore and R the end radius [mm].
//
// The load is taken to bear on the bare, opened bore. A sleeve gives back little
// of it unless the seat carries shear; do not count on that without a check.
//
// Validity: d_1 <= d_2, x from 0.25 to 1.5 before and after, else refused;
// centred bore.
//
// Error: within 2 % of finite elements for x from 0.35.
//
// Source: finite elements of this project, see LugLoad.
func LugLoadGrowth(in LugLoadGrowthInputs) (LugLoadGrowthOutputs, error) {
	var c worked.Checks
	c.Positive("bore_dia_before", in.BoreBeforeMM)
	c.Positive("bore_dia_after", in.BoreAfterMM)
	c.Positive("end_radius", in.EndRadiusMM)
	if in.BoreAfterMM < in.BoreBeforeMM {
		c.Refuse("bore_dia_after", "is %g mm, less than bore_dia_before, which is %g mm", in.BoreAfterMM, in.BoreBeforeMM)
	}
	if err := c.Err(); err != nil {
		return LugLoadGrowthOutputs{}, err
	}
	out := LugLoadGrowthOutputs{XBefore: 2*in.EndRadiusMM/in.BoreBeforeMM - 1, XAfter: 2*in.EndRadiusMM/in.BoreAfterMM - 1}
	checkX(&c, "bore_dia_before", out.XBefore)
	checkX(&c, "bore_dia_after", out.XAfter)
	if err := c.Err(); err != nil {
		return LugLoadGrowthOutputs{}, err
	}
	bores := in.BoreBeforeMM / in.BoreAfterMM
	out.Pull = pullCurve.at(out.XAfter) / pullCurve.at(out.XBefore) * bores
	out.Push = pushCurve.at(out.XAfter) / pushCurve.at(out.XBefore) * bores
	out.Side = sideCurve.at(out.XAfter) / sideCurve.at(out.XBefore) * bores
	return out, nil
}

// LugLoadGrowthCalculation is the catalogue entry of LugLoadGrowth.
func LugLoadGrowthCalculation() worked.Calculation {
	return worked.Define("lug_load_growth", LugLoadGrowth, worked.Page[LugLoadGrowthInputs, LugLoadGrowthOutputs]{
		Title:    "Growth of the peak stress when the bore is opened",
		Sources:  lugSources,
		Validity: "centred bore, R/r from 1.25 to 2.5 before and after, load on the bare bore",
		Formulas: []worked.Formula[LugLoadGrowthInputs, LugLoadGrowthOutputs]{
			{Symbol: "x_1", Is: "2 * R / d_1 - 1", Source: "plain geometry"},
			{Symbol: "x_2", Is: "2 * R / d_2 - 1", Source: "plain geometry"},
			{Symbol: "g_pull", Is: "(0.65 + 2.125 / x_2 + 0.359 / x_2^2) / (0.65 + 2.125 / x_1 + 0.359 / x_1^2) * d_1 / d_2", Source: finiteElements},
			{Symbol: "g_push", Is: "(0.322 + 0.816 / x_2 - 0.09 / x_2^2) * (1 + 0.45 * max(0, 0.35 - x_2)) / ((0.322 + 0.816 / x_1 - 0.09 / x_1^2) * (1 + 0.45 * max(0, 0.35 - x_1))) * d_1 / d_2", Source: finiteElements},
			{Symbol: "g_side", Is: "(0.603 + 3.403 / x_2 + 0.539 / x_2^2) * (1 + 0.45 * max(0, 0.35 - x_2)) / ((0.603 + 3.403 / x_1 + 0.539 / x_1^2) * (1 + 0.45 * max(0, 0.35 - x_1))) * d_1 / d_2", Source: finiteElements},
		},
		Warnings: func(LugLoadGrowthInputs, LugLoadGrowthOutputs) []string {
			return []string{notCovered, "A pressed sleeve gives little of this back unless its seat carries shear; its press-fit tension comes on top."}
		},
		Example: map[string]string{"bore_dia_before": "80 mm", "bore_dia_after": "92 mm", "end_radius": "72 mm"},
	})
}
