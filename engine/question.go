package engine

import (
	"context"
	"slices"
)

// Question asks whether there can be a bore at which all clauses are met. Facts
// are within their ranges and none lies below the one that it must reach; they
// may be unknown as well, unless only complete bores are asked after.
type Question struct {
	Clauses  []Clause
	Complete bool // every fact that the clauses depend on is known
}

// Met reports whether all clauses are met in a state.
func (q Question) Met(s *State) bool {
	for _, c := range q.Clauses {
		if !c.met(s) {
			return false
		}
	}
	return true
}

func (q Question) may(o *Outlook) bool {
	for _, c := range q.Clauses {
		if !c.may(o) {
			return false
		}
	}
	return true
}

// Answer is what became of a question.
type Answer uint8

// The three answers.
const (
	Unsettled Answer = iota // not within the effort allowed
	Never                   // for certain there is no such bore
	Met                     // there is, and it was found
)

// proof goes through everything that could happen at a bore. It bounds all of it
// at once; where a clause may still be met, it looks at a bore in the middle, and
// then takes two cases: a fact known or not, below a threshold or not, a
// worked-out fact within one part or the other, two sides in this order or in
// another. Cases that contradict themselves fall away.
//
// It first settles the comparisons that stand nearest to what is asked, whatever
// they follow from: often two of them exclude each other by themselves. Only
// where none is left open does it go back to what they follow from.
type proof struct {
	question Question
	o        *Outlook
	s        *State
	scope    scope
	sizes    []float64 // by slot: of the spans at the start
	left     int       // cases that may still be divided
	ctx      context.Context
}

// Prove answers a question by proof. The state is used for looking at bores: it
// is left with one that meets all clauses when the answer is Met.
func (s *State) Prove(ctx context.Context, question Question, effort int) Answer {
	p := &proof{question: question, s: s, scope: s.book.scope(question.Clauses), left: effort, ctx: ctx, sizes: make([]float64, len(s.book.Facts))}
	s.Load(nil)
	p.o = newOutlook(s)
	p.o.confines = s.book.newConfines()
	for _, slot := range p.scope.asked {
		a := s.book.Facts[slot].whole()
		a.unknown = !question.Complete
		p.let(slot, a)
		p.sizes[slot] = breadth(a)
	}
	p.work()
	for _, slot := range p.scope.worked {
		p.sizes[slot] = breadth(p.o.spans[slot])
	}
	return p.look()
}

// let narrows an asked fact down and looks at a value of it.
func (p *proof) let(slot int32, a span) {
	p.o.given[slot], p.o.spans[slot] = !a.unknown, a
	known := a
	known.unknown = false
	p.o.confines.beside[slot] = known
	if !known.known() {
		p.s.Unset(int(slot))
		return
	}
	p.s.Set(int(slot), p.s.book.middle(int(slot), known))
}

// work evaluates what the question depends on. Only when all of it stands, for
// the case looked at, is it known which facts must reach which, and how far; with
// that everything is narrowed down once more.
func (p *proof) work() {
	c := p.o.confines
	c.reaching = false
	p.run()
	if c.reaching = p.reach(); c.reaching {
		p.run()
	}
}

func (p *proof) run() {
	for _, it := range p.scope.tape {
		p.o.do(it)
	}
}

// reach keeps known facts from lying below those that they must reach, where
// something compares the two, and reports whether there are any such facts.
func (p *proof) reach() (any bool) {
	for _, slot := range p.scope.asked {
		if p.o.book.least[slot] < 0 {
			continue
		}
		binds := p.o.binds(slot)
		any = any || binds
		least, may := p.o.book.leastOrders[slot], anyWay
		if below := leftLess; binds && least.exchanged {
			may &^= below.exchange()
		} else if binds {
			may &^= below
		}
		p.o.confines.reached[least.number] = may
	}
	return any
}

func (p *proof) look() Answer {
	switch {
	case p.impossible(), !p.question.may(p.o):
		return Never
	case p.question.Met(p.s) && p.s.Possible():
		return Met
	case p.left <= 0 || p.ctx.Err() != nil:
		return Unsettled
	}
	p.left--
	cases := p.divide()
	if len(cases) == 0 {
		return Unsettled
	}
	found := Never
	for _, enter := range cases {
		undo := enter()
		p.work()
		answer := p.look()
		if answer == Met {
			return Met
		}
		undo()
		if answer == Unsettled {
			found = Unsettled
		}
	}
	p.work()
	return found
}

// impossible reports whether the case contradicts itself.
func (p *proof) impossible() bool {
	for _, slot := range p.scope.asked {
		if p.o.below(slot) {
			return true
		}
	}
	for _, slot := range p.scope.facts() {
		if p.o.spans[slot].void() {
			return true
		}
	}
	return slices.ContainsFunc(p.scope.atoms, func(a int32) bool { return p.o.atoms[a] == 0 })
}

// binds reports whether a fact is known and so is the one that it must reach.
func (o *Outlook) binds(slot int32) bool {
	least := o.book.least[slot]
	if least < 0 || !o.given[slot] || o.spans[least].unknown {
		return false
	}
	// What is only assumed binds nobody.
	return o.given[least] || !o.book.steps[least].assume.given()
}

// below reports whether a known fact lies for certain below the one that it must
// reach.
func (o *Outlook) below(slot int32) bool {
	if !o.binds(slot) {
		return false
	}
	least := o.book.least[slot]
	return o.spans[slot].known() && o.spans[least].known() && o.spans[slot].high < o.spans[least].low
}

// Possible reports whether no fact found out lies below the one that it must
// reach.
func (s *State) Possible() bool {
	for slot, least := range s.book.least {
		if least >= 0 && s.given[slot] && s.known[least] && !s.assumed[least] && s.number[slot] < s.number[least] {
			return false
		}
	}
	return true
}
