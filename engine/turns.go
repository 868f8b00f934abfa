package engine

import "slices"

// Turns asks that a condition comes out otherwise than it would if one part of
// it always held (as Holds) or always failed (as Fails).
func Turns(c Condition, p Part, as Truth) Clause {
	return turns{c.root(), override{p.nodes, as}}
}

// override takes some comparisons of a condition to come out in one way.
type override struct {
	nodes []int32
	as    Truth
}

func (v override) covers(node int32) bool { return slices.Contains(v.nodes, node) }

func (v override) otherwise() override { return override{v.nodes, -v.as} }

type turns struct {
	root int32
	override
}

func (c turns) may(o *Outlook) bool {
	others := o.atoms[o.book.nodes[c.nodes[0]].first] &^ outcomesOf(c.as)
	with := o.book.foldAs(c.root, c.nodes, outcomesOf(c.as), o.atoms)
	for _, other := range [3]outcomes{mayFail, mayBeUnknown, mayHold} {
		if others&other == 0 {
			continue
		}
		if without := o.book.foldAs(c.root, c.nodes, other, o.atoms); without != with || with&(with-1) != 0 {
			return true
		}
	}
	return false
}

func (c turns) met(s *State) bool { return s.fold(c.root) != s.foldAs(c.root, c.override) }

func (c turns) far(s *State) float64 {
	if c.met(s) {
		return 0
	}
	part := s.far(c.nodes[0], -c.as, override{})
	rest := func(outcome Truth) float64 {
		return s.far(c.root, outcome, c.override) + s.far(c.root, -outcome, c.otherwise())
	}
	return part + min(rest(Holds), rest(Fails)) + nearMiss
}

func (c turns) reads(b *Rulebook) []int32 { return b.atomsUnder(c.root, nil) }

// foldAs is fold with some comparisons taken to come out in one way.
func (s *State) foldAs(root int32, v override) Truth {
	if v.covers(root) {
		return v.as
	}
	n := s.book.nodes[root]
	if n.op == atomNode || n.op == constantNode {
		return s.fold(root)
	}
	kids := s.book.kids[n.first : n.first+n.count]
	out := s.foldAs(kids[0], v)
	if n.op == notNode {
		return -out
	}
	for _, k := range kids[1:] {
		if n.op == andNode {
			out = min(out, s.foldAs(k, v))
		} else {
			out = max(out, s.foldAs(k, v))
		}
	}
	return out
}
