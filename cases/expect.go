package cases

import (
	"slices"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
)

// Expect is the advice that a careful hand expects for a bore. A method that
// is not named may have any verdict.
type Expect struct {
	Advice      []string // any one of these is advised
	MayStand    []string // may come second; nothing is checked
	NoGo        []string // ruled out, or open where a fact is missing
	NotAdvised  []string // may stand, never first
	Provisional *bool
	Narrow      *bool    // true: narrow or touchy is said; false: the lead is not narrow
	Cautions    []string // must be shown
	NoCautions  []string // must not be shown
	Holds       []string // rules that hold
	Fails       []string // rules that fail
	LeftOpen    []string // rules that are unknown and leave the question open
	UntilKnown  []string // rules that are unknown and count as holding until it is known
	NotChecked  []string // rules that are unknown and passed over, listed as not checked
	// What the rules say of single methods and facts.
	Verdicts   []MethodVerdict
	Points     []MethodPoints
	Leans      []MethodLeans
	RuledOutBy []MethodRules // these rules rule the method out, perhaps with others
	Demands    []MethodRules // these demands are in force, perhaps with others
	WorkedOut  []FactValue
}

// MethodVerdict is the verdict expected of a method.
type MethodVerdict struct{ Method, Verdict string }

// MethodRules are the rules expected to speak of a method in one way.
type MethodRules struct {
	Method string
	Rules  []string
}

// MethodLeans are the rules expected to lean a method, each with its points.
type MethodLeans struct {
	Method string
	Rules  []RulePoints
}

// RulePoints is a rule with the points that it gives.
type RulePoints struct {
	Rule   string
	Points float64
}

var verdicts = []string{engine.Go.String(), engine.Conditional.String(), engine.NoGo.String(), engine.Undecided.String()}

func (r *reader) expect(n *yaml.Node) *Expect {
	fields, _ := r.Entry(n, expectKeys)
	methods := r.book.MethodNames()
	rules, cautions := expectable(r.book)
	e := &Expect{
		Advice: r.known(fields["advice"], methods), MayStand: r.known(fields["may_stand"], methods),
		NoGo: r.known(fields["no_go"], methods), NotAdvised: r.known(fields["not_advised"], methods),
		Cautions: r.known(fields["cautions"], cautions), NoCautions: r.known(fields["no_cautions"], cautions),
		Holds: r.known(fields["holds"], rules), Fails: r.known(fields["fails"], rules),
		LeftOpen: r.known(fields["left_open"], rules), UntilKnown: r.known(fields["until_known"], rules), NotChecked: r.known(fields["not_checked"], rules),
		RuledOutBy: r.methodRules(fields["ruled_out_by"], rules), Demands: r.methodRules(fields["demands"], rules),
		Points: r.methodPoints(fields["points"]), Leans: r.methodLeans(fields["leans"], rules), WorkedOut: r.factValues(fields["worked_out"]),
	}
	for method, value := range r.byMethod(fields["verdicts"]) {
		if word, ok := r.Choice(value, verdicts...); ok {
			e.Verdicts = append(e.Verdicts, MethodVerdict{method, word})
		}
	}
	for key, into := range map[string]**bool{"provisional": &e.Provisional, "narrow": &e.Narrow} {
		if fields[key] != nil {
			if v, ok := r.YesNo(fields[key]); ok {
				*into = &v
			}
		}
	}
	return e
}

// expectable lists the rules and cautions of which something can be expected:
// those switched off as well, because a case of the rulebook below may name them.
func expectable(book *engine.Rulebook) (rules, cautions []string) {
	rules, cautions = book.RuleNames(), book.CautionNames()
	for _, off := range book.Off {
		rules, cautions = append(rules, off.Rule), append(cautions, off.Rule)
	}
	return rules, cautions
}

// known reads a list of names that the rulebook has.
func (r *reader) known(n *yaml.Node, valid []string) []string {
	words := r.Words(n)
	for i, word := range words {
		if !slices.Contains(valid, word) && i < len(n.Content) {
			r.Report(n.Content[i], document.DidYouMean(word, valid), "the rulebook has no %q", word)
		}
	}
	return words
}

// byMethod iterates over what is expected of methods, by their names.
func (r *reader) byMethod(n *yaml.Node) func(yield func(method string, value *yaml.Node) bool) {
	return func(yield func(string, *yaml.Node) bool) {
		for key, value := range r.Pairs(n) {
			if r.book.Method(key.Value) < 0 {
				r.Report(key, document.DidYouMean(key.Value, r.book.MethodNames()), "the rulebook has no method %q", key.Value)
				continue
			}
			if !yield(key.Value, value) {
				return
			}
		}
	}
}

func (r *reader) methodRules(n *yaml.Node, rules []string) (list []MethodRules) {
	for method, value := range r.byMethod(n) {
		list = append(list, MethodRules{method, r.known(value, rules)})
	}
	return list
}

// Names lists the rules and cautions that the expectation speaks of.
func (e *Expect) Names() []string {
	names := slices.Concat(e.Holds, e.Fails, e.LeftOpen, e.UntilKnown, e.NotChecked, e.Cautions, e.NoCautions)
	for _, list := range [][]MethodRules{e.RuledOutBy, e.Demands} {
		for _, m := range list {
			names = append(names, m.Rules...)
		}
	}
	for _, m := range e.Leans {
		for _, lean := range m.Rules {
			names = append(names, lean.Rule)
		}
	}
	return names
}

// Check says what differs from the expectation at a bore with these findings.
func (e *Expect) Check(book *engine.Rulebook, found engine.Findings) []string {
	s := book.NewState()
	s.Load(found)
	c := &check{s: s, decided: s.Decide()}
	c.state(e)
	if e.Provisional != nil {
		if provisional := s.Missing().Provisional; *e.Provisional != provisional {
			c.differ("provisional is %t, expected %t", provisional, *e.Provisional)
		}
	}
	if e.Narrow != nil && *e.Narrow && !c.decided.Narrow && len(s.Touchy(found).Facts) == 0 {
		c.differ("neither narrow nor touchy is said, expected one of them")
	}
	return c.wrong
}

// Wrong says what differs from the expectation in a state, as far as a state
// tells: whether an advice is provisional or touchy takes a search, and is left
// out. Where Wrong finds something, so does Check.
func (e *Expect) Wrong(s *engine.State) []string {
	c := &check{s: s, decided: s.Decide()}
	c.state(e)
	return c.wrong
}
