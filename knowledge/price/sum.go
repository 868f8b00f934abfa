package price

import (
	"cmp"
	"fmt"
	"math"
	"slices"
)

// Purse keeps draws, so that a line which several methods share is drawn once.
type Purse map[string][]float64

// Sum brings the lines of one bore, or of all bores of a job, together.
type Sum struct {
	rates *Rates
	purse Purse
	lines []*drawn
}

// drawn is a line with its draws. What several bores share is one of these.
type drawn struct {
	Line
	bores  []string
	stream string
	luck   []float64
}

// NewSum begins a sum under the rates. Sums that are to be compared share a purse.
func NewSum(rates *Rates, purse Purse) *Sum { return &Sum{rates: rates, purse: purse} }

// Add adds the lines of a bore. Parts of a line that several bores share are put
// together again. Waiting of the same item at several bores goes on side by side:
// the longest counts.
func (s *Sum) Add(bore string, lines []Line) {
	for _, l := range lines {
		stream := l.Item + "|bore " + bore
		if l.group != "" {
			stream = l.Item + "|" + l.group
		}
		i := slices.IndexFunc(s.lines, func(d *drawn) bool { return d.stream == stream })
		if i < 0 {
			s.lines = append(s.lines, &drawn{Line: l, bores: []string{bore}, stream: stream, luck: s.luck(stream, l.Each)})
			continue
		}
		s.lines[i].join(bore, l)
	}
}

// join adds another part of a shared line.
func (d *drawn) join(bore string, part Line) {
	d.bores = append(d.bores, bore)
	d.Cost = d.Cost.Plus(part.Cost)
	if d.Hours != nil && part.Hours != nil {
		hours := d.Hours.Plus(*part.Hours)
		d.Hours = &hours
	}
}

// luck returns the draws of a stream. Their distribution depends on the proportions
// of the guesses and not on their size.
func (s *Sum) luck(stream string, e Estimate) []float64 {
	alpha, beta, _ := e.shape()
	key := fmt.Sprintf("%s|%.12g|%.12g", stream, alpha, beta)
	if s.purse[key] == nil {
		s.purse[key] = draws(stream, e)
	}
	return s.purse[key]
}

// drawn figures of an estimate whose range the line's luck goes through.
func (d *drawn) of(e Estimate, i int) float64 { return e.Low + (e.High-e.Low)*d.luck[i] }

// Price is what the lines cost.
func (s *Sum) Price() Spread {
	return s.total(s.rates.Currency, func(d *drawn) Estimate { return d.Cost })
}

// Hours are those of people at work.
func (s *Sum) Hours() Spread { return s.total(hour, personHours) }

const hour = "h"

func personHours(d *drawn) Estimate {
	if d.Hours == nil {
		return Estimate{}
	}
	return d.Hours.Times(d.Crew)
}

// total adds one figure of every line up.
func (s *Sum) total(unit string, figure func(*drawn) Estimate) Spread {
	out := Spread{Unit: unit}
	values := make([]float64, Draws)
	variance := 0.0
	for _, d := range s.lines {
		e := figure(d)
		out.Estimate = out.Estimate.Plus(e)
		out.Mean += e.Mean()
		variance += e.Variance()
		for i := range values {
			values[i] += d.of(e, i)
		}
	}
	out.SD = math.Sqrt(variance)
	return out.settled(values)
}

// settled fills in what the draws say, and beside it the normal approximation.
func (s Spread) settled(values []float64) Spread {
	slices.Sort(values)
	s.P50, s.P80 = quantile(values, 0.5), quantile(values, 0.8)
	s.NormalP50, s.NormalP80 = s.Mean, s.Mean+z80*s.SD
	return s
}

// quantile of sorted values.
func quantile(sorted []float64, share float64) float64 {
	return sorted[int(math.Ceil(share*float64(len(sorted))))-1]
}

// Downtime is the calendar while the machine stands: the hours of work by the clock,
// the nights between them, and the waiting.
func (s *Sum) Downtime() Spread {
	c := s.clock()
	out := Spread{Unit: hour, Estimate: Estimate{
		Low:    c.hours(func(_ *drawn, e Estimate) float64 { return e.Low }),
		Likely: c.hours(func(_ *drawn, e Estimate) float64 { return e.Likely }),
		High:   c.hours(func(_ *drawn, e Estimate) float64 { return e.High }),
	}}
	return out.fromDraws(c.draws())
}

// fromDraws takes mean and standard deviation from the draws as well: nights come
// whole, so that no sum of means gives them.
func (s Spread) fromDraws(values []float64) Spread {
	for _, v := range values {
		s.Mean += v / float64(len(values))
	}
	for _, v := range values {
		s.SD += (v - s.Mean) * (v - s.Mean) / float64(len(values))
	}
	s.SD = math.Sqrt(s.SD)
	return s.settled(values)
}

// WithDowntime is the price together with what the standing machine costs at a price
// of one hour, and that cost alone.
func (s *Sum) WithDowntime(anHour float64) (cost, both Spread) {
	price, down := s.Price(), s.Downtime()
	hours := s.clock().draws()
	cost = Spread{Unit: s.rates.Currency, Estimate: down.Times(anHour)}
	both = Spread{Unit: s.rates.Currency, Estimate: price.Plus(cost.Estimate)}
	costs, sums := make([]float64, Draws), make([]float64, Draws)
	for i := range hours {
		costs[i] = hours[i] * anHour
		sums[i] = costs[i]
		for _, d := range s.lines {
			sums[i] += d.of(d.Cost, i)
		}
	}
	return cost.fromDraws(costs), both.fromDraws(sums)
}

// Drivers are the items with the largest shares of the spread of the price, the
// largest first; what makes less than a hundredth is left out.
func (s *Sum) Drivers() []SpreadShare {
	whole := 0.0
	for _, d := range s.lines {
		whole += d.Cost.Variance()
	}
	shares := []SpreadShare{}
	for _, d := range s.lines {
		if share := d.Cost.Variance() / whole; share >= 0.01 {
			shares = append(shares, SpreadShare{Item: d.Item, Means: d.Means, Bores: d.bores, Share: share})
		}
	}
	slices.SortStableFunc(shares, func(a, b SpreadShare) int { return cmp.Compare(b.Share, a.Share) })
	return shares
}
