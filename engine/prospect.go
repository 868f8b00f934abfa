package engine

import "slices"

// prospect is how a method may stand in an outlook.
type prospect struct {
	mustOut, mayOut   bool
	mustOpen, mayOpen bool
	barred            bool    // out or open, so that it cannot stand
	points            float64 // of the leans that hold for certain
}

func (p prospect) mustStand() bool { return !p.mayOut && !p.mayOpen }

// weigh finds how each method may stand, and which leans may hold or not.
func (o *Outlook) weigh() {
	for m, method := range o.book.Methods {
		o.prospects[m] = prospect{points: method.Start}
	}
	o.swings = o.swings[:0]
	for i, r := range o.book.Rules {
		if !r.moves() {
			continue
		}
		may := o.conditions[i]
		holds, opens := may&mayHold != 0, false
		switch {
		case may&mayBeUnknown == 0:
		case r.IfUnknown == Hold:
			holds = true
		case r.IfUnknown == Open:
			opens = true
		}
		must := holds && (may == mayHold || r.IfUnknown == Hold && may&mayFail == 0)
		if r.Effect == Lean {
			o.lean(i, r, holds, must)
			continue
		}
		for _, m := range r.For {
			p := &o.prospects[m]
			p.mustOut, p.mayOut = p.mustOut || must, p.mayOut || holds
			p.mustOpen, p.mayOpen = p.mustOpen || opens && may == mayBeUnknown, p.mayOpen || opens
			p.barred = p.barred || must || opens && may&mayFail == 0
		}
	}
}

func (o *Outlook) lean(i int, r *Rule, holds, must bool) {
	switch {
	case must:
		for _, m := range r.For {
			o.prospects[m].points += r.Points
		}
	case holds:
		o.swings = append(o.swings, i)
	}
}

// leastLead is the least by which method a may be ahead of method b.
func (o *Outlook) leastLead(a, b int) float64 {
	lead := o.prospects[a].points - o.prospects[b].points
	for _, i := range o.swings {
		r := o.book.Rules[i]
		forA, forB := slices.Contains(r.For, a), slices.Contains(r.For, b)
		switch {
		case forA && !forB:
			lead += min(0, r.Points)
		case forB && !forA:
			lead -= max(0, r.Points)
		}
	}
	return lead
}

// beats reports whether a is ahead of b for certain, or level and named first.
func (o *Outlook) beats(a, b int) bool {
	lead := o.leastLead(a, b)
	return lead > 0 || lead == 0 && a < b
}

// winners lists the methods that may be advised, after weigh, into a buffer.
func (o *Outlook) winners(buffer []int) []int {
	beaten := func(m int, certain func(prospect) bool) bool {
		for a, p := range o.prospects {
			if a != m && certain(p) && o.beats(a, m) {
				return true
			}
		}
		return false
	}
	stands, settled := false, false // for certain some method stands; or stands or is open
	for _, p := range o.prospects {
		stands = stands || p.mustStand()
		settled = settled || !p.mayOut
	}
	for m, p := range o.prospects {
		switch {
		case !p.barred && !beaten(m, prospect.mustStand),
			!stands && p.mayOpen && !p.mustOut && !beaten(m, func(q prospect) bool { return q.mustOpen && !q.mayOut }),
			!settled && m == o.book.Fallback:
			buffer = append(buffer, m)
		}
	}
	return buffer
}

// mayBeNarrow reports whether a method may be ahead by no more than the margin
// that counts as narrow.
func (o *Outlook) mayBeNarrow(method int) bool {
	for m, p := range o.prospects {
		if m != method && !p.barred && o.leastLead(method, m) <= o.book.Narrow {
			return true
		}
	}
	return false
}
