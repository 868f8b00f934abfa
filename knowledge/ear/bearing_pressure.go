package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// BearingPressureInputs are a pin's load and the hole that carries it.
type BearingPressureInputs struct {
	ForceN     float64 `name:"force" symbol:"F" kind:"force" means:"load of the pin on this ear or bush"`
	DiameterMM float64 `name:"diameter" symbol:"d" kind:"length" means:"bore"`
	LengthMM   float64 `name:"length" symbol:"L" kind:"length" means:"length that carries"`
}

// BearingPressureOutputs are the mean and the peak of a neat pin.
type BearingPressureOutputs struct {
	MeanMPa float64 `name:"mean" symbol:"p" kind:"pressure" means:"mean pressure over the projected area"`
	PeakMPa float64 `name:"cosine_peak" symbol:"p_c" kind:"pressure" means:"peak pressure of a neat pin"`
}

// BearingPressure computes the pressure under a pin.
//
//	p   = F/(d L)
//	p_c = 4 F/(pi d L)
//
// F is the load [N], d the bore and L the length that carries [mm], pressure in
// MPa. p_c holds for a pressure that follows the cosine of the angle, that is for
// a pin without slack; with slack see ConformalContact.
//
// Published mean pressures for greased, slow swinging joints lie five times apart:
// steel on bronze 8 and hard on hard 15 MPa for a long life in German tables (from
// memory); makers of bronze allow 20 to 55 MPa; hardened steel on hardened steel 100 MPa
// swinging (from memory). So the number is shown and not judged here.
//
// Validity: even load along the length; bending of the pin adds at its ends.
//
// Error: that of the load.
//
// Source: any text on machine elements; recomputed.
func BearingPressure(in BearingPressureInputs) (BearingPressureOutputs, error) {
	var c worked.Checks
	c.Positive("force", in.ForceN)
	c.Positive("diameter", in.DiameterMM)
	c.Positive("length", in.LengthMM)
	if err := c.Err(); err != nil {
		return BearingPressureOutputs{}, err
	}
	mean := in.ForceN / (in.DiameterMM * in.LengthMM)
	return BearingPressureOutputs{MeanMPa: mean, PeakMPa: 4 / math.Pi * mean}, nil
}

// BearingPressureCalculation is the catalogue entry of BearingPressure.
func BearingPressureCalculation() worked.Calculation {
	return worked.Define("bearing_pressure", BearingPressure, worked.Page[BearingPressureInputs, BearingPressureOutputs]{
		Title:    "Pressure under a pin",
		Sources:  []string{"any text on machine elements, recomputed"},
		Validity: "even load along the length; the peak holds for a pin without slack",
		Formulas: []worked.Formula[BearingPressureInputs, BearingPressureOutputs]{
			{Symbol: "p", Is: "F / (d * L)", Source: "definition"},
			{Symbol: "p_c", Is: "4 / pi * p", Source: "cosine pressure"},
		},
		Warnings: func(BearingPressureInputs, BearingPressureOutputs) []string {
			return []string{notCovered, "Slack of 0.2 to 0.8 mm on the radius can raise the peak to three to seven times the mean."}
		},
		Example: map[string]string{"force": "250 kN", "diameter": "80 mm", "length": "100 mm"},
	})
}
