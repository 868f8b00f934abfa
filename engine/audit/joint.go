package audit

import (
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// joint is one bore as one rulebook sees it, or as two see it side by side. Its
// facts are those that any of the books asks for, matched by name.
type joint struct {
	views []*view
	facts []*fact
	units quantity.System // of the reader
}

// view is a joint under one rulebook.
type view struct {
	book   *engine.Rulebook
	state  *engine.State
	floors []engine.Floor
	slots  []int   // by fact of the joint; -1 where the book does not ask for it
	words  [][]int // by fact and word of the joint: the word of the book, or -1
}

// fact is one fact of a joint. The value of a choice is a word in its list,
// which holds the words of all books.
type fact struct {
	*engine.Fact // as the first book that asks for it declares it
	words        []string
	known        bool
	value        float64
	text         string // the value as a job would write it, where it was rounded
	usual        float64
	usualText    string
}

// newJoint matches the facts of the books.
func newJoint(units quantity.System, books ...*engine.Rulebook) *joint {
	j := &joint{units: units}
	for _, book := range books {
		j.views = append(j.views, &view{book: book, state: book.NewState(), floors: book.Floors()})
	}
	for _, book := range books {
		usual := ordinary(book)
		for slot, f := range book.Facts {
			if !f.WorkedOut() && !slices.ContainsFunc(j.facts, func(g *fact) bool { return g.Name == f.Name }) {
				own := &fact{Fact: f, words: j.wordsOf(f.Name), usual: usual[slot]}
				if f.Sort == engine.Number {
					own.usualText, own.usual = rounded(f, own.usual, units)
				}
				j.facts = append(j.facts, own)
			}
		}
	}
	for _, v := range j.views {
		v.match(j.facts)
	}
	return j
}

// wordsOf gathers the words of a choice from all books, in their order.
func (j *joint) wordsOf(name string) (words []string) {
	for _, v := range j.views {
		if slot := v.book.Fact(name); slot >= 0 {
			for _, word := range v.book.Facts[slot].Choices {
				if !slices.Contains(words, word) {
					words = append(words, word)
				}
			}
		}
	}
	return words
}

// match finds the facts of a joint in the book. One that is of another sort or
// kind there, or is worked out, is another fact of the same name.
func (v *view) match(facts []*fact) {
	for _, f := range facts {
		slot := v.book.Fact(f.Name)
		if slot >= 0 {
			if own := v.book.Facts[slot]; own.WorkedOut() || own.Sort != f.Sort || own.Kind != f.Kind {
				slot = -1
			}
		}
		var words []int
		for _, word := range f.words {
			if slot >= 0 {
				words = append(words, slices.Index(v.book.Facts[slot].Choices, word))
			}
		}
		v.slots, v.words = append(v.slots, slot), append(v.words, words)
	}
}

// says turns a value of the joint's fact into one of the book; false means that
// the book has no such fact or no such word.
func (v *view) says(i int, value float64) (slot int, own float64, ok bool) {
	slot = v.slots[i]
	if slot < 0 {
		return slot, 0, false
	}
	if words := v.words[i]; len(words) > 0 {
		word := words[int(value)]
		return slot, float64(word), word >= 0
	}
	return slot, value, true
}

// writable reports whether every book that asks for a fact can write a value
// down.
func (j *joint) writable(i int, value float64) bool {
	return !slices.ContainsFunc(j.views, func(v *view) bool {
		slot, _, ok := v.says(i, value)
		return slot >= 0 && !ok
	})
}

// read takes what the books' states say as the joint; the first that has a fact
// speaks for it.
func (j *joint) read(states ...*engine.State) {
	for i, f := range j.facts {
		f.known, f.text = false, ""
		for k, v := range j.views {
			slot := v.slots[i]
			if slot < 0 || f.known || !states[k].Given(slot) {
				continue
			}
			value, _ := states[k].Value(slot)
			if words := v.words[i]; len(words) > 0 {
				value = float64(slices.Index(words, int(value)))
			}
			f.known, f.value = true, value
		}
	}
	j.evaluate()
}

// evaluate works the joint out afresh.
func (j *joint) evaluate() {
	for _, v := range j.views {
		v.state.Clear()
		for i, f := range j.facts {
			if slot, own, ok := v.says(i, f.value); f.known && ok {
				v.state.Put(slot, own)
			}
		}
		v.state.Evaluate()
	}
}

// set changes one fact and works out what follows.
func (j *joint) set(i int, known bool, value float64) {
	j.facts[i].known, j.facts[i].value, j.facts[i].text = known, value, ""
	for _, v := range j.views {
		switch slot, own, ok := v.says(i, value); {
		case slot < 0:
		case known && ok:
			v.state.Set(slot, own)
		default:
			v.state.Unset(slot)
		}
	}
}

// possible reports whether the joint can be, under every book.
func (j *joint) possible() bool {
	return !slices.ContainsFunc(j.views, func(v *view) bool { return !v.state.PossibleAsPut(v.floors) })
}

// passes is how often every fact is looked at for its most ordinary value.
const passes = 3

// ordinary finds the most ordinary value of every asked fact: the one about
// which the rules have least to say. It begins with each fact by itself and then
// looks at each among the others, as long as all of them can be together.
func ordinary(book *engine.Rulebook) []float64 {
	values := make([]float64, len(book.Facts))
	s, floors := book.NewState(), book.Floors()
	for slot, f := range book.Facts {
		if !f.WorkedOut() {
			values[slot] = quietest(book, s, slot, nil)
			s.Unset(slot)
		}
	}
	for slot, f := range book.Facts {
		if !f.WorkedOut() {
			s.Put(slot, values[slot])
		}
	}
	s.Evaluate()
	for range passes {
		for slot, f := range book.Facts {
			if !f.WorkedOut() {
				values[slot] = quietest(book, s, slot, floors)
				s.Set(slot, values[slot])
			}
		}
	}
	return values
}

// quietest finds the value of a fact about which the rules have least to say. Of
// words the first such counts, of numbers one in the middle; a value that the
// fact has and that is no worse stays.
func quietest(book *engine.Rulebook, s *engine.State, slot int, floors []engine.Floor) float64 {
	now, known := s.Value(slot)
	least, best := 0.0, []float64(nil)
	for _, v := range stops(book, slot) {
		s.Set(slot, v)
		said := saidOf(book, s)
		if !s.PossibleAsPut(floors) {
			said += impossible
		}
		switch {
		case best == nil || said < least:
			least, best = said, []float64{v}
		case said == least:
			best = append(best, v)
		}
	}
	switch {
	case known && slices.Contains(best, now):
		return now
	case book.Facts[slot].Sort == engine.Number:
		return best[len(best)/2]
	}
	return best[0]
}

// impossible weighs more than anything that rules can say.
const impossible = 1e6

// stops lists values of a fact that a person would name: every word, and round
// numbers over the range.
func stops(book *engine.Rulebook, slot int) []float64 {
	f := book.Facts[slot]
	if f.Sort != engine.Number {
		return book.Probes(slot, 0, 0, 0)
	}
	const parts = 12
	var values []float64
	for i := 1; i < parts; i++ {
		v := whole(f, roundTo(between(f.Low, f.High, float64(i)/parts), 2))
		if !slices.Contains(values, v) {
			values = append(values, v)
		}
	}
	return values
}

// saidOf weighs what the rules say of a state: what rules out, then what
// demands, then the points against and for.
func saidOf(book *engine.Rulebook, s *engine.State) (said float64) {
	const ruledOut, demanded = 10, 5
	for i, r := range book.Rules {
		if s.Outcome(i) != engine.Holds {
			continue
		}
		switch r.Effect {
		case engine.RuleOut:
			said += ruledOut * float64(len(r.For))
		case engine.Demand, engine.Caution:
			said += demanded
		case engine.Lean:
			said += max(r.Points, -r.Points)
		}
	}
	return said
}
