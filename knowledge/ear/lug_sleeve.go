package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// LugSleeveInputs are a pin with slack in a sleeve that sits in an ear.
type LugSleeveInputs struct {
	PinMM        float64 `name:"pin_dia" symbol:"d_p" kind:"length" means:"pin, taken as the bore of the sleeve"`
	SleeveWallMM float64 `name:"sleeve_wall" symbol:"w" kind:"length" means:"wall of the sleeve"`
	ThicknessMM  float64 `name:"thickness" symbol:"t" kind:"length" means:"thickness of the ear along the pin"`
	ForceN       float64 `name:"force" symbol:"F" kind:"force" means:"load of the pin on this ear, into the solid"`
	ClearanceMM  float64 `name:"pin_clearance_dia" symbol:"c_d" kind:"length" means:"slack of the pin on the diameter"`
	PinEMPa      float64 `name:"pin_e" symbol:"E_p" kind:"stress" default:"205000 MPa" means:"modulus of pin and sleeve"`
	EarEMPa      float64 `name:"ear_e" symbol:"E_h" kind:"stress" default:"205000 MPa" means:"modulus of the ear"`
}

// LugSleeveOutputs is the pressure on the seat to design with.
type LugSleeveOutputs struct {
	BearingMPa float64 `name:"bearing" symbol:"p_b" kind:"stress" means:"mean bearing pressure on the pin"`
	MeanEMPa   float64 `name:"mean_modulus" symbol:"E" kind:"stress" means:"modulus of pin and ear together"`
	Lambda     float64 `name:"clearance_parameter" symbol:"lambda" kind:"ratio" means:"slack, made free of size and load"`
	PinMPa     float64 `name:"pin_peak_pressure" symbol:"p_0" kind:"stress" means:"peak pressure under the pin if it bore on the ear itself"`
	HousingMPa float64 `name:"housing_peak_pressure" symbol:"p_h" kind:"stress" means:"peak pressure of the sleeve on its seat to design with"`
}

// LugSleeve computes the peak pressure that a loaded pin puts on the seat of a
// thin sleeve. It covers what finite elements with contact give and is not the
// best guess.
//
//	p_b    = F/(d_p t)
//	E      = 2 E_p E_h/(E_p + E_h)
//	lambda = (c_d/d_p) E/p_b
//	p_0    = p_b sqrt(1.5^2 + lambda/pi)
//	p_h    = p_0 d_p/(d_p + 2 w)
//
// d_p is the pin, w the wall of the sleeve, t the thickness of the ear, c_d the
// slack on the diameter [mm], F the load [N], E_p and E_h the moduli of pin and
// ear [MPa]. A sleeve spreads the load by little more than the ratio of its
// diameters; slack matters more than its wall.
//
// Validity: w to 0.15 d_p, lambda to 80, else refused. Load into the solid; the
// press-fit pressure comes on top.
//
// Error: 7 to 20 % above finite elements (walls 0.05, 0.083 and 0.133 of the pin,
// lambda 14 and 41, steel and grey-iron ears).
//
// Source: finite elements of this project, plane stress, pin in contact, sleeve
// tied radially to the ear.
func LugSleeve(in LugSleeveInputs) (LugSleeveOutputs, error) {
	var c worked.Checks
	c.Positive("pin_dia", in.PinMM)
	c.Positive("sleeve_wall", in.SleeveWallMM)
	if in.SleeveWallMM > 0.15*in.PinMM {
		c.Refuse("sleeve_wall", "is %g mm, outside the range to 0.15 of the pin in which the formula holds", in.SleeveWallMM)
	}
	c.Positive("thickness", in.ThicknessMM)
	c.Positive("force", in.ForceN)
	c.NotNegative("pin_clearance_dia", in.ClearanceMM)
	c.Between("pin_e", in.PinEMPa, 50000, 250000)
	c.Between("ear_e", in.EarEMPa, 50000, 250000)
	if err := c.Err(); err != nil {
		return LugSleeveOutputs{}, err
	}
	out := LugSleeveOutputs{
		BearingMPa: in.ForceN / (in.PinMM * in.ThicknessMM),
		MeanEMPa:   2 * in.PinEMPa * in.EarEMPa / (in.PinEMPa + in.EarEMPa),
	}
	out.Lambda = in.ClearanceMM / in.PinMM * out.MeanEMPa / out.BearingMPa
	if out.Lambda > mostPushLambda {
		c.Refuse("pin_clearance_dia", "gives the slack parameter %.3g, outside the range 0 to %d in which the formula holds", out.Lambda, mostPushLambda)
		return LugSleeveOutputs{}, c.Err()
	}
	out.PinMPa = out.BearingMPa * math.Sqrt(1.5*1.5+out.Lambda/math.Pi)
	out.HousingMPa = out.PinMPa * in.PinMM / (in.PinMM + 2*in.SleeveWallMM)
	return out, nil
}

// LugSleeveCalculation is the catalogue entry of LugSleeve.
func LugSleeveCalculation() worked.Calculation {
	return worked.Define("lug_sleeve", LugSleeve, worked.Page[LugSleeveInputs, LugSleeveOutputs]{
		Title:    "Pressure on the seat of a thin sleeve under load",
		Sources:  []string{"finite elements of this project, plane stress, pin in contact, sleeve tied radially to the ear; Hertz line contact"},
		Validity: "sleeve wall to 0.15 of the pin, slack parameter to 80, load into the solid; covers the finite elements, no best guess",
		Formulas: []worked.Formula[LugSleeveInputs, LugSleeveOutputs]{
			{Symbol: "p_b", Is: "F / (d_p * t)", Source: "definition"},
			{Symbol: "E", Is: "2 * E_p * E_h / (E_p + E_h)", Source: "two bodies in contact"},
			{Symbol: "lambda", Is: "c_d / d_p * E / p_b", Source: "definition"},
			{Symbol: "p_0", Is: "p_b * sqrt(1.5^2 + lambda / pi)", Source: "Hertz line contact, joined to the neat pin"},
			{Symbol: "p_h", Is: "p_0 * d_p / (d_p + 2 * w)", Source: finiteElements},
		},
		Warnings: func(LugSleeveInputs, LugSleeveOutputs) []string {
			return []string{notCovered, "Add the press-fit pressure. Bending of the pin presses harder at the faces of the ear."}
		},
		Example: map[string]string{"pin_dia": "60 mm", "sleeve_wall": "5 mm", "thickness": "25 mm", "force": "75 kN", "pin_clearance_dia": "0.2 mm"},
	})
}
