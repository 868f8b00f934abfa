package bolt

import "boremend/knowledge/worked"

// NutFactorInputs name the state of a thread.
type NutFactorInputs struct {
	Condition string `name:"condition" choices:"plain_black,zinc_plated,lubricated,cadmium_plated,anti_seize,low_friction_nut,oiled,clean_dry,rusty_gritty" means:"state of thread and face under the head"`
}

// NutFactorOutputs hold the factor.
type NutFactorOutputs struct {
	NutFactor float64 `name:"nut_factor" symbol:"K" kind:"ratio" means:"nut factor"`
}

// NutFactor looks up how much of a torque friction eats, for T = K d F.
//
// Plain black 0.30, zinc plated 0.20, lubricated 0.18, cadmium 0.16, anti-seize
// 0.12, a low-friction nut 0.09; by the rule of the field 0.15 with any oil, 0.20
// cleaned and dry, 0.30 gritty.
//
// Validity: the states listed.
//
// Error: measured factors run from 0.09 to 0.30; one lubricated lot of ten bolts
// scattered by 8.4 % of its preload. Work with a range: BoltTightening.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., tables 8-14 and 8-15
// p. 439 (read); rule of the field (read).
func NutFactor(in NutFactorInputs) (NutFactorOutputs, error) {
	var c worked.Checks
	all, err := nutFactors()
	if err != nil {
		return NutFactorOutputs{}, err
	}
	f, ok := factorOf(all, in.Condition)
	if !ok {
		c.Refuse("condition", "is %q, which is not listed", in.Condition)
	}
	return NutFactorOutputs{NutFactor: f.value}, c.Err()
}

// NutFactorCalculation is the catalogue entry of NutFactor.
func NutFactorCalculation() worked.Calculation {
	const source = "Shigley's Mechanical Engineering Design, 9th ed., table 8-15 (read); oiled, clean_dry, rusty_gritty: rule of the field (read)"
	return worked.Define("nut_factor", NutFactor, worked.Page[NutFactorInputs, NutFactorOutputs]{
		Title:    "Nut factor by the state of the thread",
		Sources:  []string{source},
		Validity: "the states listed",
		Formulas: []worked.Formula[NutFactorInputs, NutFactorOutputs]{{Symbol: "K", Table: "nut factors, by the state of the thread", Source: source}},
		Warnings: func(NutFactorInputs, NutFactorOutputs) []string {
			return []string{"Measured factors run from 0.09 to 0.30: work with a range and not with one figure.", notCovered}
		},
		Example: map[string]string{"condition": "zinc_plated"},
	})
}
