package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// ErrorCopyInputs are cut, bar and what the bore looked like before.
type ErrorCopyInputs struct {
	KCMPa       float64         `name:"kc" symbol:"k_c" kind:"stress" means:"specific cutting force, with its corrections"`
	FeedMM      float64         `name:"feed" symbol:"f" kind:"length" means:"feed a revolution"`
	RadialShare float64         `name:"radial_to_tangential" symbol:"r_p" kind:"ratio" default:"0.3" means:"radial over cutting force"`
	DepthMM     float64         `name:"depth" symbol:"a_p" kind:"length" means:"depth of cut that the tool is set to, a side"`
	Stiffness   float64         `name:"stiffness_n_mm" symbol:"k" kind:"ratio" means:"force at the tool for one millimetre, in N"`
	RunoutMM    float64         `name:"runout_before" symbol:"e_1" kind:"length" means:"how uneven the bore is before, from high to low"`
	Passes      float64         `name:"passes" symbol:"N" kind:"count" default:"1" means:"passes at this feed, the first with depth and the others as spring passes"`
	TargetMM    worked.Optional `name:"target_runout" symbol:"e_t" kind:"length" means:"unevenness allowed, for the passes needed"`
}

// ErrorCopyOutputs are what the bar leaves.
type ErrorCopyOutputs struct {
	Slope     float64         `name:"cut_stiffness_n_mm" symbol:"s" kind:"ratio" means:"radial force for one millimetre more depth, in N"`
	Factor    float64         `name:"copy_factor" symbol:"mu" kind:"ratio" means:"share of every unevenness that a pass leaves"`
	AfterMM   float64         `name:"runout_after" symbol:"e_2" kind:"length" means:"unevenness left after all passes"`
	SmallMM   float64         `name:"undersize_on_diameter" symbol:"u" kind:"length" means:"how much too small the first pass leaves the bore, on the diameter"`
	LeftMM    float64         `name:"undersize_after_passes" symbol:"u_N" kind:"length" means:"the same after all passes"`
	NeededFor worked.Optional `name:"passes_needed" symbol:"N_t" kind:"count" means:"passes until the unevenness is as allowed"`
}

// ErrorCopy computes how much of an uneven bore, and of the depth of cut itself, a
// bar that bends leaves standing.
//
//	s   = r_p k_c f
//	mu  = s / (k + s)
//	e_2 = e_1 mu^N
//	u   = 2 a_p mu, u_N = 2 a_p mu^N
//	N_t = ceil(ln(e_t / e_1) / ln mu)
//
// k_c is the specific cutting force [MPa], f the feed, a_p the depth [mm], r_p the
// share of radial force [-], k the stiffness at the tool [N/mm], e_1 the unevenness
// before and e_t that allowed [mm], N the passes.
//
// The tool turns with the bar, so bending makes a bore round but small. A spring
// pass takes mu of what the pass before left: worth it where 2 a_p mu matters, and
// never on a metal that hardens under a rubbing edge.
//
// Validity: radial force in step with depth; at a few hundredths of a millimetre
// the edge rubs and cuts no more.
//
// Error: that of the force, 20 %, and of k: mounts give way too.
//
// Source: balance of bar and cut, recomputed; a test turns the bore step by step.
func ErrorCopy(in ErrorCopyInputs) (ErrorCopyOutputs, error) {
	var c worked.Checks
	checkCut(&c, in.KCMPa, in.DepthMM, in.FeedMM)
	c.Between("radial_to_tangential", in.RadialShare, 0.01, 2)
	c.Between("stiffness_n_mm", in.Stiffness, 1, 1e9)
	c.Between("runout_before", in.RunoutMM, 0, 100)
	checkPasses(&c, "passes", in.Passes, 1, 20)
	if in.TargetMM.Known {
		c.Between("target_runout", in.TargetMM.Value, 1e-4, 100)
	}
	if err := c.Err(); err != nil {
		return ErrorCopyOutputs{}, err
	}
	out := ErrorCopyOutputs{Slope: in.RadialShare * in.KCMPa * in.FeedMM}
	out.Factor = out.Slope / (in.Stiffness + out.Slope)
	left := math.Pow(out.Factor, in.Passes)
	out.AfterMM, out.SmallMM, out.LeftMM = in.RunoutMM*left, 2*in.DepthMM*out.Factor, 2*in.DepthMM*left
	if in.TargetMM.Known {
		out.NeededFor = worked.Some(passesTo(in.TargetMM.Value, in.RunoutMM, out.Factor))
	}
	return out, nil
}

// passesTo counts the passes until an unevenness has come down to a target.
func passesTo(target, before, factor float64) float64 {
	if before <= target {
		return 0
	}
	return max(0, math.Ceil(math.Log(target/before)/math.Log(factor)-1e-9))
}

// ErrorCopyCalculation is the catalogue entry of ErrorCopy.
func ErrorCopyCalculation() worked.Calculation {
	const balance = "balance of bar and cut"
	isUneven := func(in ErrorCopyInputs, _ ErrorCopyOutputs) bool {
		return in.TargetMM.Known && in.RunoutMM > in.TargetMM.Value
	}
	isEven := func(in ErrorCopyInputs, _ ErrorCopyOutputs) bool {
		return in.TargetMM.Known && in.RunoutMM <= in.TargetMM.Value
	}
	return worked.Define("error_copy", ErrorCopy, worked.Page[ErrorCopyInputs, ErrorCopyOutputs]{
		Title:    "What a bar that bends leaves uneven and undersize",
		Sources:  []string{"balance of bar and cut, recomputed", "radial share: Boring Basics, eisc.com (read)"},
		Validity: "radial force in step with depth; below a few hundredths of a millimetre the edge rubs",
		Formulas: []worked.Formula[ErrorCopyInputs, ErrorCopyOutputs]{
			{Symbol: "s", Is: "r_p * k_c * f", Source: balance},
			{Symbol: "mu", Is: "s / (k + s)", Source: balance},
			{Symbol: "e_2", Is: "e_1 * mu^N", Source: balance},
			{Symbol: "u", Is: "2 * a_p * mu", Source: balance},
			{Symbol: "u_N", Is: "2 * a_p * mu^N", Source: balance},
			{Symbol: "N_t", Is: "max(0, ceil(log(e_t / e_1) / log(mu) - 0.000000001))", Source: balance, When: isUneven},
			{Symbol: "N_t", Is: "0", Source: "even enough already", When: isEven},
		},
		Warnings: func(ErrorCopyInputs, ErrorCopyOutputs) []string {
			return []string{"No spring pass on metal that hardens under a rubbing edge, such as manganese or austenitic steel."}
		},
		Example: map[string]string{
			"kc": "2000 MPa", "feed": "0.25 mm", "depth": "1 mm", "stiffness_n_mm": "5954", "runout_before": "2 mm", "passes": "2", "target_runout": "0.02 mm",
		},
	})
}
