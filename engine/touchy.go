package engine

// spreadKnown is how many values inside a give-or-take are tried beside its
// ends and thresholds.
const spreadKnown = 9

// Touchy lists the facts that can each overturn the advised method alone,
// within their own give-or-take. The state is left as it was.
func (s *State) Touchy(found Findings) []int {
	was := s.Decide().Method
	var touchy []int
	for _, f := range found {
		for _, v := range s.book.within(f) {
			s.Set(f.Fact, v)
			if s.Decide().Method != was {
				touchy = append(touchy, f.Fact)
				break
			}
		}
		s.Set(f.Fact, f.Value)
	}
	return touchy
}

// within lists what a finding could really be, given its give-or-take.
func (b *Rulebook) within(f Finding) []float64 {
	fact := b.Facts[f.Fact]
	switch {
	case fact.Sort == Choice && fact.Slack.OneClass:
		var near []float64
		if f.Value > 0 {
			near = append(near, f.Value-1)
		}
		if int(f.Value) < len(fact.Choices)-1 {
			near = append(near, f.Value+1)
		}
		return near
	case fact.Sort != Number || f.GiveOrTake == 0:
		return nil
	}
	low, high := f.Value-f.GiveOrTake, f.Value+f.GiveOrTake
	if fact.Ranged {
		low, high = max(low, fact.Low), min(high, fact.High)
	}
	return b.probes(f.Fact, low, high, spreadKnown)
}
