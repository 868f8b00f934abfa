package bolt

import (
	"math"
	"testing"

	"boremend/knowledge/ear"
	"boremend/knowledge/fit"
	"boremend/knowledge/worked"

	"pgregory.net/rapid"
)

// A fit at just the pressure that the sheet asks for is at the end of its grip by
// the sheet of the fit.
func TestRetentionAgainstGrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := SleeveRetentionInputs{
			LoadN: rapid.Float64Range(1e3, 1e6).Draw(t, "F"), PinMM: rapid.Float64Range(20, 200).Draw(t, "d"), LengthMM: rapid.Float64Range(20, 300).Draw(t, "L"),
			PinFriction: rapid.Float64Range(0.05, 0.4).Draw(t, "mu_p"), FitFriction: rapid.Float64Range(0.05, 0.2).Draw(t, "mu_f"), SafetyWanted: 1.5,
		}
		in.SeatMM = in.PinMM * rapid.Float64Range(1.05, 1.4).Draw(t, "D/d")
		if rapid.Bool().Draw(t, "thrust known") {
			in.ThrustN = worked.Some(rapid.Float64Range(0, 1e5).Draw(t, "W"))
		}
		out, err := SleeveRetention(in)
		if err != nil {
			t.Fatal(err)
		}
		grip, err := fit.CombinedGrip(fit.CombinedGripInputs{
			SeatDiameterMM: in.SeatMM, LengthMM: in.LengthMM, PressureMPa: out.BothMPa, Mu: in.FitFriction, AxialLoadN: out.ThrustN, TorqueNM: out.TorqueNM,
		})
		if err != nil {
			t.Fatal(err)
		}
		near(t, "safety of the grip", grip.Safety, 1)
		in.PressureMPa = worked.Some(out.NeededMPa * (1 + 1e-12))
		if held, err := SleeveRetention(in); err != nil || held.HeldBy != "friction" {
			t.Errorf("at the pressure needed it is held by %s (%v)", held.HeldBy, err)
		}
		in.PressureMPa = worked.Some(out.NeededMPa * (1 - 1e-9))
		if held, err := SleeveRetention(in); err != nil || held.HeldBy != "lock" {
			t.Errorf("below the pressure needed it is held by %s (%v)", held.HeldBy, err)
		}
	})
}

// A radial screw without thrust is the key of the sheet on anti-rotation.
func TestRadialScrewAgainstKey(t *testing.T) {
	in := usualCapture("radial")
	in.ThrustN = worked.Some(0)
	out, err := BoltCapture(in)
	if err != nil {
		t.Fatal(err)
	}
	key, err := ear.AntiRotation(ear.AntiRotationInputs{
		Friction: in.PinFriction, LoadN: in.LoadN, PinMM: in.PinMM, KeyRadiusMM: in.SeatMM / 2, KeyMM: math.Sqrt(4 * out.StressAreaMM2 / math.Pi), KeyLengthMM: in.LengthMM, Keys: in.Screws,
	})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "torque", out.TorqueNM, key.TorqueNM)
	near(t, "force on a screw", out.AcrossN, key.TangentialN)
	near(t, "shear stress", out.ShearMPa, key.ShearMPa)
}

// By hand: 120 kN on an 80 mm pin turn a 96 mm sleeve with 960 N m, 20 kN on its
// joint; M12 has a root of 9.853 mm and 84.3 mm2.
func TestCaptureByHand(t *testing.T) {
	tests := []struct {
		way                          string
		across, pull, shear, bearing float64
	}{
		{"joint_line", math.Hypot(20000, 10000) / 4, 0, math.Hypot(20000, 10000) / 4 / (9.8529793 * 24), math.Hypot(20000, 10000) / 4 / (9.8529793 * 12)},
		{"radial", math.Hypot(20000, 10000) / 4, 0, math.Hypot(20000, 10000) / 4 / 84.3, math.Hypot(20000, 10000) / 4 / (9.8529793 * 24)},
		{"head_pocket", 960e3 / 44 / 4, 5000, 960e3 / 44 / 4 / 84.3, 960e3 / 44 / 4 / (4 * 24)},
	}
	for _, test := range tests {
		out, err := BoltCapture(usualCapture(test.way))
		if err != nil {
			t.Fatal(err)
		}
		for _, pair := range [...]struct {
			name      string
			got, want float64
		}{{"across", out.AcrossN, test.across}, {"pull", out.PullN, test.pull}, {"shear", out.ShearMPa, test.shear}, {"bearing", out.BearingMPa, test.bearing}} {
			if math.Abs(pair.got-pair.want) > 1e-6*pair.want {
				t.Errorf("%s: %s is %.7g, by hand %.7g", test.way, pair.name, pair.got, pair.want)
			}
		}
	}
}

