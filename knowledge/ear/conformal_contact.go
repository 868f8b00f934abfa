package ear

import (
	"math"

	"boremend/knowledge/worked"
)

// ConformalContactInputs are a pin in a bore a little larger than it.
type ConformalContactInputs struct {
	BoreMM      float64 `name:"bore_diameter" symbol:"D" kind:"length" means:"bore"`
	ClearanceMM float64 `name:"radial_clearance" symbol:"c" kind:"length" means:"slack on the radius: half of that on the diameter"`
	ForceN      float64 `name:"force" symbol:"F" kind:"force" means:"load of the pin"`
	LengthMM    float64 `name:"length" symbol:"L" kind:"length" means:"length that carries"`
	ModulusMPa  float64 `name:"modulus" symbol:"E" kind:"stress" default:"210000 MPa" means:"modulus of pin and bore"`
}

// ConformalContactOutputs are the arc of contact and the pressure on it.
type ConformalContactOutputs struct {
	MeanMPa      float64 `name:"mean" symbol:"p_m" kind:"pressure" means:"mean pressure over the projected area"`
	Slack        float64 `name:"slack_number" symbol:"G" kind:"ratio" means:"slack, made free of size and load"`
	TanQuarter   float64 `name:"tan_quarter_arc" symbol:"b" kind:"ratio" means:"tangent of half the half angle"`
	SlackReached float64 `name:"slack_number_reached" symbol:"G_b" kind:"ratio" means:"the same from the arc found, as a check"`
	HalfAngleDeg float64 `name:"contact_half_angle" symbol:"eps" kind:"angle" means:"half of the arc that touches"`
	PeakMPa      float64 `name:"peak" symbol:"p_0" kind:"pressure" means:"peak pressure"`
	PeakOverMean float64 `name:"peak_over_mean" symbol:"k" kind:"ratio" means:"peak over mean pressure"`
}

// ConformalContact computes the peak pressure under a pin in a bore with slack,
// pin and bore of one elastic material.
//
//	p_m = F/(D L)
//	G   = E c L/F
//	G_b = [2 - ln(b^2 + 1) - 2 b^4]/[pi b^2 (b^2 + 1)] = G, solved for b
//	eps = 2 atan b
//	p_0 = F/(R L) {2 b/(pi r) + ln[(r + b)/(r - b)]/(2 pi b^2 r^2)},  r = sqrt(b^2 + 1)
//
// D = 2 R is the bore, c the slack on the radius and L the length that carries
// [mm], F the load [N], E the modulus [MPa].
//
// Without slack eps is 84.8 degrees and p_0 1.20 p_m. Plain line contact after
// Hertz gives too little above an arc of about 20 degrees.
//
// Validity: elastic, plane, the material round the bore thick against it; G to
// 10^5, else refused. A thin ear wraps round the pin and is pressed less; see
// LugContact.
//
// Error: equilibrium holds within 1e-5; the Hertz limit is met.
//
// Source: A. Persson 1964, Ciavarella and Decuzzi 2001: formula from memory,
// checked by equilibrium and against the Hertz limit.
func ConformalContact(in ConformalContactInputs) (ConformalContactOutputs, error) {
	var c worked.Checks
	c.Positive("bore_diameter", in.BoreMM)
	c.NotNegative("radial_clearance", in.ClearanceMM)
	c.Below("radial_clearance", in.ClearanceMM, "a tenth of bore_diameter", in.BoreMM/10)
	c.Positive("force", in.ForceN)
	c.Positive("length", in.LengthMM)
	c.Between("modulus", in.ModulusMPa, 1000, 1e6)
	if err := c.Err(); err != nil {
		return ConformalContactOutputs{}, err
	}
	out := ConformalContactOutputs{
		MeanMPa: in.ForceN / (in.BoreMM * in.LengthMM),
		Slack:   in.ModulusMPa * in.ClearanceMM * in.LengthMM / in.ForceN,
	}
	if out.Slack > mostSlack {
		c.Refuse("radial_clearance", "gives the slack number %.3g, outside the range to %g: the load is too small to make an arc", out.Slack, float64(mostSlack))
		return ConformalContactOutputs{}, c.Err()
	}
	out.TanQuarter = solveArc(out.Slack)
	b := out.TanQuarter
	out.SlackReached = slackOf(b)
	out.HalfAngleDeg = 2 * math.Atan(b) * 180 / math.Pi
	r := math.Sqrt(b*b + 1)
	out.PeakMPa = 2 * out.MeanMPa * (2*b/(math.Pi*r) + math.Asinh(b)/(math.Pi*b*b*r*r))
	out.PeakOverMean = out.PeakMPa / out.MeanMPa
	return out, nil
}

const mostSlack = 1e5

// slackOf is G_b; it falls as b grows.
func slackOf(b float64) float64 {
	q := b * b
	return (2 - math.Log(q+1) - 2*q*q) / (math.Pi * q * (q + 1))
}

// solveArc finds b by halving; without slack b is below 0.92, at mostSlack above 1e-3.
func solveArc(slack float64) float64 {
	low, high := 1e-3, 0.92
	for range 60 {
		middle := (low + high) / 2
		if slackOf(middle) > slack {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2
}

// ConformalContactCalculation is the catalogue entry of ConformalContact.
func ConformalContactCalculation() worked.Calculation {
	const paper = "Persson 1964, Ciavarella and Decuzzi 2001, from memory"
	return worked.Define("conformal_contact", ConformalContact, worked.Page[ConformalContactInputs, ConformalContactOutputs]{
		Title:    "Peak pressure under a pin with slack",
		Sources:  []string{paper + "; checked by equilibrium and against the Hertz limit"},
		Validity: "elastic, plane, one material, the bore in a thick body",
		Formulas: []worked.Formula[ConformalContactInputs, ConformalContactOutputs]{
			{Symbol: "p_m", Is: "F / (D * L)", Source: "definition"},
			{Symbol: "G", Is: "E * c * L / F", Source: paper},
			{Symbol: "b", Table: "solved so that G_b = G", Source: paper},
			{Symbol: "G_b", Is: "(2 - log(b^2 + 1) - 2 * b^4) / (pi * b^2 * (b^2 + 1))", Source: paper},
			{Symbol: "eps", Is: "2 * atan(b) * 180 / pi", Source: paper},
			{Symbol: "p_0", Is: "2 * p_m * (2 * b / (pi * sqrt(b^2 + 1)) + log((sqrt(b^2 + 1) + b) / (sqrt(b^2 + 1) - b)) / (2 * pi * b^2 * (b^2 + 1)))", Source: paper},
			{Symbol: "k", Is: "p_0 / p_m", Source: "definition"},
		},
		Warnings: func(ConformalContactInputs, ConformalContactOutputs) []string {
			return []string{notCovered, "Elastic figure: soft bushes yield and spread it. Bending of the pin presses harder at the ends."}
		},
		Example: map[string]string{"bore_diameter": "80 mm", "radial_clearance": "0.2 mm", "force": "250 kN", "length": "100 mm"},
	})
}
