package cut

import (
	"math"
	"strings"
	"testing"

	"boremend/knowledge/worked"

	"pgregory.net/rapid"
)

func usualSetup() BoringSetupInputs {
	return BoringSetupInputs{
		Work: "cast_steel_low", Tool: "carbide", BeforeMM: 92, AfterMM: 100, LengthMM: 80, SpanMM: 500, BarMM: 60, Bearings: "self_aligning",
		DepthMM: 1.5, FeedMM: 0.25, FinishMM: 0.5, FinishFeedMM: 0.15, EnteringDeg: 90, NoseMM: 0.4, InternalK: 1.2, WearK: 1.3, InterruptK: 1,
		RadialShare: 0.3, FeedShare: 0.6, Efficiency: 0.7, Damping: 0.02, ModulusMPa: 207000, DensityKGM3: 7850, OverrunMM: 10, AllowedMM: 0.02,
	}
}

func drawSetup(t *rapid.T) BoringSetupInputs {
	in := usualSetup()
	in.Work = rapid.SampledFrom(strings.Split(works, ",")).Draw(t, "work")
	in.Tool = rapid.SampledFrom([]string{"hss", "carbide"}).Draw(t, "tool")
	in.Bearings = rapid.SampledFrom([]string{"self_aligning", "rigid"}).Draw(t, "bearings")
	in.BeforeMM = rapid.Float64Range(60, 200).Draw(t, "D_1")
	in.AfterMM = in.BeforeMM + rapid.Float64Range(0.2, 20).Draw(t, "stock")
	in.BarMM = in.BeforeMM * rapid.Float64Range(0.4, 0.8).Draw(t, "d")
	in.BarBoreMM = in.BarMM * rapid.Float64Range(0, 0.6).Draw(t, "d_0")
	in.SpanMM = in.BarMM * rapid.Float64Range(4, 12).Draw(t, "S")
	in.ToolAtMM = worked.Some(in.SpanMM * rapid.Float64Range(0.2, 0.8).Draw(t, "a"))
	in.DepthMM = rapid.Float64Range(0.3, 3).Draw(t, "a_r")
	in.FeedMM = rapid.Float64Range(0.12, 0.5).Draw(t, "f_r")
	if rapid.Bool().Draw(t, "speed given") {
		in.SpeedMPerMin = worked.Some(rapid.Float64Range(5, 100).Draw(t, "v"))
	}
	in.HandlingS = worked.Some(300)
	return in
}

func setup(t *rapid.T, in BoringSetupInputs) BoringSetupOutputs {
	t.Helper()
	out, err := BoringSetup(in)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// The one sheet must give what its parts give.
func TestSetupIsMadeOfItsParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawSetup(t)
		out := setup(t, in)
		data, err := CuttingData(CuttingDataInputs{Work: in.Work, Tool: in.Tool, ChipMM: in.FeedMM})
		if err != nil {
			t.Fatal(err)
		}
		slow := 1.0
		if in.Tool == "hss" || out.SpeedUsed < 50 {
			slow = 1.2
		}
		closeTo(t, "kc", out.KCMPa, data.KCMPa*1.2*1.3*slow, 1e-9)
		if !in.SpeedMPerMin.Known {
			closeTo(t, "speed", out.SpeedUsed, data.SpeedLeast, 0)
		}
		power, err := CuttingPower(CuttingPowerInputs{KCMPa: out.KCMPa, DepthMM: in.DepthMM, FeedMM: in.FeedMM, SpeedMPerMin: out.SpeedUsed, Efficiency: in.Efficiency, BoreMM: worked.Some(in.AfterMM)})
		if err != nil {
			t.Fatal(err)
		}
		closeTo(t, "motor power", out.MotorKW, power.MotorKW, 1e-9)
		closeTo(t, "torque", out.TorqueNM, power.TorqueNM.Value, 1e-9)
		closeTo(t, "revolutions", out.RPMLast, power.RPM.Value, 1e-9)
		bar := supports(t, BarSupportsInputs{BarMM: in.BarMM, BarBoreMM: in.BarBoreMM, SpanMM: in.SpanMM, ToolAtMM: in.ToolAtMM.Value, ModulusMPa: in.ModulusMPa, ForceN: out.SideN})
		want := bar.AtToolMM
		if in.Bearings == "rigid" {
			want = bar.FixedMM
		}
		closeTo(t, "bend", out.DeflectionMM, want, 1e-9)
		closeTo(t, "force on the bearing", out.BearingN, max(bar.LeftN, bar.RightN), 1e-9)
		rough, err := ErrorCopy(ErrorCopyInputs{KCMPa: out.KCMPa, FeedMM: in.FeedMM, RadialShare: in.RadialShare, DepthMM: in.DepthMM, Stiffness: out.Stiffness, Passes: 1})
		if err != nil {
			t.Fatal(err)
		}
		closeTo(t, "undersize after roughing", out.RoughSmallMM, rough.SmallMM, 1e-9)
		chatter, err := ChatterLimit(ChatterLimitInputs{Stiffness: out.Stiffness, Damping: in.Damping, RadialMPa: in.RadialShare * out.KCMPa})
		if err != nil {
			t.Fatal(err)
		}
		closeTo(t, "chatter limit", out.ChatterMM, chatter.DepthMM, 1e-9)
		if (out.Chatter == "quiet") != (in.DepthMM <= chatter.DepthMM) {
			t.Errorf("%s at %g mm, limit %g", out.Chatter, in.DepthMM, chatter.DepthMM)
		}
		plan, err := BoringPasses(BoringPassesInputs{
			BeforeMM: in.BeforeMM, AfterMM: in.AfterMM, LengthMM: in.LengthMM, OverrunMM: in.OverrunMM, RoughMM: in.DepthMM, FinishMM: in.FinishMM,
			RoughFeedMM: in.FeedMM, FinishFeedMM: in.FinishFeedMM, SpeedMPerMin: out.SpeedUsed, SpringPasses: out.SpringPasses, HandlingS: in.HandlingS,
		})
		if err != nil {
			t.Fatal(err)
		}
		closeTo(t, "total time", out.TotalS.Value, plan.TotalS.Value, 1e-9)
	})
}

