package term

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"boremend/engine/audit"
)

// Compared is what there is to say of two rulebooks.
type Compared struct {
	Before, After string // their folders
	Edits         []audit.RulebookEdit
	Cases         audit.ComparedCases
	Files         int
	Unread        []Unread
	Space         audit.ComparedSpace
}

// Unread is a problem for which a job file could not be compared.
type Unread struct {
	Under string // the rulebook that cannot read it
	Says  string // file:line:col: what is wrong (what would be right)
}

// Compare lays out what an edit of a rulebook does.
func Compare(c Compared) *Page {
	p := &Page{}
	p.Title("From " + c.Before + " to " + c.After)
	p.Labelled("Edits:", editsInShort(c.Edits))
	p.Labelled("Cases:", casesInShort(c))
	p.Labelled("Drawn:", spaceInShort(c.Space))
	edits(p, c.Edits)
	comparedCases(p, c)
	comparedSpace(p, c.Space)
	return p
}

func editsInShort(edits []audit.RulebookEdit) string {
	if len(edits) == 0 {
		return "None: the two say the same; only comments, layout or the order of the rules may differ."
	}
	var parts []string
	for _, change := range []string{audit.Added, audit.Removed, audit.Edited} {
		n := 0
		for _, e := range edits {
			if e.Change == change {
				n++
			}
		}
		if n > 0 {
			parts = append(parts, strconv.Itoa(n)+" "+change)
		}
	}
	return strings.Join(parts, ", ") + "."
}

func casesInShort(c Compared) string {
	text := fmt.Sprintf("%d of %s changed.", len(c.Cases.Changed), counted(c.Cases.Bores, "bore"))
	if n := advisedAnew(c.Cases.Changed); n > 0 {
		text += fmt.Sprintf(" At %d of them another method is advised.", n)
	}
	if n := len(c.Unread); n > 0 {
		text += fmt.Sprintf(" NOT COMPARED for %s, below.", counted(n, "mistake"))
	}
	if c.Cases.Stopped {
		text += fmt.Sprintf(" STOPPED after %d.", c.Cases.Done)
	}
	return text
}

func advisedAnew(bores []audit.BoreChanged) (n int) {
	for _, b := range bores {
		if b.Before.Method != b.After.Method {
			n++
		}
	}
	return n
}

func spaceInShort(s audit.ComparedSpace) string {
	text := fmt.Sprintf("Another method is advised in %s of %s.", shareOf(s.Share, s.Error), counted(s.Done-s.Unlike, "drawn joint"))
	if s.Stopped {
		text += fmt.Sprintf(" STOPPED after %d of %d.", s.Done, s.Draws)
	}
	return text
}

func edits(p *Page, edits []audit.RulebookEdit) {
	if len(edits) == 0 {
		return
	}
	p.Heading("What was edited")
	for _, e := range edits {
		p.Item("-", strings.TrimSpace(e.Of+" "+e.Name)+": "+e.Change)
		for _, f := range e.Fields {
			switch {
			case e.Change == audit.Added:
				p.Detail(f.Field + ": " + f.After)
			case e.Change == audit.Removed:
				p.Detail(f.Field + ": " + f.Before)
			default:
				p.Detail(f.Field + ": " + orNothing(f.Before) + " -> " + orNothing(f.After))
			}
		}
	}
}

func orNothing(text string) string {
	if text == "" {
		return "nothing"
	}
	return text
}

