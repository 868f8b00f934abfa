package explain

import (
	"boremend/engine"
	"boremend/engine/quantity"
)

// Advise advises on a bore, with the nearest tipping point and the fact that is
// worth finding out next.
func Advise(book *engine.Rulebook, bore string, found engine.Findings, units quantity.System) engine.Advice {
	a := book.Advise(bore, found, units)
	q := New(book, found, units)
	q.touchy = &engine.Touchy{Facts: q.slots(a.Chosen.Touchy), Together: a.Chosen.TouchyTogether, Unsure: a.Chosen.TouchyUnsure}
	q.telling = q.slots(a.Missing)
	if points := q.TippingPoints(); len(points) > 0 && points[0].Shifts[0].Against == "" {
		s := points[0].Shifts[0]
		a.Nearest = &engine.NearestTipping{Fact: s.Fact, From: s.FromText, To: s.ToText, By: s.ByText, Gives: s.Gives,
			Method: points[0].Method, Title: points[0].Title}
	}
	if find := q.Next(bore).Find; len(find) > 0 {
		a.Next = &engine.NextFact{Fact: find[0].Fact, Ask: find[0].Ask, Minutes: find[0].Minutes, Weak: find[0].Weak}
	}
	return a
}

// slots numbers facts.
func (q *Study) slots(names []string) []int {
	slots := make([]int, len(names))
	for i, name := range names {
		slots[i] = q.book.Fact(name)
	}
	return slots
}
