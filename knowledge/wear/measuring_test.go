package wear

import (
	"math"
	"strings"
	"testing"

	"boremend/knowledge/worked"

	"pgregory.net/rapid"
)

// A bore worn anyhow, measured by radii and by diameters: what the diameters
// bracket must hold what the radii show.
func TestDiametersBracketTheTruth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const half = 6
		original := rapid.Float64Range(20, 300).Draw(t, "original")
		radial := RadialCleanUpInputs{OriginalMM: original}
		gauge := BoreFromDiametersInputs{OriginalMM: worked.Some(original)}
		for i := range 2 * half {
			radial.ClockDeg = append(radial.ClockDeg, float64(i)*30)
		}
		gauge.ClockDeg = radial.ClockDeg[:half]
		for depth := range rapid.IntRange(1, 3).Draw(t, "depths") {
			gauge.DepthMM = append(gauge.DepthMM, float64(depth)*20)
			row := make(worked.List, 2*half)
			for i := range row {
				row[i] = original/2 + rapid.Float64Range(0, 5).Draw(t, "wear")
			}
			radial.RadiusMM = append(radial.RadiusMM, row...)
			for i := range half {
				gauge.DiameterMM = append(gauge.DiameterMM, row[i]+row[half+i])
			}
		}
		truth, err := RadialCleanUp(radial)
		if err != nil {
			t.Fatal(err)
		}
		bracket, err := BoreFromDiameters(gauge)
		if err != nil {
			t.Fatal(err)
		}
		const tiny = 1e-9
		if truth.OriginalAxis < bracket.LowMM-tiny || truth.OriginalAxis > bracket.HighMM.Value+tiny {
			t.Errorf("bore %g on the true axis, outside the bracket %g to %g", truth.OriginalAxis, bracket.LowMM, bracket.HighMM.Value)
		}
		if truth.FreeAxis > truth.OriginalAxis+tiny || truth.FreeAxis < bracket.LowMM-tiny {
			t.Errorf("free axis %g, true axis %g, largest diameter %g", truth.FreeAxis, truth.OriginalAxis, bracket.MaxMM)
		}
		if math.Abs(truth.MaxDiameterMM.Value-bracket.MaxMM) > tiny {
			t.Errorf("largest diameter %g by radii, %g by gauge", truth.MaxDiameterMM.Value, bracket.MaxMM)
		}
	})
}

// A round hole worn to a larger round hole beside the true axis: the textbook case
// of one-sided wear, where every figure is known.
func TestShiftedRoundHole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		worn, shift := rapid.Float64Range(20, 100).Draw(t, "radius"), rapid.Float64Range(0.01, 1).Draw(t, "shift")
		toward := float64(rapid.IntRange(0, 71).Draw(t, "toward")) * 5
		in := RadialCleanUpInputs{OriginalMM: 2 * (worn - shift), StockMM: 0.5}
		for i := range 72 {
			clock := float64(i) * 5
			off := (clock - toward) * math.Pi / halfTurnDeg
			in.ClockDeg = append(in.ClockDeg, clock)
			in.RadiusMM = append(in.RadiusMM, shift*math.Cos(off)+math.Sqrt(worn*worn-square(shift*math.Sin(off))))
		}
		out, err := RadialCleanUp(in)
		if err != nil {
			t.Fatal(err)
		}
		tests := []struct {
			name            string
			got, want, tiny float64
		}{
			{"bore on the true axis", out.OriginalAxis, 2 * (worn + shift + 0.5), 1e-9},
			{"bore on a free axis", out.FreeAxis, 2 * (worn + 0.5), 1e-9},
			{"move", out.ShiftMM, shift, 1e-6},
			{"deepest wear", out.MaxWearMM, 2 * shift, 1e-9},
			{"largest cut", out.LargestCutMM, 0.5 + 2*shift, 1e-9},
			{"fitted radius", out.MeanRadiusMM, worn, shift * shift / worn},
			{"fitted centre", math.Hypot(out.CentreXMM, out.CentreYMM), shift, shift * shift / worn},
		}
		for _, test := range tests {
			if math.Abs(test.got-test.want) > test.tiny {
				t.Errorf("%s is %.12g, want %.12g", test.name, test.got, test.want)
			}
		}
		if around := math.Mod(math.Abs(out.DeepestClock-toward), fullTurnDeg); around > 1e-9 {
			t.Errorf("deepest at %g, want %g", out.DeepestClock, toward)
		}
	})
}

