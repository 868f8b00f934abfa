package engine

// Statement is a condition that stands in a rulebook: of a rule, of a caution, or of a
// yes-or-no fact that is worked out or assumed.
type Statement struct {
	Declares string // rule, caution or fact
	Name     string
	Key      string // if, from or assume
	Text     string
	File     string
	Line     int
	Asked    []string // the comparisons in it, each once
	slot     int32    // of the fact, or -1
	root     int32
	atoms    []int32
}

// Statements lists the conditions that may come out in more than one way, in the
// order of the declarations.
func (b *Rulebook) Statements() []Statement {
	var list []Statement
	add := func(q Statement) {
		q.atoms = b.atomsUnder(q.root, nil)
		for _, a := range q.atoms {
			q.Asked = append(q.Asked, b.atoms[a].text)
		}
		if len(q.atoms) > 0 {
			list = append(list, q)
		}
	}
	for slot, f := range b.Facts {
		s := &b.steps[slot]
		for _, v := range []struct {
			key string
			of  valueOf
		}{{"from", s.from}, {"assume", s.assume}} {
			if v.of.root >= 0 {
				add(Statement{Declares: "fact", Name: f.Name, Key: v.key, Text: v.of.text, File: f.File, Line: f.Line, slot: int32(slot), root: v.of.root})
			}
		}
	}
	for i, r := range b.Rules {
		add(Statement{Declares: "rule", Name: r.Name, Key: "if", Text: r.If, File: r.File, Line: r.Line, slot: -1, root: b.conditions[i]})
	}
	for i, c := range b.Cautions {
		if root := b.conditions[b.rulesAt+i]; root >= 0 {
			add(Statement{Declares: "caution", Name: c.Name, Key: "if", Text: c.If, File: c.File, Line: c.Line, slot: -1, root: root})
		}
	}
	return list
}

// Answer finds how a condition comes out. An assumption is only asked while it
// is taken; false means that it is not.
func (s *State) Answer(q *Statement) (Truth, bool) {
	if q.Key == "assume" && !s.assumed[q.slot] {
		return Unknown, false
	}
	return s.fold(q.root), true
}

// AnswerOf is how a comparison in the condition comes out.
func (s *State) AnswerOf(q *Statement, asked int) Truth { return s.atoms[q.atoms[asked]] }

// Turns reports whether a comparison decides the condition: were it alone to
// come out the other way, the condition would hold instead of failing, or fail
// instead of holding.
func (s *State) Turns(q *Statement, asked int) bool {
	a := q.atoms[asked]
	before := s.fold(q.root)
	if s.atoms[a] == Unknown || before == Unknown {
		return false
	}
	s.atoms[a] = -s.atoms[a]
	after := s.fold(q.root)
	s.atoms[a] = -s.atoms[a]
	return after == -before
}

// Reading lists the asked facts that reach a condition.
func (b *Rulebook) Reading(q *Statement) []int {
	reached := make([]bool, len(b.Facts))
	var visit func(n needs)
	visit = func(n needs) {
		for _, slot := range n.slots {
			if !reached[slot] {
				reached[slot] = true
				visit(b.steps[slot].needs)
			}
		}
		for _, a := range n.atoms {
			visit(b.atoms[a].needs)
		}
	}
	visit(needs{atoms: q.atoms})
	if q.Key == "assume" { // it is taken only while the other formula is unknown
		visit(b.steps[q.slot].needs)
	}
	var slots []int
	for slot, f := range b.Facts {
		if reached[slot] && !f.WorkedOut() {
			slots = append(slots, slot)
		}
	}
	return slots
}

// Never reports whether a condition is shown not to come out in a way, whatever
// the facts are within their ranges. Yes is certain.
func (b *Rulebook) Never(q *Statement, as Truth, effort int) bool {
	c := b.newClauses()
	d := &demonstration{clauses: c, given: c.taken(q), kids: []*clause{c.open(b, q.root)}, left: effort,
		ok: func(found []outcomes) bool { return found[0]&outcomesOf(as) == 0 }}
	return d.demonstrates()
}

// taken confines an assumption to where it is taken: while nothing else says what
// the fact is.
func (c *clauses) taken(q *Statement) []given {
	if q.Key != "assume" {
		return nil
	}
	if from := c.wide.book.steps[q.slot].from; from.root >= 0 {
		return []given{{c.open(c.wide.book, from.root), Unknown}}
	}
	return nil
}

// NeverTurns reports whether it is shown that a comparison, when it comes out in
// a way, never decides the condition. Yes is certain.
func (b *Rulebook) NeverTurns(q *Statement, asked int, as Truth, effort int) bool {
	c := b.newClauses()
	a := &b.atoms[q.atoms[asked]]
	with := func(t Truth) *clause {
		c.fixed, c.as = a, t
		defer func() { c.fixed = nil }()
		return c.open(b, q.root)
	}
	d := &demonstration{clauses: c, given: append(c.taken(q), given{c.ofAtom(b, a), as}), kids: []*clause{with(as), with(-as)}, left: effort,
		ok: func(found []outcomes) bool {
			either := found[0] & (mayHold | mayFail)
			return either&(found[1].not()) == 0
		}}
	return d.demonstrates()
}
