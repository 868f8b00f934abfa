package term

import (
	"fmt"
	"slices"
	"strings"

	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/quantity"
)

// Check lays out what a rulebook was found to have wrong, the gravest first.
func Check(b *engine.Rulebook, c audit.Checked, below int, units quantity.System) *Page {
	p := &Page{}
	p.Title(fmt.Sprintf("%s, edition %s: %s", b.Title, b.Edition, mistakes(c.Count(audit.Wrong))))
	p.Para(fmt.Sprintf("%d facts, %d limits, %d methods, %d rules, %d cautions.", len(b.Facts), len(b.Limits), len(b.Methods), len(b.Rules), len(b.Cautions)))
	p.Para("SHA-256 " + b.SHA256)
	p.Para(fmt.Sprintf("%d wrong, %d doubtful, %s.%s", c.Count(audit.Wrong), c.Count(audit.Doubtful), counted(c.Count(audit.Note), "note"), stillOpen(c)))
	overlay(p, b, units)
	if below > 0 {
		p.Para(fmt.Sprintf("What lies under it has %s of its own, which --all shows.", counted(below, "finding")))
	}
	for rest := c.Findings; len(rest) > 0; {
		first, n := rest[0], 1
		for n < len(rest) && rest[n].Kind == first.Kind && rest[n].Severity == first.Severity {
			n++
		}
		p.Heading(strings.ToUpper(first.Severity.String()) + ": " + kindTitles[first.Kind])
		findings(p, rest[:n])
		rest = rest[n:]
	}
	return p
}

// findings lays out findings of one kind: what each speaks of, why, where, and a
// joint that shows it. A reason that all share is given once.
func findings(p *Page, list []audit.Finding) {
	shared := len(list) > 1 && !slices.ContainsFunc(list, func(f audit.Finding) bool { return f.Says != list[0].Says })
	if shared {
		p.Para("Each: " + list[0].Says)
	}
	for _, f := range list {
		if shared {
			p.Item("-", f.What+" "+f.Name+", "+place(f.About))
		} else {
			p.Item("-", f.What+" "+f.Name+": "+f.Says)
			p.Detail(place(f.About))
		}
		if len(f.Witness) > 0 {
			p.Detail("Seen at a joint with " + joint(f.Witness) + ".")
		}
	}
}

func mistakes(n int) string {
	if n == 0 {
		return "no mistakes found"
	}
	return counted(n, "mistake") + " found"
}

// stillOpen says what was not settled.
func stillOpen(c audit.Checked) string {
	switch {
	case c.Stopped:
		return " Stopped before everything was looked at."
	case len(c.Unsettled) > 0:
		return " " + counted(len(c.Unsettled), "question") + " could not be settled; --format json lists them."
	}
	return ""
}

// place is where something stands, as an editor opens it.
func place(a audit.About) string {
	text := fmt.Sprintf("%s:%d", a.File, a.Line)
	if a.Column > 0 {
		text += fmt.Sprintf(":%d", a.Column)
	}
	return text
}

func joint(witness []audit.Shown) string {
	facts := make([]string, len(witness))
	for i, f := range witness {
		facts[i] = plain(f.Fact) + " " + f.Text
	}
	return strings.Join(facts, ", ")
}

// kindTitles say in words what kind of finding a name stands for.
var kindTitles = map[string]string{
	"never_holds":        "can never hold",
	"fixed_comparison":   "comparisons that always come out the same",
	"contradicted":       "rules that another rule contradicts",
	"always_holds":       "always holds, though it has a condition",
	"idle_comparison":    "comparisons that decide nothing",
	"shadowed":           "rules that another rule covers",
	"repeated":           "rules that repeat another",
	"weak_rule_out":      "methods ruled out on an opinion",
	"poor_source":        "sources that say too little",
	"no_points":          "leans without points",
	"unread":             "what nothing reads",
	"unmentioned_choice": "choices that no rule mentions",
	"close_thresholds":   "thresholds closer than the measuring",
	"edge_of_threshold":  "thresholds that count to both sides",
	"silent_rule_out":    "forbids, and is silent while nobody knows",
	"no_rules":           "methods that no rule speaks of",
}
