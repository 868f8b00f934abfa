package engine

import (
	"math"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
	"boremend/engine/quantity"
)

// Sort says what kind of answer a fact has.
type Sort uint8

// The three sorts of fact.
const (
	Number Sort = iota // a quantity of Fact.Kind
	Choice             // one word of Fact.Choices
	YesNo
)

// Change says what somebody at the bore can do about a fact.
type Change string

// The three answers.
const (
	OnSite  Change = "on_site" // it can be made otherwise on site
	Measure Change = "measure" // it can only be measured again
	Fixed   Change = "fixed"   // it is as it is
)

var changeNames = []string{string(OnSite), string(Measure), string(Fixed)}

// The kinds of a fact that is not a number, and the give-or-take of a choice
// whose words have an order.
const (
	choiceKind = "choice"
	yesNoKind  = "yes_no"
	oneClass   = "one class"
)

// Fact declares one thing that can be known about a bore. An asked fact is
// found out by a person; a worked-out one has a formula in From.
type Fact struct {
	Name      string
	Means     string
	Sort      Sort
	Kind      quantity.Kind // of a Number
	Choices   []string      // of a Choice
	Low, High float64       // range of an asked Number, in the canonical unit
	Ranged    bool
	Ask       string
	How       string
	Tool      string
	IfGuessed string
	Tier      int
	Minutes   float64
	Slack     Slack  // usual give-or-take
	Change    Change // what can be done about it
	From      string // formula of a worked-out fact
	Assume    string // formula taken while the fact is unknown
	AtLeast   string // the fact may not be less than this, where both are known
	File      string
	Line      int
	Of        string // title of the layer that says how it is worked out
}

// Slack is a fact's give-or-take: an amount, a share of the value, or one class
// of an ordered list of choices.
type Slack struct {
	Amount   float64
	Share    bool
	OneClass bool
}

// WorkedOut reports whether the fact follows from others and is never asked.
func (f *Fact) WorkedOut() bool { return f.From != "" }

// Unit is the canonical unit of a number, and empty for words.
func (f *Fact) Unit() string {
	if f.Sort != Number {
		return ""
	}
	return f.Kind.Unit()
}

// GiveOrTake is the usual give-or-take at a value, in the canonical unit.
func (f *Fact) GiveOrTake(value float64) float64 {
	if f.Slack.Share {
		return f.Slack.Amount * max(value, -value)
	}
	return f.Slack.Amount
}

// readFacts decodes facts.yaml.
func (l *loader) readFacts(v *level, f *document.File) {
	if f == nil {
		return
	}
	for _, n := range f.List(f.Root) {
		if name, declared := l.below(v, "fact", n); declared {
			l.replaceFormula(v, f, n, name)
			continue
		}
		fields := f.Fields(n, append(factKeys.Names(), "was")...)
		if l.replacesNothing(v, f, n, "fact", fields) {
			continue
		}
		f.Require(n, fields, factKeys.Needed()...)
		fact := &Fact{File: f.Name, Line: n.Line, Of: v.Title}
		fact.Name, _ = f.Text(fields["fact"])
		fact.Means, _ = f.Text(fields["means"])
		if fact.Name == "" || !l.claim(v, f, fields["fact"], "fact", fact.Name) {
			continue
		}
		if !l.readSort(f, n, fact, fields) {
			l.broken[fact.Name] = true
			continue
		}
		l.readAsking(f, fact, fields)
		l.later(f, fields["from"], &fact.From)
		l.later(f, fields["assume"], &fact.Assume)
		l.later(f, fields["at_least"], &fact.AtLeast)
		if fact.WorkedOut() && fields["ask"] != nil {
			f.Report(fields["ask"], "leave out ask: or from:", "%s is worked out and cannot be asked for as well", fact.Name)
		}
		l.slots[fact.Name] = len(l.book.Facts)
		l.book.Facts = append(l.book.Facts, fact)
		l.formulaNodes[fact] = formulaNodes{written{f, fields["from"]}, written{f, fields["assume"]}, written{f, fields["at_least"]}}
	}
}

// replaceFormula decodes an entry of an overlay that names a fact of a lower
// layer: a worked-out fact may be worked out in another way, and nothing else
// of it changes.
func (l *loader) replaceFormula(v *level, f *document.File, n *yaml.Node, name string) {
	slot, ok := l.slots[name]
	if !ok {
		return // its declaration has a problem of its own
	}
	fact := l.book.Facts[slot]
	if !fact.WorkedOut() {
		f.Report(n, "declare a fact under a name of your own", "%s is a fact of %s that is asked for; it stays as it is", name, fact.Of)
		return
	}
	fields, complete := f.Entry(n, formulaChangeKeys)
	if !complete {
		return
	}
	if was, ok := f.Text(fields["was"]); ok && !sameFormula(was, fact.From) {
		l.note(f, fields["was"], "judge anew, then write was: "+quoted(fact.From), "%s works %s out in another way now", fact.Of, name)
	}
	nodes := l.formulaNodes[fact]
	nodes.from = written{f, fields["from"]}
	l.formulaNodes[fact] = nodes
	l.later(f, fields["from"], &fact.From)
	l.replaced(v, f, n, "fact", name)
	fact.Of, fact.File, fact.Line = v.Title, f.Name, n.Line
}