func comparedCases(p *Page, c Compared) {
	p.Heading("Cases that change")
	p.Para(fmt.Sprintf("Compared: %s in %s.", counted(c.Cases.Bores, "bore"), counted(c.Files, "job file")))
	if len(c.Cases.Changed) == 0 {
		p.Para("None.")
	}
	for i, b := range adviceFirst(c.Cases.Changed) {
		p.Item(strconv.Itoa(i+1), b.Bore+" ("+b.File+"): "+strings.Join(b.Changed, ", "))
		contrasted(p, b.Contrast)
	}
	if n := len(c.Cases.Reworded); n > 0 {
		p.Para(fmt.Sprintf("At %s more, a demand or caution stays but is worded otherwise, or names other values: %s.", counted(n, "bore"), boresNamed(c.Cases.Reworded)))
	}
	if n := c.Cases.OtherPoints; n > 0 {
		p.Para(fmt.Sprintf("At %s more, only points differ.", counted(n, "bore")))
	}
	if len(c.Unread) > 0 {
		p.Heading("Not compared")
		for _, u := range c.Unread {
			p.Item("-", "Under "+u.Under+": "+u.Says)
		}
	}
}

// adviceFirst puts the bores first at which another method is advised.
func adviceFirst(bores []audit.BoreChanged) []audit.BoreChanged {
	other := func(b audit.BoreChanged) int {
		if b.Before.Method != b.After.Method {
			return 0
		}
		return 1
	}
	ordered := slices.Clone(bores)
	slices.SortStableFunc(ordered, func(a, b audit.BoreChanged) int { return other(a) - other(b) })
	return ordered
}

// boresNamed lists the first few bores.
func boresNamed(bores []audit.BoreNamed) string {
	const most = 6
	var words []string
	for _, b := range bores[:min(most, len(bores))] {
		words = append(words, b.Bore+" ("+b.File+")")
	}
	if more := len(bores) - most; more > 0 {
		words = append(words, strconv.Itoa(more)+" more")
	}
	return strings.Join(words, ", ")
}

func comparedSpace(p *Page, s audit.ComparedSpace) {
	p.Heading("Over joints of every kind")
	p.Para(drawn(s.Done, s.Draws, s.Seed, s.Stopped))
	if s.Unlike > 0 {
		p.Para(fmt.Sprintf("Left out: %s that only one of the two rulebooks can write down.", drawsOf(s.Unlike)))
	}
	if s.Beside > 0 {
		p.Para(fmt.Sprintf("In %s the advised method stays, and some verdict turns.", drawsOf(s.Beside)))
	}
	if s.Near > 0 {
		p.Para(fmt.Sprintf("%d more were drawn close to where something that was edited turns: the advised method changed in %d of them. They are part of no share.", s.Near, s.NearChanged))
	}
	if len(s.Kinds) == 0 {
		p.Para("The advised method changed in none of them.")
	}
	for i, k := range s.Kinds {
		met := drawsOf(k.Count) + ", " + shareOf(k.Share, k.Error)
		if k.Count == 0 {
			met = "only met close to what was edited"
		}
		p.Item(strconv.Itoa(i+1), k.Before+" -> "+k.After+" ("+met+")")
		p.Detail("Simplest: " + factsAt(k.Example.Facts, true) + " Nothing else is known.")
		p.Detail("Was: " + stood(k.Example.Before) + ". Now: " + stood(k.Example.After) + ".")
		turnedFor(p, k)
	}
	if s.KindsLeft > 0 {
		p.Para(fmt.Sprintf("Left off: %s of change with %s in all; --list shows more.", counted(s.KindsLeft, "rarer kind"), drawsOf(s.DrawsLeftOff)))
	}
}

// turnedFor lists the rules that turned for the two methods of a change. Others
// are only counted.
func turnedFor(p *Page, k audit.ChangeKind) {
	others := 0
	for _, r := range k.Example.Turned {
		if r.Effect != "demand" && r.Effect != "caution" && (slices.Contains(r.For, k.Before) || slices.Contains(r.For, k.After)) {
			p.Detail(ruleTurned(r))
		} else {
			others++
		}
	}
	switch {
	case len(k.Example.Turned) == 0:
		p.Detail("No rule turned: the start or the order of the methods decides.")
	case others > 0:
		p.Detail("Without a part in it, " + counted(others, "more rule") + " turned.")
	}
}
