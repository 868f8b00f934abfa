package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// ThreadEngagementInputs are the limits of a bolt thread and of the thread it sits
// in.
type ThreadEngagementInputs struct {
	PitchMM       float64         `name:"pitch" symbol:"P" kind:"length" means:"pitch"`
	StressAreaMM2 float64         `name:"stress_area" symbol:"A_s" kind:"area" means:"stress area of the bolt"`
	MinorMaxMM    float64         `name:"minor_dia_internal_max" symbol:"K_n" kind:"length" means:"largest minor diameter of the tapped hole"`
	PitchMinMM    float64         `name:"pitch_dia_external_min" symbol:"E_s" kind:"length" means:"smallest pitch diameter of the bolt"`
	MajorMinMM    worked.Optional `name:"major_dia_external_min" symbol:"D_s" kind:"length" means:"smallest major diameter of the bolt, where the tapped metal is the weaker"`
	PitchMaxMM    worked.Optional `name:"pitch_dia_internal_max" symbol:"E_n" kind:"length" means:"largest pitch diameter of the tapped hole, where the tapped metal is the weaker"`
	BoltMPa       worked.Optional `name:"bolt_tensile" symbol:"R_b" kind:"stress" means:"tensile strength of the bolt, where the tapped metal is the weaker"`
	TappedMPa     worked.Optional `name:"tapped_tensile" symbol:"R_t" kind:"stress" means:"tensile strength of the tapped metal, where it is the weaker"`
}

// ThreadEngagementOutputs are the lengths of thread.
type ThreadEngagementOutputs struct {
	EngagementMM  float64         `name:"engagement_bolt_breaks_first" symbol:"L_e" kind:"length" means:"length of thread on which the bolt breaks before its own thread strips"`
	BoltShearMM2  float64         `name:"bolt_shear_area" symbol:"A_b" kind:"area" means:"area on which the bolt's thread shears on that length"`
	TappedMM2     worked.Optional `name:"tapped_shear_area" symbol:"A_n" kind:"area" means:"area on which the tapped thread shears on that length"`
	StrengthRatio worked.Optional `name:"strength_ratio" symbol:"J" kind:"ratio" means:"how much the tapped thread is weaker; below 1 it is not"`
	NeededMM      worked.Optional `name:"engagement_needed" symbol:"L_n" kind:"length" means:"length of thread on which neither strips"`
}

// ThreadEngagement computes the length of thread on which the bolt breaks before a
// thread strips, so that trouble shows as a broken bolt and not as a ruined ear.
//
//	L_e = 2 A_s/(pi K_n [0.5 + 0.57735 (E_s - K_n)/P])
//	A_b = 2 A_s
//	A_n = pi D_s L_e [0.5 + 0.57735 (D_s - E_n)/P]
//	J   = A_b R_b/(A_n R_t),  L_n = L_e max(1, J)
//
// P is the pitch, K_n the largest minor diameter and E_n the largest pitch diameter
// of the hole, E_s the smallest pitch diameter and D_s the smallest major diameter
// of the bolt [mm]; A_s the stress area [mm2]; R_b and R_t the tensile strengths of
// bolt and tapped metal [MPa]. Enter the least size of the bolt and the largest of
// the hole: with the largest of the bolt in place of D_s an example in print comes
// out 16 % short.
//
// Validity: threads of 60 degrees whose limits overlap by no more than a thread
// can, 0.7 P. Without D_s, E_n, R_b and R_t both metals count as equally strong.
//
// Error: 1.5 % against printed lengths. Re-cut, worn or oversize holes hold less.
//
// Source: E. M. Alexander's method in the form of FED-STD-H28/2B (from memory),
// checked against a printed table of UNC and UNF lengths (read).
func ThreadEngagement(in ThreadEngagementInputs) (ThreadEngagementOutputs, error) {
	var c worked.Checks
	c.Positive("pitch", in.PitchMM)
	c.Positive("stress_area", in.StressAreaMM2)
	c.Positive("minor_dia_internal_max", in.MinorMaxMM)
	c.Positive("pitch_dia_external_min", in.PitchMinMM)
	checkOverlap(&c, "pitch_dia_external_min", in.PitchMinMM, "minor_dia_internal_max", in.MinorMaxMM, in.PitchMM)
	weaker := in.checkWeaker(&c)
	if err := c.Err(); err != nil {
		return ThreadEngagementOutputs{}, err
	}
	out := ThreadEngagementOutputs{BoltShearMM2: 2 * in.StressAreaMM2}
	out.EngagementMM = 2 * in.StressAreaMM2 / (math.Pi * in.MinorMaxMM * threadShare(in.PitchMinMM-in.MinorMaxMM, in.PitchMM))
	if weaker {
		area := math.Pi * in.MajorMinMM.Value * out.EngagementMM * threadShare(in.MajorMinMM.Value-in.PitchMaxMM.Value, in.PitchMM)
		ratio := out.BoltShearMM2 * in.BoltMPa.Value / (area * in.TappedMPa.Value)
		out.TappedMM2, out.StrengthRatio = worked.Some(area), worked.Some(ratio)
		out.NeededMM = worked.Some(out.EngagementMM * max(1, ratio))
	}
	return out, nil
}

