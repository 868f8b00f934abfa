package price

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"
)

// aRates are rates with which sums can be made by hand.
func aRates() *Rates {
	return &Rates{Currency: "USD", ShiftHours: 10, Rates: []Rate{{Name: "field", Price: 100}}}
}

// work is a line of labour at 100 an hour.
func work(name string, e Estimate) Line {
	return aRates().Line(Item{Name: name, Sort: Labour, Rate: "field", Crew: 1, Each: e, Stands: true}, Count{Number: 1})
}

func waiting(name string, e Estimate) Line {
	return aRates().Line(Item{Name: name, Sort: Waiting, Each: e, Stands: true}, Count{Number: 1})
}

func sumOf(lines ...Line) *Sum {
	s := NewSum(aRates())
	s.Add("a bore", lines, Purse{})
	return s
}

// estimates draws three guesses in order.
func estimates(t *rapid.T, label string) Estimate {
	low := rapid.Float64Range(0, 10).Draw(t, label+" low")
	likely := low + rapid.Float64Range(0, 10).Draw(t, label+" to likely")
	return Estimate{low, likely, likely + rapid.Float64Range(0, 20).Draw(t, label+" to high")}
}

// TestDrawsFollowTheBetaDistribution compares the draws with the mean and variance
// that the distribution has by algebra, and with the quantiles that are known for
// the shape with the likely figure at the low end: 1 - (1 - p)^(1/5).
func TestDrawsFollowTheBetaDistribution(t *testing.T) {
	for _, likely := range []float64{0, 0.1, 0.25, 0.5, 0.9, 1} {
		e := Estimate{0, likely, 1}
		values, mean, variance := draws("a line", e), 0.0, 0.0
		for _, v := range values {
			mean += v / Draws
		}
		for _, v := range values {
			variance += (v - mean) * (v - mean) / Draws
		}
		sd := math.Sqrt(e.BetaVariance())
		if off := math.Abs(mean-e.Mean()) / sd * math.Sqrt(Draws); off > 4 {
			t.Errorf("likely %g: mean %g, want %g: %.1f standard errors off", likely, mean, e.Mean(), off)
		}
		if math.Abs(variance/e.BetaVariance()-1) > 0.08 {
			t.Errorf("likely %g: variance %g, want %g", likely, variance, e.BetaVariance())
		}
	}
	skewed := sumOf(work("one", Estimate{0, 0, 1})).Price()
	for p, got := range map[float64]float64{0.5: skewed.P50, 0.8: skewed.P80} {
		if want := 100 * (1 - math.Pow(1-p, 0.2)); math.Abs(got-want) > 1 {
			t.Errorf("quantile %g is %g, want %g", p, got, want)
		}
	}
}

// TestNormalApproximation holds the two ways to a price against each other: what the
// draws say lies within a quarter of a standard deviation of the normal figure for
// half of all cases, and within a fifth for four of five, with a little for the
// draws' own error.
func TestNormalApproximation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var lines []Line
		for i := range rapid.IntRange(1, 15).Draw(t, "lines") {
			lines = append(lines, work(fmt.Sprint("line ", i), estimates(t, fmt.Sprint(i))))
		}
		p := sumOf(lines...).Price()
		const drawn = 0.05 // of a standard deviation
		if p.SD > 0 && math.Abs(p.P50-p.NormalP50) > (0.25+drawn)*p.SD {
			t.Errorf("half of all cases: %g drawn, %g normal, standard deviation %g", p.P50, p.NormalP50, p.SD)
		}
		if p.SD > 0 && math.Abs(p.P80-p.NormalP80) > (0.20+drawn)*p.SD {
			t.Errorf("four of five: %g drawn, %g normal, standard deviation %g", p.P80, p.NormalP80, p.SD)
		}
	})
}

