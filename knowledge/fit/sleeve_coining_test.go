package fit_test

import (
	"fmt"
	"testing"

	"boremend/knowledge/fit"
)

func ExampleSleeveCoining() {
	out, err := fit.SleeveCoining(fit.SleeveCoiningInputs{PeakMPa: 86, YieldMPa: 655, WallMM: 6, FinishBoreMM: 120})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("safety %.2f, wall %s\n", out.Safety, out.Wall)
	// Output: safety 3.81, wall good
}

// TestSleeveWalls holds the verdict to the walls of the trade: 3/16 in preferred,
// 1/8 in coins out (common practice, no source).
func TestSleeveWalls(t *testing.T) {
	for _, tt := range []struct {
		wallIn, boreIn float64
		want           string
	}{
		{3.0 / 16, 2.5, "good"}, {5.0 / 32, 2.5, "thin"}, {1.0 / 8, 2.5, "coins"}, {0.1, 2.5, "coins"},
		{3.0 / 16, 5, "coins"}, {0.25, 5, "good"},
	} {
		out, err := fit.SleeveCoining(fit.SleeveCoiningInputs{PeakMPa: 50, YieldMPa: 655, WallMM: tt.wallIn * 25.4, FinishBoreMM: tt.boreIn * 25.4})
		if err != nil || out.Wall != tt.want {
			t.Errorf("%v in of wall on %v in: %s, %v; want %s", tt.wallIn, tt.boreIn, out.Wall, err, tt.want)
		}
	}
	for name, in := range map[string]fit.SleeveCoiningInputs{
		"no wall": {PeakMPa: 50, YieldMPa: 655, FinishBoreMM: 60}, "a boss": {PeakMPa: 50, YieldMPa: 655, WallMM: 40, FinishBoreMM: 60},
		"no pressure": {YieldMPa: 655, WallMM: 5, FinishBoreMM: 60},
	} {
		if out, err := fit.SleeveCoining(in); err == nil {
			t.Errorf("%s: gives %+v", name, out)
		}
	}
}
