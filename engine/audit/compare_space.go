package audit

import (
	"context"

	"boremend/engine"
	"boremend/engine/quantity"
)

// ComparedSpace is what an edit does to sampled joints.
type ComparedSpace struct {
	Draws   int    `json:"draws"`
	Done    int    `json:"done"`
	Seed    uint64 `json:"seed"`
	Stopped bool   `json:"stopped"`
	// Unlike counts the draws that only one of the books can write down: a word or
	// a size that the other does not allow. They are part of no share.
	Unlike int `json:"unlike"`
	// Changed draws are advised another method; in Beside the advised method is the
	// same but some verdict is not.
	Changed int     `json:"changed"`
	Share   float64 `json:"share"`
	Error   float64 `json:"error"`
	Beside  int     `json:"beside"`
	// Near counts further draws, close to where something that was edited turns.
	// They find changes that are too rare for the others, and are part of no share.
	Near        int          `json:"near"`
	NearChanged int          `json:"near_changed"`
	Kinds       []ChangeKind `json:"kinds"`
	// Kinds that were left off the list, and the draws in them.
	KindsLeft    int `json:"kinds_left_off"`
	DrawsLeftOff int `json:"draws_left_off"`
}

// ChangeKind is one way in which the advice changes, from one method to another.
type ChangeKind struct {
	Before  string        `json:"before"`
	After   string        `json:"after"`
	Count   int           `json:"count"`
	Share   float64       `json:"share"`
	Error   float64       `json:"error"`
	Near    int           `json:"near"` // further draws, close to what was edited
	Example ChangeExample `json:"example"`
}

// ChangeExample is the simplest joint found at which the advice changes so,
// evaluated afresh.
type ChangeExample struct {
	Facts []FactAt `json:"facts"` // any other fact is unknown
	Contrast
}

// CompareOptions say how long to look and how much to list.
type CompareOptions struct {
	Draws int
	Seed  uint64
	List  int // kinds of change
	Units quantity.System
}

// CompareSpace asks both books about sampled joints, drawn in turn from the
// facts and thresholds of one and of the other. When the context ends, what was
// found until then is returned, marked as stopped.
func CompareSpace(ctx context.Context, before, after *engine.Rulebook, o CompareOptions, report Report) ComparedSpace {
	out := ComparedSpace{Draws: o.Draws, Seed: o.Seed, Kinds: []ChangeKind{}}
	near := 0
	if t := newTwin(before, after, o.Seed); len(t.near[0])+len(t.near[1]) > 0 {
		near = o.Draws / nearShare
	}
	kinds := changeKinds{}
	inAll := func(done, _ int) {
		if report != nil {
			report(done, o.Draws+near)
		}
	}
	out.Done = overDraws(ctx, o.Draws, inAll, changesAmong(before, after, o.Seed, (*twin).draw), func(block changedBlock) {
		out.Unlike, out.Beside = out.Unlike+block.unlike, out.Beside+block.beside
		out.Changed += kinds.take(block, false)
	})
	out.Near = overDraws(ctx, near, func(done, of int) { inAll(o.Draws+done, of) }, changesAmong(before, after, o.Seed, (*twin).drawNear), func(block changedBlock) {
		out.NearChanged += kinds.take(block, true)
	})
	out.Stopped = out.Done < o.Draws || out.Near < near
	out.Share, out.Error = share(out.Changed, out.Done-out.Unlike)
	out.list(before, after, kinds, o)
	return out
}

// nearShare is how many draws there are to one further draw near what was edited.
const nearShare = 4

// changesAmong is a worker that draws joints in some way and notes the changes.
func changesAmong(before, after *engine.Rulebook, seed uint64, draw func(*twin, int) bool) func() func(from, to int) changedBlock {
	return func() func(from, to int) changedBlock {
		t := newTwin(before, after, seed)
		return func(from, to int) changedBlock {
			block := changedBlock{kinds: map[[2]string]*changes{}}
			for number := from; number < to; number++ {
				block.add(t, draw(t, number), number)
			}
			return block
		}
	}
}

// changes are the draws of one kind of change: how many, and the first of them;
// the same for the further draws near what was edited.
type changes struct {
	kind        [2]string
	count, near int
	draws       []int
	nearDraws   []int
}

// changeKinds are the changes by the methods advised before and after.
type changeKinds map[[2]string]*changes

// take adds what a block of draws gave and says how many changes that was.
func (kinds changeKinds) take(block changedBlock, near bool) (changed int) {
	for kind, found := range block.kinds {
		c := kinds[kind]
		if c == nil {
			c = &changes{kind: kind}
			kinds[kind] = c
		}
		changed += found.count
		count, draws := &c.count, &c.draws
		if near {
			count, draws = &c.near, &c.nearDraws
		}
		*count += found.count
		*draws = append(*draws, found.draws...)
		*draws = (*draws)[:min(triedDraws, len(*draws))]
	}
	return changed
}

// changedBlock is what one block of draws gave.
type changedBlock struct {
	unlike, beside int
	kinds          changeKinds
}

// add notes the joint that is drawn, if both books can write it down.
func (b *changedBlock) add(t *twin, alike bool, number int) {
	if !alike {
		b.unlike++
		return
	}
	kind := t.kind()
	switch {
	case kind[0] != kind[1]:
		b.kinds.take(changedBlock{kinds: changeKinds{kind: {count: 1, draws: []int{number}}}}, false)
	case t.verdictsDiffer():
		b.beside++
	}
}
