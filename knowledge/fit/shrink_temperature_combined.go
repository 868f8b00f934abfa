package fit

import "boremend/knowledge/worked"

// ShrinkCombinedInputs are a fit, a chilled sleeve and the ear to be heated.
type ShrinkCombinedInputs struct {
	SeatDiameterMM  float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"seat diameter"`
	InterferenceMM  float64 `name:"interference_diametral" symbol:"delta" kind:"length" means:"interference at room temperature, on the diameter"`
	ClearanceMM     float64 `name:"assembly_clearance_diametral" symbol:"c" kind:"length" means:"gap wanted while it slips in, on the diameter"`
	HubAlphaPerK    float64 `name:"hub_alpha" symbol:"alpha_h" kind:"expansion" means:"mean expansion of the hub from room temperature up"`
	SleeveAlphaPerK float64 `name:"sleeve_alpha_mean" symbol:"alpha_s" kind:"expansion" means:"mean expansion of the sleeve from room temperature down"`
	RoomC           float64 `name:"room" symbol:"T_0" kind:"temperature" means:"temperature at which both were measured"`
	SleeveC         float64 `name:"sleeve_temperature" symbol:"T_s" kind:"temperature" means:"temperature of the sleeve when it goes in"`
}

// ShrinkCombinedOutputs is the temperature of the hub.
type ShrinkCombinedOutputs struct {
	SleeveChangeMM  float64 `name:"sleeve_change" symbol:"s" kind:"length" means:"change of the sleeve OD, negative on cooling"`
	HubTemperatureC float64 `name:"hub_temperature" symbol:"T_h" kind:"temperature" means:"temperature that the hub needs; at or below room, no heat is needed"`
}

// ShrinkCombined computes how hot the hub must be when the sleeve is chilled at
// the same time.
//
//	s = alpha_s d (T_s - T_0)    T_h = T_0 + (delta + c + s)/(alpha_h d)
//
// d is the seat, delta the interference, c the gap wanted, all on the diameter
// [mm]; alpha_h, alpha_s mean expansions over the spans [1/K]; T_0 the room, T_s
// the sleeve [degC].
//
// Validity: each part evenly at its temperature. alpha_s is the mean over the
// cold span (steel 10.1e-6 to dry ice, 9.0e-6 to nitrogen).
//
// Error: that of the expansions, and the time between bath and bore.
//
// Source: even expansion of both parts (recomputed).
func ShrinkCombined(in ShrinkCombinedInputs) (ShrinkCombinedOutputs, error) {
	var c worked.Checks
	c.Positive("seat_diameter", in.SeatDiameterMM)
	checkInterference(&c, "interference_diametral", in.InterferenceMM, in.SeatDiameterMM)
	c.NotNegative("assembly_clearance_diametral", in.ClearanceMM)
	checkExpansion(&c, "hub_alpha", in.HubAlphaPerK)
	checkExpansion(&c, "sleeve_alpha_mean", in.SleeveAlphaPerK)
	checkTemperature(&c, "room", in.RoomC)
	checkTemperature(&c, "sleeve_temperature", in.SleeveC)
	if err := c.Err(); err != nil {
		return ShrinkCombinedOutputs{}, err
	}
	s := in.SleeveAlphaPerK * in.SeatDiameterMM * (in.SleeveC - in.RoomC)
	needed := in.InterferenceMM + in.ClearanceMM + s
	return ShrinkCombinedOutputs{SleeveChangeMM: s, HubTemperatureC: in.RoomC + needed/(in.HubAlphaPerK*in.SeatDiameterMM)}, nil
}

// ShrinkCombinedCalculation is the catalogue entry of ShrinkCombined.
func ShrinkCombinedCalculation() worked.Calculation {
	return worked.Define("shrink_temperature_combined", ShrinkCombined, worked.Page[ShrinkCombinedInputs, ShrinkCombinedOutputs]{
		Title:    "Heat for the hub when the sleeve is chilled",
		Sources:  []string{"even expansion of both parts (recomputed)"},
		Validity: "each part evenly at its temperature; mean expansions over the spans",
		Formulas: []worked.Formula[ShrinkCombinedInputs, ShrinkCombinedOutputs]{
			{Symbol: "s", Is: "alpha_s * d * (T_s - T_0)", Source: "even contraction"},
			{Symbol: "T_h", Is: "T_0 + (delta + c + s) / (alpha_h * d)", Source: "even expansion"},
		},
		Warnings: func(in ShrinkCombinedInputs, out ShrinkCombinedOutputs) []string {
			if out.HubTemperatureC <= in.RoomC {
				return []string{"Chilling alone is enough: the hub needs no heat."}
			}
			return nil
		},
		Example: map[string]string{
			"seat_diameter": "110 mm", "interference_diametral": "0.13 mm", "assembly_clearance_diametral": "0.11 mm",
			"hub_alpha": "11.5e-6 1/K", "sleeve_alpha_mean": "10.1e-6 1/K", "room": "20 degC", "sleeve_temperature": "-78.5 degC",
		},
	})
}
