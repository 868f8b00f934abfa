package explain

import (
	"math"
	"math/rand/v2"
	"slices"

	"boremend/engine"
)

// Sure says how an advice fares when every fact varies within its give-or-take.
type Sure struct {
	Bore     string   `json:"bore"`
	Method   string   `json:"method"`
	Touchy   []string `json:"touchy"`
	Together bool     `json:"touchy_together"`
	Unsure   bool     `json:"touchy_unsure"`
	// Moving are the facts whose give-or-take some rule feels.
	Moving []string `json:"moving"`
	// How the shares were found: "certain" (no combination overturns the advice),
	// "exact" or "sampled", then with the draws and their seed.
	How    string  `json:"how"`
	Draws  int     `json:"draws,omitempty"`
	Seed   uint64  `json:"seed,omitempty"`
	Shares []Share `json:"shares"`
}

// Share is the part of the outcomes that a method has. Error is what the share
// may be off by, 19 times in 20, because it was sampled.
type Share struct {
	Method string  `json:"method"`
	Title  string  `json:"title"`
	Share  float64 `json:"share"`
	Error  float64 `json:"error"`
}

// The sampling: the same in every run.
const (
	draws      = 10_000
	seed       = 1
	mostCells  = 20_000 // combinations of cells that are counted exactly
	nineteenOf = 1.96   // standard errors that hold 19 times in 20
	certain    = "certain"
	countedUp  = "exact"
	sampled    = "sampled"
)

// HowSure finds the share of outcomes. Numbers are taken to lie anywhere within
// their give-or-take with equal right (a rectangular distribution), classes and
// counts on each step with equal right, and each fact apart from the others.
func (q *Study) HowSure(bore string) Sure {
	touchy := q.touchiness()
	moving, entangled := q.state.Moving(q.found)
	s := Sure{Bore: bore, Method: q.book.Methods[q.was.Method].Name, Together: touchy.Together, Unsure: touchy.Unsure,
		Touchy: q.names(touchy.Facts), Moving: []string{}}
	for _, f := range moving {
		s.Moving = append(s.Moving, q.book.Facts[f.Fact].Name)
	}
	weights := make([]float64, len(q.book.Methods))
	cells, few := q.cells(moving)
	switch {
	case len(touchy.Facts) == 0 && !touchy.Unsure:
		s.How = certain
		weights[q.was.Method] = 1
	case !entangled && few:
		s.How = countedUp
		q.count(cells, 1, weights)
	default:
		s.How, s.Draws, s.Seed = sampled, draws, seed
		q.sample(moving, weights)
	}
	s.Shares = q.shares(weights, s.Draws)
	return s
}

// cell is a stretch of one fact in which all rules come out alike.
type cell struct {
	value, weight float64
}

type cells struct {
	slot int
	of   []cell
}

// cells cuts the give-or-take of each finding where a rule turns; few reports
// whether all combinations can be counted.
func (q *Study) cells(moving engine.Findings) (all []cells, few bool) {
	combinations := 1
	for _, f := range moving {
		e, _ := q.book.Around(f)
		c := cells{slot: f.Fact}
		for _, v := range e.Values {
			c.of = append(c.of, cell{v, 1 / float64(len(e.Values))})
		}
		if len(e.Values) == 0 && e.High > e.Low {
			if c.of = q.stretchesOf(f.Fact, e); len(c.of) > mostOptions {
				return nil, false // there may be more of them
			}
		}
		all = append(all, c)
		if combinations *= max(1, len(c.of)); combinations > mostCells {
			return nil, false
		}
	}
	return all, true
}

// stretchesOf cuts an extent of a number into cells, weighed by their length.
func (q *Study) stretchesOf(slot int, e engine.Extent) (list []cell) {
	defer q.restore(slot)
	w := &walk{q, slot, nil, e.Low, e.High}
	edges := append([]float64{e.Low}, w.edges(e.Low, w.stops(e.Low))...)
	for i, from := range edges {
		to := e.High
		if i+1 < len(edges) {
			to = edges[i+1]
		}
		list = append(list, cell{from + (to-from)/2, (to - from) / (e.High - e.Low)})
	}
	return list
}

// count adds up the weights of all combinations of cells.
func (q *Study) count(rest []cells, weight float64, weights []float64) {
	if len(rest) == 0 {
		weights[q.state.Decide().Method] += weight
		return
	}
	for _, c := range rest[0].of {
		q.state.Set(rest[0].slot, c.value)
		q.count(rest[1:], weight*c.weight, weights)
	}
	q.restore(rest[0].slot)
}

// sample draws the facts within their give-or-take.
func (q *Study) sample(moving engine.Findings, weights []float64) {
	defer q.state.Load(q.found)
	random := rand.New(rand.NewPCG(seed, seed))
	found := slices.Clone(q.found)
	extents := map[int]engine.Extent{}
	for _, f := range moving {
		extents[f.Fact], _ = q.book.Around(f)
	}
	for range draws {
		for i := range found {
			if e, moves := extents[found[i].Fact]; moves {
				found[i].Value = within(random, e)
			}
		}
		q.state.Load(found)
		weights[q.state.Decide().Method]++
	}
	for m := range weights {
		weights[m] /= draws
	}
}

// within draws a value of an extent.
func within(random *rand.Rand, e engine.Extent) float64 {
	if len(e.Values) > 0 {
		return e.Values[random.IntN(len(e.Values))]
	}
	return e.Low + (e.High-e.Low)*random.Float64()
}

// shares lists the methods that came out, the advised one first.
func (q *Study) shares(weights []float64, draws int) []Share {
	list := []Share{}
	for m, w := range weights {
		if w == 0 && m != q.was.Method {
			continue
		}
		s := Share{Method: q.book.Methods[m].Name, Title: q.book.Methods[m].Title, Share: w}
		if draws > 0 {
			// Of none in n draws, up to three in n are still likely.
			s.Error = max(nineteenOf*math.Sqrt(w*(1-w)/float64(draws)), 3/float64(draws))
		}
		list = append(list, s)
	}
	advised := q.book.Methods[q.was.Method].Name
	slices.SortStableFunc(list, func(a, b Share) int {
		switch {
		case a.Method == advised:
			return -1
		case b.Method == advised:
			return 1
		case a.Share > b.Share:
			return -1
		case a.Share < b.Share:
			return 1
		}
		return 0
	})
	return list
}

func (q *Study) names(slots []int) []string {
	names := make([]string, len(slots))
	for i, slot := range slots {
		names[i] = q.book.Facts[slot].Name
	}
	return names
}
