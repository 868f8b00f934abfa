package engine

import (
	"slices"

	"boremend/engine/quantity"
)

// Advice is the answer for one bore, with everything that is shown of it.
// Numbers are in canonical units, texts in the units of the reader.
type Advice struct {
	Bore       string               `json:"bore"`
	Chosen     Chosen               `json:"advice"`
	Methods    []MethodStanding     `json:"methods"`
	Cautions   []CautionShown       `json:"cautions"`
	Missing    []string             `json:"missing"`
	NotChecked []string             `json:"not_checked"`
	Facts      map[string]FactShown `json:"facts"`
	Trace      []RuleTrace          `json:"trace,omitempty"`
	WorkedOut  []FormulaTrace       `json:"worked_out,omitempty"`
	// What the study of an advice adds; absent where nothing tips or is open.
	Nearest *NearestTipping `json:"nearest_tipping,omitempty"`
	Next    *NextFact       `json:"next_fact,omitempty"`
}

// NearestTipping is the smallest change of one fact that changes the advice.
type NearestTipping struct {
	Fact   string   `json:"fact"`
	From   string   `json:"from_text"`
	To     string   `json:"to_text"`
	By     string   `json:"by_text"`
	Gives  *float64 `json:"give_or_takes"`
	Method string   `json:"method"`
	Title  string   `json:"title"`
}

// NextFact is what is worth finding out first.
type NextFact struct {
	Fact    string  `json:"fact"`
	Ask     string  `json:"ask"`
	Minutes float64 `json:"minutes"`
	Weak    bool    `json:"weak"` // known, but too loosely
}

// Chosen is the method advised. Lead and RunnerUp are absent when no other
// method stands.
type Chosen struct {
	Method      string   `json:"method"`
	Title       string   `json:"title"`
	Plain       string   `json:"plain"`
	Verdict     string   `json:"verdict"`
	Points      float64  `json:"points"`
	Lead        *float64 `json:"lead"`
	RunnerUp    *string  `json:"runner_up"`
	Tie         bool     `json:"tie"`
	Narrow      bool     `json:"narrow"`
	Provisional bool     `json:"provisional"`
	Touchy      []string `json:"touchy"`
	// ProvisionalUnsure: that it is not provisional could not be shown.
	ProvisionalUnsure bool `json:"provisional_unsure"`
	// TouchyTogether: the facts can do it only together, none alone.
	TouchyTogether bool `json:"touchy_together"`
	// TouchyUnsure: whether it is touchy could not be settled.
	TouchyUnsure bool `json:"touchy_unsure"`
}

// MethodStanding is where the rules leave a method.
type MethodStanding struct {
	Method  string     `json:"method"`
	Title   string     `json:"title"`
	Verdict string     `json:"verdict"`
	Points  [2]float64 `json:"points"` // least and most
	Known   float64    `json:"points_known"`
	Reasons []Reason   `json:"reasons"`
	Missing []string   `json:"missing"`
}

// WhyOut is the first reason that rules the method out, and empty where none does.
func (m MethodStanding) WhyOut() string {
	for _, r := range m.Reasons {
		if r.Effect == RuleOut.String() && r.Outcome == Holds.String() {
			return r.Text
		}
	}
	return ""
}

// Reason is what one rule says of a method.
type Reason struct {
	Rule    string  `json:"rule"`
	Effect  string  `json:"effect"`
	Outcome string  `json:"outcome"`
	Text    string  `json:"text"`
	Source  string  `json:"source"`
	Trust   string  `json:"trust"`
	Points  float64 `json:"points"`
	Of      string  `json:"of"` // title of the layer whose rule it is
	File    string  `json:"file"`
	Line    int     `json:"line"`
	// Replaced are the limits in its condition or text that an overlay has changed.
	Replaced []LimitReplaced `json:"replaced,omitempty"`
	// IfUnknown marks a rule that counts as holding because nobody knows.
	UntilKnown bool `json:"until_known,omitempty"`
}

// CautionShown is a warning that applies. SaidIf is set on one that depends on
// how the work is done and shows at its step.
type CautionShown struct {
	Caution    string   `json:"caution"`
	Danger     string   `json:"danger"`
	Text       string   `json:"text"`
	Refs       []string `json:"refs"`
	At         []string `json:"at"`
	Of         string   `json:"of"` // title of the layer that has it
	SaidIf     string   `json:"said_if,omitempty"`
	UntilKnown bool     `json:"until_known,omitempty"`
}

