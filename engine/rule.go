package engine

import (
	"math"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
)

// Effect is what a rule does to the methods it is for.
type Effect uint8

// The four effects.
const (
	RuleOut Effect = iota // the method cannot be used
	Demand                // allowed only if this is also done
	Lean                  // points for or against
	Caution               // a warning without effect on the choice
)

var effectNames = []string{"rule_out", "demand", "lean", "caution"}

// String returns the word that a rulebook uses.
func (e Effect) String() string { return effectNames[e] }

// IfUnknown says what a rule does while its condition is unknown.
type IfUnknown uint8

// The three answers to the unknown.
const (
	Open   IfUnknown = iota // the question stays open
	Silent                  // nothing, but it is listed as not checked
	Hold                    // the rule counts as holding
)

var ifUnknownNames = []string{"open", "silent", "holds"}

var trusts = []string{"strong", "usual", "opinion"}

// Rule is one statement: under this condition, this happens to these methods,
// because of this.
type Rule struct {
	Name      string
	For       []int // numbers of the methods, in their order
	Effect    Effect
	If        string
	Because   string
	Source    string
	Trust     string
	Points    float64
	IfUnknown IfUnknown
	File      string
	Line      int
	Of        string // title of the layer that has it
	layer     int
	because   template
	words     []string // of for:, as written
}

// outcome is what the rule counts as, given how its condition came out.
func (r *Rule) outcome(condition Truth) Truth {
	if condition == Unknown && r.IfUnknown == Hold {
		return Holds
	}
	return condition
}

// readRules decodes one file of rules.
func (l *loader) readRules(v *level, f *document.File) {
	if f == nil {
		return
	}
	for _, n := range f.List(f.Root) {
		fields, _ := f.Entry(n, ruleKeys)
		r := &Rule{File: f.Name, Line: n.Line, Of: v.Title, layer: v.number}
		r.For, r.words = l.methodSet(f, fields["for"])
		r.Name, _ = f.Text(fields["rule"])
		r.Because, _ = f.Text(fields["because"])
		r.Source, _ = l.sources(f, fields["source"])
		r.Trust, _ = f.Choice(fields["trust"], trusts...)
		l.readEffect(f, n, r, fields)
		if fields["if_unknown"] != nil {
			if word, ok := f.Choice(fields["if_unknown"], ifUnknownNames...); ok {
				r.IfUnknown = IfUnknown(slices.Index(ifUnknownNames, word))
			}
		}
		if r.Name != "" {
			l.claim(v, f, fields["rule"], "rule", r.Name)
		}
		if l.takenOut(v, r, fields["if"]) {
			continue
		}
		r.because = l.template(f, fields["because"], r.Because)
		// An incomplete rule is compiled all the same, so that every mistake in
		// it is heard at once.
		l.condition(f, fields["if"], &r.If)
		l.book.Rules = append(l.book.Rules, r)
	}
}

// readEffect decodes effect and the points that go with a lean.
func (l *loader) readEffect(f *document.File, n *yaml.Node, r *Rule, fields map[string]*yaml.Node) {
	word, ok := f.Choice(fields["effect"], effectNames...)
	if !ok {
		return
	}
	r.Effect = Effect(slices.Index(effectNames, word))
	switch points := fields["points"]; {
	case r.Effect != Lean && points != nil:
		f.Report(points, "leave points: out, or write effect: lean", "a %s has no points", word)
	case r.Effect == Lean && points == nil:
		f.Report(n, "add points: 1", "a lean needs points")
	case points != nil:
		r.Points, _ = l.points(f, points)
	}
}

// mostPoints keeps a typing slip such as 2000 from deciding every advice.
const mostPoints = 50

// points decodes a number of points. Quarters add up exactly, whatever the order.
func (l *loader) points(f *document.File, n *yaml.Node) (float64, bool) {
	v, ok := f.Number(n)
	switch {
	case !ok:
		return 0, false
	case math.Abs(v) > mostPoints || v*4 != math.Trunc(v*4):
		f.Report(n, "write quarters between -50 and 50", "%s points cannot be counted", n.Value)
		return 0, false
	}
	return v, true
}

// sources decodes one source or a list of them into a line of text.
func (l *loader) sources(f *document.File, n *yaml.Node) (string, bool) {
	if n != nil && n.Kind == yaml.SequenceNode {
		words := f.Words(n)
		if len(n.Content) == 0 {
			f.Report(n, "name one, or write: common practice, no source", "the list of sources is empty")
		}
		return strings.Join(words, "; "), len(words) > 0
	}
	return f.Text(n)
}
