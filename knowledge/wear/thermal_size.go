package wear

import "boremend/knowledge/worked"

// ThermalSizeInputs are a diameter and how much warmer the part is.
type ThermalSizeInputs struct {
	DiameterMM float64 `name:"diameter" symbol:"D" kind:"length" means:"diameter as measured"`
	AlphaPerK  float64 `name:"alpha" symbol:"alpha" kind:"expansion" default:"11.5e-6 1/K" means:"expansion of the part"`
	WarmerK    float64 `name:"delta_t" symbol:"dT" kind:"temperature_change" means:"how much warmer the part was than it will be; negative for colder"`
}

// ThermalSizeOutputs are the change and the size once it has cooled.
type ThermalSizeOutputs struct {
	ChangeMM float64 `name:"change" symbol:"e" kind:"length" means:"what the part was larger by"`
	CoolMM   float64 `name:"diameter_cool" symbol:"D_c" kind:"length" means:"diameter once the part has cooled"`
}

// ThermalSize computes what a warm part loses when it cools.
//
//	e   = alpha D dT
//	D_c = D - e
//
// D is the diameter as measured [mm], alpha the expansion [1/K], dT how much
// warmer it was [K].
//
// A bore of 100 mm still 40 K warm from welding loses 0.046 mm, half a medium
// press fit: let it cool before the last cut and before measuring.
//
// Validity: the whole part evenly warm, up to 300 K; a bore in metal that is cold
// further out does not grow freely.
//
// Error: alpha 5 %, the temperature far more.
//
// Source: linear expansion; 11.5e-6 1/K for carbon steel as in a public caliper
// uncertainty sheet (read).
func ThermalSize(in ThermalSizeInputs) (ThermalSizeOutputs, error) {
	var c worked.Checks
	c.Positive("diameter", in.DiameterMM)
	c.Between("alpha", in.AlphaPerK, 1e-7, 1e-4)
	c.Between("delta_t", in.WarmerK, -300, 300)
	if err := c.Err(); err != nil {
		return ThermalSizeOutputs{}, err
	}
	out := ThermalSizeOutputs{ChangeMM: in.AlphaPerK * in.DiameterMM * in.WarmerK}
	out.CoolMM = in.DiameterMM - out.ChangeMM
	return out, nil
}

// ThermalSizeCalculation is the catalogue entry of ThermalSize.
func ThermalSizeCalculation() worked.Calculation {
	return worked.Define("thermal_size", ThermalSize, worked.Page[ThermalSizeInputs, ThermalSizeOutputs]{
		Title:    "Size of a warm part once it has cooled",
		Sources:  []string{"linear expansion; 11.5e-6 1/K for carbon steel as in a public caliper uncertainty sheet (read)"},
		Validity: "the whole part evenly warm, within 300 K",
		Formulas: []worked.Formula[ThermalSizeInputs, ThermalSizeOutputs]{
			{Symbol: "e", Is: "alpha * D * dT", Source: "linear expansion"},
			{Symbol: "D_c", Is: "D - e", Source: "linear expansion"},
		},
		Example: map[string]string{"diameter": "100 mm", "delta_t": "40 K"},
	})
}
