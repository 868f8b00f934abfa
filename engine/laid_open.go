package engine

import (
	"math"
	"slices"
	"strings"

	"boremend/engine/quantity"
)

// clause is a condition laid open: yes-or-no facts that are worked out are
// replaced by what they follow from, down to tests of single facts.
type clause struct {
	op   clauseOp
	test int // of a testClause
	is   Truth
	kids []*clause
}

type clauseOp uint8

const (
	testClause  clauseOp = iota
	constClause          // is
	notClause
	andClause
	orClause
	elseClause // the first kid, or the second while the first is unknown
)

// test is one question in clauses: an atom, shared by all clauses that ask it.
type test struct {
	atom *atom
	may  outcomes // in the widest outlook
}

// clauses lays conditions open, and numbers the tests in them.
type clauses struct {
	wide    *Outlook // everything that the facts may be within their ranges
	tests   []test
	numbers map[string]int
	moved   []string // limit.NAMEs whose value a variant has changed
	fixed   *atom    // the outcome of this one is taken to be as
	as      Truth
}

func (b *Rulebook) newClauses() *clauses {
	return &clauses{wide: b.widest(), numbers: map[string]int{}}
}

// widest is the outlook in which nothing is known but the ranges of the facts.
func (b *Rulebook) widest() *Outlook {
	o := newOutlook(b.NewState())
	whole := func(slot int) span {
		s := b.spanOf(slot, b.Facts[slot].Extent())
		s.unknown = true
		return s
	}
	for slot, f := range b.Facts {
		if !f.WorkedOut() && f.Assume == "" {
			o.given[slot], o.spans[slot] = true, whole(slot)
		}
	}
	for _, it := range b.tape {
		o.do(it)
		if it.isStep && !b.Facts[it.index].WorkedOut() && !o.given[it.index] {
			s := whole(int(it.index))
			s.unknown = false // the assumption is taken then
			o.spans[it.index] = o.spans[it.index].or(s)
		}
	}
	return o
}

// open lays a condition of a program open. The program is the one of the widest
// outlook, or a variant of it.
func (c *clauses) open(b *Rulebook, root int32) *clause {
	n := b.nodes[root]
	switch n.op {
	case constantNode:
		return &clause{op: constClause, is: Truth(n.first)}
	case atomNode:
		return c.ofAtom(b, &b.atoms[n.first])
	}
	out := &clause{op: map[nodeOp]clauseOp{notNode: notClause, andNode: andClause, orNode: orClause}[n.op]}
	if n.op == notNode {
		out.kids = []*clause{c.open(b, b.kids[n.first])}
		return out
	}
	for _, k := range b.kids[n.first : n.first+n.count] {
		out.kids = append(out.kids, c.open(b, k))
	}
	return out
}

// ofAtom opens a worked-out fact, and numbers every other test. What is worked
// out is opened as the unchanged rulebook works it out.
func (c *clauses) ofAtom(b *Rulebook, a *atom) *clause {
	base := c.wide.book
	if a == c.fixed {
		return &clause{op: constClause, is: c.as}
	}
	if a.shape == flag && base.Facts[a.left].WorkedOut() {
		return c.ofFact(base, a.left)
	}
	key := a.text
	for _, limit := range c.moved {
		if b != base && mentions(a.text, limit) {
			key += " anew"
			break
		}
	}
	number, known := c.numbers[key]
	if !known {
		number = len(c.tests)
		c.numbers[key] = number
		t := test{a, mayFail | mayBeUnknown | mayHold}
		if a.shape != general {
			t.may = c.wide.test(a)
		}
		c.tests = append(c.tests, t)
	}
	return &clause{op: testClause, test: number}
}

// ofFact lays a worked-out yes-or-no fact open.
func (c *clauses) ofFact(b *Rulebook, slot int32) *clause {
	s := &b.steps[slot]
	if !s.assume.given() {
		return c.open(b, s.from.root)
	}
	return &clause{op: elseClause, kids: []*clause{c.open(b, s.from.root), c.open(b, s.assume.root)}}
}

// mentions reports whether a formula names a limit, and not one that only
// begins like it.
func mentions(text, limit string) bool {
	for at := strings.Index(text, limit); at >= 0; {
		rest := text[at+len(limit):]
		if rest == "" || !strings.ContainsRune("abcdefghijklmnopqrstuvwxyz0123456789_", rune(rest[0])) {
			return true
		}
		next := strings.Index(rest, limit)
		if next < 0 {
			return false
		}
		at += len(limit) + next
	}
	return false
}

