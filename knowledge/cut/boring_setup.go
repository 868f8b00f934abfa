package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// BoringSetupInputs are a bore to be cut, the bar and its bearings, and the cut.
type BoringSetupInputs struct {
	Work         string          `name:"work" choices:"mild_structural_steel,medium_carbon_steel,alloy_steel_qt,cast_steel_low,cast_steel_high,manganese_steel,grey_iron,ductile_iron,weld_deposit_carbon,weld_deposit_hard,weld_deposit_austenitic" means:"metal to be cut"`
	Tool         string          `name:"tool" choices:"hss,carbide" default:"carbide" means:"what the edge is made of"`
	BeforeMM     float64         `name:"bore_before" symbol:"D_1" kind:"length" means:"hole before, at its tightest"`
	AfterMM      float64         `name:"bore_after" symbol:"D_2" kind:"length" means:"bore when finished"`
	LengthMM     float64         `name:"length" symbol:"L" kind:"length" means:"length of the bore"`
	SpanMM       float64         `name:"span" symbol:"S" kind:"length" means:"between the middles of the bearings"`
	BarMM        float64         `name:"bar_diameter" symbol:"d" kind:"length" means:"diameter of the bar"`
	BarBoreMM    float64         `name:"bar_bore" symbol:"d_0" kind:"length" default:"0 mm" means:"bore of a hollow bar"`
	Bearings     string          `name:"bearings" choices:"self_aligning,rigid" default:"self_aligning" means:"whether they let the bar tilt"`
	ToolAtMM     worked.Optional `name:"tool_at" symbol:"a_0" kind:"length" means:"from one bearing to the middle of the bore; without it, the middle of the span, where the bar is softest"`
	DepthMM      float64         `name:"depth" symbol:"a_r" kind:"length" means:"depth of a roughing cut, a side"`
	FeedMM       float64         `name:"feed" symbol:"f_r" kind:"length" means:"feed of roughing cuts, a revolution"`
	FinishMM     float64         `name:"finish_depth" symbol:"a_f" kind:"length" default:"0.5 mm" means:"depth of the finishing cut, a side"`
	FinishFeedMM float64         `name:"finish_feed" symbol:"f_f" kind:"length" default:"0.15 mm" means:"feed of finishing and spring passes, a revolution"`
	EnteringDeg  float64         `name:"entering_angle" symbol:"kappa" kind:"angle" default:"90 deg" means:"between cutting edge and feed"`
	NoseMM       float64         `name:"nose_radius" symbol:"r_e" kind:"length" default:"0.4 mm" means:"nose radius of the tool"`
	SpeedMPerMin worked.Optional `name:"speed" symbol:"v_0" kind:"speed" means:"cutting speed; without it, where to start with this metal and tool"`
	InternalK    float64         `name:"internal_factor" symbol:"K_i" kind:"ratio" default:"1.2" means:"what cutting inside a bore adds to the force"`
	WearK        float64         `name:"wear_factor" symbol:"K_w" kind:"ratio" default:"1.3" means:"what a worn edge adds"`
	InterruptK   float64         `name:"interrupted_factor" symbol:"K_u" kind:"ratio" default:"1" means:"what bead ripples or keyways add: 1.1 to 1.25"`
	RadialShare  float64         `name:"radial_to_tangential" symbol:"r_p" kind:"ratio" default:"0.3" means:"radial over cutting force"`
	FeedShare    float64         `name:"feed_to_tangential" symbol:"r_f" kind:"ratio" default:"0.6" means:"feed force over cutting force"`
	Efficiency   float64         `name:"efficiency" symbol:"eta" kind:"ratio" default:"0.7" means:"power at the tool over power of the motor"`
	Damping      float64         `name:"damping_ratio" symbol:"zeta" kind:"ratio" default:"0.02" means:"damping of the bar in its mounts"`
	ModulusMPa   float64         `name:"modulus" symbol:"E" kind:"stress" default:"207 GPa" means:"modulus of elasticity of the bar"`
	DensityKGM3  float64         `name:"density" symbol:"rho" kind:"density" default:"7850 kg/m3" means:"density of the bar"`
	OverrunMM    float64         `name:"approach_overrun" symbol:"l" kind:"length" default:"10 mm" means:"run-in and run-out together"`
	AllowedMM    float64         `name:"undersize_allowed" symbol:"u_0" kind:"length" default:"0.02 mm" means:"how much too small the bore may stay, on the diameter, before a spring pass is worth it"`
	HandlingS    worked.Optional `name:"handling_per_pass" symbol:"t_1" kind:"time" means:"setting the tool, measuring and running back, each pass: time your own"`
}

