package ear_test

import (
	"fmt"
	"math"
	"testing"

	"boremend/knowledge/ear"
)

// cosine is the pressure of a neat pin that presses in a direction.
func cosine(direction float64) func(float64) float64 {
	return func(angle float64) float64 { return max(math.Cos(angle-direction), 0) }
}

// line is the pressure of a pin that touches on three degrees either side.
func line(direction float64) func(float64) float64 {
	const half = 3 * math.Pi / 180
	return func(angle float64) float64 {
		off := math.Abs(math.Remainder(angle-direction, 2*math.Pi)) / half
		return math.Sqrt(max(1-off*off, 0))
	}
}

// TestLugFactorsAgainstFiniteElements solves ears of five shapes afresh and compares
// the stress factors of every direction.
func TestLugFactorsAgainstFiniteElements(t *testing.T) {
	const bore, force, thickness = 80.0, 100e3, 25.0
	for _, k := range []float64{1.25, 1.35, 1.6, 2.0, 2.5} {
		t.Run(fmt.Sprintf("k%.2f", k), func(t *testing.T) {
			model := newEarModel(bore/2, k*bore/2, 96, 14)
			for degrees := 0.0; degrees <= 180; degrees += 7.5 {
				out, err := ear.LugLoadDirection(ear.LugLoadDirectionInputs{
					BoreMM: bore, EndRadiusMM: k * bore / 2, ThicknessMM: thickness, ForceN: force, AngleDeg: degrees,
				})
				if err != nil {
					t.Fatal(err)
				}
				want := model.factor(cosine(degrees * math.Pi / 180))
				least, most := allowedOff(k, degrees)
				if off := out.K/want - 1; off < least || off > most {
					t.Errorf("%g degrees: K is %.3f, finite elements give %.3f (%+.1f %%)", degrees, out.K, want, 100*off)
				}
				if out.KWorst < 0.98*want {
					t.Errorf("%g degrees: finite elements give %.3f, more than the worst direction with %.3f", degrees, want, out.KWorst)
				}
			}
		})
	}
}

// allowedOff is how far the factors may lie from finite elements: little at the rows
// of the table, more where they are joined by a straight line, and on the safe side
// for ears too thin for the fit.
func allowedOff(k, degrees float64) (least, most float64) {
	least, most = -0.015, 0.015
	if math.Mod(degrees, 15) != 0 {
		least, most = -0.02, 0.02
	}
	if degrees > 165 && degrees < 180 {
		most = 0.08
	}
	if k < 1.35 {
		most += 0.03
	}
	return least, most
}

// TestSlackIsCoveredByLineContact checks the most that slack can do, and that no
// narrower or wider contact does more.
func TestSlackIsCoveredByLineContact(t *testing.T) {
	const bore = 80.0
	for _, k := range []float64{1.25, 1.35, 1.6, 2.0, 2.5} {
		model := newEarModel(bore/2, k*bore/2, 96, 14)
		for _, at := range []struct {
			direction string
			angle     float64
		}{{"pull", 0}, {"side", math.Pi / 2}} {
			out, err := ear.LugContact(ear.LugContactInputs{
				BoreMM: bore, EndRadiusMM: k * bore / 2, ThicknessMM: 25, ForceN: 100e3, ClearanceMM: 3, Direction: at.direction, ModulusMPa: 205000,
			})
			if err != nil {
				t.Fatal(err)
			}
			touching, neat := model.factor(line(at.angle)), model.factor(cosine(at.angle))
			if off := out.K/touching - 1; off < -0.01 || off > 0.05 {
				t.Errorf("R/r %g, %s: K is %.3f, line contact gives %.3f (%+.1f %%)", k, at.direction, out.K, touching, 100*off)
			}
			if neat > touching {
				t.Errorf("R/r %g, %s: a neat pin gives %.3f, more than line contact with %.3f", k, at.direction, neat, touching)
			}
		}
	}
}
