package cut

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The tests of this file do not use the beam formulas: they integrate the bending
// moment along the bar twice and fit slope and height at the supports.

const beamSteps = 20000

// bendOf integrates y” = M / (E I) from the left end at rest and returns height and
// slope at every step.
func bendOf(moment func(x float64) float64, length, bending float64) (height, slope []float64) {
	h := length / beamSteps
	height, slope = make([]float64, beamSteps+1), make([]float64, beamSteps+1)
	for i := range beamSteps {
		x := float64(i) * h
		m0, m1, m2 := moment(x)/bending, moment(x+h/2)/bending, moment(x+h)/bending
		slope[i+1] = slope[i] + h/6*(m0+4*m1+m2)
		height[i+1] = height[i] + h*slope[i] + h*h/6*(m0+2*m1) // Simpson on the slope within the step
	}
	return height, slope
}

// tilted adds a straight line so that the bar rests on supports at steps i and j.
func tilted(height []float64, i, j int) []float64 {
	out := make([]float64, len(height))
	rise := (height[j] - height[i]) / float64(j-i)
	for n := range height {
		out[n] = height[n] - height[i] - rise*float64(n-i)
	}
	return out
}

func step(x, length float64) int { return int(math.Round(x / length * beamSteps)) }

func largest(height []float64) (most float64) {
	for _, y := range height {
		most = max(most, math.Abs(y))
	}
	return most
}

func closeTo(t *rapid.T, what string, got, want, share float64) {
	t.Helper()
	if math.Abs(got-want) > share*math.Abs(want) {
		t.Errorf("%s is %.9g, integrated %.9g", what, got, want)
	}
}

func drawSupports(t *rapid.T) BarSupportsInputs {
	in := BarSupportsInputs{
		BarMM: rapid.Float64Range(20, 120).Draw(t, "d"), ModulusMPa: rapid.Float64Range(1e5, 6e5).Draw(t, "E"), ForceN: rapid.Float64Range(10, 500).Draw(t, "F"),
	}
	in.BarBoreMM = in.BarMM * rapid.Float64Range(0, 0.7).Draw(t, "d_0/d")
	in.SpanMM = in.BarMM * rapid.Float64Range(4, 20).Draw(t, "L/d")
	in.ToolAtMM = in.SpanMM / beamSteps * float64(rapid.IntRange(beamSteps/20, beamSteps-beamSteps/20).Draw(t, "tool"))
	return in
}

// secondMomentBySlices adds the section up in thin strips.
func secondMomentBySlices(outer, bore float64) float64 {
	const strips = 4000
	sum := 0.0
	for i := range strips {
		y := outer / 2 * (float64(i) + 0.5) / strips
		width := math.Sqrt(outer*outer/4 - y*y)
		if y < bore/2 {
			width -= math.Sqrt(bore*bore/4 - y*y)
		}
		sum += 4 * width * y * y * outer / 2 / strips
	}
	return sum
}

func TestSecondMoment(t *testing.T) {
	for _, bar := range [][2]float64{{50, 0}, {50, 20}, {25.4, 0}, {80, 60}} {
		if got, want := secondMoment(bar[0], bar[1]), secondMomentBySlices(bar[0], bar[1]); math.Abs(got-want) > 1e-4*want {
			t.Errorf("bar %v: %g, by strips %g", bar, got, want)
		}
	}
}

func TestBarBetweenSupportsIsIntegrated(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawSupports(t)
		out, err := BarBetweenSupports(in)
		if err != nil {
			t.Fatal(err)
		}
		bending := in.ModulusMPa * secondMomentBySlices(in.BarMM, in.BarBoreMM)
		free := func(x float64) float64 { return out.LeftN*x - in.ForceN*max(0, x-in.ToolAtMM) }
		raw, slope := bendOf(free, in.SpanMM, bending)
		bar, tool := tilted(raw, 0, beamSteps), step(in.ToolAtMM, in.SpanMM)
		closeTo(t, "bend at the tool", out.AtToolMM, -bar[tool], 3e-4)
		closeTo(t, "largest bend", out.MaxMM, largest(bar), 3e-4)
		closeTo(t, "moments about the right end", out.LeftN*in.SpanMM, in.ForceN*(in.SpanMM-in.ToolAtMM), 1e-9)
		closeTo(t, "sum of reactions", out.LeftN+out.RightN, in.ForceN, 1e-9)

		// Ends that cannot tilt: add end moments and end force so that the slope
		// and the height vanish at both ends.
		one, oneSlope := bendOf(func(float64) float64 { return 1 }, in.SpanMM, bending)
		rise, riseSlope := bendOf(func(x float64) float64 { return x }, in.SpanMM, bending)
		const end = beamSteps
		det := one[end]*riseSlope[end] - rise[end]*oneSlope[end]
		m := (-raw[end]*riseSlope[end] + rise[end]*slope[end]) / det
		v := (-one[end]*slope[end] + raw[end]*oneSlope[end]) / det
		closeTo(t, "bend with ends that cannot tilt", out.FixedMM, -(raw[tool] + m*one[tool] + v*rise[tool]), 3e-3)
	})
}

