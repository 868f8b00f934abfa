package cut

import (
	"math"
	"testing"

	"boremend/knowledge/worked"

	"pgregory.net/rapid"
)

// A stiffer bar never bends more: thicker, less hollow, of a stiffer metal, or on a
// shorter span.
func TestStifferBarNeverBendsMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawSupports(t)
		stiffer := in
		switch rapid.IntRange(0, 3).Draw(t, "how") {
		case 0:
			stiffer.BarMM *= rapid.Float64Range(1, 1.5).Draw(t, "thicker")
		case 1:
			stiffer.BarBoreMM *= rapid.Float64Range(0, 1).Draw(t, "less hollow")
		case 2:
			stiffer.ModulusMPa = min(7e5, in.ModulusMPa*rapid.Float64Range(1, 2).Draw(t, "metal"))
		case 3:
			shorter := rapid.Float64Range(0.5, 1).Draw(t, "shorter")
			stiffer.SpanMM, stiffer.ToolAtMM = in.SpanMM*shorter, in.ToolAtMM*shorter
		}
		before, after := supports(t, in), supports(t, stiffer)
		const hair = 1 + 1e-12
		if after.AtToolMM > before.AtToolMM*hair || after.MaxMM > before.MaxMM*hair || after.FixedMM > before.FixedMM*hair {
			t.Errorf("stiffer, and %g instead of %g mm", after.AtToolMM, before.AtToolMM)
		}
	})
}

func supports(t *rapid.T, in BarSupportsInputs) BarSupportsOutputs {
	t.Helper()
	out, err := BarBetweenSupports(in)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// Seen from the other end the bar is the same; ends that cannot tilt always help,
// fourfold in the middle; the tool is never beyond the largest bend.
func TestSupportsFromBothEnds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawSupports(t)
		turned := in
		turned.ToolAtMM = in.SpanMM - in.ToolAtMM
		here, there := supports(t, in), supports(t, turned)
		closeTo(t, "bend from the other end", here.AtToolMM, there.AtToolMM, 1e-9)
		closeTo(t, "reaction from the other end", here.LeftN, there.RightN, 1e-9)
		if here.FixedMM*4 > here.AtToolMM*(1+1e-9) || here.AtToolMM > here.MaxMM*(1+1e-9) {
			t.Errorf("rigid ends %g, tilting ends %g, largest %g", here.FixedMM, here.AtToolMM, here.MaxMM)
		}
	})
}

// A cantilever is a sixteenth as stiff as the same length between bearings, and the
// equivalent span has its stiffness.
func TestEquivalentSpan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const d, e = 40.0, 207000.0
		ld := rapid.Float64Range(2, 8).Draw(t, "L/D")
		same, err := BarLDEquivalent(BarLDInputs{CantileverLD: ld})
		if err != nil {
			t.Fatal(err)
		}
		held, err := BarCantilever(BarCantileverInputs{BarMM: d, OverhangMM: ld * d, ModulusMPa: e, ForceN: 100})
		if err != nil {
			t.Fatal(err)
		}
		between := supports(t, BarSupportsInputs{BarMM: d, SpanMM: same.SimpleLD * d, ToolAtMM: same.SimpleLD * d / 2, ModulusMPa: e, ForceN: 100})
		rigid := supports(t, BarSupportsInputs{BarMM: d, SpanMM: same.FixedLD * d, ToolAtMM: same.FixedLD * d / 2, ModulusMPa: e, ForceN: 100})
		closeTo(t, "stiffness between bearings", between.Stiffness, held.Stiffness, 1e-9)
		closeTo(t, "stiffness between rigid ends", rigid.FixedStiffness, held.Stiffness, 1e-9)
	})
}

// The bore turned step by step: at each angle the bar gives way until its force and
// that of the cut agree.
func TestErrorCopyStepByStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := ErrorCopyInputs{
			KCMPa: rapid.Float64Range(1000, 4000).Draw(t, "kc"), FeedMM: rapid.Float64Range(0.1, 0.4).Draw(t, "f"), RadialShare: 0.3,
			DepthMM: 1, Stiffness: rapid.Float64Range(500, 20000).Draw(t, "k"), RunoutMM: rapid.Float64Range(0.1, 1).Draw(t, "runout"),
			Passes: float64(rapid.IntRange(1, 3).Draw(t, "passes")),
		}
		out, err := ErrorCopy(in)
		if err != nil {
			t.Fatal(err)
		}
		const angles = 24
		surface, set := make([]float64, angles), in.RunoutMM/2+in.DepthMM
		for i := range surface {
			surface[i] = in.RunoutMM / 2 * math.Cos(4*math.Pi*float64(i)/angles)
		}
		for range int(in.Passes) {
			for i, old := range surface {
				gives := 0.0
				for range 4000 {
					force := in.RadialShare * in.KCMPa * in.FeedMM * (set - gives - old)
					gives += 0.2 * (force/in.Stiffness - gives)
				}
				surface[i] = set - gives
			}
		}
		least, most := math.Inf(1), math.Inf(-1)
		for _, r := range surface {
			least, most = min(least, r), max(most, r)
		}
		closeTo(t, "runout left", out.AfterMM, most-least, 1e-6)
		// The tool is set a_p beyond the high spots, so it takes half the runout more
		// on the mean.
		deeper := 1 + in.RunoutMM/(2*in.DepthMM)
		closeTo(t, "undersize left", out.LeftMM*deeper, 2*set-(most+least), 1e-6)
	})
}

