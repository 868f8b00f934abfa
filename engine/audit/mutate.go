package audit

import (
	"context"
	"runtime"
	"slices"
	"strings"
	"sync"

	"boremend/engine"
)

// Mutation is how closely some cases watch a rulebook: which small wrong edits
// of it would make an expectation fail.
type Mutation struct {
	Cases      int         `json:"cases"`
	Edits      int         `json:"edits"`   // that the loader takes
	Refused    int         `json:"refused"` // that it does not take, so that nobody need notice
	Tried      int         `json:"tried"`   // less than Edits when the work was stopped
	Noticed    int         `json:"noticed"`
	NotNoticed int         `json:"not_noticed"`
	Equivalent int         `json:"no_effect"` // on any advice, whatever is found at a bore; this has been shown
	Score      float64     `json:"score"`     // noticed of all that were tried and may have an effect
	Stopped    bool        `json:"stopped"`
	Failing    []string    `json:"failing"` // cases that fail already and notice nothing, with what differs
	Kinds      []KindCount `json:"kinds"`
	Survivors  []Survivor  `json:"survivors"`
}

// Survivor is an edit that no case notices.
type Survivor struct {
	engine.Edit
	Pin []string `json:"pin"` // rules and cautions that a case could pin: those that the edit reaches
}

// KindCount is the score of one kind of edit.
type KindCount struct {
	Kind       engine.EditKind `json:"kind"`
	Noticed    int             `json:"noticed"`
	NotNoticed int             `json:"not_noticed"`
	Equivalent int             `json:"no_effect"`
}

// fate is what becomes of an edit.
type fate uint8

const (
	untried fate = iota
	refused
	noticed
	unseen
	equivalent
)

// proofEffort bounds the demonstration that an edit changes nothing.
const proofEffort = 4000

// Mutate makes small wrong edits of a rulebook, one at a time, and replays the
// cases until one notices. An edit that none notices is left out of the score
// if it is shown to have no effect on what the rules say of any bore.
func Mutate(ctx context.Context, book *engine.Rulebook, list []Case, report Report) Mutation {
	r := &replay{book: book, edits: book.Edits()}
	m := Mutation{Cases: len(list), Score: 1, Kinds: []KindCount{}, Survivors: []Survivor{}}
	r.cases, m.Failing = passing(book, list)
	r.fates = make([]fate, len(r.edits))
	m.Stopped = r.all(ctx, report)
	kinds := map[engine.EditKind]int{}
	for i, e := range r.edits {
		m.count(e, r.fates[i], kinds)
		if r.fates[i] == unseen {
			m.Survivors = append(m.Survivors, Survivor{e, book.Reaches(e)})
		}
	}
	if counted := m.Noticed + m.NotNoticed; counted > 0 {
		m.Score = float64(m.Noticed) / float64(counted)
	}
	return m
}

// passing splits off the cases that fail with the rulebook as it is, and those
// that expect nothing.
func passing(book *engine.Rulebook, list []Case) (pass []Case, failing []string) {
	failing = []string{}
	s := book.NewState()
	for _, c := range list {
		if c.Wrong == nil {
			continue
		}
		s.Load(c.Findings)
		if wrong := c.Wrong(s); len(wrong) > 0 {
			failing = append(failing, c.Name+": "+strings.Join(wrong, "; "))
		} else {
			pass = append(pass, c)
		}
	}
	return pass, failing
}

func (m *Mutation) count(e engine.Edit, f fate, kinds map[engine.EditKind]int) {
	switch f {
	case refused:
		m.Refused++
		return
	case untried:
		m.Edits++
		return
	}
	m.Edits++
	m.Tried++
	at, known := kinds[e.Kind]
	if !known {
		at = len(m.Kinds)
		kinds[e.Kind] = at
		m.Kinds = append(m.Kinds, KindCount{Kind: e.Kind})
	}
	switch k := &m.Kinds[at]; f {
	case noticed:
		m.Noticed++
		k.Noticed++
	case equivalent:
		m.Equivalent++
		k.Equivalent++
	default:
		m.NotNoticed++
		k.NotNoticed++
	}
}

// replay is the work shared among goroutines. Each takes the edits of one
// declaration after another; nobody writes the fate of an edit but the one who
// took it.
type replay struct {
	book  *engine.Rulebook
	cases []Case
	edits []engine.Edit
	fates []fate
}

// all tries every edit on all processors, and reports whether it was stopped.
func (r *replay) all(ctx context.Context, report Report) (stopped bool) {
	groups := r.groups()
	work, done := make(chan [2]int), make(chan int)
	var workers sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		workers.Go(func() {
			for g := range work {
				r.group(ctx, g[0], g[1])
				done <- g[1] - g[0]
			}
		})
	}
	go func() {
		defer close(work)
		for _, g := range groups {
			select {
			case work <- g:
			case <-ctx.Done():
				return
			}
		}
	}()
	go func() { workers.Wait(); close(done) }()
	tried := 0
	for n := range done {
		tried += n
		report.tell(tried, len(r.edits))
	}
	return slices.Contains(r.fates, untried)
}

// groups are the stretches of edits of one declaration.
func (r *replay) groups() (groups [][2]int) {
	for from, i := 0, 1; i <= len(r.edits); i++ {
		if i == len(r.edits) || r.edits[i].Declares != r.edits[from].Declares || r.edits[i].Name != r.edits[from].Name {
			groups = append(groups, [2]int{from, i})
			from = i
		}
	}
	return groups
}

// group tries the edits of one declaration. The cases that speak of the rules
// that it reaches come first, and then whichever noticed the last edit.
func (r *replay) group(ctx context.Context, from, to int) {
	reached := r.book.Reaches(r.edits[from])
	order := make([]int, 0, len(r.cases))
	for _, speaks := range []bool{true, false} {
		for i, c := range r.cases {
			if slices.ContainsFunc(c.Names, func(name string) bool { return slices.Contains(reached, name) }) == speaks {
				order = append(order, i)
			}
		}
	}
	for i := from; i < to && ctx.Err() == nil; i++ {
		r.fates[i] = r.try(r.edits[i], order)
	}
}

// try finds the fate of one edit.
func (r *replay) try(e engine.Edit, order []int) fate {
	variant, err := r.book.Vary(e)
	if err != nil {
		return refused
	}
	s := variant.NewState()
	for at, i := range order {
		s.Load(r.cases[i].Findings)
		if len(r.cases[i].Wrong(s)) > 0 {
			copy(order[1:at+1], order[:at])
			order[0] = i
			return noticed
		}
	}
	if r.book.Agrees(variant, proofEffort) {
		return equivalent
	}
	return unseen
}
