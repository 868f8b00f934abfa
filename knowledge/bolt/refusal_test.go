package bolt

import (
	"strings"
	"testing"

	"boremend/knowledge/worked"
)

// refusalCase is an input bent out of range, and what the refusal must say; empty
// means that it is taken.
type refusalCase[In any] struct {
	name string
	bend func(*In)
	says string
}

func checkRefusals[In, Out any](t *testing.T, usual In, f func(In) (Out, error), tests []refusalCase[In]) {
	t.Helper()
	if _, err := f(usual); err != nil {
		t.Fatal(err)
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			in := usual
			test.bend(&in)
			_, err := f(in)
			if test.says == "" && err != nil || test.says != "" && (err == nil || !strings.Contains(err.Error(), test.says)) {
				t.Errorf("got %v, want %q", err, test.says)
			}
		})
	}
}

func TestReinforcementRefuses(t *testing.T) {
	type in = BoltedReinforcementInputs
	checkRefusals(t, usualReinforcement(), BoltedReinforcement, []refusalCase[in]{
		{"plate bored apart", func(i *in) { i.BoreFinish = "apart" }, "carries nothing"},
		{"three plates", func(i *in) { i.Plates = 3 }, "plates"},
		{"half a plate", func(i *in) { i.Plates = 1.5 }, "plates"},
		{"one row", func(i *in) { i.Rows = 1 }, "rows"},
		{"one column", func(i *in) { i.Columns = 1 }, "columns"},
		{"hole at an edge", func(i *in) { i.EdgeMM = 23.9 }, "edge_distance"},
		{"hole just clear of the edge", func(i *in) { i.EdgeMM = 24 }, ""},
		{"bolts too near", func(i *in) { i.RowPitchMM = 43.9 }, "row_pitch"},
		{"bolts just clear", func(i *in) { i.RowPitchMM = 44 }, ""},
		{"bolts in the bore", func(i *in) { i.Eccentricity = 98 }, "eccentricity"},
		{"bolts clear of the bore", func(i *in) { i.Eccentricity = 100 }, ""},
		{"thread depth of a through bolt", func(i *in) { i.DepthMM = worked.Some(30) }, "thread_depth"},
		{"thread depth of a tapped hole", func(i *in) { i.Fastening, i.DepthMM = "tapped", worked.Some(30) }, ""},
		{"friction in percent", func(i *in) { i.SlipMu = 20 }, "slip_coefficient"},
		{"modulus in GPa", func(i *in) { i.EarEMPa = 205 }, "ear_e"},
		{"unlisted size", func(i *in) { i.Size = "M21" }, "nearest is M20"},
		{"inch grade on a metric bolt", func(i *in) { i.Grade = "8" }, "8.8, 10.9, 12.9"},
		{"nut factors the wrong way round", func(i *in) { i.FactorMost = 0.1 }, "nut_factor_most"},
		{"unknown joint", func(i *in) { i.Joint = "welded" }, "joint"},
		{"everything at once names the first", func(i *in) { *i = in{} }, "pin_load"},
		{"everything at once names the last", func(i *in) { *i = in{} }, "size"},
	})
}

func TestCaptureRefuses(t *testing.T) {
	type in = BoltCaptureInputs
	checkRefusals(t, usualCapture("head_pocket"), BoltCapture, []refusalCase[in]{
		{"no overlap", func(i *in) { i.OverlapMM = worked.Optional{} }, "head_overlap"},
		{"overlap to the pin", func(i *in) { i.OverlapMM = worked.Some(8) }, "wall of the sleeve"},
		{"overlap wider than a head", func(i *in) { i.SeatMM, i.OverlapMM = 120, worked.Some(12.1) }, "no wider"},
		{"overlap of another way", func(i *in) { i.Way = "radial" }, "head_overlap"},
		{"pin as large as the sleeve", func(i *in) { i.PinMM = 96 }, "pin_diameter"},
		{"no screws", func(i *in) { i.Screws = 0 }, "screws"},
		{"half a screw", func(i *in) { i.Screws = 2.5 }, "screws"},
		{"unknown way", func(i *in) { i.Way = "glue" }, "way"},
		{"unknown metal", func(i *in) { i.EarMetal = "bronze" }, "ear_metal"},
		{"no word on reversal", func(i *in) { i.Reverses = "" }, "load_reverses"},
		{"no thrust", func(i *in) { i.ThrustN = worked.Some(0) }, ""},
		{"thrust from the other side", func(i *in) { i.ThrustN = worked.Some(-1) }, "thrust"},
	})
}

func TestShoulderRefuses(t *testing.T) {
	type in = ShoulderInputs
	checkRefusals(t, usualShoulder(), Shoulder, []refusalCase[in]{
		{"face bore below the sleeve", func(i *in) { i.CounterMM = 95 }, "counterface_bore"},
		{"face bore beyond the shoulder", func(i *in) { i.CounterMM = 120 }, "counterface_bore"},
		{"no shoulder", func(i *in) { i.FlangeODMM = 96 }, "sleeve_od"},
		{"bore beyond the sleeve", func(i *in) { i.FinishMM = 96 }, "finish_bore"},
		{"no running gap", func(i *in) { i.RunMM = 0 }, "running_clearance"},
		{"no play is a play", func(i *in) { i.PlayMM = 0 }, ""},
		{"half a shoulder", func(i *in) { i.Shoulders = 0.5 }, "shoulders"},
		{"no thickness", func(i *in) { i.FlangeMM = worked.Some(0) }, "flange_thickness"},
	})
}