// BoringSetupOutputs are everything that a technician asks of a set-up.
type BoringSetupOutputs struct {
	CuttingN     float64         `name:"cutting_force" symbol:"F_c" kind:"force" means:"force along the cut, roughing"`
	TorqueNM     float64         `name:"torque" symbol:"T" kind:"torque" means:"torque on the bar"`
	CutKW        float64         `name:"cutting_power" symbol:"P_c" kind:"power" means:"power at the tool"`
	MotorKW      float64         `name:"motor_power" symbol:"P_m" kind:"power" means:"power that the motor must give"`
	SpeedUsed    float64         `name:"cutting_speed" symbol:"v" kind:"speed" means:"cutting speed used"`
	RPMFirst     float64         `name:"rpm_first" symbol:"n_1" kind:"ratio" means:"revolutions a minute at the start"`
	RPMLast      float64         `name:"rpm_last" symbol:"n_2" kind:"ratio" means:"revolutions a minute at the finish"`
	DeflectionMM float64         `name:"deflection" symbol:"y" kind:"length" means:"bend of the bar at the tool, roughing"`
	RoughSmallMM float64         `name:"undersize_rough" symbol:"u_r" kind:"length" means:"how much too small roughing leaves the bore, on the diameter"`
	SmallMM      float64         `name:"undersize_finish" symbol:"u_f" kind:"length" means:"the same after the finishing cut"`
	SpringPasses float64         `name:"spring_passes" symbol:"c" kind:"count" means:"spring passes that are worth it"`
	LeftMM       float64         `name:"undersize_left" symbol:"u" kind:"length" means:"how much too small the bore is in the end, on the diameter: set the tool out by half of it"`
	ChatterMM    float64         `name:"chatter_limit" symbol:"b_c" kind:"length" means:"width of cut below which no speed chatters"`
	Chatter      string          `name:"chatter" choices:"quiet,may_chatter" means:"the roughing cut against this limit"`
	SagMM        float64         `name:"sag" symbol:"y_g" kind:"length" means:"sag of the bar under its own weight, if it lies level: it bows the axis"`
	FrequencyHz  float64         `name:"first_frequency_hz" symbol:"f_1" kind:"ratio" means:"first natural frequency of the bar, in Hz"`
	Passes       float64         `name:"passes" symbol:"N" kind:"count" means:"passes in all"`
	RoughPasses  float64         `name:"rough_passes" symbol:"N_r" kind:"count" means:"roughing passes among them"`
	CutS         float64         `name:"cut_time" symbol:"t_c" kind:"time" means:"time of cutting"`
	TotalS       worked.Optional `name:"total_time" symbol:"t" kind:"time" means:"with handling"`
	RzMM         float64         `name:"rz" symbol:"R_z" kind:"length" means:"ridges that feed and nose leave; the real surface is rougher"`
	GapMM        float64         `name:"bar_gap" symbol:"g" kind:"length" means:"room beside the bar in the hole before"`
	RadialN      float64         `name:"radial_force" symbol:"F_p" kind:"force" means:"force away from the metal"`
	FeedN        float64         `name:"feed_force" symbol:"F_f" kind:"force" means:"force along the bar"`
	SideN        float64         `name:"side_force" symbol:"F_s" kind:"force" means:"force across the bar"`
	BearingN     float64         `name:"bearing_force" symbol:"R_x" kind:"force" means:"force on the bearing that carries more (see tack_group)"`
	ChipMM       float64         `name:"chip_thickness" symbol:"h" kind:"length" means:"thickness of the roughing chip"`
	FineChipMM   float64         `name:"finish_chip_thickness" symbol:"h_f" kind:"length" means:"thickness of the finishing chip"`
	KC11MPa      float64         `name:"kc11" symbol:"k_c11" kind:"stress" means:"specific cutting force for a chip 1 mm by 1 mm"`
	MC           float64         `name:"mc" symbol:"m_c" kind:"ratio" means:"exponent of Kienzle's law"`
	SlowK        float64         `name:"slow_factor" symbol:"K_t" kind:"ratio" means:"what HSS, or a speed below 50 m/min, adds to the force"`
	KCMPa        float64         `name:"kc" symbol:"k_c" kind:"stress" means:"specific cutting force, roughing, with all factors"`
	FineKCMPa    float64         `name:"kc_finish" symbol:"k_f" kind:"stress" means:"specific cutting force, finishing, with all factors"`
	SecondMoment float64         `name:"second_moment_mm4" symbol:"I" kind:"ratio" means:"second moment of area of the bar, in mm4"`
	NearMM       float64         `name:"tool_from_one" symbol:"a" kind:"length" means:"from one bearing to the tool"`
	FarMM        float64         `name:"tool_from_other" symbol:"b" kind:"length" means:"from the other bearing to the tool"`
	Stiffness    float64         `name:"stiffness_n_mm" symbol:"k" kind:"ratio" means:"force at the tool for one millimetre, in N"`
	Factor       float64         `name:"copy_factor" symbol:"mu" kind:"ratio" means:"share of any unevenness that a roughing cut leaves"`
	FineFactor   float64         `name:"finish_copy_factor" symbol:"mu_f" kind:"ratio" means:"the same for finishing and spring passes"`
	StockMM      float64         `name:"stock_per_side" symbol:"s" kind:"length" means:"metal to take off, a side"`
	LastMM       float64         `name:"last_depth" symbol:"a_2" kind:"length" means:"depth of the finishing cut: no more than there is"`
	EachMM       float64         `name:"depth_each" symbol:"a_1" kind:"length" means:"depth of each roughing pass, all alike"`
	WeightN      float64         `name:"bar_weight" symbol:"G" kind:"force" means:"weight of the bar between the bearings"`
}

