package wear

import "boremend/knowledge/worked"

// WallKeptInputs are the ear and its bore before and after.
type WallKeptInputs struct {
	FinishBoreMM   float64 `name:"finish_bore" symbol:"D_0" kind:"length" means:"bore as it was new"`
	SleeveBoreMM   float64 `name:"sleeve_bore" symbol:"D_s" kind:"length" means:"bore in the ear for the sleeve"`
	EdgeDistanceMM float64 `name:"edge_distance" symbol:"R" kind:"length" means:"bore centre to the nearest free edge of the ear"`
}

// WallKeptOutputs are the walls and the share of them that stays.
type WallKeptOutputs struct {
	WallBeforeMM float64 `name:"wall_before" symbol:"a_0" kind:"length" means:"wall with the bore as new"`
	WallAfterMM  float64 `name:"wall_after_sleeve" symbol:"a" kind:"length" means:"wall with the bore for the sleeve"`
	WallKept     float64 `name:"wall_kept" symbol:"k" kind:"ratio" means:"share of the wall that stays"`
}

// WallKept computes which share of an ear's wall stays when the bore is opened
// for a sleeve.
//
//	a_0 = R - D_0 / 2
//	a   = R - D_s / 2
//	k   = a / a_0
//
// R is the bore centre to the nearest free edge [mm], D_0 the bore as new and
// D_s the bore for the sleeve [mm].
//
// It needs neither load nor material, and is the least share of strength that the
// pin-plate formulas of ASME BTH-1 leave (see strength_kept of package ear).
//
// Validity: D_0 <= D_s and D_s/2 < R; else the calculation refuses.
//
// Error: near 1/a_0 times the error of R for a thin wall.
//
// Source: plain geometry, recomputed.
func WallKept(in WallKeptInputs) (WallKeptOutputs, error) {
	var c worked.Checks
	c.Positive("finish_bore", in.FinishBoreMM)
	c.Positive("sleeve_bore", in.SleeveBoreMM)
	c.Positive("edge_distance", in.EdgeDistanceMM)
	if c.Err() == nil && in.SleeveBoreMM < in.FinishBoreMM {
		c.Refuse("sleeve_bore", "is %g mm, less than finish_bore, which is %g mm", in.SleeveBoreMM, in.FinishBoreMM)
	}
	c.Below("sleeve_bore", in.SleeveBoreMM, "twice edge_distance", 2*in.EdgeDistanceMM)
	if err := c.Err(); err != nil {
		return WallKeptOutputs{}, err
	}
	out := WallKeptOutputs{
		WallBeforeMM: in.EdgeDistanceMM - in.FinishBoreMM/2,
		WallAfterMM:  in.EdgeDistanceMM - in.SleeveBoreMM/2,
	}
	out.WallKept = out.WallAfterMM / out.WallBeforeMM
	return out, nil
}

// WallKeptCalculation is the catalogue entry of WallKept.
func WallKeptCalculation() worked.Calculation {
	return worked.Define("wall_kept", WallKept, worked.Page[WallKeptInputs, WallKeptOutputs]{
		Title:    "Share of the wall that stays after boring for a sleeve",
		Sources:  []string{"plain geometry, recomputed"},
		Validity: "the bore for the sleeve is not smaller than the bore as new and stays inside the ear",
		Formulas: []worked.Formula[WallKeptInputs, WallKeptOutputs]{
			{Symbol: "a_0", Is: "R - D_0 / 2", Source: "plain geometry"},
			{Symbol: "a", Is: "R - D_s / 2", Source: "plain geometry"},
			{Symbol: "k", Is: "a / a_0", Source: "plain geometry"},
		},
		Example: map[string]string{"finish_bore": "110 mm", "sleeve_bore": "121 mm", "edge_distance": "98 mm"},
	})
}
