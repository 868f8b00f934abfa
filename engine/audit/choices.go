package audit

import (
	"fmt"
	"strconv"

	"boremend/engine"
)

// unmentioned finds choices that no comparison names. One of a fact may well be
// all that the others are not; of several, nothing tells one from another.
var unmentioned = kind{
	name: "unmentioned_choice",
	find: func(s *survey, report func(Finding)) {
		used, _ := s.reading()
		for slot, f := range s.book.Facts {
			if f.Sort != engine.Choice || !used[f.Name] || s.book.CalledWithWord(slot) || s.options.ReadElsewhere(f.Name) {
				continue
			}
			if alike := s.unmentioned(slot, f); len(alike) > 1 {
				report(Finding{Severity: Note, About: aboutFact(f),
					Says: fmt.Sprintf("No rule, formula or caution mentions %s: nothing tells them apart.", listed(alike))})
			} else if len(alike) == 1 {
				report(Finding{Severity: Note, About: aboutFact(f),
					Says: fmt.Sprintf("No rule, formula or caution mentions %s: it only counts as none of the others.", alike[0])})
			}
		}
	},
}

// unmentioned lists, in quotes, the choices of a fact that no comparison names.
func (s *survey) unmentioned(slot int, f *engine.Fact) (words []string) {
	var named uint64
	for _, c := range s.comparisons {
		if c.IsWords && c.Fact == slot {
			named |= c.Named
		}
	}
	for i, word := range f.Choices {
		if named>>i&1 == 0 {
			words = append(words, strconv.Quote(word))
		}
	}
	return words
}
