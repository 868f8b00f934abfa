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
// equal conditions are recognised and shown alike.
func textOf(n ast.Node) string {
	switch n := n.(type) {
	case *ast.StringNode:
		return strconv.Quote(n.Value)
	case *ast.BinaryNode:
		return bracketed(n.Left, n) + " " + n.Operator + " " + bracketed(n.Right, n)
	}
	return n.String()
}

// bracketed keeps the brackets that an operand needs.
func bracketed(operand ast.Node, within *ast.BinaryNode) string {
	inner, ok := operand.(*ast.BinaryNode)
	if !ok {
		return textOf(operand)
	}
	tight := map[string]int{"*": 2, "/": 2, "+": 1, "-": 1}
	if tight[inner.Operator] > tight[within.Operator] || tight[within.Operator] == 0 && tight[inner.Operator] > 0 {
		return textOf(inner)
	}
	if operand == within.Left && tight[inner.Operator] == tight[within.Operator] {
		return textOf(inner)
	}
	return "(" + textOf(inner) + ")"
}
