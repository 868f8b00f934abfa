package bolt

import (
	"math"

	"boremend/knowledge/ear"
	"boremend/knowledge/worked"
)

// ShoulderInputs are a sleeve with a shoulder, the thrust on it and the side play
// that all shoulders of the joint share.
type ShoulderInputs struct {
	ThrustN    float64         `name:"thrust" symbol:"W" kind:"force" means:"side thrust of the joint"`
	FinishMM   float64         `name:"finish_bore" symbol:"d" kind:"length" means:"bore of the finished sleeve"`
	SleeveODMM float64         `name:"sleeve_od" symbol:"D_b" kind:"length" means:"outside of the sleeve"`
	FlangeODMM float64         `name:"flange_od" symbol:"D_a" kind:"length" means:"outside of the shoulder"`
	CounterMM  float64         `name:"counterface_bore" symbol:"D_r" kind:"length" means:"bore of the face that it bears on, chamfer counted"`
	PlayMM     float64         `name:"side_play_total" symbol:"s" kind:"length" means:"whole side play of the joint without shoulders, pushed over both ways"`
	Shoulders  float64         `name:"shoulders" symbol:"n" kind:"count" default:"1" means:"shoulders that share the play"`
	RunMM      float64         `name:"running_clearance" symbol:"c" kind:"length" default:"0.5 mm" means:"running gap left on each side"`
	FlangeMM   worked.Optional `name:"flange_thickness" symbol:"h_g" kind:"length" means:"thickness of the shoulder, where it is chosen; without it, what the play leaves"`
	YieldMPa   float64         `name:"sleeve_yield" symbol:"R" kind:"stress" means:"yield strength of the sleeve"`
	FaceMPa    float64         `name:"face_yield" symbol:"R_f" kind:"stress" means:"yield strength of the weaker face; of grey iron its tensile strength"`
	Poisson    float64         `name:"poisson" symbol:"nu" kind:"ratio" default:"0.3" means:"Poisson's ratio of the sleeve"`
}

// ShoulderOutputs are the thickness and what it stands.
type ShoulderOutputs struct {
	RoomMM       float64         `name:"thickness_room" symbol:"h_m" kind:"length" means:"thickest shoulder that the play leaves; negative when there is no room"`
	LeastMM      float64         `name:"thickness_least" symbol:"h_l" kind:"length" means:"thinnest shoulder that is worth turning at this bore"`
	ThicknessMM  float64         `name:"thickness" symbol:"h" kind:"length" means:"thickness worked with"`
	RecessMM     float64         `name:"recess" symbol:"r" kind:"length" means:"counterbore that each ear needs so that the shoulders run free"`
	PlayLeftMM   float64         `name:"play_left" symbol:"s_l" kind:"length" means:"side play left with the recesses cut"`
	DesignN      float64         `name:"design_thrust" symbol:"W_d" kind:"force" means:"thrust, doubled because it leans on one half of the ring"`
	WidthMM      float64         `name:"width" symbol:"w" kind:"length" means:"how far the shoulder stands out"`
	ShearMPa     float64         `name:"shear_stress" symbol:"q" kind:"stress" means:"shear at the root"`
	PressureMPa  float64         `name:"bearing" symbol:"p" kind:"pressure" means:"pressure on the face"`
	LoadRadiusMM worked.Optional `name:"load_radius" symbol:"r_l" kind:"length" means:"radius at which the thrust acts, mid-contact"`
	C8           worked.Optional `name:"c8" symbol:"C_8" kind:"ratio" means:"constant of the ring"`
	C9           worked.Optional `name:"c9" symbol:"C_9" kind:"ratio" means:"constant of the ring"`
	L9           worked.Optional `name:"l9" symbol:"L_9" kind:"ratio" means:"constant of the load line"`
	MomentN      worked.Optional `name:"moment_per_length" symbol:"M" kind:"force" means:"bending moment at the root over its length, N*mm for each mm"`
	BendingMPa   worked.Optional `name:"bending_stress" symbol:"sigma" kind:"stress" means:"bending stress at the root; not shown where the shoulder is thicker than wide"`
	ShearSafety  float64         `name:"shear_safety" symbol:"S_q" kind:"ratio" means:"shear yield over shear"`
	FaceSafety   float64         `name:"bearing_safety" symbol:"S_p" kind:"ratio" means:"yield of the weaker face over its pressure"`
	BendSafety   worked.Optional `name:"bending_safety" symbol:"S_b" kind:"ratio" means:"yield over bending stress"`
}

