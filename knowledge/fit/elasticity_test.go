package fit

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Lame's formulas against a numerical solution of the equations that they solve.
// In plane stress, with u the radial displacement and s the radial stress,
//
//	u' = (1-nu^2) s/E - nu u/r       (Hooke's law)
//	s' = (t - s)/r, t = nu s + E u/r (equilibrium; t is the hoop stress)
//
// A ring with one free face is marched from that face, where s = 0 and u is
// scaled to 1, to the seat. Each ring then gives u = slope * s at the seat, and
// both together must make up the interference.

// march solves a ring from the free radius to the seat radius with RK4 and
// returns displacement and stresses at the seat for u = 1 at the free face.
func march(e, nu, free, seat float64) (u, radial, hoop float64) {
	const steps = 2000
	h := (seat - free) / steps
	slope := func(r, u, s float64) (float64, float64) {
		t := nu*s + e*u/r
		return (1-nu*nu)*s/e - nu*u/r, (t - s) / r
	}
	u, s := 1.0, 0.0
	for i := range steps {
		r := free + float64(i)*h
		u1, s1 := slope(r, u, s)
		u2, s2 := slope(r+h/2, u+h/2*u1, s+h/2*s1)
		u3, s3 := slope(r+h/2, u+h/2*u2, s+h/2*s2)
		u4, s4 := slope(r+h, u+h*u3, s+h*s3)
		u += h / 6 * (u1 + 2*u2 + 2*u3 + u4)
		s += h / 6 * (s1 + 2*s2 + 2*s3 + s4)
	}
	return u, s, nu*s + e*u/seat
}

func TestLameAgreesWithTheEquationsOfElasticity(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawRings(t)
		got, err := PressFitPressure(in)
		if err != nil {
			t.Fatal(err)
		}
		r := in.SeatDiameterMM / 2
		hubU, hubS, hubT := march(in.HubEMPa, in.HubNu, in.HubODMM/2, r)
		sleeveU, sleeveS, sleeveT := march(in.SleeveEMPa, in.SleeveNu, in.SleeveIDMM/2, r)
		// -p = hubS a = sleeveS b, and hubU a - sleeveU b = interference/2.
		p := -in.InterferenceMM / 2 / (hubU/hubS - sleeveU/sleeveS)
		a, b := -p/hubS, -p/sleeveS
		near(t, "pressure", got.PressureMPa, p)
		near(t, "hub hoop at seat", got.HubHoopAtSeatMPa, hubT*a)
		near(t, "hub hoop outside", got.HubHoopAtODMPa, in.HubEMPa*a/(in.HubODMM/2))
		near(t, "sleeve hoop at seat", got.SleeveHoopAtSeat, sleeveT*b)
		near(t, "sleeve hoop at bore", got.SleeveHoopAtIDMPa, in.SleeveEMPa*b/(in.SleeveIDMM/2))
		near(t, "bore closure", got.BoreClosureMM, -2*b)
		near(t, "hub growth outside", got.HubODGrowthMM, 2*a)
		near(t, "hub growth at seat", got.HubBoreGrowthMM, 2*hubU*a)
	})
}

// drawRings draws a sleeve and a hub such as are met: walls from 3 % of the
// seat to ten times, metals from magnesium to carbide.
func drawRings(t *rapid.T) PressFitPressureInputs {
	d := rapid.Float64Range(20, 400).Draw(t, "d")
	return PressFitPressureInputs{
		SeatDiameterMM: d,
		HubODMM:        d * rapid.Float64Range(1.06, 6).Draw(t, "D/d"),
		SleeveIDMM:     d * rapid.Float64Range(0.3, 0.94).Draw(t, "d_i/d"),
		HubEMPa:        rapid.Float64Range(45e3, 600e3).Draw(t, "E_h"),
		HubNu:          rapid.Float64Range(0.15, 0.4).Draw(t, "nu_h"),
		SleeveEMPa:     rapid.Float64Range(45e3, 600e3).Draw(t, "E_s"),
		SleeveNu:       rapid.Float64Range(0.15, 0.4).Draw(t, "nu_s"),
		InterferenceMM: d * rapid.Float64Range(0.0002, 0.003).Draw(t, "delta/d"),
	}
}

// near holds two ways to one figure to each other; RK4 with 2000 steps is good
// to better than 1e-8 here.
func near(t rapid.TB, what string, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) <= 1e-8*math.Abs(want)) {
		t.Errorf("%s: %.12g by Lame, %.12g by the equations", what, got, want)
	}
}
