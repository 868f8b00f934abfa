package term

import (
	"fmt"

	"boremend/engine"
	"boremend/engine/quantity"
)

// overlay adds what an overlay changes of the rulebook that it lies over, and
// what has changed under it.
func overlay(p *Page, book *engine.Rulebook, units quantity.System) {
	if len(book.Over) == 0 {
		return
	}
	text := "It lies over"
	for i, over := range book.Over {
		if i > 0 {
			text += ", and that over"
		}
		text += fmt.Sprintf(" %q, edition %s", over.Title, over.Edition)
	}
	p.Para(text + ".")
	var rows [][]string
	for _, l := range book.Limits {
		if r, ok := l.Replaced(units); ok {
			rows = append(rows, []string{r.Limit, r.Before, r.Shown})
		}
	}
	if len(rows) > 0 {
		p.Heading("Limits set otherwise")
		p.Table([]string{"limit", "there", "here"}, rows)
	}
	if len(book.Off) > 0 {
		p.Heading("Rules switched off")
	}
	for _, off := range book.Off {
		p.Item("-", off.Rule+": "+off.Because)
	}
	if len(book.Notes) > 0 {
		p.Heading("Wants a look")
	}
	for _, n := range book.Notes {
		p.Item("-", n.Error())
	}
}
