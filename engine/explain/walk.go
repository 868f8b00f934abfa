package explain

import (
	"cmp"
	"math"
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// turned judges a decision: has it become what is looked for?
type turned func(engine.Decision) bool

// How densely a fact's range is searched.
const (
	spread   = 16    // even steps over the whole range
	nearness = 1e-4  // share of the range that is the first step from the value found
	stride   = 2     // each further step is so much longer
	closeBy  = 1.15  // the same where a catalogue function has a say
	coarse   = 1e-6  // share of the range below which equal decisions count as one
	finest   = 1e-13 // share of the range to which a turning point is found
)

// walk searches along one number for the nearest value that turns the decision.
// Between two values under which all rules come out alike nothing can turn; any
// other stretch is halved, the near half first, until the turning point is
// pinned down.
type walk struct {
	q         *Study
	slot      int
	is        turned
	low, high float64
}

// sample is the outcome at one value.
type sample struct {
	value  float64
	sign   uint64
	turned bool
}

func (w *walk) at(v float64) sample {
	w.q.state.Set(w.slot, v)
	return sample{v, w.q.state.Signature(w.slot), w.is(w.q.state.Decide())}
}

// nearest finds the turning value that is nearest to the start.
func (w *walk) nearest(start float64) (value float64, found bool) {
	stops := w.stops(start)
	i, _ := slices.BinarySearch(stops, start)
	below, found := w.along(start, reversed(stops[:i]))
	if !found {
		return w.along(start, stops[i:])
	}
	// Above, only what is nearer still is of interest.
	reach := start + (start - below)
	end, _ := slices.BinarySearch(stops, reach)
	nearby := slices.Clone(stops[i:max(i, end)])
	if reach < w.high {
		nearby = append(nearby, reach)
	}
	if above, found := w.along(start, nearby); found && above-start < start-below {
		return above, true
	}
	return below, true
}

// along walks from stop to stop until the decision turns.
func (w *walk) along(start float64, stops []float64) (float64, bool) {
	here := w.at(start)
	for _, v := range stops {
		if v == start {
			continue
		}
		there := w.at(v)
		if value, found := w.between(here, there); found {
			return value, true
		}
		here = there
	}
	return 0, false
}

// between looks for the first turning value after a, up to b.
func (w *walk) between(a, b sample) (float64, bool) {
	apart := math.Abs(b.value - a.value)
	middle := a.value + (b.value-a.value)/2
	switch size := w.high - w.low; {
	case a.sign == b.sign:
		return 0, false
	case middle == a.value || middle == b.value || apart <= finest*size || !b.turned && apart <= coarse*size:
		return b.value, b.turned
	}
	m := w.at(middle)
	if value, found := w.between(a, m); found {
		return value, true
	}
	return w.between(m, b)
}

// stops lists the values at which the walk looks, in order.
func (w *walk) stops(start float64) []float64 {
	stops := w.q.book.Probes(w.slot, w.low, w.high, spread)
	longer := float64(stride)
	if w.q.book.Calls(w.slot) {
		longer = closeBy
	}
	size := w.high - w.low
	for step := nearness * size; step < size; step *= longer {
		for _, v := range []float64{start - step, start + step} {
			if v > w.low && v < w.high {
				stops = append(stops, v)
			}
		}
	}
	slices.Sort(stops)
	return slices.Compact(stops)
}

func reversed(values []float64) []float64 {
	out := slices.Clone(values)
	slices.Reverse(out)
	return out
}

// turns lists the values of a fact that turn the decision: of a number the
// nearest, of a choice every word. The state is left as it was.
func (q *Study) turns(slot int, is turned) []float64 {
	f := q.book.Facts[slot]
	start, known := q.state.Value(slot)
	defer q.restore(slot)
	switch {
	case f.Sort != engine.Number:
		return q.filter(slot, q.book.Probes(slot, 0, 0, 0), is)
	case f.Kind == quantity.Count:
		return nearestOf(start, known, q.filter(slot, whole(f.Low, f.High), is))
	}
	w := &walk{q, slot, is, f.Low, f.High}
	v, found := 0.0, false
	switch {
	case known:
		v, found = w.nearest(start)
	case w.at(f.Low).turned:
		v, found = f.Low, true
	default:
		v, found = w.along(f.Low, w.stops(f.Low))
	}
	if !found {
		return nil
	}
	return []float64{v}
}

// filter keeps the values that turn the decision.
func (q *Study) filter(slot int, values []float64, is turned) (kept []float64) {
	now, known := q.state.Value(slot)
	for _, v := range values {
		if known && v == now {
			continue
		}
		if q.state.Set(slot, v); is(q.state.Decide()) {
			kept = append(kept, v)
		}
	}
	return kept
}

// whole lists the whole numbers of a range.
func whole(low, high float64) (values []float64) {
	const most = 1000 // a count that is no count
	for v := math.Ceil(low); v <= high && len(values) < most; v++ {
		values = append(values, v)
	}
	return values
}

// nearestOf keeps the value nearest to a known start, or the least.
func nearestOf(start float64, known bool, values []float64) []float64 {
	if len(values) == 0 || !known {
		return values[:min(1, len(values))]
	}
	return []float64{slices.MinFunc(values, func(a, b float64) int {
		return cmp.Compare(math.Abs(a-start), math.Abs(b-start))
	})}
}
