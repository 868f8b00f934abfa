package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// BoltCaptureInputs are a sleeve, what drags at it and the screws that hold it.
type BoltCaptureInputs struct {
	Way          string          `name:"way" choices:"joint_line,radial,head_pocket" means:"joint_line: along the joint, half in the sleeve and half in the ear; radial: through the ear into the sleeve; head_pocket: in the face of the ear, the head in a pocket in the edge of the sleeve"`
	PinFriction  float64         `name:"pin_friction" symbol:"mu" kind:"ratio" default:"0.2" means:"friction of the pin in the sleeve: 0.2 dry"`
	LoadN        float64         `name:"radial_load" symbol:"F" kind:"force" means:"load of the pin on this sleeve"`
	ThrustN      worked.Optional `name:"thrust" symbol:"W" kind:"force" means:"side thrust on the sleeve; without it, the drag of a pin that slides endways under its load"`
	PinMM        float64         `name:"pin_diameter" symbol:"d_p" kind:"length" means:"pin"`
	SeatMM       float64         `name:"seat_diameter" symbol:"D" kind:"length" means:"outside of the sleeve"`
	Size         string          `name:"size" means:"size of the screws: M8, 3/8-16"`
	Grade        string          `name:"grade" choices:"8.8,10.9,12.9,2,5,8" means:"class of a metric screw or grade of an inch screw"`
	Screws       float64         `name:"screws" symbol:"n" kind:"count" means:"screws"`
	LengthMM     float64         `name:"contact_length" symbol:"l" kind:"length" means:"length on which a screw bears: its thread in the joint, its depth in the weaker part, or the depth of the pocket"`
	OverlapMM    worked.Optional `name:"head_overlap" symbol:"o" kind:"length" means:"how far the head reaches over the sleeve (head_pocket only)"`
	WeakerMPa    float64         `name:"weaker_yield" symbol:"R_w" kind:"stress" means:"yield strength of the weaker of sleeve and ear; of grey iron its tensile strength"`
	EarMetal     string          `name:"ear_metal" choices:"steel,iron" means:"metal that the thread is cut in"`
	Reverses     string          `name:"load_reverses" choices:"yes,no" means:"whether the pin load comes from both sides"`
	LandMM       worked.Optional `name:"land" symbol:"b" kind:"length" means:"flat land beyond the seat, where known"`
	DepthMM      worked.Optional `name:"thread_depth" symbol:"t" kind:"length" means:"sound metal for threads, where known"`
	SafetyWanted float64         `name:"safety_wanted" symbol:"S_0" kind:"ratio" default:"2" means:"safety wanted against yield"`
}

// BoltCaptureOutputs are the forces, the stresses and what the screws need.
type BoltCaptureOutputs struct {
	TorqueNM      float64 `name:"torque" symbol:"T" kind:"torque" means:"torque that turns the sleeve"`
	RadiusMM      float64 `name:"radius" symbol:"r" kind:"length" means:"lever of the screws"`
	TangentialN   float64 `name:"tangential_force" symbol:"F_t" kind:"force" means:"turning force on all screws"`
	ThrustN       float64 `name:"thrust_used" symbol:"W_a" kind:"force" means:"thrust on all screws"`
	DiameterMM    float64 `name:"diameter" symbol:"d" kind:"length" means:"diameter of the screw"`
	PitchMM       float64 `name:"pitch" symbol:"P" kind:"length" means:"pitch of its thread"`
	CoreMM        float64 `name:"core_diameter" symbol:"d_3" kind:"length" means:"root diameter of its thread"`
	StressAreaMM2 float64 `name:"stress_area" symbol:"A_s" kind:"area" means:"stress area of its thread"`
	YieldMPa      float64 `name:"screw_yield" symbol:"R_p" kind:"stress" means:"yield strength of the screw"`
	ShearMM2      float64 `name:"shear_area" symbol:"A_q" kind:"area" means:"area on which one screw shears"`
	BearingMM2    float64 `name:"bearing_area" symbol:"A_b" kind:"area" means:"area on which one screw bears on the weaker part"`
	AcrossN       float64 `name:"force_across" symbol:"Q" kind:"force" means:"force across one screw"`
	PullN         float64 `name:"force_along" symbol:"N" kind:"force" means:"pull on one screw"`
	ShearMPa      float64 `name:"shear_stress" symbol:"q" kind:"stress" means:"shear stress in the screw"`
	EquivalentMPa float64 `name:"equivalent_stress" symbol:"sigma_v" kind:"stress" means:"equivalent (von Mises) stress of shear and pull"`
	BearingMPa    float64 `name:"bearing_stress" symbol:"p" kind:"stress" means:"bearing stress on the weaker part"`
	ScrewSafety   float64 `name:"screw_safety" symbol:"S_v" kind:"ratio" means:"yield of the screw over its stress"`
	BearingSafety float64 `name:"bearing_safety" symbol:"S_p" kind:"ratio" means:"yield of the weaker part over the bearing stress"`
	Safety        float64 `name:"safety" symbol:"S" kind:"ratio" means:"the smaller of the two"`
	Needed        float64 `name:"screws_needed" symbol:"n_n" kind:"count" means:"screws needed for the safety wanted, three at least"`
	Room          float64 `name:"screws_room" symbol:"n_r" kind:"count" means:"screws that find room outside the loaded arc, three diameters apart"`
	LandNeeded    float64 `name:"land_needed" symbol:"b_n" kind:"length" means:"land needed beyond the seat; for radial, from the hole to either face of the ear"`
	ThreadNeeded  float64 `name:"thread_needed" symbol:"t_n" kind:"length" means:"thread needed in sound metal of the ear"`
}

