package paper

import (
	"strconv"

	"boremend/cmd/boremend/internal/paper/draw"
	"boremend/cmd/boremend/internal/paper/photo"
	"boremend/engine/explain"
)

// plot adds a plot, or says why it could not be drawn.
func (w *writer) plot(d draw.Drawing, err error) {
	if err != nil {
		w.note("note", "NOT DRAWN", sentence(given(err.Error())))
		return
	}
	w.add(Figure{d})
}

// prices plots what each way may cost, where there is more than one to compare.
func (j Job) prices(w *writer, b Bore) {
	var spreads []draw.Price
	p, _ := j.priceOf(b)
	for _, m := range p.Methods {
		if m.Method == j.fallback() && !m.Advised {
			continue
		}
		title := reworded(m.Title)
		if m.Advised {
			title += " (advised)"
		}
		spreads = append(spreads, draw.Price{Title: title, Low: m.Price.Low, Half: m.Price.P50, FourOfFive: m.Price.P80, High: m.Price.High})
	}
	if len(spreads) < 2 {
		return
	}
	w.plot(draw.Prices(spreads, func(amount float64) string { return money(amount) + " " + given(j.Offer.Currency) }))
}

// shares plots how often each way comes out on top when the measurements are as
// far off as they may be; where it is always the same one, there is nothing to
// see.
func shares(w *writer, s *explain.Sure) {
	if s == nil || len(s.Shares) < 2 {
		return
	}
	var all []draw.Share
	for _, share := range s.Shares {
		all = append(all, draw.Share{Title: reworded(share.Title), Share: share.Share, Error: share.Error})
	}
	how := "Every value within its give-or-take counts alike, each apart from the others. "
	if s.Draws > 0 {
		how += "Drawn " + strconv.Itoa(s.Draws) + " times, the same draws in every run."
	} else {
		how += "Counted through, nothing drawn."
	}
	w.plot(draw.Shares(all, how))
}

// NewPhoto makes a photograph a block of a paper; shows is what it shows, in the
// words of the job.
func NewPhoto(shows string, p photo.Photo) Photo {
	return Photo{Caption: given(shows), JPEG: p.JPEG, WidthPx: p.Width, HeightPx: p.Height}
}