// usualCapture is a sleeve of 8 mm wall under 120 kN, held by four M12.
func usualCapture(way string) BoltCaptureInputs {
	in := BoltCaptureInputs{
		Way: way, PinFriction: 0.2, LoadN: 120e3, ThrustN: worked.Some(10e3), PinMM: 80, SeatMM: 96, Size: "M12", Grade: "8.8", Screws: 4,
		LengthMM: 24, WeakerMPa: 250, EarMetal: "steel", Reverses: "yes", SafetyWanted: 2,
	}
	if way == "head_pocket" {
		in.OverlapMM = worked.Some(4)
	}
	return in
}

// Land of two diameters and 1.5 mm: 13.5 mm for M6, 17.5 for M8, 21.5 for M10
// (common practice, no source).
func TestCaptureLand(t *testing.T) {
	for size, land := range map[string]float64{"M6": 13.5, "M8": 17.5, "M10": 21.5} {
		in := usualCapture("joint_line")
		in.Size = size
		out, err := BoltCapture(in)
		if err != nil {
			t.Fatal(err)
		}
		near(t, size, out.LandNeeded, land)
	}
}

// Screws in the number asked for reach the safety wanted, and one fewer does not.
func TestCaptureScrewsNeeded(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawCapture(t)
		out, err := BoltCapture(in)
		if err != nil {
			t.Fatal(err)
		}
		if out.Needed > 40 {
			return
		}
		in.Screws = out.Needed
		enough, err := BoltCapture(in)
		if err != nil {
			t.Fatal(err)
		}
		if enough.Safety < in.SafetyWanted*(1-1e-9) {
			t.Errorf("%g screws give a safety of %g, wanted %g", in.Screws, enough.Safety, in.SafetyWanted)
		}
		if in.Screws--; in.Screws >= 3 {
			if few, err := BoltCapture(in); err != nil || few.Safety >= in.SafetyWanted*(1+1e-9) {
				t.Errorf("%g screws give a safety of %g, which is enough (%v)", in.Screws, few.Safety, err)
			}
		}
	})
}

// The screws that find room, three diameters apart, do fit on the free arcs.
func TestCaptureRoom(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawCapture(t)
		out, err := BoltCapture(in)
		if err != nil {
			t.Fatal(err)
		}
		arcs, each := 1.0, 250.0
		if in.Reverses == "yes" {
			arcs, each = 2, 70
		}
		step := 3 * out.DiameterMM / (in.SeatMM / 2) * 180 / math.Pi
		perArc := out.Room / arcs
		if (perArc-1)*step > each*(1+1e-9) || perArc*step < each*(1-1e-9) {
			t.Errorf("%g screws on each arc of %g degrees, %g degrees apart", perArc, each, step)
		}
	})
}

func drawCapture(t *rapid.T) BoltCaptureInputs {
	in := usualCapture(rapid.SampledFrom([]string{"joint_line", "radial", "head_pocket"}).Draw(t, "way"))
	in.Size = rapid.SampledFrom([]string{"M6", "M10", "M16", "3/8-16", "5/8-18"}).Draw(t, "size")
	if in.Size[0] != 'M' {
		in.Grade = "5"
	}
	in.LoadN = rapid.Float64Range(1e3, 3e5).Draw(t, "F")
	in.Screws = float64(rapid.IntRange(1, 12).Draw(t, "n"))
	in.LengthMM = rapid.Float64Range(5, 40).Draw(t, "l")
	in.Reverses = rapid.SampledFrom([]string{"yes", "no"}).Draw(t, "reverses")
	if rapid.Bool().Draw(t, "thrust unknown") {
		in.ThrustN = worked.Optional{}
	}
	return in
}

