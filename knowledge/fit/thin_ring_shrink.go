package fit

import "boremend/knowledge/worked"

// ThinRingInputs are a hot thin ring that cools on a stiff wheel.
type ThinRingInputs struct {
	RingDiameterMM   float64 `name:"ring_diameter" symbol:"d" kind:"length" means:"diameter of the ring"`
	RingThicknessMM  float64 `name:"ring_thickness" symbol:"t" kind:"length" means:"wall of the ring"`
	TemperatureDropK float64 `name:"temperature_drop" symbol:"dT" kind:"temperature_change" means:"cooling after it just fits"`
	AlphaPerK        float64 `name:"alpha" symbol:"alpha" kind:"expansion" means:"mean expansion of the ring"`
	RingEMPa         float64 `name:"ring_e" symbol:"E" kind:"stress" means:"modulus of elasticity of the ring"`
}

// ThinRingOutputs are the stress and the pressure left after cooling.
type ThinRingOutputs struct {
	RingHoopMPa float64 `name:"ring_hoop" symbol:"sigma" kind:"stress" means:"hoop stress of the ring"`
	PressureMPa float64 `name:"pressure" symbol:"p" kind:"pressure" means:"pressure on the wheel"`
}

// ThinRing computes the stress of a thin ring that was put on hot and cools on a
// wheel that does not give way.
//
//	sigma = E alpha dT    p = 2 sigma t/d
//
// d is the ring diameter, t its wall [mm]; dT the cooling [K]; alpha the
// expansion [1/K]; E the modulus [MPa].
//
// Validity: t up to d/20, a stiff wheel, elastic. A wheel that gives way lowers
// both answers.
//
// Error: about t/d.
//
// Source: thin ring; Singer and Pytel, Strength of Materials, Problem 267
// (statement read, recomputed).
func ThinRing(in ThinRingInputs) (ThinRingOutputs, error) {
	var c worked.Checks
	c.Positive("ring_diameter", in.RingDiameterMM)
	c.Positive("ring_thickness", in.RingThicknessMM)
	if in.RingThicknessMM > in.RingDiameterMM/20 {
		c.Refuse("ring_thickness", "is %g, the thin-ring formula holds up to a twentieth of the diameter %g", in.RingThicknessMM, in.RingDiameterMM)
	}
	c.Between("temperature_drop", in.TemperatureDropK, 1e-6, 1000)
	checkExpansion(&c, "alpha", in.AlphaPerK)
	c.Between("ring_e", in.RingEMPa, 1e3, 700e3)
	if err := c.Err(); err != nil {
		return ThinRingOutputs{}, err
	}
	hoop := in.RingEMPa * in.AlphaPerK * in.TemperatureDropK
	return ThinRingOutputs{RingHoopMPa: hoop, PressureMPa: 2 * hoop * in.RingThicknessMM / in.RingDiameterMM}, nil
}

// ThinRingCalculation is the catalogue entry of ThinRing.
func ThinRingCalculation() worked.Calculation {
	return worked.Define("thin_ring_shrink", ThinRing, worked.Page[ThinRingInputs, ThinRingOutputs]{
		Title:    "Stress of a thin ring shrunk on",
		Sources:  []string{"thin ring; Singer and Pytel, Strength of Materials, Problem 267 (statement read)"},
		Validity: "wall up to a twentieth of the diameter, stiff wheel, elastic",
		Formulas: []worked.Formula[ThinRingInputs, ThinRingOutputs]{
			{Symbol: "sigma", Is: "E * alpha * dT", Source: "expansion held back"},
			{Symbol: "p", Is: "2 * sigma * t / d", Source: "thin ring"},
		},
		Example: map[string]string{"ring_diameter": "2 m", "ring_thickness": "12 mm", "temperature_drop": "55 K", "alpha": "11.7e-6 1/K", "ring_e": "200 GPa"},
	})
}
