package cases

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"boremend/engine"
	"boremend/engine/quantity"
)

// check compares a state with what is expected.
type check struct {
	s       *engine.State
	decided engine.Decision
	wrong   []string
}

func (c *check) differ(format string, args ...any) {
	c.wrong = append(c.wrong, fmt.Sprintf(format, args...))
}

// state compares all that a state tells without a search.
func (c *check) state(e *Expect) {
	c.advice(e)
	c.cautions(e)
	c.rules(engine.Holds, e.Holds)
	c.rules(engine.Fails, e.Fails)
	c.unknown("left open", e.LeftOpen, engine.Open)
	c.unknown("counted as holding until known", e.UntilKnown, engine.Hold)
	c.unknown("listed as not checked", e.NotChecked, engine.Silent)
	c.verdicts(e)
	c.points(e)
	c.leans(e)
	c.speak("%s does not rule out %s", e.RuledOutBy, engine.RuleOut)
	c.speak("%s is not demanded of %s", e.Demands, engine.Demand)
	c.values(e)
}

func (c *check) advice(e *Expect) {
	book := c.s.Book()
	advised := book.Methods[c.decided.Method].Name
	if len(e.Advice) > 0 && !slices.Contains(e.Advice, advised) {
		c.differ("advises %s, expected %s", advised, strings.Join(e.Advice, " or "))
	}
	for _, name := range e.NoGo {
		if verdict, _ := c.s.Verdict(book.Method(name)); verdict.Stands() {
			c.differ("%s is %s, expected no_go", name, verdict)
		}
	}
	if slices.Contains(e.NotAdvised, advised) {
		c.differ("advises %s, which should never come first", advised)
	}
	if e.Narrow != nil && !*e.Narrow && c.decided.Narrow {
		c.differ("the lead is narrow, expected a clear one")
	}
}

func (c *check) cautions(e *Expect) {
	for _, name := range e.Cautions {
		if !c.s.Warns(name, c.decided.Method) {
			c.differ("the caution %s is not shown", name)
		}
	}
	for _, name := range e.NoCautions {
		if c.s.Warns(name, c.decided.Method) {
			c.differ("the caution %s is shown", name)
		}
	}
}

// rule finds a rule; one that is gone is a difference.
func (c *check) rule(name string) (int, bool) {
	rule := c.s.Book().Rule(name)
	if rule < 0 {
		c.differ("the rulebook has no rule %s", name)
	}
	return rule, rule >= 0
}

func (c *check) rules(expected engine.Truth, names []string) {
	for _, name := range names {
		if rule, ok := c.rule(name); ok && c.s.Outcome(rule) != expected {
			c.differ("the rule %s %s, expected that it %s", name, came(c.s.Outcome(rule)), expected)
		}
	}
}

// unknown compares rules that nobody can settle with how they are treated.
func (c *check) unknown(how string, names []string, expected engine.IfUnknown) {
	for _, name := range names {
		if rule, ok := c.rule(name); ok && (c.s.Outcome(rule) != engine.Unknown || c.s.Book().Rules[rule].IfUnknown != expected) {
			c.differ("the rule %s is not %s", name, how)
		}
	}
}

// came says how a rule came out.
func came(t engine.Truth) string {
	if t == engine.Unknown {
		return "is unknown"
	}
	return t.String()
}

func (c *check) verdicts(e *Expect) {
	for _, m := range e.Verdicts {
		if verdict, _ := c.s.Verdict(c.s.Book().Method(m.Method)); verdict.String() != m.Verdict {
			c.differ("%s is %s, expected %s", m.Method, verdict, m.Verdict)
		}
	}
}

func (c *check) points(e *Expect) {
	for _, m := range e.Points {
		method := c.s.Book().Method(m.Method)
		_, known := c.s.Verdict(method)
		least, most := c.s.Points(method)
		switch {
		case !m.Open && known != m.Least:
			c.differ("%s has %g points, expected %g", m.Method, known, m.Least)
		case m.Open && (least != m.Least || most != m.Most):
			c.differ("%s has %g to %g points, expected %g to %g", m.Method, least, most, m.Least, m.Most)
		}
	}
}

// speak compares the rules of one effect that are in force for methods.
func (c *check) speak(says string, list []MethodRules, effect engine.Effect) {
	for _, m := range list {
		for _, name := range m.Rules {
			if rule, ok := c.rule(name); ok && !c.inForce(m.Method, rule, effect) {
				c.differ(says, name, m.Method)
			}
		}
	}
}

func (c *check) inForce(method string, rule int, effect engine.Effect) bool {
	return c.s.Book().Rules[rule].Effect == effect && c.s.InForce(rule, c.s.Book().Method(method))
}

func (c *check) leans(e *Expect) {
	for _, m := range e.Leans {
		for _, lean := range m.Rules {
			rule, ok := c.rule(lean.Rule)
			switch {
			case !ok:
			case !c.inForce(m.Method, rule, engine.Lean):
				c.differ("%s does not lean %s", lean.Rule, m.Method)
			case c.s.Book().Rules[rule].Points != lean.Points:
				c.differ("%s gives %s %g points, expected %g", lean.Rule, m.Method, c.s.Book().Rules[rule].Points, lean.Points)
			}
		}
	}
}

func (c *check) values(e *Expect) {
	for _, v := range e.WorkedOut {
		slot := c.s.Book().Fact(v.Fact)
		value, known := c.s.Value(slot)
		if known == v.Unknown || known && !(math.Abs(value-v.Value) <= v.Within) {
			c.differ("%s is %s, expected %s", v.Fact, c.s.Show(slot, quantity.Millimetre), v.Written)
		}
	}
}
