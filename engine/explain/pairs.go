package explain

import (
	"cmp"
	"math"
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// Pairs lists the smallest changes of two facts that change the advised method
// together, among the facts that cannot do it alone.
func (q *Study) Pairs() []Tipping {
	return q.pairs(func(d engine.Decision) bool { return d.Method != q.was.Method })
}

// PairsToward lists the smallest pairs that would bring a method out on top.
func (q *Study) PairsToward(method int) []Tipping {
	return q.pairs(func(d engine.Decision) bool { return d.Method == method })
}

// option is a value of a fact under which some rules come out differently.
type option struct{ value, size float64 }

func (q *Study) pairs(is turned) []Tipping {
	var slots []int
	options := map[int][]option{}
	for slot, f := range q.book.Facts {
		if f.WorkedOut() || !q.book.Decides(slot) || len(q.turns(slot, is)) > 0 {
			continue
		}
		if options[slot] = q.options(slot); len(options[slot]) > 0 {
			slots = append(slots, slot)
		}
	}
	list := []Tipping{}
	for i, a := range slots {
		for _, b := range slots[i+1:] {
			if t, found := q.pair(a, b, options[a], options[b], is); found {
				list = append(list, t)
			}
		}
	}
	slices.SortStableFunc(list, func(a, b Tipping) int { return cmp.Compare(sizeOf(a), sizeOf(b)) })
	return list
}

// pair finds the smallest change of two facts that turns the decision.
func (q *Study) pair(a, b int, ofA, ofB []option, is turned) (Tipping, bool) {
	best, atA, atB := math.Inf(1), 0.0, 0.0
	for _, x := range ofA {
		q.state.Set(a, x.value)
		for _, y := range ofB {
			if x.size+y.size >= best {
				continue
			}
			if q.state.Set(b, y.value); is(q.state.Decide()) {
				best, atA, atB = x.size+y.size, x.value, y.value
			}
		}
		q.restore(b)
	}
	q.restore(a)
	if math.IsInf(best, 1) {
		return Tipping{}, false
	}
	atA = q.closer(a, atA, b, atB, is)
	atB = q.closer(b, atB, a, atA, is)
	return q.described(a, atA, b, atB, is)
}

// closer moves a number as near to what was found as the other fact allows.
func (q *Study) closer(slot int, v float64, other int, at float64, is turned) float64 {
	f := q.book.Facts[slot]
	start, known := q.state.Value(slot)
	if f.Sort != engine.Number || f.Kind == quantity.Count || !known {
		return v
	}
	q.state.Set(other, at)
	defer q.restore(other)
	defer q.restore(slot)
	w := &walk{q, slot, is, min(start, v), max(start, v)}
	stops := w.stops(start)
	if v < start {
		stops = reversed(stops)
	}
	if nearer, found := w.along(start, stops); found {
		return nearer
	}
	return v
}

// described writes a pair so that both values, typed in, turn the decision.
func (q *Study) described(a int, atA float64, b int, atB float64, is turned) (Tipping, bool) {
	q.state.Set(b, atB)
	first := q.shift(a, atA, is)
	q.restore(b)
	q.state.Set(a, first.typed)
	second := q.shift(b, atB, is)
	q.restore(a)
	first.value = first.typed
	if q.book.Facts[a].Sort == engine.Number {
		first.To = first.typed
	}
	return q.tipping(is, first, second)
}

// mostOptions bounds the values of one number that are paired with others.
const mostOptions = 24

// options lists a fact's values of interest: every other word, and of a number
// the nearest value of each stretch in which the rules come out alike.
func (q *Study) options(slot int) (found []option) {
	f := q.book.Facts[slot]
	now, known := q.state.Value(slot)
	defer q.restore(slot)
	add := func(v float64) {
		if !known || v != now {
			found = append(found, option{v, q.size(slot, v)})
		}
	}
	switch {
	case f.Sort != engine.Number:
		for _, v := range q.book.Probes(slot, 0, 0, 0) {
			add(v)
		}
	case f.Kind == quantity.Count:
		for _, v := range whole(f.Low, f.High) {
			add(v)
		}
	case known:
		for _, v := range q.stretches(slot, now) {
			add(v)
		}
	default:
		add(f.Low)
		for _, v := range q.stretches(slot, f.Low) {
			add(v)
		}
	}
	return found
}

// stretches finds where the rules begin to come out differently, walking away
// from a value on both sides.
func (q *Study) stretches(slot int, start float64) (edges []float64) {
	f := q.book.Facts[slot]
	w := &walk{q, slot, nil, f.Low, f.High}
	stops := w.stops(start)
	i, _ := slices.BinarySearch(stops, start)
	return append(w.edges(start, reversed(stops[:i])), w.edges(start, stops[i:])...)
}

// edges walks from stop to stop and lists where the rules begin to come out
// otherwise than just before.
func (w *walk) edges(start float64, stops []float64) (edges []float64) {
	before, here := w.sign(start), start
	for _, v := range stops {
		for len(edges) < mostOptions && w.sign(v) != before {
			here = w.edge(here, v)
			before = w.sign(here)
			edges = append(edges, here)
		}
		here = v
	}
	return edges
}

func (w *walk) sign(v float64) uint64 {
	w.q.state.Set(w.slot, v)
	return w.q.state.Signature(w.slot)
}

// edge finds the first value after a whose rules come out otherwise than at a.
func (w *walk) edge(a, b float64) float64 {
	before := w.sign(a)
	for math.Abs(b-a) > coarse*(w.high-w.low) {
		middle := a + (b-a)/2
		if w.sign(middle) == before {
			a = middle
		} else {
			b = middle
		}
	}
	return b
}

// size says how large a change is: in give-or-takes or classes where the fact
// has them, and otherwise as one whole step.
func (q *Study) size(slot int, v float64) float64 {
	f := q.book.Facts[slot]
	now, known := q.state.Value(slot)
	switch give := q.giveOrTake(slot, now); {
	case !known, f.Sort != engine.Number && !f.Slack.OneClass:
		return wholeStep
	case f.Sort != engine.Number:
		return math.Abs(v - now)
	case give > 0:
		return math.Abs(v-now) / give
	case now != 0:
		return wholeStep * math.Abs(v/now-1)
	}
	return wholeStep
}

// wholeStep is the size of a change that no give-or-take measures: it weighs as
// much as a measurement that was off by several give-or-takes.
const wholeStep = 5

func sizeOf(t Tipping) (sum float64) {
	for _, s := range t.Shifts {
		if s.Gives == nil {
			sum += wholeStep
			continue
		}
		sum += *s.Gives
	}
	return sum
}