// box is a part of everything that the facts may be: what is left of each span,
// and the tests that are settled without one.
type box struct {
	spans   []span
	settled map[int]Truth
}

// may is how a test may come out in the box.
func (x *box) may(c *clauses, number int) outcomes {
	if t, settled := x.settled[number]; settled {
		return outcomesOf(t)
	}
	t := &c.tests[number]
	if t.atom.shape == general {
		return t.may
	}
	o := *c.wide
	o.spans = x.spans
	return o.test(t.atom)
}

// fold is how a clause may come out in the box.
func (x *box) fold(c *clauses, k *clause) outcomes {
	switch k.op {
	case testClause:
		return x.may(c, k.test)
	case constClause:
		return outcomesOf(k.is)
	case notClause:
		return x.fold(c, k.kids[0]).not()
	case elseClause:
		first := x.fold(c, k.kids[0])
		if first&mayBeUnknown == 0 {
			return first
		}
		return first&^mayBeUnknown | x.fold(c, k.kids[1])
	}
	out := x.fold(c, k.kids[0])
	for _, kid := range k.kids[1:] {
		if k.op == andClause {
			out = out.and(x.fold(c, kid))
		} else {
			out = out.or(x.fold(c, kid))
		}
	}
	return out
}

// loose finds a test in the clause that may still come out in several ways, or -1.
func (x *box) loose(c *clauses, k *clause) int {
	if k.op == testClause {
		if may := x.may(c, k.test); may&(may-1) != 0 {
			return k.test
		}
		return -1
	}
	if may := x.fold(c, k); may&(may-1) == 0 {
		return -1
	}
	for _, kid := range k.kids {
		if number := x.loose(c, kid); number >= 0 {
			return number
		}
	}
	return -1
}

// part is the part of the box in which a test comes out in one way. It is false
// where that part is empty.
func (x *box) part(c *clauses, number int, as Truth) (box, bool) {
	a := c.tests[number].atom
	out := box{slices.Clone(x.spans), map[int]Truth{number: as}}
	for n, t := range x.settled {
		out.settled[n] = t
	}
	switch {
	case a.shape == general:
		return out, true
	case a.shape == againstFact:
		if as != Unknown {
			out.spans[a.left].unknown, out.spans[a.right].unknown = false, false
		}
		return out, true
	}
	s := &out.spans[a.left]
	if as == Unknown {
		possible := s.unknown
		*s = nothing
		return out, possible
	}
	s.unknown = false
	switch {
	case a.shape == againstConstant:
		narrow(s, a.op, a.constant, as, c.wide.book.Facts[a.left].Kind == quantity.Count)
		return out, s.low <= s.high
	case a.shape == flag:
		s.words &= map[Truth]uint64{Holds: 2, Fails: 1}[as]
	case as == Holds:
		s.words &= a.set
	default:
		s.words &^= a.set
	}
	return out, s.words != 0
}

// narrow keeps the values of which a comparison with a constant comes out as said.
func narrow(s *span, op comparison, at float64, as Truth, whole bool) {
	if as == Fails {
		op = [...]comparison{less: greaterEqual, lessEqual: greater, greater: lessEqual, greaterEqual: less, equal: notEqual, notEqual: equal}[op]
	}
	switch op {
	case less:
		s.high = min(s.high, math.Nextafter(at, math.Inf(-1)))
	case lessEqual:
		s.high = min(s.high, at)
	case greater:
		s.low = max(s.low, math.Nextafter(at, math.Inf(1)))
	case greaterEqual:
		s.low = max(s.low, at)
	case equal:
		s.low, s.high = max(s.low, at), min(s.high, at)
	}
	if whole {
		s.low, s.high = math.Ceil(s.low), math.Floor(s.high)
	}
}

// impossible reports whether no bore lies in the box, because a worked-out fact
// cannot be what is left of its span, given what is left of the others.
func (x *box) impossible(c *clauses) bool {
	b := c.wide.book
	o := newOutlook(b.NewState())
	for slot, f := range b.Facts {
		if !f.WorkedOut() {
			o.given[slot], o.spans[slot] = true, x.spans[slot]
		}
	}
	for _, it := range b.tape {
		o.do(it)
		if !it.isStep || !b.Facts[it.index].WorkedOut() {
			continue
		}
		s, left := &o.spans[it.index], x.spans[it.index]
		s.low, s.high = max(s.low, left.low), min(s.high, left.high)
		s.words &= left.words
		if s.unknown = s.unknown && left.unknown; !s.unknown && !s.known() {
			return true
		}
	}
	return false
}
