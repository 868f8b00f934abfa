package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// BuildUpInputs are the bore, the cut to come and how fast the metal goes in.
type BuildUpInputs struct {
	WornMaxMM          float64         `name:"worn_dia" symbol:"D_w" kind:"length" means:"worn diameter, the largest of an oval bore"`
	WornMinMM          worked.Optional `name:"worn_dia_min" symbol:"D_n" kind:"length" means:"smallest diameter of an oval bore"`
	FinishMM           float64         `name:"finish_dia" symbol:"D_f" kind:"length" means:"bore when finished"`
	AllowanceMM        float64         `name:"machining_allowance_radial" symbol:"a" kind:"length" default:"2 mm" means:"metal to be bored away again, a side"`
	LengthMM           float64         `name:"length" symbol:"L" kind:"length" means:"length of the bore that is built up"`
	DensityKGM3        float64         `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the weld metal"`
	Efficiency         float64         `name:"deposition_efficiency" symbol:"eta" kind:"ratio" means:"share of the wire that becomes weld metal"`
	DepositedPerHourKG float64         `name:"deposition_rate" symbol:"r" kind:"mass" means:"weld metal laid down in an hour of arc"`
	OperatingFactor    float64         `name:"operating_factor" symbol:"OF" kind:"ratio" means:"arc time over welding time"`
}

// BuildUpOutputs are metal, wire and time.
type BuildUpOutputs struct {
	WornAreaMM2 float64 `name:"worn_area" symbol:"A_w" kind:"area" means:"cross-section of the worn bore"`
	FilledMM    float64 `name:"filled_dia" symbol:"D_t" kind:"length" means:"bore as filled, before boring"`
	VolumeMM3   float64 `name:"deposit_volume" symbol:"V" kind:"volume" means:"weld metal by volume"`
	MassKG      float64 `name:"deposit_mass" symbol:"m" kind:"mass" means:"weld metal by mass"`
	WireKG      float64 `name:"wire_mass" symbol:"m_w" kind:"mass" means:"wire or electrodes to buy"`
	ArcS        float64 `name:"arc_time" symbol:"t_a" kind:"time" means:"time with the arc burning"`
	WeldingS    float64 `name:"welding_time" symbol:"t_w" kind:"time" means:"time with the welder at it"`
}

// BuildUp computes metal, wire and time for building up a worn bore.
//
//	A_w = pi/4 D_w^2, or pi/8 (D_w^2 + D_n^2) for an oval bore
//	D_t = D_f - 2 a
//	V   = (A_w - pi/4 D_t^2) L
//	m   = rho V / 10^9
//	m_w = m / eta
//	t_a = 3600 m / r
//	t_w = t_a / OF
//
// Diameters, allowance a and length L in mm, rho in kg/m3, r the weld metal laid
// down in an hour of arc [kg], times in s. a must clear the ripple of the last
// layer: 1.5 to 2.5 mm (from memory).
//
// Validity: the filled bore is smaller than the worn one. Preheating, slow
// cooling and set-up are not in the time; in the field they usually exceed it.
//
// Error: that of the deposition rate, 20 % on site (judgement).
//
// Source: plain geometry, recomputed.
func BuildUp(in BuildUpInputs) (BuildUpOutputs, error) {
	var c worked.Checks
	in.check(&c)
	if err := c.Err(); err != nil {
		return BuildUpOutputs{}, err
	}
	out := BuildUpOutputs{WornAreaMM2: math.Pi / 4 * in.WornMaxMM * in.WornMaxMM, FilledMM: in.FinishMM - 2*in.AllowanceMM}
	if in.WornMinMM.Known {
		out.WornAreaMM2 = math.Pi / 8 * (in.WornMaxMM*in.WornMaxMM + in.WornMinMM.Value*in.WornMinMM.Value)
	}
	if !(out.FilledMM > 0) {
		c.Refuse("machining_allowance_radial", "is %g mm a side, more than a bore of %g mm can give", in.AllowanceMM, in.FinishMM)
		return BuildUpOutputs{}, c.Err()
	}
	out.VolumeMM3 = (out.WornAreaMM2 - math.Pi/4*out.FilledMM*out.FilledMM) * in.LengthMM
	if !(out.VolumeMM3 > 0) {
		c.Refuse("worn_dia", "leaves nothing to fill: the bore as filled would be %g mm", out.FilledMM)
		return BuildUpOutputs{}, c.Err()
	}
	out.MassKG = in.DensityKGM3 * out.VolumeMM3 / 1e9
	out.WireKG = out.MassKG / in.Efficiency
	out.ArcS = hourS * out.MassKG / in.DepositedPerHourKG
	out.WeldingS = out.ArcS / in.OperatingFactor
	return out, nil
}

func (in BuildUpInputs) check(c *worked.Checks) {
	c.Positive("worn_dia", in.WornMaxMM)
	c.Positive("finish_dia", in.FinishMM)
	if in.WornMinMM.Known {
		c.Positive("worn_dia_min", in.WornMinMM.Value)
		c.Between("worn_dia_min", in.WornMinMM.Value, 0, in.WornMaxMM)
	}
	c.NotNegative("machining_allowance_radial", in.AllowanceMM)
	c.Positive("length", in.LengthMM)
	c.Positive("density", in.DensityKGM3)
	c.Between("deposition_efficiency", in.Efficiency, 0.1, 1)
	c.Positive("deposition_rate", in.DepositedPerHourKG)
	c.Between("operating_factor", in.OperatingFactor, 0.01, 1)
}

// BuildUpCalculation is the catalogue entry of BuildUp.
func BuildUpCalculation() worked.Calculation {
	const geometry = "plain geometry"
	isOval := func(in BuildUpInputs, _ BuildUpOutputs) bool { return in.WornMinMM.Known }
	isRound := func(in BuildUpInputs, _ BuildUpOutputs) bool { return !in.WornMinMM.Known }
	return worked.Define("build_up", BuildUp, worked.Page[BuildUpInputs, BuildUpOutputs]{
		Title:    "Weld metal, wire and time to build up a bore",
		Sources:  []string{"plain geometry, recomputed; allowance 1.5-2.5 mm a side from memory"},
		Validity: "the bore as filled is smaller than the worn one",
		Formulas: []worked.Formula[BuildUpInputs, BuildUpOutputs]{
			{Symbol: "A_w", Is: "pi / 4 * D_w^2", Source: geometry, When: isRound},
			{Symbol: "A_w", Is: "pi / 8 * (D_w^2 + D_n^2)", Source: geometry, When: isOval},
			{Symbol: "D_t", Is: "D_f - 2 * a", Source: geometry},
			{Symbol: "V", Is: "(A_w - pi / 4 * D_t^2) * L", Source: geometry},
			{Symbol: "m", Is: "rho * V / 1000000000", Source: geometry},
			{Symbol: "m_w", Is: "m / eta", Source: "definition of the efficiency"},
			{Symbol: "t_a", Is: "3600 * m / r", Source: "definition of the rate"},
			{Symbol: "t_w", Is: "t_a / OF", Source: "definition of the factor"},
		},
		Warnings: func(BuildUpInputs, BuildUpOutputs) []string {
			return []string{"Preheating, slow cooling and set-up are not in these hours and usually exceed them: bill them on their own."}
		},
		Example: map[string]string{
			"worn_dia": "84 mm", "finish_dia": "80 mm", "machining_allowance_radial": "1.5 mm", "length": "90 mm",
			"deposition_efficiency": "0.78", "deposition_rate": "1.8 kg", "operating_factor": "0.6",
		},
	})
}
