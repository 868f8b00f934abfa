package engine

import "slices"

// demonstration looks at everything that the facts may be within their ranges,
// and splits it test by test, until in every part some clauses come out so that
// ok is content. Facts worked out as numbers count as free within what they can
// reach, so a part may be one that no bore lies in: yes is certain, no is not.
type demonstration struct {
	*clauses
	given []given
	kids  []*clause
	ok    func(outcome []outcomes) bool
	left  int // parts that may still be looked at
}

// given confines a demonstration to where a clause comes out in one way.
type given struct {
	*clause
	is Truth
}

// demonstrates reports whether it could be shown.
func (d *demonstration) demonstrates() bool {
	return d.look(box{spans: d.wide.spans, settled: map[int]Truth{}})
}

func (d *demonstration) look(x box) bool {
	if d.left--; d.left < 0 {
		return false
	}
	for _, g := range d.given {
		switch may := x.fold(d.clauses, g.clause); {
		case may&outcomesOf(g.is) == 0:
			return true // not in question
		case may&(may-1) != 0:
			return d.split(x, g.clause)
		}
	}
	found := make([]outcomes, len(d.kids))
	for i, k := range d.kids {
		found[i] = x.fold(d.clauses, k)
	}
	if d.ok(found) {
		return true
	}
	for _, k := range d.kids {
		if x.loose(d.clauses, k) >= 0 {
			return d.split(x, k)
		}
	}
	return x.impossible(d.clauses)
}

// split looks at each way in which a test of the clause may come out.
func (d *demonstration) split(x box, k *clause) bool {
	number := x.loose(d.clauses, k)
	if number < 0 {
		return false
	}
	may := x.may(d.clauses, number)
	for _, as := range []Truth{Holds, Fails, Unknown} {
		if may&outcomesOf(as) == 0 {
			continue
		}
		if part, possible := x.part(d.clauses, number, as); possible && !d.look(part) {
			return false
		}
	}
	return true
}

// Agrees reports whether a variant says the same of every bore whose facts lie
// within their ranges: the same worked-out facts, and of each rule and caution
// the same outcome with the same effect on the same methods. The answer yes is
// certain; no may mean that it could not be shown with so much effort.
func (b *Rulebook) Agrees(variant *Rulebook, effort int) bool {
	if b.Narrow != variant.Narrow || slices.ContainsFunc(b.Methods, func(m *Method) bool { return variant.Methods[variant.Method(m.Name)].Start != m.Start }) {
		return false
	}
	c := b.newClauses()
	for i, l := range b.Limits {
		if variant.Limits[i].Is != l.Is {
			c.moved = append(c.moved, "limit."+l.Name)
		}
	}
	a := &agreement{c, variant, effort}
	for slot := range b.Facts {
		if !a.fact(int32(slot)) {
			return false
		}
	}
	return a.rules() && a.cautions()
}

// agreement compares a rulebook with a variant.
type agreement struct {
	*clauses
	variant *Rulebook
	effort  int
}

func (a *agreement) same(before, after string) bool {
	return before == after && !slices.ContainsFunc(a.moved, func(limit string) bool { return mentions(before, limit) })
}

// always reports whether two clauses are shown to come out so that ok is content.
func (a *agreement) always(before, after *clause, ok func(before, after Truth) bool) bool {
	d := &demonstration{clauses: a.clauses, kids: []*clause{before, after}, left: a.effort, ok: func(found []outcomes) bool {
		for _, x := range []Truth{Fails, Unknown, Holds} {
			for _, y := range []Truth{Fails, Unknown, Holds} {
				if found[0]&outcomesOf(x) != 0 && found[1]&outcomesOf(y) != 0 && !ok(x, y) {
					return false
				}
			}
		}
		return true
	}}
	return d.demonstrates()
}

func identical(before, after Truth) bool { return before == after }