// BoltCapture computes whether screws keep a sleeve from turning and walking out,
// and what room they need.
//
//	T   = mu F d_p/2,  F_t = T/r,  r = D/2 (head_pocket: D/2 - o)
//	d_3 = d - 1.2269 P
//	A_q = d_3 l (joint_line), A_s (radial, head_pocket)
//	A_b = d_3 l/2 (joint_line), d_3 l (radial), o l (head_pocket)
//	Q   = sqrt(F_t^2 + W_a^2)/n, N = 0 (joint_line, radial)
//	Q   = F_t/n, N = 2 W_a/n (head_pocket)
//	q   = Q/A_q,  p = Q/A_b,  sigma_v = sqrt((N/A_s)^2 + 3 q^2)
//	S_v = R_p/sigma_v,  S_p = R_w/p,  S = min(S_v, S_p)
//	n_n = n S_0/S rounded up, at least 3
//	n_r = screws on the seat circle, 3 d apart, outside the loaded arc
//	b_n = 2 d + 1.5 mm (radial: 2 d),  t_n = 1.5 d in steel, 2 d in iron
//
// F is the load of the pin, W the side thrust [N]; d_p the pin, D the sleeve, l the
// length on which a screw bears, o the reach of the head over the sleeve, b the land
// and t the depth of sound metal that there are [mm]; n the screws; mu the friction
// of the pin; R_w the yield strength of the weaker part [MPa]; S_0 the safety
// wanted; T in N*m. A screw along the joint shears lengthwise, and only half of it
// bears on either part. A head that reaches over the sleeve is pulled on one side,
// so its screw is pulled twice.
//
// The press fit counts as nothing and the pin as dry: that is the day on which the
// screws are needed. They stay out of the arc 55 degrees either side of the load,
// 110 degrees where it comes from one side, two such arcs where it reverses.
//
// Validity: pin smaller than sleeve; a lever of more than half the pin; a head that
// reaches no further than its screw is thick. Screws share evenly only when drilled
// together with the sleeve in place.
//
// Error: friction. A seized pin brings the whole torque of the machine, which no
// screw holds.
//
// Source: statics, recomputed; land, depth of thread, spacing and three screws:
// common practice, no source; 55 degrees: shear planes of ASME BTH-1 (read on
// published sheets).
func BoltCapture(in BoltCaptureInputs) (BoltCaptureOutputs, error) {
	var c worked.Checks
	in.check(&c)
	t, s := lookUp(&c, in.Size, in.Grade)
	if in.OverlapMM.Known && in.OverlapMM.Value > t.DiameterMM && t.DiameterMM > 0 {
		c.Refuse("head_overlap", "is %g, must be at most the screw, which is %g: a head is no wider", in.OverlapMM.Value, t.DiameterMM)
	}
	if err := c.Err(); err != nil {
		return BoltCaptureOutputs{}, err
	}
	out := BoltCaptureOutputs{DiameterMM: t.DiameterMM, PitchMM: t.PitchMM, CoreMM: t.CoreMM(), StressAreaMM2: t.StressAreaMM2, YieldMPa: s.YieldMPa}
	out.loads(in)
	out.areas(in)
	out.stresses(in)
	out.room(in)
	return out, nil
}

