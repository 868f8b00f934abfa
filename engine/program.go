package engine

import (
	"math"

	"boremend/engine/quantity"
)

// program is a rulebook compiled. Facts are numbered slots. Every comparison
// that occurs anywhere is one atom, shared by all who ask it. The tape holds
// atoms and worked-out facts in an order in which each finds what it needs
// already done; conditions are small trees over the atoms.
//
// Evaluating a bore is one run down the tape and one fold for each condition.
// When a single fact changes, only what follows from it is run again: that part
// of the tape and of the conditions stands in its impact.
type program struct {
	atoms      []atom
	nodes      []node
	places     []place // by node: where a comparison stands
	kids       []int32
	tape       []item
	steps      []step // by slot; without formulas for facts that are only asked
	conditions []int32
	rulesAt    int // conditions[:rulesAt] belong to rules, the rest to cautions
	readers    [][]int32
	impacts    []impact // by slot
	scratch    int      // arguments that function calls need in all
	// For questions about what can happen at all.
	least       []int32 // by slot: the fact that it must reach, or -1
	leastOrders []order // by slot: that fact and what it must reach as sides, where something compares them
	orders      int     // pairs of sides that comparisons put in order
	wordsCalled []int32 // facts that catalogue functions read as words
}

// item is one entry of the tape: an atom, or the step of a fact.
type item struct {
	isStep bool
	index  int32
}

// impact is what must be done again when a fact changes.
type impact struct {
	tape       []item
	conditions []int32
	calls      bool // a catalogue function is among it
}

// numberFunc works a number out; false means that it is unknown.
type numberFunc func(s *State) (float64, bool)

// step works out one fact.
type step struct {
	slot         int32
	sort         Sort
	from, assume valueOf
	linear       *linear // from, where it is a sum
	needs        needs
}

// valueOf is a formula: a number, or a condition for a yes-or-no fact.
type valueOf struct {
	text string
	formula
	root int32 // -1 unless a condition
}

func (v valueOf) given() bool { return v.number != nil || v.root >= 0 }

// needs lists what an atom or a step reads directly.
type needs struct {
	slots []int32
	atoms []int32
	calls bool // a catalogue function
}

// comparison is the operator of an atom.
type comparison uint8

const (
	less comparison = iota
	lessEqual
	greater
	greaterEqual
	equal
	notEqual
)

var comparisons = map[string]comparison{"<": less, "<=": lessEqual, ">": greater, ">=": greaterEqual, "==": equal, "!=": notEqual}

// String returns the operator as formulas write it.
func (c comparison) String() string {
	return [...]string{"<", "<=", ">", ">=", "==", "!="}[c]
}

// exchange gives the operator that says the same with the sides exchanged.
func (c comparison) exchange() comparison {
	return [...]comparison{greater, greaterEqual, less, lessEqual, equal, notEqual}[c]
}

func (c comparison) holds(a, b float64) bool {
	switch c {
	case less:
		return a < b
	case lessEqual:
		return a <= b
	case greater:
		return a > b
	case greaterEqual:
		return a >= b
	case equal:
		return a == b
	}
	return a != b
}

// shape says how an atom is tested. The common ones avoid a call.
type shape uint8

const (
	flag            shape = iota // a yes-or-no fact, alone
	againstConstant              // fact and constant
	againstFact                  // fact and fact
	member                       // a choice in a set of words
	general                      // two expressions
)

// atom is one comparison.
type atom struct {
	text     string
	shape    shape
	op       comparison
	left     int32 // slot
	right    int32 // slot
	constant float64
	set      uint64
	leftOf   formula
	rightOf  formula
	needs    needs
	order    order
	sides    *linear // left less right; nil where that is no sum
	apart    *difference
	node     int32 // where it is made first
	// For the trace.
	leftText, rightText string
	kind                quantity.Kind
}

// nodeOp is what a node of a condition does.
type nodeOp uint8

const (
	atomNode nodeOp = iota
	constantNode
	notNode
	andNode
	orNode
)

// node is one part of a condition. An atomNode has the atom's number in first;
// a constantNode the truth; the others count kids from first.
type node struct {
	op    nodeOp
	first int32
	count int32
}

// test finds the outcome of an atom.
func (s *State) test(a *atom) Truth {
	if a.shape == general {
		l, ok := a.leftOf.number(s)
		if !ok {
			return Unknown
		}
		r, ok := a.rightOf.number(s)
		if !ok {
			return Unknown
		}
		return truthOf(a.op.holds(l, r))
	}
	if !s.known[a.left] {
		return Unknown
	}
	v := s.number[a.left]
	switch a.shape {
	case flag:
		return truthOf(v != 0)
	case member:
		return truthOf(a.set>>uint(v)&1 != 0)
	case againstFact:
		if !s.known[a.right] {
			return Unknown
		}
		return truthOf(a.op.holds(v, s.number[a.right]))
	}
	return truthOf(a.op.holds(v, a.constant))
}

// fold finds the outcome of a condition from its atoms.
func (s *State) fold(root int32) Truth {
	n := s.book.nodes[root]
	switch n.op {
	case atomNode:
		return s.atoms[n.first]
	case constantNode:
		return Truth(n.first)
	case notNode:
		return -s.fold(s.book.kids[n.first])
	case andNode:
		out := Holds
		for _, k := range s.book.kids[n.first : n.first+n.count] {
			if out = min(out, s.fold(k)); out == Fails {
				break
			}
		}
		return out
	}
	out := Fails
	for _, k := range s.book.kids[n.first : n.first+n.count] {
		if out = max(out, s.fold(k)); out == Holds {
			break
		}
	}
	return out
}

// finite turns what is not a usable number into the unknown.
func finite(v float64) (float64, bool) {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return 0, false
	}
	return v, true
}
