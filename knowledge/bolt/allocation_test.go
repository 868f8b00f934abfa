package bolt

import (
	"testing"

	"boremend/knowledge/worked"
)

// The advice weighs thousands of variants: a pure function must not leave garbage
// behind while its inputs are good.
func TestNoAllocations(t *testing.T) {
	capture, pocket, plate, shoulder := usualCapture("joint_line"), usualCapture("head_pocket"), usualReinforcement(), usualShoulder()
	pattern := BoltPatternShearInputs{XMM: worked.List{0, 50, 50, 0}, YMM: worked.List{0, 0, 50, 50}, ForceYN: 1e4, LoadXMM: 200}
	group := BoltGroupShearInputs{Columns: 3, Rows: 2, ColumnPitchMM: 80, RowPitchMM: 60, ForceYN: 1e4, LoadXMM: 200}
	joint := JointSeparationInputs{StiffnessRatio: worked.Some(0.3), ExternalN: 1e4, StressAreaMM2: worked.Some(157), ProofMPa: worked.Some(600), Fraction: 0.75, AllowableMPa: worked.Some(300)}
	thread := ThreadEngagementInputs{
		PitchMM: 1.5, StressAreaMM2: 58, MinorMaxMM: 8.676, PitchMinMM: 8.862,
		MajorMinMM: worked.Some(9.732), PitchMaxMM: worked.Some(9.206), BoltMPa: worked.Some(800), TappedMPa: worked.Some(400),
	}
	tests := map[string]func() error{
		"BoltStrength": func() error {
			_, err := BoltStrength(BoltStrengthInputs{Size: "1-1/2 UNF", Grade: "8", Fraction: 0.75})
			return err
		},
		"BoltLoads": func() error {
			_, err := BoltLoads(BoltLoadsInputs{StressAreaMM2: 58, ProofMPa: 580, TensileMPa: worked.Some(800)})
			return err
		},
		"NutFactor": func() error { _, err := NutFactor(NutFactorInputs{Condition: "rusty_gritty"}); return err },
		"BoltTorque": func() error {
			_, err := BoltTorque(BoltTorqueInputs{NutFactor: 0.2, DiameterMM: 16, PreloadN: worked.Some(5e4), Fraction: 0.75, FactorLeast: 0.12, FactorMost: 0.2})
			return err
		},
		"BoltTightening": func() error {
			_, err := BoltTightening(BoltTighteningInputs{Size: "M36x3", Grade: "12.9", Fraction: 0.75, FactorLeast: 0.12, FactorMost: 0.2})
			return err
		},
		"PreloadFromTorque": func() error {
			_, err := PreloadFromTorque(PreloadFromTorqueInputs{TorqueNM: 200, DiameterMM: 16, FactorLeast: 0.12, FactorMost: 0.2})
			return err
		},
		"BoltTorqueFriction": func() error {
			_, err := BoltTorqueFriction(BoltTorqueFrictionInputs{DiameterMM: 16, PitchMM: 2, PreloadN: 5e4, ThreadFriction: 0.15, HeadFriction: 0.15})
			return err
		},
		"BoltVDI": func() error {
			_, err := BoltVDI(BoltVDIInputs{DiameterMM: 16, PitchMM: 2, Friction: 0.12, YieldMPa: 640, HeadBearingMM: 22.49, HoleMM: 17.5, YieldShare: 0.9})
			return err
		},
		"ThreadEngagement": func() error { _, err := ThreadEngagement(thread); return err },
		"ThreadStrip": func() error {
			_, err := ThreadStrip(ThreadStripInputs{PitchMM: 1.5, BoltLoadN: 1e4, ShearMPa: 150, MajorMinMM: 9.732, PitchMaxMM: 9.206, DepthMM: worked.Some(20)})
			return err
		},
		"TappedHole": func() error {
			_, err := TappedHole(TappedHoleInputs{Size: "M16", Grade: "12.9", Metal: "grey_iron", DepthMM: worked.Some(40)})
			return err
		},
		"BoltGroupShear":   func() error { _, err := BoltGroupShear(group); return err },
		"BoltPatternShear": func() error { _, err := BoltPatternShear(pattern); return err },
		"BoltCircleShear": func() error {
			_, err := BoltCircleShear(BoltCircleShearInputs{Bolts: 8, CircleMM: 200, ForceN: 4e4, Eccentricity: 150})
			return err
		},
		"BoltGroupTension": func() error {
			_, err := BoltGroupTension(BoltGroupTensionInputs{Columns: 2, Rows: 3, RowPitchMM: 80, EdgeMM: 40, MomentNM: 6000})
			return err
		},
		"SlipCoefficient": func() error { _, err := SlipCoefficient(SlipCoefficientInputs{Surface: "oily_or_unknown"}); return err },
		"SlipResistance": func() error {
			_, err := SlipResistance(SlipResistanceInputs{SlipCoefficient: 0.2, Du: 1, FillFactor: 1, PretensionN: 4e4, Planes: 1, Bolts: 6, LoadN: worked.Some(3e4)})
			return err
		},
		"JointSeparation": func() error { _, err := JointSeparation(joint); return err },
		"Prying": func() error {
			_, err := Prying(PryingInputs{TensionN: 6e4, LengthMM: 80, ThicknessMM: 20, YieldMPa: 250, ToWebMM: 35, ToEdgeMM: 40, DiameterMM: 20, HoleMM: 22, CapacityN: 9e4})
			return err
		},
		"BoltEC3": func() error {
			_, err := BoltEC3(BoltEC3Inputs{StressAreaMM2: 245, TensileMPa: 800, ShearShare: 0.6, GammaM2: 1.25, ShearN: worked.Some(4e4), TensionN: worked.Some(6e4)})
			return err
		},
		"SleeveRetention": func() error {
			_, err := SleeveRetention(SleeveRetentionInputs{LoadN: 250e3, PinMM: 80, SeatMM: 96, LengthMM: 100, PinFriction: 0.2, FitFriction: 0.07, SafetyWanted: 1.5, PressureMPa: worked.Some(30)})
			return err
		},
		"Shoulder":            func() error { _, err := Shoulder(shoulder); return err },
		"BoltCapture":         func() error { _, err := BoltCapture(capture); return err },
		"BoltCapture, head":   func() error { _, err := BoltCapture(pocket); return err },
		"BoltedReinforcement": func() error { _, err := BoltedReinforcement(plate); return err },
	}
	if least := len(Calculations()); len(tests) < least {
		t.Errorf("%d functions are measured, there are %d calculations", len(tests), least)
	}
	for name, f := range tests {
		t.Run(name, func(t *testing.T) {
			if err := f(); err != nil {
				t.Fatal(err)
			}
			if n := testing.AllocsPerRun(100, func() { _ = f() }); n != 0 {
				t.Errorf("%g allocations", n)
			}
		})
	}
}
