package cases

import (
	"math"
	"regexp"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// MethodPoints are the points expected of a method: those of what is known, or
// where facts are open from Least to Most.
type MethodPoints struct {
	Method      string
	Least, Most float64
	Open        bool
}

// FactValue is the value expected of a fact that is worked out or assumed, to
// the last digit that is written.
type FactValue struct {
	Fact, Written string
	Value, Within float64
	Unknown       bool
}

// methodPoints reads points: {method: 2} or {method: [1, 3]}.
func (r *reader) methodPoints(n *yaml.Node) (list []MethodPoints) {
	for method, value := range r.byMethod(n) {
		if value.Kind != yaml.SequenceNode {
			if v, ok := r.Number(value); ok {
				list = append(list, MethodPoints{Method: method, Least: v, Most: v})
			}
			continue
		}
		ends := r.List(value)
		if len(ends) != 2 {
			r.Report(value, "write [least, most]", "open points have two ends")
			continue
		}
		least, ok := r.Number(ends[0])
		most, both := r.Number(ends[1])
		if ok && both {
			list = append(list, MethodPoints{Method: method, Least: least, Most: most, Open: true})
		}
	}
	return list
}

// methodLeans reads leans: {method: {rule: 2}}.
func (r *reader) methodLeans(n *yaml.Node, rules []string) (list []MethodLeans) {
	for method, value := range r.byMethod(n) {
		m := MethodLeans{Method: method}
		for key, points := range r.Pairs(value) {
			if !slices.Contains(rules, key.Value) {
				r.Report(key, document.DidYouMean(key.Value, rules), "the rulebook has no rule %q", key.Value)
				continue
			}
			if v, ok := r.Number(points); ok {
				m.Rules = append(m.Rules, RulePoints{key.Value, v})
			}
		}
		list = append(list, m)
	}
	return list
}

// factValues reads worked_out: {fact: value}.
func (r *reader) factValues(n *yaml.Node) (list []FactValue) {
	known := r.book.WorkedOutNames()
	for key, node := range r.Pairs(n) {
		slot := r.book.Fact(key.Value)
		switch {
		case slot < 0:
			r.Report(key, document.DidYouMean(key.Value, known), "unknown fact %q", key.Value)
			continue
		case !slices.Contains(known, key.Value):
			r.Report(key, "leave it out", "%s is only ever found, not worked out or assumed", key.Value)
			continue
		}
		text, ok := r.Text(node)
		if !ok {
			continue
		}
		v := FactValue{Fact: key.Value, Written: text, Unknown: text == "unknown"}
		if v.Unknown || r.value(node, r.book.Facts[slot], &v) {
			list = append(list, v)
		}
	}
	return list
}

// value reads what is written of a fact.
func (r *reader) value(n *yaml.Node, fact *engine.Fact, v *FactValue) bool {
	if fact.Sort != engine.Number {
		word, ok := fact.ReadWord(r.File, n)
		v.Value = word
		return ok
	}
	reading, ok := r.Quantity(n, fact.Kind, "")
	v.Value, v.Within = reading.Value, reading.GiveOrTake
	if !reading.HasGiveOrTake {
		v.Within = fineness(v.Written, fact.Kind, reading.Value)
	}
	return ok
}

var decimalNumber = regexp.MustCompile(`^-?[0-9]+(?:\.([0-9]+))?( ?[^0-9]*[23]?)$`)

// fineness is half a step of the last digit written; a fraction is exact, but
// for rounding.
func fineness(text string, kind quantity.Kind, value float64) float64 {
	const rounding = 1e-9
	m := decimalNumber.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return rounding * max(1, math.Abs(value))
	}
	one, err := quantity.Parse("1"+m[2], kind, "")
	none, errNone := quantity.Parse("0"+m[2], kind, "")
	if err != nil || errNone != nil {
		return rounding * max(1, math.Abs(value))
	}
	return (one.Value - none.Value) * (0.5*math.Pow(10, -float64(len(m[1]))) + rounding)
}
