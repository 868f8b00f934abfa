package bolt

import (
	"math"
	"testing"

	"boremend/knowledge/worked"

	"pgregory.net/rapid"
)

// A joint in balance: what pulls at the bolt is the clamping that is left and the
// load, closed or open; and a closed one gives the published split.
func TestJointIsInBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawJoint(t)
		out, err := JointSeparation(in)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "pull on the bolt", out.BoltLoadN, out.ClampN+in.ExternalN)
		if open := out.ClampN == 0; open != (out.SeparationFactor <= 1) {
			t.Errorf("clamping %g N at a factor of %g", out.ClampN, out.SeparationFactor)
		}
		if out.LoadFactor.Value < 0 {
			t.Errorf("a preload below the proof load cannot have used it up: %g", out.LoadFactor.Value)
		}
		// At the load factor the bolt stands at its proof load, by the same sheet.
		in.ExternalN *= out.LoadFactor.Value
		atProof, err := JointSeparation(in)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "pull at the load factor", atProof.BoltLoadN, in.ProofMPa.Value*in.StressAreaMM2.Value)
	})
}

func TestMorePreloadNeverOpensAJointSooner(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawJoint(t)
		tighter := in
		tighter.Fraction = rapid.Float64Range(in.Fraction, 0.9).Draw(t, "tighter")
		a, err := JointSeparation(in)
		if err != nil {
			t.Fatal(err)
		}
		b, err := JointSeparation(tighter)
		if err != nil {
			t.Fatal(err)
		}
		if b.SeparationFactor < a.SeparationFactor || b.ClampN < a.ClampN {
			t.Errorf("tighter, and it opens at %g instead of %g", b.SeparationFactor, a.SeparationFactor)
		}
	})
}

func drawJoint(t *rapid.T) JointSeparationInputs {
	return JointSeparationInputs{
		StiffnessRatio: worked.Some(rapid.Float64Range(0.05, 0.9).Draw(t, "c")), ExternalN: rapid.Float64Range(100, 1e5).Draw(t, "P"),
		StressAreaMM2: worked.Some(rapid.Float64Range(20, 900).Draw(t, "A_s")), ProofMPa: worked.Some(rapid.Float64Range(200, 1000).Draw(t, "S_p")),
		Fraction: rapid.Float64Range(0.1, 0.9).Draw(t, "f"),
	}
}

func TestMorePreloadNeverLowersSlipResistance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := SlipResistanceInputs{
			SlipCoefficient: rapid.Float64Range(0.05, 0.6).Draw(t, "mu"), Du: 1, FillFactor: 1, PretensionN: rapid.Float64Range(100, 1e6).Draw(t, "T_b"),
			Planes: float64(rapid.IntRange(1, 4).Draw(t, "planes")), Bolts: float64(rapid.IntRange(1, 20).Draw(t, "bolts")),
		}
		tighter := in
		tighter.PretensionN *= rapid.Float64Range(1, 3).Draw(t, "times")
		a, err := SlipResistance(in)
		if err != nil {
			t.Fatal(err)
		}
		b, err := SlipResistance(tighter)
		if err != nil {
			t.Fatal(err)
		}
		if b.TotalN < a.TotalN {
			t.Errorf("tighter, and it slips at %g N instead of %g N", b.TotalN, a.TotalN)
		}
	})
}

// At the pull that the joint carries, a plate between thick and thin brings its
// bolt just to what is allowed, by the other formulas of the sheet.
func TestPryingAtCapacity(t *testing.T) {
	partly := 0
	rapid.Check(t, func(t *rapid.T) {
		in := drawPlate(t)
		out, err := Prying(in)
		if err != nil {
			t.Fatal(err)
		}
		if out.CapacityN > in.CapacityN {
			t.Errorf("carries %g N on a bolt of %g N", out.CapacityN, in.CapacityN)
		}
		thicker := in
		thicker.ThicknessMM *= rapid.Float64Range(1, 2).Draw(t, "times")
		if more, err := Prying(thicker); err != nil || more.CapacityN < out.CapacityN*(1-1e-12) || more.PryingN < 0 {
			t.Errorf("thicker, and it carries %g N instead of %g N (%v)", more.CapacityN, out.CapacityN, err)
		}
		if out.AlphaCapacity <= 0 || out.AlphaCapacity >= 1 {
			return
		}
		partly++
		in.TensionN = out.CapacityN
		at, err := Prying(in)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "bend at capacity", at.Alpha, out.AlphaCapacity)
		near(t, "pull on the bolt at capacity", at.BoltN, in.CapacityN)
	})
	if partly == 0 {
		t.Error("no plate between thick and thin was drawn")
	}
}