// The passes added up one by one, each at its own diameter.
func TestPassesOneByOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := BoringPassesInputs{
			BeforeMM: rapid.Float64Range(30, 200).Draw(t, "D_1"), LengthMM: rapid.Float64Range(10, 300).Draw(t, "L"), OverrunMM: 10,
			RoughMM: rapid.Float64Range(0.3, 3).Draw(t, "a_r"), FinishMM: 0.3, RoughFeedMM: 0.3, FinishFeedMM: 0.1,
			SpeedMPerMin: rapid.Float64Range(5, 80).Draw(t, "v"), SpringPasses: float64(rapid.IntRange(0, 3).Draw(t, "c")), HandlingS: worked.Some(300),
		}
		in.AfterMM = in.BeforeMM + rapid.Float64Range(0.1, 20).Draw(t, "stock")
		out, err := BoringPasses(in)
		if err != nil {
			t.Fatal(err)
		}
		passes, seconds, diameter := 0.0, 0.0, in.BeforeMM
		run := func(feed float64) {
			turns := (in.LengthMM + in.OverrunMM) / feed
			seconds += 60 * turns * math.Pi * diameter / (1000 * in.SpeedMPerMin)
			passes++
		}
		for in.AfterMM-diameter > 2*in.FinishMM+1e-9 {
			diameter += 2 * out.EachMM
			run(in.RoughFeedMM)
		}
		for diameter = in.AfterMM; passes < out.RoughPasses+1+in.SpringPasses; {
			run(in.FinishFeedMM)
		}
		closeTo(t, "passes", out.Passes, passes, 0)
		closeTo(t, "time", out.CutS, seconds, 1e-9)
		closeTo(t, "time with handling", out.TotalS.Value, seconds+300*passes, 1e-9)
		if out.EachMM > in.RoughMM*(1+1e-9) {
			t.Errorf("roughs %g mm deep, allowed %g", out.EachMM, in.RoughMM)
		}
	})
}

// The arc profile integrated: height and mean deviation.
func TestSurfaceFinishIsIntegrated(t *testing.T) {
	const r, f, n = 0.8, 0.1, 200000
	mean, heights := 0.0, make([]float64, n)
	for i := range heights {
		x := f * ((float64(i)+0.5)/n - 0.5)
		heights[i] = r - math.Sqrt(r*r-x*x)
		mean += heights[i] / n
	}
	ra := 0.0
	for _, h := range heights {
		ra += math.Abs(h-mean) / n
	}
	out, err := SurfaceFinish(SurfaceFinishInputs{FeedMM: f, NoseMM: worked.Some(r)})
	if err != nil || math.Abs(out.RaMM.Value-ra) > 2e-3*ra || math.Abs(out.RzMM.Value-heights[0]) > 2e-3*heights[0] {
		t.Errorf("Ra %g, integrated %g; Rz %g, integrated %g; %v", out.RaMM.Value, ra, out.RzMM.Value, heights[0], err)
	}
}

// A ring of legs solved by hand for every direction of the turning force: no leg
// pulls more than the sheet says, and one comes close.
func TestTackGroupAllRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := TackGroupInputs{
			ReactionN: 1000, StandoffMM: rapid.Float64Range(10, 200).Draw(t, "e"), Legs: float64(rapid.IntRange(3, 8).Draw(t, "n")),
			LegRadiusMM: rapid.Float64Range(30, 200).Draw(t, "r"), ThrustN: 200, AllowableMPa: 55, WeldLegMM: 6,
		}
		out, err := TackGroup(in)
		if err != nil {
			t.Fatal(err)
		}
		worst := 0.0
		for turn := range 3600 {
			direction := float64(turn) * math.Pi / 1800
			inertia := 0.0 // sum of squared levers about the axis square to the force
			for leg := range int(in.Legs) {
				inertia += square(in.LegRadiusMM * math.Cos(2*math.Pi*float64(leg)/in.Legs-direction))
			}
			for leg := range int(in.Legs) {
				lever := in.LegRadiusMM * math.Cos(2*math.Pi*float64(leg)/in.Legs-direction)
				worst = max(worst, in.ReactionN*in.StandoffMM*lever/inertia+in.ThrustN/in.Legs)
			}
		}
		closeTo(t, "largest pull on a leg", out.NormalN, worst, 1e-5)
	})
}

func square(v float64) float64 { return v * v }

// Kienzle's figures come back from cells that the law itself gives.
func TestKienzleFitGivesTheLawBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kc11, mc := rapid.Float64Range(800, 3500).Draw(t, "kc11"), rapid.Float64Range(0.1, 0.35).Draw(t, "mc")
		in := KienzleFitInputs{EnteringDeg: rapid.Float64Range(30, 95).Draw(t, "kappa")}
		for _, f := range []float64{0.2, 0.3, 0.5, 0.8} {
			out, err := KienzleKC(KienzleKCInputs{KC11MPa: kc11, MC: mc, FeedMM: f, EnteringDeg: in.EnteringDeg, PercentPerDeg: 1})
			if err != nil {
				t.Fatal(err)
			}
			in.FeedMM, in.KCMPa = append(in.FeedMM, f), append(in.KCMPa, out.KCMPa)
		}
		out, err := KienzleFit(in)
		if err != nil {
			t.Fatal(err)
		}
		closeTo(t, "kc11", out.KC11MPa, kc11, 1e-9)
		closeTo(t, "mc", out.MC, mc, 1e-9)
	})
}
