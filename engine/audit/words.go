package audit

import (
	"fmt"
	"slices"
	"strings"

	"boremend/engine/quantity"
)

// listed joins words as a sentence does: a, b and c.
func listed(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " and " + words[last]
}

// limitValues says in brackets what the limits are that some formulas name.
func (s *survey) limitValues(formulas []string) string {
	var values, seen []string
	for _, formula := range formulas {
		for _, name := range s.book.NamesIn(formula) {
			for _, l := range s.book.Limits {
				if name == "limit."+l.Name && !slices.Contains(seen, name) {
					seen = append(seen, name)
					values = append(values, l.Name+" is "+l.Is.Format(s.options.Units))
				}
			}
		}
	}
	if len(values) == 0 {
		return ""
	}
	return " (" + strings.Join(values, ", ") + ")"
}

// format writes a value in the reader's units.
func (s *survey) format(v float64, kind quantity.Kind) string {
	return quantity.Quantity{Value: v, Kind: kind}.Format(s.options.Units)
}

// signed writes points with their sign.
func signed(points float64) string { return fmt.Sprintf("%+g", points) }
