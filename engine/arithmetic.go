package engine

import (
	"math"

	"github.com/expr-lang/expr/ast"
)

// formula is an expression that yields a number: worked out from facts, and
// over everything that the facts may be. Rounding to the nearest rises with
// what is rounded, so the ends of a span bound the very numbers that the
// formula gives.
type formula struct {
	number numberFunc
	over   func(o *Outlook) span
}

// number compiles an expression that yields a number. Whatever it needs and
// does not find leaves the result unknown.
func (c *compiler) number(n ast.Node) formula {
	if v, ok := c.constant(n); ok {
		return formula{func(*State) (float64, bool) { return v, true }, func(*Outlook) span { return point(v) }}
	}
	switch n := n.(type) {
	case *ast.IdentifierNode:
		slot := c.slot(n)
		return formula{func(s *State) (float64, bool) { return s.number[slot], s.known[slot] }, func(o *Outlook) span { return o.spans[slot] }}
	case *ast.UnaryNode:
		return c.negative(n)
	case *ast.BinaryNode:
		return c.arithmetic(n)
	case *ast.ConditionalNode:
		return c.branch(n)
	}
	call := n.(*ast.CallNode)
	name, _ := calledName(call)
	if name == "min" || name == "max" {
		return c.extreme(name == "min", call)
	}
	return c.call(c.l.book.functions[name], call)
}

// constant recognises numbers and limits.
func (c *compiler) constant(n ast.Node) (float64, bool) {
	switch n := n.(type) {
	case *ast.IntegerNode:
		return float64(n.Value), true
	case *ast.FloatNode:
		return n.Value, true
	case *ast.MemberNode:
		if name, ok := limitName(n); ok && c.l.limits[name] != nil {
			return c.l.limits[name].Is.Value, true
		}
	}
	return 0, false
}

func (c *compiler) negative(n *ast.UnaryNode) formula {
	inner := c.number(n.Node)
	return formula{
		func(s *State) (float64, bool) {
			v, ok := inner.number(s)
			return -v, ok
		},
		func(o *Outlook) span {
			a := inner.over(o)
			a.low, a.high = -a.high, -a.low
			return a
		},
	}
}

func (c *compiler) arithmetic(n *ast.BinaryNode) formula {
	left, right := c.number(n.Left), c.number(n.Right)
	var join func(a, b float64) float64
	switch n.Operator {
	case "+":
		join = func(a, b float64) float64 { return a + b }
	case "-":
		join = func(a, b float64) float64 { return a - b }
	case "*":
		join = func(a, b float64) float64 { return a * b }
	default:
		join = func(a, b float64) float64 { return a / b }
	}
	divides := n.Operator == "/"
	return formula{
		func(s *State) (float64, bool) {
			a, ok := left.number(s)
			if !ok {
				return 0, false
			}
			b, ok := right.number(s)
			if !ok {
				return 0, false
			}
			return finite(join(a, b))
		},
		func(o *Outlook) span {
			a, b := left.over(o), right.over(o)
			if divides && b.low <= 0 && b.high >= 0 && a.known() {
				return anything
			}
			return corners(a, b, join)
		},
	}
}

// branch compiles condition ? a : b. While the condition is unknown the result
// is known only if both branches agree.
func (c *compiler) branch(n *ast.ConditionalNode) formula {
	condition, a, b := c.truth(n.Cond), c.number(n.Exp1), c.number(n.Exp2)
	return formula{
		func(s *State) (float64, bool) {
			switch s.fold(condition) {
			case Holds:
				return a.number(s)
			case Fails:
				return b.number(s)
			}
			x, known := a.number(s)
			y, both := b.number(s)
			return x, known && both && x == y
		},
		func(o *Outlook) span {
			out := span{low: math.Inf(1), high: math.Inf(-1)}
			may := o.fold(condition)
			if may&(mayHold|mayBeUnknown) != 0 {
				out = out.or(a.over(o))
			}
			if may&(mayFail|mayBeUnknown) != 0 {
				out = out.or(b.over(o))
			}
			out.unknown = out.unknown || may&mayBeUnknown != 0
			return out
		},
	}
}

func (c *compiler) extreme(least bool, n *ast.CallNode) formula {
	parts := make([]formula, len(n.Arguments))
	for i, a := range n.Arguments {
		parts[i] = c.number(a)
	}
	pick := func(a, b float64) float64 { return max(a, b) }
	if least {
		pick = func(a, b float64) float64 { return min(a, b) }
	}
	return formula{
		func(s *State) (float64, bool) {
			out, ok := parts[0].number(s)
			for _, part := range parts[1:] {
				v, known := part.number(s)
				out, ok = pick(out, v), ok && known
			}
			return out, ok
		},
		func(o *Outlook) span {
			out := parts[0].over(o)
			for _, part := range parts[1:] {
				next := part.over(o)
				if !out.known() || !next.known() {
					return nothing
				}
				out = span{pick(out.low, next.low), pick(out.high, next.high), 0, out.unknown || next.unknown}
			}
			return out
		},
	}
}

// call compiles a call of a catalogue function. Its arguments are laid out in
// the state's scratch space, so that a call costs no allocation.
func (c *compiler) call(f *Function, n *ast.CallNode) formula {
	at, count := c.p.scratch, len(n.Arguments)
	c.p.scratch += count
	c.reads.calls = true
	numbers := make([]formula, count)
	words := make([]int32, count)
	for i, a := range n.Arguments {
		if f.Params[i].Word {
			words[i] = c.slot(a.(*ast.IdentifierNode))
			c.p.wordsCalled = append(c.p.wordsCalled, words[i])
		} else {
			numbers[i] = c.number(a)
		}
	}
	return formula{
		func(s *State) (float64, bool) {
			args := s.scratch[at : at+count]
			for i, number := range numbers {
				if number.number == nil {
					if !s.known[words[i]] {
						return 0, false
					}
					args[i].Word = s.word(words[i])
					continue
				}
				v, ok := number.number(s)
				if !ok {
					return 0, false
				}
				args[i].Number = v
			}
			v, err := f.Call(args)
			if err != nil {
				return 0, false
			}
			return finite(v)
		},
		func(o *Outlook) span {
			args := o.arguments[at : at+count]
			for i, number := range numbers {
				if number.over == nil {
					args[i] = o.spans[words[i]]
				} else {
					args[i] = number.over(o)
				}
				if !args[i].known() {
					return nothing
				}
			}
			return o.call(f, args, o.scratch[at:at+count], words)
		},
	}
}
