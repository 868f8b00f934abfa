package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// LugObliqueInputs are the load in its two parts and what the lug bears of each.
type LugObliqueInputs struct {
	AxialN          float64 `name:"axial_load" symbol:"F_a" kind:"force" means:"part of the load along the lug"`
	TransverseN     float64 `name:"transverse_load" symbol:"F_t" kind:"force" means:"part of the load across the lug"`
	AxialMostN      float64 `name:"axial_allowable" symbol:"P_a" kind:"force" means:"ultimate load along the lug"`
	TransverseMostN float64 `name:"transverse_allowable" symbol:"P_t" kind:"force" means:"ultimate load across the lug"`
	FittingFactor   float64 `name:"fitting_factor" symbol:"f" kind:"ratio" default:"1.15" means:"extra factor for fittings"`
	ThicknessShare  float64 `name:"effective_thickness_ratio" symbol:"k" kind:"ratio" default:"1" means:"share of the thickness that counts under a bending pin"`
}

// LugObliqueOutputs are the shares and the margin.
type LugObliqueOutputs struct {
	AngleDeg    float64 `name:"angle" symbol:"theta" kind:"angle" means:"direction of the load from the axis"`
	RAxial      float64 `name:"r_axial" symbol:"R_a" kind:"ratio" means:"share of the axial strength used"`
	RTransverse float64 `name:"r_transverse" symbol:"R_t" kind:"ratio" means:"share of the transverse strength used"`
	Margin      float64 `name:"margin" symbol:"M" kind:"ratio" means:"margin of safety"`
}

// LugOblique computes the margin of a lug under a load at an angle.
//
//	R_a   = f F_a/(k P_a),  R_t = f F_t/(k P_t)
//	M     = (R_a^1.6 + R_t^1.6)^-0.625 - 1
//	theta = the angle whose tangent is F_t/F_a
//
// F_a and F_t are the parts of the load, P_a and P_t the ultimate loads of
// LugAllowables [N], f the fitting factor and k the share of the thickness that
// counts [-].
//
// A pin that bends loads a thick lug at its faces only: one report's margin fell
// from 0.58 to 0.16 through k.
//
// Validity: at least one part of the load above zero; f 1-3, k 0.05-1.
//
// Error: as LugAllowables.
//
// Source: AFFDL-TR-69-42 chapter 9 and NASA TM X-73305 by a public educational
// stress report, read; manuals not read.
func LugOblique(in LugObliqueInputs) (LugObliqueOutputs, error) {
	var c worked.Checks
	c.NotNegative("axial_load", in.AxialN)
	c.NotNegative("transverse_load", in.TransverseN)
	if in.AxialN == 0 && in.TransverseN == 0 {
		c.Refuse("axial_load", "and transverse_load are both zero: there is no load to judge")
	}
	c.Positive("axial_allowable", in.AxialMostN)
	c.Positive("transverse_allowable", in.TransverseMostN)
	c.Between("fitting_factor", in.FittingFactor, 1, 3)
	c.Between("effective_thickness_ratio", in.ThicknessShare, 0.05, 1)
	if err := c.Err(); err != nil {
		return LugObliqueOutputs{}, err
	}
	out := LugObliqueOutputs{
		AngleDeg:    math.Atan2(in.TransverseN, in.AxialN) * 180 / math.Pi,
		RAxial:      in.FittingFactor * in.AxialN / (in.ThicknessShare * in.AxialMostN),
		RTransverse: in.FittingFactor * in.TransverseN / (in.ThicknessShare * in.TransverseMostN),
	}
	out.Margin = math.Pow(math.Pow(out.RAxial, 1.6)+math.Pow(out.RTransverse, 1.6), -0.625) - 1
	return out, nil
}

// LugObliqueCalculation is the catalogue entry of LugOblique.
func LugObliqueCalculation() worked.Calculation {
	const method = "Melcon and Hoblit, AFFDL-TR-69-42 chapter 9"
	hasAxial := func(in LugObliqueInputs, _ LugObliqueOutputs) bool { return in.AxialN > 0 }
	noAxial := func(in LugObliqueInputs, _ LugObliqueOutputs) bool { return in.AxialN == 0 }
	return worked.Define("lug_oblique", LugOblique, worked.Page[LugObliqueInputs, LugObliqueOutputs]{
		Title:    "Margin of a lug under a load at an angle",
		Sources:  []string{"AFFDL-TR-69-42 chapter 9 and NASA TM X-73305, by a public educational stress report, read; manuals not read"},
		Validity: "ultimate loads from lug_allowables",
		Formulas: []worked.Formula[LugObliqueInputs, LugObliqueOutputs]{
			{Symbol: "theta", Is: "atan(F_t / F_a) * 180 / pi", Source: "plain geometry", When: hasAxial},
			{Symbol: "theta", Table: "90 degrees, no axial part", Source: "plain geometry", When: noAxial},
			{Symbol: "R_a", Is: "f * F_a / (k * P_a)", Source: method},
			{Symbol: "R_t", Is: "f * F_t / (k * P_t)", Source: method},
			{Symbol: "M", Is: "(R_a^1.6 + R_t^1.6)^(-0.625) - 1", Source: method},
		},
		Warnings: func(_ LugObliqueInputs, out LugObliqueOutputs) []string {
			if out.Margin < 0 {
				return []string{notCovered, "The margin is negative: the lug fails under this load."}
			}
			return []string{notCovered}
		},
		Example: map[string]string{
			"axial_load": "71453 lbf", "transverse_load": "119090 lbf", "axial_allowable": "308750 lbf", "transverse_allowable": "259875 lbf",
			"effective_thickness_ratio": "0.73",
		},
	})
}
