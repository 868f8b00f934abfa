package term

import (
	"strings"

	"boremend/engine"
	"boremend/engine/explain"
)

// WhatIf lays out the advice as found beside the advice under other facts.
func WhatIf(h Header, bores []explain.WhatIf) *Page {
	p := &Page{}
	for _, w := range bores {
		p.Heading(strings.ToUpper(w.Bore) + " (" + h.Job + ")")
		for _, c := range w.Changes {
			if c.From == c.To {
				p.Labelled("If:", plain(c.Fact)+" is "+c.To+", as it was.")
				continue
			}
			p.Labelled("If:", plain(c.Fact)+" is "+c.To+", not "+c.From+".")
		}
		for _, c := range w.Contrary {
			p.Labelled("Mind:", capital(plain(c))+": both cannot be true.")
		}
		p.Labelled("Was:", terms(w.Before))
		p.Labelled("Now:", terms(w.After))
		if !w.Changed {
			p.Labelled("So:", "The advised method stays.")
		}
		turned(p, w.Turned)
		sideBySide(p, w.Methods)
		follows(p, w.Follows)
	}
	footer(p, h)
	return p
}

// terms is a method and on what terms it stands, in one line.
func terms(c engine.Chosen) string {
	said := shortSure(engine.Advice{Chosen: c})
	if c.Lead != nil {
		said = append(said, points(*c.Lead)+" ahead")
	}
	return c.Title + list(": ", said, "") + "."
}

var outcomeWords = map[string]string{"holds": "applies", "fails": "does not apply", "unknown": "not settled", "absent": "has no say"}

func turned(p *Page, rules []explain.RuleTurned) {
	p.Heading("Rules that turned")
	if len(rules) == 0 {
		p.Para("None.")
	}
	for _, r := range rules {
		text := r.Rule + " (" + effectWords[r.Effect] + ", for " + strings.Join(r.For, ", ") + "): " +
			outcomeWords[r.Before] + " -> " + outcomeWords[r.After] + "."
		if r.After == "holds" {
			text += " " + r.Text
		}
		p.Item("-", text)
	}
}

func sideBySide(p *Page, methods []explain.Standings) {
	rows := [][]string{}
	for _, m := range methods {
		rows = append(rows, []string{m.Method, standingOf(m.Before), standingOf(m.After)})
	}
	p.Heading("Methods side by side")
	p.Table([]string{"method", "was", "now"}, rows)
}

func standingOf(s explain.Standing) string {
	if s.Verdict == "no_go" {
		return standingWords[s.Verdict]
	}
	return standingWords[s.Verdict] + ", " + points(s.Points)
}

func follows(p *Page, facts []explain.FactTurned) {
	if len(facts) == 0 {
		return
	}
	p.Heading("What follows from it")
	for _, f := range facts {
		p.Item("-", plain(f.Fact)+": "+f.From+" -> "+f.To)
	}
}
