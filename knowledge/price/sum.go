package price

import (
	"cmp"
	"fmt"
	"math"
	"slices"
)

// Purse keeps draws, so that a line which several methods share is drawn once.
type Purse map[string][]float64

// luck returns the draws of a stream. Their distribution depends on the proportions
// of the guesses and not on their size.
func (p Purse) luck(stream string, e Estimate) []float64 {
	alpha, beta, _ := e.shape()
	key := fmt.Sprintf("%s|%.12g|%.12g", stream, alpha, beta)
	if p[key] == nil {
		p[key] = draws(stream, e)
	}
	return p[key]
}

// Sum brings the lines of one bore, or of all bores of a job, together. It keeps no
// draws of single lines, however many there are.
type Sum struct {
	rates  *Rates
	price  tally
	hours  tally // of people
	clock  clock
	shares []*share
	found  map[string]*share // by stream
}

// share is what a line adds to the spread; parts of a line that several bores share
// are one.
type share struct {
	SpreadShare
	cost, hours Estimate
}

// NewSum begins a sum under the rates.
func NewSum(rates *Rates) *Sum {
	return &Sum{rates: rates, price: newTally(), hours: newTally(), clock: newClock(rates.ShiftHours), found: map[string]*share{}}
}

// Add adds the lines of a bore. Parts of a line that several bores share have the
// same luck. Sums that are to be compared draw from one purse.
func (s *Sum) Add(bore string, lines []Line, purse Purse) {
	for _, l := range lines {
		stream := l.Item + "|bore " + bore
		if l.group != "" {
			stream = l.Item + "|" + l.group
		}
		luck := purse.luck(stream, l.Each)
		people := Estimate{}
		if l.Hours != nil {
			people = l.Hours.Times(l.Crew)
			s.clock.add(l, stream, luck)
		}
		s.price.add(l.Cost, luck)
		s.hours.add(people, luck)
		if s.found[stream] == nil {
			s.found[stream] = &share{SpreadShare: SpreadShare{Item: l.Item, Means: l.Means}}
			s.shares = append(s.shares, s.found[stream])
		}
		s.found[stream].add(bore, l.Cost, people)
	}
}

func (s *share) add(bore string, cost, hours Estimate) {
	s.Bores = append(s.Bores, bore)
	s.cost, s.hours = s.cost.Plus(cost), s.hours.Plus(hours)
}

// Price is what the lines cost.
func (s *Sum) Price() Spread {
	return s.spread(s.rates.Currency, s.price, func(p *share) Estimate { return p.cost })
}

// Hours are those of people at work.
func (s *Sum) Hours() Spread {
	return s.spread(hour, s.hours, func(p *share) Estimate { return p.hours })
}

const hour = "h"

// spread takes mean and variance from the guesses, and the rest from the draws.
func (s *Sum) spread(unit string, t tally, part func(*share) Estimate) Spread {
	out := Spread{Unit: unit, Estimate: t.Estimate}
	variance := 0.0
	for _, p := range s.shares {
		out.Mean += part(p).Mean()
		variance += part(p).Variance()
	}
	out.SD = math.Sqrt(variance)
	return out.settled(t.draws)
}

// Downtime is the calendar while the machine stands: the hours of work by the clock,
// the nights between them, and the waiting.
func (s *Sum) Downtime() Spread {
	hours := s.clock.calendar()
	return Spread{Unit: hour, Estimate: hours.Estimate}.fromDraws(hours.draws)
}

// WithDowntime is what the standing machine costs at a price of one hour, and that
// together with the price of the work.
func (s *Sum) WithDowntime(anHour float64) (cost, both Spread) {
	hours := s.clock.calendar()
	costs, sums := make([]float64, Draws), make([]float64, Draws)
	for i, h := range hours.draws {
		costs[i] = h * anHour
		sums[i] = costs[i] + s.price.draws[i]
	}
	standing := hours.Times(anHour)
	cost = Spread{Unit: s.rates.Currency, Estimate: standing}.fromDraws(costs)
	both = Spread{Unit: s.rates.Currency, Estimate: standing.Plus(s.price.Estimate)}.fromDraws(sums)
	return cost, both
}

// Drivers are the items with the largest shares of the spread of the price, the
// largest first; what makes less than a hundredth is left out.
func (s *Sum) Drivers() []SpreadShare {
	whole := 0.0
	for _, p := range s.shares {
		whole += p.cost.Variance()
	}
	drivers := []SpreadShare{}
	for _, p := range s.shares {
		if p.Share = p.cost.Variance() / whole; p.Share >= 0.01 {
			drivers = append(drivers, p.SpreadShare)
		}
	}
	slices.SortStableFunc(drivers, func(a, b SpreadShare) int { return cmp.Compare(b.Share, a.Share) })
	return drivers
}
