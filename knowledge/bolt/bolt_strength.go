package bolt

import (
	"boremend/knowledge/worked"
)

// BoltStrengthInputs name a bolt.
type BoltStrengthInputs struct {
	Size     string  `name:"size" means:"size of the thread: M16, M16x1.5, 3/4-10, 3/4 UNF"`
	Grade    string  `name:"grade" choices:"8.8,10.9,12.9,2,5,8" means:"class of a metric bolt (8.8, 10.9, 12.9) or grade of an inch bolt (2, 5, 8)"`
	Fraction float64 `name:"preload_fraction" symbol:"f" kind:"ratio" default:"0.75" means:"preload as a share of the proof load: 0.75 where the joint is undone again"`
}

// BoltStrengthOutputs are what tables say of it and what follows.
type BoltStrengthOutputs struct {
	DiameterMM    float64         `name:"diameter" symbol:"d" kind:"length" means:"diameter of the thread"`
	PitchMM       float64         `name:"pitch" symbol:"P" kind:"length" means:"pitch"`
	StressAreaMM2 float64         `name:"stress_area" symbol:"A_s" kind:"area" means:"stress area"`
	CoreMM        float64         `name:"core_diameter" symbol:"d_3" kind:"length" means:"root diameter of the thread"`
	ProofMPa      float64         `name:"proof_stress" symbol:"S_p" kind:"stress" means:"stress that it stands without a lasting stretch"`
	YieldMPa      float64         `name:"yield_stress" symbol:"R_p" kind:"stress" means:"yield strength"`
	TensileMPa    float64         `name:"tensile_stress" symbol:"R_m" kind:"stress" means:"tensile strength"`
	ShearShare    float64         `name:"shear_share" symbol:"alpha_v" kind:"ratio" means:"share of the tensile strength that it holds in shear"`
	ProofLoadN    float64         `name:"proof_load" symbol:"F_p" kind:"force" means:"proof load"`
	YieldLoadN    float64         `name:"yield_load" symbol:"F_y" kind:"force" means:"load at yield"`
	TensileLoadN  float64         `name:"tensile_load" symbol:"F_m" kind:"force" means:"load at which it breaks"`
	ShearLoadN    float64         `name:"shear_load" symbol:"F_v" kind:"force" means:"load across it at which it breaks, thread in the joint"`
	PreloadN      float64         `name:"preload" symbol:"F_i" kind:"force" means:"preload to tighten to"`
	HeadBearingMM worked.Optional `name:"head_bearing_diameter" symbol:"d_w" kind:"length" means:"least diameter on which a hexagon head bears, where listed"`
	HoleMM        worked.Optional `name:"clearance_hole" symbol:"d_h" kind:"length" means:"medium clearance hole, where listed"`
}

// BoltStrength looks a bolt up and computes the loads that it carries.
//
//	F_p = A_s S_p, F_y = A_s R_p, F_m = A_s R_m
//	F_v = alpha_v A_s R_m
//	F_i = f F_p
//	d_3 = d - 1.2269 P
//
// d is the thread, P its pitch [mm], A_s the stress area [mm2]; S_p, R_p and R_m
// proof, yield and tensile strength [MPa]; alpha_v the share held in shear; f the
// preload as a share of the proof load, 0.75 where the joint is undone again and
// 0.90 where it stays.
//
// Class 8.8 is 580/640/800 MPa to M16 and 600/660/830 above; grade 5 falls from
// 85/120 to 74/105 ksi above 1 in, grade 2 from 55/74 to 33/60 ksi above 3/4 in.
//
// Validity: the sizes and grades listed, up to M36 and 1-1/2 in.
//
// Error: none where read. The loads printed in the standards are rounded and
// differ by up to 0.4 % in metric, 0.6 % in inch tables.
//
// Source: ISO 898-1 and SAE J429 as the tables name them; preload share 0.75
// Shigley's Mechanical Engineering Design, 9th ed., eq. 8-31 (read); the thread's
// share in shear EN 1993-1-8 table 3.4 (from memory).
func BoltStrength(in BoltStrengthInputs) (BoltStrengthOutputs, error) {
	var c worked.Checks
	c.Between("preload_fraction", in.Fraction, 0.1, 0.9)
	t, s := lookUp(&c, in.Size, in.Grade)
	if err := c.Err(); err != nil {
		return BoltStrengthOutputs{}, err
	}
	out := BoltStrengthOutputs{
		DiameterMM: t.DiameterMM, PitchMM: t.PitchMM, StressAreaMM2: t.StressAreaMM2, CoreMM: t.CoreMM(),
		ProofMPa: s.ProofMPa, YieldMPa: s.YieldMPa, TensileMPa: s.TensileMPa, ShearShare: s.ShearShare,
		HeadBearingMM: t.HeadBearingMM, HoleMM: t.HoleMM,
	}
	out.ProofLoadN = t.StressAreaMM2 * s.ProofMPa
	out.YieldLoadN = t.StressAreaMM2 * s.YieldMPa
	out.TensileLoadN = t.StressAreaMM2 * s.TensileMPa
	out.ShearLoadN = s.ShearShare * out.TensileLoadN
	out.PreloadN = in.Fraction * out.ProofLoadN
	return out, nil
}

