package weld

import "boremend/knowledge/worked"

// PreheatEnergyInputs are the metal to be heated and the burner.
type PreheatEnergyInputs struct {
	MassKG       float64 `name:"mass" symbol:"m" kind:"mass" means:"metal to be heated"`
	StartC       float64 `name:"start" symbol:"T_1" kind:"temperature" means:"temperature before"`
	TargetC      float64 `name:"target" symbol:"T_2" kind:"temperature" means:"temperature wanted"`
	SpecificHeat float64 `name:"specific_heat" symbol:"c" kind:"ratio" default:"0.49" means:"specific heat, in kJ/(kg K)"`
	Efficiency   float64 `name:"heating_efficiency" symbol:"eta" kind:"ratio" default:"0.3" means:"share of the fuel's heat that enters the metal: 0.3 for a torch"`
	BurnerKW     float64 `name:"burner" symbol:"P" kind:"power" means:"heat of the fuel burnt"`
}

// PreheatEnergyOutputs are fuel heat and time.
type PreheatEnergyOutputs struct {
	EnergyKJ float64 `name:"energy" symbol:"E" kind:"energy" means:"heat of the fuel that is needed"`
	TimeS    float64 `name:"time" symbol:"t" kind:"time" means:"time at that burner"`
}

// PreheatEnergy computes the fuel heat and the time to warm a boss.
//
//	E = m c (T_2 - T_1) / eta
//	t = E / P
//
// m is the metal [kg], c its specific heat [kJ/(kg K)], T_1 and T_2 in degC, eta
// the share that enters the metal [-], P the burner [kW]; E in kJ, t in s.
//
// Validity: T_2 above T_1, to 700 degC. Heat that flows off into the rest of the
// machine is not counted. Afterwards soak about a minute for each millimetre of
// wall (judgement) and measure on the far side.
//
// Error: eta of a hand torch, 0.2 to 0.4 (from memory).
//
// Source: heat balance, recomputed; specific heat of steel, rounded.
func PreheatEnergy(in PreheatEnergyInputs) (PreheatEnergyOutputs, error) {
	var c worked.Checks
	c.Positive("mass", in.MassKG)
	c.Between("start", in.StartC, -60, 700)
	c.Between("target", in.TargetC, -60, 700)
	c.Below("start", in.StartC, "target", in.TargetC)
	c.Between("specific_heat", in.SpecificHeat, 0.3, 1)
	c.Between("heating_efficiency", in.Efficiency, 0.01, 1)
	c.Positive("burner", in.BurnerKW)
	if err := c.Err(); err != nil {
		return PreheatEnergyOutputs{}, err
	}
	out := PreheatEnergyOutputs{EnergyKJ: in.MassKG * in.SpecificHeat * (in.TargetC - in.StartC) / in.Efficiency}
	out.TimeS = out.EnergyKJ / in.BurnerKW
	return out, nil
}

// PreheatEnergyCalculation is the catalogue entry of PreheatEnergy.
func PreheatEnergyCalculation() worked.Calculation {
	return worked.Define("preheat_energy", PreheatEnergy, worked.Page[PreheatEnergyInputs, PreheatEnergyOutputs]{
		Title:    "Heat and time to preheat a boss",
		Sources:  []string{"heat balance, recomputed; torch efficiency 0.3 from memory"},
		Validity: "to 700 degC; heat that flows off into the rest of the machine is not counted",
		Formulas: []worked.Formula[PreheatEnergyInputs, PreheatEnergyOutputs]{
			{Symbol: "E", Is: "m * c * (T_2 - T_1) / eta", Source: "heat balance"},
			{Symbol: "t", Is: "E / P", Source: "heat balance"},
		},
		Warnings: func(PreheatEnergyInputs, PreheatEnergyOutputs) []string {
			return []string{"Soak about a minute for each millimetre of wall, then measure on the far side."}
		},
		Example: map[string]string{"mass": "25 kg", "start": "15 degC", "target": "150 degC", "burner": "20 kW"},
	})
}
