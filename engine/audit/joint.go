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
	facts []*jointFact
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

// jointFact is one fact of a joint. The value of a choice is a word in its list,
// which holds the words of all books.
type jointFact struct {
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
			if !f.WorkedOut() && !slices.ContainsFunc(j.facts, func(g *jointFact) bool { return g.Name == f.Name && sameFact(g.Fact, f) }) {
				own := &jointFact{Fact: f, words: j.wordsOf(f), usual: usual[slot]}
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
func (j *joint) wordsOf(f *engine.Fact) (words []string) {
	for _, v := range j.views {
		if slot := v.book.Fact(f.Name); slot >= 0 && sameFact(f, v.book.Facts[slot]) {
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
func (v *view) match(facts []*jointFact) {
	for _, f := range facts {
		slot := v.book.Fact(f.Name)
		if slot >= 0 {
			if !sameFact(f.Fact, v.book.Facts[slot]) {
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
