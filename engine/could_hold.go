package engine

import "slices"

// CouldHold asks that a condition holds, or would if some comparisons in it came
// out as it needs them. Where the answer is never, the other comparisons exclude
// each other.
func CouldHold(c Condition, granted []Part) Clause {
	out := couldHold{root: c.root()}
	for _, p := range granted {
		out.nodes = append(out.nodes, p.nodes...)
	}
	return out
}

type couldHold struct {
	root  int32
	nodes []int32
}

const anyOutcome = mayFail | mayBeUnknown | mayHold

func (c couldHold) may(o *Outlook) bool {
	return o.book.foldAs(c.root, c.nodes, anyOutcome, o.atoms)&mayHold != 0
}

func (c couldHold) met(s *State) bool {
	atoms := make([]outcomes, len(s.atoms))
	for i, t := range s.atoms {
		atoms[i] = outcomesOf(t)
	}
	return s.book.foldAs(c.root, c.nodes, anyOutcome, atoms)&mayHold != 0
}

func (c couldHold) far(s *State) float64 {
	if c.met(s) {
		return 0
	}
	return s.far(c.root, Holds, override{})
}

func (c couldHold) reads(b *Rulebook) (atoms []int32) { return b.atomsBeside(c.root, c.nodes) }

// foldAs finds how a condition may come out when its comparisons may come out as
// given, and some of them, by their nodes, as they are taken to.
func (b *Rulebook) foldAs(root int32, nodes []int32, as outcomes, atoms []outcomes) outcomes {
	if slices.Contains(nodes, root) {
		return as
	}
	n := b.nodes[root]
	switch n.op {
	case atomNode:
		return atoms[n.first]
	case constantNode:
		return outcomesOf(Truth(n.first))
	}
	kids := b.kids[n.first : n.first+n.count]
	out := b.foldAs(kids[0], nodes, as, atoms)
	if n.op == notNode {
		return out.not()
	}
	for _, k := range kids[1:] {
		if n.op == andNode {
			out = out.and(b.foldAs(k, nodes, as, atoms))
		} else {
			out = out.or(b.foldAs(k, nodes, as, atoms))
		}
	}
	return out
}
