package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// WeldFillMassInputs are the bore before and after filling.
type WeldFillMassInputs struct {
	BoreBeforeMM float64 `name:"bore_before" symbol:"D_1" kind:"length" means:"bore before welding"`
	BoreAfterMM  float64 `name:"bore_after" symbol:"D_0" kind:"length" means:"bore as filled, less than the finish by the cut to come"`
	LengthMM     float64 `name:"length" symbol:"L" kind:"length" means:"length of the bore that is filled"`
	DensityKGM3  float64 `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the weld metal"`
}

// WeldFillMassOutputs are volume and mass.
type WeldFillMassOutputs struct {
	VolumeMM3 float64 `name:"volume" symbol:"V" kind:"volume" means:"weld metal by volume"`
	MassKG    float64 `name:"mass" symbol:"m" kind:"mass" means:"weld metal by mass"`
}

// WeldFillMass computes the weld metal that fills a round bore.
//
//	V = pi/4 (D_1^2 - D_0^2) L
//	m = rho V / 10^9
//
// D_1 is the bore before welding, D_0 the bore as filled, L its length [mm],
// rho the density [kg/m3], V in mm3, m in kg.
//
// Validity: D_0 < D_1. For an oval bore see BuildUp.
//
// Error: the least; spatter, overfill and the ends of the beads come on top.
//
// Source: plain geometry, recomputed.
func WeldFillMass(in WeldFillMassInputs) (WeldFillMassOutputs, error) {
	var c worked.Checks
	c.Positive("bore_before", in.BoreBeforeMM)
	c.Positive("bore_after", in.BoreAfterMM)
	c.Below("bore_after", in.BoreAfterMM, "bore_before", in.BoreBeforeMM)
	c.Positive("length", in.LengthMM)
	c.Positive("density", in.DensityKGM3)
	if err := c.Err(); err != nil {
		return WeldFillMassOutputs{}, err
	}
	v := math.Pi / 4 * (in.BoreBeforeMM*in.BoreBeforeMM - in.BoreAfterMM*in.BoreAfterMM) * in.LengthMM
	return WeldFillMassOutputs{VolumeMM3: v, MassKG: in.DensityKGM3 * v / 1e9}, nil
}

// WeldFillMassCalculation is the catalogue entry of WeldFillMass.
func WeldFillMassCalculation() worked.Calculation {
	return worked.Define("weld_fill_mass", WeldFillMass, worked.Page[WeldFillMassInputs, WeldFillMassOutputs]{
		Title:    "Weld metal that fills a bore",
		Sources:  []string{"plain geometry, recomputed"},
		Validity: "the bore as filled is smaller than before",
		Formulas: []worked.Formula[WeldFillMassInputs, WeldFillMassOutputs]{
			{Symbol: "V", Is: "pi / 4 * (D_1^2 - D_0^2) * L", Source: "plain geometry"},
			{Symbol: "m", Is: "rho * V / 1000000000", Source: "plain geometry"},
		},
		Example: map[string]string{"bore_before": "58 mm", "bore_after": "52 mm", "length": "70 mm"},
	})
}
