package engine

import "boremend/engine/quantity"

// Clear makes every fact unknown, and leaves what follows to Evaluate. With Put
// it lays a whole joint out before anything is worked out.
func (s *State) Clear() {
	clear(s.given)
	clear(s.known)
	clear(s.assumed)
}

// Put states one fact, and leaves what follows to Evaluate.
func (s *State) Put(slot int, value float64) {
	s.given[slot], s.known[slot], s.assumed[slot], s.number[slot] = true, true, false, value
}

// Take makes one asked fact unknown, and leaves what follows to Evaluate.
func (s *State) Take(slot int) {
	s.given[slot], s.known[slot], s.assumed[slot] = false, false, false
}

// Floor is a fact that may not lie below another.
type Floor struct {
	Slot    int
	least   int
	support []item
}

// Floors lists the facts that may not lie below another.
func (b *Rulebook) Floors() []Floor {
	var floors []Floor
	for slot, f := range b.Facts {
		if f.AtLeast == "" {
			continue
		}
		floor := Floor{Slot: slot, least: b.Fact(f.AtLeast)}
		rests, _ := b.restsOn(needs{slots: []int32{int32(floor.least)}})
		for _, it := range b.tape {
			if rests.has(it) {
				floor.support = append(floor.support, it)
			}
		}
		floors = append(floors, floor)
	}
	return floors
}

// Level works out the least that a fact may be, as the facts were put; false
// means that nothing known bounds it.
func (s *State) Level(f *Floor) (float64, bool) {
	for _, it := range f.support {
		s.do(it)
	}
	return s.number[f.least], s.known[f.least] && !s.assumed[f.least]
}

// PossibleAsPut reports whether the given facts, as they were put, lie within their
// ranges and together can be true.
func (s *State) PossibleAsPut(floors []Floor) bool {
	for slot, f := range s.book.Facts {
		if v := s.number[slot]; s.given[slot] && f.Ranged && (v < f.Low || v > f.High) {
			return false
		}
	}
	for i := range floors {
		s.Level(&floors[i])
	}
	return s.Possible()
}

// Findings lists the given facts as they stand, without any give-or-take.
func (s *State) Findings() Findings {
	var found Findings
	for slot := range s.book.Facts {
		if s.given[slot] {
			found = append(found, Finding{Fact: slot, Value: s.number[slot], Origin: Given})
		}
	}
	return found
}

// Counted reports whether only whole numbers make sense of a fact.
func (f *Fact) Counted() bool { return f.Sort == Number && f.Kind == quantity.Count }