func (in BoltCaptureInputs) check(c *worked.Checks) {
	c.OneOf("way", in.Way, "joint_line", "radial", "head_pocket")
	c.OneOf("ear_metal", in.EarMetal, "steel", "iron")
	c.OneOf("load_reverses", in.Reverses, "yes", "no")
	c.Between("pin_friction", in.PinFriction, 0.01, 1)
	c.Positive("radial_load", in.LoadN)
	c.Positive("pin_diameter", in.PinMM)
	c.Positive("seat_diameter", in.SeatMM)
	c.Below("pin_diameter", in.PinMM, "seat_diameter", in.SeatMM)
	checkWhole(c, "screws", in.Screws, 1, 48)
	c.Positive("contact_length", in.LengthMM)
	c.Positive("weaker_yield", in.WeakerMPa)
	c.Between("safety_wanted", in.SafetyWanted, 1, 10)
	if in.ThrustN.Known {
		c.NotNegative("thrust", in.ThrustN.Value)
	}
	if in.LandMM.Known {
		c.NotNegative("land", in.LandMM.Value)
	}
	if in.DepthMM.Known {
		c.NotNegative("thread_depth", in.DepthMM.Value)
	}
	in.checkOverlap(c)
}

func (in BoltCaptureInputs) checkOverlap(c *worked.Checks) {
	switch {
	case in.Way != "head_pocket" && in.OverlapMM.Known:
		c.Refuse("head_overlap", "is %g, but only a head in a pocket has one", in.OverlapMM.Value)
	case in.Way != "head_pocket":
	case !in.OverlapMM.Known:
		c.Refuse("head_overlap", "is missing: how far the head reaches over the sleeve")
	default:
		c.Positive("head_overlap", in.OverlapMM.Value)
		c.Below("head_overlap", in.OverlapMM.Value, "the wall of the sleeve", (in.SeatMM-in.PinMM)/2)
	}
}

// loads fills in what turns and what pushes.
func (out *BoltCaptureOutputs) loads(in BoltCaptureInputs) {
	out.TorqueNM = in.PinFriction * in.LoadN * in.PinMM / 2 / 1000
	out.RadiusMM = in.SeatMM / 2
	if in.OverlapMM.Known {
		out.RadiusMM = in.SeatMM/2 - in.OverlapMM.Value
	}
	out.TangentialN = 1000 * out.TorqueNM / out.RadiusMM
	out.ThrustN = in.PinFriction * in.LoadN
	if in.ThrustN.Known {
		out.ThrustN = in.ThrustN.Value
	}
	if in.Way == "head_pocket" {
		out.AcrossN, out.PullN = out.TangentialN/in.Screws, 2*out.ThrustN/in.Screws
		return
	}
	out.AcrossN = math.Hypot(out.TangentialN, out.ThrustN) / in.Screws
}

// areas fills in on what one screw shears and bears.
func (out *BoltCaptureOutputs) areas(in BoltCaptureInputs) {
	switch in.Way {
	case "joint_line":
		out.ShearMM2, out.BearingMM2 = out.CoreMM*in.LengthMM, out.CoreMM*in.LengthMM/2
	case "radial":
		out.ShearMM2, out.BearingMM2 = out.StressAreaMM2, out.CoreMM*in.LengthMM
	case "head_pocket":
		out.ShearMM2, out.BearingMM2 = out.StressAreaMM2, in.OverlapMM.Value*in.LengthMM
	}
}

func (out *BoltCaptureOutputs) stresses(in BoltCaptureInputs) {
	out.ShearMPa = out.AcrossN / out.ShearMM2
	out.BearingMPa = out.AcrossN / out.BearingMM2
	pull := out.PullN / out.StressAreaMM2
	out.EquivalentMPa = math.Sqrt(pull*pull + 3*out.ShearMPa*out.ShearMPa)
	out.ScrewSafety = out.YieldMPa / out.EquivalentMPa
	out.BearingSafety = in.WeakerMPa / out.BearingMPa
	out.Safety = min(out.ScrewSafety, out.BearingSafety)
	out.Needed = max(3, math.Ceil(in.Screws*in.SafetyWanted/out.Safety-stepSlack))
}

// The arcs free of load on either side of a load that comes from one side, and of
// each of the two where it reverses.
const (
	freeArcDeg     = 360 - 2*55
	freeArcsEachDg = 180 - 2*55
)

// room fills in where the screws can go and what metal they need.
func (out *BoltCaptureOutputs) room(in BoltCaptureInputs) {
	spacing := 3 * out.DiameterMM
	if in.Reverses == "yes" {
		out.Room = 2 * (math.Floor(freeArcsEachDg*math.Pi/180*in.SeatMM/2/spacing+stepSlack) + 1)
	} else {
		out.Room = math.Floor(freeArcDeg*math.Pi/180*in.SeatMM/2/spacing+stepSlack) + 1
	}
	out.LandNeeded = 2*out.DiameterMM + 1.5
	if in.Way == "radial" {
		out.LandNeeded = 2 * out.DiameterMM
	}
	out.ThreadNeeded = ruleMultiple(in.EarMetal == "iron") * out.DiameterMM
}
