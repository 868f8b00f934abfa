package fit

import (
	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// SlipAssemblyInputs are a fit and what may be done to get the sleeve in cold.
type SlipAssemblyInputs struct {
	SeatDiameterMM float64         `name:"seat_diameter" symbol:"d" kind:"length" means:"seat diameter"`
	InterferenceMM float64         `name:"interference_diametral" symbol:"delta" kind:"length" means:"most interference at room temperature, on the diameter"`
	ClearanceMM    worked.Optional `name:"assembly_clearance_diametral" symbol:"c_g" kind:"length" means:"gap wanted while it slips in; without it, a thousandth of the seat"`
	RoomC          float64         `name:"room" symbol:"T_0" kind:"temperature" default:"20 degC" means:"temperature at which both were measured"`
	EarAlphaPerK   float64         `name:"ear_alpha" symbol:"alpha_h" kind:"expansion" means:"mean expansion of the ear from room temperature up"`
	SleeveMetal    string          `name:"sleeve_metal" choices:"carbon_steel,stainless_18_8,bronze" default:"carbon_steel" means:"metal of the sleeve; bronze is taken to shrink no more than steel"`
	EarTreatment   string          `name:"ear_treatment" choices:"plain,quenched_tempered,surface_hardened,hardened" means:"heat treatment of the ear, which heating must not undo"`
}

// SlipAssemblyOutputs say how the sleeve can be slipped in.
type SlipAssemblyOutputs struct {
	ClearanceMM       float64 `name:"clearance" symbol:"c" kind:"length" means:"gap while it slips in, on the diameter"`
	NeededMM          float64 `name:"needed" symbol:"s" kind:"length" means:"difference that cold and heat must make, on the diameter"`
	DryIceStrain      float64 `name:"dry_ice_strain" symbol:"eps_d" kind:"ratio" means:"strain of the sleeve in dry ice"`
	NitrogenStrain    float64 `name:"nitrogen_strain" symbol:"eps_n" kind:"ratio" means:"strain of the sleeve in nitrogen"`
	DryIceMM          float64 `name:"dry_ice_contraction" symbol:"s_d" kind:"length" means:"what dry ice takes off the sleeve"`
	NitrogenMM        float64 `name:"nitrogen_contraction" symbol:"s_n" kind:"length" means:"what nitrogen takes off the sleeve"`
	HeatOnlyC         float64 `name:"ear_temperature_heat_only" symbol:"T_h" kind:"temperature" means:"ear temperature with the sleeve at room temperature"`
	HeatWithDryIceC   float64 `name:"ear_temperature_with_dry_ice" symbol:"T_d" kind:"temperature" means:"ear temperature with the sleeve in dry ice"`
	HeatWithNitrogenC float64 `name:"ear_temperature_with_nitrogen" symbol:"T_n" kind:"temperature" means:"ear temperature with the sleeve in nitrogen"`
	HeatingLimitC     float64 `name:"heating_limit" symbol:"T_l" kind:"temperature" means:"the hottest that the ear may become"`
	Way               string  `name:"slip_way" means:"least way that works: dry_ice, nitrogen, heat, dry_ice_and_heat, nitrogen_and_heat, or press_only"`
}

// SlipAssembly computes how a sleeve can be slipped in by chilling it, by heating
// the ear, or both.
//
//	s = delta + c, with c = d/1000 unless given
//	s_d = -eps_d d, s_n = -eps_n d       by the expansion table
//	T_h = T_0 + s/(alpha_h d)            heat alone
//	T_d = T_0 + max(s - s_d, 0)/(alpha_h d)   with dry ice, T_n likewise
//
// d is the seat, delta the most interference, c_g the gap asked for [mm]; T_0 the
// room [degC]; alpha_h the expansion of the ear [1/K]; T_l the heating limit.
//
// Dry ice takes about one per mille off steel: enough for a usual interference
// and not for the gap as well. Nitrogen takes two.
//
// Validity: room from -40 to 60 degC; the whole part evenly at its temperature.
// Bronze has no column in the table; it shrinks more than steel, so the figure of
// steel is the safe side.
//
// Error: the sleeve warms on the way. Expansion of steel is 5 % higher over a hot
// span than alpha_h at room temperature: safe.
//
// Source: expansion table as ThermalStrain (read); nitrogen -196 degC (read), dry
// ice -78.5 degC, gap and heating limits from memory.
func SlipAssembly(in SlipAssemblyInputs) (SlipAssemblyOutputs, error) {
	var c worked.Checks
	c.Positive("seat_diameter", in.SeatDiameterMM)
	checkInterference(&c, "interference_diametral", in.InterferenceMM, in.SeatDiameterMM)
	if in.ClearanceMM.Known {
		c.NotNegative("assembly_clearance_diametral", in.ClearanceMM.Value)
	}
	c.Between("room", in.RoomC, -40, 60)
	checkExpansion(&c, "ear_alpha", in.EarAlphaPerK)
	c.OneOf("sleeve_metal", in.SleeveMetal, "carbon_steel", "stainless_18_8", "bronze")
	c.OneOf("ear_treatment", in.EarTreatment, "plain", "quenched_tempered", "surface_hardened", "hardened")
	if err := c.Err(); err != nil {
		return SlipAssemblyOutputs{}, err
	}
	out := SlipAssemblyOutputs{ClearanceMM: in.SeatDiameterMM / 1000}
	if in.ClearanceMM.Known {
		out.ClearanceMM = in.ClearanceMM.Value
	}
	if err := out.chill(in); err != nil {
		return SlipAssemblyOutputs{}, err
	}
	out.heat(in)
	out.Way = out.leastWay()
	return out, nil
}

// chill fills in what cold does, and the heating limit.
func (out *SlipAssemblyOutputs) chill(in SlipAssemblyInputs) (err error) {
	metal := in.SleeveMetal
	if metal == "bronze" {
		metal = "carbon_steel"
	}
	if out.DryIceStrain, err = material.Strain(metal, in.RoomC, dryIceC); err != nil {
		return err
	}
	if out.NitrogenStrain, err = material.Strain(metal, in.RoomC, nitrogenC); err != nil {
		return err
	}
	limit, err := heatingLimit(in.EarTreatment)
	out.HeatingLimitC = limit.LimitC
	return err
}

// heat fills in how hot the ear must be.
func (out *SlipAssemblyOutputs) heat(in SlipAssemblyInputs) {
	perK := in.EarAlphaPerK * in.SeatDiameterMM
	out.NeededMM = in.InterferenceMM + out.ClearanceMM
	out.DryIceMM = -out.DryIceStrain * in.SeatDiameterMM
	out.NitrogenMM = -out.NitrogenStrain * in.SeatDiameterMM
	out.HeatOnlyC = in.RoomC + out.NeededMM/perK
	out.HeatWithDryIceC = in.RoomC + max(out.NeededMM-out.DryIceMM, 0)/perK
	out.HeatWithNitrogenC = in.RoomC + max(out.NeededMM-out.NitrogenMM, 0)/perK
}

// leastWay names the way that works with the least trouble.
func (out *SlipAssemblyOutputs) leastWay() string {
	switch {
	case out.DryIceMM >= out.NeededMM:
		return "dry_ice"
	case out.NitrogenMM >= out.NeededMM:
		return "nitrogen"
	case out.HeatOnlyC <= out.HeatingLimitC:
		return "heat"
	case out.HeatWithDryIceC <= out.HeatingLimitC:
		return "dry_ice_and_heat"
	case out.HeatWithNitrogenC <= out.HeatingLimitC:
		return "nitrogen_and_heat"
	}
	return "press_only"
}

// SlipAssemblyCalculation is the catalogue entry of SlipAssembly.
func SlipAssemblyCalculation() worked.Calculation {
	given := func(in SlipAssemblyInputs, _ SlipAssemblyOutputs) bool { return in.ClearanceMM.Known }
	usual := func(in SlipAssemblyInputs, _ SlipAssemblyOutputs) bool { return !in.ClearanceMM.Known }
	return worked.Define("slip_assembly", SlipAssembly, worked.Page[SlipAssemblyInputs, SlipAssemblyOutputs]{
		Title:    "Slipping a sleeve in by cold or heat",
		Sources:  []string{expansionTable, heatingLimitSource, "gap of a thousandth of the seat (from memory)"},
		Validity: "room from -40 to 60 degC, whole part evenly at its temperature",
		Formulas: []worked.Formula[SlipAssemblyInputs, SlipAssemblyOutputs]{
			{Symbol: "c", Is: "c_g", Source: "gap asked for", When: given},
			{Symbol: "c", Is: "d / 1000", Source: "usual gap (from memory)", When: usual},
			{Symbol: "s", Is: "delta + c", Source: "what must open"},
			{Symbol: "eps_d", Table: expansionTable + ", room to -78.5 degC"},
			{Symbol: "eps_n", Table: expansionTable + ", room to -196 degC"},
			{Symbol: "s_d", Is: "-eps_d * d", Source: "even contraction"},
			{Symbol: "s_n", Is: "-eps_n * d", Source: "even contraction"},
			{Symbol: "T_h", Is: "T_0 + s / (alpha_h * d)", Source: "even expansion"},
			{Symbol: "T_d", Is: "T_0 + max(s - s_d, 0) / (alpha_h * d)", Source: "even expansion"},
			{Symbol: "T_n", Is: "T_0 + max(s - s_n, 0) / (alpha_h * d)", Source: "even expansion"},
			{Symbol: "T_l", Table: "heating limits by heat treatment", Source: heatingLimitSource},
		},
		Warnings: func(in SlipAssemblyInputs, out SlipAssemblyOutputs) []string {
			return slipWarnings(in.SleeveMetal, out)
		},
		Example: map[string]string{
			"seat_diameter": "110 mm", "interference_diametral": "0.13 mm", "ear_alpha": "11.7e-6 1/K", "ear_treatment": "plain",
		},
	})
}

const heatingLimitSource = "DIN 7190-1, joining temperatures (from memory)"

func slipWarnings(sleeveMetal string, out SlipAssemblyOutputs) []string {
	var warnings []string
	switch out.Way {
	case "nitrogen", "nitrogen_and_heat":
		warnings = append(warnings, nitrogenWarning)
	case "press_only":
		warnings = append(warnings, "Neither cold nor heat opens this fit without harming the ear: press it, or take less interference.")
	}
	if out.Way == "heat" || out.Way == "dry_ice_and_heat" || out.Way == "nitrogen_and_heat" {
		warnings = append(warnings, "The heating limit is from memory: never heat past the tempering temperature of the ear, and mind seals, paint and enclosed spaces.")
	}
	if sleeveMetal == "bronze" {
		warnings = append(warnings, "Bronze is not in the expansion table: the contraction shown is that of steel, which is less.")
	}
	return warnings
}
