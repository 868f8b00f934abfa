package explain

import (
	"bytes"
	"encoding/json"
	"reflect"
	"slices"

	"boremend/engine"
	"boremend/engine/quantity"
)

// Replay is a saved advice beside the one that its facts lead to now.
type Replay struct {
	Bore      string        `json:"bore"`
	Same      bool          `json:"same"`    // to the letter
	Changed   bool          `json:"changed"` // another method, or this one on other terms
	Before    engine.Chosen `json:"before"`
	After     engine.Chosen `json:"after"`
	Methods   []Standings   `json:"methods"`   // those that stand otherwise
	Turned    []RuleTurned  `json:"turned"`    // rules that play another part
	Demands   Exchanged     `json:"demands"`   // of the advised method
	Cautions  Exchanged     `json:"cautions"`  // by name
	Worked    []FactTurned  `json:"follows"`   // facts that come out otherwise
	Strangers []string      `json:"strangers"` // methods that only one of the two knows
}

// Exchanged lists what came and what went.
type Exchanged struct {
	Added []string `json:"added"`
	Gone  []string `json:"gone"`
}

// any reports whether something came or went.
func (e Exchanged) any() bool { return len(e.Added)+len(e.Gone) > 0 }

// absent is how a rule comes out that says nothing in an advice.
const absent = "absent"

// Again advises on the findings of a saved advice and compares. A saved trace is
// not compared, since it follows from the rest.
func Again(book *engine.Rulebook, saved engine.Advice, found engine.Findings, units quantity.System) (Replay, error) {
	now := Advise(book, saved.Bore, found, units)
	if saved.Trace != nil || saved.WorkedOut != nil { // written by explain
		now.Nearest, now.Next = nil, nil
		saved.Trace, saved.WorkedOut = nil, nil
	}
	same, err := alike(saved, now)
	r := Replay{
		Bore: saved.Bore, Same: same, Before: saved.Chosen, After: now.Chosen,
		Turned:   partsTurned(saved, now),
		Demands:  exchanged(demandsOf(saved), demandsOf(now)),
		Cautions: exchanged(cautionsOf(saved), cautionsOf(now)),
		Worked:   followed(book, saved, now),
		Methods:  []Standings{}, Strangers: exclusive(saved, now),
	}
	for _, pair := range standings(saved, now) {
		if pair.Before != pair.After {
			r.Methods = append(r.Methods, pair)
		}
	}
	r.Changed = !reflect.DeepEqual(saved.Chosen, now.Chosen) || r.Demands.any() || r.Cautions.any()
	return r, err
}

// alike compares two advices as they are written down.
func alike(a, b engine.Advice) (bool, error) {
	one, err := json.Marshal(a)
	if err != nil {
		return false, err
	}
	other, err := json.Marshal(b)
	return bytes.Equal(one, other), err
}

// part is what a rule says in an advice.
type part struct {
	outcome string
	reason  engine.Reason
	methods []string
}

// partsOf gathers the rules that have a say, in the order of the methods.
func partsOf(a engine.Advice) (order []string, parts map[string]*part) {
	parts = map[string]*part{}
	for _, m := range a.Methods {
		for _, r := range m.Reasons {
			if parts[r.Rule] == nil {
				parts[r.Rule] = &part{outcome: r.Outcome, reason: r}
				order = append(order, r.Rule)
			}
			parts[r.Rule].methods = append(parts[r.Rule].methods, m.Method)
		}
	}
	return order, parts
}

// partsTurned lists the rules that play another part: those that had one, and
// then those that have one only now.
func partsTurned(before, after engine.Advice) []RuleTurned {
	turned := []RuleTurned{}
	was, had := partsOf(before)
	is, has := partsOf(after)
	for _, name := range was {
		switch old, now := had[name], has[name]; {
		case now == nil:
			turned = append(turned, RuleTurned{name, old.reason.Effect, old.methods, old.outcome, absent, old.reason.Text})
		case old.outcome != now.outcome || old.reason.Effect != now.reason.Effect || old.reason.Points != now.reason.Points:
			turned = append(turned, RuleTurned{name, now.reason.Effect, now.methods, old.outcome, now.outcome, now.reason.Text})
		}
	}
	for _, name := range is {
		if now := has[name]; had[name] == nil {
			turned = append(turned, RuleTurned{name, now.reason.Effect, now.methods, absent, now.outcome, now.reason.Text})
		}
	}
	return turned
}

// demandsOf names the demands on the advised method.
func demandsOf(a engine.Advice) []string {
	var names []string
	for _, m := range a.Methods {
		for _, r := range m.Reasons {
			if m.Method == a.Chosen.Method && r.Effect == engine.Demand.String() && r.Outcome == engine.Holds.String() {
				names = append(names, r.Rule)
			}
		}
	}
	return names
}

func cautionsOf(a engine.Advice) []string {
	var names []string
	for _, c := range a.Cautions {
		names = append(names, c.Caution)
	}
	return names
}

// exchanged lists the words that only one of two lists has.
func exchanged(before, after []string) Exchanged {
	return Exchanged{only(after, before), only(before, after)}
}

func only(in, other []string) []string {
	found := []string{}
	for _, word := range in {
		if !slices.Contains(other, word) {
			found = append(found, word)
		}
	}
	return found
}

// exclusive names the methods that only one of two advices knows.
func exclusive(a, b engine.Advice) []string {
	e := exchanged(methodsOf(a), methodsOf(b))
	return append(e.Added, e.Gone...)
}

func methodsOf(a engine.Advice) []string {
	var names []string
	for _, m := range a.Methods {
		names = append(names, m.Method)
	}
	return names
}

// followed lists the facts that come out otherwise.
func followed(book *engine.Rulebook, before, after engine.Advice) []FactTurned {
	turned := []FactTurned{}
	for _, f := range book.Facts {
		was, is := before.Facts[f.Name], after.Facts[f.Name]
		if !reflect.DeepEqual(was.Value, is.Value) {
			turned = append(turned, FactTurned{f.Name, was.Value, is.Value, f.Unit(), shown(was), shown(is)})
		}
	}
	return turned
}
