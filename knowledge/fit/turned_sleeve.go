package fit

import "boremend/knowledge/worked"

// TurnedSleeveInputs are a bore as it was cut and the sleeve that is turned to it.
type TurnedSleeveInputs struct {
	BoreLeastMM    float64 `name:"bore_least" symbol:"d_1" kind:"length" means:"smallest diameter read in the bore after the cut"`
	BoreMostMM     float64 `name:"bore_most" symbol:"d_2" kind:"length" means:"largest diameter read in the bore after the cut"`
	InterferenceMM float64 `name:"interference" symbol:"delta" kind:"length" means:"interference wanted, on the diameter"`
	FinishBoreMM   float64 `name:"finish_bore" symbol:"d_f" kind:"length" means:"bore of the sleeve when all is done"`
	HoneMM         float64 `name:"hone_allowance" symbol:"h" kind:"length" default:"0.127 mm" means:"metal left for the hone or the finishing cut, on the diameter"`
	ClosureMM      float64 `name:"closure" symbol:"u" kind:"length" means:"what the sleeve bore loses in pressing, on the diameter"`
}

// TurnedSleeveOutputs are the sizes to turn the sleeve to.
type TurnedSleeveOutputs struct {
	MeanBoreMM        float64 `name:"mean_bore" symbol:"d" kind:"length" means:"middle of the readings, to which the sleeve is turned"`
	OutOfRoundMM      float64 `name:"out_of_round" symbol:"o" kind:"length" means:"largest less smallest reading: ovality, taper and all"`
	ToleranceMM       float64 `name:"tolerance" symbol:"IT6" kind:"length" means:"width of the tolerance on the sleeve, ISO 286 grade 6"`
	ODLeastMM         float64 `name:"sleeve_od_least" symbol:"D_1" kind:"length" means:"smallest sleeve OD before pressing"`
	ODMostMM          float64 `name:"sleeve_od_most" symbol:"D_2" kind:"length" means:"largest sleeve OD before pressing"`
	InterferenceLeast float64 `name:"interference_least" symbol:"delta_1" kind:"length" means:"least interference anywhere in this bore"`
	InterferenceMost  float64 `name:"interference_most" symbol:"delta_2" kind:"length" means:"most interference anywhere in this bore"`
	IDMM              float64 `name:"sleeve_id_before" symbol:"d_i" kind:"length" means:"sleeve bore to turn before pressing"`
	IDAfterMM         float64 `name:"sleeve_id_pressed" symbol:"d_p" kind:"length" means:"sleeve bore once pressed, tight by what the hone takes"`
	WallMM            float64 `name:"sleeve_wall" symbol:"w" kind:"length" means:"wall of the finished sleeve"`
}

