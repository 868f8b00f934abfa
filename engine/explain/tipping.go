package explain

import (
	"cmp"
	"math"
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// Shift is one fact put to another value.
type Shift struct {
	Fact     string        `json:"fact"`
	Means    string        `json:"means"`
	Change   engine.Change `json:"change"`
	From     any           `json:"from"` // null while nobody knows
	FromText string        `json:"from_text"`
	To       any           `json:"to"`
	ToText   string        `json:"to_text"`
	Unit     string        `json:"unit"`
	Assumed  bool          `json:"assumed,omitempty"` // From is an assumption
	// By is how far, Gives the same in units of the fact's give-or-take; both
	// are null where that means nothing.
	By     *float64 `json:"by"`
	ByText string   `json:"by_text"`
	Gives  *float64 `json:"give_or_takes"`
	// Against is a fact with which the new value cannot be true.
	Against string `json:"against,omitempty"`
	slot    int
	value   float64
	typed   float64 // what ToText reads back as
}

// Tipping is a smallest change that changes the advice, and to which method.
type Tipping struct {
	Shifts  []Shift `json:"shifts"`
	Method  string  `json:"method"`
	Title   string  `json:"title"`
	Verdict string  `json:"verdict"`
}

// TippingPoints lists for each fact the nearest change that changes the advised
// method: for a number the nearest value, for a choice every word that does it.
// The nearest, counted in give-or-takes, come first.
func (q *Study) TippingPoints() []Tipping {
	return q.tippings(func(d engine.Decision) bool { return d.Method != q.was.Method })
}

// Toward lists the single changes that would bring a method out on top.
func (q *Study) Toward(method int) []Tipping {
	return q.tippings(func(d engine.Decision) bool { return d.Method == method })
}

func (q *Study) tippings(is turned) []Tipping {
	list := []Tipping{}
	for slot, f := range q.book.Facts {
		if f.WorkedOut() || !q.book.Decides(slot) {
			continue
		}
		for _, v := range q.turns(slot, is) {
			if t, turned := q.tipping(is, q.shift(slot, v, is)); turned {
				list = append(list, t)
			}
		}
	}
	slices.SortStableFunc(list, func(a, b Tipping) int { return compareShifts(a.Shifts[0], b.Shifts[0]) })
	return list
}

// tipping evaluates shifts afresh and names what they lead to; false means that
// they do not turn the decision after all.
func (q *Study) tipping(is turned, shifts ...Shift) (Tipping, bool) {
	changes := make([]engine.Finding, len(shifts))
	for i, s := range shifts {
		changes[i] = engine.Finding{Fact: s.slot, Value: s.value}
	}
	d := q.decideAfresh(changes...)
	m := q.book.Methods[d.Method]
	return Tipping{shifts, m.Name, m.Title, d.Verdict.String()}, is(d)
}

// shift describes a change of one fact. The value shown is one that, typed in
// again, still turns the decision.
func (q *Study) shift(slot int, v float64, is turned) Shift {
	f := q.book.Facts[slot]
	s := Shift{Fact: f.Name, Means: f.Means, Change: f.Change, FromText: q.state.Show(slot, q.units), To: f.PlainValue(v),
		ToText: f.Show(v, q.units), Unit: f.Unit(), Assumed: q.state.Assumed(slot), Against: q.against(slot, v), slot: slot, value: v, typed: v}
	now, known := q.state.Value(slot)
	if known {
		s.From = f.PlainValue(now)
	}
	if f.Sort == engine.Number {
		s.ToText, s.typed = q.written(slot, v, is)
	}
	if known {
		q.measure(&s, f, now)
	}
	return s
}

// measure fills in how far the shift goes.
func (q *Study) measure(s *Shift, f *engine.Fact, now float64) {
	by := s.value - now
	switch {
	case f.Sort == engine.Choice && f.Slack.OneClass:
		gives := math.Abs(by)
		s.Gives = &gives
	case f.Sort == engine.Number:
		kind := f.Kind
		if kind == quantity.Temperature {
			kind = quantity.TemperatureChange
		}
		s.By, s.ByText = &by, quantity.Quantity{Value: s.typed - now, Kind: kind}.FormatRounded(q.units)
		if give := q.giveOrTake(s.slot, now); give > 0 {
			gives := math.Abs(by) / give
			s.Gives = &gives
		}
	}
}

// giveOrTake is that of the finding, else the fact's usual one.
func (q *Study) giveOrTake(slot int, now float64) float64 {
	if f, given := q.finding(slot); given {
		return f.GiveOrTake
	}
	return q.book.Facts[slot].GiveOrTake(now)
}

// against names the fact that a value contradicts, if any.
func (q *Study) against(slot int, v float64) string {
	against := ""
	if q.book.Facts[slot].Sort != engine.Number {
		return against
	}
	found := q.found.With(engine.Finding{Fact: slot, Value: v})
	q.book.CheckTogether(found, q.units, func(f *engine.Fact, _ string) {
		if f.Name == q.book.Facts[slot].Name {
			against = f.AtLeast
		} else if f.AtLeast != "" {
			against = f.Name
		}
	})
	return against
}

// compareShifts puts the nearest first, then what has no distance, then what is
// not known, then what contradicts other facts.
func compareShifts(a, b Shift) int {
	return cmp.Or(cmp.Compare(a.remoteness(), b.remoteness()), cmp.Compare(a.distance(), b.distance()))
}

func (s Shift) remoteness() int {
	switch {
	case s.Against != "":
		return 3
	case s.From == nil:
		return 2
	case s.Gives == nil:
		return 1
	}
	return 0
}

func (s Shift) distance() float64 {
	if s.Gives == nil {
		return 0
	}
	return *s.Gives
}
