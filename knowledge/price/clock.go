package price

import (
	"math"
	"slices"
)

// clock holds the lines of a sum during which the machine stands.
type clock struct {
	shift float64
	work  []*drawn
	// waits by item: waiting of one item at several bores goes on side by side.
	waits [][]*drawn
}

func (s *Sum) clock() clock {
	c := clock{shift: s.rates.ShiftHours}
	var items []string
	for _, d := range s.lines {
		switch {
		case d.Hours == nil || !d.Stands:
		case d.Sort != Waiting:
			c.work = append(c.work, d)
		default:
			i := slices.Index(items, d.Item)
			if i < 0 {
				items, c.waits, i = append(items, d.Item), append(c.waits, nil), len(items)
			}
			c.waits[i] = append(c.waits[i], d)
		}
	}
	return c
}

// draws are the hours that the machine stands in every draw.
func (c clock) draws() []float64 {
	values := make([]float64, Draws)
	for i := range values {
		values[i] = c.hours(func(d *drawn, e Estimate) float64 { return d.of(e, i) })
	}
	return values
}

// hours adds up the figure that pick takes of every line: the work, the nights
// between, and of each wait the longest.
func (c clock) hours(pick func(*drawn, Estimate) float64) float64 {
	work, wait := 0.0, 0.0
	for _, d := range c.work {
		work += pick(d, *d.Hours)
	}
	for _, side := range c.waits {
		longest := 0.0
		for _, d := range side {
			longest = math.Max(longest, pick(d, *d.Hours))
		}
		wait += longest
	}
	return work + wait + nights(work, c.shift)*(24-c.shift)
}

// nights that fall between so many hours of work.
func nights(work, shift float64) float64 { return math.Max(math.Ceil(work/shift)-1, 0) }
