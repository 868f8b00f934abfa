package ear_test

import (
	"fmt"
	"math"
	"testing"

	"boremend/knowledge/ear"
)

func ExamplePressAndLoad() {
	out, err := ear.PressAndLoad(ear.PressAndLoadInputs{
		PressHoopMPa: 69, PullMPa: 78, PushMPa: 22, SideMPa: 116, Direction: "both_ways", StrengthMPa: 248,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f MPa, safety %.2f\n", out.Total, out.Safety)
	// Output: 185 MPa, safety 1.34
}

// TestPressAndLoadDirection takes the load from every side: into the solid is the
// mildest, across the worst.
func TestPressAndLoadDirection(t *testing.T) {
	want := map[string]float64{"toward_thin": 147, "toward_thick": 91, "across": 185, "both_ways": 185}
	for direction, total := range want {
		out, err := ear.PressAndLoad(ear.PressAndLoadInputs{PressHoopMPa: 69, PullMPa: 78, PushMPa: 22, SideMPa: 116, Direction: direction, StrengthMPa: 248})
		if err != nil || math.Abs(out.Total-total) > 1e-9 {
			t.Errorf("%s: %v MPa, %v; want %v", direction, out.Total, err, total)
		}
	}
	for name, in := range map[string]ear.PressAndLoadInputs{
		"nowhere":      {PressHoopMPa: 1, PullMPa: 1, PushMPa: 1, SideMPa: 1, Direction: "up", StrengthMPa: 248},
		"nothing":      {Direction: "across", StrengthMPa: 248},
		"no strength":  {PressHoopMPa: 1, Direction: "across"},
		"not a number": {PressHoopMPa: math.NaN(), PullMPa: 1, PushMPa: 1, SideMPa: 1, Direction: "across", StrengthMPa: 248},
	} {
		if out, err := ear.PressAndLoad(in); err == nil {
			t.Errorf("%s: gives %+v", name, out)
		}
	}
}