// The tables by which sheets look a bolt up.
const (
	threadTable   = "table of threads, by size"
	gradeTable    = "table of grades, by grade and size"
	threadSource  = "ISO 898-1 stress areas (read; fine threads above M16 from memory); UNC and UNF: Shigley's Mechanical Engineering Design, 9th ed., table 8-2 (read; UNF 1-1/8 and 1-3/8 from memory)"
	gradeSource   = "ISO 898-1 (2013) table 3 and SAE J429 (read; yield of class 8.8 to M16 from memory)"
	headSource    = "ISO 4014 and ISO 273 (from memory)"
	shearSource   = "EN 1993-1-8 table 3.4 (from memory); 12.9 as 10.9, inch grades by their strength: judgement"
	preloadSource = "Shigley's Mechanical Engineering Design, 9th ed., eq. 8-31 (read)"
	coreSource    = "ISO 724: root of the basic thread"
)

// BoltStrengthCalculation is the catalogue entry of BoltStrength.
func BoltStrengthCalculation() worked.Calculation {
	listed := func(_ BoltStrengthInputs, out BoltStrengthOutputs) bool { return out.HeadBearingMM.Known }
	return worked.Define("bolt_strength", BoltStrength, worked.Page[BoltStrengthInputs, BoltStrengthOutputs]{
		Title:    "What a bolt carries",
		Sources:  []string{threadSource, gradeSource, shearSource, preloadSource},
		Validity: "M6 to M36 coarse and fine, 1/4 to 1-1/2 in UNC and UNF; classes 8.8, 10.9, 12.9, grades 2, 5, 8",
		Formulas: []worked.Formula[BoltStrengthInputs, BoltStrengthOutputs]{
			{Symbol: "d", Table: threadTable, Source: threadSource},
			{Symbol: "P", Table: threadTable, Source: threadSource},
			{Symbol: "A_s", Table: threadTable, Source: threadSource},
			{Symbol: "d_3", Is: "d - 1.226869 * P", Source: coreSource},
			{Symbol: "S_p", Table: gradeTable, Source: gradeSource},
			{Symbol: "R_p", Table: gradeTable, Source: gradeSource},
			{Symbol: "R_m", Table: gradeTable, Source: gradeSource},
			{Symbol: "alpha_v", Table: gradeTable, Source: shearSource},
			{Symbol: "F_p", Is: "A_s * S_p", Source: "ISO 898-1: stress area times stress"},
			{Symbol: "F_y", Is: "A_s * R_p", Source: "ISO 898-1: stress area times stress"},
			{Symbol: "F_m", Is: "A_s * R_m", Source: "ISO 898-1: stress area times stress"},
			{Symbol: "F_v", Is: "alpha_v * F_m", Source: shearSource},
			{Symbol: "F_i", Is: "f * F_p", Source: preloadSource},
			{Symbol: "d_w", Table: "table of heads, by diameter", Source: headSource, When: listed},
			{Symbol: "d_h", Table: "table of heads, by diameter", Source: headSource, When: listed},
		},
		Warnings: func(in BoltStrengthInputs, out BoltStrengthOutputs) []string {
			return append(fromMemory(in.Size), notCovered)
		},
		Example: map[string]string{"size": "M16", "grade": "8.8"},
	})
}

// fromMemory says so when the stress area of a size was not read.
func fromMemory(size string) []string {
	t, err := FindThread(size)
	if err != nil || t.From.HowKnown != "from memory" {
		return nil
	}
	return []string{"The stress area of " + t.Size + " is from memory; it agrees with the formula of the thread within 0.4 %."}
}
