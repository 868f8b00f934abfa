package engine

import (
	"slices"

	"github.com/expr-lang/expr/ast"
)

// literal recognises a bare number.
func literal(n ast.Node) (float64, bool) {
	switch n := n.(type) {
	case *ast.IntegerNode:
		return float64(n.Value), true
	case *ast.FloatNode:
		return n.Value, true
	}
	return 0, false
}

// nudge moves a bare number both ways.
func (e *editor) nudge(n ast.Node, v, step float64, put rebuild) {
	if step == 0 {
		step = smallStep(v)
	}
	for _, moved := range [2]float64{v - step, v + step} {
		e.change(NudgeThreshold, put, n, &ast.FloatNode{Value: rounded(moved)})
	}
}

var otherArithmetic = map[string]string{"+": "-", "-": "+", "*": "/", "/": "*"}

// number lists the edits of an expression that yields a number.
func (e *editor) number(n ast.Node, put rebuild) {
	if v, ok := literal(n); ok {
		e.nudge(n, v, 0, put)
		return
	}
	switch n := n.(type) {
	case *ast.UnaryNode:
		e.change(TurnArithmetic, put, n, n.Node)
		e.number(n.Node, func(x ast.Node) ast.Node { return put(&ast.UnaryNode{Operator: n.Operator, Node: x}) })
	case *ast.BinaryNode:
		if other, ok := otherArithmetic[n.Operator]; ok {
			e.change(TurnArithmetic, put, n, &ast.BinaryNode{Operator: other, Left: n.Left, Right: n.Right})
			e.number(n.Left, func(x ast.Node) ast.Node {
				return put(&ast.BinaryNode{Operator: n.Operator, Left: x, Right: n.Right})
			})
			e.number(n.Right, func(x ast.Node) ast.Node {
				return put(&ast.BinaryNode{Operator: n.Operator, Left: n.Left, Right: x})
			})
		}
	case *ast.ConditionalNode:
		e.branches(n, put, e.number)
	case *ast.CallNode:
		e.callEdits(n, put)
	}
}

// branches lists the edits of condition ? a : b.
func (e *editor) branches(n *ast.ConditionalNode, put rebuild, inside func(ast.Node, rebuild)) {
	e.truth(n.Cond, func(x ast.Node) ast.Node {
		return put(&ast.ConditionalNode{Cond: x, Exp1: n.Exp1, Exp2: n.Exp2})
	}, true)
	inside(n.Exp1, func(x ast.Node) ast.Node {
		return put(&ast.ConditionalNode{Cond: n.Cond, Exp1: x, Exp2: n.Exp2})
	})
	inside(n.Exp2, func(x ast.Node) ast.Node {
		return put(&ast.ConditionalNode{Cond: n.Cond, Exp1: n.Exp1, Exp2: x})
	})
}

// callEdits takes min for max, and goes into the arguments of any function.
func (e *editor) callEdits(n *ast.CallNode, put rebuild) {
	with := func(name string, args []ast.Node) *ast.CallNode {
		return &ast.CallNode{Callee: &ast.IdentifierNode{Value: name}, Arguments: args}
	}
	name, _ := calledName(n)
	if other := map[string]string{"min": "max", "max": "min"}[name]; other != "" {
		e.change(TurnArithmetic, put, n, with(other, n.Arguments))
	}
	for i, argument := range n.Arguments {
		e.number(argument, func(x ast.Node) ast.Node {
			changed := slices.Clone(n.Arguments)
			changed[i] = x
			return put(with(name, changed))
		})
	}
}
