package ear_test

import (
	"math"
	"strings"
	"testing"

	"boremend/knowledge/ear"
	"boremend/knowledge/worked"
)

// TestStrengthKeptTable holds the shares against figures worked out apart from this
// code, rounded to two places.
func TestStrengthKeptTable(t *testing.T) {
	for _, row := range []struct {
		edge, opened           float64 // over the bore as new
		tension, split, shears float64
	}{
		{0.90, 1.10, .88, .89, .92}, {0.90, 1.15, .81, .84, .88}, {0.90, 1.20, .75, .78, .84}, {0.90, 1.30, .62, .67, .76},
		{1.00, 1.10, .90, .92, .93}, {1.00, 1.15, .85, .88, .89}, {1.00, 1.20, .80, .84, .86}, {1.00, 1.30, .70, .74, .79},
		{1.15, 1.10, .92, .94, .94}, {1.15, 1.15, .88, .91, .91}, {1.15, 1.20, .85, .88, .88}, {1.15, 1.30, .77, .82, .83},
	} {
		const bore = 60
		out := must(t, ear.StrengthKept, ear.StrengthKeptInputs{FinishBoreMM: bore, SleeveBoreMM: bore * row.opened, EdgeDistanceMM: bore * row.edge})
		got := [3]float64{out.Tension, out.Splitting, out.Shear}
		for i, want := range [3]float64{row.tension, row.split, row.shears} {
			if math.Abs(got[i]-want) > 0.0051 {
				t.Errorf("R/d %g, bore times %g: figure %d is %.4f, want %.2f", row.edge, row.opened, i+1, got[i], want)
			}
		}
	}
}

// TestZeroSlackContact holds the neat pin against the published limit: an arc of 84.8
// degrees either side and 1.20 times the mean (Persson, from memory).
func TestZeroSlackContact(t *testing.T) {
	out := must(t, ear.ConformalContact, ear.ConformalContactInputs{BoreMM: 80, ForceN: 250e3, LengthMM: 100, ModulusMPa: 210000})
	if math.Abs(out.HalfAngleDeg-84.8) > 0.1 || math.Abs(out.PeakOverMean-1.20) > 0.005 {
		t.Errorf("arc %g degrees, peak %g times the mean", out.HalfAngleDeg, out.PeakOverMean)
	}
}

// TestMuchSlackIsHertz compares small arcs with line contact after Hertz in plane
// stress: p = sqrt[F E/(4 pi R^2 L/c)] for like materials and radii that differ by c.
func TestMuchSlackIsHertz(t *testing.T) {
	const bore, slack, force, length, modulus = 80.0, 2.0, 20e3, 100.0, 210000.0
	out := must(t, ear.ConformalContact, ear.ConformalContactInputs{BoreMM: bore, ClearanceMM: slack, ForceN: force, LengthMM: length, ModulusMPa: modulus})
	difference := slack / (bore / 2 * bore / 2) // 1/(R - c) - 1/R, for c small against R
	hertz := math.Sqrt(force / length * modulus / 2 * difference / math.Pi)
	if off := out.PeakMPa/hertz - 1; math.Abs(off) > 0.02 {
		t.Errorf("peak %g MPa, Hertz %g MPa", out.PeakMPa, hertz)
	}
}

