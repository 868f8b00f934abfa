package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// StrengthKeptInputs are the ear and its bore before and after.
type StrengthKeptInputs struct {
	FinishBoreMM   float64 `name:"finish_bore" symbol:"d_1" kind:"length" means:"bore as it was new"`
	SleeveBoreMM   float64 `name:"sleeve_bore" symbol:"d_2" kind:"length" means:"bore in the ear for the sleeve"`
	EdgeDistanceMM float64 `name:"edge_distance" symbol:"R" kind:"length" means:"bore centre to the nearest free edge of the ear"`
}

// StrengthKeptOutputs are the shares of strength that stay.
type StrengthKeptOutputs struct {
	WallBeforeMM float64 `name:"wall_before" symbol:"a_1" kind:"length" means:"wall with the bore as new"`
	WallAfterMM  float64 `name:"wall_after" symbol:"a_2" kind:"length" means:"wall with the bore for the sleeve"`
	Tension      float64 `name:"tension_kept" symbol:"k_t" kind:"ratio" means:"share kept against tearing of the side walls"`
	Splitting    float64 `name:"splitting_kept" symbol:"k_b" kind:"ratio" means:"share kept against splitting of the end wall"`
	Shear        float64 `name:"shear_kept" symbol:"k_v" kind:"ratio" means:"share kept against shearing out"`
	StrengthKept float64 `name:"strength_kept" symbol:"k" kind:"ratio" means:"share of the ear's strength that boring leaves"`
	Governs      string  `name:"governs" choices:"tension,splitting,shear" means:"what sets it"`
}

// StrengthKept computes which share of an ear's strength stays when its bore is
// opened for a sleeve, by the pin-plate formulas of ASME BTH-1 (see PinPlateBTH1).
//
//	a = R - d/2, before and after
//	tension    2 t a                                   proportional to a
//	splitting  [1.13 a + 0.92 a/(1 + a/d)] t
//	shear      2 [a + (d_1/2)(1 - cos 55 deg)] t       the pin stays
//	each after over before; the least of the three is k
//
// R is the bore centre to the nearest edge and stays, d the bore [mm].
//
// It needs no load, no thickness and no material: these fall out of the ratio.
// Taken are equal walls, a square edge, a pin that fills the bore as new and stays,
// and no reduction for looseness (C_r = 1). The caps of the code on the effective
// side wall are left out; they bind more before boring than after it, so that
// leaving them out makes the share smaller.
//
// The least of the three is then always the tension, which is the share of the
// wall; the other two show by how much a load of another kind is better off.
//
// Validity: d_1 <= d_2 and d_2/2 < R; else the calculation refuses.
//
// Error: at most 0.08 below the whole code for R/d_1 from 0.75 to 1.15, with a
// sleeve that fills the bore. A loose pin costs more, see PinPlateBTH1.
//
// Source: ASME BTH-1 section 3-3.3, verified on four published sheets, code text
// not read; the ratio is recomputed here.
func StrengthKept(in StrengthKeptInputs) (StrengthKeptOutputs, error) {
	var c worked.Checks
	c.Positive("finish_bore", in.FinishBoreMM)
	c.Positive("sleeve_bore", in.SleeveBoreMM)
	c.Positive("edge_distance", in.EdgeDistanceMM)
	if in.SleeveBoreMM < in.FinishBoreMM {
		c.Refuse("sleeve_bore", "is %g mm, less than finish_bore, which is %g mm", in.SleeveBoreMM, in.FinishBoreMM)
	}
	c.Below("sleeve_bore", in.SleeveBoreMM, "twice edge_distance", 2*in.EdgeDistanceMM)
	if err := c.Err(); err != nil {
		return StrengthKeptOutputs{}, err
	}
	d1, d2 := in.FinishBoreMM, in.SleeveBoreMM
	a1, a2 := in.EdgeDistanceMM-d1/2, in.EdgeDistanceMM-d2/2
	out := StrengthKeptOutputs{
		WallBeforeMM: a1, WallAfterMM: a2,
		Tension:   a2 / a1,
		Splitting: splitWidth(a2, a2, d2) / splitWidth(a1, a1, d1),
		Shear:     (a2 + d1*halfPlane55) / (a1 + d1*halfPlane55),
		Governs:   "tension",
	}
	out.StrengthKept = min(out.Tension, out.Splitting, out.Shear)
	switch out.StrengthKept {
	case out.Tension:
	case out.Splitting:
		out.Governs = "splitting"
	default:
		out.Governs = "shear"
	}
	return out, nil
}

// halfPlane55 is (1 - cos 55 deg)/2: how far the shear planes of a pin that
// fills the bore start inside it, over the bore.
var halfPlane55 = (1 - math.Cos(55*math.Pi/180)) / 2

// StrengthKeptCalculation is the catalogue entry of StrengthKept.
func StrengthKeptCalculation() worked.Calculation {
	const code = "ASME BTH-1 3-3.3, as a ratio"
	return worked.Define("strength_kept", StrengthKept, worked.Page[StrengthKeptInputs, StrengthKeptOutputs]{
		Title:    "Share of an ear's strength that boring leaves",
		Sources:  []string{"ASME BTH-1 section 3-3.3, verified on four published calculation sheets, code text not read; ratio recomputed"},
		Validity: "the edge stays where it is; equal walls; the bore for the sleeve stays inside the ear",
		Formulas: []worked.Formula[StrengthKeptInputs, StrengthKeptOutputs]{
			{Symbol: "a_1", Is: "R - d_1 / 2", Source: "plain geometry"},
			{Symbol: "a_2", Is: "R - d_2 / 2", Source: "plain geometry"},
			{Symbol: "k_t", Is: "a_2 / a_1", Source: code},
			{Symbol: "k_b", Is: "(1.13 * a_2 + 0.92 * a_2 / (1 + a_2 / d_2)) / (1.13 * a_1 + 0.92 * a_1 / (1 + a_1 / d_1))", Source: code},
			{Symbol: "k_v", Is: "(a_2 + d_1 / 2 * (1 - cos(55 * pi / 180))) / (a_1 + d_1 / 2 * (1 - cos(55 * pi / 180)))", Source: code},
			{Symbol: "k", Is: "min(k_t, k_b, k_v)", Source: "the least governs"},
		},
		Warnings: func(StrengthKeptInputs, StrengthKeptOutputs) []string {
			return []string{notCovered, "A share says nothing of how strong the ear was to begin with: some are built with a wall that no code would pass."}
		},
		Example: map[string]string{"finish_bore": "80 mm", "sleeve_bore": "96 mm", "edge_distance": "80 mm"},
	})
}
