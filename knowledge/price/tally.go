package price

import (
	"math"
	"slices"
)

// tally is a figure that grows line by line, in its guesses and in every draw.
type tally struct {
	Estimate
	draws []float64
}

func newTally() tally { return tally{draws: make([]float64, Draws)} }

// add adds an estimate whose range luck goes through.
func (t *tally) add(e Estimate, luck []float64) {
	t.Estimate = t.Plus(e)
	for i, l := range luck {
		t.draws[i] += e.Low + (e.High-e.Low)*l
	}
}

// atLeast raises the figure to that of another, guess by guess and draw by draw: of
// two that go on side by side the longer counts.
func (t *tally) atLeast(other tally) {
	t.Low, t.Likely, t.High = math.Max(t.Low, other.Low), math.Max(t.Likely, other.Likely), math.Max(t.High, other.High)
	for i, v := range other.draws {
		t.draws[i] = math.Max(t.draws[i], v)
	}
}

// plus adds another figure up.
func (t *tally) plus(other tally) {
	t.Estimate = t.Plus(other.Estimate)
	for i, v := range other.draws {
		t.draws[i] += v
	}
}

// settled fills in what the draws say, and beside it the normal approximation.
func (s Spread) settled(draws []float64) Spread {
	sorted := slices.Sorted(slices.Values(draws))
	s.P50, s.P80 = quantile(sorted, 0.5), quantile(sorted, 0.8)
	s.NormalP50, s.NormalP80 = s.Mean, s.Mean+z80*s.SD
	return s
}

// fromDraws takes mean and standard deviation from the draws as well: nights come
// whole, so that no sum of means gives them.
func (s Spread) fromDraws(draws []float64) Spread {
	for _, v := range draws {
		s.Mean += v / float64(len(draws))
	}
	for _, v := range draws {
		s.SD += (v - s.Mean) * (v - s.Mean) / float64(len(draws))
	}
	s.SD = math.Sqrt(s.SD)
	return s.settled(draws)
}

// quantile of sorted values.
func quantile(sorted []float64, share float64) float64 {
	return sorted[int(math.Ceil(share*float64(len(sorted))))-1]
}
