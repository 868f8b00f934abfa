package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// CuttingForceInputs are a cut and the metal's specific cutting force.
type CuttingForceInputs struct {
	KCMPa       float64 `name:"kc" symbol:"k_c" kind:"stress" means:"specific cutting force, with its corrections (see kienzle_kc)"`
	DepthMM     float64 `name:"depth" symbol:"a_p" kind:"length" means:"depth of cut, a side"`
	FeedMM      float64 `name:"feed" symbol:"f" kind:"length" means:"feed a revolution"`
	RadialShare float64 `name:"radial_to_tangential" symbol:"r_p" kind:"ratio" default:"0.3" means:"radial over cutting force"`
	FeedShare   float64 `name:"feed_to_tangential" symbol:"r_f" kind:"ratio" default:"0.6" means:"feed force over cutting force"`
}

// CuttingForceOutputs are the forces on the tool.
type CuttingForceOutputs struct {
	ChipAreaMM2 float64 `name:"chip_area" symbol:"A" kind:"area" means:"cross-section of the chip"`
	CuttingN    float64 `name:"cutting_force" symbol:"F_c" kind:"force" means:"along the cut: it makes the torque"`
	RadialN     float64 `name:"radial_force" symbol:"F_p" kind:"force" means:"away from the metal: it makes the bore small"`
	FeedN       float64 `name:"feed_force" symbol:"F_f" kind:"force" means:"along the bar: it pushes on the mount"`
	SideN       float64 `name:"side_force" symbol:"F_s" kind:"force" means:"across the bar, cutting and radial force together: it bends the bar"`
}

// CuttingForce computes the forces of a cut.
//
//	A   = a_p f
//	F_c = k_c A
//	F_p = r_p F_c, F_f = r_f F_c
//	F_s = sqrt(F_c^2 + F_p^2)
//
// k_c is the specific cutting force [MPa], a_p the depth and f the feed [mm], r_p
// and r_f the shares of radial and feed force [-].
//
// Validity: a depth larger than the nose radius. A nose deeper than the cut pushes
// the bar away: r_p can then exceed 0.5 (from memory).
//
// Error: that of k_c, 15 %, and of the shares, 20 %.
//
// Source: definition of k_c; shares from Boring Basics, eisc.com (read): radial 25
// to 30 %, feed 50 to 60 % of the cutting force.
func CuttingForce(in CuttingForceInputs) (CuttingForceOutputs, error) {
	var c worked.Checks
	checkCut(&c, in.KCMPa, in.DepthMM, in.FeedMM)
	c.Between("radial_to_tangential", in.RadialShare, 0, 1)
	c.Between("feed_to_tangential", in.FeedShare, 0, 1)
	if err := c.Err(); err != nil {
		return CuttingForceOutputs{}, err
	}
	return forcesOf(in), nil
}

func forcesOf(in CuttingForceInputs) CuttingForceOutputs {
	out := CuttingForceOutputs{ChipAreaMM2: in.DepthMM * in.FeedMM}
	out.CuttingN = in.KCMPa * out.ChipAreaMM2
	out.RadialN, out.FeedN = in.RadialShare*out.CuttingN, in.FeedShare*out.CuttingN
	out.SideN = math.Sqrt(out.CuttingN*out.CuttingN + out.RadialN*out.RadialN)
	return out
}

// checkCut asks for a cut that some tool could take.
func checkCut(c *worked.Checks, kcMPa, depthMM, feedMM float64) {
	c.Between("kc", kcMPa, 100, 20000)
	c.Between("depth", depthMM, 0.001, 30)
	c.Between("feed", feedMM, 0.001, 10)
}

// CuttingForceCalculation is the catalogue entry of CuttingForce.
func CuttingForceCalculation() worked.Calculation {
	const shares = "Boring Basics, eisc.com (read)"
	return worked.Define("cutting_force", CuttingForce, worked.Page[CuttingForceInputs, CuttingForceOutputs]{
		Title:    "Forces of a cut",
		Sources:  []string{"definition of the specific cutting force", "shares: Boring Basics, eisc.com (read)"},
		Validity: "depth larger than the nose radius; kc for the chip in question, 0.11 to 1.13 mm thick",
		Formulas: []worked.Formula[CuttingForceInputs, CuttingForceOutputs]{
			{Symbol: "A", Is: "a_p * f", Source: "definition"},
			{Symbol: "F_c", Is: "k_c * A", Source: "definition"},
			{Symbol: "F_p", Is: "r_p * F_c", Source: shares},
			{Symbol: "F_f", Is: "r_f * F_c", Source: shares},
			{Symbol: "F_s", Is: "sqrt(F_c^2 + F_p^2)", Source: "square to each other"},
		},
		Example: map[string]string{"kc": "2400 MPa", "depth": "1.5 mm", "feed": "0.2 mm"},
	})
}