func drawPlate(t *rapid.T) PryingInputs {
	in := PryingInputs{
		TensionN: rapid.Float64Range(1e3, 2e5).Draw(t, "T"), LengthMM: rapid.Float64Range(60, 150).Draw(t, "p"), ThicknessMM: rapid.Float64Range(8, 40).Draw(t, "t"),
		YieldMPa: rapid.Float64Range(200, 400).Draw(t, "F_y"), ToWebMM: rapid.Float64Range(25, 80).Draw(t, "b"), ToEdgeMM: rapid.Float64Range(20, 80).Draw(t, "a"),
		DiameterMM: rapid.Float64Range(12, 30).Draw(t, "d"), CapacityN: rapid.Float64Range(2e4, 2e5).Draw(t, "B"),
	}
	in.HoleMM = in.DiameterMM + 2
	return in
}

// Two ways to the same torque: the friction of flanks and head by Shigley, and the
// figures of the table of VDI 2230.
func TestTorqueTwoWays(t *testing.T) {
	for _, size := range []string{"M8", "M12", "M16x1.5", "M20", "M24x2", "M36"} {
		thread, err := FindThread(size)
		if err != nil {
			t.Fatal(err)
		}
		for _, mu := range []float64{0.08, 0.12, 0.2} {
			table, err := BoltVDI(BoltVDIInputs{
				DiameterMM: thread.DiameterMM, PitchMM: thread.PitchMM, Friction: mu, YieldMPa: 640, HeadBearingMM: thread.HeadBearingMM.Value, HoleMM: thread.HoleMM.Value, YieldShare: 0.9,
			})
			if err != nil {
				t.Fatal(err)
			}
			flanks, err := BoltTorqueFriction(BoltTorqueFrictionInputs{
				DiameterMM: thread.DiameterMM, PitchMM: thread.PitchMM, PreloadN: table.PreloadN, ThreadFriction: mu, HeadFriction: mu, HeadMeanMM: worked.Some(table.HeadMeanMM),
			})
			if err != nil {
				t.Fatal(err)
			}
			if math.Abs(flanks.TorqueNM-table.TorqueNM) > 0.015*table.TorqueNM {
				t.Errorf("%s at %g: %.1f N m by the flanks, %.1f N m by the table", size, mu, flanks.TorqueNM, table.TorqueNM)
			}
			if math.Abs(table.StressAreaMM2-thread.StressAreaMM2) > 0.004*thread.StressAreaMM2 {
				t.Errorf("%s: stress area %.1f mm2, the standard lists %.1f", size, table.StressAreaMM2, thread.StressAreaMM2)
			}
		}
	}
}

// The twist by which the preload is reduced is the torque in the thread over the
// plastic modulus of the stress diameter.
func TestTwistOfTightening(t *testing.T) {
	in := BoltVDIInputs{DiameterMM: 16, PitchMM: 2, Friction: 0.12, YieldMPa: 640, HeadBearingMM: 22.49, HoleMM: 17.5, YieldShare: 0.9}
	out, err := BoltVDI(in)
	if err != nil {
		t.Fatal(err)
	}
	thread := out.PreloadN * (0.16*in.PitchMM + 0.58*out.PitchDiameterMM*in.Friction)
	twist := thread / (math.Pi * math.Pow(out.StressMM, 3) / 12)
	pull := out.PreloadN / out.StressAreaMM2
	if math.Abs(twist/pull-out.Twist) > 0.01*out.Twist {
		t.Errorf("twist over pull %.4f, by the plastic modulus %.4f", out.Twist, twist/pull)
	}
	near(t, "equivalent stress", math.Sqrt(pull*pull+3*out.Twist*out.Twist*pull*pull), 0.9*in.YieldMPa)
}

