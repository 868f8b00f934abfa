package engine

// Verdict is a method's standing.
type Verdict uint8

// The four verdicts.
const (
	Go          Verdict = iota
	Conditional         // go, with demands
	NoGo                // ruled out
	Undecided           // facts are missing
)

// String returns the word of the JSON contract.
func (v Verdict) String() string {
	return [...]string{"go", "conditional", "no_go", "open"}[v]
}

// Stands reports whether a method with this verdict may be advised.
func (v Verdict) Stands() bool { return v == Go || v == Conditional }

// tally is where the rules leave one method. Points come in quarters, so
// adding and taking away is exact.
type tally struct {
	out, open, demands int32
	known              float64 // points of what is known
	least, most        float64 // with every open lean against or for
}

func (t tally) verdict() Verdict {
	switch {
	case t.out > 0:
		return NoGo
	case t.open > 0:
		return Undecided
	case t.demands > 0:
		return Conditional
	}
	return Go
}

// count adds (sign 1) or takes back (sign -1) what a rule does to its methods
// when its condition comes out as given.
func (s *State) count(r *Rule, condition Truth, sign int32) {
	out := r.outcome(condition)
	if out == Fails || out == Unknown && r.IfUnknown == Silent || r.Effect == Caution {
		return
	}
	points := r.Points * float64(sign)
	for _, m := range r.For {
		t := &s.tallies[m]
		switch {
		case r.Effect == RuleOut && out == Holds:
			t.out += sign
		case r.Effect == RuleOut:
			t.open += sign
		case r.Effect == Demand && out == Holds:
			t.demands += sign
		case r.Effect == Lean && out == Holds:
			t.known, t.least, t.most = t.known+points, t.least+points, t.most+points
		case r.Effect == Lean && r.Points > 0:
			t.most += points
		case r.Effect == Lean:
			t.least += points
		}
	}
}

// Decision is which method the rules lead to.
type Decision struct {
	Method   int
	Verdict  Verdict
	Points   float64
	RunnerUp int     // the next standing method, or -1
	Lead     float64 // over the runner-up; meaningless without one
	Tie      bool    // the runner-up has as many points and is named later
	Narrow   bool
}

// Decide picks the standing method with the most points. Where none stands it
// is the best open one, and failing that the rulebook's fallback. Ties go to
// the method named first.
func (s *State) Decide() Decision {
	best, next, open := -1, -1, -1
	ahead := func(m, than int) bool { return than < 0 || s.tallies[m].known > s.tallies[than].known }
	for m := range s.tallies {
		switch v := s.tallies[m].verdict(); {
		case v.Stands() && ahead(m, best):
			best, next = m, best
		case v.Stands() && ahead(m, next):
			next = m
		case v == Undecided && ahead(m, open):
			open = m
		}
	}
	if best < 0 {
		best = open
	}
	if best < 0 {
		best = s.book.Fallback
	}
	t := s.tallies[best]
	d := Decision{Method: best, Verdict: t.verdict(), Points: t.known, RunnerUp: next}
	if next >= 0 {
		d.Lead = t.known - s.tallies[next].known
		d.Tie = d.Lead == 0
		d.Narrow = d.Lead <= s.book.Narrow
	}
	return d
}
