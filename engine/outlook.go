package engine

import (
	"math"
	"math/bits"
	"slices"
)

// Outlook is a bore under evaluation while facts may be anything within a span.
// It bounds every state that the facts allow: what the outlook excludes happens
// in none of them. What it does not exclude need not happen.
type Outlook struct {
	book       *Rulebook
	given      []bool
	spans      []span
	atoms      []outcomes
	conditions []outcomes
	arguments  []span
	scratch    []Argument
	prospects  []prospect
	swings     []int
	confines   *confines // nil where nothing but the facts is narrowed down
}

// Outlook begins an outlook from the facts as they stand.
func (s *State) Outlook() *Outlook {
	o := newOutlook(s)
	o.evaluate()
	return o
}

// Let allows a fact to be anything in an extent, and works out what follows.
func (o *Outlook) Let(slot int, e Extent) { o.set(slot, o.book.spanOf(slot, e)) }

// Winners lists the methods that may come out on top. A method that is not
// listed cannot, whatever the facts are within their extents.
func (o *Outlook) Winners() []int {
	o.weigh()
	return o.winners(nil)
}

// Matters reports whether a fact could still move the choice among some
// methods: a rule that depends on it is not settled and touches one of them.
func (o *Outlook) Matters(slot int, methods []int) bool {
	return o.waits(slot, func(r *Rule) bool { return r.moves() && r.forAny(methods) })
}

// MattersBeside reports whether a demand or caution for a method still hangs on
// the fact.
func (o *Outlook) MattersBeside(slot, method int) bool {
	return o.waits(slot, func(r *Rule) bool { return !r.moves() && r.forAny([]int{method}) })
}

func (o *Outlook) waits(slot int, counts func(*Rule) bool) bool {
	for _, i := range o.book.impacts[slot].conditions {
		if int(i) < o.book.rulesAt && o.conditions[i]&(o.conditions[i]-1) != 0 && counts(o.book.Rules[i]) {
			return true
		}
	}
	return false
}

// newOutlook begins with the facts of a state, each a point.
func newOutlook(s *State) *Outlook {
	b := s.book
	o := &Outlook{book: b, given: make([]bool, len(b.Facts)), spans: make([]span, len(b.Facts)),
		atoms: make([]outcomes, len(b.atoms)), conditions: make([]outcomes, len(b.conditions)),
		arguments: make([]span, b.scratch), scratch: make([]Argument, b.scratch), prospects: make([]prospect, len(b.Methods))}
	for slot := range b.Facts {
		o.spans[slot] = nothing
		if s.given[slot] {
			o.given[slot], o.spans[slot] = true, b.pointOf(slot, s.number[slot])
		}
	}
	return o
}

// pointOf is the span of one value of a fact.
func (b *Rulebook) pointOf(slot int, v float64) span {
	if b.Facts[slot].Sort == Number {
		return point(v)
	}
	return span{low: nothing.low, high: nothing.high, words: 1 << uint(v)}
}

// evaluate works everything out.
func (o *Outlook) evaluate() {
	for _, it := range o.book.tape {
		o.do(it)
	}
	for i, root := range o.book.conditions {
		if root >= 0 {
			o.conditions[i] = o.fold(root)
		}
	}
}

// set changes what one fact may be and works out what follows.
func (o *Outlook) set(slot int, to span) {
	o.given[slot], o.spans[slot] = true, to
	imp := &o.book.impacts[slot]
	for _, it := range imp.tape {
		o.do(it)
	}
	for _, i := range imp.conditions {
		o.conditions[i] = o.fold(o.book.conditions[i])
	}
}

func (o *Outlook) do(it item) {
	if !it.isStep {
		o.atoms[it.index] = o.test(&o.book.atoms[it.index])
		return
	}
	if o.given[it.index] {
		return
	}
	st := &o.book.steps[it.index]
	v := o.value(st.from)
	if v.unknown && st.assume.given() {
		v.unknown = false
		v = v.or(o.value(st.assume))
	}
	if o.confines != nil {
		v = o.confines.fact(it.index, v)
	}
	o.spans[it.index] = v
}

