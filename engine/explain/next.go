package explain

import (
	"cmp"
	"slices"

	"boremend/engine"
)

// Next says what is worth finding out, the most useful first.
type Next struct {
	Bore   string `json:"bore"`
	Method string `json:"method"`
	// Outcomes are the methods that could still be advised, once everything that
	// is missing or loose were known.
	Outcomes []string  `json:"outcomes"`
	Find     []FindOut `json:"find"`
	// Granted are unknown too, and could change the choice; until somebody looks
	// the rules go by what is usual, or do without.
	Granted  []Besides `json:"granted"`
	NoLonger []string  `json:"no_longer"` // unknown, and without a say in the choice
	Beside   []Besides `json:"beside"`    // unknown, and only of use for what must also be done
	Settled  bool      `json:"settled"`   // nothing more can change the choice
}

// FindOut is one fact that is worth finding out.
type FindOut struct {
	Fact  string `json:"fact"`
	Means string `json:"means"`
	Ask   string `json:"ask"`
	How   string `json:"how"`
	Tool  string `json:"tool"`
	// Weak: it is known, but its give-or-take leaves the choice open; else it is
	// missing.
	Weak    bool    `json:"weak"`
	Known   string  `json:"known"` // as it stands, or unknown
	Minutes float64 `json:"minutes"`
	// Outcomes that would be left: at best, on average over the values that the
	// rules tell apart, and at worst.
	Best  int     `json:"best"`
	Mean  float64 `json:"mean"`
	Worst int     `json:"worst"`
}

// Besides is a fact that is not asked for first, with the effort of finding out.
type Besides struct {
	Fact    string  `json:"fact"`
	Minutes float64 `json:"minutes"`
}

// spreadNext is how many values of a number are tried beside its thresholds.
const spreadNext = 5

// Next weighs every missing or loose fact by how many outcomes it would leave.
// Outcomes are counted, not weighed: nobody knows how likely they are.
func (q *Study) Next(bore string) Next {
	n := Next{Bore: bore, Method: q.book.Methods[q.was.Method].Name, Find: []FindOut{}, Granted: []Besides{}, NoLonger: []string{}, Beside: []Besides{}}
	extents := q.openExtents()
	o := q.state.Outlook()
	for slot, e := range extents {
		o.Let(slot, e)
	}
	winners := o.Winners()
	if len(winners) > 1 && q.stays(extents) {
		winners = []int{q.was.Method}
	}
	for _, m := range winners {
		n.Outcomes = append(n.Outcomes, q.book.Methods[m].Name)
	}
	// A method may be the only one left and yet open, as long as nobody has
	// looked; then what holds it open is still to be found out.
	n.Settled = len(winners) == 1 && winners[0] == q.was.Method && q.was.Verdict != engine.Undecided
	touchy := q.touchiness().Facts
	rank := q.mostTelling()
	all := q.everythingOpen(extents)
	atAll := all.Winners()
	for slot, f := range q.book.Facts {
		if _, given := q.finding(slot); f.WorkedOut() || given && !q.loose(slot) {
			continue
		}
		e, open := extents[slot]
		switch {
		case !n.Settled && open && o.Matters(slot, winners):
			// A closer measurement is only worth it where it can settle something.
			if !q.loose(slot) || slices.Contains(touchy, slot) {
				n.Find = append(n.Find, q.findOut(o, slot, e))
			}
		case q.loose(slot):
		case len(atAll) > 1 && all.Matters(slot, atAll):
			n.Granted = append(n.Granted, Besides{f.Name, f.Minutes})
		case all.MattersBeside(slot, q.was.Method):
			n.Beside = append(n.Beside, Besides{f.Name, f.Minutes})
		default:
			n.NoLonger = append(n.NoLonger, f.Name)
		}
	}
	n.sort(q, len(winners), rank)
	return n
}

// effortStays bounds the search that shows that nothing open changes the advice.
const effortStays = 200

func (q *Study) stays(extents map[int]engine.Extent) bool {
	defer q.state.Load(q.found)
	return q.state.Stays(extents, q.was.Method, effortStays)
}

// openExtents is what each missing or loose fact could be.
func (q *Study) openExtents() map[int]engine.Extent {
	extents := map[int]engine.Extent{}
	for _, slot := range q.state.OpenFacts() {
		extents[slot] = q.state.Whole(slot)
	}
	moving, _ := q.state.Moving(q.found)
	for _, f := range moving {
		extents[f.Fact], _ = q.book.Around(f)
	}
	return extents
}

// everythingOpen is the outlook in which nothing is taken for granted: every
// unknown fact may be anything.
func (q *Study) everythingOpen(extents map[int]engine.Extent) *engine.Outlook {
	o := q.state.Outlook()
	for slot, f := range q.book.Facts {
		_, given := q.finding(slot)
		if e, open := extents[slot]; open && given {
			o.Let(slot, e)
		} else if !given && !f.WorkedOut() {
			o.Let(slot, f.Extent())
		}
	}
	return o
}

// loose reports whether a fact was found with some give-or-take.
func (q *Study) loose(slot int) bool {
	f, given := q.finding(slot)
	if !given {
		return false
	}
	_, loose := q.book.Around(f)
	return loose
}

// findOut tries what could be found, the other facts as open as they are.
func (q *Study) findOut(o *engine.Outlook, slot int, e engine.Extent) FindOut {
	f := q.book.Facts[slot]
	out := FindOut{Fact: f.Name, Means: f.Means, Ask: f.Ask, How: f.How, Tool: f.Tool, Minutes: f.Minutes,
		Weak: q.loose(slot), Known: q.state.Show(slot, q.units), Best: len(q.book.Methods)}
	values := e.Values
	if len(values) == 0 {
		values = q.book.Probes(slot, e.Low, e.High, spreadNext)
	}
	sum := 0
	for _, v := range values {
		o.Let(slot, engine.Extent{Low: v, High: v, Values: []float64{v}})
		left := len(o.Winners())
		out.Best, out.Worst, sum = min(out.Best, left), max(out.Worst, left), sum+left
	}
	out.Mean = float64(sum) / float64(len(values))
	o.Let(slot, e)
	return out
}

// sort puts first what settles most outcomes a minute; where that is level, what
// more often turns the outcome, and then what is quicker.
func (n *Next) sort(q *Study, now int, rank []int) {
	gain := func(f FindOut) float64 { return (float64(now) - f.Mean) / max(f.Minutes, 1) }
	place := func(f FindOut) int {
		if i := slices.Index(rank, q.book.Fact(f.Fact)); i >= 0 {
			return i
		}
		return len(rank)
	}
	slices.SortStableFunc(n.Find, func(a, b FindOut) int {
		return cmp.Or(cmp.Compare(gain(b), gain(a)), cmp.Compare(place(a), place(b)), cmp.Compare(a.Minutes, b.Minutes))
	})
}