// Shoulder sizes the shoulder of a sleeve: how thick it may be, how thick it must
// be, and what the side thrust does to it.
//
//	h_m = (s - 2 c)/n, h = h_g or max(h_m, h_l)
//	r   = max(h - h_m, 0),  s_l = s - n h + n r
//	W_d = 2 W,  w = (D_a - D_b)/2
//	q   = W_d/(pi D_b h),  p = 4 W_d/[pi (D_a^2 - D_r^2)]
//	S_q = R/(sqrt(3) q),  S_p = R_f/p
//
// and where h is at most w, by the plate equation of FlangeRing,
//
//	M   = W_d/(2 pi r_l) D_a/2/C_8 (2 r_l C_9/D_b - L_9)
//	sigma = 6 M/h^2,  S_b = R/sigma
//
// W is the thrust [N]; d the bore of the finished sleeve, D_b the sleeve, D_a the
// shoulder, D_r the bore of the face with its chamfer, s the whole side play, c the
// running gap on each side, h_g the thickness where it is chosen [mm]; n the
// shoulders that share the play; R and R_f the yield strengths of sleeve and weaker
// face [MPa]; nu Poisson's ratio.
//
// Side play is one budget: two shoulders of 5 mm with half a millimetre to run on
// both sides need 11 mm. What is missing is cut into the ears, the same depth in
// each. h_l is 3 mm to 50 mm bore, 5 mm to 120 mm, 8 mm above. Thrust leans on one
// half of the ring: it counts twice.
//
// Validity: D_b <= D_r < D_a. Thin plate theory holds while the shoulder is no
// thicker than wide; beyond that shear and the fillet govern and no bending is
// shown. A shoulder takes thrust one way only.
//
// Error: plate theory 0.002 % against the plate equation solved by steps; half of
// the ring is a judgement.
//
// Source: Roark's Formulas for Stress and Strain, 7th edition, table 11.2, as
// FlangeRing (from memory, verified); least thickness and running gap: common
// practice, no source.
func Shoulder(in ShoulderInputs) (ShoulderOutputs, error) {
	if err := in.check(); err != nil {
		return ShoulderOutputs{}, err
	}
	out := ShoulderOutputs{LeastMM: leastShoulderMM(in.FinishMM), WidthMM: (in.FlangeODMM - in.SleeveODMM) / 2, DesignN: 2 * in.ThrustN}
	out.RoomMM = (in.PlayMM - 2*in.RunMM) / in.Shoulders
	out.ThicknessMM = max(out.RoomMM, out.LeastMM)
	if in.FlangeMM.Known {
		out.ThicknessMM = in.FlangeMM.Value
	}
	out.RecessMM = max(out.ThicknessMM-out.RoomMM, 0)
	out.PlayLeftMM = in.PlayMM - in.Shoulders*out.ThicknessMM + in.Shoulders*out.RecessMM
	ring, err := ear.FlangeRing(ear.FlangeRingInputs{
		ThrustN: out.DesignN, SleeveODMM: in.SleeveODMM, FlangeODMM: in.FlangeODMM, FlangeMM: out.ThicknessMM, CounterMM: in.CounterMM, Poisson: in.Poisson,
	})
	if err != nil {
		return ShoulderOutputs{}, err
	}
	out.ShearMPa, out.PressureMPa = ring.ShearMPa, ring.FaceMPa
	out.ShearSafety = in.YieldMPa / (math.Sqrt(3) * out.ShearMPa)
	out.FaceSafety = in.FaceMPa / out.PressureMPa
	if out.ThicknessMM <= out.WidthMM*(1+stepSlack) {
		out.LoadRadiusMM, out.C8, out.C9, out.L9 = worked.Some(ring.LoadRadiusMM), worked.Some(ring.C8), worked.Some(ring.C9), worked.Some(ring.L9)
		out.MomentN, out.BendingMPa = worked.Some(ring.MomentN), worked.Some(ring.BendingMPa)
		out.BendSafety = worked.Some(in.YieldMPa / ring.BendingMPa)
	}
	return out, nil
}

func (in ShoulderInputs) check() error {
	var c worked.Checks
	c.Positive("thrust", in.ThrustN)
	c.Positive("finish_bore", in.FinishMM)
	c.Positive("sleeve_od", in.SleeveODMM)
	c.Positive("flange_od", in.FlangeODMM)
	c.Positive("counterface_bore", in.CounterMM)
	c.Below("finish_bore", in.FinishMM, "sleeve_od", in.SleeveODMM)
	c.Below("sleeve_od", in.SleeveODMM, "flange_od", in.FlangeODMM)
	c.Below("counterface_bore", in.CounterMM, "flange_od", in.FlangeODMM)
	if in.CounterMM < in.SleeveODMM*(1-stepSlack) {
		c.Refuse("counterface_bore", "is %g, must not be below sleeve_od, which is %g: the sleeve passes through it", in.CounterMM, in.SleeveODMM)
	}
	c.NotNegative("side_play_total", in.PlayMM)
	checkWhole(&c, "shoulders", in.Shoulders, 1, 8)
	c.Between("running_clearance", in.RunMM, 0.05, 10)
	if in.FlangeMM.Known {
		c.Positive("flange_thickness", in.FlangeMM.Value)
	}
	c.Positive("sleeve_yield", in.YieldMPa)
	c.Positive("face_yield", in.FaceMPa)
	c.Between("poisson", in.Poisson, 0, 0.5)
	return c.Err()
}

// leastShoulderMM is the thinnest shoulder by the bore of the sleeve.
func leastShoulderMM(boreMM float64) float64 {
	switch bore := rounded(boreMM); {
	case bore <= 50:
		return 3
	case bore <= 120:
		return 5
	}
	return 8
}
