package rules_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"regexp"
	"testing"

	"github.com/expr-lang/expr"
	"github.com/expr-lang/expr/vm"

	"boremend/engine"
	"boremend/rules"
)

// oracle evaluates the same rulebook with the expression library's own virtual
// machine, which shares nothing with the engine but the parser. It knows only
// complete facts: where something is missing it gives no answer.
type oracle struct {
	book  *engine.Rulebook
	env   map[string]any
	vm    vm.VM
	order []int      // facts, each after what it needs
	facts []programs // by slot
	rules []*vm.Program
}

type programs struct{ from, assume *vm.Program }

func newOracle(t testing.TB, book *engine.Rulebook) *oracle {
	t.Helper()
	o := &oracle{book: book, order: inOrder(book), env: map[string]any{"yes": true, "no": false}}
	limits := map[string]any{}
	for _, l := range book.Limits {
		limits[l.Name] = l.Is.Value
	}
	o.env["limit"] = limits
	options := []expr.Option{expr.Env(sample(book, limits)), expr.DisableAllBuiltins(), extreme("min", math.Min), extreme("max", math.Max)}
	functions, err := rules.Functions()
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range functions {
		options = append(options, called(f))
	}
	compile := func(text string) *vm.Program {
		if text == "" {
			return nil
		}
		// A fact may bear the name of the function that works it out.
		p, err := expr.Compile(functionName.ReplaceAllString(text, functionPrefix+"$1("), options...)
		if err != nil {
			t.Fatalf("%s: %v", text, err)
		}
		return p
	}
	for _, f := range book.Facts {
		o.facts = append(o.facts, programs{compile(f.From), compile(f.Assume)})
	}
	for _, r := range book.Rules {
		o.rules = append(o.rules, compile(r.If))
	}
	return o
}

// sample is an environment with every name in it, for the types.
func sample(book *engine.Rulebook, limits map[string]any) map[string]any {
	env := map[string]any{"yes": true, "no": false, "limit": limits}
	for _, f := range book.Facts {
		env[f.Name] = value(f, 0)
	}
	return env
}

const functionPrefix = "call_"

var functionName = regexp.MustCompile(`([a-z_]+)\(`)

func extreme(name string, f func(a, b float64) float64) expr.Option {
	return expr.Function(functionPrefix+name, func(args ...any) (any, error) {
		out := number(args[0])
		for _, a := range args[1:] {
			out = f(out, number(a))
		}
		return out, nil
	}, new(func(...any) float64))
}

func number(v any) float64 {
	if i, ok := v.(int); ok {
		return float64(i)
	}
	return v.(float64)
}

// called offers a catalogue function to the virtual machine.
func called(f engine.Function) expr.Option {
	return expr.Function(functionPrefix+f.Name, func(given ...any) (any, error) {
		args := make([]engine.Argument, len(given))
		for i, v := range given {
			switch v := v.(type) {
			case nil:
				return nil, fmt.Errorf("%s is missing", f.Params[i].Name)
			case string:
				args[i].Word = v
			default:
				args[i].Number = number(v)
			}
		}
		return f.Call(args)
	}, new(func(...any) float64))
}

// load sets the facts and works out the others.
func (o *oracle) load(found engine.Findings) {
	for _, f := range o.book.Facts {
		delete(o.env, f.Name)
	}
	for _, f := range found {
		o.env[o.book.Facts[f.Fact].Name] = value(o.book.Facts[f.Fact], f.Value)
	}
	for _, slot := range o.order {
		for _, p := range []*vm.Program{o.facts[slot].from, o.facts[slot].assume} {
			if _, known := o.env[o.book.Facts[slot].Name]; known || p == nil {
				continue
			}
			if v, err := o.vm.Run(p, o.env); err == nil && usable(v) {
				o.env[o.book.Facts[slot].Name] = v
			}
		}
	}
}

var factName = regexp.MustCompile(`[a-z][a-z0-9_]*`)

// inOrder lists the facts so that each comes after those that its formulas name.
func inOrder(book *engine.Rulebook) []int {
	var order []int
	seen := make([]bool, len(book.Facts))
	var visit func(slot int)
	visit = func(slot int) {
		if slot < 0 || seen[slot] {
			return
		}
		seen[slot] = true
		for _, name := range factName.FindAllString(book.Facts[slot].From+" "+book.Facts[slot].Assume, -1) {
			visit(book.Fact(name))
		}
		order = append(order, slot)
	}
	for slot := range book.Facts {
		visit(slot)
	}
	return order
}

