package engine

import (
	"github.com/expr-lang/expr/ast"
)

// number compiles an expression that yields a number. Whatever it needs and
// does not find leaves the result unknown.
func (c *compiler) number(n ast.Node) numberFunc {
	if v, ok := c.constant(n); ok {
		return func(*State) (float64, bool) { return v, true }
	}
	switch n := n.(type) {
	case *ast.IdentifierNode:
		slot := c.slot(n)
		return func(s *State) (float64, bool) { return s.number[slot], s.known[slot] }
	case *ast.UnaryNode:
		inner := c.number(n.Node)
		return func(s *State) (float64, bool) {
			v, ok := inner(s)
			return -v, ok
		}
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
	return c.call(c.l.functions[name], call)
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

func (c *compiler) arithmetic(n *ast.BinaryNode) numberFunc {
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
	return func(s *State) (float64, bool) {
		a, ok := left(s)
		if !ok {
			return 0, false
		}
		b, ok := right(s)
		if !ok {
			return 0, false
		}
		return finite(join(a, b))
	}
}

// branch compiles condition ? a : b. While the condition is unknown the result
// is known only if both branches agree.
func (c *compiler) branch(n *ast.ConditionalNode) numberFunc {
	condition, a, b := c.truth(n.Cond), c.number(n.Exp1), c.number(n.Exp2)
	return func(s *State) (float64, bool) {
		switch s.fold(condition) {
		case Holds:
			return a(s)
		case Fails:
			return b(s)
		}
		x, known := a(s)
		y, both := b(s)
		return x, known && both && x == y
	}
}

func (c *compiler) extreme(least bool, n *ast.CallNode) numberFunc {
	parts := make([]numberFunc, len(n.Arguments))
	for i, a := range n.Arguments {
		parts[i] = c.number(a)
	}
	return func(s *State) (float64, bool) {
		out, ok := parts[0](s)
		for _, part := range parts[1:] {
			v, known := part(s)
			ok = ok && known
			if least {
				out = min(out, v)
			} else {
				out = max(out, v)
			}
		}
		return out, ok
	}
}

// call compiles a call of a catalogue function. Its arguments are laid out in
// the state's scratch space, so that a call costs no allocation.
func (c *compiler) call(f *Function, n *ast.CallNode) numberFunc {
	at, count := c.p.scratch, len(n.Arguments)
	c.p.scratch += count
	numbers := make([]numberFunc, count)
	words := make([]int32, count)
	for i, a := range n.Arguments {
		if f.Params[i].Word {
			words[i] = c.slot(a.(*ast.IdentifierNode))
		} else {
			numbers[i] = c.number(a)
		}
	}
	return func(s *State) (float64, bool) {
		args := s.scratch[at : at+count]
		for i, number := range numbers {
			if number == nil {
				if !s.known[words[i]] {
					return 0, false
				}
				args[i].Word = s.word(words[i])
				continue
			}
			v, ok := number(s)
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
	}
}
