package engine

import "math"

// How far a comparison is from coming out otherwise: a little for its being
// wrong at all, and the rest by how far its sides are apart.
const (
	wrongSide = 0.1
	notKnown  = 1.5 // no number says how far
	nearMiss  = 0.05
)

// far is how far a condition is from an outcome: zero where it comes out so. It
// guides a search from bore to bore, and proves nothing.
func (s *State) far(root int32, want Truth, v override) float64 {
	if v.covers(root) {
		return offBy(v.as == want)
	}
	n := s.book.nodes[root]
	switch n.op {
	case atomNode:
		return s.atomFar(n.first, want)
	case constantNode:
		return offBy(Truth(n.first) == want)
	case notNode:
		return s.far(s.book.kids[n.first], -want, v)
	}
	all := (n.op == andNode) == (want == Holds) // all parts must come out so, or one
	sum, least := 0.0, math.Inf(1)
	for _, k := range s.book.kids[n.first : n.first+n.count] {
		d := s.far(k, want, v)
		sum, least = sum+d, min(least, d)
	}
	if all {
		return sum
	}
	return least
}

func offBy(right bool) float64 {
	if right {
		return 0
	}
	return 1 + notKnown
}

func (s *State) atomFar(number int32, want Truth) float64 {
	if s.atoms[number] == want {
		return 0
	}
	a := &s.book.atoms[number]
	switch a.shape {
	case member:
		return 1
	case flag:
		if from := s.book.steps[a.left].from; from.root >= 0 {
			return wrongSide + s.far(from.root, want, override{})
		}
		return 1
	}
	left, right := s.sides(a)
	apart := math.Abs(left - right)
	if math.IsNaN(apart) {
		return notKnown
	}
	return wrongSide + (1-wrongSide)*apart/(apart+max(math.Abs(left), math.Abs(right), 1e-9))
}
