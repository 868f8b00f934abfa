package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// BoltVDIInputs are a metric bolt with a hexagon head and its friction.
type BoltVDIInputs struct {
	DiameterMM    float64         `name:"diameter" symbol:"d" kind:"length" means:"diameter of the thread"`
	PitchMM       float64         `name:"pitch" symbol:"P" kind:"length" means:"pitch"`
	Friction      float64         `name:"friction" symbol:"mu" kind:"ratio" means:"friction in the thread, and under the head unless that is given: 0.10 to 0.14 oiled"`
	HeadFriction  worked.Optional `name:"head_friction" symbol:"mu_c" kind:"ratio" means:"friction under the head, where it differs"`
	YieldMPa      float64         `name:"rp02" symbol:"R_p" kind:"stress" means:"0.2 % yield strength of the bolt"`
	HeadBearingMM float64         `name:"head_bearing_diameter" symbol:"d_w" kind:"length" means:"diameter on which the head bears"`
	HoleMM        float64         `name:"clearance_hole" symbol:"d_h" kind:"length" means:"hole under the head"`
	YieldShare    float64         `name:"yield_share" symbol:"nu" kind:"ratio" default:"0.90" means:"share of the yield strength that pull and twist together may use while tightening"`
}

// BoltVDIOutputs are the preload and the torque that gives it.
type BoltVDIOutputs struct {
	PitchDiameterMM float64 `name:"pitch_diameter" symbol:"d_2" kind:"length" means:"pitch diameter"`
	CoreMM          float64 `name:"core_diameter" symbol:"d_3" kind:"length" means:"root diameter"`
	StressMM        float64 `name:"stress_diameter" symbol:"d_0" kind:"length" means:"diameter of the stress area"`
	StressAreaMM2   float64 `name:"stress_area" symbol:"A_s" kind:"area" means:"stress area"`
	HeadMeanMM      float64 `name:"head_mean_diameter" symbol:"D_k" kind:"length" means:"mean diameter on which the head rubs"`
	HeadUsed        float64 `name:"head_friction_used" symbol:"mu_k" kind:"ratio" means:"friction under the head"`
	Twist           float64 `name:"twist_over_pull" symbol:"x" kind:"ratio" means:"twisting stress over pulling stress while tightening"`
	PreloadN        float64 `name:"preload" symbol:"F" kind:"force" means:"preload after tightening"`
	TorqueNM        float64 `name:"torque" symbol:"M" kind:"torque" means:"torque"`
}

// BoltVDI computes the preload and the torque of a metric bolt that is tightened
// to a share of its yield strength, pull and twist together.
//
//	d_2 = d - 0.649519 P, d_3 = d - 1.226869 P, d_0 = (d_2 + d_3)/2
//	x   = 1.5 d_2/d_0 (P/(pi d_2) + 1.155 mu)
//	F   = nu R_p A_s/sqrt(1 + 3 x^2)
//	M   = F (0.16 P + 0.58 d_2 mu + mu_k D_k/2), D_k = (d_w + d_h)/2
//
// d is the thread, P its pitch, d_w the bearing diameter of the head, d_h the hole
// [mm]; mu the friction in the thread, mu_c that under the head where it differs;
// R_p the yield strength [MPa], nu the share of it; M in N*m.
//
// These are the figures of the printed tables: the most that a bolt is tightened
// to, with no safety in them. What settles in the joint afterwards, the scatter of
// the tightening and a load that comes and goes are not in it.
//
// Validity: metric threads of 60 degrees, friction from 0.03 to 0.4, d below d_h
// below d_w.
//
// Error: 0.4 % against sixteen printed pairs of fine threads, 0.5 % on one that is
// rounded to 90 N*m.
//
// Source: VDI 2230 (2001), tightening to 90 % of yield, as printed in a fastener
// catalogue (read); formulas from memory, recomputed against that table.
func BoltVDI(in BoltVDIInputs) (BoltVDIOutputs, error) {
	if err := in.check(); err != nil {
		return BoltVDIOutputs{}, err
	}
	out := BoltVDIOutputs{PitchDiameterMM: in.DiameterMM - 0.649519*in.PitchMM, CoreMM: in.DiameterMM - 1.226869*in.PitchMM, HeadUsed: in.Friction}
	if in.HeadFriction.Known {
		out.HeadUsed = in.HeadFriction.Value
	}
	out.StressMM = (out.PitchDiameterMM + out.CoreMM) / 2
	out.StressAreaMM2 = math.Pi / 4 * out.StressMM * out.StressMM
	out.HeadMeanMM = (in.HeadBearingMM + in.HoleMM) / 2
	out.Twist = 1.5 * out.PitchDiameterMM / out.StressMM * (in.PitchMM/(math.Pi*out.PitchDiameterMM) + 1.155*in.Friction)
	out.PreloadN = in.YieldShare * in.YieldMPa * out.StressAreaMM2 / math.Sqrt(1+3*out.Twist*out.Twist)
	out.TorqueNM = out.PreloadN * (0.16*in.PitchMM + 0.58*out.PitchDiameterMM*in.Friction + out.HeadUsed*out.HeadMeanMM/2) / 1000
	return out, nil
}