func square(v float64) float64 { return v * v }

// Diameters of an ideal oval give its axes back, whatever the clock angles.
func TestOvalIsFound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ovality, axis := rapid.Float64Range(0.01, 3).Draw(t, "ovality"), rapid.Float64Range(0, 179).Draw(t, "axis")
		in := BoreFromDiametersInputs{DepthMM: worked.List{10}}
		for i := range rapid.IntRange(3, 8).Draw(t, "clocks") {
			clock := float64(i)*22 + rapid.Float64Range(0, 5).Draw(t, "off")
			in.ClockDeg = append(in.ClockDeg, clock)
			in.DiameterMM = append(in.DiameterMM, 80+ovality/2*math.Cos(2*(clock-axis)*math.Pi/halfTurnDeg))
		}
		out, err := BoreFromDiameters(in)
		if err != nil {
			t.Fatal(err)
		}
		off := math.Abs(out.AxisClock.Value - axis)
		if math.Abs(out.OvalityMM.Value-ovality) > 1e-9 || min(off, halfTurnDeg-off) > 1e-6 {
			t.Errorf("ovality %g at %g, want %g at %g", out.OvalityMM.Value, out.AxisClock.Value, ovality, axis)
		}
		if out.HighMM.Known || out.BellMM.Known {
			t.Error("a bracket without the original bore, or a bell-mouth from one depth")
		}
	})
}

// What diameters cannot see: a bore of three lobes reads one diameter all round,
// and two clock angles miss an oval that lies between them.
func TestWhatDiametersCannotSee(t *testing.T) {
	lobed := BoreFromDiametersInputs{DepthMM: worked.List{10}, ClockDeg: worked.List{0, 45, 90, 135}}
	radius := func(clock float64) float64 { return 40 + math.Cos(3*clock*math.Pi/halfTurnDeg) }
	for _, clock := range lobed.ClockDeg {
		lobed.DiameterMM = append(lobed.DiameterMM, radius(clock)+radius(clock+halfTurnDeg))
	}
	if out, err := BoreFromDiameters(lobed); err != nil || out.OutOfRound > 1e-9 {
		t.Errorf("three lobes of 1 mm read %g, %v", out.OutOfRound, err)
	}
	oval := BoreFromDiametersInputs{DepthMM: worked.List{10}, ClockDeg: worked.List{0, 90}, DiameterMM: worked.List{80, 80}}
	out, err := BoreFromDiameters(oval)
	if err != nil || out.OvalityMM.Known {
		t.Errorf("two clock angles give an ovality of %v, %v", out.OvalityMM, err)
	}
	if says := strings.Join(boreFromDiametersWarnings(oval, out), " "); !strings.Contains(says, "does not show at all") || !strings.Contains(says, "cannot say which") {
		t.Errorf("warnings %q", says)
	}
}

