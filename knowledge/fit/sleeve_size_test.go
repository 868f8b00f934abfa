package fit_test

import (
	"fmt"
	"math"
	"testing"

	"boremend/knowledge/fit"
)

func ExampleSleeveSize() {
	out, err := fit.SleeveSize(fit.SleeveSizeInputs{SeatDiameterMM: 110, InterferenceMM: 0.09, SleeveIDMM: 98})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("OD %.3f to %.3f mm, nearest %s and %s\n", out.ODLeastMM, out.ODMostMM, out.ISOFit, out.ANSIFit)
	// Output: OD 110.079 to 110.101 mm, nearest H7/t6 and FN3
}

// TestSleeveSizeNearest holds the standard fits to the published tables: on
// 2 in, FN2 has 0.8 to 2.7 thousandths (Machinery's Handbook, table 11); on
// 110 mm, H7/s6 has 44 to 101 micrometres (ISO 286-2 limits H7 +35, s6 +79/+101).
func TestSleeveSizeNearest(t *testing.T) {
	tests := []struct {
		seatMM, interferenceMM float64
		iso, ansi              string
		least, most            float64
	}{
		{50.8, 1.75 * 0.0254, "", "FN2", 0.8 * 0.0254, 2.7 * 0.0254},
		{110, 0.0725, "H7/s6", "", 0.044, 0.101},
	}
	for _, tt := range tests {
		out, err := fit.SleeveSize(fit.SleeveSizeInputs{SeatDiameterMM: tt.seatMM, InterferenceMM: tt.interferenceMM, SleeveIDMM: tt.seatMM * 0.9})
		if err != nil {
			t.Fatal(err)
		}
		least, most := out.ISOLeastMM, out.ISOMostMM
		if tt.ansi != "" {
			least, most = out.ANSILeastMM.Value, out.ANSIMostMM.Value
		}
		if tt.iso != "" && out.ISOFit != tt.iso || tt.ansi != "" && out.ANSIFit != tt.ansi ||
			math.Abs(least-tt.least) > 1e-9 || math.Abs(most-tt.most) > 1e-9 {
			t.Errorf("%v mm: %+v, want %+v", tt.seatMM, out, tt)
		}
	}
}

func TestSleeveSizeRefuses(t *testing.T) {
	for name, in := range map[string]fit.SleeveSizeInputs{
		"loose":           {SeatDiameterMM: 110, InterferenceMM: 0.01, SleeveIDMM: 98},
		"no wall":         {SeatDiameterMM: 110, InterferenceMM: 0.1, SleeveIDMM: 110},
		"beyond ISO 286":  {SeatDiameterMM: 600, InterferenceMM: 0.5, SleeveIDMM: 500},
		"not a number":    {SeatDiameterMM: math.NaN(), InterferenceMM: 0.1, SleeveIDMM: 98},
		"no interference": {SeatDiameterMM: 110, SleeveIDMM: 98},
		"beyond reason":   {SeatDiameterMM: 1e308, InterferenceMM: 1e308, SleeveIDMM: 1},
	} {
		if out, err := fit.SleeveSize(in); err == nil {
			t.Errorf("%s: gives %+v", name, out)
		}
	}
}
