package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// LugContactInputs are a round-ended ear, its pin and the slack between them.
type LugContactInputs struct {
	BoreMM      float64 `name:"bore_dia" symbol:"d" kind:"length" means:"bore that the pin bears on"`
	EndRadiusMM float64 `name:"end_radius" symbol:"R" kind:"length" means:"bore centre to the free edge of the round end"`
	ThicknessMM float64 `name:"thickness" symbol:"t" kind:"length" means:"thickness of the ear along the pin"`
	ForceN      float64 `name:"force" symbol:"F" kind:"force" means:"load of the pin on this ear"`
	ClearanceMM float64 `name:"pin_clearance_dia" symbol:"c_d" kind:"length" means:"slack of the pin on the diameter"`
	Direction   string  `name:"direction" choices:"pull,push,side" means:"where the pin presses: to the free end, into the solid, across"`
	ModulusMPa  float64 `name:"modulus" symbol:"E" kind:"stress" default:"205000 MPa" means:"modulus of pin and ear"`
}

// LugContactOutputs are the figures to design with.
type LugContactOutputs struct {
	BearingMPa  float64 `name:"bearing" symbol:"p_b" kind:"stress" means:"mean bearing pressure on the bore"`
	Lambda      float64 `name:"clearance_parameter" symbol:"lambda" kind:"ratio" means:"slack, made free of size and load"`
	X           float64 `name:"wall_over_radius" symbol:"x" kind:"ratio" means:"wall over the radius of the bore"`
	K           float64 `name:"kb" symbol:"K" kind:"ratio" means:"stress factor to design with"`
	PeakMPa     float64 `name:"peak_hoop" symbol:"s" kind:"stress" means:"peak hoop tension to design with"`
	NeatShare   float64 `name:"neat_pressure" symbol:"n" kind:"ratio" means:"peak over mean pressure of a neat pin"`
	PressureMPa float64 `name:"peak_contact_pressure" symbol:"p_0" kind:"stress" means:"peak pressure under the pin to design with"`
}

// Slack up to runningLambda is that of a running fit, up to mostPushLambda finite
// elements with contact were run.
const runningLambda, mostPushLambda = 30, 80

// LugContact computes figures to design with for an ear whose pin has slack: they
// cover what finite elements with real contact give and are not the best guess.
//
//	p_b    = F/(d t)
//	lambda = (c_d/d) E/p_b
//	x      = (R - d/2)/(d/2)
//
//	pull   lambda <= 30: min(1.35 K_pull, K_line); above: K_line
//	       K_line = 0.514 + 2.753/x + 0.980/x^2
//	side   no slack: K_side; else 0.854 + 4.164/x + 0.898/x^2,
//	       times 1 + 0.45 max(0, 0.35 - x)
//	push   max(K_push, 1.3), or max(K_push, 1.4) above 30
//	s      = K p_b
//	p_0    = p_b sqrt(n^2 + lambda/pi), n = 1.5, for side 2.85
//
// K_pull, K_push and K_side are those of LugLoad; K_line is a pin that touches
// along a line, the most that any slack can do. sqrt(lambda/pi) is line contact
// after Hertz in plane stress. d is the bore, R the end radius, t the thickness,
// c_d the slack [mm], F the load [N], E the modulus [MPa].
//
// A worn pin is half as bad again as a neat one, and in a thin ear two thirds
// worse: 1.70 times at R/r = 1.35.
//
// Validity: x from 0.25 to 1.5; a push to lambda 80; else refused. Steel pin in a
// steel ear, elastic.
//
// Error: above finite elements with contact, by nothing to 30 % for pull and push
// and to the double for side at little slack; contact across was run at R/r = 1.5
// only.
//
// Source: finite elements of this project: contact at R/r 1.5, 2.0, 2.5 and lambda
// 0, 10, 26, 77; line load at R/r 1.25 to 2.5.
func LugContact(in LugContactInputs) (LugContactOutputs, error) {
	var c worked.Checks
	c.Positive("bore_dia", in.BoreMM)
	c.Positive("end_radius", in.EndRadiusMM)
	c.Positive("thickness", in.ThicknessMM)
	c.Positive("force", in.ForceN)
	c.NotNegative("pin_clearance_dia", in.ClearanceMM)
	c.Below("pin_clearance_dia", in.ClearanceMM, "a tenth of bore_dia", in.BoreMM/10)
	c.OneOf("direction", in.Direction, "pull", "push", "side")
	c.Between("modulus", in.ModulusMPa, 50000, 250000)
	if err := c.Err(); err != nil {
		return LugContactOutputs{}, err
	}
	out := LugContactOutputs{BearingMPa: in.ForceN / (in.BoreMM * in.ThicknessMM), X: 2*in.EndRadiusMM/in.BoreMM - 1}
	out.Lambda = in.ClearanceMM / in.BoreMM * in.ModulusMPa / out.BearingMPa
	checkX(&c, "end_radius", out.X)
	if in.Direction == "push" && out.Lambda > mostPushLambda {
		c.Refuse("pin_clearance_dia", "gives the slack parameter %.3g, outside the range 0 to %d in which the factor for a push holds", out.Lambda, mostPushLambda)
	}
	if err := c.Err(); err != nil {
		return LugContactOutputs{}, err
	}
	out.K, out.NeatShare = contactFactor(in.Direction, out.X, out.Lambda), 1.5
	if in.Direction == "side" {
		out.NeatShare = 2.85
	}
	out.PeakMPa = out.K * out.BearingMPa
	out.PressureMPa = out.BearingMPa * math.Sqrt(out.NeatShare*out.NeatShare+out.Lambda/math.Pi)
	return out, nil
}