func (o *Outlook) value(v valueOf) span {
	switch {
	case v.over != nil:
		return v.over(o)
	case v.root < 0:
		return nothing
	}
	may := o.fold(v.root)
	out := nothing
	out.unknown = may&mayBeUnknown != 0
	if may&mayFail != 0 {
		out.words |= 1
	}
	if may&mayHold != 0 {
		out.words |= 2
	}
	return out
}

func (o *Outlook) test(a *atom) outcomes {
	switch a.shape {
	case general, againstFact:
		out := o.compare(a)
		if o.confines != nil {
			out &= o.confines.comparison(o, a)
		}
		return out
	case againstConstant:
		out := a.op.compare(o.spans[a.left], point(a.constant))
		if o.confines != nil {
			out &= o.confines.sides(o, a, anyWay)
		}
		return out
	}
	set := a.set
	if a.shape == flag {
		set = 2
	}
	var out outcomes
	s := &o.spans[a.left]
	if s.unknown {
		out = mayBeUnknown
	}
	if s.words&set != 0 {
		out |= mayHold
	}
	if s.words&^set != 0 {
		out |= mayFail
	}
	return out
}

// compare finds how a comparison of two changing sides may come out.
func (o *Outlook) compare(a *atom) outcomes {
	if a.shape == general {
		return a.op.compare(a.leftOf.over(o), a.rightOf.over(o))
	}
	return a.op.compare(o.spans[a.left], o.spans[a.right])
}

func (o *Outlook) fold(root int32) outcomes {
	n := o.book.nodes[root]
	switch n.op {
	case atomNode:
		return o.atoms[n.first]
	case constantNode:
		return outcomesOf(Truth(n.first))
	case notNode:
		return o.fold(o.book.kids[n.first]).not()
	}
	kids := o.book.kids[n.first : n.first+n.count]
	out := o.fold(kids[0])
	for _, k := range kids[1:] {
		if n.op == andNode {
			out = out.and(o.fold(k))
		} else {
			out = out.or(o.fold(k))
		}
	}
	return out
}

// call bounds a catalogue function: exactly where all arguments are points, by
// its ends where every argument that varies has a trend, and else not at all.
func (o *Outlook) call(f *Function, args []span, scratch []Argument, words []int32) span {
	for i := range args {
		if !f.Params[i].Word || bits.OnesCount64(args[i].words) == 1 {
			continue
		}
		out, all := span{low: nothing.low, high: nothing.high}, args[i]
		for rest := all.words; rest != 0; rest &= rest - 1 {
			args[i].words = rest & -rest
			out = out.or(o.call(f, args, scratch, words))
		}
		args[i] = all
		return out
	}
	unknown, exact, bounded := false, true, true
	for i, a := range args {
		unknown = unknown || a.unknown
		if f.Params[i].Word {
			scratch[i].Word = o.book.Facts[words[i]].Choices[bits.TrailingZeros64(a.words)]
			continue
		}
		varies := a.low != a.high
		exact, bounded = exact && !varies, bounded && (!varies || f.Params[i].Trend != NoTrend)
	}
	out := anything
	switch {
	case exact:
		out = f.at(args, scratch, Falls)
	case f.Over != nil:
		out = f.over(args, scratch)
	case bounded:
		if least, most := f.at(args, scratch, Falls), f.at(args, scratch, Rises); least.known() && most.known() {
			out = least.or(most)
		}
	}
	out.unknown = out.unknown || unknown
	return out
}

// over asks the function for its own bounds.
func (f *Function) over(args []span, scratch []Argument) span {
	low, high := scratch, slices.Clone(scratch)
	for i, a := range args {
		low[i].Number, high[i].Number = a.low, a.high
	}
	least, most, ok := f.Over(low, high)
	if !ok || math.IsNaN(least+most) {
		return anything
	}
	return span{low: least, high: most}
}

// at calls the function where its result is least (Falls) or greatest (Rises).
func (f *Function) at(args []span, scratch []Argument, end Trend) span {
	for i, a := range args {
		if f.Params[i].Trend == end {
			scratch[i].Number = a.high
		} else {
			scratch[i].Number = a.low
		}
	}
	v, err := f.Call(scratch)
	if err != nil {
		return nothing
	}
	if v, ok := finite(v); ok {
		return point(v)
	}
	return nothing
}
