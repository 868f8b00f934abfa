package cut

import (
	"strings"
	"testing"

	"boremend/knowledge/worked"
)

func errorOf[T any](_ T, err error) error { return err }

// What lies outside a formula's range is refused with the reason, and the last
// value inside is taken.
func TestRefusals(t *testing.T) {
	kc := func(feed, entering float64) error {
		return errorOf(KienzleKC(KienzleKCInputs{KC11MPa: 1800, MC: 0.2, FeedMM: feed, EnteringDeg: entering, PercentPerDeg: 1}))
	}
	raked := func(rake float64) error {
		return errorOf(KienzleKC(KienzleKCInputs{KC11MPa: 1800, MC: 0.2, FeedMM: 0.2, EnteringDeg: 90, RakeDeg: worked.Some(rake), ReferenceDeg: -20, PercentPerDeg: 2}))
	}
	held := func(overhang, force float64) error {
		return errorOf(BarCantilever(BarCantileverInputs{BarMM: 50, OverhangMM: overhang, ModulusMPa: 207e3, ForceN: force}))
	}
	between := func(toolAt, bore float64) error {
		return errorOf(BarBetweenSupports(BarSupportsInputs{BarMM: 50, BarBoreMM: bore, SpanMM: 800, ToolAtMM: toolAt, ModulusMPa: 207e3, ForceN: 100}))
	}
	finish := func(feed float64, side, end worked.Optional) error {
		return errorOf(SurfaceFinish(SurfaceFinishInputs{FeedMM: feed, NoseMM: worked.Some(0.4), SideDeg: side, EndDeg: end}))
	}
	timed := func(in CutTimeInputs) error {
		in.LengthMM, in.FeedMM = 100, 0.2
		return errorOf(CutTime(in))
	}
	rate := func(finish float64, feed, axial worked.Optional) error {
		return errorOf(TurningRate(TurningRateInputs{StartMM: 90, FinishMM: finish, RPM: 60, FeedMM: feed, AxialMPerMin: axial, SpecificMPa: 2000}))
	}
	tacks := func(legs float64) error {
		return errorOf(TackGroup(TackGroupInputs{ReactionN: 1, StandoffMM: 1, Legs: legs, LegRadiusMM: 10, AllowableMPa: 55, WeldLegMM: 6}))
	}
	hole := func(raw, bar float64) error {
		return errorOf(BarClearance(BarClearanceInputs{RawMM: raw, BarMM: bar, ProjectionMM: 5, SettingMM: 1, ChipRoomMM: 4}))
	}
	some, none := worked.Some, worked.Optional{}
	tests := []struct {
		name string
		err  error
		says string // empty: accepted
	}{
		{"thinnest chip", kc(0.05, 90), ""},
		{"chip too thin", kc(0.049, 90), "0.11 to 1.13"},
		{"thickest chip", kc(1.6, 90), ""},
		{"chip too thick", kc(1.61, 90), "0.11 to 1.13"},
		{"chip thinned by the angle", kc(0.06, 45), "0.11 to 1.13"},
		{"no entering angle", kc(0.2, 5), "entering_angle"},
		{"rake that can be corrected for", raked(4), ""},
		{"rake too far from the table", raked(6), "too far to correct"},
		{"overhang of one diameter", held(50, 10), ""},
		{"overhang shorter than the bar is thick", held(49, 10), "beam formulas"},
		{"force that would fold the bar", held(500, 1e6), "small bends"},
		{"tool in the bearing", between(800, 0), "must be below span"},
		{"tube", between(400, 40), ""},
		{"tube without a wall", between(400, 50), "bar_bore"},
		{"feed as large as the nose", finish(0.4, none, none), ""},
		{"feed larger than the nose", finish(0.41, none, none), "arcs"},
		{"a sharp point alone", errorOf(SurfaceFinish(SurfaceFinishInputs{FeedMM: 0.2, SideDeg: some(20), EndDeg: some(10)})), ""},
		{"no point at all", errorOf(SurfaceFinish(SurfaceFinishInputs{FeedMM: 0.2})), "nose_radius"},
		{"half of a sharp point", finish(0.2, some(20), none), "belong together"},
		{"revolutions", timed(CutTimeInputs{SpindleRPM: some(60)}), ""},
		{"no speed at all", timed(CutTimeInputs{}), "one of the two"},
		{"two speeds", timed(CutTimeInputs{SpindleRPM: some(60), SpeedMPerMin: some(20), DiameterMM: some(100)}), "one of the two"},
		{"speed without a diameter", timed(CutTimeInputs{SpeedMPerMin: some(20)}), "diameter"},
		{"stock without depths", timed(CutTimeInputs{SpindleRPM: some(60), StockMM: some(4)}), "belong together"},
		{"half a spring pass", timed(CutTimeInputs{SpindleRPM: some(60), SpringPasses: 0.5}), "whole number"},
		{"boring by feed", rate(100, some(0.2), none), ""},
		{"turning by axial speed", rate(80, none, some(0.2)), ""},
		{"nothing cut", rate(90, some(0.2), none), "nothing is cut"},
		{"feed and axial speed", rate(100, some(0.2), some(0.2)), "one of the two"},
		{"neither speed", errorOf(SpindleSpeed(SpindleSpeedInputs{DiameterMM: 100})), "one of the two"},
		{"three legs", tacks(3), ""},
		{"two legs", tacks(2), "legs"},
		{"three and a half legs", tacks(3.5), "whole number"},
		{"a bar that strikes is an answer", hole(60, 60), ""},
		{"no room for any bar", hole(12, 10), "no room for any bar"},
		{"one cell of a row", errorOf(KienzleFit(KienzleFitInputs{FeedMM: worked.List{0.2}, KCMPa: worked.List{3000}, EnteringDeg: 90})), "two or more"},
		{"one feed twice", errorOf(KienzleFit(KienzleFitInputs{FeedMM: worked.List{0.2, 0.2}, KCMPa: worked.List{3000, 3100}, EnteringDeg: 90})), "two different"},
		{"frequency beyond any bar", errorOf(BarMinDiameter(BarMinDiameterInputs{Support: "cantilever", LengthMM: 100, ModulusMPa: 207e3, DensityKGM3: 7850, FrequencyHz: 1e5})), "beam formulas"},
		{"bore that shrinks", errorOf(BoringPasses(BoringPassesInputs{BeforeMM: 100, AfterMM: 99, LengthMM: 80, RoughMM: 1, FinishMM: 0.3, RoughFeedMM: 0.2, FinishFeedMM: 0.1, SpeedMPerMin: 20})), "bore_before"},
		{"metal that is not in the list", errorOf(CuttingData(CuttingDataInputs{Work: "cheese", Tool: "hss", ChipMM: 0.2})), "work"},
	}
	for _, test := range tests {
		if test.says == "" && test.err != nil || test.says != "" && (test.err == nil || !strings.Contains(test.err.Error(), test.says)) {
			t.Errorf("%s: got %v, want %q", test.name, test.err, test.says)
		}
	}
}

