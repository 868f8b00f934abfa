package audit

import (
	"fmt"
	"slices"

	"boremend/engine"
)

// gap is what kind of gap a joint is, and what is responsible for it.
type gap struct {
	of      string // one of the kinds; empty for a joint that is no gap
	sent    bool   // no method is left because a rule itself speaks for the fallback
	key     string
	rules   []int
	methods []int
	unknown []int
}

// gapFinder judges joints of one rulebook. It serves one goroutine.
type gapFinder struct {
	book   *engine.Rulebook
	usual  []float64
	probes [][]float64
	floors []engine.Floor
	forIt  []int // the rules that speak for the fallback, and it alone
}

func newGapFinder(book *engine.Rulebook) *gapFinder {
	f := &gapFinder{book: book, usual: ordinary(book), floors: book.Floors(), probes: make([][]float64, len(book.Facts))}
	for slot, fact := range book.Facts {
		if !fact.WorkedOut() {
			f.probes[slot] = stops(book, slot)
		}
	}
	for i, r := range book.Rules {
		if r.Effect == engine.Lean && r.Points > 0 && len(r.For) == 1 && r.For[0] == book.Fallback {
			f.forIt = append(f.forIt, i)
		}
	}
	return f
}

// judge tells what kind of gap a state is.
func (f *gapFinder) judge(s *engine.State) gap {
	stands, open := false, false
	for m := range f.book.Methods {
		if m != f.book.Fallback {
			v, _ := s.Verdict(m)
			stands, open = stands || v.Stands(), open || v == engine.Undecided
		}
	}
	switch {
	case stands && s.Decide().Tie:
		return gap{of: Tie}
	case stands:
		return gap{}
	case slices.ContainsFunc(f.forIt, func(i int) bool { return counts(s, f.book.Rules[i], i) == engine.Holds }):
		return gap{sent: true}
	case open:
		return gap{of: AllOpen}
	}
	return gap{of: NothingLeft}
}

// counts is what a rule counts as: one that is to hold until somebody looks
// holds while it is unknown.
func counts(s *engine.State, r *engine.Rule, i int) engine.Truth {
	outcome := s.Outcome(i)
	if outcome == engine.Unknown && r.IfUnknown == engine.Hold {
		return engine.Holds
	}
	return outcome
}

// blame finds what is responsible for a gap, and with it the group.
func (f *gapFinder) blame(s *engine.State, g *gap) {
	switch g.of {
	case NothingLeft:
		g.rules = f.cover(s, engine.Holds, engine.NoGo)
	case Tie:
		g.methods = f.leaders(s)
	case AllOpen:
		g.unknown = f.keepOpen(s)
		if len(g.unknown) == 0 {
			g.rules = f.cover(s, engine.Unknown, engine.Undecided)
		}
	}
	g.key = fmt.Sprint(g.of, g.rules, g.methods, g.unknown)
}

// leaders lists the standing methods that have the most points.
func (f *gapFinder) leaders(s *engine.State) (leaders []int) {
	points := s.Decide().Points
	for m := range f.book.Methods {
		if v, own := s.Verdict(m); v.Stands() && own == points {
			leaders = append(leaders, m)
		}
	}
	return leaders
}

// cover picks a few rules of an outcome that between them account for the verdict
// of every method that has it, the fallback aside: each time the rule that
// accounts for most of the rest, and of equals the first.
func (f *gapFinder) cover(s *engine.State, outcome engine.Truth, verdict engine.Verdict) (rules []int) {
	left := make([]bool, len(f.book.Methods))
	for m := range left {
		v, _ := s.Verdict(m)
		left[m] = m != f.book.Fallback && v == verdict
	}
	for {
		best, most := -1, 0
		for i, r := range f.book.Rules {
			if r.Effect != engine.RuleOut || r.IfUnknown == engine.Silent && outcome == engine.Unknown || counts(s, r, i) != outcome {
				continue
			}
			accounts := 0
			for _, m := range r.For {
				if left[m] {
					accounts++
				}
			}
			if accounts > most {
				best, most = i, accounts
			}
		}
		if best < 0 {
			slices.Sort(rules)
			return rules
		}
		rules = append(rules, best)
		for _, m := range f.book.Rules[best].For {
			left[m] = false
		}
	}
}

// keepOpen finds unknown facts that keep every method from standing. One after
// the other the unknown facts are given a value with which that stays so; those
// for which there is none, as things then are, are to blame. The state is left
// with the values.
func (f *gapFinder) keepOpen(s *engine.State) (unknown []int) {
	for slot, fact := range f.book.Facts {
		if !fact.WorkedOut() && !s.Given(slot) && !f.fill(s, slot) {
			unknown = append(unknown, slot)
		}
	}
	return unknown
}

func (f *gapFinder) fill(s *engine.State, slot int) bool {
	stays := func(v float64) bool {
		s.Set(slot, v)
		return s.PossibleAsPut(f.floors) && f.judge(s).of == AllOpen
	}
	if stays(f.usual[slot]) || slices.ContainsFunc(f.probes[slot], stays) {
		return true
	}
	s.Unset(slot)
	return false
}
