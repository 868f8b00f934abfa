package paper

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"boremend/knowledge/price"
)

// driversShown is how many of what makes a price uncertain are named.
const driversShown = 5

// costs says what the repair costs, how long the machine stands, and what could
// change both.
func (j Job) costs(w *writer) {
	w.chapter("What it costs")
	o := j.Offer
	if o == nil {
		w.para("No price has been worked out.")
		return
	}
	if o.Rates.Example {
		w.note("warning", "EXAMPLE RATES", "The hourly rates and prices behind these figures are invented examples. They say nothing of what this shop charges.")
	}
	if o.Total == nil {
		w.para("The whole job has no price yet:")
		w.list(allReworded(o.WhyNoTotal))
	} else {
		j.total(w, *o.Total)
	}
	j.newPart(w)
	w.subheading("What is not in these figures")
	w.list(allReworded(append(j.priceNotes(), o.Weak...)))
}

// priceNotes are what the prices of the advised methods leave out.
func (j Job) priceNotes() []string {
	var notes []string
	for _, b := range j.Bores {
		m, _ := j.advisedPrice(b)
		for _, n := range m.Notes {
			if !slices.Contains(notes, n) {
				notes = append(notes, n)
			}
		}
	}
	return notes
}

// total shows the figures of the whole job.
func (j Job) total(w *writer, t price.Total) {
	currency := " " + given(j.Offer.Currency)
	w.table([]string{"The whole job, as advised", "Half of all cases stay below", "Four of five stay below"}, [][]string{
		{"Price, without tax", money(t.Price.P50) + currency, money(t.Price.P80) + currency},
		{"Work", hours(t.Hours.P50) + " h", hours(t.Hours.P80) + " h"},
		{"The machine stands", hours(t.Downtime.P50) + " h", hours(t.Downtime.P80) + " h"},
	})
	if j.overAllowed() {
		w.note("warning", "MIND", "That is longer than the machine may stand, by what we were told. Plan a longer stop, or two.")
	}
	w.subheading("What could change the price")
	w.para("Most of the doubt lies here, the largest share first:")
	var items []string
	for i, d := range t.Drivers {
		if i == driversShown {
			break
		}
		text := d.Means + " (" + percent(d.Share) + ")"
		if len(d.Bores) > 0 && len(d.Bores) < len(j.Bores) {
			text = given(strings.Join(d.Bores, ", ")) + ": " + text
		}
		items = append(items, capital(reworded(text)))
	}
	w.list(items)
	if widened := j.widened(); len(widened) > 0 {
		w.para("The figures are wider because this is not known: " + listed(some(widened, 6)) + ".")
	}
	w.para("If more wear, a crack or another metal shows up once the joint is open, the advice and the price change with it. We stop and ask first.")
}

// widened describes the facts whose absence makes the price of the job wider.
func (j Job) widened() []string {
	var all []string
	for _, b := range j.Bores {
		m, ok := j.advisedPrice(b)
		if !ok {
			continue
		}
		for _, fact := range m.Widened {
			if text := j.known(b.Advice).means(fact); !slices.Contains(all, text) {
				all = append(all, text)
			}
		}
	}
	return all
}

func (j Job) overAllowed() bool {
	return slices.ContainsFunc(j.Bores, func(b Bore) bool {
		m, ok := j.advisedPrice(b)
		return ok && m.OverAllowed
	})
}

// newPart sets the repair beside a new part, bore by bore where they differ.
func (j Job) newPart(w *writer) {
	var rows [][]string
	currency := " " + given(j.Offer.Currency)
	for _, b := range j.Bores {
		p, ok := j.priceOf(b)
		if !ok || p.Replacement.Price == nil {
			continue
		}
		row := []string{capital(given(b.Name)), money(p.Replacement.Price.P50) + currency, money(p.Replacement.Price.P80) + currency, ""}
		if d := p.Replacement.Downtime; d != nil {
			row[3] = hours(d.P50) + " h"
		}
		rows = append(rows, row)
	}
	if len(rows) == 0 {
		return
	}
	w.subheading("A new part instead, fitted")
	w.table([]string{"For", "Half of all cases stay below", "Four of five stay below", "The machine stands, half of all cases"}, rows)
}

// priceOf finds the prices of a bore.
func (j Job) priceOf(b Bore) (price.BorePrice, bool) {
	if j.Offer == nil {
		return price.BorePrice{}, false
	}
	for _, p := range j.Offer.Bores {
		if p.Bore == b.Name {
			return p, true
		}
	}
	return price.BorePrice{}, false
}

// methodPrice finds the price of a bore by one method.
func (j Job) methodPrice(b Bore, method string) (price.MethodPrice, bool) {
	p, _ := j.priceOf(b)
	for _, m := range p.Methods {
		if m.Method == method {
			return m, true
		}
	}
	return price.MethodPrice{}, false
}

func (j Job) advisedPrice(b Bore) (price.MethodPrice, bool) {
	return j.methodPrice(b, b.Advice.Chosen.Method)
}

// span is a price for a table: half of all cases, and four of five.
func (j Job) span(s price.Spread) string { return money(s.P50) + " to " + money(s.P80) }

// allReworded puts several texts into the words of a paper.
func allReworded(texts []string) []string {
	out := make([]string, len(texts))
	for i, t := range texts {
		out[i] = reworded(sentence(t))
	}
	return out
}

// money is a sum in whole units of the currency.
func money(v float64) string { return strconv.FormatFloat(math.Round(v), 'f', 0, 64) }

// hours are whole above a hundred, with tenths below.
func hours(v float64) string {
	if v >= 100 {
		return money(v)
	}
	return strings.TrimSuffix(strconv.FormatFloat(v, 'f', 1, 64), ".0")
}

func percent(share float64) string { return money(100*share) + " %" }
