package term

import (
	"fmt"
	"strconv"
	"strings"

	"boremend/engine"
	"boremend/engine/audit"
	"boremend/engine/quantity"
)

// Drafted are blanks for which a bore was looked for, and the file that it was
// written to.
type Drafted struct {
	Blanks   []audit.Blank `json:"blanks"`
	Found    bool          `json:"found"`
	File     string        `json:"draft,omitempty"`
	WasThere bool          `json:"was_there"` // a file of that name, which was left alone
}

// Coverage lays out what the cases exercise, and what they do not.
func Coverage(book string, c audit.Coverage, drafts []Drafted, all bool) *Page {
	p := &Page{}
	held := coverageCounts(c)
	p.Title(book + ": " + exercisedTitle(c))
	text := fmt.Sprintf("%s looked at in %s: %d were seen to hold and to fail. %s were seen to decide both ways.",
		counted(len(c.Statements), "condition"), counted(c.Cases, "bore"), held.conditions, fmt.Sprintf("%d of %s in them", held.asked, counted(held.of, "comparison")))
	if c.Unjudged > 0 {
		text += fmt.Sprintf(" Of %s nothing is expected.", counted(c.Unjudged, "bore"))
	}
	p.Para(text)
	if c.Stopped {
		p.Para("Stopped early: the list of what is missing is not whole.")
	}
	blankList(p, c.Blanks, all)
	draftList(p, drafts)
	if all {
		conditionTable(p, c.Statements)
	}
	p.Heading("What was looked for")
	p.Para("Each condition of a rule or caution, and each yes-or-no fact that is worked out, holding and failing; and each comparison in it deciding alone, both by holding and by failing: had it come out the other way, so had the whole. What cannot happen within the ranges of the facts is left out, where that could be shown.")
	return p
}

func exercisedTitle(c audit.Coverage) string {
	if len(c.Blanks) == 0 && !c.Stopped {
		return "the cases exercise all that can happen"
	}
	return counted(len(c.Blanks), "thing") + " that no case exercises"
}

type coverageSum struct{ conditions, asked, of int }

func coverageCounts(c audit.Coverage) (sum coverageSum) {
	for _, q := range c.Statements {
		if q.Holds > 0 && q.Fails > 0 {
			sum.conditions++
		}
		for _, a := range q.Asked {
			sum.of++
			if a.HeldDecided > 0 && a.FailedDecided > 0 {
				sum.asked++
			}
		}
	}
	return sum
}

// blankList lists what no case exercises, by the declaration where it stands.
func blankList(p *Page, blanks []audit.Blank, all bool) {
	if len(blanks) == 0 {
		return
	}
	p.Heading("No case in which ...")
	places, left := 0, 0
	for i, g := range blanks {
		if i == 0 || g.Name != blanks[i-1].Name || g.Key != blanks[i-1].Key {
			places++
			if all || places <= mostPlaces {
				p.Item("-", fmt.Sprintf("%s:%d, %s %s", g.File, g.Line, g.Declares, g.Name))
			}
		}
		if all || places <= mostPlaces {
			p.Detail("... " + BlankFilled(g) + ".")
		} else {
			left++
		}
	}
	if left > 0 {
		p.Para(fmt.Sprintf("And %d more at %s: --all lists them.", left, counted(places-mostPlaces, "more place")))
	}
}

// BlankFilled says what happens at a bore that fills the blank.
func BlankFilled(g audit.Blank) string {
	whole := "it"
	if g.Key == "assume" {
		whole = "its assumption"
	}
	switch {
	case g.Asked == "":
		return whole + " " + g.Want
	case g.Decides:
		return "`" + g.Asked + "` " + g.Want + " and alone decides"
	}
	return "`" + g.Asked + "` " + g.Want
}

// BlanksFilled lists what happens at a bore that fills blanks, one on a line.
func BlanksFilled(blanks []audit.Blank) string {
	lines := make([]string, len(blanks))
	for i, g := range blanks {
		lines[i] = "- " + BlankFilled(g)
		if g.Name != blanks[0].Name {
			lines[i] += " (" + g.Name + ")"
		}
	}
	return strings.Join(lines, "\n")
}

// Changes says which facts of a case a draft changes.
func Changes(book *engine.Rulebook, d audit.Draft) string {
	s := book.NewState()
	s.Load(d.Findings)
	texts := make([]string, len(d.Changed))
	for i, slot := range d.Changed {
		texts[i] = plain(book.Facts[slot].Name) + " to " + s.Show(slot, quantity.Millimetre)
	}
	return strings.Join(texts, ", ")
}

// draftList says which drafts were written.
func draftList(p *Page, drafts []Drafted) {
	if len(drafts) == 0 {
		return
	}
	p.Heading("Drafts to judge")
	missing := 0
	for _, d := range drafts {
		switch {
		case !d.Found:
			missing += len(d.Blanks)
		case d.WasThere:
			p.Item("-", d.File+" is there already, and was left alone.")
		default:
			p.Item("-", d.File)
		}
	}
	if missing > 0 {
		p.Para(fmt.Sprintf("For %d of them no bore was found. That does not mean that there is none.", missing))
	}
}

// conditionTable shows the counts of every condition.
func conditionTable(p *Page, list []audit.Exercised) {
	p.Heading("Every condition")
	rows := make([][]string, len(list))
	for i, q := range list {
		name := q.Name
		if q.Key == "assume" {
			name += " (assumed)"
		}
		rows[i] = []string{strconv.Itoa(q.Holds), strconv.Itoa(q.Fails), strconv.Itoa(q.Unknown), name}
	}
	p.Table([]string{"held", "failed", "unknown", "rule, caution or fact"}, rows)
}
