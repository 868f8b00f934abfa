package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// JointSeparationInputs are a preloaded joint and a load that pulls it apart. The
// load and the preload are those of one bolt.
type JointSeparationInputs struct {
	BoltStiffness   worked.Optional `name:"kb" symbol:"k_b" kind:"force" means:"stiffness of the bolt, force for each millimetre of stretch"`
	MemberStiffness worked.Optional `name:"km" symbol:"k_m" kind:"force" means:"stiffness of the clamped parts, force for each millimetre"`
	StiffnessRatio  worked.Optional `name:"stiffness_ratio" symbol:"c" kind:"ratio" means:"share of the load that the bolt feels, where it is known as such"`
	PreloadN        worked.Optional `name:"preload" symbol:"F" kind:"force" means:"preload; without it, the share of the proof load"`
	ExternalN       float64         `name:"external_load" symbol:"P" kind:"force" means:"load that pulls the joint apart"`
	StressAreaMM2   worked.Optional `name:"stress_area" symbol:"A_s" kind:"area" means:"stress area of the bolt, for its stress"`
	ProofMPa        worked.Optional `name:"proof_stress" symbol:"S_p" kind:"stress" means:"proof strength of the bolt, for its safety"`
	Fraction        float64         `name:"preload_fraction" symbol:"f" kind:"ratio" default:"0.75" means:"preload as a share of the proof load"`
	AllowableMPa    worked.Optional `name:"allowable" symbol:"S_a" kind:"stress" means:"stress allowed at the root of the thread, for the size of bolt needed"`
}

// JointSeparationOutputs are the loads of bolt and joint.
type JointSeparationOutputs struct {
	StiffnessRatio     float64         `name:"stiffness_ratio_used" symbol:"C" kind:"ratio" means:"share of the load that the bolt feels"`
	PreloadN           float64         `name:"preload_used" symbol:"F_i" kind:"force" means:"preload"`
	BoltLoadN          float64         `name:"bolt_load" symbol:"F_b" kind:"force" means:"pull on the bolt under the load"`
	ClampN             float64         `name:"clamp_load" symbol:"F_c" kind:"force" means:"clamping that is left; 0 when the joint stands open"`
	SeparationFactor   float64         `name:"separation_factor" symbol:"n_0" kind:"ratio" means:"times the load at which the joint opens; below 1 it is open"`
	PreloadStressMPa   worked.Optional `name:"preload_stress" symbol:"sigma_i" kind:"stress" means:"stress of the preload"`
	ServiceMPa         worked.Optional `name:"service_stress" symbol:"sigma_b" kind:"stress" means:"stress under the load"`
	LoadFactor         worked.Optional `name:"load_factor" symbol:"n_L" kind:"ratio" means:"times the load at which the bolt reaches its proof load"`
	RootDiameterNeeded worked.Optional `name:"root_diameter" symbol:"d_1" kind:"length" means:"root diameter needed for the stress allowed"`
}

// JointSeparation computes how a preloaded joint shares a load that pulls it apart:
// the bolt feels a part of it, the clamping gives up the rest, and when the
// clamping is gone the joint stands open and the bolt takes it all.
//
//	C   = k_b/(k_b + k_m), or c
//	F_i = F, or f A_s S_p
//	F_b = max(F_i + C P, P)
//	F_c = max(F_i - (1 - C) P, 0)
//	n_0 = F_i/[(1 - C) P]
//	n_L = min[(S_p A_s - F_i)/(C P), S_p A_s/P], the second where the joint opens first
//	sigma_i = F_i/A_s, sigma_b = F_b/A_s
//	d_1 = sqrt(4 1.3 F_b/(pi S_a))
//
// k_b and k_m are the stiffnesses of bolt and clamped parts [N/mm], c their ratio
// where it is known; F the preload and P the load [N], f the share of the proof
// load; A_s the stress area [mm2], S_p the proof strength, S_a the stress allowed
// [MPa]. 1.3 allows for the twist of tightening.
//
// Validity: elastic, load in line with the bolt. Prying comes on top.
//
// Error: C is seldom known better than a third; take it high for the bolt and low
// for the joint.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., eq. 8-24 to 8-30 and
// example 8-3 (read); Jiang, Analysis and Design of Machine Elements, example 3.1
// (read).
func JointSeparation(in JointSeparationInputs) (JointSeparationOutputs, error) {
	var c worked.Checks
	out := JointSeparationOutputs{StiffnessRatio: in.ratio(&c)}
	c.Positive("external_load", in.ExternalN)
	if in.AllowableMPa.Known {
		c.Positive("allowable", in.AllowableMPa.Value)
	}
	out.PreloadN = preloadOf(&c, in.PreloadN, in.StressAreaMM2, in.ProofMPa, in.Fraction)
	if err := c.Err(); err != nil {
		return JointSeparationOutputs{}, err
	}
	released := (1 - out.StiffnessRatio) * in.ExternalN
	out.BoltLoadN = max(out.PreloadN+out.StiffnessRatio*in.ExternalN, in.ExternalN)
	out.ClampN = max(out.PreloadN-released, 0)
	out.SeparationFactor = out.PreloadN / released
	out.stresses(in)
	return out, nil
}