// What fits and what does not, at the edge of each.
func TestClearanceVerdicts(t *testing.T) {
	for _, test := range []struct {
		bar, tool float64
		verdict   string
	}{{80, 3, "clears"}, {92, 2, "chips_jam"}, {70, 14, "tool_strikes"}, {98, 0, "bar_strikes"}, {90, 0, "clears"}} {
		out, err := BarClearance(BarClearanceInputs{RawMM: 100, BarMM: test.bar, ProjectionMM: test.tool, SettingMM: 1, ChipRoomMM: 4})
		if err != nil || out.Verdict != test.verdict {
			t.Errorf("bar %g, tool %g: %s, %v; want %s", test.bar, test.tool, out.Verdict, err, test.verdict)
		}
		largest, err := BarClearance(BarClearanceInputs{RawMM: 100, BarMM: out.LargeMM, ProjectionMM: test.tool, SettingMM: 1, ChipRoomMM: 4})
		if err != nil || largest.GapMM < 4-1e-9 || largest.ToolMM < -1e-9 {
			t.Errorf("the largest bar %g leaves %g and %g mm, %v", out.LargeMM, largest.GapMM, largest.ToolMM, err)
		}
	}
}

func TestBearingRoomVerdicts(t *testing.T) {
	for _, test := range []struct {
		near, far float64
		verdict   string
	}{{300, 90, "fits"}, {90, 300, "turn_round"}, {300, 80, "far_too_short"}, {200, 90, "near_too_short"}, {80, 80, "both_too_short"}, {80, 300, "near_too_short"}} {
		out, err := BearingRoom(BearingRoomInputs{LengthMM: 80, OverrunMM: 10, GapMM: 20, BearingMM: 60, NearMM: test.near, FarMM: test.far, DriveMM: 200})
		if err != nil || out.Verdict != test.verdict {
			t.Errorf("%g and %g mm: %s, %v; want %s", test.near, test.far, out.Verdict, err, test.verdict)
		}
	}
}
