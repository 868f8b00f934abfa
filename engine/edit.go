package engine

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
	"boremend/engine/quantity"
)

// Edit is one small change of a rulebook: a declaration gets another value
// under one of its keys, or is taken away as a whole.
type Edit struct {
	Declares string   `json:"declares"` // limit, fact, method, rule, caution or rulebook
	Name     string   `json:"name"`
	Key      string   `json:"key"`   // that is changed; empty when the declaration is taken away
	Value    string   `json:"value"` // what stands under the key then; empty when the key is taken away
	Kind     EditKind `json:"kind"`
	Old      string   `json:"old"` // the part that differs, for people
	New      string   `json:"new"`
	File     string   `json:"file"`
	Line     int      `json:"line"`
}

// EditKind says in what way an edit is wrong.
type EditKind string

// The kinds of small edit.
const (
	NudgeThreshold   EditKind = "threshold nudged"
	TurnComparison   EditKind = "comparison turned"
	DropPart         EditKind = "part of a condition dropped"
	SwapAndOr        EditKind = "and taken for or"
	ChangeWords      EditKind = "word of a list dropped or added"
	TurnArithmetic   EditKind = "arithmetic turned"
	DropRule         EditKind = "rule or caution dropped"
	DropMethod       EditKind = "method dropped from a rule"
	ChangeEffect     EditKind = "effect changed"
	ChangeUnknown    EditKind = "treatment of the unknown changed"
	ChangePoints     EditKind = "points changed"
	ChangeAssumption EditKind = "assumption changed"
)

// Vary returns the rulebook that would be loaded after an edit of its files.
// The rulebook itself stays as it is. Only what was compiled is made anew: the
// texts are those in memory. The digest stays that of the files. The error
// holds what the loader would say of the edited file.
func (b *Rulebook) Vary(e Edit) (*Rulebook, error) {
	varied := *b
	varied.program = program{}
	l := &loader{book: &varied, varies: true, limits: map[string]*Limit{}, slots: b.slots, formulaNodes: map[*Fact]formulaNodes{}}
	f := &document.File{Name: e.File}
	l.files = []*document.File{f}
	if !l.apply(e) {
		return nil, fmt.Errorf("there is no %s %s with a key %q that could become %q", e.Declares, e.Name, e.Key, e.Value)
	}
	for _, limit := range varied.Limits {
		l.limits[limit.Name] = limit
	}
	text := func(formula string) *yaml.Node {
		if formula == "" {
			return nil
		}
		return &yaml.Node{Kind: yaml.ScalarNode, Value: formula, Line: e.Line, Column: 1}
	}
	for _, fact := range varied.Facts {
		l.formulaNodes[fact] = formulaNodes{written{f, text(fact.From)}, written{f, text(fact.Assume)}, written{f, text(fact.AtLeast)}}
	}
	for _, r := range varied.Rules {
		l.conditions = append(l.conditions, written{f, text(r.If)})
	}
	for _, c := range varied.Cautions {
		l.conditions = append(l.conditions, written{f, text(c.If)})
	}
	l.compile()
	if err := l.problems(); err != nil {
		return nil, err
	}
	return &varied, nil
}

// apply changes the one declaration in the loader's book, which shares all
// others with the book that it was made from.
func (l *loader) apply(e Edit) bool {
	b := l.book
	switch e.Declares {
	case "limit":
		return replace(&b.Limits, func(x *Limit) bool { return x.Name == e.Name }, func(x *Limit) bool { return x.apply(e) })
	case "fact":
		return replace(&b.Facts, func(x *Fact) bool { return x.Name == e.Name }, func(x *Fact) bool { return x.apply(e) })
	case "method":
		return replace(&b.Methods, func(x *Method) bool { return x.Name == e.Name }, func(x *Method) bool { return x.apply(e) })
	case "rule":
		if e.Key == "" {
			return b.dropRule(e.Name)
		}
		return replace(&b.Rules, func(x *Rule) bool { return x.Name == e.Name }, func(x *Rule) bool { return x.apply(b, e) })
	case "caution":
		if e.Key == "" {
			return take(&b.Cautions, func(x *CautionNote) bool { return x.Name == e.Name })
		}
		return replace(&b.Cautions, func(x *CautionNote) bool { return x.Name == e.Name }, func(x *CautionNote) bool { return x.apply(b, e) })
	case "rulebook":
		return e.Key == "narrow" && number(e.Value, &b.Narrow)
	}
	return false
}

// replace puts a changed copy of one entry into a copy of the list.
func replace[T any](list *[]*T, is func(*T) bool, change func(*T) bool) bool {
	i := slices.IndexFunc(*list, is)
	if i < 0 {
		return false
	}
	changed := *(*list)[i]
	*list = slices.Clone(*list)
	(*list)[i] = &changed
	return change(&changed)
}

// take leaves one entry out of a copy of the list.
func take[T any](list *[]*T, is func(*T) bool) bool {
	i := slices.IndexFunc(*list, is)
	if i < 0 {
		return false
	}
	*list = slices.Delete(slices.Clone(*list), i, i+1)
	return true
}

func (b *Rulebook) dropRule(name string) bool {
	at, known := b.ruleNumbers[name]
	if !known {
		return false
	}
	b.Rules = slices.Delete(slices.Clone(b.Rules), at, at+1)
	b.numberRules()
	return true
}

func number(text string, into *float64) bool {
	v, err := strconv.ParseFloat(text, 64)
	*into = v
	return err == nil
}

func (x *Limit) apply(e Edit) bool {
	reading, err := quantity.Parse(e.Value, x.Is.Kind, "")
	x.Is = reading.Quantity
	return e.Key == "is" && err == nil
}

func (x *Fact) apply(e Edit) bool {
	switch e.Key {
	case "from":
		x.From = e.Value
	case "assume":
		x.Assume = e.Value
	default:
		return false
	}
	return true
}

func (x *Method) apply(e Edit) bool { return e.Key == "start" && number(e.Value, &x.Start) }

func (x *Rule) apply(b *Rulebook, e Edit) bool {
	switch e.Key {
	case "if":
		x.If = e.Value
	case "for":
		x.words = strings.Split(e.Value, ", ")
		x.For = b.methodsOf(x.words)
	case "effect":
		x.Effect = Effect(slices.Index(effectNames, e.Value))
		if x.Effect != Lean {
			x.Points = 0 // they go with a lean alone
		}
	case "points":
		return number(e.Value, &x.Points)
	case "if_unknown":
		x.IfUnknown = IfUnknown(slices.Index(ifUnknownNames, e.Value))
	default:
		return false
	}
	return true
}

func (x *CautionNote) apply(b *Rulebook, e Edit) bool {
	switch e.Key {
	case "if":
		x.If = e.Value
	case "for":
		x.words = strings.Split(e.Value, ", ")
		x.For = b.methodsOf(x.words)
	case "if_unknown":
		x.IfUnknown = IfUnknown(slices.Index(ifUnknownNames, e.Value))
	default:
		return false
	}
	return true
}
