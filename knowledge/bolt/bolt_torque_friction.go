package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// BoltTorqueFrictionInputs are a bolt, its preload and two frictions.
type BoltTorqueFrictionInputs struct {
	DiameterMM     float64         `name:"diameter" symbol:"d" kind:"length" means:"diameter of the thread"`
	PitchMM        float64         `name:"pitch" symbol:"P" kind:"length" means:"pitch"`
	MinorAreaMM2   worked.Optional `name:"minor_area" symbol:"A_r" kind:"area" means:"area at the root of the thread; without it, that of the root d - 1.2269 P"`
	PreloadN       float64         `name:"preload" symbol:"F" kind:"force" means:"preload wanted"`
	ThreadFriction float64         `name:"thread_friction" symbol:"f_t" kind:"ratio" means:"friction in the thread: 0.15 dry, 0.10 oiled"`
	HeadFriction   float64         `name:"head_friction" symbol:"f_c" kind:"ratio" means:"friction under the head"`
	HeadMeanMM     worked.Optional `name:"head_mean_diameter" symbol:"d_c" kind:"length" means:"mean diameter on which the head rubs; without it, 1.25 d"`
}

// BoltTorqueFrictionOutputs are the torque and where it goes.
type BoltTorqueFrictionOutputs struct {
	RootMM     float64 `name:"root_diameter" symbol:"d_r" kind:"length" means:"root diameter of the thread"`
	MeanMM     float64 `name:"mean_diameter" symbol:"d_m" kind:"length" means:"mean diameter of the thread"`
	LeadTan    float64 `name:"lead_tangent" symbol:"t" kind:"ratio" means:"rise of the thread over its turn"`
	HeadUsedMM float64 `name:"head_mean_diameter_used" symbol:"d_k" kind:"length" means:"mean diameter on which the head rubs"`
	ThreadPart float64 `name:"thread_part" symbol:"K_t" kind:"ratio" means:"what the thread adds to the nut factor"`
	HeadPart   float64 `name:"head_part" symbol:"K_c" kind:"ratio" means:"what the head adds to it"`
	NutFactor  float64 `name:"nut_factor" symbol:"K" kind:"ratio" means:"nut factor"`
	TorqueNM   float64 `name:"torque" symbol:"T" kind:"torque" means:"torque"`
}

// BoltTorqueFriction computes nut factor and torque from the friction in thread
// and head, for a thread of 60 degrees.
//
//	d_m = (d + d_r)/2, d_r from A_r, or d - 1.2269 P
//	t   = P/(pi d_m)
//	K_t = d_m/(2 d) (t + f_t sec 30)/(1 - f_t t sec 30)
//	K_c = f_c d_k/(2 d), d_k = d_c or 1.25 d
//	T   = (K_t + K_c) d F
//
// d is the thread, P its pitch, d_c the mean diameter of the head [mm], A_r the
// root area [mm2], F the preload [N], f_t and f_c the frictions, T in N*m.
//
// Validity: frictions from 0.01 to 0.5; a pitch of at most a quarter of the
// diameter.
//
// Error: friction is known to a third at best. With 0.15 in both it comes 5 %
// under T = 0.20 d F.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., eq. 8-19 and 8-26
// (formulas read, the answer of example 8-3(c) from memory).
func BoltTorqueFriction(in BoltTorqueFrictionInputs) (BoltTorqueFrictionOutputs, error) {
	if err := in.check(); err != nil {
		return BoltTorqueFrictionOutputs{}, err
	}
	out := BoltTorqueFrictionOutputs{RootMM: in.DiameterMM - 1.226869*in.PitchMM, HeadUsedMM: 1.25 * in.DiameterMM}
	if in.MinorAreaMM2.Known {
		out.RootMM = math.Sqrt(4 * in.MinorAreaMM2.Value / math.Pi)
	}
	if in.HeadMeanMM.Known {
		out.HeadUsedMM = in.HeadMeanMM.Value
	}
	sec := 1 / math.Cos(math.Pi/6)
	out.MeanMM = (in.DiameterMM + out.RootMM) / 2
	out.LeadTan = in.PitchMM / (math.Pi * out.MeanMM)
	out.ThreadPart = out.MeanMM / (2 * in.DiameterMM) * (out.LeadTan + in.ThreadFriction*sec) / (1 - in.ThreadFriction*out.LeadTan*sec)
	out.HeadPart = in.HeadFriction * out.HeadUsedMM / (2 * in.DiameterMM)
	out.NutFactor = out.ThreadPart + out.HeadPart
	out.TorqueNM = out.NutFactor * in.DiameterMM * in.PreloadN / 1000
	return out, nil
}

