package fit_test

import (
	"fmt"
	"math"
	"testing"

	"boremend/knowledge/fit"
)

func ExampleTurnedSleeve() {
	out, err := fit.TurnedSleeve(fit.TurnedSleeveInputs{
		BoreLeastMM: 120.98, BoreMostMM: 121, InterferenceMM: 0.23, FinishBoreMM: 110, HoneMM: 0.127, ClosureMM: 0.18,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("OD %.4f to %.4f, bore %.3f before and %.3f after pressing\n", out.ODLeastMM, out.ODMostMM, out.IDMM, out.IDAfterMM)
	// Output: OD 121.2075 to 121.2325, bore 110.053 before and 109.873 after pressing
}

// TestTurnedSleeveEachToItsOwn takes two bores that came out 0.009 in apart, as
// happens when they are cut at separate settings (common practice, no source):
// their sleeves must differ by just that, and by nothing else.
func TestTurnedSleeveEachToItsOwn(t *testing.T) {
	const apart = 0.009 * 25.4
	size := func(bore float64) fit.TurnedSleeveOutputs {
		out, err := fit.TurnedSleeve(fit.TurnedSleeveInputs{
			BoreLeastMM: bore, BoreMostMM: bore + 0.01, InterferenceMM: 0.15, FinishBoreMM: 80, HoneMM: 0.127, ClosureMM: 0.1,
		})
		if err != nil {
			t.Fatal(err)
		}
		return out
	}
	a, b := size(92), size(92+apart)
	if d := b.ODLeastMM - a.ODLeastMM; math.Abs(d-apart) > 1e-9 {
		t.Errorf("outsides differ by %v, want %v", d, apart)
	}
	if a.IDMM != b.IDMM || math.Abs(a.InterferenceLeast-b.InterferenceLeast) > 1e-9 {
		t.Errorf("the insides or the presses differ: %+v and %+v", a, b)
	}
}

func TestTurnedSleeveRefuses(t *testing.T) {
	good := fit.TurnedSleeveInputs{BoreLeastMM: 92, BoreMostMM: 92.01, InterferenceMM: 0.15, FinishBoreMM: 80, HoneMM: 0.127, ClosureMM: 0.1}
	for name, spoil := range map[string]func(*fit.TurnedSleeveInputs){
		"oval beyond the press": func(in *fit.TurnedSleeveInputs) { in.BoreMostMM = 92.4 },
		"swapped readings":      func(in *fit.TurnedSleeveInputs) { in.BoreMostMM = 91 },
		"no wall":               func(in *fit.TurnedSleeveInputs) { in.FinishBoreMM = 92 },
		"not a number":          func(in *fit.TurnedSleeveInputs) { in.BoreMostMM = math.NaN() },
		"negative hone":         func(in *fit.TurnedSleeveInputs) { in.HoneMM = -1 },
		"beyond the tables":     func(in *fit.TurnedSleeveInputs) { in.BoreMostMM = 1e308 },
		"all closure":           func(in *fit.TurnedSleeveInputs) { in.ClosureMM = 20 },
	} {
		in := good
		spoil(&in)
		if out, err := fit.TurnedSleeve(in); err == nil {
			t.Errorf("%s: gives %+v", name, out)
		}
	}
}
