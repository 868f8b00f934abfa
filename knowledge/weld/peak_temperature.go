package weld

import "boremend/knowledge/worked"

// PeakTemperatureInputs are the plate, the bead and the place that is asked about.
type PeakTemperatureInputs struct {
	StartC       float64 `name:"start_temperature" symbol:"T_0" kind:"temperature" means:"temperature of the plate before"`
	MeltingC     float64 `name:"melting_temperature" symbol:"T_m" kind:"temperature" default:"1500 degC" means:"melting temperature"`
	DensityKGM3  float64 `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density"`
	SpecificHeat float64 `name:"specific_heat" symbol:"c" kind:"ratio" default:"0.49" means:"specific heat, in kJ/(kg K)"`
	ThicknessMM  float64 `name:"thickness" symbol:"t" kind:"length" means:"thickness of the plate"`
	DistanceMM   float64 `name:"distance" symbol:"x" kind:"length" means:"distance from the fusion line"`
	HeatInput    float64 `name:"heat_input" symbol:"H" kind:"heat_input" means:"heat input of the bead"`
}

// PeakTemperatureOutputs is the highest temperature there.
type PeakTemperatureOutputs struct {
	PeakC float64 `name:"peak" symbol:"T_p" kind:"temperature" means:"highest temperature at that distance"`
}

// PeakTemperature computes how hot the metal gets at a distance from the fusion
// line of a thin plate.
//
//	1/(T_p - T_0) = 4.132 rho c t x / H + 1/(T_m - T_0)
//
// T_0, T_m and T_p are the temperatures before, at melting and at the peak
// [degC], rho the density [kg/m3 10^-6 = g/mm3], c the specific heat [kJ/(kg K)],
// t the thickness and x the distance [mm], H the heat input [J/mm].
//
// Validity: a plate that is thin for the bead (see CoolingTimeT85), one pass.
//
// Error: the page's own example comes out 1.4 % lower than printed.
//
// Source: Adams, as given in the Virtual Labs of IIT Kharagpur (heat flow in a
// weld bead), read.
func PeakTemperature(in PeakTemperatureInputs) (PeakTemperatureOutputs, error) {
	var c worked.Checks
	c.Between("start_temperature", in.StartC, -60, 700)
	c.Between("melting_temperature", in.MeltingC, 700, 2000)
	c.Below("start_temperature", in.StartC, "melting_temperature", in.MeltingC)
	c.Positive("density", in.DensityKGM3)
	c.Between("specific_heat", in.SpecificHeat, 0.3, 1)
	c.Positive("thickness", in.ThicknessMM)
	c.NotNegative("distance", in.DistanceMM)
	c.Positive("heat_input", in.HeatInput)
	if err := c.Err(); err != nil {
		return PeakTemperatureOutputs{}, err
	}
	slope := 4.132 * in.DensityKGM3 * 1e-6 * in.SpecificHeat * in.ThicknessMM * in.DistanceMM / (1000 * in.HeatInput)
	return PeakTemperatureOutputs{in.StartC + 1/(slope+1/(in.MeltingC-in.StartC))}, nil
}

// PeakTemperatureCalculation is the catalogue entry of PeakTemperature.
func PeakTemperatureCalculation() worked.Calculation {
	const page = "Virtual Labs of IIT Kharagpur, heat flow in a weld bead"
	return worked.Define("peak_temperature", PeakTemperature, worked.Page[PeakTemperatureInputs, PeakTemperatureOutputs]{
		Title:    "Highest temperature beside a bead on thin plate",
		Sources:  []string{"Adams, as given in " + page + ", read"},
		Validity: "a plate that is thin for the bead, one pass",
		Formulas: []worked.Formula[PeakTemperatureInputs, PeakTemperatureOutputs]{
			{Symbol: "T_p", Is: "T_0 + 1 / (4.132 * rho / 1000000 * c * t * x / (1000 * H) + 1 / (T_m - T_0))", Source: page},
		},
		Example: map[string]string{"start_temperature": "20 degC", "thickness": "6 mm", "distance": "5 mm", "heat_input": "0.8 kJ/mm"},
	})
}
