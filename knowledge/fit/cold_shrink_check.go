package fit

import (
	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// ColdShrinkInputs are an inner part, the bore that it must enter and a coolant.
type ColdShrinkInputs struct {
	InnerODMM     float64         `name:"inner_part_od" symbol:"d_s" kind:"length" means:"outside of the part that is chilled"`
	HubBoreMM     float64         `name:"hub_bore" symbol:"d_b" kind:"length" means:"bore that it must enter"`
	ClearanceMM   float64         `name:"required_clearance" symbol:"c" kind:"length" means:"gap wanted while it slips in, on the diameter"`
	RoomC         float64         `name:"room" symbol:"T_0" kind:"temperature" means:"temperature at which both were measured"`
	CoolantC      float64         `name:"coolant" symbol:"T_c" kind:"temperature" means:"temperature that the coolant brings it to"`
	Material      string          `name:"material" choices:"carbon_steel,stainless_18_8,aluminium,copper" means:"metal of the chilled part"`
	AlphaRoomPerK worked.Optional `name:"alpha_room" symbol:"alpha_0" kind:"expansion" means:"expansion at room temperature, only to show how far off it is"`
}

// ColdShrinkOutputs compare the contraction needed with what chilling gives.
type ColdShrinkOutputs struct {
	RequiredMM      float64         `name:"required_contraction" symbol:"s_r" kind:"length" means:"how much smaller the part must become, on the diameter"`
	Strain          float64         `name:"strain" symbol:"eps" kind:"ratio" means:"strain of the part from the table, negative on cooling"`
	TableMM         float64         `name:"contraction_table" symbol:"s_t" kind:"length" means:"contraction by the table: this one counts"`
	ConstantAlphaMM worked.Optional `name:"contraction_constant_alpha" symbol:"s_a" kind:"length" means:"contraction with the room-temperature expansion, which is too much"`
	ShareReached    float64         `name:"share_reached" symbol:"n" kind:"ratio" means:"contraction by the table over that needed"`
	Enough          string          `name:"enough" choices:"yes,no" means:"whether chilling alone lets the part in"`
}

// ColdShrink checks whether chilling alone lets a part slip into a bore.
//
//	s_r = d_s - d_b + c      needed
//	s_t = -eps d_s           by the expansion table, eps(T_0 to T_c)
//	s_a = alpha_0 (T_0 - T_c) d_s   with a constant expansion, for comparison
//
// d_s is the outside of the part, d_b the bore, c the gap wanted [mm]; T_0 the
// temperature of the room, T_c of the coolant [degC]; eps the strain; alpha_0
// the room-temperature expansion [1/K].
//
// Traps: s_a passed a 12.363 in bridge trunnion as just small enough (0.01504 in
// against 0.015); by the table it was 0.0131 in, and such a trunnion has stuck
// half way in.
//
// Validity: the whole part at the coolant's temperature; the range of
// ThermalStrain. It warms as soon as it is lifted out.
//
// Error: 1 % of the contraction from the table, more from time in the air.
//
// Source: A. K. Kaw, Numerical Methods, trunnion and hub problem (read); table
// as ThermalStrain.
func ColdShrink(in ColdShrinkInputs) (ColdShrinkOutputs, error) {
	var c worked.Checks
	c.Positive("inner_part_od", in.InnerODMM)
	c.Positive("hub_bore", in.HubBoreMM)
	c.NotNegative("required_clearance", in.ClearanceMM)
	checkTemperature(&c, "room", in.RoomC)
	checkTemperature(&c, "coolant", in.CoolantC)
	c.Below("coolant", in.CoolantC, "room", in.RoomC)
	if in.AlphaRoomPerK.Known {
		checkExpansion(&c, "alpha_room", in.AlphaRoomPerK.Value)
	}
	out := ColdShrinkOutputs{RequiredMM: in.InnerODMM - in.HubBoreMM + in.ClearanceMM, Enough: "no"}
	if out.RequiredMM <= 0 {
		c.Refuse("hub_bore", "is %g, large enough already for %g: no chilling is needed", in.HubBoreMM, in.InnerODMM)
	}
	if err := c.Err(); err != nil {
		return ColdShrinkOutputs{}, err
	}
	strain, err := material.Strain(in.Material, in.RoomC, in.CoolantC)
	if err != nil {
		return ColdShrinkOutputs{}, &worked.Refusal{Input: "material", Says: err.Error()}
	}
	out.Strain, out.TableMM = strain, -strain*in.InnerODMM
	if in.AlphaRoomPerK.Known {
		out.ConstantAlphaMM = worked.Some(in.AlphaRoomPerK.Value * (in.RoomC - in.CoolantC) * in.InnerODMM)
	}
	out.ShareReached = out.TableMM / out.RequiredMM
	if out.ShareReached >= 1 {
		out.Enough = "yes"
	}
	return out, nil
}

// ColdShrinkCalculation is the catalogue entry of ColdShrink.
func ColdShrinkCalculation() worked.Calculation {
	return worked.Define("cold_shrink_check", ColdShrink, worked.Page[ColdShrinkInputs, ColdShrinkOutputs]{
		Title:    "Does chilling alone let the part in",
		Sources:  []string{"A. K. Kaw, Numerical Methods, trunnion and hub problem (read)", expansionTable},
		Validity: "the whole part at the coolant's temperature, -198 degC or warmer",
		Formulas: []worked.Formula[ColdShrinkInputs, ColdShrinkOutputs]{
			{Symbol: "s_r", Is: "d_s - d_b + c", Source: "difference of sizes"},
			{Symbol: "eps", Table: expansionTable},
			{Symbol: "s_t", Is: "-eps * d_s", Source: "even contraction"},
			{Symbol: "s_a", Is: "alpha_0 * (T_0 - T_c) * d_s", Source: "constant expansion, too hopeful",
				When: func(in ColdShrinkInputs, _ ColdShrinkOutputs) bool { return in.AlphaRoomPerK.Known }},
			{Symbol: "n", Is: "s_t / s_r", Source: "comparison"},
		},
		Warnings: coldShrinkWarnings,
		Example: map[string]string{
			"inner_part_od": "12.363 in", "hub_bore": "12.358 in", "required_clearance": "0.010 in", "room": "80 degF",
			"coolant": "-108 degF", "material": "carbon_steel", "alpha_room": "6.47e-6 1/degF",
		},
	})
}

func coldShrinkWarnings(in ColdShrinkInputs, out ColdShrinkOutputs) []string {
	var warnings []string
	switch {
	case out.Enough == "no" && in.CoolantC > nitrogenC+5:
		warnings = append(warnings, "Not enough: the part would stick half way. Use nitrogen, or heat the ear as well.")
	case out.Enough == "no":
		warnings = append(warnings, "Not enough: the part would stick half way. Heat the ear as well.")
	}
	if in.CoolantC < -150 {
		warnings = append(warnings, nitrogenWarning)
	}
	return warnings
}

const nitrogenWarning = "Nitrogen can crack hardened, welded or already stressed parts: cool in stages (cold box, dry ice, nitrogen), ventilate, and keep it off the ear."