// readSort decodes kind, choices and range.
func (l *loader) readSort(f *document.File, n *yaml.Node, fact *Fact, fields map[string]*yaml.Node) bool {
	name, ok := f.Text(fields["kind"])
	if !ok {
		return false
	}
	switch name {
	case choiceKind:
		fact.Sort = Choice
		l.without(f, fields, name, "range")
		if !f.Require(n, fields, "choices") {
			return false
		}
		return l.readChoices(f, fact, fields["choices"])
	case yesNoKind:
		fact.Sort = YesNo
		l.without(f, fields, name, "choices", "range")
		return true
	}
	kind, ok := quantity.KindNamed(name)
	if !ok {
		f.Report(fields["kind"], document.DidYouMean(name, append(quantity.KindNames(), choiceKind, yesNoKind)), "unknown kind %q", name)
		return false
	}
	fact.Kind = kind
	l.without(f, fields, name, "choices")
	if fields["range"] != nil {
		l.readRange(f, fact, fields["range"])
	} else if fields["from"] == nil {
		f.Report(fields["fact"], "add range: [least, most]", "%s has no range", fact.Name)
	}
	return true
}

// without reports keys that mean nothing for a kind of fact.
func (l *loader) without(f *document.File, fields map[string]*yaml.Node, kind string, keys ...string) {
	for _, key := range keys {
		if n := fields[key]; n != nil && !n.IsZero() {
			f.Report(n, "leave it out", "a fact of kind %s has no %s:", kind, key)
		}
	}
}

// maxChoices is how many words fit the set that an atom tests in one step.
const maxChoices = 64

func (l *loader) readChoices(f *document.File, fact *Fact, n *yaml.Node) bool {
	fact.Choices = f.Words(n)
	switch {
	case len(fact.Choices) < 2:
		f.Report(n, "list at least two words", "%s offers no choice", fact.Name)
		return false
	case len(fact.Choices) > maxChoices:
		f.Report(n, "shorten the list", "%s has more than %d choices", fact.Name, maxChoices)
		return false
	}
	for i, word := range fact.Choices {
		if slices.Contains(fact.Choices[:i], word) {
			f.Report(n.Content[i], "keep one of the two", "the choice %q is listed twice", word)
			return false
		}
		if word == unknownWord {
			f.Report(n.Content[i], "leave it out: every fact may be unknown", "%q cannot be a choice", word)
			return false
		}
	}
	return true
}

func (l *loader) readRange(f *document.File, fact *Fact, n *yaml.Node) {
	ends := f.List(n)
	if len(ends) != 2 {
		f.Report(n, "write [least, most]", "a range has two ends")
		return
	}
	var v [2]float64
	for i, e := range ends {
		reading, ok := f.Quantity(e, fact.Kind, "")
		if !ok {
			return
		}
		v[i] = reading.Value
	}
	if v[0] >= v[1] {
		f.Report(n, "write the smaller end first", "the range of %s is empty", fact.Name)
		return
	}
	fact.Low, fact.High, fact.Ranged = v[0], v[1], true
}

// readAsking decodes how a person finds the fact out.
func (l *loader) readAsking(f *document.File, fact *Fact, fields map[string]*yaml.Node) {
	fact.Ask, _ = f.Text(fields["ask"])
	fact.How, _ = f.Text(fields["how"])
	fact.Tool, _ = f.Text(fields["tool"])
	fact.IfGuessed, _ = f.Text(fields["if_guessed"])
	if fields["tier"] != nil {
		fact.Tier, _ = f.Count(fields["tier"])
	}
	if fields["minutes"] != nil {
		fact.Minutes, _ = f.Number(fields["minutes"])
	}
	fact.Change = Fixed
	if fact.Sort == Number {
		fact.Change = Measure
	}
	if word, ok := f.Choice(fields["change"], changeNames...); ok {
		fact.Change = Change(word)
	}
	text, ok := f.Text(fields["give_or_take"])
	switch {
	case !ok:
	case text == oneClass && fact.Sort == Choice:
		fact.Slack.OneClass = true
	case fact.Sort != Number:
		f.Report(fields["give_or_take"], "write `one class`, or leave it out", "%s is not a number and has no give-or-take of %q", fact.Name, text)
	default:
		amount, share, err := quantity.ParseGiveOrTake(text, fact.Kind, "")
		if err != nil {
			f.ReportSyntax(fields["give_or_take"], err)
			return
		}
		fact.Slack = Slack{Amount: amount, Share: share}
	}
}

// words lists what a fact may be, for a remedy.
func (f *Fact) words() string {
	switch f.Sort {
	case Choice:
		return strings.Join(f.Choices, ", ")
	case YesNo:
		return "yes or no"
	}
	return "a " + f.Kind.String()
}

// Takes reports whether a value may be given for the fact: a number within its
// range, and whole where it counts.
func (f *Fact) Takes(v float64) bool {
	switch {
	case f.Sort == Choice:
		return v >= 0 && v < float64(len(f.Choices)) && v == math.Trunc(v)
	case f.Sort == YesNo:
		return v == 0 || v == 1
	case f.Kind == quantity.Count && v != math.Trunc(v):
		return false
	}
	return v >= f.Low && v <= f.High
}