// ratio is the stiffness ratio, given or worked out of the stiffnesses.
func (in JointSeparationInputs) ratio(c *worked.Checks) float64 {
	for _, k := range [...]struct {
		name  string
		value worked.Optional
	}{{"kb", in.BoltStiffness}, {"km", in.MemberStiffness}} {
		if k.value.Known {
			c.Positive(k.name, k.value.Value)
		}
	}
	switch {
	case in.StiffnessRatio.Known:
		c.Between("stiffness_ratio", in.StiffnessRatio.Value, 0.01, 0.99)
		if in.BoltStiffness.Known || in.MemberStiffness.Known {
			c.Refuse("stiffness_ratio", "is given, and so is kb or km: give one or the other")
		}
		return in.StiffnessRatio.Value
	case !in.BoltStiffness.Known || !in.MemberStiffness.Known:
		c.Refuse("stiffness_ratio", "is not known, and cannot be found without both kb and km")
		return 0
	}
	ratio := in.BoltStiffness.Value / (in.BoltStiffness.Value + in.MemberStiffness.Value)
	if !(ratio >= 0.01 && ratio <= 0.99) {
		c.Refuse("kb", "over kb and km together is %g, must lie between 0.01 and 0.99", ratio)
	}
	return ratio
}

// stresses fills in what needs the stress area or a stress allowed.
func (out *JointSeparationOutputs) stresses(in JointSeparationInputs) {
	if in.StressAreaMM2.Known {
		area := in.StressAreaMM2.Value
		out.PreloadStressMPa = worked.Some(out.PreloadN / area)
		out.ServiceMPa = worked.Some(out.BoltLoadN / area)
		if in.ProofMPa.Known {
			proof := in.ProofMPa.Value * area
			out.LoadFactor = worked.Some(min((proof-out.PreloadN)/(out.StiffnessRatio*in.ExternalN), proof/in.ExternalN))
		}
	}
	if in.AllowableMPa.Known {
		out.RootDiameterNeeded = worked.Some(math.Sqrt(4 * 1.3 * out.BoltLoadN / (math.Pi * in.AllowableMPa.Value)))
	}
}

// JointSeparationCalculation is the catalogue entry of JointSeparation.
func JointSeparationCalculation() worked.Calculation {
	return worked.Define("joint_separation", JointSeparation, worked.Page[JointSeparationInputs, JointSeparationOutputs]{
		Title:    "Load that opens a bolted joint",
		Sources:  []string{separationSource, rootSource},
		Validity: "elastic, load in line with the bolt; prying comes on top",
		Formulas: jointSeparationLines(),
		Warnings: jointSeparationWarnings,
		Example: map[string]string{
			"stiffness_ratio": "0.33", "external_load": "40 kN", "stress_area": "157 mm2", "proof_stress": "580 MPa", "allowable": "450 MPa",
		},
	})
}

const (
	separationSource = "Shigley's Mechanical Engineering Design, 9th ed., eq. 8-24 to 8-30 (read)"
	rootSource       = "Jiang, Analysis and Design of Machine Elements, example 3.1 (read)"
)

func jointSeparationLines() []worked.Formula[JointSeparationInputs, JointSeparationOutputs] {
	type in = JointSeparationInputs
	type out = JointSeparationOutputs
	area := func(_ in, o out) bool { return o.ServiceMPa.Known }
	return []worked.Formula[in, out]{
		{Symbol: "C", Is: "c", Source: "as given", When: func(i in, _ out) bool { return i.StiffnessRatio.Known }},
		{Symbol: "C", Is: "k_b / (k_b + k_m)", Source: separationSource, When: func(i in, _ out) bool { return !i.StiffnessRatio.Known }},
		{Symbol: "F_i", Is: "F", Source: "preload as given", When: func(i in, _ out) bool { return i.PreloadN.Known }},
		{Symbol: "F_i", Is: "f * A_s * S_p", Source: preloadSource, When: func(i in, _ out) bool { return !i.PreloadN.Known }},
		{Symbol: "F_b", Is: "max(F_i + C * P, P)", Source: separationSource},
		{Symbol: "F_c", Is: "max(F_i - (1 - C) * P, 0)", Source: separationSource},
		{Symbol: "n_0", Is: "F_i / ((1 - C) * P)", Source: separationSource},
		{Symbol: "sigma_i", Is: "F_i / A_s", Source: "force over area", When: area},
		{Symbol: "sigma_b", Is: "F_b / A_s", Source: "force over area", When: area},
		{Symbol: "n_L", Is: "min((S_p * A_s - F_i) / (C * P), S_p * A_s / P)", Source: separationSource, When: func(_ in, o out) bool { return o.LoadFactor.Known }},
		{Symbol: "d_1", Is: "sqrt(4 * 1.3 * F_b / (pi * S_a))", Source: rootSource, When: func(_ in, o out) bool { return o.RootDiameterNeeded.Known }},
	}
}

func jointSeparationWarnings(_ JointSeparationInputs, out JointSeparationOutputs) []string {
	var warnings []string
	if out.SeparationFactor < 1 {
		warnings = append(warnings, "The joint stands open under this load: the bolt takes all of it, bends and works loose. More preload or more bolts.")
	}
	if out.LoadFactor.Known && out.LoadFactor.Value < 1 {
		warnings = append(warnings, "The bolt goes over its proof load under this load.")
	}
	return append(warnings, "Preload is a range: look at the least for the joint and at the most for the bolt.", notCovered)
}
