package term

import (
	"fmt"
	"slices"
	"strconv"

	"boremend/knowledge/price"
)

// lines lists the items of one method.
func (w pricing) lines(b price.BorePrice, method string) {
	i := slices.IndexFunc(b.Methods, func(m price.MethodPrice) bool {
		return m.Method == method || method == "" && m.Advised
	})
	if i < 0 {
		if method != "" {
			w.Heading("Line by line")
			w.Para("There is no price for " + plain(method) + ": see above.")
		}
		return
	}
	m := b.Methods[i]
	w.Heading("Line by line: " + m.Title)
	w.Para("Hours, amounts and costs (" + w.Currency + ") as low / likely / high.")
	rows := make([][]string, len(m.Lines))
	for i, l := range m.Lines {
		rows[i] = []string{plain(l.Step), w.takes(l), costs(l), w.what(l)}
	}
	rows = append(rows,
		[]string{"SUM", three(m.Hours.Estimate, hours) + " h", three(m.Price.Estimate, whole), "If all went well at once, as usual, or badly at once"},
		[]string{"STANDS", three(m.Downtime.Estimate, hours) + " h", "", "Calendar of the machine, nights and waiting included"})
	w.Table([]string{"step", "takes", "costs", "what"}, rows)
	for _, note := range m.Notes {
		w.Item("!", note)
	}
	if len(w.Bores) > 1 {
		w.Para("What goes by the visit or by the axis is shared in equal parts by the bores that need it, each done as advised.")
	}
	w.sure(m)
}

// takes is how long or how much.
func (w pricing) takes(l price.Line) string {
	if l.Sort == price.Material {
		return w.three(*l.Amount, l.AmountUnit)
	}
	return w.three(*l.Hours, "h")
}

func costs(l price.Line) string {
	if l.Sort == price.Waiting {
		return "waiting"
	}
	return three(l.Cost, whole)
}

// what says what a line is, what it goes by and who is paid for it.
func (w pricing) what(l price.Line) string {
	text := capital(l.Means)
	switch {
	case l.Wide:
		text += "; WIDE: " + plain(l.From)
	case l.Unit != "":
		text += "; " + w.amountOf(l.Count, l.Unit) + " by the " + l.From
	case l.SharedBy > 1:
		text += "; shared by " + strconv.Itoa(l.SharedBy) + " bores"
	case l.Count != 1:
		text += "; " + number(l.Count) + " by the " + l.From
	}
	if l.Crew > 1 {
		text += "; " + number(l.Crew) + " people"
	}
	return text
}

// sure tells how far the figures can be trusted.
func (w pricing) sure(m price.MethodPrice) {
	w.Heading("How sure")
	for _, d := range m.Drivers[:min(6, len(m.Drivers))] {
		w.Item("-", partOf(d.Share)+" of the spread: "+d.Means)
	}
	w.Para(fmt.Sprintf("The 50 %% and 80 %% figures come from %d draws of all items. The normal approximation gives %s and %s.",
		w.Draws, amount(m.Price.NormalP50), w.figure(m.Price.NormalP80, m.Price.Unit)))
	w.Para(fmt.Sprintf("%d of %d items are opinion without a published source. The others:", m.Opinions, len(m.Lines)))
	for _, l := range m.Lines {
		if l.Trust != "opinion" {
			w.Item("-", capital(plain(l.Item))+": "+l.Source)
		}
	}
}
