package term

import (
	"fmt"
	"math"
	"slices"
	"strconv"
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
	w.Labelled("Down:", w.halfAndMost(t.Downtime)+".")
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
		w.Labelled("Down:", w.halfAndMost(m.Downtime)+allowed(m)+".")
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

func allowed(m price.MethodPrice) string {
	switch {
	case m.DowntimeAllowed == nil:
		return ""
	case m.OverAllowed:
		return "; LONGER than the " + hours(*m.DowntimeAllowed) + " h that the machine may stand"
	}
	return "; it may stand " + hours(*m.DowntimeAllowed) + " h"
}

// mostOf names what makes most of the spread; of a job with
// several bores, at which.
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
		price.Draws, amount(m.Price.NormalP50), w.figure(m.Price.NormalP80, m.Price.Unit)))
	sources, opinions := map[string]bool{}, 0
	var named []string
	for _, l := range m.Lines {
		if l.Trust == "opinion" {
			opinions++
			continue
		}
		if !sources[l.Source] {
			sources[l.Source] = true
			named = append(named, plain(l.Item)+": "+l.Source)
		}
	}
	w.Para(fmt.Sprintf("%d of %d items are opinion without a published source.", opinions, len(m.Lines)))
	for _, text := range named {
		w.Item("-", capital(text))
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

// figure is an amount or hours with their unit.
func (w pricing) figure(v float64, unit string) string {
	if unit == w.Currency {
		return amount(v) + " " + unit
	}
	return hours(v) + " " + unit
}

// amount of money: whole from a hundred on.
func amount(v float64) string {
	if math.Abs(v) >= 100 || v == math.Trunc(v) {
		return strconv.FormatFloat(math.Round(v), 'f', 0, 64)
	}
	return strconv.FormatFloat(v, 'f', 2, 64)
}

// whole amounts of money, for columns.
func whole(v float64) string { return strconv.FormatFloat(math.Round(v), 'f', 0, 64) }

// hours: tenths below a hundred.
func hours(v float64) string {
	if math.Abs(v) >= 100 {
		return strconv.FormatFloat(math.Round(v), 'f', 0, 64)
	}
	return trimmed(v, 1)
}

// short numbers: tenths, and hundredths below one.
func short(v float64) string {
	if math.Abs(v) < 1 {
		return trimmed(v, 2)
	}
	return hours(v)
}

// number with two decimals at most, and small ones with two digits.
func number(v float64) string {
	if v != 0 && math.Abs(v) < 0.1 {
		return strconv.FormatFloat(v, 'g', 2, 64)
	}
	return trimmed(v, 2)
}

func trimmed(v float64, decimals int) string {
	text := strconv.FormatFloat(v, 'f', decimals, 64)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
}

func partOf(share float64) string {
	return strconv.FormatFloat(math.Round(100*share), 'f', 0, 64) + "%"
}

// three writes low, likely and high.
func three(e price.Estimate, show func(float64) string) string {
	if e.Low == e.High {
		return show(e.Low)
	}
	return show(e.Low) + " / " + show(e.Likely) + " / " + show(e.High)
}

// three writes an estimate of hours or of a material in the units of the reader.
func (w pricing) three(e price.Estimate, unit string) string {
	factor, shown := w.inUnits(unit)
	return three(e.Times(factor), short) + " " + shown
}

func (w pricing) amountOf(v float64, unit string) string {
	factor, shown := w.inUnits(unit)
	return short(v*factor) + " " + shown
}

// inUnits turns kilograms and cubic metres into what readers of inches buy by.
func (w pricing) inUnits(unit string) (factor float64, shown string) {
	for _, pair := range [][2]string{{"kg", "lb"}, {"m3", "ft3"}} {
		metric, ok := quantity.FromUnit(1, pair[0])
		inch, also := quantity.FromUnit(1, pair[1])
		if w.units == quantity.Inch && unit == pair[0] && ok && also {
			return metric.Value / inch.Value, pair[1]
		}
	}
	return 1, unit
}
