package audit

import (
	"math"
	"math/rand/v2"

	"boremend/engine"
)

// Sampler draws joints of a rulebook's fact space, each worked out to the
// decision. Every draw depends on the seed and its own number alone, so that
// many samplers may share the work. Drawn are only joints that can be: inside
// the ranges, and nothing below what it must reach.
//
// Numbers are drawn at and beside the thresholds that they are compared with,
// and anywhere between. A threshold that a number meets only through facts
// worked out from it is met as well: some draws move a number to where such a
// comparison turns, or to one side of it, near or far. Half of the joints are
// complete; in the others some facts are unknown. In most joints some facts, in
// many nearly all, have their most ordinary value: where everything is out of the
// ordinary, everything is ruled out, and the rest of the rules have no say.
//
// It serves one goroutine and, once made, needs no further memory.
type Sampler struct {
	State  *engine.State
	book   *engine.Rulebook
	seed   uint64
	source *rand.PCG
	random *rand.Rand
	probes [][]float64 // by slot
	usual  []float64
	aims   []engine.Aim
	floors []engine.Floor
	// unknown is the chance with which each fact of the last draw was left unknown.
	unknown float64
}

// What a draw is made of.
const (
	evenProbes  = 7   // values of a number beside its thresholds
	probeShare  = 0.4 // of the numbers stand at one of these
	wholeShare  = 0.5 // of the joints are complete
	mostUnknown = 0.5 // of the facts of another joint, at most
	mostAims    = 4   // comparisons that are aimed at in one joint, at most
	aimDecades  = 4   // nearest to farthest from where it turns
)

// NewSampler prepares to draw joints.
func NewSampler(book *engine.Rulebook, seed uint64) *Sampler {
	source := rand.NewPCG(seed, 0)
	s := &Sampler{State: book.NewState(), book: book, seed: seed, source: source, random: rand.New(source),
		aims: book.Aims(), floors: book.Floors(), usual: ordinary(book), probes: make([][]float64, len(book.Facts))}
	for slot, f := range book.Facts {
		for _, v := range book.Probes(slot, f.Low, f.High, evenProbes) {
			if !f.WorkedOut() && (!f.Counted() || v == math.Trunc(v)) {
				s.probes[slot] = append(s.probes[slot], v)
			}
		}
	}
	return s
}

// Draw puts the joint with a number into the State and works it out.
func (s *Sampler) Draw(number int) { s.draw(number, nil) }

// draw draws a joint; of the aims in near, if there are any, one is met or nearly.
func (s *Sampler) draw(number int, near []engine.Aim) {
	s.source.Seed(s.seed, uint64(number))
	s.State.Clear()
	s.unknown = 0
	if s.random.Float64() >= wholeShare {
		s.unknown = mostUnknown * s.random.Float64()
	}
	calm := s.random.Float64()
	for slot, probes := range s.probes {
		if len(probes) > 0 && s.random.Float64() < calm {
			s.State.Put(slot, s.usual[slot])
			continue
		}
		if len(probes) > 0 && (s.unknown == 0 || s.random.Float64() >= s.unknown) {
			s.State.Put(slot, s.value(slot))
		}
	}
	if len(s.aims) > 0 {
		for range s.random.IntN(mostAims + 1) {
			s.aim(&s.aims[s.random.IntN(len(s.aims))])
		}
	}
	if len(near) > 0 {
		s.aim(&near[s.random.IntN(len(near))])
	}
	s.raise()
	s.State.Evaluate()
}

// value draws a value of an asked fact.
func (s *Sampler) value(slot int) float64 {
	f, probes := s.book.Facts[slot], s.probes[slot]
	if f.Sort != engine.Number || s.random.Float64() < probeShare {
		return probes[s.random.IntN(len(probes))]
	}
	return whole(f, between(f.Low, f.High, s.random.Float64()))
}

// aim moves a number to where a comparison turns, or to one side of that, near or
// far. A number that is unknown stays so, and so does one that cannot tip it.
func (s *Sampler) aim(a *engine.Aim) {
	side, far := s.random.IntN(3), math.Pow(10, -aimDecades*s.random.Float64())
	if !s.State.Given(a.Slot) {
		return
	}
	v, found := s.State.Turning(a)
	if !found {
		return
	}
	f := s.book.Facts[a.Slot]
	switch side {
	case 1:
		v += (f.Low - v) * far
	case 2:
		v += (f.High - v) * far
	}
	s.State.Put(a.Slot, whole(f, v))
}

// raise lifts what lies below what it must reach; where there is no room for
// that, it becomes unknown. Raising one fact may leave another too low.
func (s *Sampler) raise() {
	for range len(s.floors) {
		if s.State.PossibleAsPut(s.floors) {
			return
		}
		for i := range s.floors {
			s.lift(&s.floors[i])
		}
	}
	for i := range s.floors {
		s.State.Take(s.floors[i].Slot)
	}
}

func (s *Sampler) lift(floor *engine.Floor) {
	least, known := s.State.Level(floor)
	v, _ := s.State.Value(floor.Slot)
	f := s.book.Facts[floor.Slot]
	switch {
	case !s.State.Given(floor.Slot) || !known || v >= least:
	case least > f.High:
		s.State.Take(floor.Slot)
	default:
		above := math.Pow(10, -aimDecades*s.random.Float64())
		s.State.Put(floor.Slot, whole(f, max(least, f.Low)+(f.High-max(least, f.Low))*above))
	}
}

// whole rounds what is counted to a whole number within the range.
func whole(f *engine.Fact, v float64) float64 {
	if f.Counted() {
		v = math.Round(v)
	}
	return min(max(v, f.Low), f.High)
}

// between divides a range in the proportion given, by ratio where the range
// spans more than a decade.
func between(low, high, share float64) float64 {
	const decade = 10
	if low > 0 && high > decade*low {
		return low * math.Pow(high/low, share)
	}
	return low + (high-low)*share
}