// contactFactor is the stress factor to design with.
func contactFactor(direction string, x, lambda float64) float64 {
	slack := lambda > runningLambda
	switch {
	case direction == "pull" && slack:
		return pullLineCurve.at(x)
	case direction == "pull":
		return min(1.35*pullCurve.at(x), pullLineCurve.at(x))
	case direction == "side" && lambda > 0:
		return sideLineCurve.at(x)
	case direction == "side":
		return sideCurve.at(x)
	case slack:
		return max(pushCurve.at(x), 1.4)
	}
	return max(pushCurve.at(x), 1.3)
}

// LugContactCalculation is the catalogue entry of LugContact.
func LugContactCalculation() worked.Calculation {
	type in = LugContactInputs
	type out = LugContactOutputs
	when := func(direction string, slack func(lambda float64) bool) func(in, out) bool {
		return func(i in, o out) bool { return i.Direction == direction && slack(o.Lambda) }
	}
	running := func(lambda float64) bool { return lambda <= runningLambda }
	worn := func(lambda float64) bool { return lambda > runningLambda }
	none := func(lambda float64) bool { return lambda == 0 }
	some := func(lambda float64) bool { return lambda > 0 }
	const thin = " * (1 + 0.45 * max(0, 0.35 - x))"
	return worked.Define("lug_contact", LugContact, worked.Page[in, out]{
		Title:    "Stress at the bore and pressure under a pin with slack",
		Sources:  append([]string{"finite elements of this project with contact of an elastic pin, at R/r 1.5, 2.0, 2.5"}, lugSources...),
		Validity: "round-ended ear, centred bore, R/r from 1.25 to 2.5, push to a slack parameter of 80; covers the finite elements, no best guess",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "p_b", Is: "F / (d * t)", Source: "definition"},
			{Symbol: "lambda", Is: "c_d / d * E / p_b", Source: "definition"},
			{Symbol: "x", Is: "2 * R / d - 1", Source: "plain geometry"},
			{Symbol: "K", Is: "min(1.35 * (0.65 + 2.125 / x + 0.359 / x^2), 0.514 + 2.753 / x + 0.98 / x^2)", Source: finiteElements, When: when("pull", running)},
			{Symbol: "K", Is: "0.514 + 2.753 / x + 0.98 / x^2", Source: finiteElements, When: when("pull", worn)},
			{Symbol: "K", Is: "(0.603 + 3.403 / x + 0.539 / x^2)" + thin, Source: finiteElements, When: when("side", none)},
			{Symbol: "K", Is: "(0.854 + 4.164 / x + 0.898 / x^2)" + thin, Source: finiteElements, When: when("side", some)},
			{Symbol: "K", Is: "max((0.322 + 0.816 / x - 0.09 / x^2)" + thin + ", 1.3)", Source: finiteElements, When: when("push", running)},
			{Symbol: "K", Is: "max((0.322 + 0.816 / x - 0.09 / x^2)" + thin + ", 1.4)", Source: finiteElements, When: when("push", worn)},
			{Symbol: "s", Is: "K * p_b", Source: "definition"},
			{Symbol: "n", Table: "1.5 for pull and push, 2.85 for side", Source: finiteElements},
			{Symbol: "p_0", Is: "p_b * sqrt(n^2 + lambda / pi)", Source: "Hertz line contact, joined to the neat pin"},
		},
		Warnings: func(in, out) []string {
			return []string{notCovered, "These figures cover the finite elements; the truth lies below them.", "Bending of the pin loads the faces of the ear harder than this."}
		},
		Example: map[string]string{
			"bore_dia": "80 mm", "end_radius": "60 mm", "thickness": "25 mm", "force": "100 kN",
			"pin_clearance_dia": "0.2 mm", "direction": "pull",
		},
	})
}
