package engine

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"github.com/expr-lang/expr/ast"

	"boremend/engine/quantity"
)

// Edits lists small wrong edits of the rulebook, one slip of the pen each, in
// the order of the declarations: what somebody could do to it by mistake. Those
// that the loader refuses are among them.
func (b *Rulebook) Edits() []Edit {
	e := &editor{book: b, steps: b.thresholdSteps()}
	e.rulebook()
	for _, l := range b.Limits {
		e.limit(l)
	}
	for _, f := range b.Facts {
		e.fact(f)
	}
	for _, m := range b.Methods {
		e.at = Edit{Declares: "method", Name: m.Name, Key: "start", File: m.File, Line: m.Line}
		e.points(m.Start)
	}
	for _, r := range b.Rules {
		e.rule(r)
	}
	for _, c := range b.Cautions {
		e.caution(c)
	}
	return e.edits
}

// editor gathers edits. at says where the next ones stand.
type editor struct {
	book  *Rulebook
	steps map[string]float64 // by limit.NAME: the give-or-take of what it is compared with
	at    Edit
	edits []Edit
}

// add notes an edit of the key at hand.
func (e *editor) add(kind EditKind, value, was, is string) {
	edit := e.at
	edit.Kind, edit.Value, edit.Old, edit.New = kind, value, was, is
	e.edits = append(e.edits, edit)
}

func (e *editor) rulebook() {
	e.at = Edit{Declares: "rulebook", Name: "rulebook", Key: "narrow", File: e.book.file, Line: 1}
	for _, v := range []float64{e.book.Narrow - halfPoint, e.book.Narrow + halfPoint} {
		if v >= 0 {
			e.add(NudgeThreshold, decimal(v), decimal(e.book.Narrow), decimal(v))
		}
	}
}

// halfPoint is one step of points.
const halfPoint = 0.5

func decimal(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// points lists the other sign and one step each way.
func (e *editor) points(now float64) {
	changed := []float64{now - halfPoint, now + halfPoint}
	if now != 0 {
		changed = append(changed, -now)
	}
	slices.Sort(changed)
	for _, v := range slices.Compact(changed) {
		e.add(ChangePoints, decimal(v), decimal(now), decimal(v))
	}
}

// limit moves a threshold both ways.
func (e *editor) limit(l *Limit) {
	e.at = Edit{Declares: "limit", Name: l.Name, Key: "is", File: l.File, Line: l.Line}
	step, found := e.steps["limit."+l.Name]
	if !found {
		step = smallStep(l.Is.Value)
	}
	for _, v := range []float64{l.Is.Value - step, l.Is.Value + step} {
		v = rounded(v)
		e.add(NudgeThreshold, sizeText(v, l.Is.Kind), l.Is.Format(quantity.Millimetre), quantity.Quantity{Value: v, Kind: l.Is.Kind}.Format(quantity.Millimetre))
	}
}

// stepShare is how far a threshold is moved whose fact has no give-or-take of
// its own. It is a choice: large enough to matter, small enough to slip in.
const stepShare = 0.05

func smallStep(v float64) float64 {
	if v == 0 {
		return stepShare
	}
	return stepShare * math.Abs(v)
}

// rounded keeps seven digits, as somebody would type them.
func rounded(v float64) float64 {
	out, err := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 7, 64), 64)
	if err != nil {
		return v
	}
	return out
}

func sizeText(v float64, kind quantity.Kind) string {
	return strings.TrimSpace(decimal(v) + " " + kind.Unit())
}

// thresholdSteps finds for each limit the least give-or-take of the facts that
// are compared with it directly.
func (b *Rulebook) thresholdSteps() map[string]float64 {
	steps := map[string]float64{}
	for key := range b.parsed {
		ast.Find(b.parsed[key].tree, func(n ast.Node) bool {
			c, ok := n.(*ast.BinaryNode)
			if !ok {
				return false
			}
			for _, sides := range [2][2]ast.Node{{c.Left, c.Right}, {c.Right, c.Left}} {
				if member, ok := sides[1].(*ast.MemberNode); ok {
					b.noteStep(steps, sides[0], member)
				}
			}
			return false
		})
	}
	return steps
}

func (b *Rulebook) noteStep(steps map[string]float64, side ast.Node, limit *ast.MemberNode) {
	name, ok := limitName(limit)
	i := slices.IndexFunc(b.Limits, func(l *Limit) bool { return l.Name == name })
	if !ok || i < 0 {
		return
	}
	if step := b.stepOf(side, b.Limits[i].Is.Value); step > 0 {
		if old, known := steps["limit."+name]; !known || step < old {
			steps["limit."+name] = step
		}
	}
}

// stepOf is by how much a threshold for an expression is moved at a value; zero
// where the expression is no fact with a give-or-take.
func (b *Rulebook) stepOf(side ast.Node, value float64) float64 {
	name, ok := side.(*ast.IdentifierNode)
	slot, known := -1, false
	if ok {
		slot, known = b.slots[name.Value]
	}
	if !known || b.Facts[slot].Sort != Number {
		return 0
	}
	if b.Facts[slot].Kind == quantity.Count {
		return 1
	}
	return b.Facts[slot].GiveOrTake(value)
}

// fact changes the formulas of a fact.
func (e *editor) fact(f *Fact) {
	e.at = Edit{Declares: "fact", Name: f.Name, File: f.File, Line: f.Line}
	if f.From != "" {
		e.at.Key = "from"
		e.formula(f.From, true)
	}
	if f.Assume != "" {
		e.at.Key = "assume"
		e.formula(f.Assume, true)
		e.add(ChangeAssumption, "", "assume: "+f.Assume, "")
	}
}

func (e *editor) rule(r *Rule) {
	e.at = Edit{Declares: "rule", Name: r.Name, File: r.File, Line: r.Line}
	e.add(DropRule, "", r.Name, "")
	e.at.Key = "effect"
	for _, other := range [...][]Effect{RuleOut: {Demand}, Demand: {RuleOut, Caution}, Lean: {Caution}, Caution: nil}[r.Effect] {
		e.add(ChangeEffect, other.String(), r.Effect.String(), other.String())
	}
	if r.Effect == Lean {
		e.at.Key = "points"
		e.points(r.Points)
	}
	e.unknown(r.IfUnknown, Open, Silent, Hold)
	e.methods(r.words)
	e.at.Key = "if"
	e.formula(r.If, false)
}

func (e *editor) caution(c *CautionNote) {
	e.at = Edit{Declares: "caution", Name: c.Name, File: c.File, Line: c.Line}
	e.add(DropRule, "", c.Name, "")
	e.methods(c.words)
	if c.If == "" {
		return
	}
	e.unknown(c.IfUnknown, Open, Hold)
	e.at.Key = "if"
	e.formula(c.If, false)
}

// unknown lists what else a rule might do while its condition is unknown.
func (e *editor) unknown(now IfUnknown, all ...IfUnknown) {
	e.at.Key = "if_unknown"
	for _, other := range all {
		if other != now {
			e.add(ChangeUnknown, ifUnknownNames[other], ifUnknownNames[now], ifUnknownNames[other])
		}
	}
}

// methods drops one word of for: at a time. A rule for nobody is a rule that is
// taken away, which is an edit of its own.
func (e *editor) methods(words []string) {
	e.at.Key = "for"
	for i, word := range words {
		if len(words) > 1 {
			e.add(DropMethod, strings.Join(slices.Delete(slices.Clone(words), i, i+1), ", "), word, "")
		}
	}
}