// threadShare is the part of a cylinder through the overlap of two threads that
// is metal: half at the pitch line, more toward the root.
func threadShare(overlap, pitch float64) float64 { return 0.5 + 0.57735*overlap/pitch }

// checkOverlap asks that two diameters lie as far apart as those of a thread can.
func checkOverlap(c *worked.Checks, name string, v float64, other string, o, pitch float64) {
	if !(v >= o && v-o <= 0.7*pitch*(1+stepSlack)) {
		c.Refuse(name, "is %g, must lie between %s, which is %g, and 0.7 of the pitch above it", v, other, o)
	}
}

// checkWeaker reports whether the weaker tapped metal is described, wholly.
func (in ThreadEngagementInputs) checkWeaker(c *worked.Checks) bool {
	known := 0
	for _, o := range [...]struct {
		name  string
		value worked.Optional
	}{
		{"major_dia_external_min", in.MajorMinMM}, {"pitch_dia_internal_max", in.PitchMaxMM}, {"bolt_tensile", in.BoltMPa}, {"tapped_tensile", in.TappedMPa},
	} {
		if o.value.Known {
			known++
			c.Positive(o.name, o.value.Value)
		}
	}
	switch {
	case known == 0:
		return false
	case known < 4:
		c.Refuse("tapped_tensile", "goes with major_dia_external_min, pitch_dia_internal_max and bolt_tensile: give all four or none")
		return false
	}
	checkOverlap(c, "major_dia_external_min", in.MajorMinMM.Value, "pitch_dia_internal_max", in.PitchMaxMM.Value, in.PitchMM)
	return true
}

const engagementSource = "Alexander's method as in FED-STD-H28/2B (from memory)"

// ThreadEngagementCalculation is the catalogue entry of ThreadEngagement.
func ThreadEngagementCalculation() worked.Calculation {
	type in = ThreadEngagementInputs
	type out = ThreadEngagementOutputs
	weaker := func(_ in, o out) bool { return o.NeededMM.Known }
	return worked.Define("thread_engagement", ThreadEngagement, worked.Page[in, out]{
		Title:    "Thread on which the bolt breaks first",
		Sources:  []string{engagementSource, "printed table of minimum lengths, UNC and UNF (sizes.com/tools/bolts_engagement.htm; read)"},
		Validity: "threads of 60 degrees; limits of size that fit each other",
		Formulas: []worked.Formula[in, out]{
			{Symbol: "L_e", Is: "2 * A_s / (pi * K_n * (0.5 + 0.57735 * (E_s - K_n) / P))", Source: engagementSource},
			{Symbol: "A_b", Is: "2 * A_s", Source: engagementSource},
			{Symbol: "A_n", Is: "pi * D_s * L_e * (0.5 + 0.57735 * (D_s - E_n) / P)", Source: engagementSource, When: weaker},
			{Symbol: "J", Is: "A_b * R_b / (A_n * R_t)", Source: engagementSource, When: weaker},
			{Symbol: "L_n", Is: "L_e * max(1, J)", Source: engagementSource, When: weaker},
		},
		Warnings: func(_ in, o out) []string {
			if !o.NeededMM.Known {
				return []string{"Bolt and tapped metal count as equally strong. In a weaker metal the tapped thread strips first: give its strength and limits.", notCovered}
			}
			return []string{notCovered}
		},
		Example: map[string]string{
			"pitch": "1.5 mm", "stress_area": "58 mm2", "minor_dia_internal_max": "8.676 mm", "pitch_dia_external_min": "8.862 mm",
			"major_dia_external_min": "9.732 mm", "pitch_dia_internal_max": "9.206 mm", "bolt_tensile": "800 MPa", "tapped_tensile": "400 MPa",
		},
	})
}
