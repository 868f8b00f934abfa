package cases

import (
	"strconv"

	"gopkg.in/yaml.v3"
)

func writeExpect(e *Expect) *yaml.Node {
	n := mapping()
	for _, list := range []struct {
		key   string
		words []string
	}{
		{"advice", e.Advice}, {"may_stand", e.MayStand}, {"no_go", e.NoGo}, {"not_advised", e.NotAdvised},
		{"cautions", e.Cautions}, {"no_cautions", e.NoCautions}, {"holds", e.Holds}, {"fails", e.Fails},
		{"left_open", e.LeftOpen}, {"until_known", e.UntilKnown}, {"not_checked", e.NotChecked},
	} {
		if len(list.words) > 0 {
			addKey(n, list.key, row(list.words...))
		}
	}
	for _, said := range []struct {
		key   string
		value *bool
	}{{"provisional", e.Provisional}, {"narrow", e.Narrow}} {
		if said.value != nil {
			addKey(n, said.key, plain(strconv.FormatBool(*said.value)))
		}
	}
	addMethods(n, e)
	values := mapping()
	for _, v := range e.WorkedOut {
		addKey(values, v.Fact, plain(v.Written))
	}
	addFilled(n, "worked_out", values)
	return n
}

// addMethods writes what is expected of single methods.
func addMethods(n *yaml.Node, e *Expect) {
	said, points := mapping(), mapping()
	for _, m := range e.Verdicts {
		addKey(said, m.Method, plain(m.Verdict))
	}
	for _, m := range e.Points {
		if m.Open {
			addKey(points, m.Method, row(size(m.Least, 0, ""), size(m.Most, 0, "")))
		} else {
			addKey(points, m.Method, plain(size(m.Least, 0, "")))
		}
	}
	leans := mapping()
	for _, m := range e.Leans {
		rules := mapping()
		for _, lean := range m.Rules {
			addKey(rules, lean.Rule, plain(size(lean.Points, 0, "")))
		}
		addKey(leans, m.Method, rules)
	}
	addFilled(n, "verdicts", said)
	addFilled(n, "points", points)
	addFilled(n, "leans", leans)
	for _, list := range []struct {
		key     string
		methods []MethodRules
	}{{"ruled_out_by", e.RuledOutBy}, {"demands", e.Demands}} {
		rules := mapping()
		for _, m := range list.methods {
			addKey(rules, m.Method, row(m.Rules...))
		}
		addFilled(n, list.key, rules)
	}
}

// addFilled appends a mapping in one row, unless it is empty.
func addFilled(n *yaml.Node, key string, value *yaml.Node) {
	if len(value.Content) > 0 {
		value.Style = yaml.FlowStyle
		addKey(n, key, value)
	}
}

// row is a list in one row.
func row(words ...string) *yaml.Node {
	n := &yaml.Node{Kind: yaml.SequenceNode, Style: yaml.FlowStyle}
	for _, w := range words {
		n.Content = append(n.Content, plain(w))
	}
	return n
}
