package engine

import (
	"math"
	"regexp"

	"boremend/engine/quantity"
)

// RuleTrace is how one rule came out, atom by atom.
type RuleTrace struct {
	Rule    string      `json:"rule"`
	Outcome string      `json:"outcome"`
	Effect  string      `json:"effect"`
	If      string      `json:"if"`
	For     []string    `json:"for"`
	Text    string      `json:"text"`
	Source  string      `json:"source"`
	Trust   string      `json:"trust"`
	Of      string      `json:"of"` // title of the layer whose rule it is
	File    string      `json:"file"`
	Line    int         `json:"line"`
	Atoms   []AtomTrace `json:"atoms"`
}

// AtomTrace is one comparison with the values in it. Margin is left minus
// right, where both are known numbers; Apart says the same in words.
type AtomTrace struct {
	Text    string   `json:"text"`
	Outcome string   `json:"outcome"`
	Left    Operand  `json:"left"`
	Right   Operand  `json:"right"`
	Margin  *float64 `json:"margin"`
	Apart   string   `json:"apart,omitempty"`
	// Replaced are the limits in it whose value an overlay has changed.
	Replaced []LimitReplaced `json:"replaced,omitempty"`
}

// Operand is one side of a comparison: as the rule writes it, its value (null
// while unknown) and how to show it.
type Operand struct {
	Text  string `json:"text"`
	Value any    `json:"value"`
	Unit  string `json:"unit"`
	Shown string `json:"shown"`
}

// FormulaTrace is how one worked-out fact was found.
type FormulaTrace struct {
	Fact    string `json:"fact"`
	Means   string `json:"means"`
	Formula string `json:"formula"`
	Numbers string `json:"numbers"`
	Value   any    `json:"value"` // null while unknown
	Unit    string `json:"unit"`
	Shown   string `json:"shown"`
	Assumed bool   `json:"assumed"`
	// Replaced are the limits in it whose value an overlay has changed.
	Replaced []LimitReplaced `json:"replaced,omitempty"`
	Of       string          `json:"of"` // title of the layer whose formula it is
	Atoms    []AtomTrace     `json:"atoms,omitempty"`
}

// Explain is Advise with the whole trace.
func (b *Rulebook) Explain(bore string, found Findings, units quantity.System) Advice {
	a := b.Advise(bore, found, units)
	s := b.NewState()
	s.Load(found)
	for i, r := range b.Rules {
		a.Trace = append(a.Trace, s.traceRule(i, r, units))
	}
	for slot, f := range b.Facts {
		if st := &b.steps[slot]; !s.given[slot] && (st.from.given() || st.assume.given()) {
			a.WorkedOut = append(a.WorkedOut, s.traceStep(slot, f, st, units))
		}
	}
	return a
}

func (s *State) traceRule(i int, r *Rule, units quantity.System) RuleTrace {
	t := RuleTrace{Rule: r.Name, Outcome: s.conditions[i].String(), Effect: r.Effect.String(), If: r.If, Text: r.because.fill(s, units),
		Source: r.Source, Trust: r.Trust, Of: r.Of, File: r.File, Line: r.Line, Atoms: []AtomTrace{}}
	for _, m := range r.For {
		t.For = append(t.For, s.book.Methods[m].Name)
	}
	for _, a := range s.book.readers[i] {
		t.Atoms = append(t.Atoms, s.traceAtom(a, units))
	}
	return t
}

// Step is one comparison as it came out. A side that is unknown, or is a word,
// is not a number.
type Step struct {
	Outcome     Truth
	Left, Right float64
}

// Steps appends how every comparison came out to a buffer, which may be used
// again and again: with the outcomes of the rules this is the whole trace, from
// which the readable one is written.
func (s *State) Steps(buffer []Step) []Step {
	for i := range s.book.atoms {
		left, right := s.sides(&s.book.atoms[i])
		buffer = append(buffer, Step{s.atoms[i], left, right})
	}
	return buffer
}

// sides finds both sides of a comparison of numbers.
func (s *State) sides(a *atom) (left, right float64) {
	switch a.shape {
	case againstConstant:
		return s.numberAt(a.left), a.constant
	case againstFact:
		return s.numberAt(a.left), s.numberAt(a.right)
	case general:
		return orNaN(a.leftOf.number(s)), orNaN(a.rightOf.number(s))
	}
	return math.NaN(), math.NaN()
}