// TurnedSleeve gives the sizes of a sleeve that is turned to the bore as it came
// out, so that its own bore is right after pressing.
//
//	d = (d_1 + d_2)/2          o = d_2 - d_1
//	D_1 = d + delta - IT6/2    D_2 = d + delta + IT6/2
//	delta_1 = D_1 - d_2        delta_2 = D_2 - d_1
//	d_p = d_f - h              d_i = d_p + u
//	w = (d - d_f)/2
//
// d_1 and d_2 are the smallest and largest reading, delta the interference
// wanted, d_f the finished bore, h what is left for the hone and u the closure of
// the sleeve bore, all on the diameter [mm]; IT6 the tolerance of grade 6.
//
// Two bores that were cut at separate settings differ: each has its own sleeve.
// Where the sleeve is finished in place, h is the stock for that cut.
//
// Validity: bores to 500 mm; an out-of-round below what would leave a loose place
// (delta_1 above zero); a sleeve wall above zero. A bore that is rounder than the
// gauge can tell is round.
//
// Error: that of both measurements, not in the limits shown.
//
// Source: turning the sleeve to its own bore, and a hone allowance of about 0.005
// in, are common practice, no source; tolerance as ISO286Limits.
func TurnedSleeve(in TurnedSleeveInputs) (TurnedSleeveOutputs, error) {
	var c worked.Checks
	c.Positive("bore_least", in.BoreLeastMM)
	c.Positive("finish_bore", in.FinishBoreMM)
	c.NotNegative("hone_allowance", in.HoneMM)
	c.NotNegative("closure", in.ClosureMM)
	if !(in.BoreMostMM >= in.BoreLeastMM && in.BoreMostMM <= 500) {
		c.Refuse("bore_most", "is %g mm, must be from bore_least, %g mm, to 500 mm", in.BoreMostMM, in.BoreLeastMM)
	}
	checkInterference(&c, "interference", in.InterferenceMM, in.BoreLeastMM)
	c.Below("finish_bore", in.FinishBoreMM, "bore_least", in.BoreLeastMM)
	c.Below("hone_allowance", in.HoneMM, "finish_bore", in.FinishBoreMM)
	if err := c.Err(); err != nil {
		return TurnedSleeveOutputs{}, err
	}
	out := TurnedSleeveOutputs{MeanBoreMM: (in.BoreLeastMM + in.BoreMostMM) / 2, OutOfRoundMM: in.BoreMostMM - in.BoreLeastMM}
	limits, err := ISO286Limits(ISO286LimitsInputs{NominalMM: out.MeanBoreMM, Zone: "h6"})
	if err != nil {
		return TurnedSleeveOutputs{}, err
	}
	out.ToleranceMM = limits.ToleranceMM
	out.ODLeastMM = out.MeanBoreMM + in.InterferenceMM - out.ToleranceMM/2
	out.ODMostMM = out.MeanBoreMM + in.InterferenceMM + out.ToleranceMM/2
	out.InterferenceLeast, out.InterferenceMost = out.ODLeastMM-in.BoreMostMM, out.ODMostMM-in.BoreLeastMM
	out.IDAfterMM = in.FinishBoreMM - in.HoneMM
	out.IDMM = out.IDAfterMM + in.ClosureMM
	out.WallMM = (out.MeanBoreMM - in.FinishBoreMM) / 2
	if out.InterferenceLeast <= 0 {
		c.Refuse("bore_most", "is %g mm: where the bore is that large the sleeve would be loose by %.3g mm; bore it round first", in.BoreMostMM, -out.InterferenceLeast)
	}
	if out.IDMM >= out.ODLeastMM {
		c.Refuse("closure", "is %g mm: nothing would be left of the sleeve", in.ClosureMM)
	}
	if err := c.Err(); err != nil {
		return TurnedSleeveOutputs{}, err
	}
	return out, nil
}

// TurnedSleeveCalculation is the catalogue entry of TurnedSleeve.
func TurnedSleeveCalculation() worked.Calculation {
	const practice = "made to the measured bore: common practice, no source"
	return worked.Define("turned_sleeve", TurnedSleeve, worked.Page[TurnedSleeveInputs, TurnedSleeveOutputs]{
		Title:    "Sleeve turned to the bore as it came out",
		Sources:  []string{isoSource, "sleeve turned to its own bore, hone allowance of about 0.005 in: common practice, no source"},
		Validity: "bores to 500 mm, out of round by less than the interference",
		Formulas: []worked.Formula[TurnedSleeveInputs, TurnedSleeveOutputs]{
			{Symbol: "d", Is: "(d_1 + d_2) / 2", Source: practice},
			{Symbol: "o", Is: "d_2 - d_1", Source: "difference of readings"},
			{Symbol: "IT6", Table: "ISO 286 standard tolerances", Source: isoSource},
			{Symbol: "D_1", Is: "d + delta - IT6 / 2", Source: practice},
			{Symbol: "D_2", Is: "d + delta + IT6 / 2", Source: practice},
			{Symbol: "delta_1", Is: "D_1 - d_2", Source: "where the bore is largest"},
			{Symbol: "delta_2", Is: "D_2 - d_1", Source: "where the bore is smallest"},
			{Symbol: "d_p", Is: "d_f - h", Source: "left tight for the hone: common practice, no source"},
			{Symbol: "d_i", Is: "d_p + u", Source: "closure added back"},
			{Symbol: "w", Is: "(d - d_f) / 2", Source: "plain geometry"},
		},
		Warnings: func(in TurnedSleeveInputs, out TurnedSleeveOutputs) []string {
			warnings := []string{"Measure bore and sleeve cold and with the same micrometer, so that its own error cancels."}
			if out.OutOfRoundMM > out.ToleranceMM {
				warnings = append(warnings, "The bore is out of round or tapered by more than the tolerance of the sleeve: another light cut is better than hoping.")
			}
			return warnings
		},
		Example: map[string]string{
			"bore_least": "120.98 mm", "bore_most": "121 mm", "interference": "0.23 mm", "finish_bore": "110 mm", "closure": "0.18 mm",
		},
	})
}
