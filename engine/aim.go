package engine

import (
	"math"
	"slices"

	"boremend/engine/quantity"
)

// Aim is a comparison of numbers that an asked number can tip through facts
// worked out from it. Thresholds that a fact meets directly are among its
// Probes; these are the ones that it meets only together with others.
type Aim struct {
	Slot    int
	atom    int32
	support []item // what the comparison rests on, the number's own part aside
	chain   []item // what must be worked out again when the number changes
}

// Aims lists them all. Comparisons that rest on a catalogue function are left
// out: aiming at those would take long.
func (b *Rulebook) Aims() []Aim {
	var aims []Aim
	for i := range b.atoms {
		a := &b.atoms[i]
		if a.shape == flag || a.shape == member {
			continue
		}
		rests, calls := b.restsOn(a.needs)
		if calls {
			continue
		}
		for slot, f := range b.Facts {
			direct := a.shape == againstConstant && int(a.left) == slot
			if f.Sort == Number && f.Ranged && !f.WorkedOut() && !direct && (rests.facts[int32(slot)] || slices.Contains(a.needs.slots, int32(slot))) {
				aim := Aim{Slot: slot, atom: int32(i)}
				for _, it := range b.tape {
					switch {
					case !rests.has(it):
					case slices.Contains(b.impacts[slot].tape, it):
						aim.chain = append(aim.chain, it)
					default:
						aim.support = append(aim.support, it)
					}
				}
				aims = append(aims, aim)
			}
		}
	}
	return aims
}

// foundation is everything that a comparison or a fact rests on, however far.
type foundation struct{ facts, atoms map[int32]bool }

func (r foundation) has(it item) bool {
	if it.isStep {
		return r.facts[it.index]
	}
	return r.atoms[it.index]
}

// restsOn gathers a foundation; calls reports a catalogue function in it.
func (b *Rulebook) restsOn(n needs) (r foundation, calls bool) {
	r = foundation{map[int32]bool{}, map[int32]bool{}}
	var visit func(n needs)
	visit = func(n needs) {
		calls = calls || n.calls
		for _, slot := range n.slots {
			if !r.facts[slot] {
				r.facts[slot] = true
				visit(b.steps[slot].needs)
			}
		}
		for _, i := range n.atoms {
			if !r.atoms[i] {
				r.atoms[i] = true
				visit(b.atoms[i].needs)
			}
		}
	}
	visit(n)
	return r, calls
}

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

// steps that pin a turning point down well enough to draw values beside it.
const aimSteps = 24

// Turning finds a value of the aim's number at which its comparison is level,
// the other facts as they were put. False means that there is none in the range
// or that something it rests on is unknown; the number is then left as it was.
func (s *State) Turning(a *Aim) (float64, bool) {
	for _, it := range a.support {
		s.do(it)
	}
	f := s.book.Facts[a.Slot]
	before, known := s.number[a.Slot], s.known[a.Slot]
	margin := func(v float64) float64 {
		s.Put(a.Slot, v)
		for _, it := range a.chain {
			s.do(it)
		}
		left, right := s.sides(&s.book.atoms[a.atom])
		return left - right
	}
	low, high := f.Low, f.High
	atLow, atHigh := margin(low), margin(high)
	v, found := low, atLow == 0
	if !found && atLow*atHigh < 0 { // false for NaN
		v, found = falsePosition(low, high, atLow, atHigh, margin), true
	}
	if !found {
		if s.Put(a.Slot, before); !known {
			s.Take(a.Slot)
		}
	}
	return v, found
}

// falsePosition finds where a function is zero between two values at which it
// has different signs (the Illinois rule: an end that stays put counts half).
func falsePosition(low, high, atLow, atHigh float64, f func(float64) float64) float64 {
	x, stayed := low, 0
	for range aimSteps {
		x = high - atHigh*(high-low)/(atHigh-atLow)
		if math.IsNaN(x) || x <= low || x >= high {
			x = low + (high-low)/2
		}
		y := f(x)
		switch {
		case y == 0 || math.IsNaN(y) || high-low <= math.Abs(x)*1e-15:
			return x
		case y*atLow < 0:
			if high, atHigh = x, y; stayed == 1 {
				atLow /= 2
			}
			stayed = 1
		default:
			if low, atLow = x, y; stayed == -1 {
				atHigh /= 2
			}
			stayed = -1
		}
	}
	return x
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
		f := &floors[i]
		if least, known := s.Level(f); known && s.given[f.Slot] && s.number[f.Slot] < least {
			return false
		}
	}
	return true
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
