package engine

import "slices"

// Moving lists the findings whose give-or-take leaves some rule undecided that
// can move the choice of method. entangled says that some comparison depends on
// several of them together.
func (s *State) Moving(found Findings) (moving Findings, entangled bool) {
	o := newOutlook(s)
	for _, f := range found {
		if e, loose := s.book.Around(f); loose {
			o.given[f.Fact], o.spans[f.Fact] = true, s.book.spanOf(f.Fact, e)
		}
	}
	o.evaluate()
	winners := o.Winners()
	atoms := map[int32]bool{}
	for i, r := range s.book.Rules {
		if may := o.conditions[i]; may&(may-1) != 0 && r.moves() && r.forAny(winners) {
			o.deciding(needs{atoms: s.book.readers[i]}, atoms)
		}
	}
	for _, f := range found {
		if _, loose := s.book.Around(f); loose && o.Matters(f.Fact, winners) {
			moving = append(moving, f)
		}
	}
	return moving, o.entangled(moving, atoms)
}

// deciding gathers the comparisons under a condition that may come out in
// several ways. Yes-or-no facts that are worked out only join others.
func (o *Outlook) deciding(n needs, atoms map[int32]bool) {
	for _, i := range n.atoms {
		a, may := &o.book.atoms[i], o.atoms[i]
		if may&(may-1) == 0 || atoms[i] {
			continue
		}
		if a.shape == flag {
			o.deciding(o.book.steps[a.left].needs, atoms)
			continue
		}
		atoms[i] = true
	}
}

// entangled reports whether one of the comparisons depends on more than one of
// the findings.
func (o *Outlook) entangled(moving Findings, atoms map[int32]bool) bool {
	seen := map[int32]bool{}
	for _, f := range moving {
		for _, it := range o.book.impacts[f.Fact].tape {
			if it.isStep || !atoms[it.index] {
				continue
			}
			if seen[it.index] {
				return true
			}
			seen[it.index] = true
		}
	}
	return false
}

// Forces reports whether some findings lead to a method whatever all the other
// facts are within their ranges, except those that stay unknown. The answer yes
// is certain; no may also mean that it could not be shown with so many splits.
// The state is left with the findings alone.
func (s *State) Forces(kept Findings, unknown []int, method, effort int) bool {
	defer s.Load(kept)
	s.Load(kept)
	extents := map[int]Extent{}
	for slot, f := range s.book.Facts {
		if !f.WorkedOut() && !s.given[slot] && !slices.Contains(unknown, slot) && s.book.Decides(slot) {
			extents[slot] = f.Extent()
		}
	}
	return s.Stays(extents, method, effort)
}

// Stays reports whether a method is advised whatever some facts are within
// extents, the others as they stand. The answer yes is certain. The state is
// left somewhere within the extents.
func (s *State) Stays(extents map[int]Extent, method, effort int) bool {
	q := s.newSearch(effort)
	for slot := range s.book.Facts {
		if e, open := extents[slot]; open {
			q.let(slot, s.book.spanOf(slot, e))
		}
	}
	q.safe = func(o *Outlook) bool { return o.only(method) }
	q.turned = func(d Decision) bool { return d.Method != method }
	return q.run() == settled
}
