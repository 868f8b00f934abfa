package audit

import (
	"context"
	"math/rand/v2"
	"slices"

	"boremend/engine"
)

// The effort of a survey.
const (
	drawn        = 3000 // joints drawn at the start, every third with gaps
	drawnNear    = 24   // joints drawn round one that was met, and values of each fact of it
	effortQuick  = 150  // cases divided before anything else is tried
	effortProof  = 3000 // cases divided at last
	roundsClimb  = 12   // changes of one fact
	startsClimb  = 4
	shareUnknown = 0.3 // of the facts of a joint with gaps
)

// survey answers questions about what can happen at a joint. Joints drawn at
// random answer most of them with yes; a joint that shows something rare is
// varied, which answers many more. What remains is proved, or looked for by
// climbing.
type survey struct {
	ctx     context.Context
	book    *engine.Rulebook
	options Options
	kind    string // for which questions are being put
	asked   []*asked
	byKey   map[string]*asked
	byName  map[string][]*asked // by what they speak of
	pending [][]*asked          // by the rule that must count as holding, from 1; 0 for noRule
	state   *engine.State
	random  *rand.Rand
	trials  [][]float64 // by fact; none for a worked-out one

	signatures  []signature // by rule
	comparisons []engine.Comparison
	uses        [][]About // by comparison: who makes it
}

// noRule stands for questions that do not turn on a rule.
const noRule = -1

// asked is a question with what became of it.
type asked struct {
	question engine.Question
	answer   engine.Answer
	found    engine.Findings // the joint, where it was met
	rule     int             // must count as holding, or noRule
	telling  bool            // a joint that meets it is worth varying
	open     Open
}

func newSurvey(ctx context.Context, book *engine.Rulebook, options Options) *survey {
	s := &survey{ctx: ctx, book: book, options: options, byKey: map[string]*asked{}, byName: map[string][]*asked{}, pending: make([][]*asked, len(book.Rules)+1),
		state: book.NewState(), random: rand.New(rand.NewPCG(3, 5)), trials: make([][]float64, len(book.Facts))}
	for slot, f := range book.Facts {
		if !f.WorkedOut() {
			s.trials[slot] = book.Trials(slot)
		}
	}
	s.comparisons = book.Comparisons()
	s.uses = s.comparisonUses()
	s.sign()
	return s
}

// ask puts a question, once for each key.
func (s *survey) ask(key string, a asked) *asked {
	if known := s.byKey[key]; known != nil {
		return known
	}
	a.open.Kind = s.kind
	s.byKey[key] = &a
	s.byName[a.open.key()] = append(s.byName[a.open.key()], &a)
	s.asked = append(s.asked, &a)
	s.pending[a.rule+1] = append(s.pending[a.rule+1], &a)
	return &a
}

// never reports whether a question has been answered with a certain no. One that
// was not asked has not.
func (s *survey) never(key string) bool {
	a := s.byKey[key]
	return a != nil && a.answer == engine.Never
}

// witness returns the joint at which a question was met, with no more facts than
// needed; nil where it was not.
func (s *survey) witness(key string) []Shown {
	a := s.byKey[key]
	if a == nil || a.answer != engine.Met {
		return nil
	}
	return s.show(a.question, a.found)
}

// unsettled lists the questions that were not answered.
func (s *survey) unsettled() []Open {
	open := []Open{}
	for _, a := range s.asked {
		if a.answer == engine.Unsettled && !s.moot(a) {
			open = append(open, a.open)
		}
	}
	slices.SortStableFunc(open, func(a, b Open) int { return a.About.compare(b.About) })
	return open
}

// settle answers the questions.
func (s *survey) settle(report Report) {
	for i := range drawn {
		if s.ctx.Err() != nil {
			return
		}
		s.draw(nil, i%3 == 2)
	}
	for _, a := range s.asked {
		if a.answer == engine.Met && a.telling && s.wondering(a) && s.ctx.Err() == nil {
			s.vary(s.needed(a.question, a.found))
		}
	}
	for i, a := range s.asked {
		if s.ctx.Err() != nil {
			return
		}
		if report != nil {
			report(i, len(s.asked))
		}
		if a.answer == engine.Unsettled && !s.moot(a) {
			s.resolve(a)
		}
	}
}

