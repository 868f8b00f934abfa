package engine

import (
	"math"

	"boremend/engine/quantity"
)

// A division of what could happen is a list of cases. Entering one narrows the
// proof down to it and gives back how to leave it.
type division []func() (undo func())

// divide chooses the next cases to look at; there are none when nothing can be
// divided any more.
func (p *proof) divide() division {
	for _, a := range p.scope.atoms {
		if may := p.o.atoms[a]; may&(may-1) != 0 {
			if cases := p.decide(&p.o.book.atoms[a]); len(cases) > 1 {
				return cases
			}
		}
	}
	return p.refine()
}

// decide takes the cases in which a comparison comes out one way or another.
func (p *proof) decide(a *atom) division {
	if a.order.number != 0 && a.shape != flag && a.shape != member {
		return p.inOrder(a)
	}
	whole := p.o.spans[a.left]
	if whole.unknown || p.open(a.left) {
		return p.knownOrNot(a.left)
	}
	yes, no := whole, whole
	switch a.shape {
	case flag:
		yes.words, no.words = whole.words&2, whole.words&^2
	case member:
		yes.words, no.words = whole.words&a.set, whole.words&^a.set
	default:
		no.high, yes.low = cutAt(a.op, a.constant, whole)
	}
	return p.parts(a.left, yes, no)
}

// cutAt cuts a span so that a comparison with a fixed number comes out alike on
// each side, or at least on one.
func cutAt(op comparison, at float64, whole span) (below, above float64) {
	if (op == equal || op == notEqual) && whole.low == at {
		return at, math.Nextafter(at, math.Inf(1))
	}
	return beside(op, at)
}

// parts takes a fact to lie in one part of what it may be, or in another.
func (p *proof) parts(slot int32, all ...span) (cases division) {
	for _, part := range all {
		if p.counted(slot) {
			part.low, part.high = math.Ceil(part.low), math.Floor(part.high)
		}
		if !part.void() {
			cases = append(cases, func() func() { return p.narrow(slot, part) })
		}
	}
	return cases
}

// counted reports whether a fact, as far as it is given, is a whole number. One
// that is only assumed need not be.
func (p *proof) counted(slot int32) bool {
	f := p.o.book.Facts[slot]
	return f.Sort == Number && f.Kind == quantity.Count && (p.o.given[slot] || p.open(slot))
}

// open reports whether an asked fact may be known or not.
func (p *proof) open(slot int32) bool {
	return !p.o.given[slot] && p.o.confines.beside[slot].known()
}

func (p *proof) knownOrNot(slot int32) division {
	known := p.o.spans[slot]
	if p.open(slot) {
		known = p.o.confines.beside[slot]
	}
	known.unknown = false
	return p.parts(slot, known, nothing)
}

// narrow takes a fact to lie in a part of what it may be.
func (p *proof) narrow(slot int32, part span) (undo func()) {
	c := p.o.confines
	if p.o.given[slot] || p.open(slot) {
		before := c.beside[slot]
		before.unknown = !p.o.given[slot]
		p.let(slot, part)
		return func() { p.let(slot, before) }
	}
	before := c.within[slot]
	c.within[slot] = part
	return func() { c.within[slot] = before }
}

// inOrder takes the two sides of a comparison to stand one way or another.
func (p *proof) inOrder(a *atom) (cases division) {
	orders, number := p.o.confines.orders, a.order.number
	holds := a.op.holding()
	if a.order.exchanged {
		holds = holds.exchange()
	}
	before := orders[number]
	for _, part := range [3]ways{before & holds, before &^ holds &^ sideUnknown, before & sideUnknown} {
		if part != 0 {
			cases = append(cases, func() func() {
				orders[number] = part
				return func() { orders[number] = before }
			})
		}
	}
	return cases
}

// refine halves the fact of which most is left, among those that a case taken
// rests on without following from them yet.
func (p *proof) refine() division {
	best, most := int32(-1), 0.0
	for _, slot := range p.unrefined() {
		a := p.o.spans[slot]
		if p.sizes[slot] == 0 || math.IsInf(breadth(a), 0) || !p.o.book.divisible(int(slot), a) {
			continue
		}
		if share := breadth(a) / p.sizes[slot]; share > most {
			best, most = slot, share
		}
	}
	switch {
	case best < 0:
		return nil
	case p.o.spans[best].unknown || p.open(best):
		return p.knownOrNot(best)
	}
	near, far := p.o.book.halve(int(best), p.o.spans[best])
	return p.parts(best, near, far)
}

// unrefined lists the facts that a case taken rests on.
func (p *proof) unrefined() (slots []int32) {
	for _, a := range p.scope.atoms {
		if p.forcedOrder(a) {
			slots = append(slots, p.o.book.atoms[a].needs.slots...)
		}
	}
	for _, slot := range p.scope.facts() {
		if p.forcedFact(slot) {
			slots = append(slots, p.o.book.steps[slot].needs.slots...)
		}
	}
	for _, slot := range p.scope.asked {
		if least := p.o.book.least[slot]; least >= 0 && p.o.spans[slot].low < p.o.spans[least].high {
			slots = append(append(slots, slot, least), p.o.book.steps[least].needs.slots...)
		}
	}
	return slots
}

// forcedOrder reports whether a comparison only comes out as it does because its
// sides were taken to stand so.
func (p *proof) forcedOrder(number int32) bool {
	a := &p.o.book.atoms[number]
	if a.shape != general && a.shape != againstFact {
		return false
	}
	free := p.o.compare(a) & p.o.confines.sides(p.o, a, anyWay)
	return free&^p.o.atoms[number] != 0
}

// forcedFact reports whether a worked-out fact was taken to lie in a part of what
// follows from the others.
func (p *proof) forcedFact(slot int32) bool {
	c := p.o.confines
	within := c.within[slot]
	if within == everything {
		return false
	}
	c.within[slot] = everything
	p.o.do(item{true, slot})
	free := p.o.spans[slot]
	c.within[slot] = within
	p.o.do(item{true, slot})
	return !free.inside(within)
}
