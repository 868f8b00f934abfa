package fit

import "boremend/knowledge/worked"

// SleeveCoiningInputs are a sleeve and the pressure of the pin on it.
type SleeveCoiningInputs struct {
	PeakMPa      float64 `name:"peak_pressure" symbol:"p_0" kind:"pressure" means:"peak pressure under the pin with its running gap (see conformal_contact)"`
	YieldMPa     float64 `name:"sleeve_yield" symbol:"R_s" kind:"stress" means:"yield strength of the sleeve at its bore"`
	WallMM       float64 `name:"sleeve_wall" symbol:"w" kind:"length" means:"wall of the finished sleeve"`
	FinishBoreMM float64 `name:"finish_bore" symbol:"d_f" kind:"length" means:"bore of the finished sleeve"`
}

// SleeveCoiningOutputs say how the sleeve stands up to it.
type SleeveCoiningOutputs struct {
	AllowedMPa   float64 `name:"pressure_allowed" symbol:"p_a" kind:"pressure" means:"peak pressure that the sleeve stands for long"`
	Safety       float64 `name:"coining_safety" symbol:"S" kind:"ratio" means:"that over the peak pressure; below 1 the bore is hammered out"`
	WallLeastMM  float64 `name:"wall_least" symbol:"w_1" kind:"length" means:"thinnest wall that does not coin"`
	WallWantedMM float64 `name:"wall_preferred" symbol:"w_2" kind:"length" means:"wall that is preferred"`
	Wall         string  `name:"wall_verdict" choices:"good,thin,coins" means:"what the wall is worth"`
}

// The walls of the trade: a sixteenth of an inch decides.
const (
	wallPreferredMM = 3.0 / 16 * mmPerInch
	wallThatCoinsMM = 1.0 / 8 * mmPerInch
)

// noMM is no length: what a wall in inches may be off by when it is turned into
// millimetres.
const noMM = 1e-6

// SleeveCoining holds the pressure of a pin against what a thin sleeve stands.
//
//	p_a = R_s/2
//	S   = p_a/p_0
//	w_1 = max(1/8 in, 0.05 d_f)    w_2 = max(3/16 in, 0.05 d_f)
//
// p_0 is the peak pressure under the pin, R_s the yield strength of the sleeve
// [MPa], w its wall and d_f its finished bore [mm].
//
// Each pass of the load yields the loaded arc of a sleeve that is too soft or too
// thin, the arc grows, the press leaks away and the sleeve creeps round or walks
// out. A wall at or below w_1 coins out, one below w_2 wants a hard sleeve.
//
// Validity: walls up to the radius of the bore; steel and bronze sleeves that are
// seated all round. Over a void under the sleeve nothing here holds.
//
// Error: half of yield and the walls are judgement.
//
// Source: 3/16 in preferred, 1/8 in coins out, 5 % of the bore, half of yield: all
// common practice, no source. No published wall rule for pressed steel sleeves in
// ears was found.
func SleeveCoining(in SleeveCoiningInputs) (SleeveCoiningOutputs, error) {
	var c worked.Checks
	c.Positive("peak_pressure", in.PeakMPa)
	c.Positive("sleeve_yield", in.YieldMPa)
	c.Positive("sleeve_wall", in.WallMM)
	c.Positive("finish_bore", in.FinishBoreMM)
	if in.WallMM > in.FinishBoreMM/2 {
		c.Refuse("sleeve_wall", "is %g mm, more than the radius of the bore: that is a boss and no sleeve", in.WallMM)
	}
	if err := c.Err(); err != nil {
		return SleeveCoiningOutputs{}, err
	}
	out := SleeveCoiningOutputs{
		AllowedMPa: in.YieldMPa / 2, Safety: in.YieldMPa / 2 / in.PeakMPa,
		WallLeastMM: max(wallThatCoinsMM, 0.05*in.FinishBoreMM), WallWantedMM: max(wallPreferredMM, 0.05*in.FinishBoreMM), Wall: "good",
	}
	switch {
	case in.WallMM <= wallThatCoinsMM+noMM || in.WallMM < out.WallLeastMM-noMM:
		out.Wall = "coins"
	case in.WallMM < out.WallWantedMM-noMM:
		out.Wall = "thin"
	}
	return out, nil
}

// SleeveCoiningCalculation is the catalogue entry of SleeveCoining.
func SleeveCoiningCalculation() worked.Calculation {
	const practice = "common practice, no source"
	return worked.Define("sleeve_coining", SleeveCoining, worked.Page[SleeveCoiningInputs, SleeveCoiningOutputs]{
		Title:    "Whether a sleeve coins out",
		Sources:  []string{"half of yield, 3/16 in preferred, 1/8 in coins out, 5 % of the bore: common practice, no source"},
		Validity: "steel and bronze sleeves seated all round, wall up to the radius of the bore",
		Formulas: []worked.Formula[SleeveCoiningInputs, SleeveCoiningOutputs]{
			{Symbol: "p_a", Is: "R_s / 2", Source: practice},
			{Symbol: "S", Is: "p_a / p_0", Source: practice},
			{Symbol: "w_1", Is: "max(25.4 / 8, 0.05 * d_f)", Source: practice},
			{Symbol: "w_2", Is: "max(25.4 * 3 / 16, 0.05 * d_f)", Source: practice},
		},
		Warnings: func(_ SleeveCoiningInputs, out SleeveCoiningOutputs) []string {
			switch out.Wall {
			case "coins":
				return []string{"A sleeve this thin coins out: bore larger, or leave the sleeve out."}
			case "thin":
				return []string{"Thin: take a hard sleeve, and one that is held by more than its fit."}
			}
			return nil
		},
		Example: map[string]string{"peak_pressure": "86 MPa", "sleeve_yield": "655 MPa", "sleeve_wall": "6 mm", "finish_bore": "120 mm"},
	})
}
