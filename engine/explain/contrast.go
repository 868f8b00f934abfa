package explain

import (
	"slices"

	"boremend/engine"
)

// Contrast says why one method and not another.
type Contrast struct {
	Bore  string `json:"bore"`
	Why   string `json:"why"`
	Not   string `json:"not"`
	Title struct {
		Why string `json:"why"`
		Not string `json:"not"`
	} `json:"titles"`
	Advised string `json:"advised"` // the method that is advised
	// Differences are the rules that part the two: first those that rule one of
	// them out or leave it open, then the leans, the weightiest first.
	Differences []Difference `json:"differences"`
	// Sufficient is a set of facts that forces the advice whatever all the
	// others are, none of which can be spared; null if no set does.
	Sufficient []FactNow `json:"sufficient"`
	Forced     bool      `json:"forced"`
	// Provided is a set that forces it as long as the facts in Unknown, which
	// nobody has found out, stay so; null where Sufficient does without.
	Provided []FactNow `json:"provided"`
	Unknown  []string  `json:"unknown"`
	// Toward are the smallest changes that let the other method win: of one
	// fact, or of two where one is not enough.
	Toward []Tipping `json:"toward"`
}

// Difference is a rule that does not treat both methods alike.
type Difference struct {
	Rule    string             `json:"rule"`
	Effect  string             `json:"effect"`
	Outcome string             `json:"outcome"`
	Method  string             `json:"method"` // the one that it speaks of
	Speaks  string             `json:"speaks"` // for, against or open
	Points  float64            `json:"points"`
	Text    string             `json:"text"`
	Source  string             `json:"source"`
	Atoms   []engine.AtomTrace `json:"atoms"`
}

// FactNow is one fact as it stands.
type FactNow struct {
	Fact  string `json:"fact"`
	Value any    `json:"value"`
	Unit  string `json:"unit"`
	Text  string `json:"text"`
}

// Contrast compares two methods. The advice is that of the same bore, with its
// whole trace.
func (q *Study) Contrast(advice engine.Advice, why, not int) Contrast {
	c := Contrast{Bore: advice.Bore, Why: q.book.Methods[why].Name, Not: q.book.Methods[not].Name,
		Advised: advice.Chosen.Method, Differences: differences(advice, q.book.Methods[why].Name, q.book.Methods[not].Name), Toward: []Tipping{}}
	c.Title.Why, c.Title.Not = q.book.Methods[why].Title, q.book.Methods[not].Title
	kept, unknown := q.sufficient()
	if c.Unknown = q.names(unknown); len(unknown) == 0 {
		c.Sufficient, c.Forced = q.factsNow(kept), true
	} else {
		c.Provided = q.factsNow(kept)
	}
	if c.Not == c.Advised {
		return c
	}
	if c.Toward = q.Toward(not); len(c.Toward) == 0 {
		c.Toward = q.PairsToward(not)
	}
	return c
}

// differences lists the reasons that only one of the two methods has.
func differences(a engine.Advice, why, not string) []Difference {
	list := []Difference{}
	for _, m := range a.Methods {
		if m.Method != why && m.Method != not {
			continue
		}
		for _, r := range m.Reasons {
			if r.Effect == "demand" || sharedBy(a, r.Rule, why, not) {
				continue
			}
			d := Difference{Rule: r.Rule, Effect: r.Effect, Outcome: r.Outcome, Method: m.Method, Points: r.Points, Text: r.Text, Source: r.Source}
			switch {
			case r.Outcome == "unknown":
				d.Speaks = "open"
			case r.Effect == "rule_out" || r.Points < 0:
				d.Speaks = "against"
			default:
				d.Speaks = "for"
			}
			d.Atoms = atomsOf(a, r.Rule)
			list = append(list, d)
		}
	}
	slices.SortStableFunc(list, func(a, b Difference) int { return a.order(not) - b.order(not) })
	return list
}

// order puts what bars a method first, the rejected one's own bars ahead of
// all; then the leans by weight. Points come in quarters.
func (d Difference) order(not string) int {
	const apart = 1000
	order := 2 * apart
	if d.Effect == "rule_out" {
		order = 0
	}
	if d.Speaks == "open" {
		order += apart
	}
	if d.Method != not {
		order++
	}
	return order - int(4*max(d.Points, -d.Points))*2
}

func sharedBy(a engine.Advice, rule, why, not string) bool {
	for _, t := range a.Trace {
		if t.Rule == rule {
			return slices.Contains(t.For, why) && slices.Contains(t.For, not)
		}
	}
	return false
}

func atomsOf(a engine.Advice, rule string) []engine.AtomTrace {
	for _, t := range a.Trace {
		if t.Rule == rule {
			return t.Atoms
		}
	}
	return []engine.AtomTrace{}
}

// effortForced bounds the search that shows a set of facts to be sufficient.
const effortForced = 150

// sufficient finds facts that force the advice, and unknown ones that must stay
// unknown for it. It starts from everything as it stands, which forces the
// advice, and lets go of one fact after the other as long as the rest still
// does: first of the unknown ones. What is left cannot lose one more fact and be
// shown to force it.
func (q *Study) sufficient() (kept engine.Findings, unknown []int) {
	s := q.book.NewState()
	kept = slices.Clone(q.found)
	for slot, f := range q.book.Facts {
		if _, given := q.finding(slot); !given && !f.WorkedOut() && q.book.Decides(slot) {
			unknown = append(unknown, slot)
		}
	}
	unknown = spare(unknown, func(fewer []int) bool { return s.Forces(kept, fewer, q.was.Method, effortForced) })
	kept = spare(kept, func(fewer engine.Findings) bool { return s.Forces(fewer, unknown, q.was.Method, effortForced) })
	return kept, unknown
}

// spare takes entries out as long as the rest is enough: halves and quarters
// first, since most have no part in it.
func spare[S ~[]E, E any](list S, enough func(S) bool) S {
	for size := len(list); size > 0; size /= 2 {
		for at := 0; at < len(list); {
			end := min(at+size, len(list))
			if fewer := slices.Delete(slices.Clone(list), at, end); enough(fewer) {
				list = fewer
				continue
			}
			at = end
		}
	}
	return list
}

func (q *Study) factsNow(kept engine.Findings) []FactNow {
	facts := []FactNow{}
	for _, f := range kept {
		fact := q.book.Facts[f.Fact]
		facts = append(facts, FactNow{fact.Name, fact.PlainValue(f.Value), fact.Unit(), fact.Show(f.Value, q.units)})
	}
	return facts
}
