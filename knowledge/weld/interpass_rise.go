package weld

import "boremend/knowledge/worked"

// InterpassRiseInputs are the arc and the boss that takes its heat.
type InterpassRiseInputs struct {
	Voltage      float64 `name:"voltage" symbol:"U" kind:"ratio" means:"arc voltage, in volts"`
	Current      float64 `name:"current" symbol:"I" kind:"ratio" means:"welding current, in amperes"`
	Efficiency   float64 `name:"efficiency" symbol:"k" kind:"ratio" default:"0.8" means:"thermal efficiency of the arc"`
	ArcS         float64 `name:"arc_time" symbol:"t" kind:"time" means:"arc time without a stop"`
	MassKG       float64 `name:"mass" symbol:"m" kind:"mass" means:"metal that warms up"`
	SpecificHeat float64 `name:"specific_heat" symbol:"c" kind:"ratio" default:"0.49" means:"specific heat, in kJ/(kg K)"`
}

// InterpassRiseOutputs is the bound on the rise.
type InterpassRiseOutputs struct {
	RiseK float64 `name:"temperature_rise" symbol:"dT" kind:"temperature_change" means:"rise if no heat were lost"`
}

// InterpassRise computes the most that continuous welding can warm a boss.
//
//	dT = k U I t / (1000 m c)
//
// U is the arc voltage [V], I the current [A], k the thermal efficiency [-], t
// the arc time [s], m the metal that warms up [kg], c its specific heat
// [kJ/(kg K)].
//
// A helical build-up runs without a stop and overtakes an interpass limit of
// 200 degC quickly: plan stops.
//
// Validity: an upper bound, since losses are left out. Rises above 1000 K are
// refused: the metal that warms up is then more than was entered.
//
// Error: the mass that takes part, a factor of two (judgement).
//
// Source: heat balance, recomputed.
func InterpassRise(in InterpassRiseInputs) (InterpassRiseOutputs, error) {
	var c worked.Checks
	c.Positive("voltage", in.Voltage)
	c.Positive("current", in.Current)
	c.Between("efficiency", in.Efficiency, 0.1, 1)
	c.Positive("arc_time", in.ArcS)
	c.Positive("mass", in.MassKG)
	c.Between("specific_heat", in.SpecificHeat, 0.3, 1)
	if err := c.Err(); err != nil {
		return InterpassRiseOutputs{}, err
	}
	rise := in.Efficiency * in.Voltage * in.Current * in.ArcS / (1000 * in.MassKG * in.SpecificHeat)
	if !(rise <= 1000) {
		c.Refuse("mass", "is %g kg and would rise by %.3g K, beyond 1000 K: more metal than that takes part", in.MassKG, rise)
		return InterpassRiseOutputs{}, c.Err()
	}
	return InterpassRiseOutputs{rise}, nil
}

// InterpassRiseCalculation is the catalogue entry of InterpassRise.
func InterpassRiseCalculation() worked.Calculation {
	return worked.Define("interpass_rise", InterpassRise, worked.Page[InterpassRiseInputs, InterpassRiseOutputs]{
		Title:    "Most that welding can warm a boss",
		Sources:  []string{"heat balance, recomputed"},
		Validity: "an upper bound, to 1000 K",
		Formulas: []worked.Formula[InterpassRiseInputs, InterpassRiseOutputs]{
			{Symbol: "dT", Is: "k * U * I * t / (1000 * m * c)", Source: "heat balance"},
		},
		Warnings: func(InterpassRiseInputs, InterpassRiseOutputs) []string {
			return []string{"Add the preheat, and compare with the interpass limit of the procedure: plan stops."}
		},
		Example: map[string]string{"voltage": "19", "current": "170", "arc_time": "20 min", "mass": "30 kg"},
	})
}
