package fit

import "boremend/knowledge/worked"

// ServiceInterferenceInputs are a fit and the temperature that it works at.
type ServiceInterferenceInputs struct {
	SeatDiameterMM  float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"seat diameter"`
	InterferenceMM  float64 `name:"interference_diametral" symbol:"delta" kind:"length" means:"interference when assembled, on the diameter"`
	HubAlphaPerK    float64 `name:"hub_alpha" symbol:"alpha_h" kind:"expansion" means:"mean expansion of the hub"`
	SleeveAlphaPerK float64 `name:"sleeve_alpha" symbol:"alpha_s" kind:"expansion" means:"mean expansion of the sleeve"`
	AssemblyC       float64 `name:"assembly" symbol:"T_0" kind:"temperature" means:"temperature at which both were measured"`
	ServiceC        float64 `name:"service" symbol:"T" kind:"temperature" means:"temperature of both parts at work"`
}

// ServiceInterferenceOutputs is the interference at work.
type ServiceInterferenceOutputs struct {
	ChangeMM       float64 `name:"change" symbol:"s" kind:"length" means:"what the temperature adds to the interference"`
	InterferenceMM float64 `name:"interference_at_service" symbol:"delta_T" kind:"length" means:"interference at work, on the diameter; below 0 it is a gap"`
}

// ServiceInterference computes the interference left when a fit of two metals
// gets colder or hotter than it was assembled.
//
//	s = d (alpha_s - alpha_h)(T - T_0)    delta_T = delta + s
//
// d is the seat, delta the interference on diameter [mm]; alpha_h, alpha_s mean
// expansions of hub and sleeve [1/K]; T_0 the temperature of assembly, T that of
// work [degC].
//
// Traps: a bronze sleeve in steel loosens in the cold, a third of a one per mille
// fit at -40 degC; hot it tightens, may yield, and is then loose when cold.
//
// Validity: both parts at T; mean expansions over the span.
//
// Error: that of the expansions.
//
// Source: even expansion of both parts (recomputed).
func ServiceInterference(in ServiceInterferenceInputs) (ServiceInterferenceOutputs, error) {
	var c worked.Checks
	c.Positive("seat_diameter", in.SeatDiameterMM)
	checkInterference(&c, "interference_diametral", in.InterferenceMM, in.SeatDiameterMM)
	checkExpansion(&c, "hub_alpha", in.HubAlphaPerK)
	checkExpansion(&c, "sleeve_alpha", in.SleeveAlphaPerK)
	checkTemperature(&c, "assembly", in.AssemblyC)
	checkTemperature(&c, "service", in.ServiceC)
	if err := c.Err(); err != nil {
		return ServiceInterferenceOutputs{}, err
	}
	s := serviceChange(in.SeatDiameterMM, in.SleeveAlphaPerK, in.HubAlphaPerK, in.ServiceC-in.AssemblyC)
	return ServiceInterferenceOutputs{ChangeMM: s, InterferenceMM: in.InterferenceMM + s}, nil
}

// serviceChange is what a rise of temperature adds to an interference.
func serviceChange(d, sleeveAlpha, hubAlpha, rise float64) float64 {
	return d * (sleeveAlpha - hubAlpha) * rise
}

// ServiceInterferenceCalculation is the catalogue entry of ServiceInterference.
func ServiceInterferenceCalculation() worked.Calculation {
	return worked.Define("service_interference", ServiceInterference, worked.Page[ServiceInterferenceInputs, ServiceInterferenceOutputs]{
		Title:    "Interference left at working temperature",
		Sources:  []string{"even expansion of both parts (recomputed)"},
		Validity: "both parts at the same temperature; mean expansions over the span",
		Formulas: []worked.Formula[ServiceInterferenceInputs, ServiceInterferenceOutputs]{
			{Symbol: "s", Is: "d * (alpha_s - alpha_h) * (T - T_0)", Source: "difference of expansions"},
			{Symbol: "delta_T", Is: "delta + s", Source: "sum"},
		},
		Warnings: func(_ ServiceInterferenceInputs, out ServiceInterferenceOutputs) []string {
			if out.InterferenceMM <= 0 {
				return []string{"Loose: at this temperature nothing holds the sleeve."}
			}
			return nil
		},
		Example: map[string]string{
			"seat_diameter": "100 mm", "interference_diametral": "0.1 mm", "hub_alpha": "11.7e-6 1/K", "sleeve_alpha": "17e-6 1/K",
			"assembly": "20 degC", "service": "-40 degC",
		},
	})
}
