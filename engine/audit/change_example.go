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
	for i, c := range order {
		if i >= o.List {
			out.KindsLeft++
			out.DrawsLeftOff += c.count
			continue
		}
		k := ChangeKind{Before: c.kind[0], After: c.kind[1], Count: c.count, Near: c.near, Example: c.example(before, after, o)}
		k.Share, k.Error = share(c.count, out.Done-out.Unlike)
		out.Kinds = append(out.Kinds, k)
	}
}

// example finds the simplest joint among a few draws of a kind. Each is evaluated
// afresh by both books before it counts.
func (c *changes) example(before, after *engine.Rulebook, o CompareOptions) ChangeExample {
	t, p := newTwin(before, after, o.Seed), newPair(before, after)
	var best *joint
	try := func(draw func(*twin, int) bool, draws []int) {
		for _, number := range draws {
			draw(t, number)
			j := newJoint(o.Units, before, after)
			j.read(t.before.State, t.after.State)
			stood := j.standing()
			j.simplify(func() bool { return j.advised() == c.kind && j.standing() == stood })
			p.load(j.views[0].state.Findings(), j.views[1].state.Findings())
			same := p.before.advised().Method == c.kind[0] && p.after.advised().Method == c.kind[1]
			if same && (best == nil || j.compare(best) < 0) {
				best = j
			}
		}
	}
	try((*twin).draw, c.draws)
	try((*twin).drawNear, c.nearDraws)
	p.load(best.views[0].state.Findings(), best.views[1].state.Findings())
	return ChangeExample{best.told(), p.contrast(o.Units)}
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
