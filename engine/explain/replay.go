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
	Methods   []Standings   `json:"methods"` // those that stand otherwise
	Turned    []RuleTurned  `json:"turned"`  // rules that play another part
	Demands   Exchanged     `json:"demands"` // on the advised method
	Cautions  Exchanged     `json:"cautions"`
	Worked    []FactTurned  `json:"follows"`   // facts that come out otherwise
	Strangers []string      `json:"strangers"` // methods that only one of the two knows
}

// Exchanged lists what came and what went.
type Exchanged struct {
	Added []Said `json:"added"`
	Gone  []Said `json:"gone"`
}

// Said is a rule or caution, and what it says.
type Said struct {
	Name string `json:"name"`
	Text string `json:"text"`
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
		Methods:  []Standings{}, Strangers: strangers(saved, now),
	}
	for _, pair := range standings(saved, now) {
		if out := engine.NoGo.String(); pair.Before != pair.After && (pair.Before.Verdict != out || pair.After.Verdict != out) {
			r.Methods = append(r.Methods, pair)
		}
	}
	r.Changed = !reflect.DeepEqual(saved.Chosen, now.Chosen) || r.Demands.any() || r.Cautions.any()
	return r, err
}

// alike compares two advices as they are written down. Where the folder of the
// rulebook lay when they were given does not count.
func alike(a, b engine.Advice) (bool, error) {
	one, err := json.Marshal(withoutFiles(a))
	if err != nil {
		return false, err
	}
	other, err := json.Marshal(withoutFiles(b))
	return bytes.Equal(one, other), err
}

func withoutFiles(a engine.Advice) engine.Advice {
	a.Methods = slices.Clone(a.Methods)
	for i := range a.Methods {
		reasons := slices.Clone(a.Methods[i].Reasons)
		for k := range reasons {
			reasons[k].File = ""
		}
		a.Methods[i].Reasons = reasons
	}
	return a
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

// demandsOf lists the demands on the advised method.
func demandsOf(a engine.Advice) []Said {
	var said []Said
	for _, m := range a.Methods {
		for _, r := range m.Reasons {
			if m.Method == a.Chosen.Method && r.Effect == engine.Demand.String() && r.Outcome == engine.Holds.String() {
				said = append(said, Said{r.Rule, r.Text})
			}
		}
	}
	return said
}

func cautionsOf(a engine.Advice) []Said {
	var said []Said
	for _, c := range a.Cautions {
		said = append(said, Said{c.Caution, c.Text})
	}
	return said
}

// exchanged lists what only one of two advices says, by name.
func exchanged(before, after []Said) Exchanged {
	return Exchanged{only(after, before), only(before, after)}
}

func only(in, other []Said) []Said {
	found := []Said{}
	for _, said := range in {
		if !slices.ContainsFunc(other, func(o Said) bool { return o.Name == said.Name }) {
			found = append(found, said)
		}
	}
	return found
}

// strangers names the methods that only one of two advices knows.
func strangers(a, b engine.Advice) []string {
	names := []string{}
	for _, pair := range [][2]engine.Advice{{a, b}, {b, a}} {
		for _, m := range pair[0].Methods {
			if !slices.ContainsFunc(pair[1].Methods, func(o engine.MethodStanding) bool { return o.Method == m.Method }) {
				names = append(names, m.Method)
			}
		}
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
