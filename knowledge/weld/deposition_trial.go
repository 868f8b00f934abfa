package weld

import "boremend/knowledge/worked"

// DepositionRateTestInputs are a trial bead on the scale and the clock.
type DepositionRateTestInputs struct {
	GainKG float64 `name:"mass_gain" symbol:"m" kind:"mass" means:"gain of the plate in mass"`
	TimeS  float64 `name:"time" symbol:"t" kind:"time" means:"arc time"`
}

// DepositionRateTestOutputs is the rate.
type DepositionRateTestOutputs struct {
	DepositKG float64 `name:"deposition" symbol:"r" kind:"mass" means:"weld metal laid down in an hour of arc"`
}

// DepositionRateTest computes the deposition rate from a weighed trial bead.
//
//	r = 3600 m / t
//
// m is what the plate gained [kg], t the arc time [s]; r in kg for an hour of arc.
//
// Validity: slag and spatter removed before weighing.
//
// Error: the scale; weld for a minute or more.
//
// Source: consumables maker, deposition data sheet (scribd.com document
// 313114853), read.
func DepositionRateTest(in DepositionRateTestInputs) (DepositionRateTestOutputs, error) {
	var c worked.Checks
	c.Positive("mass_gain", in.GainKG)
	c.Positive("time", in.TimeS)
	if err := c.Err(); err != nil {
		return DepositionRateTestOutputs{}, err
	}
	return DepositionRateTestOutputs{hourS * in.GainKG / in.TimeS}, nil
}

// DepositionRateTestCalculation is the catalogue entry of DepositionRateTest.
func DepositionRateTestCalculation() worked.Calculation {
	return worked.Define("deposition_rate_test", DepositionRateTest, worked.Page[DepositionRateTestInputs, DepositionRateTestOutputs]{
		Title:    "Deposition rate from a weighed trial bead",
		Sources:  []string{"consumables maker, deposition data sheet (scribd.com/document/313114853), read"},
		Validity: "slag and spatter removed before weighing",
		Formulas: []worked.Formula[DepositionRateTestInputs, DepositionRateTestOutputs]{
			{Symbol: "r", Is: "3600 * m / t", Source: "definition"},
		},
		Example: map[string]string{"mass_gain": "95 g", "time": "60 s"},
	})
}