func TestMeasuringRefuses(t *testing.T) {
	tests := []struct {
		name string
		err  error
		says string // empty: accepted
	}{
		{"two points for a fit", errorOf(CircleFitKasa(PointsInputs{X: worked.List{0, 1}, Y: worked.List{0, 1}})), "3 to 1000"},
		{"points on a line", errorOf(CircleFitGeometric(PointsInputs{X: worked.List{0, 1, 2}, Y: worked.List{0, 1, 2}})), "straight line"},
		{"all in one place", errorOf(CircleFitTaubin(PointsInputs{X: worked.List{1, 1, 1}, Y: worked.List{2, 2, 2}})), "straight line"},
		{"a zigzag along a line", errorOf(CircleFitGeometric(PointsInputs{X: worked.List{0, 1, 2, 3}, Y: worked.List{0, 0.1, 0, 0.1}})), "straight line"},
		{"lists of two lengths", errorOf(EnclosingCircle(PointsInputs{X: worked.List{0, 1, 2}, Y: worked.List{0, 1}})), "each point needs both"},
		{"one point has a circle round it", errorOf(EnclosingCircle(PointsInputs{X: worked.List{3}, Y: worked.List{4}})), ""},
		{"not a number", errorOf(CircleFitPratt(PointsInputs{X: worked.List{0, math.NaN(), 2}, Y: worked.List{0, 1, 0}})), "NaN as number 2"},
		{"half a bore", errorOf(Roundness(RoundnessInputs{ClockDeg: worked.List{0, 30, 60, 90}, RadiusMM: worked.List{50, 50, 50.1, 50}})), "all round"},
		{"both ways of giving points", errorOf(Roundness(RoundnessInputs{X: worked.List{1}, ClockDeg: worked.List{1}})), "one pair"},
		{"no points", errorOf(Roundness(RoundnessInputs{})), "4 to 1000"},
		{"one clock angle", errorOf(BoreFromDiameters(BoreFromDiametersInputs{DepthMM: worked.List{1}, ClockDeg: worked.List{0}, DiameterMM: worked.List{80}})), "2 or more"},
		{"a reading is missing", errorOf(BoreFromDiameters(BoreFromDiametersInputs{DepthMM: worked.List{1, 2}, ClockDeg: worked.List{0, 90}, DiameterMM: worked.List{80, 81, 80}})), "must hold 4"},
		{"depths out of order", errorOf(BoreFromDiameters(BoreFromDiametersInputs{DepthMM: worked.List{2, 1}, ClockDeg: worked.List{0, 90}, DiameterMM: worked.List{80, 81, 80, 80}})), "must rise"},
		{"original larger than worn", errorOf(BoreFromDiameters(BoreFromDiametersInputs{OriginalMM: worked.Some(90), DepthMM: worked.List{1}, ClockDeg: worked.List{0, 90}, DiameterMM: worked.List{80, 81}})), "not smaller than new"},
		{"not worn at all", errorOf(BoreFromDiameters(BoreFromDiametersInputs{OriginalMM: worked.Some(80), DepthMM: worked.List{1}, ClockDeg: worked.List{0, 90}, DiameterMM: worked.List{80, 80}})), ""},
		{"radii over half the bore", errorOf(RadialCleanUp(RadialCleanUpInputs{OriginalMM: 80, ClockDeg: worked.List{0, 90, 180}, RadiusMM: worked.List{40, 41, 40}})), "go round"},
		{"radii from a false axis", errorOf(RadialCleanUp(RadialCleanUpInputs{OriginalMM: 90, ClockDeg: worked.List{0, 120, 240}, RadiusMM: worked.List{40, 41, 40}})), "true axis"},
		{"a radius is missing", errorOf(RadialCleanUp(RadialCleanUpInputs{OriginalMM: 80, ClockDeg: worked.List{0, 120, 240}, RadiusMM: worked.List{40, 41, 40, 41}})), "3 for each depth"},
		{"gauge beside the bore", errorOf(GaugeSettingError(GaugeSettingInputs{DiameterMM: 50, OffsetMM: 20, FlatMM: 10})), "chord_offset"},
		{"gauge laid flat", errorOf(GaugeSettingError(GaugeSettingInputs{DiameterMM: 50, TiltDeg: 60})), "axial_tilt"},
		{"no part of an uncertainty", errorOf(UncertaintyRSS(UncertaintyInputs{Coverage: 2})), "at least one"},
		{"negative part", errorOf(UncertaintyRSS(UncertaintyInputs{Standard: worked.List{-1}, Coverage: 2})), "standard"},
		{"expansion in millionths", errorOf(ThermalSize(ThermalSizeInputs{DiameterMM: 100, AlphaPerK: 11.5, WarmerK: 1})), "alpha"},
	}
	for _, test := range tests {
		if test.says == "" && test.err != nil || test.says != "" && (test.err == nil || !strings.Contains(test.err.Error(), test.says)) {
			t.Errorf("%s: got %v, want %q", test.name, test.err, test.says)
		}
	}
}

