package engine

import (
	"math"
	"math/bits"

	"boremend/engine/quantity"
)

// finding of a search.
type searched uint8

const (
	settled   searched = iota // nothing inside the spans turns the decision
	turned                    // the state is one that does
	unsettled                 // the effort allowed did not tell
)

// search asks whether any combination of values, each within the span of its
// fact, turns the decision. It first bounds all combinations at once. Where that
// is not enough it looks at one of them, and then splits the span of the fact on
// which most still hangs: at a threshold if one lies inside, and else in the
// middle. "settled" is certain, and so is "turned", for which there is a state.
type search struct {
	o     *Outlook
	s     *State
	free  []int
	sizes []float64 // of the spans at the start
	// safe: in the outlook nothing can turn. turned: this decision has.
	safe   func(o *Outlook) bool
	turned func(d Decision) bool
	left   int // splits that are still allowed
}

// newSearch begins with the findings in a state.
func (s *State) newSearch(effort int) *search {
	return &search{s: s, o: newOutlook(s), left: effort}
}

// let allows a fact to be anything in a span.
func (q *search) let(slot int, a span) {
	q.o.given[slot], q.o.spans[slot] = true, a
	q.s.Set(slot, q.s.book.middle(slot, a))
	q.free = append(q.free, slot)
	q.sizes = append(q.sizes, breadth(a))
}

// breadth is the size of a span: its length, or how many words beside one.
func breadth(a span) float64 {
	if a.words != 0 {
		return float64(bits.OnesCount64(a.words) - 1)
	}
	return a.high - a.low
}

// middle picks a value to look at.
func (b *Rulebook) middle(slot int, a span) float64 {
	switch {
	case a.words != 0:
		return float64(bits.TrailingZeros64(a.words))
	case b.Facts[slot].Kind == quantity.Count:
		return math.Floor(a.low + (a.high-a.low)/2)
	}
	return between(a.low, a.high, 0.5)
}

// run evaluates the outlook and searches it.
func (q *search) run() searched {
	q.o.evaluate()
	return q.look()
}

func (q *search) look() searched {
	q.o.weigh()
	switch {
	case q.safe(q.o):
		return settled
	case q.turned(q.s.Decide()):
		return turned
	case q.left <= 0:
		return unsettled
	}
	q.left--
	slot := q.pick()
	if slot < 0 {
		return unsettled
	}
	whole, value := q.o.spans[slot], q.s.number[slot]
	near, far := q.split(slot, whole)
	found := settled
	for _, part := range [2]span{near, far} {
		q.o.set(slot, part)
		q.s.Set(slot, q.s.book.middle(slot, part))
		switch q.look() {
		case turned:
			return turned
		case unsettled:
			found = unsettled
		}
	}
	q.o.set(slot, whole)
	q.s.Set(slot, value)
	return found
}

// pick chooses the fact on which most still hangs: the number of rules that may
// turn with it, times the share that is left of its span.
func (q *search) pick() int {
	best, most := -1, 0.0
	for i, slot := range q.free {
		if q.sizes[i] == 0 || !q.s.book.divisible(slot, q.o.spans[slot]) {
			continue
		}
		hanging := 0
		for _, c := range q.o.book.impacts[slot].conditions {
			if int(c) < q.o.book.rulesAt && q.o.hangs(int(c)) {
				hanging++
			}
		}
		if score := float64(hanging) * breadth(q.o.spans[slot]) / q.sizes[i]; score > most {
			best, most = slot, score
		}
	}
	return best
}

// hangs reports whether a rule may come out in several ways and could move the
// choice of a method that is not certainly out.
func (o *Outlook) hangs(rule int) bool {
	r, may := o.book.Rules[rule], o.conditions[rule]
	if !r.moves() || may&(may-1) == 0 {
		return false
	}
	for _, m := range r.For {
		if !o.prospects[m].mustOut {
			return true
		}
	}
	return false
}

// divisible reports whether a span can still be split.
func (b *Rulebook) divisible(slot int, a span) bool {
	if a.words != 0 {
		return a.words&(a.words-1) != 0
	}
	return a.low < a.high && (b.middle(slot, a) > a.low || b.Facts[slot].Kind == quantity.Count)
}

// split cuts a span in two.
func (q *search) split(slot int, a span) (near, far span) {
	near, far = a, a
	for _, it := range q.o.book.impacts[slot].tape {
		if it.isStep {
			continue
		}
		atom := &q.o.book.atoms[it.index]
		may := q.o.atoms[it.index]
		if int(atom.left) != slot || atom.shape == general || may&(may-1) == 0 {
			continue
		}
		switch {
		case atom.shape == member && a.words&atom.set != 0 && a.words&^atom.set != 0:
			near.words, far.words = a.words&atom.set, a.words&^atom.set
			return near, far
		case atom.shape == againstConstant:
			near.high, far.low = beside(atom.op, atom.constant)
			if near.high >= a.low && far.low <= a.high {
				return near, far
			}
			near, far = a, a
		}
	}
	return q.s.book.halve(slot, a)
}

// halve cuts a span in its middle, or takes one word out of it.
func (b *Rulebook) halve(slot int, a span) (near, far span) {
	near, far = a, a
	if a.words != 0 {
		near.words, far.words = a.words&-a.words, a.words&(a.words-1)
		return near, far
	}
	m := b.middle(slot, a)
	near.high, far.low = m, m
	if b.Facts[slot].Kind == quantity.Count {
		far.low = m + 1
	}
	return near, far
}

// beside gives the last value below a threshold and the first above it, by the
// side on which the comparison puts the threshold itself.
func beside(op comparison, at float64) (below, above float64) {
	if op == lessEqual || op == greater {
		return at, math.Nextafter(at, math.Inf(1))
	}
	return math.Nextafter(at, math.Inf(-1)), at
}
