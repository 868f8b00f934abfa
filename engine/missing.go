package engine

import (
	"math/rand/v2"
	"slices"
)

// Missing says what the unknown facts could still do to a decision.
type Missing struct {
	// Provisional: in some combination the unknown facts change the advised
	// method, or make a clear lead narrow.
	Provisional bool
	// Unsure: that they change nothing could not be shown within the effort
	// allowed, although no combination that does was met.
	Unsure bool
	// Facts that can do so, most telling first.
	Facts []int
}

// The effort spent on combinations of unknown facts.
const (
	effortMissing = 600 // splits of a search through all of them
	samples       = 400 // drawn where that does not settle it
	spreadUnknown = 12  // values of a missing number, beside its thresholds
)

// Missing searches everything that the unknown facts could be. Where the search
// is not finished within the effort allowed, a fixed set of draws and every pair
// of values are tried as well. The state is left as it was.
func (s *State) Missing() Missing {
	decision := s.Decide()
	q := &query{s: s, was: decision, facts: s.OpenFacts()}
	if len(q.facts) == 0 {
		return Missing{Provisional: decision.Verdict == Undecided}
	}
	found := q.search()
	if found == settled {
		return Missing{Provisional: decision.Verdict == Undecided}
	}
	q.telling = make([]int, len(q.facts))
	for _, slot := range q.facts {
		low, high := s.rangeOf(slot)
		q.values = append(q.values, s.book.Probes(slot, low, high, spreadUnknown))
	}
	var credited []int
	if found == turned {
		credited = q.credit()
	} else {
		q.draw()
		if !q.changed {
			q.pairs()
		}
	}
	q.contexts()
	for _, i := range credited {
		q.telling[i] = max(q.telling[i], 1)
	}
	for _, slot := range q.facts {
		s.Unset(slot)
	}
	provisional := q.changed || decision.Verdict == Undecided
	return Missing{Provisional: provisional, Unsure: !provisional, Facts: q.ranked()}
}

// search goes through all combinations of the unknown facts. When it finds one
// that turns the outcome, the state is left there.
func (q *query) search() searched {
	r := q.s.newSearch(effortMissing)
	for _, slot := range q.facts {
		r.let(slot, q.s.book.spanOf(slot, q.s.Whole(slot)))
	}
	r.safe = func(o *Outlook) bool {
		return o.only(q.was.Method) && (q.was.Narrow || !o.mayBeNarrow(q.was.Method))
	}
	r.turned = q.turned
	found := r.run()
	if found != turned {
		for _, slot := range q.facts {
			q.s.Unset(slot)
		}
	}
	return found
}

// credit finds the facts without which the combination in the state would not
// turn the outcome.
func (q *query) credit() (credited []int) {
	q.changed = true
	for i, slot := range q.facts {
		v := q.s.number[slot]
		if q.s.Unset(slot); !q.turned(q.s.Decide()) {
			q.s.Set(slot, v)
			credited = append(credited, i)
		}
	}
	return credited
}

// OpenFacts lists the unknown facts on which something still hangs: a rule that
// may rule out or lean, for a method that is not already ruled out.
func (s *State) OpenFacts() []int {
	var open []int
	for slot, f := range s.book.Facts {
		if s.known[slot] || f.WorkedOut() {
			continue
		}
		if slices.ContainsFunc(s.book.impacts[slot].conditions, s.hangs) {
			open = append(open, slot)
		}
	}
	return open
}

// hangs reports whether a condition is unknown and its rule could still move
// the choice of method. A silent rule is welcome, and nothing waits for it.
func (s *State) hangs(condition int32) bool {
	if int(condition) >= s.book.rulesAt || s.conditions[condition] != Unknown {
		return false
	}
	r := s.book.Rules[condition]
	if r.IfUnknown == Silent || r.Effect != RuleOut && r.Effect != Lean {
		return false
	}
	return slices.ContainsFunc(r.For, func(m int) bool {
		// What holds while unknown may yet be lifted.
		return s.tallies[m].out == 0 || r.IfUnknown == Hold && r.Effect == RuleOut
	})
}

// rangeOf is where the value of an unknown fact may lie, given what is known.
func (s *State) rangeOf(slot int) (low, high float64) {
	f := s.book.Facts[slot]
	low, high = f.Low, f.High
	if least := s.book.Fact(f.AtLeast); f.AtLeast != "" && s.known[least] {
		low = min(max(low, s.number[least]), high)
	}
	return low, high
}

// query is a search over the values of unknown facts.
type query struct {
	s       *State
	was     Decision
	facts   []int
	values  [][]float64
	telling []int // by fact: how often it alone turned the outcome
	changed bool
}

// turned reports whether a decision differs from the one before, or is no longer
// a clear one.
func (q *query) turned(d Decision) bool {
	return d.Method != q.was.Method || d.Narrow && !q.was.Narrow
}

// see compares the decision now with the one before.
func (q *query) see() bool {
	changed := q.turned(q.s.Decide())
	q.changed = q.changed || changed
	return changed
}

func (q *query) set(i, value int) { q.s.Set(q.facts[i], q.values[i][value]) }

// draws returns the random numbers of this search, the same in every run.
func draws() *rand.Rand { return rand.New(rand.NewPCG(1, 2)) }

// draw tries combinations at random, until one changes the decision.
func (q *query) draw() {
	random := draws()
	for range samples {
		q.complete(random)
		if q.see() {
			return
		}
	}
}

func (q *query) complete(random *rand.Rand) {
	for i := range q.facts {
		q.set(i, random.IntN(len(q.values[i])))
	}
}

// pairs tries every pair of values, the others drawn at random, until one
// changes the decision.
func (q *query) pairs() {
	random := draws()
	for i := range q.facts {
		for j := i + 1; j < len(q.facts); j++ {
			q.complete(random)
			if q.pair(i, j) {
				return
			}
		}
	}
}

func (q *query) pair(i, j int) (changed bool) {
	for v := range q.values[i] {
		q.set(i, v)
		for w := range q.values[j] {
			q.set(j, w)
			if q.see() {
				return true
			}
		}
	}
	return false
}

// contextsTried is in how many surroundings each fact is varied alone.
const contextsTried = 24

// contexts finds which facts turn the outcome by themselves, first with the
// others unknown and then with the others drawn at random.
func (q *query) contexts() {
	for _, slot := range q.facts {
		q.s.Unset(slot)
	}
	changed := q.changed
	for i, slot := range q.facts {
		q.vary(i)
		q.s.Unset(slot)
	}
	random := draws()
	for range contextsTried {
		q.complete(random)
		for i, slot := range q.facts {
			before := q.s.number[slot]
			q.vary(i)
			q.s.Set(slot, before)
		}
	}
	q.changed = changed
}

// vary counts a fact as telling when its values lead to different methods.
func (q *query) vary(i int) {
	turned, stayed := false, false
	for v := range q.values[i] {
		q.set(i, v)
		changed := q.see()
		turned, stayed = turned || changed, stayed || !changed
	}
	if turned && stayed {
		q.telling[i]++
	}
}

// ranked lists the telling facts, the most telling first.
func (q *query) ranked() []int {
	order := make([]int, 0, len(q.facts))
	for i := range q.facts {
		if q.telling[i] > 0 && q.changed {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return q.telling[b] - q.telling[a] })
	for i, f := range order {
		order[i] = q.facts[f]
	}
	return order
}
