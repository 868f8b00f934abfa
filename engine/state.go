package engine

import (
	"slices"
	"strings"

	"boremend/engine/quantity"
)

// State is one bore under evaluation: the facts as they stand, the outcome of
// every atom and condition, and where that leaves each method. It may be
// changed fact by fact; it serves one goroutine.
type State struct {
	book       *Rulebook
	given      []bool // by slot: found out, not worked out or assumed
	number     []float64
	known      []bool
	assumed    []bool
	atoms      []Truth
	conditions []Truth
	tallies    []tally
	scratch    []Argument
}

// NewState returns a state in which every asked fact is unknown.
func (b *Rulebook) NewState() *State {
	s := &State{
		book:  b,
		given: make([]bool, len(b.Facts)), number: make([]float64, len(b.Facts)),
		known: make([]bool, len(b.Facts)), assumed: make([]bool, len(b.Facts)),
		atoms: make([]Truth, len(b.atoms)), conditions: make([]Truth, len(b.conditions)),
		tallies: make([]tally, len(b.Methods)), scratch: make([]Argument, b.scratch),
	}
	s.Evaluate()
	return s
}

// Load replaces all facts by the findings and evaluates everything.
func (s *State) Load(found Findings) {
	clear(s.given)
	clear(s.known)
	clear(s.assumed)
	for _, f := range found {
		s.given[f.Fact], s.known[f.Fact], s.number[f.Fact] = true, true, f.Value
	}
	s.Evaluate()
}

// Evaluate works everything out from the given facts.
func (s *State) Evaluate() {
	for _, it := range s.book.tape {
		s.do(it)
	}
	for m, method := range s.book.Methods {
		s.tallies[m] = tally{known: method.Start, least: method.Start, most: method.Start}
	}
	for i, root := range s.book.conditions {
		if root < 0 {
			continue
		}
		s.conditions[i] = s.fold(root)
		if i < s.book.rulesAt {
			s.count(s.book.Rules[i], s.conditions[i], 1)
		}
	}
}

// Set changes one given fact and works out what follows from it.
func (s *State) Set(slot int, value float64) {
	s.given[slot], s.known[slot], s.assumed[slot], s.number[slot] = true, true, false, value
	s.follow(slot)
}

// Unset makes one asked fact unknown and works out what follows.
func (s *State) Unset(slot int) {
	s.given[slot], s.known[slot], s.assumed[slot] = false, false, false
	s.follow(slot)
}

func (s *State) follow(slot int) {
	imp := &s.book.impacts[slot]
	for _, it := range imp.tape {
		s.do(it)
	}
	for _, i := range imp.conditions {
		before, after := s.conditions[i], s.fold(s.book.conditions[i])
		if before == after {
			continue
		}
		s.conditions[i] = after
		if int(i) < s.book.rulesAt {
			s.count(s.book.Rules[i], before, -1)
			s.count(s.book.Rules[i], after, 1)
		}
	}
}

// do carries out one entry of the tape.
func (s *State) do(it item) {
	if !it.isStep {
		s.atoms[it.index] = s.test(&s.book.atoms[it.index])
		return
	}
	if s.given[it.index] {
		return
	}
	st := &s.book.steps[it.index]
	v, ok := s.value(st, st.from)
	s.assumed[it.index] = false
	if !ok {
		v, ok = s.value(st, st.assume)
		s.assumed[it.index] = ok
	}
	s.number[it.index], s.known[it.index] = v, ok
}

// value works out a formula of a step.
func (s *State) value(st *step, v valueOf) (float64, bool) {
	switch {
	case v.number != nil:
		return v.number(s)
	case v.root < 0:
		return 0, false
	}
	switch s.fold(v.root) {
	case Holds:
		return 1, true
	case Fails:
		return 0, true
	}
	return 0, false
}

// Value returns a fact's number; false means that it is unknown.
func (s *State) Value(slot int) (float64, bool) { return s.number[slot], s.known[slot] }

// Assumed reports whether the value of a fact is its assumption.
func (s *State) Assumed(slot int) bool { return s.assumed[slot] }

// word is the choice that a choice fact holds.
func (s *State) word(slot int32) string { return s.book.Facts[slot].Choices[int(s.number[slot])] }

// Show writes a fact for people.
func (s *State) Show(slot int, units quantity.System) string {
	if !s.known[slot] {
		return unknownWord
	}
	return s.book.Facts[slot].Show(s.number[slot], units)
}

// Show writes a value of the fact for people.
func (f *Fact) Show(value float64, units quantity.System) string {
	switch f.Sort {
	case Choice:
		return strings.ReplaceAll(f.Choices[int(value)], "_", " ")
	case YesNo:
		if value != 0 {
			return "yes"
		}
		return "no"
	}
	return quantity.Quantity{Value: value, Kind: f.Kind}.Format(units)
}

// Outcome returns how the condition of a rule came out, before what the rule
// does while it is unknown.
func (s *State) Outcome(rule int) Truth { return s.conditions[rule] }

// Verdict returns where a method stands, and its points from what is known.
func (s *State) Verdict(method int) (Verdict, float64) {
	return s.tallies[method].verdict(), s.tallies[method].known
}

// Counts reports whether a rule counts as holding, given what it does while its
// condition is unknown.
func (s *State) Counts(rule int) bool {
	return s.book.Rules[rule].outcome(s.conditions[rule]) == Holds
}

// Points returns the least and most points that a method may have, with every
// open lean against it or for it.
func (s *State) Points(method int) (least, most float64) {
	return s.tallies[method].least, s.tallies[method].most
}

// Book returns the rulebook by which the state is evaluated.
func (s *State) Book() *Rulebook { return s.book }

// InForce reports whether a rule is for a method, and holds or counts as holding.
func (s *State) InForce(rule, method int) bool {
	r := s.book.Rules[rule]
	return r.outcome(s.conditions[rule]) == Holds && slices.Contains(r.For, method)
}

// NotChecked reports whether a rule is passed over because nobody knows what it
// asks.
func (s *State) NotChecked(rule int) bool {
	return s.book.Rules[rule].IfUnknown == Silent && s.conditions[rule] == Unknown
}

// Warns reports whether a caution is shown with a method: one of cautions.yaml,
// or a rule whose effect is one.
func (s *State) Warns(name string, method int) bool {
	for i, c := range s.book.Cautions {
		if c.Name == name {
			return s.warns(i, method)
		}
	}
	i := s.book.Rule(name)
	return i >= 0 && s.ruleWarns(i, method)
}

func (s *State) warns(caution, method int) bool {
	c, condition := s.book.Cautions[caution], Holds
	if at := s.book.rulesAt + caution; s.book.conditions[at] >= 0 {
		condition = s.conditions[at]
	}
	return shows(c, condition) && slices.Contains(c.For, method)
}

func (s *State) ruleWarns(rule, method int) bool {
	r := s.book.Rules[rule]
	return r.Effect == Caution && r.outcome(s.conditions[rule]) == Holds && slices.Contains(r.For, method)
}