// BoringSetup computes all of a set-up in one sheet: force, torque, power and
// revolutions, how the bar bends and how much too small the bore comes out, whether
// it chatters, the passes and their time.
//
//	k_c = k_c11 h^-m_c K_i K_w K_u K_t, h = f_r sin kappa; k_f likewise with f_f
//	K_t = 1.2 for HSS or below 50 m/min, else 1
//	F_c = k_c a_r f_r, F_p = r_p F_c, F_f = r_f F_c, F_s = sqrt(F_c^2 + F_p^2)
//	T = F_c D_2 / 2000, P_c = F_c v / 60000, P_m = P_c / eta, n = 1000 v / (pi D)
//	k = 3 E I S / (a^2 b^2), rigid bearings 3 E I S^3 / (a^3 b^3); y = F_s / k
//	mu = r_p k_c f_r / (k + r_p k_c f_r), mu_f likewise with k_f and f_f
//	u_r = 2 a_r mu, u_f = 2 (a_2 + a_r mu) mu_f, u = u_f mu_f^c
//	c: spring passes until u is below u_0, at most 3; none on metal that hardens
//	b_c = 2 k zeta (1 + zeta) / (r_p k_c)
//	N = N_r + 1 + c, N_r = ceil((s - a_2) / a_r)
//
// D_1 and D_2 are the bore before and after, L its length, S the span, d the bar,
// d_0 its bore, a_0 the place of the tool, a_r, f_r depth and feed of roughing, a_f,
// f_f of finishing, r_e the nose, l run-in and run-out [mm]; kappa the entering angle
// [deg]; v_0 the cutting speed [m/min]; E the modulus [MPa], rho the density [kg/m3];
// K_i, K_w, K_u factors on the force, eta the efficiency, zeta the damping [-]; t_1
// the handling of a pass [s].
//
// Validity: tool between two bearings; that of KienzleKC, CuttingForce,
// BarBetweenSupports, ErrorCopy, ChatterLimit, BarSag and BoringPasses, of which it
// is made. The rake of the tool is not corrected for. Undersize is an upper bound:
// roughing is taken at its full depth.
//
// Error: forces 20 %, and all that follows from them; the chatter limit a factor of
// 2; mounts are taken as rigid, which none is.
//
// Source: the parts named, each with its own; factors 1.2, 1.3 and 1.2 from
// German textbooks (from memory).
func BoringSetup(in BoringSetupInputs) (BoringSetupOutputs, error) {
	if err := in.check(); err != nil {
		return BoringSetupOutputs{}, err
	}
	w, err := workNamed(in.Work)
	if err != nil {
		return BoringSetupOutputs{}, err
	}
	var out BoringSetupOutputs
	out.chip(in, w)
	out.bar(in)
	out.forces(in)
	out.undersize(in, w)
	if err := out.passes(in); err != nil {
		return BoringSetupOutputs{}, err
	}
	out.RzMM = in.FinishFeedMM * in.FinishFeedMM / (8 * in.NoseMM)
	out.GapMM = (in.BeforeMM - in.BarMM) / 2
	var c worked.Checks
	if !(out.DeflectionMM <= in.SpanMM/20) {
		c.Refuse("bar_diameter", "is so thin that the cut would bend the bar by %.3g mm: the formula holds for small bends", out.DeflectionMM)
	}
	if !(out.SagMM <= in.SpanMM/20) {
		c.Refuse("span", "is so long that the bar sags %.3g mm: the formula holds for small bends", out.SagMM)
	}
	if err := c.Err(); err != nil {
		return BoringSetupOutputs{}, err
	}
	return out, nil
}