func TestSetupSagAndFrequency(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawSetup(t)
		out := setup(t, in)
		sag, err := BarSag(BarSagInputs{BarMM: in.BarMM, BarBoreMM: in.BarBoreMM, SpanMM: in.SpanMM, ModulusMPa: in.ModulusMPa, DensityKGM3: in.DensityKGM3})
		if err != nil {
			t.Fatal(err)
		}
		want, support := sag.SagMM, "simply_supported"
		if in.Bearings == "rigid" {
			want, support = sag.FixedMM, "fixed"
		}
		closeTo(t, "sag", out.SagMM, want, 1e-9)
		swings, err := BarFrequency(BarFrequencyInputs{Support: support, BarMM: in.BarMM, BarBoreMM: in.BarBoreMM, LengthMM: in.SpanMM, ModulusMPa: in.ModulusMPa, DensityKGM3: in.DensityKGM3})
		if err != nil {
			t.Fatal(err)
		}
		closeTo(t, "frequency", out.FrequencyHz, swings.FirstHz, 1e-9)
	})
}

// A stiffer bar is never worse in anything, and a deeper cut never better.
func TestSetupDirections(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawSetup(t)
		out := setup(t, in)
		stiffer := in
		stiffer.BarMM = in.BarMM + rapid.Float64Range(0, 0.9).Draw(t, "thicker")*(in.BeforeMM-in.BarMM)
		stiffer.BarBoreMM *= rapid.Float64Range(0, 1).Draw(t, "less hollow")
		if stiffer.SpanMM > stiffer.BarMM {
			better := setup(t, stiffer)
			const hair = 1 + 1e-12
			if better.DeflectionMM > out.DeflectionMM*hair || better.SmallMM > out.SmallMM*hair || better.ChatterMM < out.ChatterMM/hair || better.SpringPasses > out.SpringPasses {
				t.Errorf("a stiffer bar is worse: %+v", better)
			}
		}
		in.DepthMM += rapid.Float64Range(0, 1).Draw(t, "deeper")
		if deeper := setup(t, in); deeper.CuttingN < out.CuttingN || deeper.DeflectionMM < out.DeflectionMM || deeper.SmallMM < out.SmallMM || deeper.RoughPasses > out.RoughPasses {
			t.Errorf("a deeper cut is better")
		}
	})
}

// Spring passes: as many as bring the bore to what is allowed, three at most, and
// none on metal that hardens.
func TestSpringPasses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawSetup(t)
		in.AllowedMM = rapid.Float64Range(0.001, 0.1).Draw(t, "allowed")
		out := setup(t, in)
		w, err := workNamed(in.Work)
		switch {
		case err != nil:
			t.Fatal(err)
		case w.WorkHardens && out.SpringPasses != 0:
			t.Errorf("%g spring passes on %s", out.SpringPasses, in.Work)
		case !w.WorkHardens && out.LeftMM > in.AllowedMM*(1+1e-6) && out.SpringPasses < 3:
			t.Errorf("%g passes leave %g mm, allowed %g", out.SpringPasses, out.LeftMM, in.AllowedMM)
		case out.SpringPasses > 0 && out.LeftMM/out.FineFactor <= in.AllowedMM*(1-1e-6):
			t.Errorf("%g passes leave %g mm, one fewer had done", out.SpringPasses, out.LeftMM)
		}
	})
}

