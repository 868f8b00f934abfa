package cases_test

import (
	"slices"
	"testing"

	"boremend/cases"
)

func TestGrid(t *testing.T) {
	bore := cases.Bore{Readings: []cases.Reading{
		{DepthMM: 40, ClockDeg: 90, DiameterMM: 60.2}, {DepthMM: 10, ClockDeg: 0, DiameterMM: 60.5}, {RadiusMM: 31},
		{DepthMM: 10, ClockDeg: 90, DiameterMM: 60.1}, {DepthMM: 40, ClockDeg: 0, DiameterMM: 60.4},
	}}
	g, err := bore.Diameters()
	if err != nil {
		t.Fatal(err)
	}
	if !slices.Equal(g.DepthsMM, []float64{10, 40}) || !slices.Equal(g.ClocksDeg, []float64{0, 90}) || !slices.Equal(g.Values, []float64{60.5, 60.1, 60.4, 60.2}) {
		t.Errorf("laid out as %+v", g)
	}
	if g, err := bore.Radii(); err != nil || !slices.Equal(g.Values, []float64{31}) {
		t.Errorf("radii laid out as %+v, %v", g, err)
	}
	bore.Readings = bore.Readings[1:]
	if _, err := bore.Diameters(); err == nil || err.Error() != "at 40 mm depth and 90 degrees there are 0 readings; every depth needs one at every clock angle" {
		t.Errorf("a hole in the readings gives %v", err)
	}
	if g, err := (cases.Bore{}).Diameters(); err != nil || len(g.Values) > 0 {
		t.Errorf("no readings give %+v, %v", g, err)
	}
}
