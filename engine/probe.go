package engine

import (
	"math"
	"slices"

	"boremend/engine/quantity"
)

// Probes lists values of a fact that between them make every difference that
// the fact alone can make: every word of a choice; for a number between low and
// high both ends, every threshold it is compared with directly, just beside
// each, and an even spread for thresholds that it meets through other facts.
func (b *Rulebook) Probes(slot int, low, high float64, spread int) []float64 {
	f := b.Facts[slot]
	switch f.Sort {
	case YesNo:
		return []float64{0, 1}
	case Choice:
		values := make([]float64, len(f.Choices))
		for i := range values {
			values[i] = float64(i)
		}
		return values
	}
	values := []float64{low, high}
	within := func(v float64) {
		if v > low && v < high {
			values = append(values, v)
		}
	}
	for i := range b.atoms {
		if a := &b.atoms[i]; a.shape == againstConstant && int(a.left) == slot {
			within(math.Nextafter(a.constant, math.Inf(-1)))
			within(a.constant)
			within(math.Nextafter(a.constant, math.Inf(1)))
		}
	}
	for i := 1; i <= spread; i++ {
		within(between(low, high, float64(i)/float64(spread+1)))
	}
	slices.Sort(values)
	return slices.Compact(values)
}

// mostWhole is how many whole numbers are tried one by one.
const mostWhole = 64

// Trials lists values that may be given for a fact and between them are likely
// to make every difference that it can make alone, the least first.
func (b *Rulebook) Trials(slot int) []float64 {
	f := b.Facts[slot]
	if f.Sort == Number && f.Kind == quantity.Count && f.High-f.Low <= mostWhole {
		return f.Extent().Values
	}
	values := b.Probes(slot, f.Low, f.High, spreadClimb)
	if f.Sort == Number && f.Kind == quantity.Count {
		for i, v := range values {
			values[i] = math.Round(v)
		}
		values = slices.Compact(values)
	}
	return slices.DeleteFunc(values, func(v float64) bool { return !f.Takes(v) })
}

// between divides a range in the proportion given, by ratio where the range
// spans more than a decade: wear limits lie near the small end of a wide range.
func between(low, high, share float64) float64 {
	if low > 0 && high > 10*low {
		return low * math.Pow(high/low, share)
	}
	return low + (high-low)*share
}
