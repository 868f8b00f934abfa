package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// ThreadStripInputs are a load on a tapped thread and the limits of that thread.
type ThreadStripInputs struct {
	PitchMM    float64         `name:"pitch" symbol:"P" kind:"length" means:"pitch"`
	BoltLoadN  float64         `name:"bolt_load" symbol:"F" kind:"force" means:"pull of the bolt that the thread must hold"`
	ShearMPa   float64         `name:"shear_strength" symbol:"tau" kind:"stress" means:"shear strength of the tapped metal"`
	MajorMinMM float64         `name:"major_dia_external_min" symbol:"D_s" kind:"length" means:"smallest major diameter of the bolt"`
	PitchMaxMM float64         `name:"pitch_dia_internal_max" symbol:"E_n" kind:"length" means:"largest pitch diameter of the tapped hole"`
	DepthMM    worked.Optional `name:"engagement" symbol:"L" kind:"length" means:"length of thread that there is, to see what it holds"`
}

// ThreadStripOutputs are the length needed and what a length holds.
type ThreadStripOutputs struct {
	EngagementMM float64         `name:"engagement_nut_thread" symbol:"L_n" kind:"length" means:"length of tapped thread that strips just at this load"`
	StripN       worked.Optional `name:"strip_load" symbol:"F_s" kind:"force" means:"load at which the thread there is strips"`
	Safety       worked.Optional `name:"strip_safety" symbol:"S" kind:"ratio" means:"that load over the pull of the bolt"`
}

// ThreadStrip computes on what length a tapped thread strips under the pull of a
// bolt: iron, bronze and soft steel strip long before a strong bolt breaks.
//
//	L_n = F/(tau pi D_s [0.5 + 0.57735 (D_s - E_n)/P])
//	F_s = F L/L_n, S = F_s/F
//
// F is the pull [N], tau the shear strength of the tapped metal [MPa], D_s the
// smallest major diameter of the bolt, E_n the largest pitch diameter of the hole,
// P the pitch and L the length of thread that there is [mm].
//
// L_n has no safety in it. The thread that is there starts and ends with a turn
// that carries little: leave two pitches for it.
//
// Validity: threads of 60 degrees whose limits overlap by no more than 0.7 P.
//
// Error: shear strength is seldom known better than a tenth. D_s is the least
// diameter: an example in print uses the largest and comes out 16 % short.
//
// Source: Alexander's method as in FED-STD-H28/2B (from memory); Handbook of Bolts
// and Bolted Joints, thread-strip example (read).
func ThreadStrip(in ThreadStripInputs) (ThreadStripOutputs, error) {
	var c worked.Checks
	c.Positive("pitch", in.PitchMM)
	c.Positive("bolt_load", in.BoltLoadN)
	c.Positive("shear_strength", in.ShearMPa)
	c.Positive("major_dia_external_min", in.MajorMinMM)
	c.Positive("pitch_dia_internal_max", in.PitchMaxMM)
	checkOverlap(&c, "major_dia_external_min", in.MajorMinMM, "pitch_dia_internal_max", in.PitchMaxMM, in.PitchMM)
	if in.DepthMM.Known {
		c.Positive("engagement", in.DepthMM.Value)
	}
	if err := c.Err(); err != nil {
		return ThreadStripOutputs{}, err
	}
	var out ThreadStripOutputs
	out.EngagementMM = in.BoltLoadN / (in.ShearMPa * math.Pi * in.MajorMinMM * threadShare(in.MajorMinMM-in.PitchMaxMM, in.PitchMM))
	if in.DepthMM.Known {
		out.StripN = worked.Some(in.BoltLoadN * in.DepthMM.Value / out.EngagementMM)
		out.Safety = worked.Some(in.DepthMM.Value / out.EngagementMM)
	}
	return out, nil
}

// ThreadStripCalculation is the catalogue entry of ThreadStrip.
func ThreadStripCalculation() worked.Calculation {
	type in = ThreadStripInputs
	type out = ThreadStripOutputs
	known := func(i in, _ out) bool { return i.DepthMM.Known }
	return worked.Define("thread_strip", ThreadStrip, worked.Page[in, out]{
		Title:    "Stripping of a tapped thread",
		Sources:  []string{engagementSource, "Handbook of Bolts and Bolted Joints, thread-strip example (read)"},
		Validity: "threads of 60 degrees; limits of size that fit each other",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "L_n", Is: "F / (tau * pi * D_s * (0.5 + 0.57735 * (D_s - E_n) / P))", Source: engagementSource},
			{Symbol: "F_s", Is: "F * L / L_n", Source: "as long as it needs to be", When: known},
			{Symbol: "S", Is: "F_s / F", Source: "load over load", When: known},
		},
		Warnings: func(in, out) []string {
			return []string{"The length needed has no safety in it, and two pitches for the start and the end of the thread come on top.", notCovered}
		},
		Example: map[string]string{
			"pitch": "1.5 mm", "bolt_load": "25 kN", "shear_strength": "150 MPa", "major_dia_external_min": "9.732 mm", "pitch_dia_internal_max": "9.206 mm", "engagement": "20 mm",
		},
	})
}
