package rules

import (
	"math"
	"strings"
	"time"
	"unicode"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
	"boremend/engine/quantity"
	"boremend/knowledge/price"
)

// ratesReader decodes one file of rates.
type ratesReader struct {
	*document.File
	out     *price.Rates
	words   []string // that an item may be for; nil: anything
	claimed map[string]int
}

func (r *ratesReader) read() {
	fields, complete := r.Entry(r.Root, ratesKeys)
	if !complete {
		return
	}
	r.out.Title, _ = r.Text(fields["title"])
	r.out.Edition, _ = r.Text(fields["edition"])
	r.date(fields["date"])
	if fields["example"] != nil {
		r.out.Example, _ = r.YesNo(fields["example"])
	}
	r.currency(fields["currency"])
	r.settings(fields)
	for _, n := range r.List(fields["rates"]) {
		r.rate(n)
	}
	for _, n := range r.List(fields["items"]) {
		r.out.Items = append(r.out.Items, r.item(n))
	}
	for _, n := range r.List(fields["materials"]) {
		r.out.Materials = append(r.out.Materials, r.material(n))
	}
	for _, n := range r.List(fields["notes"]) {
		r.note(n)
	}
}

func (r *ratesReader) date(n *yaml.Node) {
	text, ok := r.Text(n)
	if !ok {
		return
	}
	if _, err := time.Parse(time.DateOnly, text); err != nil {
		r.Report(n, "write it as 2026-11-25", "%q is not a date", text)
	}
	r.out.Date = text
}

// currency is a word that stands behind amounts.
func (r *ratesReader) currency(n *yaml.Node) {
	text, ok := r.Text(n)
	if !ok {
		return
	}
	notLetter := func(c rune) bool { return !unicode.IsLetter(c) && !unicode.Is(unicode.Sc, c) }
	if strings.ContainsFunc(text, notLetter) || len([]rune(text)) > 12 {
		r.Report(n, "write its name or sign, such as USD", "%q cannot name a currency", text)
	}
	r.out.Currency = text
}

// settings reads what holds for all items.
func (r *ratesReader) settings(fields map[string]*yaml.Node) {
	if hours, ok := r.hours(fields["shift"]); ok {
		if hours < 1 || hours > 24 {
			r.Report(fields["shift"], "write the working hours of a day, from 1 h to 24 h", "a working day cannot have %g hours", hours)
		}
		r.out.ShiftHours = hours
	}
	if fields["materials_markup"] != nil {
		r.out.Markup, _ = r.amount(fields["materials_markup"], quantity.Ratio, 10)
	}
	if fields["downtime_cost"] != nil {
		if v, ok := r.amount(fields["downtime_cost"], quantity.Money, mostMoney); ok {
			r.out.DowntimeCost = &v
		}
	}
	r.out.StockAllowanceMM, _ = r.amount(fields["stock_allowance"], quantity.Length, 500)
	if v, ok := r.amount(fields["lathe_per_hour"], quantity.Volume, 1e9); ok {
		if v < 1 {
			r.Report(fields["lathe_per_hour"], "write the metal turned off in an hour, such as 300 cm3", "a lathe that turns off nothing never finishes")
		}
		r.out.LatheMM3 = v
	}
}

// The most that one figure may be: far beyond any repair, and far below what would
// make a sum overflow.
const (
	mostMoney  = 1e9
	mostHours  = 1e5
	mostAmount = 1e6
)

// amount reads a quantity from zero to most.
func (r *ratesReader) amount(n *yaml.Node, kind quantity.Kind, most float64) (float64, bool) {
	reading, ok := r.Quantity(n, kind, "")
	if !ok {
		return 0, false
	}
	switch {
	case reading.HasGiveOrTake:
		r.Report(n, "write the value alone", "a give-or-take has no place here")
	case !(reading.Value >= 0):
		r.Report(n, "write zero or more", "%q is negative", n.Value)
	case reading.Value > most || math.IsInf(reading.Value, 0):
		r.Report(n, "look at the unit", "%q is more than anything at a joint", n.Value)
	default:
		return reading.Value, true
	}
	return 0, false
}

func (r *ratesReader) hours(n *yaml.Node) (float64, bool) {
	seconds, ok := r.amount(n, quantity.Time, mostHours*3600)
	return seconds / 3600, ok
}
