package wear

import "math"

// roundSearch looks for a centre that is best for some points. The best centre
// for a few of them is at least as good as the best for all: more points only
// add conditions. So it solves the question for a few, adds the points that
// contradict the answer most, and ends when none does by more than rounding;
// what holds for the few then holds for all.
type roundSearch struct {
	points   []point // all of them, moved to their middle
	hull     []point // the figure in which the centre must stay
	chosen   []int   // the few that decide so far
	rounding float64
}

func newRoundSearch(points []point) *roundSearch {
	s := &roundSearch{points: points, hull: hullOf(points)}
	size, _, _, _ := roundFrom(point{}, points)
	s.rounding = tinyShare * size
	const start = 6
	for i := range start {
		s.choose(i * len(points) / start)
	}
	return s
}

// choose adds a point and reports whether it was new.
func (s *roundSearch) choose(i int) bool {
	for _, old := range s.chosen {
		if old == i || s.points[old] == s.points[i] {
			return false
		}
	}
	s.chosen = append(s.chosen, i)
	return true
}

// chooseAny adds the next point that is new, for the case that the chosen ones
// give no centre at all.
func (s *roundSearch) chooseAny() bool {
	for i := range s.points {
		if s.choose(i) {
			return true
		}
	}
	return false
}

func (s *roundSearch) few() []point {
	few := make([]point, len(s.chosen))
	for i, index := range s.chosen {
		few[i] = s.points[index]
	}
	return few
}

// leastZone finds the centre for which the radial gap between the farthest and
// the nearest point is least. At such a centre two pairs of points are equally
// far: it is where the lines midway between them cross.
func (s *roundSearch) leastZone() (centre point, ok bool) {
	for {
		centre, zone, ok := s.leastZoneOfFew()
		if !ok {
			if !s.chooseAny() {
				return point{}, false
			}
			continue
		}
		far, near, farthest, nearest := roundFrom(centre, s.points)
		if far-near <= zone+s.rounding {
			return centre, true
		}
		s.choose(farthest)
		s.choose(nearest)
	}
}

func (s *roundSearch) leastZoneOfFew() (best point, least float64, ok bool) {
	few := s.few()
	var midways []line
	for i := range few {
		for j := range i {
			midways = append(midways, between(few[i], few[j]))
		}
	}
	least = math.Inf(1)
	for i := range midways {
		for j := range i {
			at, crosses := midways[i].meet(midways[j])
			if !crosses {
				continue
			}
			far, near, _, _ := roundFrom(at, few)
			if far-near < least && insideHull(s.hull, at) {
				best, least, ok = at, far-near, true
			}
		}
	}
	return best, least, ok
}

// largestInside finds the centre, inside the figure of the points, that lies
// farthest from the nearest of them. Three points are nearest to it, or two
// where it lies on the edge of the figure.
func (s *roundSearch) largestInside() (centre point, ok bool) {
	for {
		centre, radius, ok := s.largestInsideOfFew()
		if !ok {
			if !s.chooseAny() {
				return point{}, false
			}
			continue
		}
		_, near, _, nearest := roundFrom(centre, s.points)
		if near >= radius-s.rounding {
			return centre, true
		}
		s.choose(nearest)
	}
}

func (s *roundSearch) largestInsideOfFew() (best point, largest float64, ok bool) {
	few := s.few()
	try := func(at point, found bool) {
		if !found {
			return
		}
		_, near, _, _ := roundFrom(at, few)
		if near > largest && insideHull(s.hull, at) {
			best, largest, ok = at, near, true
		}
	}
	for i := range few {
		for j := range i {
			for k := range j {
				try(equidistant(few[i], few[j], few[k]))
			}
			midway := between(few[i], few[j])
			for k, corner := range s.hull {
				try(midway.meet(through(corner, s.hull[(k+1)%len(s.hull)])))
			}
		}
	}
	return best, largest, ok
}
