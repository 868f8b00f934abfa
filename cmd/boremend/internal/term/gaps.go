package term

import (
	"fmt"
	"strconv"
	"strings"

	"boremend/engine"
	"boremend/engine/audit"
)

// Gaps lays out the joints for which a rulebook has no good answer.
func Gaps(title, edition string, g audit.Gaps) *Page {
	p := &Page{}
	p.Title(fmt.Sprintf("%s, edition %s: joints without a good answer", title, edition))
	p.Para(drawn(g.Done, g.Draws, g.Seed, g.Stopped))
	for _, k := range g.Kinds {
		p.Heading(capital(gapNames[k.Kind]) + ": " + shareOf(k.Share, k.Error))
		p.Para(strings.ReplaceAll(gapMeans[k.Kind], "FALLBACK", g.Fallback))
		if k.Kind == audit.NothingLeft && g.Sent > 0 {
			p.Para(fmt.Sprintf("Not counted: %s in which a rule itself says %s, and no other method stands.", drawsOf(g.Sent), g.Fallback))
		}
		for i, gap := range k.Groups {
			p.Item(strconv.Itoa(i+1), gapSaid(k.Kind, gap)+" ("+drawsOf(gap.Count)+", "+shareOf(gap.Share, gap.Error)+")")
			gapExample(p, k.Kind, gap)
		}
		switch {
		case k.Count == 0:
			p.Para("None was met.")
		case k.GroupsLeft > 0:
			p.Para(fmt.Sprintf("Left off: %s with %s in all; --list shows more.", counted(k.GroupsLeft, "smaller group"), drawsOf(k.DrawsLeftOff)))
		}
	}
	return p
}

var gapNames = map[string]string{
	audit.NothingLeft: "no method left",
	audit.AllOpen:     "no method stands yet",
	audit.Tie:         "methods tie",
}

var gapMeans = map[string]string{
	audit.NothingLeft: "Every method but FALLBACK is ruled out, and no rule says FALLBACK: the rulebook has nothing to offer.",
	audit.AllOpen:     "No method but FALLBACK stands, and some are open: what is unknown keeps the rulebook from any answer.",
	audit.Tie:         "The leading methods have equal points; the order of the methods alone decides.",
}

// drawn says how the fact space was searched.
func drawn(done, of int, seed uint64, stopped bool) string {
	text := fmt.Sprintf("%d joints drawn (seed %d)", done, seed)
	if stopped {
		text = fmt.Sprintf("STOPPED after %d of %d joints (seed %d)", done, of, seed)
	}
	return text + ", on, beside and between the thresholds of the rules. A share says how often something was met among the draws, with its error 19 times in 20. It does not say how often it turns up in a shop."
}

func drawsOf(n int) string { return counted(n, "draw") }

// shareOf writes a share with its error.
func shareOf(share, err float64) string {
	digits := 1
	if err < 0.001 {
		digits = 2
	}
	if share < 0.001 {
		digits = 3
	}
	return fmt.Sprintf("%.*f %% +/- %.*f", digits, 100*share, digits, 100*err)
}

// gapSaid names what is responsible for a group.
func gapSaid(kind string, g audit.GapGroup) string {
	switch {
	case kind == audit.Tie:
		return strings.Join(g.Methods, " = ")
	case kind == audit.AllOpen && len(g.Unknown) > 0:
		return "unknown: " + plain(strings.Join(g.Unknown, ", "))
	case kind == audit.AllOpen:
		return "not settled, with every fact known: " + strings.Join(g.Rules, ", ")
	}
	return strings.Join(g.Rules, ", ")
}

func gapExample(p *Page, kind string, g audit.GapGroup) {
	rest := "Nothing else is known."
	if kind == audit.AllOpen {
		rest = "All else is known, at its most ordinary value."
	}
	p.Detail("Simplest: " + factsAt(g.Example.Facts, kind != audit.AllOpen) + " " + rest)
	if kind == audit.Tie {
		for _, m := range g.Example.Methods {
			p.Detail(m.Method + ", " + points(m.Points) + ": " + strings.Join(leansOf(m), "; ") + ".")
		}
		return
	}
	byRule(p, g.Example.Methods)
}

// factsAt writes the facts of an example, those out of the ordinary first. The
// ordinary ones may be left out.
func factsAt(facts []audit.FactAt, ordinaries bool) string {
	var special, ordinary []string
	for _, f := range facts {
		text := plain(f.Fact) + " " + plain(f.Text)
		if f.Ordinary {
			ordinary = append(ordinary, text)
		} else {
			special = append(special, text)
		}
	}
	var parts []string
	if len(special) > 0 {
		parts = append(parts, strings.Join(special, ", "))
	}
	if len(ordinary) > 0 && ordinaries {
		parts = append(parts, "also known, and ordinary: "+strings.Join(ordinary, ", "))
	}
	if len(parts) == 0 {
		return "whatever is found."
	}
	return strings.Join(parts, "; ") + "."
}

// leansOf lists what makes the points of a method: its start, and the leans that
// are not for all that tie.
func leansOf(m audit.GapStanding) []string {
	leans := []string{"starts at " + strconv.FormatFloat(m.Start, 'f', -1, 64)}
	for _, r := range m.Reasons {
		leans = append(leans, signed(r.Points)+" "+r.Rule)
	}
	return leans
}

// byRule lists each rule once, with the methods that it keeps from standing.
func byRule(p *Page, methods []audit.GapStanding) {
	var order []engine.Reason
	concerned := map[string][]string{}
	for _, m := range methods {
		for _, r := range m.Reasons {
			if concerned[r.Rule] == nil {
				order = append(order, r)
			}
			concerned[r.Rule] = append(concerned[r.Rule], m.Method)
		}
	}
	for _, r := range order {
		text, does := " "+r.Text, " rules out "
		switch {
		case r.Outcome != engine.Holds.String():
			text, does = "", " is not settled for "
		case r.UntilKnown:
			does = " rules out, until somebody looks, "
		}
		p.Detail(r.Rule + does + strings.Join(concerned[r.Rule], ", ") + "." + text)
	}
}