// Torque and preload are each other's inverse at either end of the range.
func TestTorqueAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sizes, err := Sizes()
		if err != nil {
			t.Fatal(err)
		}
		size := rapid.SampledFrom(sizes).Draw(t, "size")
		thread, err := FindThread(size)
		if err != nil {
			t.Fatal(err)
		}
		grade := "5"
		if thread.metric {
			grade = "10.9"
		}
		least := rapid.Float64Range(0.08, 0.2).Draw(t, "least")
		in := BoltTighteningInputs{Size: size, Grade: grade, Fraction: rapid.Float64Range(0.3, 0.9).Draw(t, "f"), FactorLeast: least, FactorMost: least * rapid.Float64Range(1, 2).Draw(t, "spread")}
		out, err := BoltTightening(in)
		if err != nil {
			t.Fatal(err)
		}
		safe, err := PreloadFromTorque(PreloadFromTorqueInputs{TorqueNM: out.TorqueSafeNM, DiameterMM: out.DiameterMM, FactorLeast: in.FactorLeast, FactorMost: in.FactorMost})
		if err != nil {
			t.Fatal(err)
		}
		near(t, "safe torque, slippery", safe.PreloadMostN, out.PreloadN)
		near(t, "safe torque, dry", safe.PreloadLeastN, out.PreloadLeastN)
		dry, err := PreloadFromTorque(PreloadFromTorqueInputs{TorqueNM: out.TorqueDryNM, DiameterMM: out.DiameterMM, FactorLeast: in.FactorLeast, FactorMost: in.FactorMost})
		if err != nil {
			t.Fatal(err)
		}
		near(t, "dry torque, dry", dry.PreloadLeastN, out.PreloadN)
		near(t, "dry torque, slippery", dry.PreloadMostN, out.PreloadMostN)
		if out.PreloadN > out.ProofLoadN {
			t.Errorf("the safe torque goes over the proof load: %g of %g N", out.PreloadN, out.ProofLoadN)
		}
	})
}

// A nut factor outside of the usual range widens it.
func TestTorqueRangeHoldsItsOwnFactor(t *testing.T) {
	for _, k := range []float64{0.09, 0.12, 0.2, 0.3} {
		out, err := BoltTorque(BoltTorqueInputs{NutFactor: k, DiameterMM: 16, PreloadN: worked.Some(50000), Fraction: 0.75, FactorLeast: 0.12, FactorMost: 0.2})
		if err != nil {
			t.Fatal(err)
		}
		if out.PreloadLeastN > 50000*(1+1e-12) || out.PreloadMostN < 50000*(1-1e-12) {
			t.Errorf("at %g the torque for 50 kN gives %g to %g N", k, out.PreloadLeastN, out.PreloadMostN)
		}
	}
}

// A length of thread that strips just under the breaking load of the bolt is the
// length at which the stripping sheet gives that load.
func TestEngagementTwoWays(t *testing.T) {
	in := ThreadEngagementInputs{
		PitchMM: 1.5, StressAreaMM2: 58, MinorMaxMM: 8.676, PitchMinMM: 8.862,
		MajorMinMM: worked.Some(9.732), PitchMaxMM: worked.Some(9.206), BoltMPa: worked.Some(800), TappedMPa: worked.Some(300),
	}
	out, err := ThreadEngagement(in)
	if err != nil {
		t.Fatal(err)
	}
	// Both shear strengths are half the tensile strengths: a bolt that breaks at
	// A_s R_b strips A_b at R_b/2.
	strip, err := ThreadStrip(ThreadStripInputs{PitchMM: 1.5, BoltLoadN: 58 * 800, ShearMPa: 150, MajorMinMM: 9.732, PitchMaxMM: 9.206, DepthMM: out.NeededMM})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "length", strip.EngagementMM, out.NeededMM.Value)
	near(t, "safety", strip.Safety.Value, 1)
	in.TappedMPa = worked.Some(2000)
	if hard, err := ThreadEngagement(in); err != nil || hard.NeededMM.Value != hard.EngagementMM || hard.StrengthRatio.Value >= 1 {
		t.Errorf("in a harder metal the bolt's own thread decides: %+v, %v", hard, err)
	}
}
