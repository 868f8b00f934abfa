package audit

import (
	"math"
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// gapWitness finds examples of gaps.
type gapWitness struct {
	book    *engine.Rulebook
	sampler *Sampler
	finder  *gapFinder
	joint   *joint
	fresh   *engine.State
}

func newGapWitness(book *engine.Rulebook, o GapOptions) *gapWitness {
	return &gapWitness{book, NewSampler(book, o.Seed), newGapFinder(book), newJoint(o.Units, book), book.NewState()}
}

// example finds the simplest joint among a few draws of a group. Each is
// evaluated afresh before it counts.
func (w *gapWitness) example(g *group) GapExample {
	var best *example
	for _, number := range g.draws {
		w.sampler.Draw(number)
		if g.of == AllOpen {
			w.finder.keepOpen(w.sampler.State) // so that only those to blame are unknown
		}
		w.joint.read(w.sampler.State)
		shows := func() bool { return g.shownBy(w.finder, w.joint.views[0].state) }
		if g.of == AllOpen {
			w.joint.calm(shows)
		} else {
			w.joint.simplify(shows)
		}
		e := w.joint.example()
		w.fresh.Load(e.found[0])
		if g.shownBy(w.finder, w.fresh) && (best == nil || e.compare(best) < 0) {
			best = e
		}
	}
	if best == nil { // no draw could be made simpler: show the last as it is
		w.joint.read(w.sampler.State)
		best = w.joint.example()
	}
	return g.tell(w.book, best, w.joint.units)
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

// tell describes an example: where the methods stand, with what is responsible.
func (g *group) tell(book *engine.Rulebook, of *example, units quantity.System) GapExample {
	a := book.Advise("", of.found[0], units)
	e := GapExample{Facts: of.facts, Method: a.Chosen.Method, Verdict: a.Chosen.Verdict, Methods: []GapStanding{}}
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
