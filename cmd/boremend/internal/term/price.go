package term

import (
	"fmt"
	"slices"
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge/price"
)

// Price lays out an offer: for each bore the advised method in a few lines, all
// methods side by side, and the lines of one of them, the advised unless another is
// asked for.
func Price(h Header, o price.Offer, method string, units quantity.System) *Page {
	p := &Page{}
	w := pricing{p, o, units}
	if len(o.Bores) > 1 || o.Total == nil {
		w.job(h)
	}
	for _, b := range o.Bores {
		w.bore(h, b)
		w.sideBySide(b)
		w.unpriced(b)
		w.newPart(h, b)
		w.lines(b, method)
	}
	w.about(h)
	return p
}

// pricing writes an offer on a page.
type pricing struct {
	*Page
	price.Offer
	units quantity.System
}

// job sums the visit up.
func (w pricing) job(h Header) {
	w.Title(strings.ToUpper(h.Job) + ", every bore as advised")
	if w.Total == nil {
		for _, why := range w.WhyNoTotal {
			w.Labelled("Price:", "none for the whole job. "+capital(why)+".")
		}
		return
	}
	t := w.Total
	w.Labelled("Price:", w.halfAndMost(t.Price)+".")
	w.Labelled("Down:", w.halfAndMost(t.Downtime)+allowed(t.DowntimeAllowed, t.OverAllowed)+".")
	w.Labelled("Most:", mostOf(t.Drivers, len(w.Bores)))
}

// bore is the answer for one bore.
func (w pricing) bore(h Header, b price.BorePrice) {
	w.Title(strings.ToUpper(b.Bore) + " (" + h.Job + ")")
	if len(b.Methods) == 0 || !b.Methods[0].Advised {
		w.noPrice(b)
	} else {
		m := b.Methods[0]
		w.Labelled("Do:", m.Title+withConditions(m.Verdict)+".")
		w.Labelled("Price:", w.halfAndMost(m.Price)+".")
		w.Labelled("Down:", w.halfAndMost(m.Downtime)+allowed(m.DowntimeAllowed, m.OverAllowed)+".")
		w.Labelled("Most:", mostOf(m.Drivers, 1))
		if len(m.Widened) > 0 {
			w.Labelled("Wide:", "Ranges are wide while "+names(m.Widened)+be(m.Widened)+" not known.")
		}
		for _, note := range m.Notes {
			w.Labelled("Mind:", note)
		}
	}
	if w.Rates.Example {
		w.Labelled("Mind:", "Invented example rates: replace them with your own before anybody sees a price.")
	}
}

func withConditions(verdict string) string {
	if words := conditionWords[verdict]; words != "" {
		return ": " + words
	}
	return ""
}

// noPrice says why the advised method has none.
func (w pricing) noPrice(b price.BorePrice) {
	for _, u := range b.Unpriced {
		if u.Method == b.Advised {
			w.Labelled("Do:", u.Title+".")
			w.Labelled("Price:", "none. "+whyNone(u))
		}
	}
}

// halfAndMost says what half of all cases and four of five stay below.
func (w pricing) halfAndMost(s price.Spread) string {
	return "in half of all cases at most " + w.figure(s.P50, s.Unit) + ", in four of five at most " + w.figure(s.P80, s.Unit)
}

func allowed(most *float64, over bool) string {
	switch {
	case most == nil:
		return ""
	case over:
		return "; LONGER than the " + hours(*most) + " h that the machine may stand"
	}
	return "; it may stand " + hours(*most) + " h"
}

// mostOf names what makes most of the spread; of a job with several bores, at which.
func mostOf(drivers []price.SpreadShare, bores int) string {
	if len(drivers) == 0 {
		return "of the spread: none, every figure is exact."
	}
	said := make([]string, 0, 3)
	for _, d := range drivers[:min(3, len(drivers))] {
		where := ""
		if bores > len(d.Bores) {
			where = ", " + strings.Join(d.Bores, " and ")
		}
		said = append(said, d.Means+where+" ("+partOf(d.Share)+")")
	}
	return "of the spread is " + strings.Join(said, "; ") + "."
}

// sideBySide compares the methods that stand, and a new part.
func (w pricing) sideBySide(b price.BorePrice) {
	w.Heading("Side by side (" + w.Currency + " without tax; hours of people; hours that the machine stands)")
	head := []string{"method", "50 %", "80 %", "hours", "stands", "what drives the spread"}
	var rows [][]string
	for _, m := range b.Methods {
		rows = append(rows, []string{m.Method, amount(m.Price.P50), amount(m.Price.P80), hours(m.Hours.P50), hours(m.Downtime.P50), driverNames(m.Drivers)})
	}
	if r := b.Replacement; r.Price != nil {
		rows = append(rows, []string{"new part", amount(r.Price.P50), amount(r.Price.P80), hours(r.Hours.P50), hours(r.Downtime.P50), driverNames(r.Drivers)})
	}
	if len(rows) == 0 {
		w.Para("Nothing can be priced yet.")
		return
	}
	w.Table(head, rows)
	w.otherNotes(b)
	if both := withDowntime(b); both != nil {
		w.Heading("With what the standing machine costs")
		w.Table([]string{"method", "50 %", "80 %", "of which the machine standing"}, both)
	}
}

