package wear_test

import (
	"math"
	"strings"
	"testing"

	"boremend/knowledge/wear"

	"pgregory.net/rapid"
)

func anySleeve(t *rapid.T) wear.SleeveGeometryInputs {
	bore := rapid.Float64Range(20, 300).Draw(t, "bore")
	return wear.SleeveGeometryInputs{
		FinishBoreMM: bore, WornReachMM: bore/2 + rapid.Float64Range(0, 10).Draw(t, "wear"),
		EdgeDistanceMM: bore * rapid.Float64Range(1.4, 3).Draw(t, "edge over bore"), CleanUpMM: rapid.Float64Range(0, 2).Draw(t, "clean up"),
		SleeveWallLeastMM: 5, SleeveWallShare: 0.05,
	}
}

func TestSleeveFitsAndCleansUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anySleeve(t)
		out, err := wear.SleeveGeometry(in)
		if err != nil {
			t.Fatal(err)
		}
		clean, err := wear.CleanUpBore(wear.CleanUpBoreInputs{WornReachMM: in.WornReachMM, CleanUpMM: in.CleanUpMM})
		if err != nil {
			t.Fatal(err)
		}
		least := math.Max(5, 0.05*in.FinishBoreMM)
		if out.SleeveBoreMM < clean.CleanUpBoreMM || out.SleeveWallMM < least-1e-9 {
			t.Fatalf("bore %g for a clean-up bore of %g and a wall of %g", out.SleeveBoreMM, clean.CleanUpBoreMM, out.SleeveWallMM)
		}
		if sum := out.WallAfterSleeveMM + out.SleeveBoreMM/2; math.Abs(sum-in.EdgeDistanceMM) > 1e-9 {
			t.Fatalf("wall and half the bore come to %g, the edge lies at %g", sum, in.EdgeDistanceMM)
		}
		in.WornReachMM += 1
		if more, err := wear.SleeveGeometry(in); err == nil && more.WallAfterSleeveMM > out.WallAfterSleeveMM {
			t.Fatalf("deeper wear leaves more wall: %g after %g", more.WallAfterSleeveMM, out.WallAfterSleeveMM)
		}
	})
}

// TestOneSidedWear is the trap: one bore, worn on one side, seen by both ways of
// measuring.
func TestOneSidedWear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bore := rapid.Float64Range(20, 300).Draw(t, "bore")
		worn := rapid.Float64Range(0.1, 10).Draw(t, "worn")
		bracket, err := wear.CleanUpBracket(wear.CleanUpBracketInputs{FinishBoreMM: bore, WornMaxMM: bore + worn, CleanUpMM: 0.5})
		if err != nil {
			t.Fatal(err)
		}
		clean, err := wear.CleanUpBore(wear.CleanUpBoreInputs{WornReachMM: bore/2 + worn, CleanUpMM: 0.5})
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(clean.CleanUpBoreMM-bracket.MostMM) > 1e-9 || bracket.MostMM-bracket.LeastMM < worn-1e-9 {
			t.Fatalf("clean-up bore %g, bracket %v", clean.CleanUpBoreMM, bracket)
		}
	})
}

func TestBushSeatNeedsNoSleeveWall(t *testing.T) {
	out, err := wear.SleeveGeometry(wear.SleeveGeometryInputs{FinishBoreMM: 110, WornReachMM: 56, EdgeDistanceMM: 98, CleanUpMM: 0.5})
	if err != nil || out.SleeveBoreMM != 113 || out.Governs != "clean_up" {
		t.Errorf("%+v, %v, want the clean-up bore of 113 mm", out, err)
	}
}

func TestRefusals(t *testing.T) {
	_, err := wear.SleeveGeometry(wear.SleeveGeometryInputs{FinishBoreMM: 110, WornReachMM: 98, EdgeDistanceMM: 98, CleanUpMM: 0.5})
	if err == nil || !strings.Contains(err.Error(), "nothing of the ear would be left") {
		t.Errorf("a sleeve as wide as the ear: %v", err)
	}
	_, err = wear.CleanUpBracket(wear.CleanUpBracketInputs{FinishBoreMM: 110, WornMaxMM: 109})
	if err == nil || !strings.Contains(err.Error(), "not smaller than new") {
		t.Errorf("a bore worn smaller: %v", err)
	}
	_, err = wear.WallKept(wear.WallKeptInputs{FinishBoreMM: math.NaN(), SleeveBoreMM: -1, EdgeDistanceMM: math.Inf(1)})
	for _, name := range []string{"finish_bore", "sleeve_bore", "edge_distance"} {
		if err == nil || !strings.Contains(err.Error(), name) {
			t.Errorf("%v does not name %s", err, name)
		}
	}
}

func TestNothingIsAllocated(t *testing.T) {
	sleeve := wear.SleeveGeometryInputs{FinishBoreMM: 110, WornReachMM: 58.9, EdgeDistanceMM: 98, CleanUpMM: 0.5, SleeveWallLeastMM: 5, SleeveWallShare: 0.05}
	kept := wear.WallKeptInputs{FinishBoreMM: 110, SleeveBoreMM: 121, EdgeDistanceMM: 98}
	for name, run := range map[string]func() error{
		"sleeve_geometry": func() error { _, err := wear.SleeveGeometry(sleeve); return err },
		"wall_kept":       func() error { _, err := wear.WallKept(kept); return err },
		"clean_up_bore":   func() error { _, err := wear.CleanUpBore(wear.CleanUpBoreInputs{WornReachMM: 58.9}); return err },
		"clean_up_bracket": func() error {
			_, err := wear.CleanUpBracket(wear.CleanUpBracketInputs{FinishBoreMM: 110, WornMaxMM: 114})
			return err
		},
	} {
		if n := testing.AllocsPerRun(100, func() {
			if err := run(); err != nil {
				t.Fatal(err)
			}
		}); n != 0 {
			t.Errorf("%s allocates %g times", name, n)
		}
	}
}