// The shoulder is the ring of its own sheet under twice the thrust.
func TestShoulderAgainstRing(t *testing.T) {
	in := usualShoulder()
	out, err := Shoulder(in)
	if err != nil {
		t.Fatal(err)
	}
	ring, err := ear.FlangeRing(ear.FlangeRingInputs{ThrustN: 2 * in.ThrustN, SleeveODMM: 96, FlangeODMM: 120, FlangeMM: 5, CounterMM: 98, Poisson: 0.3})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "shear", out.ShearMPa, ring.ShearMPa)
	near(t, "bearing", out.PressureMPa, ring.FaceMPa)
	near(t, "bending", out.BendingMPa.Value, ring.BendingMPa)
}

func usualShoulder() ShoulderInputs {
	return ShoulderInputs{
		ThrustN: 20e3, FinishMM: 80, SleeveODMM: 96, FlangeODMM: 120, CounterMM: 98, PlayMM: 9, Shoulders: 2, RunMM: 0.5, YieldMPa: 450, FaceMPa: 250, Poisson: 0.3,
	}
}

// Two shoulders of 5 mm with half a millimetre to run on both sides need 11 mm;
// 3 mm to 50 bore, 5 to 120, 8 above (common practice, no source).
func TestSidePlayIsOneBudget(t *testing.T) {
	tests := []struct {
		bore, play, shoulders   float64
		chosen                  worked.Optional
		thickness, room, recess float64
	}{
		{80, 11, 2, worked.Optional{}, 5, 5, 0},
		{80, 9, 2, worked.Optional{}, 5, 4, 1},
		{80, 9, 1, worked.Optional{}, 8, 8, 0},
		{50, 1, 1, worked.Optional{}, 3, 0, 3},
		{50.1, 1, 1, worked.Optional{}, 5, 0, 5},
		{120, 0, 1, worked.Optional{}, 5, -1, 6},
		{120.1, 20, 2, worked.Optional{}, 9.5, 9.5, 0},
		{120.1, 9, 1, worked.Optional{}, 8, 8, 0},
		{80, 9, 2, worked.Some(3), 3, 4, 0},
		{80, 9, 2, worked.Some(6), 6, 4, 2},
	}
	for _, test := range tests {
		in := usualShoulder()
		in.FinishMM, in.SleeveODMM, in.FlangeODMM, in.CounterMM = test.bore, test.bore+16, test.bore+60, test.bore+18
		in.PlayMM, in.Shoulders, in.FlangeMM = test.play, test.shoulders, test.chosen
		out, err := Shoulder(in)
		if err != nil {
			t.Errorf("%+v: %v", test, err)
			continue
		}
		if out.ThicknessMM != test.thickness || out.RoomMM != test.room || math.Abs(out.RecessMM-test.recess) > 1e-12 {
			t.Errorf("bore %g, play %g for %g: %g thick, room %g, recess %g; want %g, %g, %g",
				test.bore, test.play, test.shoulders, out.ThicknessMM, out.RoomMM, out.RecessMM, test.thickness, test.room, test.recess)
		}
	}
}

// With its recesses cut, the joint always keeps its running gap on both sides.
func TestShouldersRunFree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := usualShoulder()
		in.PlayMM = rapid.Float64Range(0, 40).Draw(t, "s")
		in.Shoulders = float64(rapid.IntRange(1, 4).Draw(t, "n"))
		in.RunMM = rapid.Float64Range(0.1, 1).Draw(t, "c")
		if rapid.Bool().Draw(t, "chosen") {
			in.FlangeMM = worked.Some(rapid.Float64Range(1, 20).Draw(t, "h"))
		}
		out, err := Shoulder(in)
		if err != nil {
			t.Fatal(err)
		}
		if out.PlayLeftMM < 2*in.RunMM-1e-9 {
			t.Errorf("%g mm of play left, %g mm wanted: %+v", out.PlayLeftMM, 2*in.RunMM, out)
		}
		if out.BendingMPa.Known != (out.ThicknessMM <= out.WidthMM) {
			t.Errorf("bending of a shoulder %g thick and %g wide: %v", out.ThicknessMM, out.WidthMM, out.BendingMPa)
		}
	})
}
