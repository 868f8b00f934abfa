package fit

import "boremend/knowledge/worked"

// WearLimitInputs are the wear limits of a pin and of its bushing.
type WearLimitInputs struct {
	PinMinODMM     float64 `name:"pin_min_od" symbol:"d_p" kind:"length" means:"smallest pin that may stay in use"`
	BushingMaxIDMM float64 `name:"bushing_max_id" symbol:"d_b" kind:"length" means:"largest bushing bore that may stay in use"`
}

// WearLimitOutputs is the gap when both are at their limits.
type WearLimitOutputs struct {
	ClearanceMM float64 `name:"clearance_at_both_limits" symbol:"c" kind:"length" means:"gap with both at their limits, on the diameter"`
}

// WearLimitClearance computes the gap between a pin and a bushing that are both
// worn to their limits.
//
//	c = d_b - d_p
//
// d_b is the largest bushing bore, d_p the smallest pin allowed [mm].
//
// Validity: limits from one manual for one joint. A manual may also limit the gap
// itself; then the smaller governs.
//
// Error: none beyond the limits.
//
// Source: difference of sizes; US Army TM 5-3810-305-23 WP 0156 (read).
func WearLimitClearance(in WearLimitInputs) (WearLimitOutputs, error) {
	var c worked.Checks
	c.Positive("pin_min_od", in.PinMinODMM)
	c.Positive("bushing_max_id", in.BushingMaxIDMM)
	c.Below("pin_min_od", in.PinMinODMM, "bushing_max_id", in.BushingMaxIDMM)
	if err := c.Err(); err != nil {
		return WearLimitOutputs{}, err
	}
	return WearLimitOutputs{ClearanceMM: in.BushingMaxIDMM - in.PinMinODMM}, nil
}

// WearLimitClearanceCalculation is the catalogue entry of WearLimitClearance.
func WearLimitClearanceCalculation() worked.Calculation {
	return worked.Define("wear_limit_clearance", WearLimitClearance, worked.Page[WearLimitInputs, WearLimitOutputs]{
		Title:    "Gap of a pin and a bushing at their wear limits",
		Sources:  []string{"difference of sizes; US Army TM 5-3810-305-23 WP 0156 (read)"},
		Validity: "limits of one joint from one manual",
		Formulas: []worked.Formula[WearLimitInputs, WearLimitOutputs]{{Symbol: "c", Is: "d_b - d_p", Source: "difference of sizes"}},
		Example:  map[string]string{"pin_min_od": "2.474 in", "bushing_max_id": "2.543 in"},
	})
}