// FactShown is one known fact.
type FactShown struct {
	Value      any      `json:"value"`
	Unit       string   `json:"unit"`
	GiveOrTake float64  `json:"give_or_take"`
	From       Origin   `json:"from"`
	Text       string   `json:"text"`
	Assumes    []string `json:"assumes,omitempty"` // assumed facts that it rests on
}

// Advise evaluates the findings of one bore and explains the outcome.
func (b *Rulebook) Advise(bore string, found Findings, units quantity.System) Advice {
	s := b.NewState()
	s.Load(found)
	d := s.Decide()
	missing := s.Missing()
	a := Advice{
		Bore:     bore,
		Chosen:   s.chosen(d, missing, s.Touchy(found)),
		Missing:  b.names(missing.Facts),
		Facts:    s.facts(found, units),
		Cautions: s.cautions(d.Method, units),
	}
	for m := range b.Methods {
		a.Methods = append(a.Methods, s.standing(m, units))
	}
	slices.SortStableFunc(a.Methods, func(x, y MethodStanding) int { return b.rank(x, d) - b.rank(y, d) })
	a.NotChecked = s.notChecked()
	return a
}

// rank orders methods for showing: the advised one, then those that stand, the
// open ones and those ruled out, each by points.
func (b *Rulebook) rank(m MethodStanding, d Decision) int {
	const apart = 1000 // more than points in quarters can make up for
	rank := -int(m.Known * 4)
	switch {
	case b.Methods[d.Method].Name == m.Method:
	case m.Verdict == Go.String() || m.Verdict == Conditional.String():
		rank += apart
	case m.Verdict == Undecided.String():
		rank += 2 * apart
	default:
		rank += 3 * apart
	}
	return rank
}

func (s *State) chosen(d Decision, missing Missing, touchy Touchy) Chosen {
	method := s.book.Methods[d.Method]
	c := Chosen{
		Method: method.Name, Title: method.Title, Plain: method.Plain, Verdict: d.Verdict.String(), Points: d.Points,
		Narrow: d.Narrow, Tie: d.Tie, Provisional: missing.Provisional, ProvisionalUnsure: missing.Unsure, Touchy: s.book.names(touchy.Facts),
		TouchyTogether: touchy.Together, TouchyUnsure: touchy.Unsure,
	}
	if d.RunnerUp >= 0 {
		c.Lead, c.RunnerUp = &d.Lead, &s.book.Methods[d.RunnerUp].Name
	}
	return c
}

// standing collects what the rules say of one method.
func (s *State) standing(m int, units quantity.System) MethodStanding {
	t, method := s.tallies[m], s.book.Methods[m]
	out := MethodStanding{Method: method.Name, Title: method.Title, Verdict: t.verdict().String(),
		Points: [2]float64{t.least, t.most}, Known: t.known, Reasons: []Reason{}}
	missing := map[int]bool{}
	for i, r := range s.book.Rules {
		if r.Effect == Caution || !slices.Contains(r.For, m) {
			continue
		}
		outcome := s.conditions[i]
		if outcome == Fails || outcome == Unknown && r.IfUnknown == Silent {
			continue
		}
		out.Reasons = append(out.Reasons, s.reason(r, outcome, units))
		if outcome == Unknown && t.out == 0 && r.Effect != Demand {
			s.unknownUnder(i, missing)
		}
	}
	out.Missing = s.book.names(sortedKeys(missing))
	return out
}

func (s *State) reason(r *Rule, condition Truth, units quantity.System) Reason {
	return Reason{
		Rule: r.Name, Effect: r.Effect.String(), Outcome: r.outcome(condition).String(), Text: r.because.fill(s, units),
		Source: r.Source, Trust: r.Trust, Points: r.Points, Of: r.Of, File: r.File, Line: r.Line,
		UntilKnown: condition == Unknown && r.IfUnknown == Hold,
		Replaced:   s.book.replacedIn(r.If+" "+r.Because, units),
	}
}

// unknownUnder adds the asked facts that leave a condition unknown.
func (s *State) unknownUnder(condition int, missing map[int]bool) {
	s.unknownBehind(needs{atoms: s.book.readers[condition]}, missing)
}

// unknownBehind adds the asked facts that are unknown among what is needed, and
// behind the worked-out facts among it.
func (s *State) unknownBehind(n needs, missing map[int]bool) {
	seen := map[int32]bool{}
	var blame func(n needs)
	blame = func(n needs) {
		for _, slot := range n.slots {
			if s.known[slot] || seen[slot] {
				continue
			}
			seen[slot] = true
			if s.book.Facts[slot].WorkedOut() {
				blame(s.book.steps[slot].needs)
			} else {
				missing[int(slot)] = true
			}
		}
		for _, a := range n.atoms {
			if s.atoms[a] == Unknown {
				blame(s.book.atoms[a].needs)
			}
		}
	}
	blame(n)
}