// fact compares how a fact is worked out. Formulas of numbers must be the same.
func (a *agreement) fact(slot int32) bool {
	b := a.wide.book
	before, after := b.Facts[slot], a.variant.Facts[slot]
	if a.same(before.From, after.From) && a.same(before.Assume, after.Assume) {
		return true
	}
	if before.Sort != YesNo {
		return false
	}
	old, now := &b.steps[slot], &a.variant.steps[slot]
	never := &clause{op: constClause, is: Unknown}
	opened := func(in *Rulebook, v valueOf) *clause {
		if v.root < 0 {
			return never
		}
		return a.open(in, v.root)
	}
	// What is taken from an assumption is shown as such, so the two formulas
	// must agree each for itself, the assumption where it is needed.
	from := opened(b, old.from)
	if !a.always(from, opened(a.variant, now.from), identical) {
		return false
	}
	d := &demonstration{clauses: a.clauses, given: []given{{from, Unknown}}, left: a.effort,
		kids: []*clause{opened(b, old.assume), opened(a.variant, now.assume)},
		ok:   func(found []outcomes) bool { return found[0] == found[1] && found[0]&(found[0]-1) == 0 }}
	return d.demonstrates()
}

// rules compares what each rule does.
func (a *agreement) rules() bool {
	b := a.wide.book
	for i, before := range b.Rules {
		var after *Rule
		never := &clause{op: constClause, is: Fails}
		now, at := never, a.variant.Rule(before.Name)
		if at >= 0 {
			after = a.variant.Rules[at]
			if a.same(before.If, after.If) && acts(before) == acts(after) && slices.Equal(before.For, after.For) {
				continue
			}
			now = a.open(a.variant, a.variant.conditions[at])
		}
		if !a.always(a.open(b, b.conditions[i]), now, func(x, y Truth) bool { return alike(before, x, after, y) }) {
			return false
		}
	}
	return true
}

// action is what a rule does apart from whom it is for.
type action struct {
	effect  Effect
	points  float64
	unknown IfUnknown
}

func acts(r *Rule) action { return action{r.Effect, r.Points, r.IfUnknown} }

// alike reports whether two rules do the same when their conditions come out
// as given. A rule that is not there does nothing.
func alike(before *Rule, x Truth, after *Rule, y Truth) bool {
	if x == Fails && y == Fails {
		return true
	}
	if x != y || after == nil || before.Effect != after.Effect || before.Points != after.Points || !slices.Equal(before.For, after.For) {
		return false
	}
	return x == Holds || before.IfUnknown == after.IfUnknown
}

// cautions compares which warnings are shown, by name.
func (a *agreement) cautions() bool {
	b := a.wide.book
	for i, before := range b.Cautions {
		at := slices.IndexFunc(a.variant.Cautions, func(c *CautionNote) bool { return c.Name == before.Name })
		if at < 0 {
			if b.conditions[b.rulesAt+i] < 0 || !a.always(a.open(b, b.conditions[b.rulesAt+i]), &clause{op: constClause, is: Fails}, func(x, _ Truth) bool { return !shows(before, x) }) {
				return false
			}
			continue
		}
		after := a.variant.Cautions[at]
		if a.same(before.If, after.If) && before.IfUnknown == after.IfUnknown && slices.Equal(before.For, after.For) {
			continue
		}
		if before.If == "" || !a.caution(before, b.conditions[b.rulesAt+i], after, a.variant.conditions[a.variant.rulesAt+at]) {
			return false
		}
	}
	return true
}

func (a *agreement) caution(before *CautionNote, root int32, after *CautionNote, changed int32) bool {
	aimed := slices.Equal(before.For, after.For)
	return a.always(a.open(a.wide.book, root), a.open(a.variant, changed), func(x, y Truth) bool {
		return shows(before, x) == shows(after, y) && (aimed || !shows(before, x)) && (x == y || !shows(before, x))
	})
}

// shows reports whether a caution is shown when its condition comes out as given.
func shows(c *CautionNote, condition Truth) bool {
	return condition == Holds || condition == Unknown && c.IfUnknown == Hold
}
