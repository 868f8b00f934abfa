package term

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"boremend/engine"
	"boremend/engine/audit"
)

// BookHeader names a rulebook on top of a page about it.
func BookHeader(book *engine.Rulebook) string { return book.Title + ", edition " + book.Edition }

// mostPlaces is how many declarations are listed with edits that nobody notices,
// unless all are wanted.
const mostPlaces = 40

// Mutation lays out which small wrong edits no case notices.
func Mutation(book string, m audit.Mutation, all bool) *Page {
	p := &Page{}
	p.Title(book + ": " + percentDown(m.Score) + " of small wrong edits are noticed")
	mutationCounts(p, m)
	if len(m.Failing) > 0 {
		p.Heading("These cases fail already; put them right first, they notice nothing")
		for _, name := range m.Failing {
			p.Item("-", name)
		}
	}
	if m.Tried > 0 {
		kindTable(p, m.Kinds)
	}
	survivors(p, m.Survivors, all)
	p.Heading("How this was found")
	p.Para("Edits were made one at a time, in memory only, and the cases replayed. An edit is noticed when something expected of a bore is no longer so. Whether an advice is provisional or touchy was not looked at. A threshold was moved by the give-or-take of the fact that it is compared with; where that has none, by 5 %. Points were moved by half a point. A limit that only the sizing sheets read has no effect on an advice.")
	return p
}

// percentDown rounds down, so that no aim seems reached that is not.
func percentDown(share float64) string {
	return strconv.FormatFloat(math.Floor(share*1000)/10, 'f', 1, 64) + " %"
}

func mutationCounts(p *Page, m audit.Mutation) {
	text := fmt.Sprintf("%s tried with %s: %d noticed, %d not noticed, %d shown to have no effect on any advice and left out.",
		counted(m.Tried, "edit"), counted(m.Cases, "bore"), m.Noticed, m.NotNoticed, m.Equivalent)
	if m.Refused > 0 {
		text += fmt.Sprintf(" Another %d could not be loaded, and so cannot slip in.", m.Refused)
	}
	p.Para(text)
	if m.Stopped {
		p.Para(fmt.Sprintf("Stopped early: %d of %s were tried.", m.Tried, counted(m.Edits, "edit")))
	}
}

func kindTable(p *Page, kinds []audit.KindCount) {
	rows := make([][]string, len(kinds))
	for i, k := range kinds {
		rows[i] = []string{strconv.Itoa(k.Noticed), strconv.Itoa(k.NotNoticed), strconv.Itoa(k.Equivalent), string(k.Kind)}
	}
	p.Table([]string{"noticed", "missed", "no effect", "kind of edit"}, rows)
}

// survivors lists the edits that nobody notices, by the declaration where they are.
func survivors(p *Page, list []audit.Survivor, all bool) {
	if len(list) == 0 {
		return
	}
	p.Heading("No case would notice if ...")
	places, left := 0, 0
	for i, s := range list {
		if i == 0 || s.Name != list[i-1].Name || s.Declares != list[i-1].Declares {
			places++
			if all || places <= mostPlaces {
				p.Item("-", editPlace(s))
			}
		}
		if all || places <= mostPlaces {
			p.Detail("... " + Would(s.Edit) + ".")
		} else {
			left++
		}
	}
	if left > 0 {
		p.Para(fmt.Sprintf("And %s at %s: --all lists them.", counted(left, "more edit"), counted(places-mostPlaces, "more place")))
	}
}

// editPlace says where an edit is, and what a case should pin to notice it.
func editPlace(s audit.Survivor) string {
	text := fmt.Sprintf("%s:%d", s.File, s.Line)
	if s.Declares != "rulebook" {
		text += ", " + s.Declares + " " + s.Name
	}
	if s.Declares != "fact" && s.Declares != "limit" {
		return text
	}
	pins := s.Pin
	if s.Declares == "fact" {
		pins = append([]string{"its value"}, pins...)
	}
	switch others := len(pins) - mostPins; {
	case len(pins) == 0:
		return text + " (pin a fact that follows from it)"
	case others > 1:
		return text + fmt.Sprintf(" (pin %s or one of %d others)", strings.Join(pins[:mostPins], ", "), others)
	}
	return text + " (pin " + strings.Join(pins, ", ") + ")"
}

// mostPins is how many rules are named for one place.
const mostPins = 4

// Would says what an edit does, to follow "if".
func Would(e engine.Edit) string {
	switch {
	case e.Kind == engine.DropRule:
		return "it were not there"
	case e.Kind == engine.DropMethod:
		return "it were not for " + e.Old
	case e.Kind == engine.ChangeEffect, e.Kind == engine.ChangeUnknown, e.Kind == engine.ChangePoints, e.Key == "narrow":
		return fmt.Sprintf("%s were %s (now %s)", e.Key, e.New, e.Old)
	case e.Kind == engine.DropPart:
		return "`" + e.Old + "` were left out"
	case e.Key == "is":
		return fmt.Sprintf("it were %s (now %s)", e.New, e.Old)
	case e.Value == "":
		return "nothing were assumed (now `" + e.Old + "`)"
	}
	return fmt.Sprintf("`%s` said `%s`", e.Old, e.New)
}