// TestFlangeRingAgainstThePlateEquation integrates the slope of the ring outward by
// small steps and finds the root moment by superposition.
func TestFlangeRingAgainstThePlateEquation(t *testing.T) {
	const thrust, b, a, load, h, nu = 60e3, 45.0, 55.0, 51.0, 8.0, 0.3
	out := must(t, ear.FlangeRing, ear.FlangeRingInputs{
		ThrustN: thrust, SleeveODMM: 2 * b, FlangeODMM: 2 * a, FlangeMM: h, LoadRadiusMM: worked.Some(load), CounterMM: 92, Poisson: nu,
	})
	// Slope s with s(b) = 0 and a trial curvature; the moment at the free edge must
	// vanish. In units of the plate stiffness: s” = -s'/r + s/r^2 - Q(r).
	edge := func(curvature, shear float64) float64 {
		s, ds, r := 0.0, curvature, b
		const steps = 200000
		step := (a - b) / steps
		second := func(r, s, ds float64) float64 {
			q := 0.0
			if r < load {
				q = shear / (2 * math.Pi * r)
			}
			return -ds/r + s/(r*r) - q
		}
		for range steps {
			mid := ds + step/2*second(r, s, ds)
			middle := second(r+step/2, s+step/2*ds, mid)
			s, ds, r = s+step*mid, ds+step*middle, r+step
		}
		return ds + nu*s/a
	}
	particular, homogeneous := edge(0, thrust), edge(1, 0)
	root := -particular / homogeneous
	if off := out.MomentN/root - 1; math.Abs(off) > 1e-3 {
		t.Errorf("root moment %g, the plate equation gives %g", out.MomentN, root)
	}
}

func TestOutsideTheRange(t *testing.T) {
	for name, run := range map[string]func() error{
		"0.25 to 1.5": func() error {
			_, err := ear.LugLoad(ear.LugLoadInputs{BoreMM: 80, EndRadiusMM: 49, ThicknessMM: 30, ForceN: 1})
			return err
		},
		"safe bound": func() error {
			_, err := ear.LugLoad(ear.LugLoadInputs{BoreMM: 80, EndRadiusMM: 101, ThicknessMM: 30, ForceN: 1})
			return err
		},
		"quarter of the end radius": func() error {
			_, err := ear.LugLoad(ear.LugLoadInputs{BoreMM: 80, EndRadiusMM: 72, OffsetAcrossMM: 19, ThicknessMM: 30, ForceN: 1})
			return err
		},
		"more than the ear has": func() error {
			_, err := ear.LugLoad(ear.LugLoadInputs{BoreMM: 80, EndRadiusMM: 72, MinWallMM: worked.Some(33), ThicknessMM: 30, ForceN: 1})
			return err
		},
		"twice edge_distance": func() error {
			_, err := ear.StrengthKept(ear.StrengthKeptInputs{FinishBoreMM: 80, SleeveBoreMM: 160, EdgeDistanceMM: 80})
			return err
		},
		"0.94 of the hole": func() error {
			_, err := ear.PadeyeDNV(ear.PadeyeDNVInputs{Edition: "2.7-3", ForceN: 1e5, ThicknessMM: 20, HoleMM: 50, EdgeRadiusMM: 60, ModulusMPa: 210000, PinMM: worked.Some(45)})
			return err
		},
		"all three or none": func() error {
			_, err := ear.PadeyeDNV(ear.PadeyeDNVInputs{Edition: "2.7-3", ForceN: 1e5, ThicknessMM: 20, HoleMM: 50, EdgeRadiusMM: 60, ModulusMPa: 210000, PlateMM: worked.Some(20)})
			return err
		},
		"no load to judge": func() error {
			_, err := ear.LugOblique(ear.LugObliqueInputs{AxialMostN: 1, TransverseMostN: 1, FittingFactor: 1, ThicknessShare: 1})
			return err
		},
	} {
		if err := run(); err == nil || !strings.Contains(err.Error(), name) {
			t.Errorf("%v, want a refusal that says %q", err, name)
		}
	}
}

// TestEverySheetWarns asks that no sheet goes out without saying what is not covered.
func TestEverySheetWarns(t *testing.T) {
	for _, c := range ear.Calculations() {
		values := map[string]worked.Value{}
		for _, f := range c.Inputs {
			if text, ok := c.Example[f.Name]; ok {
				v, err := f.Parse(text)
				if err != nil {
					t.Fatal(err)
				}
				values[f.Name] = v
			}
		}
		sheet, err := c.Run(values)
		if err != nil {
			t.Fatal(err)
		}
		if len(sheet.Warnings) == 0 || !strings.Contains(sheet.Warnings[0], "fatigue") {
			t.Errorf("%s: first warning is %q", c.Name, sheet.Warnings)
		}
	}
}
