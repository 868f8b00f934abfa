package price

import "math"

// clock adds up the hours during which the machine stands.
type clock struct {
	shift float64
	work  tally
	// waits by item. Waiting of one item at several bores goes on side by side.
	items []string
	waits map[string]*wait
}

// wait is the waiting of one item: the longest of what bores wait each for itself,
// and by stream what they share.
type wait struct {
	longest tally
	streams []string
	shared  map[string]*tally
}

func newClock(shift float64) clock {
	return clock{shift: shift, work: newTally(), waits: map[string]*wait{}}
}

// add adds a line of hours, if the machine stands meanwhile.
func (c *clock) add(l Line, stream string, luck []float64) {
	switch {
	case !l.Stands:
		return
	case l.Sort != Waiting:
		c.work.add(*l.Hours, luck)
		return
	}
	if c.waits[l.Item] == nil {
		c.items = append(c.items, l.Item)
		c.waits[l.Item] = &wait{longest: newTally(), shared: map[string]*tally{}}
	}
	c.waits[l.Item].add(l, stream, luck)
}

func (w *wait) add(l Line, stream string, luck []float64) {
	if l.group == "" {
		own := newTally()
		own.add(*l.Hours, luck)
		w.longest.atLeast(own)
		return
	}
	if w.shared[stream] == nil {
		t := newTally()
		w.streams, w.shared[stream] = append(w.streams, stream), &t
	}
	w.shared[stream].add(*l.Hours, luck)
}

// calendar is the work, the nights between, and of each wait the longest.
func (c *clock) calendar() tally {
	out := newTally()
	out.plus(c.work)
	for _, item := range c.items {
		longest := newTally()
		longest.atLeast(c.waits[item].longest)
		for _, stream := range c.waits[item].streams {
			longest.atLeast(*c.waits[item].shared[stream])
		}
		out.plus(longest)
	}
	out.Low += c.nights(c.work.Low)
	out.Likely += c.nights(c.work.Likely)
	out.High += c.nights(c.work.High)
	for i, work := range c.work.draws {
		out.draws[i] += c.nights(work)
	}
	return out
}

// nights are the hours between the days of so much work.
func (c *clock) nights(work float64) float64 {
	return math.Max(math.Ceil(work/c.shift)-1, 0) * (24 - c.shift)
}
