package cut

import (
	"testing"

	"boremend/knowledge/worked"
)

// No calculation that takes no list may allocate when its inputs are in order.
func TestNothingIsAllocated(t *testing.T) {
	some := worked.Some
	tests := map[string]func() error{
		"BoringSetup": func() error { return errorOf(BoringSetup(usualSetup())) },
		"CuttingData": func() error {
			return errorOf(CuttingData(CuttingDataInputs{Work: "grey_iron", Tool: "hss", ChipMM: 0.2}))
		},
		"KienzleKC": func() error {
			return errorOf(KienzleKC(KienzleKCInputs{KC11MPa: 1800, MC: 0.2, FeedMM: 0.2, EnteringDeg: 90, PercentPerDeg: 1}))
		},
		"KienzleRatio": func() error {
			return errorOf(KienzleRatio(KienzleRatioInputs{MC: 0.2, BeforeDeg: 60, AfterDeg: 90}))
		},
		"CuttingForce": func() error {
			return errorOf(CuttingForce(CuttingForceInputs{KCMPa: 2400, DepthMM: 1, FeedMM: 0.2, RadialShare: 0.3, FeedShare: 0.6}))
		},
		"CuttingPower": func() error {
			return errorOf(CuttingPower(CuttingPowerInputs{KCMPa: 2400, DepthMM: 1, FeedMM: 0.2, SpeedMPerMin: 20, Efficiency: 0.7, BoreMM: some(100)}))
		},
		"TurningRate": func() error {
			return errorOf(TurningRate(TurningRateInputs{StartMM: 90, FinishMM: 92, RPM: 60, FeedMM: some(0.2), SpecificMPa: 2000, LengthMM: some(80)}))
		},
		"SpindleSpeed": func() error {
			return errorOf(SpindleSpeed(SpindleSpeedInputs{DiameterMM: 100, SpeedMPerMin: some(20)}))
		},
		"SurfaceFinish": func() error {
			return errorOf(SurfaceFinish(SurfaceFinishInputs{FeedMM: 0.2, NoseMM: some(0.4), SideDeg: some(20), EndDeg: some(10)}))
		},
		"CutTime": func() error {
			return errorOf(CutTime(CutTimeInputs{LengthMM: 80, FeedMM: 0.2, SpindleRPM: some(60), StockMM: some(4), RoughMM: some(1), FinishMM: some(0.3)}))
		},
		"BoringPasses": func() error {
			return errorOf(BoringPasses(BoringPassesInputs{BeforeMM: 92, AfterMM: 100, LengthMM: 80, RoughMM: 1, FinishMM: 0.3, RoughFeedMM: 0.2, FinishFeedMM: 0.1, SpeedMPerMin: 20}))
		},
		"BarSection": func() error { return errorOf(BarSection(BarSectionInputs{BarMM: 50, DensityKGM3: 7850})) },
		"BarCantilever": func() error {
			return errorOf(BarCantilever(BarCantileverInputs{BarMM: 50, OverhangMM: 200, ModulusMPa: 207e3, ForceN: 1000}))
		},
		"BarBetweenSupports": func() error {
			return errorOf(BarBetweenSupports(BarSupportsInputs{BarMM: 50, SpanMM: 800, ToolAtMM: 300, ModulusMPa: 207e3, ForceN: 1000}))
		},
		"BarOverhung": func() error {
			return errorOf(BarOverhung(BarOverhungInputs{BarMM: 50, SpanMM: 800, OverhangMM: 150, ModulusMPa: 207e3, ForceN: 1000}))
		},
		"BarSag": func() error {
			return errorOf(BarSag(BarSagInputs{BarMM: 50, SpanMM: 800, ModulusMPa: 207e3, DensityKGM3: 7850}))
		},
		"BarFrequency": func() error {
			return errorOf(BarFrequency(BarFrequencyInputs{Support: "fixed", BarMM: 50, LengthMM: 800, ModulusMPa: 207e3, DensityKGM3: 7850}))
		},
		"BarMinDiameter": func() error {
			return errorOf(BarMinDiameter(BarMinDiameterInputs{Support: "fixed", LengthMM: 800, ModulusMPa: 207e3, DensityKGM3: 7850, FrequencyHz: 150}))
		},
		"BarLDEquivalent": func() error { return errorOf(BarLDEquivalent(BarLDInputs{CantileverLD: 4})) },
		"ChatterLimit": func() error {
			return errorOf(ChatterLimit(ChatterLimitInputs{Stiffness: 5000, Damping: 0.02, RadialMPa: 600}))
		},
		"ErrorCopy": func() error {
			return errorOf(ErrorCopy(ErrorCopyInputs{KCMPa: 2000, FeedMM: 0.2, RadialShare: 0.3, DepthMM: 1, Stiffness: 5000, RunoutMM: 1, Passes: 2, TargetMM: some(0.01)}))
		},
		"TackGroup": func() error {
			return errorOf(TackGroup(TackGroupInputs{ReactionN: 1200, StandoffMM: 90, Legs: 3, LegRadiusMM: 80, AllowableMPa: 55, WeldLegMM: 6}))
		},
		"FilletStrength": func() error {
			return errorOf(FilletStrength(FilletStrengthInputs{LegMM: 6, ElectrodeMPa: 480, Share: 0.3}))
		},
		"BarClearance": func() error {
			return errorOf(BarClearance(BarClearanceInputs{RawMM: 92, BarMM: 60, ProjectionMM: 5, SettingMM: 1, ChipRoomMM: 4}))
		},
		"BearingRoom": func() error {
			return errorOf(BearingRoom(BearingRoomInputs{LengthMM: 80, BearingMM: 60, NearMM: 400, FarMM: 150}))
		},
	}
	if want := len(Calculations()) - 1; len(tests) != want { // kienzle_fit takes lists
		t.Errorf("%d calculations are tested, want %d", len(tests), want)
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
