package cases

import (
	"slices"

	"boremend/engine"
)

// The fact that says who has agreed, and its answer when the maker has.
const (
	makersWord = "manufacturer_position"
	agreed     = "permits"
)

// FindingsWithConsent are the findings of a bore as they would be once the maker
// had agreed in writing. It is false where the rulebook knows no such fact.
func (b Bore) FindingsWithConsent(book *engine.Rulebook) (engine.Findings, bool) {
	slot := book.Fact(makersWord)
	if slot < 0 {
		return nil, false
	}
	answer := slices.Index(book.Facts[slot].Choices, agreed)
	if answer < 0 {
		return nil, false
	}
	return b.Findings.With(engine.Finding{Fact: slot, Value: float64(answer), Written: agreed}), true
}