func TestOtherBarsAreIntegrated(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawSupports(t)
		bending := in.ModulusMPa * secondMomentBySlices(in.BarMM, in.BarBoreMM)
		cantilever, err := BarCantilever(BarCantileverInputs{BarMM: in.BarMM, BarBoreMM: in.BarBoreMM, OverhangMM: in.SpanMM, ModulusMPa: in.ModulusMPa, ForceN: in.ForceN})
		if err != nil {
			t.Fatal(err)
		}
		held, _ := bendOf(func(x float64) float64 { return in.ForceN * (in.SpanMM - x) }, in.SpanMM, bending)
		closeTo(t, "bend of the cantilever", cantilever.DeflectionMM, held[beamSteps], 3e-4)

		total := in.SpanMM // the near bearing stands where the tool stood in drawSupports
		over, err := BarOverhung(BarOverhungInputs{BarMM: in.BarMM, BarBoreMM: in.BarBoreMM, SpanMM: max(in.ToolAtMM, in.BarMM), OverhangMM: total - in.ToolAtMM, ModulusMPa: in.ModulusMPa, ForceN: in.ForceN})
		if err != nil {
			t.Fatal(err)
		}
		if in.ToolAtMM >= in.BarMM {
			hangs := func(x float64) float64 { return -over.FarN*x + over.NearN*max(0, x-in.ToolAtMM) }
			raw, _ := bendOf(hangs, total, bending)
			bar := tilted(raw, 0, step(in.ToolAtMM, total))
			closeTo(t, "bend of the overhung bar", over.AtToolMM, math.Abs(bar[beamSteps]), 3e-4)
			closeTo(t, "forces on the overhung bar", over.NearN-over.FarN, in.ForceN, 1e-9)
		}

		sag, err := BarSag(BarSagInputs{BarMM: in.BarMM, BarBoreMM: in.BarBoreMM, SpanMM: in.SpanMM, ModulusMPa: in.ModulusMPa, DensityKGM3: 7850})
		if err != nil {
			t.Fatal(err)
		}
		load := sag.WeightN / in.SpanMM
		lies, _ := bendOf(func(x float64) float64 { return load * x * (in.SpanMM - x) / 2 }, in.SpanMM, bending)
		closeTo(t, "sag", sag.SagMM, largest(tilted(lies, 0, beamSteps)), 3e-4)
		// Rigid ends take 1/12 w L^2 each off the moment.
		clamped, _ := bendOf(func(x float64) float64 { return load*x*(in.SpanMM-x)/2 - load*in.SpanMM*in.SpanMM/12 }, in.SpanMM, bending)
		closeTo(t, "sag with ends that cannot tilt", sag.FixedMM, largest(clamped), 3e-3)
	})
}

// The roots of the beam equations, found anew.
func TestBeamRoots(t *testing.T) {
	root := func(f func(float64) float64, low, high float64) float64 {
		for range 200 {
			if middle := (low + high) / 2; (f(middle) > 0) == (f(high) > 0) {
				high = middle
			} else {
				low = middle
			}
		}
		return low
	}
	free := root(func(b float64) float64 { return math.Cosh(b)*math.Cos(b) + 1 }, 1, 3)
	held := root(func(b float64) float64 { return math.Cosh(b)*math.Cos(b) - 1 }, 4, 5)
	if math.Abs(free-cantileverRoot) > 1e-12 || math.Abs(held-fixedRoot) > 1e-12 {
		t.Errorf("roots %.15g and %.15g", free, held)
	}
}

// Rayleigh's quotient with the bend under its own weight lies a little above the
// first frequency, for every support.
func TestFrequencyAgainstSag(t *testing.T) {
	const d, l, e, rho = 50.0, 900.0, 207000.0, 7850.0
	bending, perMM := e*secondMoment(d, 0), rho*1e-12*math.Pi*d*d/4 // t/mm, so that N = t mm/s2
	shapes := map[string]func(x float64) float64{
		"simply_supported": func(x float64) float64 { return x*l*l*l - 2*l*x*x*x + x*x*x*x },
		"cantilever":       func(x float64) float64 { return 6*l*l*x*x - 4*l*x*x*x + x*x*x*x },
		"fixed":            func(x float64) float64 { return x * x * (l - x) * (l - x) },
	}
	for support, shape := range shapes {
		var work, mass float64
		const n = 4000
		for i := range n {
			x := l * (float64(i) + 0.5) / n
			work += 24 * shape(x) // w y with E I y'''' = 24 for each shape
			mass += shape(x) * shape(x)
		}
		rayleigh := math.Sqrt(bending*work/(perMM*mass)) / (2 * math.Pi)
		out, err := BarFrequency(BarFrequencyInputs{Support: support, BarMM: d, LengthMM: l, ModulusMPa: e, DensityKGM3: rho})
		if err != nil || rayleigh < out.FirstHz || rayleigh > 1.01*out.FirstHz {
			t.Errorf("%s: %g Hz, Rayleigh %g Hz, %v", support, out.FirstHz, rayleigh, err)
		}
		back, err := BarMinDiameter(BarMinDiameterInputs{Support: support, LengthMM: l, ModulusMPa: e, DensityKGM3: rho, FrequencyHz: out.FirstHz})
		if err != nil || math.Abs(back.BarMM-d) > 1e-9 {
			t.Errorf("%s: %g mm for the frequency of a bar of %g mm, %v", support, back.BarMM, d, err)
		}
	}
}

// The most negative real part of the compliance, found by walking through all
// frequencies.
func TestChatterLimitIsTheMinimum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := ChatterLimitInputs{Stiffness: rapid.Float64Range(500, 1e6).Draw(t, "k"), Damping: rapid.Float64Range(0.005, 0.2).Draw(t, "zeta"), RadialMPa: rapid.Float64Range(200, 2000).Draw(t, "K_f")}
		out, err := ChatterLimit(in)
		if err != nil {
			t.Fatal(err)
		}
		least := 0.0
		for i := range 200000 {
			r := 1 + 0.5*float64(i)/200000
			g := 1 / (complex(in.Stiffness, 0) * (complex(1-r*r, 2*in.Damping*r)))
			least = min(least, real(g))
		}
		closeTo(t, "compliance", out.Compliance, least, 1e-4)
		closeTo(t, "limit", out.DepthMM, -1/(2*in.RadialMPa*least), 1e-4)
	})
}