// wondering reports whether something of which a question speaks has other
// questions without an answer.
func (s *survey) wondering(a *asked) bool {
	return slices.ContainsFunc(s.byName[a.open.key()], func(other *asked) bool { return other.answer == engine.Unsettled })
}

// moot reports whether a question is about what else happens when a rule holds
// that was never seen to hold.
func (s *survey) moot(a *asked) bool {
	if a.rule == noRule {
		return false
	}
	holds := s.byKey[aboutRule(s.book.Rules[a.rule]).holdsKey()]
	return holds != nil && holds.answer != engine.Met
}

// resolve proves a question or looks for a joint that meets it.
func (s *survey) resolve(a *asked) {
	a.answer = s.state.Prove(s.ctx, a.question, effortQuick)
	if a.answer == engine.Unsettled && s.climb(a.question) {
		a.answer = engine.Met
	}
	if a.answer == engine.Unsettled {
		a.answer = s.state.Prove(s.ctx, a.question, effortProof)
	}
	if a.answer == engine.Met {
		a.found = s.state.Findings()
		s.vary(a.found)
	}
}

func (s *survey) climb(q engine.Question) bool {
	for range startsClimb {
		s.joint(nil, false)
		if s.state.Climb(q, s.random, roundsClimb) {
			return true
		}
	}
	return false
}

// vary looks at joints round one: the facts that it does not turn on at random,
// and each of its own facts changed in turn.
func (s *survey) vary(found engine.Findings) {
	for range drawnNear {
		s.draw(found, false)
	}
	for i, f := range found {
		trials := s.trials[f.Fact]
		for range min(drawnNear, len(trials)) {
			changed := slices.Clone(found)
			changed[i].Value = trials[s.random.IntN(len(trials))]
			s.draw(changed, false)
		}
	}
}

// draw looks at a random joint with some facts pinned.
func (s *survey) draw(pinned engine.Findings, gaps bool) {
	if s.joint(pinned, gaps) {
		s.look(!gaps)
	}
}

// joint puts a random joint with some facts pinned into the state; false means
// that none was found that does not contradict itself.
func (s *survey) joint(pinned engine.Findings, gaps bool) bool {
	found := make(engine.Findings, 0, len(s.trials))
	next := 0
	for slot, trials := range s.trials {
		switch {
		case next < len(pinned) && pinned[next].Fact == slot:
			found = append(found, pinned[next])
			next++
		case len(trials) == 0 || gaps && s.random.Float64() < shareUnknown:
		default:
			found = append(found, engine.Finding{Fact: slot, Value: s.value(slot, trials)})
		}
	}
	s.state.Load(found)
	for tries := 0; !s.state.Possible(); tries++ {
		if tries == 4 {
			return false
		}
		s.mend(found, pinned)
	}
	return true
}

// value draws one of the values that are likely to tell, or any other.
func (s *survey) value(slot int, trials []float64) float64 {
	f := s.book.Facts[slot]
	if v := f.Low + (f.High-f.Low)*s.random.Float64(); s.random.IntN(3) == 0 && f.Sort == engine.Number && f.Takes(v) {
		return v
	}
	return trials[s.random.IntN(len(trials))]
}

// mend draws anew those facts that lie below what they must reach.
func (s *survey) mend(found, pinned engine.Findings) {
	for _, f := range found {
		isPinned := slices.ContainsFunc(pinned, func(p engine.Finding) bool { return p.Fact == f.Fact })
		if s.book.Facts[f.Fact].AtLeast == "" || isPinned {
			continue
		}
		e := s.state.Whole(f.Fact)
		if v, _ := s.state.Value(f.Fact); v < e.Low {
			if v = e.Low + (e.High-e.Low)*s.random.Float64()*s.random.Float64(); s.book.Facts[f.Fact].Takes(v) {
				s.state.Set(f.Fact, v)
			}
		}
	}
}

// look answers what the joint in the state answers.
func (s *survey) look(complete bool) {
	for i, waiting := range s.pending {
		if len(waiting) == 0 || i > 0 && !s.state.Counts(i-1) {
			continue
		}
		s.pending[i] = slices.DeleteFunc(waiting, func(a *asked) bool {
			if a.answer == engine.Unsettled && (complete || !a.question.Complete) && a.question.Met(s.state) {
				a.answer, a.found = engine.Met, s.state.Findings()
			}
			return a.answer != engine.Unsettled
		})
	}
}
