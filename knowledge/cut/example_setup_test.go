package cut_test

import (
	"fmt"

	"boremend/knowledge/cut"
	"boremend/knowledge/worked"
)

func ExampleChatterLimit() {
	out, err := cut.ChatterLimit(cut.ChatterLimitInputs{Stiffness: 226000, Damping: 0.012, RadialMPa: 1000})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", out.DepthMM)
	// Output: 5.49 mm
}

func ExampleErrorCopy() {
	out, err := cut.ErrorCopy(cut.ErrorCopyInputs{KCMPa: 2000, FeedMM: 0.25, RadialShare: 0.3, DepthMM: 1, Stiffness: 5954, RunoutMM: 2, Passes: 1})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("leaves %.1f %%: %.3f mm of runout, %.3f mm undersize\n", 100*out.Factor, out.AfterMM, out.SmallMM)
	// Output: leaves 2.5 %: 0.049 mm of runout, 0.049 mm undersize
}

func ExampleTackGroup() {
	out, err := cut.TackGroup(cut.TackGroupInputs{ReactionN: 1200, StandoffMM: 90, Legs: 3, LegRadiusMM: 80, ThrustN: 400, TorqueNM: 100, AllowableMPa: 55, WeldLegMM: 6})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("strength asks for %.1f mm, weld %.0f mm at each leg\n", out.StrengthMM, out.LengthMM)
	// Output: strength asks for 5.6 mm, weld 24 mm at each leg
}

// A sixteenth of an inch of E70.
func ExampleFilletStrength() {
	out, err := cut.FilletStrength(cut.FilletStrengthInputs{LegMM: 25.4 / 16, ElectrodeMPa: 482.633, Share: 0.3})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f kip/in\n", out.PerMM*25.4/4448.2216)
	// Output: 0.928 kip/in
}

// Cutting is the small part.
func ExampleBoringPasses() {
	out, err := cut.BoringPasses(cut.BoringPassesInputs{
		BeforeMM: 92, AfterMM: 100, LengthMM: 80, OverrunMM: 10, RoughMM: 1.5, FinishMM: 0.5, RoughFeedMM: 0.25, FinishFeedMM: 0.15,
		SpeedMPerMin: 50, HandlingS: worked.Some(360),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f passes, %.0f min of cutting, %.0f min in all\n", out.Passes, out.CutS/60, out.TotalS.Value/60)
	// Output: 4 passes, 10 min of cutting, 34 min in all
}

func ExampleBarClearance() {
	out, err := cut.BarClearance(cut.BarClearanceInputs{RawMM: 92, OffsetMM: 2, BarMM: 60, ProjectionMM: 5, SettingMM: 1, ChipRoomMM: 4})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s, %.0f mm beyond the tool, largest bar %.0f mm\n", out.Verdict, out.ToolMM, out.LargeMM)
	// Output: clears, 8 mm beyond the tool, largest bar 76 mm
}

func ExampleBearingRoom() {
	out, err := cut.BearingRoom(cut.BearingRoomInputs{LengthMM: 80, OverrunMM: 10, GapMM: 20, BearingMM: 60, NearMM: 400, FarMM: 150, DriveMM: 220})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s, span %.0f mm\n", out.Verdict, out.SpanMM)
	// Output: fits, span 200 mm
}

// A slender bar over a welded bore: it stays small and may chatter.
func ExampleBoringSetup() {
	out, err := cut.BoringSetup(cut.BoringSetupInputs{
		Work: "weld_deposit_carbon", Tool: "carbide", BeforeMM: 92, AfterMM: 100, LengthMM: 80, SpanMM: 800, BarMM: 50, Bearings: "self_aligning",
		DepthMM: 1.5, FeedMM: 0.25, FinishMM: 0.5, FinishFeedMM: 0.15, EnteringDeg: 90, NoseMM: 0.4, InternalK: 1.2, WearK: 1.3, InterruptK: 1.25,
		RadialShare: 0.3, FeedShare: 0.6, Efficiency: 0.7, Damping: 0.02, ModulusMPa: 207000, DensityKGM3: 7850, OverrunMM: 10, AllowedMM: 0.02,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N, %.0f N m, %.1f kW, bends %.2f mm\n", out.CuttingN, out.TorqueNM, out.MotorKW, out.DeflectionMM)
	fmt.Printf("undersize %.3f mm, after %.0f spring pass %.3f mm; %s above %.2f mm\n", out.SmallMM, out.SpringPasses, out.LeftMM, out.Chatter, out.ChatterMM)
	fmt.Printf("%.0f passes, %.0f min of cutting\n", out.Passes, out.CutS/60)
	// Output:
	// 2325 N, 116 N m, 2.2 kW, bends 0.41 mm
	// undersize 0.059 mm, after 1 spring pass 0.003 mm; may_chatter above 0.13 mm
	// 5 passes, 18 min of cutting
}
