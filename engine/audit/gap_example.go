package audit

import (
	"cmp"
	"math"
	"slices"

	"boremend/engine"
)

// example finds the simplest joint among a few draws of a group. Each is
// evaluated afresh before it counts.
func (g *group) example(book *engine.Rulebook, o GapOptions) GapExample {
	sampler, finder, fresh := NewSampler(book, o.Seed), newGapFinder(book), book.NewState()
	var best *joint
	for _, number := range g.draws {
		sampler.Draw(number)
		if g.of == AllOpen {
			finder.keepOpen(sampler.State) // so that only those to blame are unknown
		}
		j := newJoint(o.Units, book)
		j.read(sampler.State)
		shows := func() bool { return g.shownBy(finder, j.views[0].state) }
		if g.of == AllOpen {
			j.calm(shows)
		} else {
			j.simplify(shows)
		}
		if fresh.Load(j.views[0].state.Findings()); !g.shownBy(finder, fresh) {
			continue
		}
		if best == nil || j.compare(best) < 0 {
			best = j
		}
	}
	if best == nil { // no draw could be made simpler: show the first as it is
		sampler.Draw(g.draws[0])
		best = newJoint(o.Units, book)
		best.read(sampler.State)
	}
	return g.tell(book, best, o)
}

// shownBy reports whether a state is a gap of the group, for the same reason.
func (g *group) shownBy(f *gapFinder, s *engine.State) bool {
	now := f.judge(s)
	if now.of != g.of {
		return false
	}
	if g.of == AllOpen {
		if slices.ContainsFunc(g.unknown, s.Given) {
			return false
		}
		return len(g.unknown) > 0 || slices.Equal(f.cover(s, engine.Unknown, engine.Undecided), g.rules)
	}
	f.blame(s, &now)
	return now.key == g.key
}

// compare says which of two joints is the simpler example: fewer facts out of the
// ordinary, then fewer facts, then less to read.
func (j *joint) compare(other *joint) int {
	a, b := j.told(), other.told()
	return cmp.Or(outOfOrdinary(a)-outOfOrdinary(b), len(a)-len(b), lengthOf(a)-lengthOf(b))
}

func outOfOrdinary(facts []FactAt) (n int) {
	for _, f := range facts {
		if !f.Ordinary {
			n++
		}
	}
	return n
}

func lengthOf(facts []FactAt) (n int) {
	for _, f := range facts {
		n += len(f.Text)
	}
	return n
}

// tell describes an example: where the methods stand, with what is responsible.
func (g *group) tell(book *engine.Rulebook, j *joint, o GapOptions) GapExample {
	a := book.Advise("", j.views[0].state.Findings(), o.Units)
	e := GapExample{Facts: j.told(), Method: a.Chosen.Method, Verdict: a.Chosen.Verdict, Methods: []GapStanding{}}
	for _, m := range book.Methods {
		i := slices.IndexFunc(a.Methods, func(s engine.MethodStanding) bool { return s.Method == m.Name })
		s := a.Methods[i]
		out := GapStanding{Method: s.Method, Title: s.Title, Verdict: s.Verdict, Points: s.Known, Start: m.Start, Reasons: []engine.Reason{}}
		for _, r := range s.Reasons {
			if g.responsible(book, s, r) {
				out.Reasons = append(out.Reasons, r)
			}
		}
		if g.concerns(book, s) {
			e.Methods = append(e.Methods, out)
		}
	}
	return e
}

// concerns reports whether a method is part of the gap: those that tie, or all
// that do not stand.
func (g *group) concerns(book *engine.Rulebook, s engine.MethodStanding) bool {
	if g.of == Tie {
		return slices.Contains(g.methods, book.Method(s.Method))
	}
	return s.Method != book.Methods[book.Fallback].Name
}

// responsible reports whether a reason has a part in the gap.
func (g *group) responsible(book *engine.Rulebook, s engine.MethodStanding, r engine.Reason) bool {
	holds := r.Outcome == engine.Holds.String()
	switch {
	case g.of == Tie:
		return r.Effect == engine.Lean.String() && holds && !g.forAllThatTie(book, r.Rule)
	case r.Effect != engine.RuleOut.String():
		return false
	case g.of == NothingLeft:
		return holds && slices.Contains(g.rules, book.Rule(r.Rule))
	case s.Verdict == engine.NoGo.String():
		return holds
	}
	return r.Outcome == engine.Unknown.String()
}

// forAllThatTie reports whether a rule moves none of the methods against another.
func (g *group) forAllThatTie(book *engine.Rulebook, rule string) bool {
	r := book.Rules[book.Rule(rule)]
	return !slices.ContainsFunc(g.methods, func(m int) bool { return !slices.Contains(r.For, m) })
}

// share is a part of the draws with its error, 19 times in 20.
func share(count, of int) (part, err float64) {
	if of == 0 {
		return 0, 0
	}
	const nineteenOf, none = 1.96, 3 // of none in n draws, up to three in n are still likely
	part = float64(count) / float64(of)
	return part, max(nineteenOf*math.Sqrt(part*(1-part)/float64(of)), none/float64(of))
}
