// Package explain questions an advice: what would change it, what to find out
// next, how sure it is, and why one method and not another.
//
// It asks the engine again and again with one fact changed, which is cheap, and
// checks every answer by a fresh evaluation before it gives it. It knows nothing
// of bores, and nothing of how an answer is shown.
package explain

import (
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// Study is one bore whose advice is questioned. It serves one goroutine.
type Study struct {
	book  *engine.Rulebook
	found engine.Findings
	units quantity.System
	state *engine.State
	fresh *engine.State // for checking an answer from the start
	was   engine.Decision
	// Found once, when asked for.
	touchy  *engine.Touchy
	telling []int // the missing facts, most telling first
}

// New begins the study of one bore; texts are written in the units given.
func New(book *engine.Rulebook, found engine.Findings, units quantity.System) *Study {
	q := &Study{book: book, found: found, units: units, state: book.NewState(), fresh: book.NewState()}
	q.state.Load(found)
	q.was = q.state.Decide()
	return q
}

// touchiness finds whether the give-or-takes could overturn the advice.
func (q *Study) touchiness() engine.Touchy {
	if q.touchy == nil {
		t := q.state.Touchy(q.found)
		q.touchy = &t
	}
	return *q.touchy
}

// mostTelling lists the missing facts.
func (q *Study) mostTelling() []int {
	if q.telling == nil {
		q.telling = q.state.Missing().Facts
	}
	return q.telling
}

// finding returns what was found out about a fact.
func (q *Study) finding(slot int) (engine.Finding, bool) {
	i := slices.IndexFunc(q.found, func(f engine.Finding) bool { return f.Fact == slot })
	if i < 0 {
		return engine.Finding{}, false
	}
	return q.found[i], true
}

// restore puts a fact back to what was found.
func (q *Study) restore(slot int) {
	if f, given := q.finding(slot); given {
		q.state.Set(slot, f.Value)
		return
	}
	q.state.Unset(slot)
}

// decideAfresh evaluates the findings with some facts changed from the start.
func (q *Study) decideAfresh(changes ...engine.Finding) engine.Decision {
	found := q.found
	for _, c := range changes {
		found = found.With(c)
	}
	q.fresh.Load(found)
	return q.fresh.Decide()
}
