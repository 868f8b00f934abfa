package engine

import (
	"math"
	"math/rand/v2"
)

// The effort of a climb: values of a number that are tried beside its thresholds,
// and how far steps from where it stands reach.
const (
	spreadClimb = 16
	finestStep  = 20 // the range halved so many times
)

// Climb changes facts, one at a time, toward a bore that meets all clauses, from
// the bore in the state. It reports whether it got there. It finds what drawing
// at random seldom meets, and proves nothing.
func (s *State) Climb(q Question, random *rand.Rand, rounds int) bool {
	c := &climb{s: s, q: q, facts: s.book.Asked(q)}
	for _, slot := range c.facts {
		c.values = append(c.values, s.book.Trials(slot))
		if q.Complete && !s.given[slot] {
			s.Set(slot, c.values[len(c.values)-1][0])
		}
	}
	for range rounds {
		at := c.far()
		if at == 0 {
			return true
		}
		if !c.step(at) {
			c.shake(random)
		}
	}
	return c.far() == 0
}

type climb struct {
	s      *State
	q      Question
	facts  []int
	values [][]float64
}

// far is how far the bore is from what is looked for. One that contradicts
// itself is never there.
func (c *climb) far() float64 {
	sum := c.s.contradiction()
	for _, clause := range c.q.Clauses {
		sum += clause.far(c.s)
	}
	return sum
}

// contradiction is zero for a bore that is possible.
func (s *State) contradiction() (sum float64) {
	if s.Possible() {
		return 0
	}
	for slot, least := range s.book.least {
		if least >= 0 && s.given[slot] && s.known[least] && !s.assumed[least] && s.number[slot] < s.number[least] {
			apart := s.number[least] - s.number[slot]
			sum += wrongSide + apart/(apart+math.Abs(s.number[least]))
		}
	}
	return sum
}

// step makes the one change that leads nearest.
func (c *climb) step(at float64) bool {
	best, value, nearest := -1, 0.0, at
	for i, slot := range c.facts {
		before, known := c.s.number[slot], c.s.given[slot]
		try := func(v float64) {
			c.s.Set(slot, v)
			if d := c.far(); d < nearest {
				best, value, nearest = slot, v, d
			}
		}
		for _, v := range c.values[i] {
			try(v)
		}
		if f := c.s.book.Facts[slot]; known && f.Sort == Number {
			size := f.High - f.Low
			for k := range finestStep {
				for _, v := range [2]float64{before - math.Ldexp(size, -k), before + math.Ldexp(size, -k)} {
					if f.Takes(v) {
						try(v)
					}
				}
			}
		}
		if known {
			c.s.Set(slot, before)
		} else {
			c.s.Unset(slot)
		}
	}
	if best >= 0 {
		c.s.Set(best, value)
	}
	return best >= 0
}

// shake changes a few facts at random, to leave a place where no single change
// helps.
func (c *climb) shake(random *rand.Rand) {
	for range 1 + len(c.facts)/3 {
		i := random.IntN(len(c.facts))
		c.s.Set(c.facts[i], c.values[i][random.IntN(len(c.values[i]))])
	}
}
