package audit

import (
	"slices"

	"boremend/engine"
)

// twin draws joints for two rulebooks at once, in turn by the sampler of one and
// of the other. What both ask for is told to both; what only the other asks for
// is drawn for it. It serves one goroutine.
type twin struct {
	before, after *Sampler
	onward, back  translation
	methods       [][2]int // those that both have
	near          [2][]engine.Aim
}

// translation is how the facts of one book are said in another.
type translation struct {
	slots []int   // by slot of the first: that of the second, or -1
	words [][]int // by slot and word of the first: the word of the second, or -1
	extra []int   // slots that only the second asks for
}

func newTwin(before, after *engine.Rulebook, seed uint64) *twin {
	t := &twin{before: NewSampler(before, seed), after: NewSampler(after, seed),
		onward: translate(before, after), back: translate(after, before)}
	for m, method := range before.Methods {
		if other := after.Method(method.Name); other >= 0 {
			t.methods = append(t.methods, [2]int{m, other})
		}
	}
	touched := touchedBy(editsOf("", limitsOf(before), limitsOf(after)), editsOf("", factsOf(before), factsOf(after)))
	t.near[0], t.near[1] = touched.aims(t.before, t.after), touched.aims(t.after, t.before)
	return t
}

func translate(from, to *engine.Rulebook) translation {
	t := translation{slots: make([]int, len(from.Facts)), words: make([][]int, len(from.Facts))}
	for slot, f := range from.Facts {
		other := to.Fact(f.Name)
		if t.slots[slot] = other; other < 0 || !sameFact(f, to.Facts[other]) {
			t.slots[slot] = -1
			continue
		}
		for _, word := range f.Choices {
			t.words[slot] = append(t.words[slot], slices.Index(to.Facts[other].Choices, word))
		}
	}
	for slot, f := range to.Facts {
		if !f.WorkedOut() && !slices.Contains(t.slots, slot) {
			t.extra = append(t.extra, slot)
		}
	}
	return t
}

// sameFact reports whether two books ask for the same thing under one name.
func sameFact(a, b *engine.Fact) bool {
	return !a.WorkedOut() && !b.WorkedOut() && a.Sort == b.Sort && a.Kind == b.Kind
}

// draw puts the joint with a number before both books; false means that one of
// them cannot write it down.
func (t *twin) draw(number int) bool {
	if number%2 == 0 {
		return t.tell(number, t.before, t.after, &t.onward, nil)
	}
	return t.tell(number, t.after, t.before, &t.back, nil)
}

// drawNear draws a joint close to where something that was edited turns; false
// also where nothing of the kind was edited.
func (t *twin) drawNear(number int) bool {
	switch both := len(t.near[0]) > 0 && len(t.near[1]) > 0; {
	case len(t.near[0]) > 0 && (!both || number%2 == 0):
		return t.tell(number, t.before, t.after, &t.onward, t.near[0])
	case len(t.near[1]) > 0:
		return t.tell(number, t.after, t.before, &t.back, t.near[1])
	}
	return false
}

func (t *twin) tell(number int, from, to *Sampler, by *translation, near []engine.Aim) bool {
	from.draw(number, near)
	to.State.Clear()
	for slot, other := range by.slots {
		if other < 0 || !from.State.Given(slot) {
			continue
		}
		v, _ := from.State.Value(slot)
		if words := by.words[slot]; len(words) > 0 {
			word := words[int(v)]
			if word < 0 {
				return false
			}
			v = float64(word)
		}
		to.State.Put(other, v)
	}
	to.source.Seed(to.seed, uint64(number))
	for _, slot := range by.extra {
		if from.unknown == 0 || to.random.Float64() >= from.unknown {
			to.State.Put(slot, to.value(slot))
		}
	}
	if !to.State.PossibleAsPut(to.floors) {
		return false
	}
	to.State.Evaluate()
	return true
}

// kind names the methods that the books advise.
func (t *twin) kind() [2]string {
	return [2]string{t.before.advised(), t.after.advised()}
}

func (s *Sampler) advised() string { return s.book.Methods[s.State.Decide().Method].Name }

// verdictsDiffer reports whether some method that both books have stands
// elsewhere.
func (t *twin) verdictsDiffer() bool {
	return slices.ContainsFunc(t.methods, func(m [2]int) bool {
		was, _ := t.before.State.Verdict(m[0])
		is, _ := t.after.State.Verdict(m[1])
		return was != is
	})
}
