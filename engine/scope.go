package engine

import (
	"cmp"
	"slices"
)

// scope is what a question depends on.
type scope struct {
	tape          []item
	atoms         []int32 // nearest to the question first
	asked, worked []int32 // facts
}

func (s scope) facts() []int32 { return slices.Concat(s.worked, s.asked) }

// scope follows the clauses down to the asked facts.
func (b *Rulebook) scope(clauses []Clause) scope {
	d := &descent{book: b, atoms: map[int32]int{}, facts: map[int32]int{}}
	for _, c := range clauses {
		d.follow(needs{atoms: c.reads(b)}, 0)
	}
	d.addLeast()
	return d.scope()
}

// descent notes at which level below the question atoms and facts lie.
type descent struct {
	book         *Rulebook
	atoms, facts map[int32]int
}

func (d *descent) follow(n needs, level int) {
	reach := func(seen map[int32]int, which int32, its needs) {
		if known, ok := seen[which]; !ok || known > level {
			seen[which] = level
			d.follow(its, level+1)
		}
	}
	for _, a := range n.atoms {
		reach(d.atoms, a, d.book.atoms[a].needs)
	}
	for _, slot := range n.slots {
		reach(d.facts, slot, d.book.steps[slot].needs)
	}
}

// addLeast adds the facts that others must reach, where they follow from what is
// there already.
func (d *descent) addLeast() {
	deepest := len(d.book.tape)
	for slot := range d.book.Facts {
		least := d.book.least[slot]
		if _, in := d.facts[int32(slot)]; !in || least < 0 {
			continue
		}
		beside := &descent{book: d.book, atoms: map[int32]int{}, facts: map[int32]int{}}
		beside.follow(needs{slots: []int32{least}}, deepest)
		if beside.within(d) {
			d.follow(needs{slots: []int32{least}}, deepest)
		}
	}
}

// within reports whether all asked facts have been met by another descent.
func (d *descent) within(other *descent) bool {
	for slot := range d.facts {
		if _, in := other.facts[slot]; !in && !d.book.Facts[slot].WorkedOut() {
			return false
		}
	}
	return true
}

func (d *descent) scope() scope {
	var out scope
	for _, it := range d.book.tape {
		seen := d.atoms
		if it.isStep {
			seen = d.facts
		}
		if _, in := seen[it.index]; in {
			out.tape = append(out.tape, it)
		}
	}
	for a := range d.atoms {
		out.atoms = append(out.atoms, a)
	}
	slices.SortFunc(out.atoms, func(x, y int32) int { return cmp.Or(d.atoms[x]-d.atoms[y], int(x-y)) })
	for slot, f := range d.book.Facts {
		switch _, in := d.facts[int32(slot)]; {
		case !in:
		case f.WorkedOut():
			out.worked = append(out.worked, int32(slot))
		default:
			out.asked = append(out.asked, int32(slot))
		}
	}
	return out
}

// Asked lists the asked facts that a question depends on.
func (b *Rulebook) Asked(q Question) []int {
	var out []int
	for _, slot := range b.scope(q.Clauses).asked {
		out = append(out, int(slot))
	}
	return out
}
