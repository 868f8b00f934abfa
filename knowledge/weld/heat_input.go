package weld

import "boremend/knowledge/worked"

// HeatInputInputs are what the meters show, and what share of it reaches the work.
type HeatInputInputs struct {
	Voltage       float64         `name:"voltage" symbol:"U" kind:"ratio" means:"arc voltage, in volts"`
	Current       float64         `name:"current" symbol:"I" kind:"ratio" means:"welding current, in amperes"`
	TravelMPerMin float64         `name:"travel" symbol:"v" kind:"speed" means:"travel speed of the arc along the bead"`
	Efficiency    worked.Optional `name:"efficiency" kind:"ratio" means:"thermal efficiency; from the process if not given"`
	Process       string          `name:"process" choices:"unknown,111,114,121,131,135,136,138,141,15" default:"unknown" means:"process number of ISO 4063"`
}

// HeatInputOutputs are the arc energy and the heat input.
type HeatInputOutputs struct {
	Efficiency float64 `name:"efficiency_used" symbol:"k" kind:"ratio" means:"thermal efficiency used"`
	ArcEnergy  float64 `name:"arc_energy" symbol:"E_a" kind:"heat_input" means:"energy of the arc a length of bead, as US codes print it"`
	HeatInput  float64 `name:"heat_input" symbol:"Q" kind:"heat_input" means:"heat that reaches the work a length of bead"`
}

// HeatInput computes the heat put into the work a length of bead.
//
//	E_a = 60 U I / (10^6 v)
//	Q   = k E_a
//
// U is the arc voltage [V], I the current [A], v the travel speed [m/min], k
// the thermal efficiency [-]; E_a and Q are in kJ/mm.
//
// k is 0.8 for processes 111, 114, 131, 135, 136 and 138, 1.0 for 121, 0.6 for
// 141 and 15. US codes call E_a itself the heat input: convert before mixing.
//
// Validity: arithmetic; k from 0.1 to 1.
//
// Error: that of the travel speed, in a bore often 10 %.
//
// Source: EN 1011-1 (table of k read in public pages of TWI and a plate maker;
// standard not read). The form 0.006 U I/v with v in cm/min stands as equation 2
// in Japan Welding Engineering Society, Determination of Necessary Preheat
// Temperature (2009), read.
func HeatInput(in HeatInputInputs) (HeatInputOutputs, error) {
	var c worked.Checks
	c.Positive("voltage", in.Voltage)
	c.Positive("current", in.Current)
	c.Positive("travel", in.TravelMPerMin)
	k, known := in.Efficiency.Value, in.Efficiency.Known
	if !known {
		k, known = thermalEfficiency(in.Process)
	}
	if !known {
		c.Refuse("efficiency", "is not known: give it, or a process of 111, 114, 121, 131, 135, 136, 138, 141, 15")
	} else {
		c.Between("efficiency", k, 0.1, 1)
	}
	if err := c.Err(); err != nil {
		return HeatInputOutputs{}, err
	}
	out := HeatInputOutputs{Efficiency: k, ArcEnergy: 60 * in.Voltage * in.Current / (1e6 * in.TravelMPerMin)}
	out.HeatInput = k * out.ArcEnergy
	return out, nil
}

// thermalEfficiency is the table of EN 1011-1.
func thermalEfficiency(process string) (float64, bool) {
	switch process {
	case "111", "114", "131", "135", "136", "138":
		return 0.8, true
	case "121":
		return 1, true
	case "141", "15":
		return 0.6, true
	}
	return 0, false
}

// HeatInputCalculation is the catalogue entry of HeatInput.
func HeatInputCalculation() worked.Calculation {
	return worked.Define("heat_input", HeatInput, worked.Page[HeatInputInputs, HeatInputOutputs]{
		Title: "Heat input of a bead",
		Sources: []string{
			"EN 1011-1, Q = k U I / v; table of k read in public pages of TWI and a plate maker, standard not read",
			"Japan Welding Engineering Society, Determination of Necessary Preheat Temperature (2009), eq. 2, read",
		},
		Validity: "efficiency 0.1 to 1",
		Formulas: []worked.Formula[HeatInputInputs, HeatInputOutputs]{
			{Symbol: "k", Table: "as given, or EN 1011-1: 0.8 for 111, 114, 131, 135, 136, 138; 1.0 for 121; 0.6 for 141, 15", Source: "EN 1011-1"},
			{Symbol: "E_a", Is: "60 * U * I / (1000000 * v)", Source: "EN 1011-1"},
			{Symbol: "Q", Is: "k * E_a", Source: "EN 1011-1"},
		},
		Warnings: func(HeatInputInputs, HeatInputOutputs) []string {
			return []string{"US codes print the arc energy and call it heat input: compare like with like."}
		},
		Example: map[string]string{"voltage": "19", "current": "170", "travel": "192 mm/min", "process": "114"},
	})
}