func (in BoringSetupInputs) check() error {
	var c worked.Checks
	c.OneOf("tool", in.Tool, "hss", "carbide")
	c.OneOf("bearings", in.Bearings, "self_aligning", "rigid")
	in.checkBarAndBore(&c)
	c.Between("depth", in.DepthMM, 0.05, 10)
	c.Between("finish_depth", in.FinishMM, 0.01, 5)
	checkEntering(&c, "entering_angle", in.EnteringDeg)
	c.Between("nose_radius", in.NoseMM, 0.05, 20)
	if in.SpeedMPerMin.Known {
		checkSpeed(&c, "speed", in.SpeedMPerMin.Value)
	}
	c.Between("internal_factor", in.InternalK, 1, 2)
	c.Between("wear_factor", in.WearK, 1, 2)
	c.Between("interrupted_factor", in.InterruptK, 1, 2)
	c.Between("radial_to_tangential", in.RadialShare, 0.01, 1)
	c.Between("feed_to_tangential", in.FeedShare, 0, 1)
	c.Between("efficiency", in.Efficiency, 0.1, 1)
	c.Between("damping_ratio", in.Damping, 1e-4, 0.5)
	c.Between("density", in.DensityKGM3, 1000, 20000)
	c.Between("approach_overrun", in.OverrunMM, 0, 1000)
	c.Between("undersize_allowed", in.AllowedMM, 1e-4, 10)
	if in.HandlingS.Known {
		c.Between("handling_per_pass", in.HandlingS.Value, 0, 36000)
	}
	in.checkFeeds(&c)
	return c.Err()
}

// checkFeeds asks for chips that the law of the force and that of the ridges hold
// for.
func (in BoringSetupInputs) checkFeeds(c *worked.Checks) {
	checkChip(c, "feed", in.FeedMM, in.EnteringDeg)
	checkChip(c, "finish_feed", in.FinishFeedMM, in.EnteringDeg)
	if c.Err() == nil && in.FinishFeedMM > in.NoseMM {
		c.Refuse("finish_feed", "is %g mm, more than nose_radius, which is %g mm: it leaves a thread", in.FinishFeedMM, in.NoseMM)
	}
}

func (in BoringSetupInputs) checkBarAndBore(c *worked.Checks) {
	c.Between("bore_before", in.BeforeMM, 1, 1e4)
	c.Between("bore_after", in.AfterMM, 1, 1e4)
	c.Below("bore_before", in.BeforeMM, "bore_after", in.AfterMM)
	c.Between("length", in.LengthMM, 0.1, 2e4)
	checkBar(c, in.BarMM, in.BarBoreMM)
	c.Below("bar_diameter", in.BarMM, "bore_before", in.BeforeMM)
	checkModulus(c, in.ModulusMPa)
	c.Between("span", in.SpanMM, 1, 2e4)
	c.Below("length", in.LengthMM, "span", in.SpanMM)
	if in.SpanMM < in.BarMM {
		c.Refuse("span", "is %g mm, shorter than the bar is thick: beam formulas no longer hold", in.SpanMM)
	}
	if in.ToolAtMM.Known {
		c.Positive("tool_at", in.ToolAtMM.Value)
		c.Below("tool_at", in.ToolAtMM.Value, "span", in.SpanMM)
	}
}

// mostSpringPasses: more are never taken (common practice, no source).
const mostSpringPasses = 3

// What HSS or a slow cut adds to the force; a test holds it to cutting.yaml.
const (
	slowFactor    = 1.2
	slowBelowMMin = 50.0
)

// isSlow reports whether the rows of force, which hold for carbide at about 100
// m/min, need the factor for slow cuts.
func isSlow(tool string, speedMPerMin float64) bool {
	return tool == "hss" || speedMPerMin < slowBelowMMin
}

// chip fills in speed and specific cutting forces.
func (out *BoringSetupOutputs) chip(in BoringSetupInputs, w Work) {
	out.ChipMM = chipThickness(in.FeedMM, in.EnteringDeg)
	out.FineChipMM = chipThickness(in.FinishFeedMM, in.EnteringDeg)
	row, _ := w.hardest(out.ChipMM)
	out.SpeedUsed = w.Portable.speed(in.Tool)[0]
	if in.SpeedMPerMin.Known {
		out.SpeedUsed = in.SpeedMPerMin.Value
	}
	out.KC11MPa, out.MC, out.SlowK = row.KC11MPa, row.MC, 1
	if isSlow(in.Tool, out.SpeedUsed) {
		out.SlowK = slowFactor
	}
	factors := in.InternalK * in.WearK * in.InterruptK * out.SlowK
	out.KCMPa = row.at(out.ChipMM) * factors
	out.FineKCMPa = row.at(out.FineChipMM) * factors
}

