package engine

import (
	"math"
	"slices"
)

// Aim is a comparison of numbers that an asked number can tip through facts
// worked out from it. Thresholds that a fact meets directly are among its
// Probes; these are the ones that it meets only together with others.
type Aim struct {
	Slot    int
	Text    string // the comparison as the rulebook writes it
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
			if f.Sort == Number && f.Ranged && !f.WorkedOut() && !direct && rests.facts[int32(slot)] {
				aims = append(aims, b.aim(slot, int32(i), rests))
			}
		}
	}
	return aims
}

// aim parts what a comparison rests on by whether it follows from the number.
func (b *Rulebook) aim(slot int, atom int32, rests foundation) Aim {
	aim := Aim{Slot: slot, Text: b.atoms[atom].text, atom: atom}
	for _, it := range b.tape {
		switch {
		case !rests.has(it):
		case slices.Contains(b.impacts[slot].tape, it):
			aim.chain = append(aim.chain, it)
		default:
			aim.support = append(aim.support, it)
		}
	}
	return aim
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
	switch {
	case atLow == 0:
		return low, true
	case atLow*atHigh < 0: // and neither is unknown
		return falsePosition(low, high, atLow, atHigh, margin), true
	}
	s.Put(a.Slot, before)
	if !known {
		s.Take(a.Slot)
	}
	return 0, false
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
			high, atHigh = x, y
			if stayed == 1 {
				atLow /= 2
			}
			stayed = 1
		default:
			low, atLow = x, y
			if stayed == -1 {
				atHigh /= 2
			}
			stayed = -1
		}
	}
	return x
}
