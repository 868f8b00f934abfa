package wear

import "boremend/knowledge/worked"

// SleeveGeometryInputs are the worn bore, the ear around it and the least sleeve.
type SleeveGeometryInputs struct {
	FinishBoreMM      float64 `name:"finish_bore" symbol:"D_0" kind:"length" means:"bore of the sleeve when finished"`
	WornReachMM       float64 `name:"worn_reach" symbol:"s" kind:"length" means:"from the true axis to the deepest wear"`
	EdgeDistanceMM    float64 `name:"edge_distance" symbol:"R" kind:"length" means:"bore centre to the nearest free edge of the ear"`
	CleanUpMM         float64 `name:"clean_up" symbol:"c" kind:"length" default:"0.5 mm" means:"cut beyond the deepest wear, a side"`
	SleeveWallLeastMM float64 `name:"sleeve_wall_least" symbol:"w_1" kind:"length" default:"5 mm" means:"thinnest sleeve wall for any bore"`
	SleeveWallShare   float64 `name:"sleeve_wall_share" symbol:"q" kind:"ratio" default:"0.05" means:"thinnest sleeve wall as a share of the finish bore"`
}

// SleeveGeometryOutputs are the bore for the sleeve and the metal left around it.
type SleeveGeometryOutputs struct {
	CleanUpBoreMM     float64 `name:"clean_up_bore" symbol:"D_c" kind:"length" means:"smallest bore that comes clean all round"`
	WallNeededMM      float64 `name:"sleeve_wall_needed" symbol:"w_2" kind:"length" means:"thinnest sleeve wall for this bore"`
	SleeveBoreMM      float64 `name:"sleeve_bore" symbol:"D_s" kind:"length" means:"bore in the ear for the sleeve"`
	SleeveWallMM      float64 `name:"sleeve_wall" symbol:"w" kind:"length" means:"wall of the finished sleeve"`
	WallAfterSleeveMM float64 `name:"wall_after_sleeve" symbol:"a" kind:"length" means:"metal left between the sleeve and the nearest edge"`
	SleeveRatio       float64 `name:"sleeve_ratio" symbol:"e" kind:"ratio" means:"metal left over the bore for the sleeve"`
	Governs           string  `name:"governs" choices:"clean_up,sleeve_wall" means:"what set the bore: the wear, or the wall of the sleeve"`
}

// SleeveGeometry computes the bore for a sleeve and the wall that stays in the
// ear around it.
//
//	D_c = 2 s + 2 c                 to come clean all round
//	w_2 = max(w_1, q D_0)           so that the sleeve is not hammered thin
//	D_s = max(D_c, D_0 + 2 w_2)     the larger of the two
//	w   = (D_s - D_0) / 2
//	a   = R - D_s / 2
//	e   = a / D_s
//
// D_0 is the finished bore of the sleeve [mm], s the distance from the true
// axis to the deepest wear [mm], c the cut beyond it [mm], R the bore centre to
// the nearest free edge [mm], w_1 and q the least sleeve wall [mm] and [-].
//
// Where a seat takes a bush of any outside size there is no sleeve wall to
// keep: give sleeve_wall_least and sleeve_wall_share as zero, and the clean-up
// bore governs.
//
// Validity: the bore for the sleeve must stay inside the ear, D_s/2 < R; else
// the calculation refuses.
//
// Error: a and e carry the error of R and that of s. One millimetre on R moves
// e by 0.01 on a 100 mm bore, so near a limit a tape is not enough.
//
// Source: plain geometry, recomputed. The least sleeve wall (5 mm or 5 %) is
// common practice, no source.
func SleeveGeometry(in SleeveGeometryInputs) (SleeveGeometryOutputs, error) {
	var c worked.Checks
	c.Positive("finish_bore", in.FinishBoreMM)
	c.Positive("worn_reach", in.WornReachMM)
	c.Positive("edge_distance", in.EdgeDistanceMM)
	c.NotNegative("clean_up", in.CleanUpMM)
	c.NotNegative("sleeve_wall_least", in.SleeveWallLeastMM)
	c.Between("sleeve_wall_share", in.SleeveWallShare, 0, 1)
	if err := c.Err(); err != nil {
		return SleeveGeometryOutputs{}, err
	}
	out := SleeveGeometryOutputs{Governs: "clean_up"}
	out.CleanUpBoreMM = 2*in.WornReachMM + 2*in.CleanUpMM
	out.WallNeededMM = max(in.SleeveWallLeastMM, in.SleeveWallShare*in.FinishBoreMM)
	out.SleeveBoreMM = max(out.CleanUpBoreMM, in.FinishBoreMM+2*out.WallNeededMM)
	if out.SleeveBoreMM > out.CleanUpBoreMM {
		out.Governs = "sleeve_wall"
	}
	out.SleeveWallMM = (out.SleeveBoreMM - in.FinishBoreMM) / 2
	out.WallAfterSleeveMM = in.EdgeDistanceMM - out.SleeveBoreMM/2
	if !(out.WallAfterSleeveMM > 0) {
		c.Refuse("edge_distance", "is %g mm, but the bore for the sleeve reaches %g mm from its centre: nothing of the ear would be left", in.EdgeDistanceMM, out.SleeveBoreMM/2)
		return SleeveGeometryOutputs{}, c.Err()
	}
	out.SleeveRatio = out.WallAfterSleeveMM / out.SleeveBoreMM
	return out, nil
}

// SleeveGeometryCalculation is the catalogue entry of SleeveGeometry.
func SleeveGeometryCalculation() worked.Calculation {
	return worked.Define("sleeve_geometry", SleeveGeometry, worked.Page[SleeveGeometryInputs, SleeveGeometryOutputs]{
		Title:    "Bore for a sleeve and the wall it leaves",
		Sources:  []string{"plain geometry, recomputed; least sleeve wall: common practice, no source"},
		Validity: "the bore for the sleeve stays inside the ear",
		Formulas: []worked.Formula[SleeveGeometryInputs, SleeveGeometryOutputs]{
			{Symbol: "D_c", Is: "2 * s + 2 * c", Source: "plain geometry"},
			{Symbol: "w_2", Is: "max(w_1, q * D_0)", Source: "common practice, no source"},
			{Symbol: "D_s", Is: "max(D_c, D_0 + 2 * w_2)", Source: "plain geometry"},
			{Symbol: "w", Is: "(D_s - D_0) / 2", Source: "plain geometry"},
			{Symbol: "a", Is: "R - D_s / 2", Source: "plain geometry"},
			{Symbol: "e", Is: "a / D_s", Source: "plain geometry"},
		},
		Warnings: sleeveGeometryWarnings,
		Example: map[string]string{
			"finish_bore": "110 mm", "worn_reach": "58.9 mm", "edge_distance": "98 mm", "clean_up": "0.5 mm",
		},
	})
}

func sleeveGeometryWarnings(in SleeveGeometryInputs, out SleeveGeometryOutputs) []string {
	var says []string
	if in.WornReachMM < in.FinishBoreMM/2 {
		says = append(says, "worn_reach is less than half of the finish bore: no bore wears inward, measure again from the true axis.")
	}
	if out.SleeveWallMM == 0 {
		says = append(says, "No sleeve wall is left at this bore: the part that goes in must be a bush of its own outside size.")
	}
	return says
}
