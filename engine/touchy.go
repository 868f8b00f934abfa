package engine

import (
	"math"
	"slices"

	"boremend/engine/quantity"
)

// Touchy says whether the give-or-take of the facts could overturn an advice.
type Touchy struct {
	// Facts that can each do it alone; failing that, a smallest set that does
	// it together.
	Facts    []int
	Together bool // Facts do it only together
	// Unsure: it could not be excluded within the effort allowed. With neither
	// Facts nor Unsure no combination of values overturns the advice.
	Unsure bool
}

// The splits that a search inside the give-or-takes may make: for all facts at
// once, and for one fact alone.
const (
	effortTogether = 400
	effortAlone    = 100
)

// Touchy searches the values that the findings could really have. The state is
// left as it was.
func (s *State) Touchy(found Findings) Touchy {
	defer s.Load(found)
	loose, _ := s.Moving(found)
	whole := s.around(loose, effortTogether)
	if whole == settled {
		return Touchy{}
	}
	together := slices.Clone(s.number) // values that overturn it, if any were met
	was := s.stated(found)
	var alone []int
	for _, f := range loose {
		if s.around(Findings{f}, effortAlone) == turned {
			alone = append(alone, f.Fact)
		}
		s.Set(f.Fact, f.Value)
	}
	switch {
	case len(alone) > 0:
		return Touchy{Facts: alone}
	case whole == turned:
		return Touchy{Facts: s.smallest(loose, together, was), Together: true}
	}
	return Touchy{Unsure: true}
}

// stated puts all facts back as found and decides.
func (s *State) stated(found Findings) Decision {
	s.Load(found)
	return s.Decide()
}

// around searches what some findings could really be, the others as they are.
func (s *State) around(loose Findings, effort int) searched {
	was := s.Decide()
	q := s.newSearch(effort)
	for _, f := range loose {
		a, _ := s.book.Around(f)
		q.let(f.Fact, s.book.spanOf(f.Fact, a))
	}
	q.safe = func(o *Outlook) bool { return o.only(was.Method) }
	q.turned = func(d Decision) bool { return d.Method != was.Method }
	return q.run()
}

// only reports whether no other method can be advised.
func (o *Outlook) only(method int) bool {
	var buffer [1]int
	for _, m := range o.winners(buffer[:0]) {
		if m != method {
			return false
		}
	}
	return true
}

// smallest puts facts back as stated, one after the other, as long as the rest
// still overturns the advice: forward and backward, and keeps the smaller set.
func (s *State) smallest(loose Findings, together []float64, was Decision) []int {
	var best []int
	for range 2 {
		for _, f := range loose {
			s.Set(f.Fact, together[f.Fact])
		}
		var needed []int
		for _, f := range loose {
			if s.Set(f.Fact, f.Value); s.Decide().Method == was.Method {
				s.Set(f.Fact, together[f.Fact])
				needed = append(needed, f.Fact)
			}
		}
		if best == nil || len(needed) < len(best) {
			best = needed
		}
		slices.Reverse(loose)
	}
	slices.Sort(best)
	return best
}

// Extent is what a fact could be: from Low to High, or one of Values where it
// is a word or a count.
type Extent struct {
	Low, High float64
	Values    []float64
}

// Around is what a finding could really be, given its give-or-take; false means
// that it can only be as stated.
func (b *Rulebook) Around(f Finding) (Extent, bool) {
	fact := b.Facts[f.Fact]
	if fact.Sort == Choice && fact.Slack.OneClass {
		return steps(max(0, f.Value-1), min(float64(len(fact.Choices)-1), f.Value+1)), true
	}
	if fact.Sort != Number || f.GiveOrTake == 0 {
		return Extent{}, false
	}
	low, high := f.Value-f.GiveOrTake, f.Value+f.GiveOrTake
	if fact.Ranged {
		low, high = max(low, fact.Low), min(high, fact.High)
	}
	if fact.Kind == quantity.Count {
		return steps(math.Ceil(low), math.Floor(high)), true
	}
	return Extent{Low: low, High: high}, true
}

// Whole is everything that an unknown fact could be, given what is known.
func (s *State) Whole(slot int) Extent {
	f := s.book.Facts[slot]
	e := f.Extent()
	if f.Sort != Number || f.AtLeast == "" {
		return e
	}
	low, high := s.rangeOf(slot)
	if f.Kind == quantity.Count {
		return steps(math.Ceil(low), math.Floor(high))
	}
	return Extent{Low: low, High: high}
}

// Extent is everything that the fact could be.
func (f *Fact) Extent() Extent {
	switch {
	case f.Sort == Choice:
		return steps(0, float64(len(f.Choices)-1))
	case f.Sort == YesNo:
		return steps(0, 1)
	case f.Kind == quantity.Count:
		return steps(math.Ceil(f.Low), math.Floor(f.High))
	}
	return Extent{Low: f.Low, High: f.High}
}

// steps lists whole numbers.
func steps(low, high float64) Extent {
	e := Extent{Low: low, High: high}
	for v := low; v <= high; v++ {
		e.Values = append(e.Values, v)
	}
	return e
}

// spanOf turns an extent into the span of a fact.
func (b *Rulebook) spanOf(slot int, e Extent) span {
	if b.Facts[slot].Sort == Number {
		return span{low: e.Low, high: e.High}
	}
	out := span{low: nothing.low, high: nothing.high}
	for _, v := range e.Values {
		out.words |= 1 << uint(v)
	}
	return out
}
