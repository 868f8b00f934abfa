package audit

import (
	"cmp"
	"context"
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// Gaps are joints for which a rulebook has no good answer, found among sampled
// ones and grouped by what is responsible.
type Gaps struct {
	Draws   int    `json:"draws"` // asked for
	Done    int    `json:"done"`  // drawn and judged
	Seed    uint64 `json:"seed"`
	Stopped bool   `json:"stopped"`
	// Fallback is the method when none stands. Sent counts the draws in which no
	// other method is left and a rule itself speaks for the fallback: that is an
	// answer, and no gap.
	Fallback string `json:"fallback"`
	Sent     int    `json:"sent_to_fallback"`
	// By kind, in the order of GapKinds.
	Kinds []GapKind `json:"kinds"`
}

// The kinds of gap.
const (
	NothingLeft = "nothing_left" // every method but the fallback is ruled out
	AllOpen     = "all_open"     // none but the fallback stands, and some are open
	Tie         = "tie"          // two or more methods lead with equal points
)

var gapKinds = []string{NothingLeft, AllOpen, Tie}

// GapKind is all that was found of one kind.
type GapKind struct {
	Kind  string  `json:"kind"`
	Count int     `json:"count"`
	Share float64 `json:"share"`
	Error float64 `json:"error"` // of the share, 19 times in 20, because it was sampled
	// Groups, the most frequent first. Those left off, and how many draws are in
	// them, are only counted.
	Groups       []GapGroup `json:"groups"`
	GroupsLeft   int        `json:"groups_left_off"`
	DrawsLeftOff int        `json:"draws_left_off"`
}

// GapGroup is one group: joints that are gaps for the same reason.
type GapGroup struct {
	Count int     `json:"count"`
	Share float64 `json:"share"`
	Error float64 `json:"error"`
	// What is responsible: the rules that between them rule every method out; the
	// methods that tie; or the facts that, unknown, keep the methods open. Where a
	// method is open though every fact is known, because a sheet refuses to give a
	// number, it is the rules that are not settled.
	Rules   []string   `json:"rules"`
	Methods []string   `json:"methods"`
	Unknown []string   `json:"unknown"`
	Example GapExample `json:"example"`
}

// GapExample is the simplest joint found of a group, evaluated afresh.
type GapExample struct {
	Facts   []FactAt      `json:"facts"` // any other fact is unknown
	Method  string        `json:"method"`
	Verdict string        `json:"verdict"`
	Methods []GapStanding `json:"methods"`
}

// GapStanding is where a method stands in an example, with what is responsible.
type GapStanding struct {
	Method  string          `json:"method"`
	Title   string          `json:"title"`
	Verdict string          `json:"verdict"`
	Points  float64         `json:"points"`
	Start   float64         `json:"start"`
	Reasons []engine.Reason `json:"reasons"`
}

// GapOptions say how long to look and how much to list.
type GapOptions struct {
	Draws int
	Seed  uint64
	List  int // groups of each kind
	Units quantity.System
}

// group is a group while it is gathered: how often, and the first draws in it.
type group struct {
	gap
	count int
	draws []int
}

// FindGaps searches sampled joints. When the context ends, what was found until
// then is returned, marked as stopped.
func FindGaps(ctx context.Context, book *engine.Rulebook, o GapOptions, report Report) Gaps {
	groups := map[string]*group{}
	out := Gaps{Draws: o.Draws, Seed: o.Seed, Fallback: book.Methods[book.Fallback].Name}
	begin := func() func(from, to int) blockOfGaps {
		s, finder := NewSampler(book, o.Seed), newGapFinder(book)
		return func(from, to int) blockOfGaps {
			var block blockOfGaps
			for number := from; number < to; number++ {
				s.Draw(number)
				block.add(finder, s.State, number)
			}
			return block
		}
	}
	out.Done = overDraws(ctx, o.Draws, report, begin, func(block blockOfGaps) {
		out.Sent += block.sent
		for _, g := range block.groups {
			if known := groups[g.key]; known != nil {
				known.count += g.count
				known.draws = append(known.draws, g.draws...)[:min(triedDraws, len(known.draws)+len(g.draws))]
				continue
			}
			groups[g.key] = g
		}
	})
	out.Stopped = out.Done < o.Draws
	w := newGapWitness(book, o)
	for _, name := range gapKinds {
		out.Kinds = append(out.Kinds, kindOfGaps(name, w, groups, out.Done, o.List))
	}
	return out
}

// blockOfGaps is what one block of draws gave, in the order in which it was met.
type blockOfGaps struct {
	sent   int
	groups []*group
}

func (b *blockOfGaps) add(f *gapFinder, s *engine.State, number int) {
	found := f.judge(s)
	switch {
	case found.sent:
		b.sent++
		return
	case found.of == "":
		return
	}
	f.blame(s, &found)
	for _, g := range b.groups {
		if g.key == found.key {
			g.count++
			if len(g.draws) < triedDraws {
				g.draws = append(g.draws, number)
			}
			return
		}
	}
	b.groups = append(b.groups, &group{gap: found, count: 1, draws: []int{number}})
}

// triedDraws is how many draws of a group are tried for the simplest example.
const triedDraws = 6

// kindOfGaps lists the groups of one kind with their examples.
func kindOfGaps(name string, w *gapWitness, groups map[string]*group, done, most int) GapKind {
	out := GapKind{Kind: name, Groups: []GapGroup{}}
	var list []*group
	for _, g := range groups {
		if g.of == name {
			list = append(list, g)
			out.Count += g.count
		}
	}
	out.Share, out.Error = share(out.Count, done)
	slices.SortFunc(list, func(a, b *group) int { return cmp.Or(b.count-a.count, cmp.Compare(a.key, b.key)) })
	for i, g := range list {
		if i >= most {
			out.GroupsLeft++
			out.DrawsLeftOff += g.count
			continue
		}
		out.Groups = append(out.Groups, g.describe(w, done))
	}
	return out
}

// describe names what is responsible for a group and finds its simplest example.
func (g *group) describe(w *gapWitness, done int) GapGroup {
	out := GapGroup{Count: g.count, Rules: []string{}, Methods: []string{}, Unknown: []string{}}
	out.Share, out.Error = share(g.count, done)
	for _, i := range g.rules {
		out.Rules = append(out.Rules, w.book.Rules[i].Name)
	}
	for _, m := range g.methods {
		out.Methods = append(out.Methods, w.book.Methods[m].Name)
	}
	for _, slot := range g.unknown {
		out.Unknown = append(out.Unknown, w.book.Facts[slot].Name)
	}
	out.Example = w.example(g)
	return out
}
