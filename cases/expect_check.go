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
	for _, name := range e.NotChecked {
		if rule, ok := c.rule(name); ok && !c.s.NotChecked(rule) {
			c.differ("the rule %s is not listed as not checked", name)
		}
	}
	c.verdicts(e)
	c.points(e)
	c.speak("ruled out by", e.RuledOutBy, engine.RuleOut)
	c.speak("demanded by", e.Demands, engine.Demand)
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
func (c *check) speak(how string, list []MethodRules, effect engine.Effect) {
	for _, m := range list {
		rules := c.s.InForce(c.s.Book().Method(m.Method), effect)
		if len(rules) == len(m.Rules) && !slices.ContainsFunc(rules, func(r int) bool {
			return !slices.Contains(m.Rules, c.s.Book().Rules[r].Name)
		}) {
			continue
		}
		names := make([]string, len(rules))
		for i, r := range rules {
			names[i] = c.s.Book().Rules[r].Name
		}
		c.differ("%s is %s %s, expected %s", m.Method, how, joined(names), joined(m.Rules))
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