// A finished bore of 0.1 mm stock a side takes one finishing cut of 0.1 mm.
func TestSetupWithHardlyAnyStock(t *testing.T) {
	in := usualSetup()
	in.BeforeMM = 99.8
	out, err := BoringSetup(in)
	if err != nil || out.RoughPasses != 0 || out.EachMM != 0 || math.Abs(out.LastMM-0.1) > 1e-9 || out.Passes != 1+out.SpringPasses {
		t.Errorf("%+v, %v", out, err)
	}
}

func TestSetupRefuses(t *testing.T) {
	tests := []struct {
		name string
		bend func(*BoringSetupInputs)
		says string
	}{
		{"metal that is not in the list", func(in *BoringSetupInputs) { in.Work = "cheese" }, "work"},
		{"bore that shrinks", func(in *BoringSetupInputs) { in.AfterMM = 90 }, "must be below bore_after"},
		{"bar thicker than the hole", func(in *BoringSetupInputs) { in.BarMM = 92 }, "must be below bore_before"},
		{"bearings inside the bore", func(in *BoringSetupInputs) { in.SpanMM = 80 }, "must be below span"},
		{"tool beyond the bearing", func(in *BoringSetupInputs) { in.ToolAtMM = worked.Some(500) }, "tool_at"},
		{"tube without a wall", func(in *BoringSetupInputs) { in.BarBoreMM = 60 }, "bar_bore"},
		{"chip too thin", func(in *BoringSetupInputs) { in.FinishFeedMM = 0.04 }, "0.11 to 1.13"},
		{"chip too thick", func(in *BoringSetupInputs) { in.FeedMM = 1.7 }, "0.05 to 1.6"},
		{"feed beyond the nose", func(in *BoringSetupInputs) { in.FinishFeedMM = 0.5 }, "thread"},
		{"thin long bar", func(in *BoringSetupInputs) { in.BarMM, in.SpanMM = 5, 500 }, "bar_diameter"},
		{"very long bar", func(in *BoringSetupInputs) { in.SpanMM = 18000 }, "span"},
		{"factor in percent", func(in *BoringSetupInputs) { in.WearK = 130 }, "wear_factor"},
	}
	for _, test := range tests {
		in := usualSetup()
		test.bend(&in)
		if out, err := BoringSetup(in); err == nil || !strings.Contains(err.Error(), test.says) {
			t.Errorf("%s: got %+v, %v; want %q", test.name, out, err, test.says)
		}
	}
}

func TestSetupWarnings(t *testing.T) {
	tests := []struct {
		name string
		bend func(*BoringSetupInputs)
		says string
	}{
		{"thin chip", func(in *BoringSetupInputs) { in.FinishFeedMM = 0.08 }, "larger than shown"},
		{"thick chip", func(in *BoringSetupInputs) { in.FeedMM = 1.3 }, "a guess"},
		{"slender bar", func(in *BoringSetupInputs) { in.BarMM = 40 }, "nothing chatters"},
		{"bar much smaller than the hole", func(in *BoringSetupInputs) { in.BarMM = 40 }, "fourth power"},
		{"long span", func(in *BoringSetupInputs) { in.SpanMM = 1200 }, "sags"},
		{"no room", func(in *BoringSetupInputs) { in.BarMM = 88 }, "chips need"},
		{"deep cut", func(in *BoringSetupInputs) { in.DepthMM = 3 }, "takes up to 2 mm"},
		{"fast cut", func(in *BoringSetupInputs) { in.SpeedMPerMin = worked.Some(120) }, "up to 70 m/min"},
		{"work hardening", func(in *BoringSetupInputs) { in.Work, in.BarMM, in.SpanMM = "manganese_steel", 45, 700 }, "too small on the diameter"},
		{"shallow finish", func(in *BoringSetupInputs) { in.FinishMM = 0.3 }, "nose of the tool"},
		{"no handling", func(in *BoringSetupInputs) {}, "handling_per_pass"},
		{"where the force comes from", func(in *BoringSetupInputs) {}, "GE 240"},
	}
	for _, test := range tests {
		in := usualSetup()
		test.bend(&in)
		out, err := BoringSetup(in)
		if err != nil {
			t.Errorf("%s: %v", test.name, err)
			continue
		}
		if says := strings.Join(boringSetupWarnings(in, out), "\n"); !strings.Contains(says, test.says) {
			t.Errorf("%s: %q does not say %q", test.name, says, test.says)
		}
	}
	in := usualSetup()
	in.HandlingS = worked.Some(300)
	out, err := BoringSetup(in)
	if err != nil {
		t.Fatal(err)
	}
	for _, says := range boringSetupWarnings(in, out) {
		if strings.Contains(says, "chatters") || strings.Contains(says, "sags") || strings.Contains(says, "too small") {
			t.Errorf("a good set-up is warned of: %s", says)
		}
	}
}
