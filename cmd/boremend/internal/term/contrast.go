package term

import (
	"strings"

	"boremend/engine/explain"
)

// The most of each part that is shown; the JSON has all.
const (
	mostDifferences = 8
	mostToward      = 6
)

// Contrast lays out why one method and not another.
func Contrast(h Header, bores []explain.Contrast) *Page {
	p := &Page{}
	for _, c := range bores {
		p.Heading(strings.ToUpper(c.Bore) + " (" + h.Job + ")")
		p.Labelled("Why:", c.Title.Why+".")
		p.Labelled("Not:", c.Title.Not+".")
		if c.Why != c.Advised {
			p.Labelled("Mind:", c.Why+" is not the advice for this bore; "+c.Advised+" is.")
		}
		partings(p, c)
		forcing(p, c)
		toward(p, c)
	}
	footer(p, h)
	return p
}

// partings lists where the two methods part, with the values behind it.
func partings(p *Page, c explain.Contrast) {
	p.Heading("Where they part")
	if len(c.Differences) == 0 {
		p.Para("No rule treats them differently; the points at the start and the order of the methods decide.")
	}
	for _, d := range c.Differences[:min(mostDifferences, len(c.Differences))] {
		marker := "-"
		if d.Effect == "lean" {
			marker = signed(d.Points)
		}
		p.Item(marker, d.Method+" "+speaks(d)+": "+d.Text+" ["+d.Rule+"]")
		for _, a := range d.Atoms {
			if a.Margin != nil && a.Outcome == d.Outcome {
				p.Detail(atomLine(a))
			}
		}
	}
	if more := len(c.Differences) - mostDifferences; more > 0 {
		p.Para("And " + counted(more, "smaller difference") + ".")
	}
}

func speaks(d explain.Difference) string {
	switch {
	case d.Speaks == "open":
		return "not settled"
	case d.Effect == "rule_out":
		return "ruled out"
	}
	return d.Speaks
}

// forcing lists the facts that are enough for the advice.
func forcing(p *Page, c explain.Contrast) {
	facts := c.Sufficient
	if !c.Forced {
		facts = c.Provided
	}
	p.Heading("What is enough for the advice " + c.Advised)
	parts := make([]string, len(facts))
	for i, f := range facts {
		parts[i] = plain(f.Fact) + " " + f.Text
	}
	if len(parts) > 0 {
		p.Para(capital(strings.Join(parts, "; ")) + ".")
	}
	switch {
	case c.Forced && len(facts) == 0:
		p.Para("Nothing need be known for it.")
	case c.Forced:
		p.Para("With these it stays whatever all the other facts are; none of them can be spared.")
	default:
		p.Para("With these it stays whatever the other facts are, as long as nothing else is found out about " + names(c.Unknown) + ".")
	}
}

// toward lists what would let the other method win.
func toward(p *Page, c explain.Contrast) {
	if c.Not == c.Advised {
		return
	}
	p.Heading("What would let " + c.Not + " win")
	if len(c.Toward) == 0 {
		p.Para("No change of one fact or of two.")
	}
	for _, t := range c.Toward[:min(mostToward, len(c.Toward))] {
		p.Item("-", shifts(t))
	}
	if more := len(c.Toward) - mostToward; more > 0 {
		p.Para("And " + counted(more, "larger change") + "; --format json lists all.")
	}
}

func shifts(t explain.Tipping) string {
	parts := make([]string, len(t.Shifts))
	for i, s := range t.Shifts {
		parts[i] = plain(s.Fact) + " " + nowText(s) + " -> " + towardText(s)
	}
	return strings.Join(parts, " and ")
}
