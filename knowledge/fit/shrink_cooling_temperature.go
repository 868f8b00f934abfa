package fit

import "boremend/knowledge/worked"

// ShrinkCoolingInputs are a shaft or sleeve and the hole that it must enter.
type ShrinkCoolingInputs struct {
	ShaftDiameterMM   float64 `name:"shaft_diameter" symbol:"d_s" kind:"length" means:"outside of the part that is cooled"`
	HoleDiameterMM    float64 `name:"hole_diameter" symbol:"d_b" kind:"length" means:"bore that it must enter"`
	StartTemperatureC float64 `name:"start_temperature" symbol:"T_0" kind:"temperature" means:"temperature of both to begin with"`
	AlphaPerK         float64 `name:"alpha" symbol:"alpha" kind:"expansion" means:"mean expansion of the cooled part over the span"`
	ClearanceMM       float64 `name:"assembly_clearance_diametral" symbol:"c" kind:"length" default:"0 mm" means:"gap wanted while it slips in, on the diameter"`
}

// ShrinkCoolingOutputs is the temperature at which it enters.
type ShrinkCoolingOutputs struct {
	ContractionMM        float64 `name:"contraction_needed" symbol:"s" kind:"length" means:"how much smaller the part must become, on the diameter"`
	AssemblyTemperatureC float64 `name:"assembly_temperature" symbol:"T" kind:"temperature" means:"temperature at which the part goes in"`
}

// ShrinkCooling computes the temperature at which a cooled part enters a hole.
//
//	s = d_s - d_b + c    T = T_0 - s/(alpha d_s)
//
// d_s is the outside of the part, d_b the hole, c the gap wanted [mm]; T_0 the
// temperature to begin with [degC]; alpha the mean expansion over the span [1/K].
//
// Traps: expansion falls in the cold. With the room-temperature figure the answer
// is too warm by up to 30 %: take the mean over the span (ThermalStrain).
//
// Validity: the answer lies above absolute zero; dry ice reaches -78.5 degC,
// nitrogen -196 degC.
//
// Error: that of alpha.
//
// Source: even contraction; NCERT Physics class XI exercise 10.7 (read).
func ShrinkCooling(in ShrinkCoolingInputs) (ShrinkCoolingOutputs, error) {
	var c worked.Checks
	c.Positive("shaft_diameter", in.ShaftDiameterMM)
	c.Positive("hole_diameter", in.HoleDiameterMM)
	checkTemperature(&c, "start_temperature", in.StartTemperatureC)
	checkExpansion(&c, "alpha", in.AlphaPerK)
	c.NotNegative("assembly_clearance_diametral", in.ClearanceMM)
	if err := c.Err(); err != nil {
		return ShrinkCoolingOutputs{}, err
	}
	out := ShrinkCoolingOutputs{ContractionMM: in.ShaftDiameterMM - in.HoleDiameterMM + in.ClearanceMM}
	out.AssemblyTemperatureC = in.StartTemperatureC - out.ContractionMM/(in.AlphaPerK*in.ShaftDiameterMM)
	if out.ContractionMM <= 0 {
		c.Refuse("hole_diameter", "is %g, large enough already for %g: no cooling is needed", in.HoleDiameterMM, in.ShaftDiameterMM)
	}
	if out.AssemblyTemperatureC < absoluteZeroC {
		c.Refuse("shaft_diameter", "cannot shrink into the hole: it would take %.4g degC, below absolute zero", out.AssemblyTemperatureC)
	}
	return out, c.Err()
}

// ShrinkCoolingCalculation is the catalogue entry of ShrinkCooling.
func ShrinkCoolingCalculation() worked.Calculation {
	return worked.Define("shrink_cooling_temperature", ShrinkCooling, worked.Page[ShrinkCoolingInputs, ShrinkCoolingOutputs]{
		Title:    "Temperature at which a cooled part slips in",
		Sources:  []string{"even contraction; NCERT Physics class XI exercise 10.7 (read)"},
		Validity: "above absolute zero; alpha is the mean over the span, which is lower than at room temperature",
		Formulas: []worked.Formula[ShrinkCoolingInputs, ShrinkCoolingOutputs]{
			{Symbol: "s", Is: "d_s - d_b + c", Source: "difference of sizes"},
			{Symbol: "T", Is: "T_0 - s / (alpha * d_s)", Source: "even contraction"},
		},
		Warnings: func(_ ShrinkCoolingInputs, out ShrinkCoolingOutputs) []string {
			if out.AssemblyTemperatureC < nitrogenC {
				return []string{"Colder than nitrogen reaches: heat the ear as well."}
			}
			return nil
		},
		Example: map[string]string{"shaft_diameter": "87 mm", "hole_diameter": "86.9 mm", "start_temperature": "27 degC", "alpha": "12e-6 1/K"},
	})
}
