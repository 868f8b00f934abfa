package engine

import "math"

// confines narrow an outlook down beyond what its facts may be, to look at one
// case at a time: a worked-out fact is taken to lie within a part of what it may
// be, or the two sides of a comparison to stand in a certain order. All cases
// together are still everything that may happen; a case that cannot happen shows
// as a fact, or a comparison, of which nothing is left.
type confines struct {
	within []span // by slot
	beside []span // by slot: what an asked fact may be where it is known
	orders []ways // by order
	// Whether it is known which facts must reach which, and by order the ways that
	// this leaves.
	reaching bool
	reached  []ways
}

func (b *Rulebook) newConfines() *confines {
	c := &confines{within: make([]span, len(b.Facts)), beside: make([]span, len(b.Facts)), orders: make([]ways, b.orders+1), reached: make([]ways, b.orders+1)}
	for i := range c.within {
		c.within[i], c.beside[i] = everything, span{low: nothing.low, high: nothing.high}
	}
	for i := range c.orders {
		c.orders[i], c.reached[i] = anyWay, anyWay
	}
	return c
}

// everything leaves a span as it is.
var everything = span{math.Inf(-1), math.Inf(1), ^uint64(0), true}

// fact is a worked-out or assumed value with what else the fact may be, within
// the case looked at.
func (c *confines) fact(slot int32, v span) span { return v.or(c.beside[slot]).meet(c.within[slot]) }

// meet is everything that both may be.
func (a span) meet(b span) span {
	return span{max(a.low, b.low), min(a.high, b.high), a.words & b.words, a.unknown && b.unknown}
}

// void reports that nothing is left.
func (a span) void() bool { return !a.known() && !a.unknown }

// inside reports whether a is nothing beyond b.
func (a span) inside(b span) bool { return a.meet(b) == a || a.void() }

// order says which pair of sides a comparison puts in order, from 1, and whether
// it writes them the other way round.
type order struct {
	number    int32
	exchanged bool
}

// ways is a set of the ways in which two sides may stand.
type ways uint8

const (
	leftLess ways = 1 << iota
	sidesEqual
	leftMore
	sideUnknown
	anyWay = leftLess | sidesEqual | leftMore | sideUnknown
)

// holding is the ways in which a comparison holds.
func (c comparison) holding() ways {
	return [...]ways{leftLess, leftLess | sidesEqual, leftMore, leftMore | sidesEqual, sidesEqual, leftLess | leftMore}[c]
}

// exchange looks at the sides the other way round.
func (w ways) exchange() ways {
	return w&(sidesEqual|sideUnknown) | w&leftLess<<2 | w&leftMore>>2
}

// comparison is how an atom may come out in the case looked at.
func (c *confines) comparison(o *Outlook, a *atom) outcomes {
	may := c.orders[a.order.number]
	if c.reaching {
		may &= c.reached[a.order.number] | sideUnknown
	}
	if a.order.exchanged {
		may = may.exchange()
	}
	return c.sides(o, a, may)
}

// sides is how an atom may come out when its sides stand in one of the ways
// given, and as far apart as what they are made of allows.
func (c *confines) sides(o *Outlook, a *atom, may ways) (out outcomes) {
	if a.apart != nil {
		may &= a.apart.ways(o, c.reaching)
	}
	holds := a.op.holding()
	if may&holds != 0 {
		out |= mayHold
	}
	if may&^(holds|sideUnknown) != 0 {
		out |= mayFail
	}
	if may&sideUnknown != 0 {
		out |= mayBeUnknown
	}
	return out
}