func (in BoltVDIInputs) check() error {
	var c worked.Checks
	checkThread(&c, in.DiameterMM, in.PitchMM)
	c.Between("friction", in.Friction, 0.03, 0.4)
	if in.HeadFriction.Known {
		c.Between("head_friction", in.HeadFriction.Value, 0.03, 0.4)
	}
	c.Positive("rp02", in.YieldMPa)
	c.Positive("clearance_hole", in.HoleMM)
	c.Positive("head_bearing_diameter", in.HeadBearingMM)
	c.Below("diameter", in.DiameterMM, "clearance_hole", in.HoleMM)
	c.Below("clearance_hole", in.HoleMM, "head_bearing_diameter", in.HeadBearingMM)
	c.Between("yield_share", in.YieldShare, 0.1, 1)
	return c.Err()
}

// BoltVDICalculation is the catalogue entry of BoltVDI.
func BoltVDICalculation() worked.Calculation {
	const source = "VDI 2230 (2001), from memory, recomputed against a printed table"
	return worked.Define("bolt_vdi", BoltVDI, worked.Page[BoltVDIInputs, BoltVDIOutputs]{
		Title:    "Preload and torque at a share of yield",
		Sources:  []string{source},
		Validity: "metric threads of 60 degrees, friction from 0.03 to 0.4",
		Formulas: []worked.Formula[BoltVDIInputs, BoltVDIOutputs]{
			{Symbol: "d_2", Is: "d - 0.649519 * P", Source: "ISO 724: basic pitch diameter"},
			{Symbol: "d_3", Is: "d - 1.226869 * P", Source: coreSource},
			{Symbol: "d_0", Is: "(d_2 + d_3) / 2", Source: "ISO 898-1: diameter of the stress area"},
			{Symbol: "A_s", Is: "pi / 4 * d_0^2", Source: "ISO 898-1: stress area"},
			{Symbol: "D_k", Is: "(d_w + d_h) / 2", Source: source},
			{Symbol: "mu_k", Is: "mu_c", Source: "as given", When: func(in BoltVDIInputs, _ BoltVDIOutputs) bool { return in.HeadFriction.Known }},
			{Symbol: "mu_k", Is: "mu", Source: "as in the thread", When: func(in BoltVDIInputs, _ BoltVDIOutputs) bool { return !in.HeadFriction.Known }},
			{Symbol: "x", Is: "1.5 * d_2 / d_0 * (P / (pi * d_2) + 1.155 * mu)", Source: source},
			{Symbol: "F", Is: "nu * R_p * A_s / sqrt(1 + 3 * x^2)", Source: source},
			{Symbol: "M", Is: "F * (0.16 * P + 0.58 * d_2 * mu + mu_k * D_k / 2) / 1000", Source: source},
		},
		Warnings: func(BoltVDIInputs, BoltVDIOutputs) []string {
			return []string{"These are the most that the bolt is tightened to, without any safety. The metal under the head must stand the pressure too.", notCovered}
		},
		Example: map[string]string{
			"diameter": "16 mm", "pitch": "2 mm", "friction": "0.12", "rp02": "640 MPa", "head_bearing_diameter": "22.49 mm", "clearance_hole": "17.5 mm",
		},
	})
}