// TestSpreadIsInOrder asks of every sum that its figures stand in their order.
func TestSpreadIsInOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := sumOf(work("a", estimates(t, "a")), work("b", estimates(t, "b")), waiting("c", estimates(t, "c")))
		for name, p := range map[string]Spread{"price": s.Price(), "hours": s.Hours(), "downtime": s.Downtime()} {
			const rounding = 1e-9
			if p.Low > p.Likely || p.Likely > p.High || p.P50 > p.P80 || p.P50 < p.Low-rounding || p.P80 > p.High+rounding {
				t.Errorf("%s is out of order: %+v", name, p)
			}
		}
	})
}

// TestSharedLines counts what bores share once, whatever the number of parts.
func TestSharedLines(t *testing.T) {
	rates := aRates()
	travel := Item{Name: "travel", Sort: Labour, Rate: "field", Crew: 1, Each: Estimate{2, 4, 8}}
	part := rates.Line(travel, Count{Number: 0.25, SharedBy: 4, Group: "job"})
	whole, purse := NewSum(rates), Purse{}
	for _, bore := range []string{"a", "b", "c", "d"} {
		whole.Add(bore, []Line{part}, purse)
	}
	once := sumOf(rates.Line(travel, Count{Number: 1, SharedBy: 1, Group: "job"})).Price()
	if got := whole.Price(); math.Abs(got.P80-once.P80) > 1e-9 || math.Abs(got.SD-once.SD) > 1e-9 {
		t.Errorf("four parts come to %+v, one whole to %+v", got, once)
	}
	if n := len(whole.Drivers()); n != 1 {
		t.Errorf("the shared line shows as %d drivers", n)
	}
}

// TestWaitingSideBySide: two bores cool at the same time, and their work adds up.
func TestWaitingSideBySide(t *testing.T) {
	s, purse := NewSum(aRates()), Purse{}
	exactly := func(h float64) Estimate { return Estimate{h, h, h} }
	s.Add("a", []Line{work("weld", exactly(3)), waiting("cool", exactly(8))}, purse)
	s.Add("b", []Line{work("weld", exactly(3)), waiting("cool", exactly(5)), waiting("hold", exactly(16))}, purse)
	if got := s.Downtime().P50; got != 3+3+8+16 {
		t.Errorf("the machine stands %g h, want 30", got)
	}
}

// TestDowntimeCountsNights: work beyond a shift goes on the next morning.
func TestDowntimeCountsNights(t *testing.T) {
	for hours, want := range map[float64]float64{0: 0, 6: 6, 10: 10, 10.5: 24.5, 20: 34, 21: 49} {
		if got := sumOf(work("a", Estimate{hours, hours, hours})).Downtime().P50; math.Abs(got-want) > 1e-9 {
			t.Errorf("%g hours of work keep the machine %g h, want %g", hours, got, want)
		}
	}
	// The same by the calculation of the catalogue.
	out, err := CalendarHours(CalendarHoursInputs{WorkS: 21 * 3600, WaitS: 5 * 3600, ShiftS: 10 * 3600})
	three := Estimate{21, 21, 21}
	five := Estimate{5, 5, 5}
	if got := sumOf(work("a", three), waiting("b", five)).Downtime().P50; err != nil || math.Abs(got-out.CalendarS/3600) > 1e-9 {
		t.Errorf("the sum says %g h, the calculation %g h, %v", got, out.CalendarS/3600, err)
	}
}

// TestStreams: a line keeps its draws whatever else a job holds, and two lines do not
// share theirs.
func TestStreams(t *testing.T) {
	e := Estimate{1, 2, 4}
	one, two := draws("a", e), draws("b", e)
	again := draws("a", e)
	same := 0
	for i := range one {
		if one[i] != again[i] {
			t.Fatal("the same stream gives other draws")
		}
		if one[i] == two[i] {
			same++
		}
	}
	if same > Draws/100 {
		t.Errorf("%d of %d draws of two streams are the same", same, Draws)
	}
	correlation, first, second := 0.0, mean(one), mean(two)
	for i := range one {
		correlation += (one[i] - first) * (two[i] - second) / Draws / (e.BetaVariance() / 9)
	}
	if math.Abs(correlation) > 0.05 {
		t.Errorf("two streams go together: %g", correlation)
	}
}

func mean(values []float64) (m float64) {
	for _, v := range values {
		m += v / float64(len(values))
	}
	return m
}
