package engine

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/expr-lang/expr/ast"
)

// words says in plain words what a typing is.
func (ty typing) words() string {
	switch {
	case ty.class == numberClass && ty.bare:
		return "a bare number"
	case ty.class == numberClass && ty.fact != nil:
		return fmt.Sprintf("%s, a %s", ty.fact.Name, ty.fact.Kind)
	case ty.class == numberClass:
		return "a " + ty.dimension.String()
	case ty.class == choiceClass:
		return "the choice " + ty.fact.Name
	case ty.class == wordClass:
		return "a quoted word"
	case ty.fact != nil:
		return "the condition " + ty.fact.Name
	}
	return "a condition"
}

// signature shows how a function is called.
func (f *Function) signature() string {
	names := make([]string, len(f.Params))
	for i, p := range f.Params {
		names[i] = p.Name
	}
	return f.Name + "(" + strings.Join(names, ", ") + ")"
}

// textOf writes an expression the same way wherever it was written, so that
// equal conditions are recognised and shown alike. Read again, the text gives
// the same expression.
func textOf(n ast.Node) string {
	switch n := n.(type) {
	case *ast.StringNode:
		return strconv.Quote(n.Value)
	case *ast.FloatNode:
		return strconv.FormatFloat(n.Value, 'f', -1, 64)
	case *ast.UnaryNode:
		return unaryText(n)
	case *ast.BinaryNode:
		return bracketed(n.Left, n) + " " + n.Operator + " " + bracketed(n.Right, n)
	case *ast.ConditionalNode:
		return branchText(n.Cond) + " ? " + branchText(n.Exp1) + " : " + branchText(n.Exp2)
	case *ast.ArrayNode:
		return "[" + textsOf(n.Nodes) + "]"
	case *ast.CallNode:
		name, _ := calledName(n)
		return name + "(" + textsOf(n.Arguments) + ")"
	}
	return n.String()
}

func textsOf(nodes []ast.Node) string {
	texts := make([]string, len(nodes))
	for i, n := range nodes {
		texts[i] = textOf(n)
	}
	return strings.Join(texts, ", ")
}

func unaryText(n *ast.UnaryNode) string {
	text := textOf(n.Node)
	switch n.Node.(type) {
	case *ast.BinaryNode, *ast.ConditionalNode:
		text = "(" + text + ")"
	}
	if n.Operator == "not" {
		return "not " + text
	}
	return n.Operator + text
}

// branchText keeps branches within branches apart.
func branchText(n ast.Node) string {
	if _, nested := n.(*ast.ConditionalNode); nested {
		return "(" + textOf(n) + ")"
	}
	return textOf(n)
}

// bracketed keeps the brackets that an operand needs.
func bracketed(operand ast.Node, within *ast.BinaryNode) string {
	if _, branches := operand.(*ast.ConditionalNode); branches {
		return "(" + textOf(operand) + ")"
	}
	inner, ok := operand.(*ast.BinaryNode)
	if !ok {
		return textOf(operand)
	}
	if rank := tightness(inner.Operator); rank > tightness(within.Operator) || operand == within.Left && rank == tightness(within.Operator) ||
		rank == 0 && inner.Operator == within.Operator {
		return textOf(inner)
	}
	return "(" + textOf(inner) + ")"
}

// tightness ranks operators by how tightly they bind. and and or rank alike, so
// that brackets show which of them belongs together.
func tightness(operator string) int {
	switch operator {
	case "*", "/":
		return 3
	case "+", "-":
		return 2
	case "and", "&&", "or", "||":
		return 0
	}
	return 1 // comparisons
}
