package term

import (
	"slices"
	"strings"

	"boremend/engine/audit"
)

// contrasted lays out old and new answer side by side, with the rules that turned.
func contrasted(p *Page, c audit.Contrast) {
	if slices.Contains(c.Changed, "advice") {
		p.Detail("Was: " + stood(c.Before) + ". Now: " + stood(c.After) + ".")
	} else {
		p.Detail("Stays: " + stood(c.After) + ".")
	}
	var moved []string
	for _, m := range c.Methods {
		if m.Before.Verdict != m.After.Verdict {
			moved = append(moved, m.Method+" "+verdictOf(m.Before)+" -> "+verdictOf(m.After))
		}
	}
	if len(moved) > 0 {
		p.Detail("Verdicts: " + strings.Join(moved, ", ") + ".")
	}
	for _, r := range c.Turned {
		// What a demand or caution says stands below.
		if r.Effect != "demand" && r.Effect != "caution" {
			p.Detail(ruleTurned(r))
		}
	}
	for _, t := range demandsOnce(c.Demands) {
		p.Detail("Demand " + textTurned(t))
	}
	if c.Before.Method != c.After.Method {
		cautionsByName(p, c.Cautions)
		return
	}
	for _, t := range c.Cautions {
		p.Detail("Caution " + textTurned(t))
	}
}

// cautionsByName lists the cautions that come and go with another method.
func cautionsByName(p *Page, cautions []audit.TextTurned) {
	var come, gone []string
	for _, t := range cautions {
		switch {
		case t.Before == "":
			come = append(come, t.Name)
		case t.After == "":
			gone = append(gone, t.Name)
		}
	}
	for _, side := range []struct {
		says  string
		names []string
	}{{"Cautions that come with it: ", come}, {"Cautions that go: ", gone}} {
		if len(side.names) > 0 {
			p.Detail(side.says + strings.Join(side.names, ", ") + ".")
		}
	}
}

// demandsOnce joins the methods for which one demand comes, goes or changes.
func demandsOnce(demands []audit.TextTurned) (once []audit.TextTurned) {
	for _, d := range demands {
		i := slices.IndexFunc(once, func(o audit.TextTurned) bool { return o.Name == d.Name && o.Before == d.Before && o.After == d.After })
		if i >= 0 {
			once[i].Method += ", " + d.Method
			continue
		}
		once = append(once, d)
	}
	return once
}

func textTurned(t audit.TextTurned) string {
	name := t.Name
	if t.Method != "" {
		name += " (for " + t.Method + ")"
	}
	switch {
	case t.Before == "":
		return "comes, " + name + ": " + t.After
	case t.After == "":
		return "goes, " + name + ": " + t.Before
	}
	return "now reads, " + name + ": " + t.Before + " -> " + t.After
}

func stood(s audit.Stand) string {
	if s.Verdict == "" {
		return s.Method
	}
	return s.Title + " (" + standingWords[s.Verdict] + ", " + points(s.Points) + ")"
}

func verdictOf(s audit.Stand) string {
	if s.Verdict == "" {
		return "not there"
	}
	return standingWords[s.Verdict]
}

func ruleTurned(r audit.RuleTurned) string {
	words := map[string]string{"absent": "not there"}
	for outcome, word := range outcomeWords {
		words[outcome] = word
	}
	text := r.Rule + " (" + effectWords[r.Effect] + ", for " + strings.Join(r.For, ", ") + "): "
	if r.Before == r.After {
		text += words[r.After] + " as before"
		for _, f := range r.Edited {
			text += ", " + f.Field + " " + orNothing(f.Before) + " -> " + orNothing(f.After)
		}
	} else {
		text += words[r.Before] + " -> " + words[r.After]
	}
	said := r.TextAfter
	if r.After != "holds" {
		said = r.TextBefore
	}
	return text + ". " + said
}