func errorOf[T any](_ T, err error) error { return err }

// A fit is trusted from twice its uncertainty on.
func TestFitIsTrustedFromTwiceItsUncertainty(t *testing.T) {
	for _, test := range []struct {
		interference float64
		verdict      string
	}{{-0.01, "gap"}, {0, "gap"}, {0.001, "do_not_press"}, {0.0999, "do_not_press"}, {0.1001, "press"}} {
		out, err := FitUncertainty(FitUncertaintyInputs{BoreMM: 64, BoreU: 0.03, SleeveMM: 64 + test.interference, SleeveU: 0.04, LeastTimes: 2})
		if err != nil || out.Verdict != test.verdict {
			t.Errorf("%g mm of 0.05 mm uncertainty: %s, %v; want %s", test.interference, out.Verdict, err, test.verdict)
		}
	}
}

// Each budget of the list of gauges must come to a figure in its own range.
func TestInstrumentBudgets(t *testing.T) {
	all, err := instruments()
	if err != nil {
		t.Fatal(err)
	}
	budgets := 0
	for _, i := range all {
		if !(i.LeastMM > 0 && i.LeastMM <= i.MostMM) || i.Source == "" || i.HowKnown == "" {
			t.Errorf("%s: %g to %g mm, source %q", i.Instrument, i.LeastMM, i.MostMM, i.Source)
		}
		if _, err := InstrumentUncertainty(InstrumentInputs{Instrument: i.Instrument}); err != nil {
			t.Error(err)
		}
		if i.Budget == nil {
			continue
		}
		budgets++
		out, err := UncertaintyRSS(UncertaintyInputs{Standard: i.Budget.StandardUM, Rectangular: i.Budget.RectangularUM, Coverage: 2})
		if mm := out.ExpandedMM / 1000; err != nil || mm < i.LeastMM || mm > i.MostMM {
			t.Errorf("%s: the budget comes to %g mm, %v; want %g to %g", i.Instrument, mm, err, i.LeastMM, i.MostMM)
		}
	}
	if budgets != 2 {
		t.Errorf("%d budgets, want 2", budgets)
	}
}

func TestMeasuringDoesNotAllocate(t *testing.T) {
	tests := map[string]func() error{
		"GaugeSettingError": func() error {
			return errorOf(GaugeSettingError(GaugeSettingInputs{DiameterMM: 100, TiltDeg: 2}))
		},
		"FitUncertainty": func() error {
			return errorOf(FitUncertainty(FitUncertaintyInputs{BoreMM: 100, BoreU: 0.02, SleeveMM: 100.1, SleeveU: 0.01, LeastTimes: 2}))
		},
		"ThermalSize": func() error {
			return errorOf(ThermalSize(ThermalSizeInputs{DiameterMM: 100, AlphaPerK: 11.5e-6, WarmerK: 40}))
		},
		"InstrumentUncertainty": func() error {
			return errorOf(InstrumentUncertainty(InstrumentInputs{Instrument: "telescoping_gauge"}))
		},
	}
	for name, f := range tests {
		if err := f(); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if n := testing.AllocsPerRun(100, func() { _ = f() }); n != 0 {
			t.Errorf("%s: %g allocations", name, n)
		}
	}
}

func TestDeterminant(t *testing.T) {
	tests := []struct {
		a    [3][3]float64
		want float64
	}{
		{[3][3]float64{{1, 2, 3}, {4, 5, 6}, {7, 8, 10}}, -3},
		{[3][3]float64{{0, 0, 2}, {0, 3, 0}, {5, 0, 0}}, -30},
		{[3][3]float64{{1, 2, 3}, {2, 4, 6}, {1, 1, 1}}, 0},
	}
	for _, test := range tests {
		if got := determinant(test.a); math.Abs(got-test.want) > 1e-12 {
			t.Errorf("%v: %g, want %g", test.a, got, test.want)
		}
	}
}
