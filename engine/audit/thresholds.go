package audit

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"boremend/engine"
)

// threshold is a fixed value that a fact is compared with.
type threshold struct {
	engine.Comparison
	About
}

// thresholds lists the thresholds of a fact, the least first.
func (s *survey) thresholds(slot int) (out []threshold) {
	for number, c := range s.comparisons {
		if c.IsThreshold && c.Fact == slot && len(s.uses[number]) > 0 {
			out = append(out, threshold{c, s.uses[number][0]})
		}
	}
	slices.SortStableFunc(out, func(a, b threshold) int { return cmp.Compare(a.Threshold, b.Threshold) })
	return out
}

// closeThresholds finds thresholds of one fact that its give-or-take cannot tell
// apart.
var closeThresholds = kind{
	name: "close_thresholds",
	find: func(s *survey, report func(Finding)) {
		for slot, f := range s.book.Facts {
			if f.Sort != engine.Number {
				continue
			}
			list := s.thresholds(slot)
			for i := 1; i < len(list); i++ {
				low, high := list[i-1], list[i]
				middle := low.Threshold + (high.Threshold-low.Threshold)/2
				apart, give := high.Threshold-low.Threshold, f.GiveOrTake(middle)
				if apart <= 0 || apart >= give {
					continue
				}
				report(Finding{Severity: Doubtful, About: high.About, Others: otherThan(high.About, low.About),
					Says: fmt.Sprintf("`%s` and `%s` lie %s apart%s, and %s is only known to %s.",
						low.Text, high.Text, s.format(apart, f.Kind.Difference()), s.limitValues([]string{low.Text, high.Text}), f.Name, s.format(give, f.Kind.Difference())),
					Witness: shown(s.book, s.only(slot, f, middle), s.options.Units)})
			}
		}
	},
}

// edges finds thresholds that are left out by one comparison (<) and let in by
// another that asks the same (<=).
var edges = kind{
	name: "edge_of_threshold",
	find: func(s *survey, report func(Finding)) {
		for slot, f := range s.book.Facts {
			list := s.thresholds(slot)
			for i := 1; i < len(list); i++ {
				one, other := list[i-1], list[i]
				if one.Threshold != other.Threshold || one.Operator == other.Operator || one.Operator[0] != other.Operator[0] || one.Operator[0] == '=' {
					continue
				}
				report(Finding{Severity: Note, About: other.About, Others: otherThan(other.About, one.About),
					Says:    fmt.Sprintf("`%s` here and `%s` there differ only at %s itself.", other.Text, one.Text, s.format(one.Threshold, f.Kind)),
					Witness: shown(s.book, s.only(slot, f, one.Threshold), s.options.Units)})
			}
		}
	},
}

func otherThan(a, b About) []string {
	if a.What == b.What && a.Name == b.Name {
		return nil
	}
	return []string{b.Name}
}

// only is a joint of which one asked fact is known.
func (s *survey) only(slot int, f *engine.Fact, v float64) engine.Findings {
	if f.WorkedOut() || !f.Takes(v) || math.IsNaN(v) {
		return nil
	}
	return engine.Findings{{Fact: slot, Value: v}}
}