// bar fills in how stiff the bar is, how it sags and how it swings.
func (out *BoringSetupOutputs) bar(in BoringSetupInputs) {
	out.SecondMoment = secondMoment(in.BarMM, in.BarBoreMM)
	out.NearMM = in.SpanMM / 2
	if in.ToolAtMM.Known {
		out.NearMM = in.ToolAtMM.Value
	}
	out.FarMM = in.SpanMM - out.NearMM
	bending := in.ModulusMPa * out.SecondMoment
	tilting, fixed := supportStiffness(bending, out.NearMM, out.FarMM)
	out.WeightN = gravityMS2 * in.DensityKGM3 * barArea(in.BarMM, in.BarBoreMM) * in.SpanMM / 1e9
	fixedSag := out.WeightN * cube(in.SpanMM) / (384 * bending)
	support := "simply_supported"
	out.Stiffness, out.SagMM = tilting, 5*fixedSag
	if in.Bearings == "rigid" {
		out.Stiffness, out.SagMM, support = fixed, fixedSag, "fixed"
	}
	out.FrequencyHz = firstFrequency(rootSquared(support), in.SpanMM, in.BarMM, in.BarBoreMM, in.ModulusMPa, in.DensityKGM3)
}

// forces fills in what roughing does to bar, drive and mounts.
func (out *BoringSetupOutputs) forces(in BoringSetupInputs) {
	f := forcesOf(CuttingForceInputs{KCMPa: out.KCMPa, DepthMM: in.DepthMM, FeedMM: in.FeedMM, RadialShare: in.RadialShare, FeedShare: in.FeedShare})
	out.CuttingN, out.RadialN, out.FeedN, out.SideN = f.CuttingN, f.RadialN, f.FeedN, f.SideN
	out.RPMFirst, out.RPMLast = revolutions(out.SpeedUsed, in.BeforeMM), revolutions(out.SpeedUsed, in.AfterMM)
	out.TorqueNM = out.CuttingN * in.AfterMM / 2000
	out.CutKW = out.CuttingN * out.SpeedUsed / 60000
	out.MotorKW = out.CutKW / in.Efficiency
	out.BearingN = out.SideN * max(out.NearMM, out.FarMM) / in.SpanMM
	out.DeflectionMM = out.SideN / out.Stiffness
	out.ChatterMM = chatterDepth(out.Stiffness, in.Damping, in.RadialShare*out.KCMPa)
	out.Chatter = "quiet"
	if in.DepthMM > out.ChatterMM {
		out.Chatter = "may_chatter"
	}
}

// undersize fills in what the bend leaves standing, and the spring passes that take
// it off.
func (out *BoringSetupOutputs) undersize(in BoringSetupInputs, w Work) {
	rough, fine := in.RadialShare*out.KCMPa*in.FeedMM, in.RadialShare*out.FineKCMPa*in.FinishFeedMM
	out.Factor, out.FineFactor = rough/(out.Stiffness+rough), fine/(out.Stiffness+fine)
	out.StockMM = (in.AfterMM - in.BeforeMM) / 2
	out.LastMM = min(in.FinishMM, out.StockMM)
	out.RoughSmallMM = 2 * in.DepthMM * out.Factor
	out.SmallMM = 2 * (out.LastMM + in.DepthMM*out.Factor) * out.FineFactor
	if !w.WorkHardens {
		out.SpringPasses = min(mostSpringPasses, passesTo(in.AllowedMM, out.SmallMM, out.FineFactor))
	}
	out.LeftMM = out.SmallMM * math.Pow(out.FineFactor, out.SpringPasses)
}

// passes fills in the passes and their time.
func (out *BoringSetupOutputs) passes(in BoringSetupInputs) error {
	plan, err := BoringPasses(BoringPassesInputs{
		BeforeMM: in.BeforeMM, AfterMM: in.AfterMM, LengthMM: in.LengthMM, OverrunMM: in.OverrunMM, RoughMM: in.DepthMM, FinishMM: in.FinishMM,
		RoughFeedMM: in.FeedMM, FinishFeedMM: in.FinishFeedMM, SpeedMPerMin: out.SpeedUsed, SpringPasses: out.SpringPasses, HandlingS: in.HandlingS,
	})
	out.RoughPasses, out.EachMM, out.Passes = plan.RoughPasses, plan.EachMM, plan.Passes
	out.CutS, out.TotalS = plan.CutS, plan.TotalS
	return err
}
