package term

import (
	"strconv"

	"boremend/engine"
	"boremend/engine/explain"
)

// Tipped is what would change the advice for one bore.
type Tipped struct {
	Advice    engine.Advice
	Points    []explain.Tipping
	Pairs     []explain.Tipping
	WithPairs bool
}

// Tipping lays out what would change the advice, by what can be done about it.
func Tipping(h Header, bores []Tipped) *Page {
	p := &Page{}
	for _, b := range bores {
		answer(p, h, b.Advice)
		if len(b.Points) == 0 {
			p.Heading("What would change the advice")
			p.Para("No single fact, whatever it were.")
		}
		for _, group := range tippingGroups {
			tippingGroup(p, group.title, b.Points, group.holds)
		}
		if b.WithPairs {
			pairs(p, b.Pairs)
		}
	}
	footer(p, h)
	return p
}

// tippingGroups sorts the facts by what somebody at the bore can do about them.
var tippingGroups = []struct {
	title string
	holds func(explain.Shift) bool
}{
	{"What can be changed on site", func(s explain.Shift) bool { return s.From != nil && s.Change == engine.OnSite }},
	{"What can only be measured again", func(s explain.Shift) bool { return s.From != nil && s.Change == engine.Measure }},
	{"What is as it is, should it prove to be otherwise", func(s explain.Shift) bool { return s.From != nil && s.Change == engine.Fixed }},
	{"What is not known, should it prove to be so", func(s explain.Shift) bool { return s.From == nil }},
}

func tippingGroup(p *Page, title string, points []explain.Tipping, holds func(explain.Shift) bool) {
	var rows [][]string
	for _, t := range points {
		s := t.Shifts[0]
		if !holds(s) {
			continue
		}
		last := len(rows) - 1
		if sameAbove := last >= 0 && rows[last][0] == plain(s.Fact) && rows[last][3] == t.Title; sameAbove && s.By == nil {
			rows[last][2] += " or " + s.ToText
			continue
		}
		rows = append(rows, []string{plain(s.Fact), nowText(s), towardText(s), t.Title})
	}
	if len(rows) == 0 {
		return
	}
	p.Heading(title)
	for _, r := range rows {
		p.Item("-", r[0]+" "+r[1]+" -> "+r[2]+": "+r[3])
	}
}

func nowText(s explain.Shift) string {
	if s.Assumed {
		return s.FromText + " (assumed)"
	}
	return s.FromText
}

// towardText is the value that turns the advice, with the way to it.
func towardText(s explain.Shift) string {
	text := s.ToText
	if s.By != nil {
		text += " (by " + s.ByText + gives(s.Gives) + ")"
	}
	if s.Against != "" {
		text += " (not possible with " + plain(s.Against) + " as it is)"
	}
	return text
}

func gives(in *float64) string {
	if in == nil {
		return ""
	}
	decimals := 1
	if *in >= 10 {
		decimals = 0
	}
	return ", " + strconv.FormatFloat(*in, 'f', decimals, 64) + " times its give-or-take"
}

// mostPairs is how many pairs are shown; the rest are in the JSON.
const mostPairs = 12

func pairs(p *Page, found []explain.Tipping) {
	p.Heading("What would change it two at a time")
	if len(found) == 0 {
		p.Para("No two facts together, among those that cannot do it alone.")
	}
	for _, t := range found[:min(mostPairs, len(found))] {
		p.Item("-", shifts(t)+": "+t.Title)
	}
	if more := len(found) - mostPairs; more > 0 {
		p.Para("And " + counted(more, "larger pair") + "; --format json lists all.")
	}
}
