package fit

import (
	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// ThermalStrainInputs are a metal and two temperatures.
type ThermalStrainInputs struct {
	Material string  `name:"material" choices:"carbon_steel,stainless_18_8,aluminium,copper" means:"metal of the expansion table"`
	FromC    float64 `name:"from" symbol:"T_1" kind:"temperature" means:"temperature to begin with"`
	ToC      float64 `name:"to" symbol:"T_2" kind:"temperature" means:"temperature at the end"`
}

// ThermalStrainOutputs are the strain and the mean expansion.
type ThermalStrainOutputs struct {
	Strain         float64 `name:"strain" symbol:"eps" kind:"ratio" means:"change of length over length, negative on cooling"`
	MeanExpansionK float64 `name:"mean_expansion" symbol:"alpha_m" kind:"expansion" means:"mean expansion over the span"`
}

// ThermalStrain looks the strain of a metal between two temperatures up in a
// table, and gives the mean expansion over the span.
//
//	eps = eps(T_2) - eps(T_1)    alpha_m = eps/(T_2 - T_1)
//
// T_1 and T_2 are temperatures [degC]; eps the strain; alpha_m its mean rate
// [1/K].
//
// Traps: steel from room temperature to nitrogen shrinks by 1.96 per mille. The
// room-temperature figure of 11.7e-6 would say 2.54, which is 30 % too much; a
// bridge trunnion has stuck half way in for that reason.
//
// Validity: -198 to 316 degC (-325 to 600 degF); copper from -73 to 288 degC.
// There is no column for bronze.
//
// Error: the table is rounded to 0.01 in on 100 ft, 8 millionths.
//
// Source: maker of expansion joints, thermal expansion in inches per 100 ft from
// 70 degF, hyspan.com/thermal-expansion (read).
func ThermalStrain(in ThermalStrainInputs) (ThermalStrainOutputs, error) {
	var c worked.Checks
	checkTemperature(&c, "from", in.FromC)
	checkTemperature(&c, "to", in.ToC)
	if in.FromC == in.ToC {
		c.Refuse("to", "is the same temperature as from, %g degC", in.ToC)
	}
	if err := c.Err(); err != nil {
		return ThermalStrainOutputs{}, err
	}
	strain, err := material.Strain(in.Material, in.FromC, in.ToC)
	if err != nil {
		return ThermalStrainOutputs{}, &worked.Refusal{Input: "material", Says: err.Error()}
	}
	return ThermalStrainOutputs{Strain: strain, MeanExpansionK: strain / (in.ToC - in.FromC)}, nil
}

const expansionTable = "expansion in inches per 100 ft, hyspan.com/thermal-expansion (read)"

// ThermalStrainCalculation is the catalogue entry of ThermalStrain.
func ThermalStrainCalculation() worked.Calculation {
	return worked.Define("thermal_strain", ThermalStrain, worked.Page[ThermalStrainInputs, ThermalStrainOutputs]{
		Title:    "Strain of a metal between two temperatures",
		Sources:  []string{expansionTable},
		Validity: "-198 to 316 degC (-325 to 600 degF); copper from -73 to 288 degC; no bronze",
		Formulas: []worked.Formula[ThermalStrainInputs, ThermalStrainOutputs]{
			{Symbol: "eps", Table: expansionTable},
			{Symbol: "alpha_m", Is: "eps / (T_2 - T_1)", Source: "mean over the span"},
		},
		Example: map[string]string{"material": "carbon_steel", "from": "70 degF", "to": "-320 degF"},
	})
}
