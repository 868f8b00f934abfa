package engine

import (
	"math"
	"slices"

	"github.com/expr-lang/expr/ast"
)

// linear is a formula as a sum of facts, each so many times, and a constant.
// Spans alone cannot tell that `edge - bore / 2 > edge` never holds, since they
// forget that it is the same edge on both sides; the sum can.
type linear struct {
	terms    []term
	add      float64
	addGross float64
	steps    int // of arithmetic, each of which rounds
}

// term is a fact so many times. Gross counts what cancels as well: it has been
// added and taken away, and that rounds.
type term struct {
	slot         int32
	times, gross float64
}

// factSum is the sum of one fact alone.
func factSum(slot int32) linear { return linear{terms: []term{{slot, 1, 1}}} }

// linear reads an expression as a sum. Facts are taken as they are; false means
// that the expression is none.
func (c *compiler) linear(n ast.Node) (linear, bool) {
	if v, ok := c.constant(n); ok {
		return linear{add: v, addGross: math.Abs(v)}, true
	}
	switch n := n.(type) {
	case *ast.IdentifierNode:
		slot, ok := c.l.slots[n.Value]
		return factSum(int32(slot)), ok && c.l.book.Facts[slot].Sort == Number
	case *ast.UnaryNode:
		inner, ok := c.linear(n.Node)
		return linear{}.plus(inner, -1), ok && n.Operator == "-"
	case *ast.BinaryNode:
		left, ok := c.linear(n.Left)
		right, both := c.linear(n.Right)
		if !ok || !both {
			return linear{}, false
		}
		return left.joined(n.Operator, right)
	}
	return linear{}, false
}

func (l linear) joined(operator string, r linear) (linear, bool) {
	var out linear
	switch {
	case operator == "+":
		out = l.plus(r, 1)
	case operator == "-":
		out = l.plus(r, -1)
	case operator == "*" && len(r.terms) == 0:
		out = linear{}.plus(l, r.add)
	case operator == "*" && len(l.terms) == 0:
		out = linear{}.plus(r, l.add)
	case operator == "/" && len(r.terms) == 0 && r.add != 0:
		out = linear{}.plus(l, 1/r.add)
	default:
		return linear{}, false
	}
	out.steps = l.steps + r.steps + 1
	return out, true
}

// plus adds another sum so many times.
func (l linear) plus(r linear, times float64) linear {
	size := math.Abs(times)
	out := linear{terms: slices.Clone(l.terms), add: l.add + times*r.add, addGross: l.addGross + size*r.addGross, steps: l.steps + r.steps}
	for _, t := range r.terms {
		i := slices.IndexFunc(out.terms, func(o term) bool { return o.slot == t.slot })
		if i < 0 {
			i = len(out.terms)
			out.terms = append(out.terms, term{slot: t.slot})
		}
		out.terms[i].times += times * t.times
		out.terms[i].gross += size * t.gross
	}
	return out
}

// difference is how far the left side of a comparison lies from the right: as a
// sum of facts, and again for each of them that must reach another, as that other
// and what it is more.
type difference struct {
	sum  linear
	over []overLeast
}

// overLeast is a sum in which the least that a fact must reach stands in its
// place, so many times.
type overLeast struct {
	sum   linear
	slot  int32
	times float64
}

// trackApart works out for all comparisons of numbers how far their sides lie
// apart, where that is a sum.
func (c *compiler) trackApart() {
	for i := range c.p.atoms {
		a := &c.p.atoms[i]
		if a.sides != nil {
			a.apart = c.p.difference(*a.sides)
		}
	}
}

// difference works a sum out down to the facts that it rests on.
func (p *program) difference(sum linear) *difference {
	out := &difference{sum: p.expand(sum)}
	for _, t := range out.sum.terms {
		if least := p.least[t.slot]; least >= 0 && t.times != 0 {
			other := out.sum.plus(factSum(t.slot), -t.times).plus(p.expand(factSum(least)), t.times)
			out.over = append(out.over, overLeast{other, t.slot, t.times})
		}
	}
	return out
}

// expand puts in for worked-out facts the sums that they are. Where a fact may be
// assumed instead it stays.
func (p *program) expand(sum linear) linear {
	for i := 0; i < len(sum.terms); {
		t := sum.terms[i]
		st := &p.steps[t.slot]
		if t.times == 0 || st.linear == nil || st.assume.given() {
			i++
			continue
		}
		sum, i = sum.plus(factSum(t.slot), -t.times).plus(*st.linear, t.times), 0
	}
	return sum
}

// rounding bounds what the arithmetic of floating-point numbers can make of a
// sum, as a share of the sizes in it. It is far more than that of any formula
// that fits the longest allowed.
const rounding = 1e-9

// bounds is where the sum lies while its facts are within their spans.
func (l linear) bounds(o *Outlook) (low, high float64) {
	size := l.addGross
	low, high = l.add, l.add
	for _, t := range l.terms {
		a := o.spans[t.slot]
		size += t.gross * max(math.Abs(a.low), math.Abs(a.high))
		if t.times != 0 {
			x, y := t.times*a.low, t.times*a.high
			low, high = low+min(x, y), high+max(x, y)
		}
	}
	if l.exact() {
		return low, high
	}
	return low - rounding*size, high + rounding*size
}

// exact reports whether the sign of the sum suffers no rounding: one fact less
// another.
func (l linear) exact() bool {
	return l.steps <= 1 && l.addGross == 0 && !slices.ContainsFunc(l.terms, func(t term) bool { return math.Abs(t.times) > 1 || t.times != math.Trunc(t.times) })
}

// ways is how the sides of a comparison may stand where both are known. What
// facts must reach counts if that is known to be settled.
func (d *difference) ways(o *Outlook, reaching bool) ways {
	low, high := d.sum.bounds(o)
	for _, over := range d.over {
		if !reaching || !o.binds(over.slot) {
			continue
		}
		most := o.spans[over.slot].high - o.spans[o.book.least[over.slot]].low
		least, greatest := over.sum.bounds(o)
		x := over.times * max(0, most)
		low, high = max(low, least+min(0, x)), min(high, greatest+max(0, x))
	}
	out := anyWay
	if low >= 0 {
		out &^= leftLess
	}
	if high <= 0 {
		out &^= leftMore
	}
	if low > 0 || high < 0 {
		out &^= sidesEqual
	}
	return out
}