func TestJointRefuses(t *testing.T) {
	type in = JointSeparationInputs
	usual := in{StiffnessRatio: worked.Some(0.3), ExternalN: 1e4, PreloadN: worked.Some(2e4), Fraction: 0.75}
	checkRefusals(t, usual, JointSeparation, []refusalCase[in]{
		{"ratio and stiffness", func(i *in) { i.BoltStiffness = worked.Some(1e5) }, "one or the other"},
		{"half of the stiffness", func(i *in) { i.StiffnessRatio, i.BoltStiffness = worked.Optional{}, worked.Some(1e5) }, "both kb and km"},
		{"bolt a thousand times as stiff", func(i *in) {
			i.StiffnessRatio, i.BoltStiffness, i.MemberStiffness = worked.Optional{}, worked.Some(1e6), worked.Some(1e3)
		}, "kb"},
		{"ratio of one", func(i *in) { i.StiffnessRatio = worked.Some(1) }, "stiffness_ratio"},
		{"no preload", func(i *in) { i.PreloadN = worked.Optional{} }, "preload"},
		{"preload by half", func(i *in) { i.PreloadN, i.ProofMPa = worked.Optional{}, worked.Some(600) }, "stress_area and proof_stress"},
		{"preload by the proof load", func(i *in) {
			i.PreloadN, i.ProofMPa, i.StressAreaMM2 = worked.Optional{}, worked.Some(600), worked.Some(157)
		}, ""},
		{"preload past the proof load", func(i *in) { i.Fraction = 1 }, "preload_fraction"},
	})
}

func TestThreadRefuses(t *testing.T) {
	type in = ThreadEngagementInputs
	usual := in{PitchMM: 1.5, StressAreaMM2: 58, MinorMaxMM: 8.676, PitchMinMM: 8.862}
	checkRefusals(t, usual, ThreadEngagement, []refusalCase[in]{
		{"threads that do not meet", func(i *in) { i.PitchMinMM = 8.6 }, "pitch_dia_external_min"},
		{"threads of another size", func(i *in) { i.PitchMinMM = 10 }, "pitch_dia_external_min"},
		{"half of the weaker metal", func(i *in) { i.TappedMPa = worked.Some(300) }, "all four"},
		{"weaker metal of another size", func(i *in) {
			i.TappedMPa, i.BoltMPa, i.MajorMinMM, i.PitchMaxMM = worked.Some(300), worked.Some(800), worked.Some(12), worked.Some(9.2)
		}, "major_dia_external_min"},
	})
	type strip = ThreadStripInputs
	usualStrip := strip{PitchMM: 1.5, BoltLoadN: 1e4, ShearMPa: 150, MajorMinMM: 9.732, PitchMaxMM: 9.206}
	checkRefusals(t, usualStrip, ThreadStrip, []refusalCase[strip]{
		{"threads that do not meet", func(i *strip) { i.PitchMaxMM = 9.8 }, "major_dia_external_min"},
		{"pitch in threads of an inch", func(i *strip) { i.PitchMM = 0 }, "pitch"},
		{"no thread", func(i *strip) { i.DepthMM = worked.Some(0) }, "engagement"},
	})
}

func TestTorqueRefuses(t *testing.T) {
	type in = BoltTorqueInputs
	usual := in{NutFactor: 0.2, DiameterMM: 16, PreloadN: worked.Some(5e4), Fraction: 0.75, FactorLeast: 0.12, FactorMost: 0.2}
	checkRefusals(t, usual, BoltTorque, []refusalCase[in]{
		{"factor in percent", func(i *in) { i.NutFactor = 20 }, "nut_factor"},
		{"no preload", func(i *in) { i.PreloadN = worked.Optional{} }, "preload"},
		{"range the wrong way round", func(i *in) { i.FactorLeast = 0.3 }, "nut_factor_most"},
		{"area that is none", func(i *in) { i.StressAreaMM2 = worked.Some(-1) }, "stress_area"},
	})
	type vdi = BoltVDIInputs
	usualVDI := vdi{DiameterMM: 16, PitchMM: 2, Friction: 0.12, YieldMPa: 640, HeadBearingMM: 22.49, HoleMM: 17.5, YieldShare: 0.9}
	checkRefusals(t, usualVDI, BoltVDI, []refusalCase[vdi]{
		{"pitch past a quarter", func(i *vdi) { i.PitchMM = 4.01 }, "pitch"},
		{"hole below the bolt", func(i *vdi) { i.HoleMM = 16 }, "diameter"},
		{"head below the hole", func(i *vdi) { i.HeadBearingMM = 17 }, "clearance_hole"},
		{"past yield", func(i *vdi) { i.YieldShare = 1.1 }, "yield_share"},
	})
	type code = BoltEC3Inputs
	checkRefusals(t, code{StressAreaMM2: 245, TensileMPa: 800, ShearShare: 0.6, GammaM2: 1.25}, BoltEC3, []refusalCase[code]{
		{"half of the loads", func(i *code) { i.ShearN = worked.Some(1e4) }, "ft_ed"},
		{"both loads", func(i *code) { i.ShearN, i.TensionN = worked.Some(1e4), worked.Some(0) }, ""},
	})
}

func TestPryingRefuses(t *testing.T) {
	type in = PryingInputs
	usual := in{TensionN: 6e4, LengthMM: 80, ThicknessMM: 20, YieldMPa: 250, ToWebMM: 35, ToEdgeMM: 40, DiameterMM: 20, HoleMM: 22, CapacityN: 9e4}
	checkRefusals(t, usual, Prying, []refusalCase[in]{
		{"bolt in the web", func(i *in) { i.ToWebMM = 10 }, "twice bolt_to_web"},
		{"hole as wide as the plate", func(i *in) { i.HoleMM = 80 }, "tributary_length"},
		{"hole below the bolt", func(i *in) { i.HoleMM = 19 }, "hole_diameter"},
		{"fitted hole", func(i *in) { i.HoleMM = 20 }, ""},
	})
}
