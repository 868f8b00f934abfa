package ask

import (
	"cmp"
	"slices"

	"boremend/cases"
	"boremend/engine"
)

// opening are the facts to begin with while next to nothing is known and all
// weigh alike: who may decide, then the metal and the main sizes. One that the
// rulebook does not have, or that cannot change the advice, is passed over.
var opening = []string{
	"lifts_people", "certified_structure", "manufacturer_position", "safety_critical",
	"material", "finish_bore", "worn_max", "edge_distance",
}

// spread is how many values of such a number are tried beside its thresholds.
const spread = 24

// open lists the facts of a bore that can change the advice, the next to ask
// first. Facts that were called unknown are not asked again. quiet says that no
// advice waits for them, although they could change it.
func (s *Session) open(b cases.Bore) (open []*engine.Fact, quiet bool) {
	state := s.book.NewState()
	state.Load(b.Findings)
	missing := state.Missing()
	open = s.unasked(b.Name, missing.Facts)
	if len(open) == 0 && (missing.Provisional || missing.Unsure) {
		// What tells most cannot be known, and hides what else could tell.
		open = s.unasked(b.Name, state.OpenFacts())
		slices.SortStableFunc(open, easier)
	}
	if len(open) == 0 {
		quiet = true
		open = s.unasked(b.Name, quietlyTelling(s.book, state))
		slices.SortStableFunc(open, easier)
	}
	slices.SortStableFunc(open, func(a, b *engine.Fact) int { return cmp.Compare(openingRank(a), openingRank(b)) })
	return open, quiet
}

// easier puts what is asked at every bore first, then what takes less time.
func easier(a, b *engine.Fact) int {
	return cmp.Or(cmp.Compare(a.Tier, b.Tier), cmp.Compare(a.Minutes, b.Minutes))
}

// unasked drops the facts that have an answer, even if it is that nobody knows.
func (s *Session) unasked(bore string, slots []int) []*engine.Fact {
	var facts []*engine.Fact
	for _, slot := range slots {
		f := s.book.Facts[slot]
		if _, said := s.draft.Answer(bore, f.Name); !said {
			facts = append(facts, f)
		}
	}
	return facts
}

func openingRank(f *engine.Fact) int {
	if i := slices.Index(opening, f.Name); i >= 0 {
		return i
	}
	return len(opening)
}

// quietlyTelling lists the facts that no advice waits for and that would all the
// same lead by themselves to another method or a narrow lead: those that go by an
// assumption as long as nobody looks, and those of silent rules.
func quietlyTelling(book *engine.Rulebook, state *engine.State) []int {
	was := state.Decide()
	var telling []int
	for slot, f := range book.Facts {
		if _, known := state.Value(slot); f.WorkedOut() || known && !state.Assumed(slot) {
			continue
		}
		for _, v := range book.Probes(slot, leastOf(book, state, f), f.High, spread) {
			state.Set(slot, v)
			if is := state.Decide(); is.Method != was.Method || is.Narrow && !was.Narrow {
				telling = append(telling, slot)
				break
			}
		}
		state.Unset(slot)
	}
	return telling
}

// leastOf is the least that a fact can be, given what is known.
func leastOf(book *engine.Rulebook, state *engine.State, f *engine.Fact) float64 {
	if f.AtLeast == "" {
		return f.Low
	}
	least, known := state.Value(book.Fact(f.AtLeast))
	if !known {
		return f.Low
	}
	return min(max(f.Low, least), f.High)
}

// next is the question that tells most; false when nothing is left to ask that
// could change an advice.
func (s *Session) next() (question, bool) {
	for _, b := range s.draft.Job().Bores {
		if !slices.Contains(s.bores, b.Name) {
			continue
		}
		if open, quiet := s.open(b); len(open) > 0 {
			return question{b.Name, open[0], quiet}, true
		}
	}
	return question{}, false
}

// rest is the next fact that nobody has spoken of, whether it matters or not:
// those that are asked at every bore first.
func (s *Session) rest() (question, bool) {
	var found question
	for _, b := range s.draft.Job().Bores {
		if !slices.Contains(s.bores, b.Name) {
			continue
		}
		for slot, f := range s.book.Facts {
			given := slices.ContainsFunc(b.Findings, func(g engine.Finding) bool { return g.Fact == slot })
			_, said := s.draft.Answer(b.Name, f.Name)
			if f.WorkedOut() || given || said {
				continue
			}
			if found.fact == nil || f.Tier < found.fact.Tier {
				found = question{bore: b.Name, fact: f}
			}
		}
		if found.fact != nil {
			return found, true
		}
	}
	return found, false
}
