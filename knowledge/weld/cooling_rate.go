package weld

import "boremend/knowledge/worked"

// CoolingRateInputs is the cooling time.
type CoolingRateInputs struct {
	T85S float64 `name:"t85" symbol:"t85" kind:"time" means:"cooling time from 800 to 500 degC"`
}

// CoolingRateOutputs is the rate in the middle of that range.
type CoolingRateOutputs struct {
	CoolingRateKPerS float64 `name:"cooling_rate" symbol:"R540" kind:"temperature_change" means:"cooling in one second at 540 degC"`
}

// CoolingRate turns the cooling time into the cooling rate that some codes name.
//
//	R540 = 300 / t85
//
// t85 is the cooling time from 800 to 500 degC [s], R540 the cooling in one
// second near 540 degC [K].
//
// Validity: t85 above zero. Error: a definition, not a measurement; the true
// rate falls along the range.
//
// Source: Japan Welding Engineering Society, Determination of Necessary Preheat
// Temperature (2009), equation 4, read.
func CoolingRate(in CoolingRateInputs) (CoolingRateOutputs, error) {
	var c worked.Checks
	c.Positive("t85", in.T85S)
	if err := c.Err(); err != nil {
		return CoolingRateOutputs{}, err
	}
	return CoolingRateOutputs{CoolingRateKPerS: 300 / in.T85S}, nil
}

// CoolingRateCalculation is the catalogue entry of CoolingRate.
func CoolingRateCalculation() worked.Calculation {
	return worked.Define("cooling_rate", CoolingRate, worked.Page[CoolingRateInputs, CoolingRateOutputs]{
		Title:    "Cooling rate at 540 degC",
		Sources:  []string{"Japan Welding Engineering Society, Determination of Necessary Preheat Temperature (2009), eq. 4, read"},
		Validity: "a definition",
		Formulas: []worked.Formula[CoolingRateInputs, CoolingRateOutputs]{
			{Symbol: "R540", Is: "300 / t85", Source: "JWES 2009, eq. 4"},
		},
		Example: map[string]string{"t85": "7.5 s"},
	})
}
