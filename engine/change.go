package engine

import "slices"

// Decides reports whether a fact has a part in any rule that can move the
// choice of method, directly or through facts worked out from it.
func (b *Rulebook) Decides(slot int) bool {
	for _, i := range b.impacts[slot].conditions {
		if int(i) < b.rulesAt && b.Rules[i].moves() {
			return true
		}
	}
	return false
}

// moves reports whether the rule can change which method is advised. Demands
// only make a method conditional, and cautions only warn.
func (r *Rule) moves() bool { return r.Effect == RuleOut || r.Effect == Lean }

// forAny reports whether the rule is for one of the methods.
func (r *Rule) forAny(methods []int) bool {
	return slices.ContainsFunc(r.For, func(m int) bool { return slices.Contains(methods, m) })
}

// Signature is a digest of how those rules came out that depend on a fact. Two
// values of the fact with equal signatures lead to the same decision.
func (s *State) Signature(slot int) uint64 {
	digest := uint64(14695981039346656037) // FNV-1a
	for _, i := range s.book.impacts[slot].conditions {
		if int(i) < s.book.rulesAt {
			digest = (digest ^ uint64(s.conditions[i]+1)) * 1099511628211
		}
	}
	return digest
}

// Calls reports whether a fact goes into a catalogue function, whose course
// between two values is not known.
func (b *Rulebook) Calls(slot int) bool { return b.impacts[slot].calls }

// Given reports whether a fact was found out, and is neither worked out nor
// assumed.
func (s *State) Given(slot int) bool { return s.given[slot] }
