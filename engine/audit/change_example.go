package audit

import (
	"cmp"
	"slices"

	"boremend/engine"
)

// list orders the kinds, the most frequent first, and finds their examples.
func (out *ComparedSpace) list(before, after *engine.Rulebook, kinds changeKinds, o CompareOptions) {
	var order []*changes
	for _, c := range kinds {
		order = append(order, c)
	}
	slices.SortFunc(order, func(a, b *changes) int {
		return cmp.Or(b.count-a.count, b.near-a.near, cmp.Compare(a.kind[0], b.kind[0]), cmp.Compare(a.kind[1], b.kind[1]))
	})
	w := &changeWitness{newTwin(before, after, o.Seed), newJoint(o.Units, before, after), newPair(before, after)}
	for i, c := range order {
		if i >= o.List {
			out.KindsLeft++
			out.DrawsLeftOff += c.count
			continue
		}
		k := ChangeKind{Before: c.kind[0], After: c.kind[1], Count: c.count, Near: c.near, Example: w.example(c)}
		k.Share, k.Error = share(c.count, out.Done-out.Unlike)
		out.Kinds = append(out.Kinds, k)
	}
}

// changeWitness finds examples of changes.
type changeWitness struct {
	twin  *twin
	joint *joint
	fresh *pair
}

// example finds the simplest joint among a few draws of a kind. Each is evaluated
// afresh by both books before it counts.
func (w *changeWitness) example(c *changes) ChangeExample {
	var best *example
	try := func(draw func(*twin, int) bool, draws []int) {
		for _, number := range draws {
			draw(w.twin, number)
			w.joint.read(w.twin.before.State, w.twin.after.State)
			stood := w.joint.standing()
			w.joint.simplify(func() bool { return w.joint.advised() == c.kind && w.joint.standing() == stood })
			e := w.joint.example()
			w.fresh.load(e.found[0], e.found[1])
			if w.fresh.advised() == c.kind && (best == nil || e.compare(best) < 0) {
				best = e
			}
		}
	}
	try((*twin).draw, c.draws)
	try((*twin).drawNear, c.nearDraws)
	if best == nil { // no draw could be made simpler: show the last as it is
		w.joint.read(w.twin.before.State, w.twin.after.State)
		best = w.joint.example()
	}
	w.fresh.load(best.found[0], best.found[1])
	return ChangeExample{best.facts, w.fresh.contrast(w.joint.units)}
}

// advised names the methods that the two books of a joint advise.
func (j *joint) advised() (kind [2]string) {
	for k, v := range j.views {
		kind[k] = v.book.Methods[v.state.Decide().Method].Name
	}
	return kind
}

// standing tells under which of the two books the advised method stands.
func (j *joint) standing() (stands [2]bool) {
	for k, v := range j.views {
		stands[k] = v.state.Decide().Verdict.Stands()
	}
	return stands
}