// otherNotes says what a reader should know of the methods that are not advised; what
// holds for the advised one as well stands with it.
func (w pricing) otherNotes(b price.BorePrice) {
	var said []string
	if len(b.Methods) > 0 && b.Methods[0].Advised {
		said = b.Methods[0].Notes
	}
	for _, m := range b.Methods {
		for _, note := range m.Notes {
			if !slices.Contains(said, note) {
				w.Item("-", plain(m.Method)+": "+note)
			}
		}
	}
}

func withDowntime(b price.BorePrice) [][]string {
	var rows [][]string
	for _, m := range b.Methods {
		if m.PriceAndDowntime != nil {
			rows = append(rows, []string{m.Method, amount(m.PriceAndDowntime.P50), amount(m.PriceAndDowntime.P80), amount(m.DowntimeCost.P50)})
		}
	}
	if r := b.Replacement; r.PriceAndDowntime != nil {
		rows = append(rows, []string{"new part", amount(r.PriceAndDowntime.P50), amount(r.PriceAndDowntime.P80), amount(r.DowntimeCost.P50)})
	}
	return rows
}

func driverNames(drivers []price.SpreadShare) string {
	var said []string
	for _, d := range drivers[:min(3, len(drivers))] {
		said = append(said, plain(d.Item)+" "+partOf(d.Share))
	}
	return strings.Join(said, ", ")
}

// unpriced lists the methods without a price.
func (w pricing) unpriced(b price.BorePrice) {
	if len(b.Unpriced) == 0 {
		return
	}
	w.Heading("No price for")
	for _, u := range b.Unpriced {
		w.Item("-", plain(u.Method)+": "+whyNone(u))
	}
}

// whyNone says why a method has no price.
func whyNone(u price.Unpriced) string {
	switch {
	case u.Verdict == "open":
		return "It is not settled whether it may be used" + list(" while ", u.Needs, be(u.Needs)+" not known") + "."
	case u.Verdict == "no_go":
		return "Ruled out. " + u.Why
	}
	return capital(u.Why) + list("; find out ", u.Needs, "") + "."
}

// newPart sets a new part beside the repair.
func (w pricing) newPart(h Header, b price.BorePrice) {
	r := b.Replacement
	w.Heading("A new part instead")
	if r.Price == nil {
		w.Para(capital(r.Ask) + ".")
		return
	}
	from := "as given"
	if r.PartPriceFrom == "ratio" {
		from = "from the ratio " + number(*r.RatioStated) + " that the job states and the price above, so no better than both; give part_price in the job"
	}
	w.Para("The part: " + w.figure(*r.PartPrice, w.Currency) + ", " + from + ".")
	w.Para("With taking off and putting on: " + w.halfAndMost(*r.Price) + ". The machine stands, waiting for the part included: " + w.halfAndMost(*r.Downtime) + ".")
	for _, note := range r.Notes {
		w.Item("!", note)
	}
	if r.RatioNow != nil {
		text := "The part costs " + number(*r.RatioNow) + " times the advised repair"
		if r.RatioStated != nil {
			text += "; the job was judged with " + number(*r.RatioStated)
		}
		w.Para(text + ". See what that changes: boremend whatif " + h.Path + " replacement_cost_ratio=" + number(*r.RatioNow))
	}
}

// about names the rates and what no figure holds.
func (w pricing) about(h Header) {
	w.Heading("Mind")
	for _, text := range w.Weak {
		w.Item("-", text)
	}
	footer(w.Page, h)
	text := fmt.Sprintf("Rates %q, edition %s of %s, SHA-256 %.12s, %s.", w.Rates.Title, w.Rates.Edition, w.Rates.Date, w.Rates.SHA256, w.Rates.File)
	if w.Rates.Example {
		text += " Example figures: replace with your own."
	}
	w.Para(text)
}

// Counts lists what items of rates can go by.
func Counts(names []string, means map[string]string) *Page {
	p := &Page{}
	p.Title("What items of rates can go by")
	rows := make([][]string, len(names))
	for i, name := range names {
		rows[i] = []string{name, means[name]}
	}
	p.Table([]string{"per", "what is counted"}, rows)
	return p
}