func usable(v any) bool {
	if f, ok := v.(float64); ok {
		return !math.IsNaN(f) && !math.IsInf(f, 0)
	}
	return v != nil
}

func value(f *engine.Fact, v float64) any {
	switch f.Sort {
	case engine.Choice:
		return f.Choices[int(v)]
	case engine.YesNo:
		return v != 0
	}
	return v
}

// rule runs the condition of a rule; no answer means that a fact is missing.
func (o *oracle) rule(i int) (holds, answered bool) {
	v, err := o.vm.Run(o.rules[i], o.env)
	holds, answered = v.(bool)
	return holds, answered && err == nil
}

// TestEngineAgreesWithTheExpressionLibrary compares both on complete fact sets
// that sit on and beside thresholds.
func TestEngineAgreesWithTheExpressionLibrary(t *testing.T) {
	book := house(t)
	o := newOracle(t, book)
	s := book.NewState()
	draw := &drawer{book: book, random: rand.New(rand.NewPCG(7, 11))}
	answers, silences := 0, 0
	for range 10_000 {
		found := draw.findings(s)
		s.Load(found)
		o.load(found)
		for slot, f := range book.Facts {
			v, known := s.Value(slot)
			want, wantKnown := o.env[f.Name]
			if known != wantKnown || known && value(f, v) != want {
				t.Fatalf("%s: the engine has %v (known %t), the library %v", f.Name, v, known, want)
			}
		}
		for i, r := range book.Rules {
			holds, answered := o.rule(i)
			if !answered {
				silences++
				continue
			}
			answers++
			if want := map[bool]engine.Truth{true: engine.Holds, false: engine.Fails}[holds]; s.Outcome(i) != want {
				t.Fatalf("%s: the engine says %s, the library %s, for %s", r.Name, s.Outcome(i), want, r.If)
			}
		}
	}
	if silences*20 > answers {
		t.Errorf("the library could answer only %d of %d conditions", answers, answers+silences)
	}
}

// drawer makes complete fact sets near thresholds.
type drawer struct {
	book   *engine.Rulebook
	random *rand.Rand
}

// findings draws every asked fact: a word at random, a number at a limit of its
// kind, next to one, at an end of its range or anywhere in it. Half of the sets
// then have one number moved to where some condition turns.
func (d *drawer) findings(s *engine.State) engine.Findings {
	var found engine.Findings
	for slot, f := range d.book.Facts {
		if !f.WorkedOut() {
			found = append(found, engine.Finding{Fact: slot, Value: d.value(f)})
		}
	}
	if d.random.IntN(2) == 0 {
		d.toEdge(s, found)
	}
	return found
}

func (d *drawer) value(f *engine.Fact) float64 {
	switch f.Sort {
	case engine.Choice:
		return float64(d.random.IntN(len(f.Choices)))
	case engine.YesNo:
		return float64(d.random.IntN(2))
	}
	var near []float64
	for _, l := range d.book.Limits {
		if v := l.Is.Value; l.Is.Kind.Dimension() == f.Kind.Dimension() && v > f.Low && v < f.High {
			near = append(near, v, math.Nextafter(v, f.High), math.Nextafter(v, f.Low))
		}
	}
	if len(near) > 0 && d.random.IntN(3) == 0 {
		return near[d.random.IntN(len(near))]
	}
	low, high := max(f.Low, f.High/1000), f.High
	if d.random.IntN(10) == 0 {
		return []float64{f.Low, f.High}[d.random.IntN(2)]
	}
	if low <= 0 || f.Low < 0 {
		return f.Low + (f.High-f.Low)*d.random.Float64()
	}
	return low * math.Pow(high/low, d.random.Float64())
}

// toEdge moves one number to the last value before some condition turns.
func (d *drawer) toEdge(s *engine.State, found engine.Findings) {
	i := d.random.IntN(len(found))
	if d.book.Facts[found[i].Fact].Sort != engine.Number {
		return
	}
	outcomes := func(v float64) string {
		found[i].Value = v
		s.Load(found)
		text := make([]byte, len(d.book.Rules))
		for r := range d.book.Rules {
			text[r] = byte(s.Outcome(r) + 1)
		}
		return string(text)
	}
	a, b := found[i].Value, d.value(d.book.Facts[found[i].Fact])
	atA := outcomes(a)
	for range 80 {
		middle := a + (b-a)/2
		if outcomes(middle) == atA {
			a = middle
		} else {
			b = middle
		}
	}
	found[i].Value = []float64{a, b}[d.random.IntN(2)]
}

func house(t testing.TB) *engine.Rulebook {
	t.Helper()
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	return book
}