func (in BoltTorqueFrictionInputs) check() error {
	var c worked.Checks
	checkThread(&c, in.DiameterMM, in.PitchMM)
	if in.MinorAreaMM2.Known {
		c.Positive("minor_area", in.MinorAreaMM2.Value)
		c.Below("minor_area", in.MinorAreaMM2.Value, "the area of the diameter", math.Pi/4*in.DiameterMM*in.DiameterMM)
	}
	c.Positive("preload", in.PreloadN)
	c.Between("thread_friction", in.ThreadFriction, 0.01, 0.5)
	c.Between("head_friction", in.HeadFriction, 0.01, 0.5)
	if in.HeadMeanMM.Known {
		c.Between("head_mean_diameter", in.HeadMeanMM.Value, in.DiameterMM, 3*in.DiameterMM)
	}
	return c.Err()
}

// checkThread asks for a pitch that a bolt can have.
func checkThread(c *worked.Checks, diameter, pitch float64) {
	c.Positive("diameter", diameter)
	c.Positive("pitch", pitch)
	if pitch > diameter/4*(1+stepSlack) {
		c.Refuse("pitch", "is %g, must be at most a quarter of diameter, which is %g", pitch, diameter)
	}
}

// BoltTorqueFrictionCalculation is the catalogue entry of BoltTorqueFriction.
func BoltTorqueFrictionCalculation() worked.Calculation {
	type in = BoltTorqueFrictionInputs
	type out = BoltTorqueFrictionOutputs
	const source = "Shigley's Mechanical Engineering Design, 9th ed., eq. 8-19 and 8-26"
	return worked.Define("bolt_torque_friction", BoltTorqueFriction, worked.Page[in, out]{
		Title:    "Torque from the friction of thread and head",
		Sources:  []string{source + " (read)"},
		Validity: "thread of 60 degrees, frictions from 0.01 to 0.5",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "d_r", Is: "sqrt(4 * A_r / pi)", Source: "circle of the root area", When: func(i in, _ out) bool { return i.MinorAreaMM2.Known }},
			{Symbol: "d_r", Is: "d - 1.226869 * P", Source: coreSource, When: func(i in, _ out) bool { return !i.MinorAreaMM2.Known }},
			{Symbol: "d_m", Is: "(d + d_r) / 2", Source: source},
			{Symbol: "t", Is: "P / (pi * d_m)", Source: source},
			{Symbol: "d_k", Is: "d_c", Source: "as given", When: func(i in, _ out) bool { return i.HeadMeanMM.Known }},
			{Symbol: "d_k", Is: "1.25 * d", Source: source, When: func(i in, _ out) bool { return !i.HeadMeanMM.Known }},
			{Symbol: "K_t", Is: "d_m / (2 * d) * (t + f_t / cos(pi / 6)) / (1 - f_t * t / cos(pi / 6))", Source: source},
			{Symbol: "K_c", Is: "f_c * d_k / (2 * d)", Source: source},
			{Symbol: "K", Is: "K_t + K_c", Source: source},
			{Symbol: "T", Is: "K * d * F / 1000", Source: source},
		},
		Warnings: func(in, out) []string { return []string{notCovered} },
		Example: map[string]string{
			"diameter": "16 mm", "pitch": "2 mm", "preload": "68 kN", "thread_friction": "0.15", "head_friction": "0.15",
		},
	})
}
