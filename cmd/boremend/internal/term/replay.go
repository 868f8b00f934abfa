package term

import (
	"fmt"
	"strings"

	"boremend/engine"
	"boremend/engine/explain"
)

// By is a program and the rulebook that it advised by.
type By struct {
	Version  string
	Rulebook engine.Imprint
}

// Replay lays out a saved advice beside the one that its facts lead to now.
func Replay(h Header, saved, now By, bores []explain.Replay) *Page {
	p := &Page{}
	p.Title("The saved advice for " + h.Job + ", given again")
	p.Labelled("Saved:", saved.words())
	p.Labelled("Now:", now.words())
	same := saved.Rulebook.SHA256 == now.Rulebook.SHA256
	p.Labelled("So:", verdictOnReplay(same, bores))
	for _, r := range bores {
		p.Heading(strings.ToUpper(r.Bore))
		if r.Same {
			p.Labelled("Same:", terms(r.After))
			continue
		}
		replayedBore(p, r)
	}
	return p
}

func (b By) words() string {
	text := fmt.Sprintf("boremend %s, rulebook %q, edition %s", b.Version, b.Rulebook.Title, b.Rulebook.Edition)
	for _, over := range b.Rulebook.Over {
		text += fmt.Sprintf(", over %q, edition %s", over.Title, over.Edition)
	}
	return text + fmt.Sprintf(" (SHA-256 %.12s).", b.Rulebook.SHA256)
}

// verdictOnReplay sums the bores up in one line.
func verdictOnReplay(sameRulebook bool, bores []explain.Replay) string {
	same, changed := 0, 0
	for _, r := range bores {
		if r.Same {
			same++
		}
		if r.Changed {
			changed++
		}
	}
	switch {
	case same == len(bores) && sameRulebook:
		return "The same rulebook gives the same advice again, to the letter."
	case same == len(bores):
		return "Another rulebook gives the same advice, to the letter."
	case sameRulebook:
		return "The rulebook is the same and the advice is NOT: the program is another, or the saved file was changed."
	case changed == 0:
		return "The advice is the same; what stands behind it differs."
	case len(bores) == 1:
		return "The advice is different now."
	}
	return fmt.Sprintf("The advice is different now at %d of %d bores.", changed, len(bores))
}

func replayedBore(p *Page, r explain.Replay) {
	p.Labelled("Was:", terms(r.Before))
	p.Labelled("Now:", terms(r.After))
	for _, m := range r.Strangers {
		p.Labelled("Mind:", "only one of the two rulebooks has the method "+m+".")
	}
	if len(r.Turned) > 0 {
		turned(p, r.Turned)
	}
	if len(r.Methods) > 0 {
		sideBySide(p, r.Methods)
	}
	exchanged(p, r.Demands)
	cautionsExchanged(p, r.Cautions)
	follows(p, r.Worked)
}

// exchanged lists the demands that came, and those that went.
func exchanged(p *Page, e explain.Exchanged) {
	for _, part := range []struct {
		title string
		said  []explain.Said
	}{{"What must now also be done", e.Added}, {"What need not be done any more", e.Gone}} {
		if len(part.said) > 0 {
			p.Heading(part.title)
		}
		for _, s := range part.said {
			p.Item("-", s.Text+" ["+s.Name+"]")
		}
	}
}

// cautionsExchanged names the warnings that came and went; they stand written out
// in the advice.
func cautionsExchanged(p *Page, e explain.Exchanged) {
	if len(e.Added)+len(e.Gone) == 0 {
		return
	}
	p.Heading("Cautions")
	if len(e.Added) > 0 {
		p.Item("-", "New: "+saidNames(e.Added)+".")
	}
	if len(e.Gone) > 0 {
		p.Item("-", "Gone: "+saidNames(e.Gone)+".")
	}
}

func saidNames(said []explain.Said) string {
	names := make([]string, len(said))
	for i, s := range said {
		names[i] = s.Name
	}
	return strings.Join(names, ", ")
}