// AskedBehind turns facts that are missing into those that somebody can find out: a
// worked-out fact into the unknown facts that it waits for. Names that are no facts
// are left out.
func (b *Rulebook) AskedBehind(found Findings, facts []string) []string {
	s := b.NewState()
	s.Load(found)
	missing := map[int]bool{}
	for _, name := range facts {
		if slot := b.Fact(name); slot >= 0 {
			s.unknownBehind(needs{slots: []int32{int32(slot)}}, missing)
		}
	}
	return b.names(sortedKeys(missing))
}

func sortedKeys(set map[int]bool) []int {
	keys := make([]int, 0, len(set))
	for k := range set {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

// cautions collects the warnings that apply to a method, the gravest first:
// from cautions.yaml and from rules whose effect is a caution.
func (s *State) cautions(method int, units quantity.System) []CautionShown {
	shown := []CautionShown{}
	for i, c := range s.book.Cautions {
		if !s.warns(i, method) {
			continue
		}
		root := s.book.rulesAt + i
		out := CautionShown{Caution: c.Name, Danger: c.Danger, Text: c.Text, At: c.At, Of: c.Of, SaidIf: c.SaidIf,
			UntilKnown: s.book.conditions[root] >= 0 && s.conditions[root] == Unknown}
		for _, r := range c.Refs {
			out.Refs = append(out.Refs, r.String())
		}
		shown = append(shown, out)
	}
	for i, r := range s.book.Rules {
		if s.ruleWarns(i, method) {
			shown = append(shown, CautionShown{Caution: r.Name, Danger: dangers[1], Text: r.because.fill(s, units), Refs: []string{r.Source}, At: []string{}, Of: r.Of})
		}
	}
	slices.SortStableFunc(shown, func(a, b CautionShown) int {
		return slices.Index(dangers, a.Danger) - slices.Index(dangers, b.Danger)
	})
	return shown
}

// CautionsFor lists the warnings that apply to a method, advised or not.
func (b *Rulebook) CautionsFor(found Findings, method string, units quantity.System) []CautionShown {
	s := b.NewState()
	s.Load(found)
	return s.cautions(b.Method(method), units)
}

// notChecked names the silent rules whose condition nobody could settle.
func (s *State) notChecked() []string {
	names := []string{}
	for i, r := range s.book.Rules {
		if s.NotChecked(i) {
			names = append(names, r.Name)
		}
	}
	return names
}

// facts collects everything known.
func (s *State) facts(found Findings, units quantity.System) map[string]FactShown {
	byFact := map[int]Finding{}
	for _, f := range found {
		byFact[f.Fact] = f
	}
	shown := map[string]FactShown{}
	for slot, f := range s.book.Facts {
		if !s.known[slot] {
			continue
		}
		out := FactShown{Value: f.PlainValue(s.number[slot]), Text: s.Show(slot, units), From: WorkedOut}
		if f.Sort == Number {
			out.Unit = f.Kind.Unit()
		}
		finding, given := byFact[slot]
		switch {
		case given:
			out.From, out.GiveOrTake = finding.Origin, finding.GiveOrTake
		case s.assumed[slot]:
			out.From = Assumed
		default:
			out.Assumes = s.book.names(s.assumptions(slot))
		}
		shown[f.Name] = out
	}
	return shown
}

// PlainValue is a value of the fact as JSON writes it: a number, a word, or yes or no.
func (f *Fact) PlainValue(v float64) any {
	switch f.Sort {
	case Choice:
		return f.Choices[int(v)]
	case YesNo:
		return map[bool]string{true: "yes", false: "no"}[v != 0]
	}
	return v
}

// assumptions lists the assumed facts on which a worked-out fact rests.
func (s *State) assumptions(slot int) []int {
	found, seen := map[int]bool{}, map[int32]bool{}
	var visit func(n needs)
	visit = func(n needs) {
		for _, need := range n.slots {
			if seen[need] {
				continue
			}
			seen[need] = true
			if s.assumed[need] {
				found[int(need)] = true
			}
			if !s.given[need] {
				visit(s.book.steps[need].needs)
			}
		}
		for _, a := range n.atoms {
			visit(s.book.atoms[a].needs)
		}
	}
	visit(s.book.steps[slot].needs)
	return sortedKeys(found)
}

// names turns fact numbers into names; the result is never nil, so that JSON
// shows an empty list.
func (b *Rulebook) names(slots []int) []string {
	names := make([]string, len(slots))
	for i, slot := range slots {
		names[i] = b.Facts[slot].Name
	}
	return names
}