func (s *State) numberAt(slot int32) float64 { return orNaN(s.number[slot], s.known[slot]) }

func orNaN(v float64, known bool) float64 {
	if !known {
		return math.NaN()
	}
	return v
}

func (s *State) traceAtom(number int32, units quantity.System) AtomTrace {
	a, outcome := &s.book.atoms[number], s.atoms[number]
	t := AtomTrace{Text: a.text, Outcome: outcome.String(), Left: Operand{Text: a.leftText}, Right: Operand{Text: a.rightText}, Replaced: s.book.replacedIn(a.text, units)}
	if a.shape == flag || a.shape == member {
		t.Left = s.operand(a.left, units)
		t.Right.Value, t.Right.Shown = a.rightText, a.rightText
		return t
	}
	left, right := s.sides(a)
	t.Left, t.Right = numberOperand(a.leftText, left, a.kind, units), numberOperand(a.rightText, right, a.kind, units)
	if margin := left - right; !math.IsNaN(margin) {
		t.Margin, t.Apart = &margin, apart(margin, a.kind, units)
	}
	return t
}

// apart says how far the left side lies from the right.
func apart(margin float64, kind quantity.Kind, units quantity.System) string {
	kind = kind.Difference()
	side := "over"
	switch {
	case margin == 0:
		return "equal"
	case margin < 0:
		margin, side = -margin, "under"
	}
	return quantity.Quantity{Value: margin, Kind: kind}.Format(units) + " " + side
}

func (s *State) operand(slot int32, units quantity.System) Operand {
	f := s.book.Facts[slot]
	o := Operand{Text: f.Name, Shown: s.Show(int(slot), units)}
	if s.known[slot] {
		o.Value = f.PlainValue(s.number[slot])
	}
	return o
}

func numberOperand(text string, v float64, kind quantity.Kind, units quantity.System) Operand {
	o := Operand{Text: text, Unit: kind.Unit(), Shown: unknownWord}
	if !math.IsNaN(v) {
		o.Value, o.Shown = v, quantity.Quantity{Value: v, Kind: kind}.Format(units)
	}
	return o
}

func (s *State) traceStep(slot int, f *Fact, st *step, units quantity.System) FormulaTrace {
	formula := st.from
	if s.assumed[slot] {
		formula = st.assume
	}
	t := FormulaTrace{Fact: f.Name, Means: f.Means, Formula: formula.text, Numbers: s.withNumbers(formula.text, units),
		Shown: s.Show(slot, units), Assumed: s.assumed[slot], Replaced: s.book.replacedIn(formula.text, units), Of: f.Of}
	if f.Sort == Number {
		t.Unit = f.Kind.Unit()
	}
	if s.known[slot] {
		t.Value = f.PlainValue(s.number[slot])
	}
	for _, a := range st.needs.atoms {
		t.Atoms = append(t.Atoms, s.traceAtom(a, units))
	}
	return t
}

// withNumbers puts the values of facts and limits into a formula.
func (s *State) withNumbers(formula string, units quantity.System) string {
	return words.ReplaceAllStringFunc(formula, func(word string) string {
		if slot := s.book.Fact(word); slot >= 0 {
			if f := s.book.Facts[slot]; f.Sort == Choice && s.known[slot] {
				return `"` + s.word(int32(slot)) + `"`
			}
			return s.Show(slot, units)
		}
		for _, l := range s.book.Limits {
			if word == "limit."+l.Name {
				return l.Is.Format(units)
			}
		}
		return word
	})
}

// replacedIn lists the limits in a formula whose value an overlay has changed.
func (b *Rulebook) replacedIn(formula string, units quantity.System) []LimitReplaced {
	var found []LimitReplaced
	if len(b.Over) == 0 {
		return nil
	}
	named := words.FindAllString(formula, -1)
	for _, l := range b.Limits {
		if r, ok := l.Replaced(units); ok && contains(named, "limit."+l.Name) {
			found = append(found, r)
		}
	}
	return found
}

// words matches the names in a formula. Quoted words are matched with their
// quotes and functions with their bracket, so that both are left alone.
var words = regexp.MustCompile(`"[^"]*"|limit\.[a-z0-9_]+|[a-z][a-z0-9_]*\(?`)

// Because is the reason of a rule with the values of the state in it.
func (s *State) Because(rule int, units quantity.System) string {
	return s.book.Rules[rule].because.fill(s, units)
}
