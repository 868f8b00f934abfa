package paper

import (
	"slices"
	"strconv"
)

// look is one inspection after a repair.
type look struct {
	FromHours, ToHours float64 // the same where it is one figure
	Every              bool    // and again after as many hours
	What               string
}

// plannedFor says what a plan of inspections turns on.
type plannedFor struct {
	stopGaps []string // bores with a repair for now
	halved   bool
	why      []string // it is halved
}

// housePlan is when to look again. Common practice, no source: an opinion. The
// maker's or an examiner's interval wins where it is shorter.
var housePlan = []look{
	{FromHours: 8, ToHours: 10, What: "heat of the joint by hand, fresh grease at both ends, marks on bolts and sleeve unmoved"},
	{FromHours: 50, ToHours: 50, What: "bolts at their torque, nothing walked or turned, no dust at the joint line"},
	{FromHours: 250, ToHours: 250, What: "play measured with bar and dial and written down; welds, iron and ears under hard shock tested for cracks"},
	{FromHours: 500, ToHours: 500, Every: true, What: "the same at every service"},
}

// stopGapHours is how often a stop-gap is looked at until it comes out.
const stopGapHours = 50

// stopGaps are the methods that are for now, and come out again.
var stopGaps = []string{"oversize_pin", "bolt_on_reinforcement"}

// planned finds out what the plan of a job turns on.
func (j Job) planned() plannedFor {
	var p plannedFor
	halve := func(why string) {
		if !slices.Contains(p.why, why) {
			p.halved, p.why = true, append(p.why, why)
		}
	}
	for _, b := range j.Bores {
		k := j.known(b.Advice)
		if k.is("shock", "severe") {
			halve("hard shock")
		}
		if k.is("wet_or_corrosive", "yes") {
			halve("wet or corrosive surroundings")
		}
		if k.is("lifts_people", "yes") {
			halve("people on the machine")
		}
		if slices.Contains(stopGaps, b.Advice.Chosen.Method) {
			p.stopGaps = append(p.stopGaps, capital(given(b.Name)))
		}
	}
	return p
}

// hours writes when to look, halved where the duty is hard.
func (l look) hours(p plannedFor) string {
	share := 1.0
	if p.halved {
		share = 0.5
	}
	number := func(h float64) string { return strconv.FormatFloat(h*share, 'f', -1, 64) }
	text := number(l.FromHours)
	if l.ToHours > l.FromHours {
		text += " to " + number(l.ToHours)
	}
	if l.Every {
		return "every " + text + " h"
	}
	return "after " + text + " h"
}

// inspections is the plan with room for dates, for both papers.
func (j Job) inspections(w *writer) {
	p := j.planned()
	for _, name := range p.stopGaps {
		w.note("warning", "TEMPORARY: "+name, "This is a repair for now. It is looked at every "+strconv.Itoa(stopGapHours)+
			" h and comes out again. Write the word TEMPORARY on the machine and on the invoice, and fill in here when it comes out:")
		w.add(Blanks{[]string{"Out by (date)", "or at hour-meter"}})
	}
	var rows [][]string
	for _, l := range housePlan {
		rows = append(rows, []string{l.hours(p), l.What, "", ""})
	}
	w.form([]string{"Working hours", "Look at", "Due (date or hour-meter)", "Done by"}, rows)
	text := "This plan is our opinion. Where the maker, an examiner or the law asks for a shorter interval, that one counts."
	if p.halved {
		text = "The intervals are halved because of " + listed(p.why) + ". " + text
	}
	w.small(text)
}
