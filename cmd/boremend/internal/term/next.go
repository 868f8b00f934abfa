package term

import (
	"strconv"
	"strings"

	"boremend/engine/explain"
)

// mostNext is how many facts are shown with how to find them out.
const mostNext = 6

// Next lays out what to find out, the most useful first.
func Next(h Header, bores []explain.Next) *Page {
	p := &Page{}
	for _, n := range bores {
		p.Heading(strings.ToUpper(n.Bore) + " (" + h.Job + ")")
		p.Labelled("Now:", n.Method+".")
		switch {
		case n.Settled:
			p.Labelled("Next:", "Nothing: whatever else were found, "+n.Method+" stays the advice. That goes for the facts as stated and for what is taken for granted below.")
		case len(n.Find) == 0:
			p.Labelled("Next:", "Nothing that is known to change the choice; that the give-or-takes together could do so was neither found nor ruled out.")
		default:
			p.Labelled("Open:", counted(len(n.Outcomes), "outcome")+" possible: "+strings.Join(n.Outcomes, ", ")+".")
		}
		finds(p, n.Find)
		leftOver(p, n)
	}
	footer(p, h)
	return p
}

func finds(p *Page, list []explain.FindOut) {
	if len(list) == 0 {
		return
	}
	p.Heading("Find out, in this order")
	for i, f := range list[:min(mostNext, len(list))] {
		text := plain(f.Fact)
		if f.Weak {
			text += ", again and more closely (now " + f.Known + ")"
		}
		p.Item(strconv.Itoa(i+1), text+": "+f.Ask)
		p.Detail(minutesText(f.Minutes) + "; leaves " + left(f) + ".")
		p.Detail(f.How + ". " + capital(f.Tool) + ".")
	}
	var rest []string
	for _, f := range list[min(mostNext, len(list)):] {
		rest = append(rest, plain(f.Fact))
	}
	if len(rest) > 0 {
		p.Para("After these: " + strings.Join(rest, ", ") + ".")
	}
}

func left(f explain.FindOut) string {
	if f.Best == f.Worst {
		return counted(f.Best, "outcome") + " whatever it is"
	}
	return counted(f.Best, "outcome") + " at best, " + strconv.FormatFloat(f.Mean, 'f', 1, 64) + " on average, " + strconv.Itoa(f.Worst) + " at worst"
}

func minutesText(minutes float64) string {
	if minutes == 1 {
		return "1 minute"
	}
	return strconv.FormatFloat(minutes, 'f', -1, 64) + " minutes"
}

func leftOver(p *Page, n explain.Next) {
	for _, group := range []struct {
		title string
		facts []string
	}{
		{"Taken for granted until somebody looks", besides(n.Granted)},
		{"Only of use for what must also be done", besides(n.Beside)},
		{"No longer matters", n.NoLonger},
	} {
		if len(group.facts) > 0 {
			p.Heading(group.title)
			p.Para(plain(strings.Join(group.facts, ", ")) + ".")
		}
	}
}

func besides(list []explain.Besides) (names []string) {
	for _, b := range list {
		names = append(names, b.Fact)
	}
	return names
}
