package audit

import (
	"context"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"

	"boremend/engine"
	"boremend/engine/quantity"
)

// Draft is a bore that fills blanks, found by the engine and not yet judged by
// anybody.
type Draft struct {
	Blanks   []Blank // the one that it was looked for, and others that it fills as well
	From     string  // the case that it was made from
	Changed  []int   // facts that differ from it
	Findings engine.Findings
	Found    bool // false: none was found in the effort allowed
}

// How far the search for a bore goes.
const (
	seekSpread = 6    // values tried beside the thresholds of a fact
	seekBases  = 24   // cases in which two facts are changed at once
	seekDraws  = 4000 // random changes of several facts
	seekMost   = 4    // facts that one of them changes
)

// Seek looks for a bore that fills a blank: it changes one fact of a case, then
// two, then several by chance. The chance is the same in every run. What it
// returns has been evaluated from scratch.
func Seek(ctx context.Context, book *engine.Rulebook, list []Case, g Blank) Draft {
	k := &seeker{book: book, blank: g, state: book.NewState(), facts: book.Reading(&g.statement)}
	for _, slot := range k.facts {
		k.values = append(k.values, attempts(book, slot))
	}
	chance := rand.New(rand.NewPCG(1, uint64(len(list))))
	for _, try := range []func(Case) bool{k.one, k.two, func(c Case) bool { return k.several(c, chance) }} {
		for i, c := range list {
			if ctx.Err() != nil {
				return Draft{Blanks: []Blank{g}}
			}
			if k.base = i; try(c) && k.confirmed(c) {
				return k.found
			}
		}
	}
	return Draft{Blanks: []Blank{g}}
}

// SeekAll looks for a bore for each blank that none of the bores found before
// fills. When the context ends, the blanks that were not reached are left out.
func SeekAll(ctx context.Context, book *engine.Rulebook, list []Case, blanks []Blank, report Report) []Draft {
	var drafts []Draft
	s := book.NewState()
	for i, g := range blanks {
		at := slices.IndexFunc(drafts, func(d Draft) bool {
			if d.Found {
				s.Load(d.Findings)
			}
			return d.Found && g.filledBy(s)
		})
		if at >= 0 {
			drafts[at].Blanks = append(drafts[at].Blanks, g)
			continue
		}
		d := Seek(ctx, book, list, g)
		if ctx.Err() != nil {
			break
		}
		drafts = append(drafts, d)
		report.tell(i+1, len(blanks))
	}
	return drafts
}

// seeker is one search. Each of its steps leaves the state where it found the
// blank filled, with the changes made.
type seeker struct {
	book    *engine.Rulebook
	blank   Blank
	state   *engine.State
	facts   []int
	values  [][]value
	changed []change
	found   Draft
	base    int // number of the case at hand
}

// value is a number, a word, or unknown.
type value struct {
	is      float64
	unknown bool
}

type change struct {
	slot int
	to   value
}

// attempts are the values to try of a fact: thresholds and their neighbours,
// rounded as somebody would measure them, and unknown.
func attempts(book *engine.Rulebook, slot int) []value {
	f := book.Facts[slot]
	var list []value
	add := func(v float64) {
		if (f.Sort != engine.Number || v >= f.Low && v <= f.High) && !slices.Contains(list, value{is: v}) {
			list = append(list, value{is: v})
		}
	}
	for _, v := range book.Probes(slot, f.Low, f.High, seekSpread) {
		if f.Sort != engine.Number {
			add(v)
			continue
		}
		step := max(f.GiveOrTake(v), math.Abs(v)/50)
		if f.Kind == quantity.Count {
			step = 1
			v = math.Round(v)
		}
		for _, near := range []float64{v, v - step, v + step} {
			add(readable(near))
		}
	}
	return append(list, value{unknown: true})
}

// readable rounds to four digits.
func readable(v float64) float64 {
	out, err := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 4, 64), 64)
	if err != nil {
		return v
	}
	return out
}

// filledBy reports whether a state shows what no case does.
func (g *Blank) filledBy(s *engine.State) bool {
	answer, taken := s.Answer(&g.statement)
	switch {
	case !taken:
		return false
	case g.asked < 0:
		return answer == g.want
	}
	return s.AnswerOf(&g.statement, g.asked) == g.want && s.Turns(&g.statement, g.asked)
}

func (k *seeker) fills() bool { return k.blank.filledBy(k.state) }

func (k *seeker) set(c change) {
	if c.to.unknown {
		k.state.Unset(c.slot)
	} else {
		k.state.Set(c.slot, c.to.is)
	}
}

// one changes a single fact.
func (k *seeker) one(c Case) bool {
	k.state.Load(c.Findings)
	return k.from(0, nil)
}

// from tries every value of the facts from one on, and leaves the state as it
// was when none will do.
func (k *seeker) from(first int, before []change) bool {
	for i := first; i < len(k.facts); i++ {
		slot := k.facts[i]
		old, was := k.state.Value(slot)
		was = was && k.state.Given(slot)
		for _, v := range k.values[i] {
			k.set(change{slot, v})
			if k.fills() {
				k.changed = append(slices.Clone(before), change{slot, v})
				return true
			}
		}
		k.set(change{slot, value{old, !was}})
	}
	return false
}

// two changes two facts.
func (k *seeker) two(c Case) bool {
	if k.base >= seekBases {
		return false
	}
	k.state.Load(c.Findings)
	for i, slot := range k.facts {
		old, was := k.state.Value(slot)
		was = was && k.state.Given(slot)
		for _, v := range k.values[i] {
			k.set(change{slot, v})
			if k.from(i+1, []change{{slot, v}}) {
				return true
			}
		}
		k.set(change{slot, value{old, !was}})
	}
	return false
}

// several changes some facts by chance.
func (k *seeker) several(c Case, chance *rand.Rand) bool {
	if k.base >= seekBases || len(k.facts) == 0 {
		return false
	}
	for range seekDraws / seekBases {
		k.state.Load(c.Findings)
		k.changed = nil
		for range 2 + chance.IntN(seekMost-1) {
			i := chance.IntN(len(k.facts))
			made := change{k.facts[i], k.values[i][chance.IntN(len(k.values[i]))]}
			k.changed = append(slices.DeleteFunc(k.changed, func(c change) bool { return c.slot == made.slot }), made)
			k.set(made)
		}
		if k.fills() {
			return true
		}
	}
	return false
}

// confirmed evaluates the changed case from scratch and refuses one whose facts
// contradict each other.
func (k *seeker) confirmed(c Case) bool {
	found := slices.Clone(c.Findings)
	d := Draft{Blanks: []Blank{k.blank}, From: c.Name, Found: true}
	for _, made := range k.changed {
		d.Changed = append(d.Changed, made.slot)
		found = slices.DeleteFunc(found, func(f engine.Finding) bool { return f.Fact == made.slot })
		if !made.to.unknown {
			fact := k.book.Facts[made.slot]
			found = found.With(engine.Finding{Fact: made.slot, Value: made.to.is, GiveOrTake: fact.GiveOrTake(made.to.is), Origin: engine.Given})
		}
	}
	for i, f := range found {
		if f.Origin != engine.Given { // it came from readings, which are not kept
			found[i].Origin, found[i].Written = engine.Given, ""
		}
	}
	d.Findings = found
	contrary := false
	k.book.CheckTogether(found, quantity.Millimetre, func(*engine.Fact, string) { contrary = true })
	k.state.Load(found)
	k.found = d
	return !contrary && k.fills()
}
