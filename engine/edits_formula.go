package engine

import (
	"slices"

	"github.com/expr-lang/expr/ast"
)

// rebuild puts another node into the place of one and gives the whole formula.
type rebuild func(ast.Node) ast.Node

// formula lists the slips that can happen in a formula under the key at hand.
func (e *editor) formula(text string, ternary bool) {
	parsed, ok := e.book.parsed[formulaKey{text, ternary}]
	if !ok {
		return
	}
	first := len(e.edits)
	whole := func(n ast.Node) ast.Node { return n }
	if parsed.found.class == truthClass {
		e.truth(parsed.tree, whole, true)
	} else {
		e.number(parsed.tree, whole)
	}
	e.edits = append(e.edits[:first], distinct(e.edits[first:], text)...)
}

// distinct leaves out edits that give a formula a second time.
func distinct(edits []Edit, now string) []Edit {
	seen := map[string]bool{now: true}
	return slices.DeleteFunc(edits, func(e Edit) bool {
		again := seen[e.Value]
		seen[e.Value] = true
		return again
	})
}

// change notes that a node becomes another.
func (e *editor) change(kind EditKind, put rebuild, was, is ast.Node) {
	e.add(kind, textOf(put(is)), textOf(was), textOf(is))
}

// truth lists the edits of a condition. deny: whether its denial is one of them.
func (e *editor) truth(n ast.Node, put rebuild, deny bool) {
	if _, constant := constantTruth(n); constant {
		if e.at.Key != "if" { // a rule without a condition stays one
			e.constant(n, put)
		}
		return
	}
	switch n := n.(type) {
	case *ast.UnaryNode:
		e.change(TurnComparison, put, n, n.Node)
		e.truth(n.Node, func(x ast.Node) ast.Node { return put(&ast.UnaryNode{Operator: n.Operator, Node: x}) }, joins(n.Node))
	case *ast.ConditionalNode:
		e.branches(n, put, func(x ast.Node, put rebuild) { e.truth(x, put, true) })
	case *ast.BinaryNode:
		if joins(n) {
			e.chain(n, put)
		} else {
			e.comparison(n, put, deny)
		}
	case *ast.IdentifierNode:
		if deny {
			e.change(TurnComparison, put, n, &ast.UnaryNode{Operator: "not", Node: n})
		}
	}
}

// constant turns yes into no.
func (e *editor) constant(n ast.Node, put rebuild) {
	other := "yes"
	if t, _ := constantTruth(n); t == Holds {
		other = "no"
	}
	e.change(ChangeAssumption, put, n, &ast.IdentifierNode{Value: other})
}

// joins reports whether a node joins conditions with and or or.
func joins(n ast.Node) bool {
	b, ok := n.(*ast.BinaryNode)
	return ok && (isAnd(b.Operator) || isOr(b.Operator))
}

// chain drops each part of a row of conditions, and reads each of the words
// between them as the other one.
func (e *editor) chain(n *ast.BinaryNode, put rebuild) {
	same := isAnd
	if isOr(n.Operator) {
		same = isOr
	}
	parts := flatten(n, same)
	for i, part := range parts {
		rest := slices.Delete(slices.Clone(parts), i, i+1)
		e.add(DropPart, textOf(put(row(n.Operator, rest))), textOf(part), "")
	}
	for i := 1; i < len(parts); i++ {
		was := &ast.BinaryNode{Operator: n.Operator, Left: parts[i-1], Right: parts[i]}
		is := &ast.BinaryNode{Operator: otherJoin(n.Operator), Left: parts[i-1], Right: parts[i]}
		e.add(SwapAndOr, textOf(put(swapped(n.Operator, parts, i))), textOf(was), textOf(is))
	}
	for i, part := range parts {
		e.truth(part, func(x ast.Node) ast.Node {
			changed := slices.Clone(parts)
			changed[i] = x
			return put(row(n.Operator, changed))
		}, true)
	}
}

// row joins conditions from the left.
func row(operator string, parts []ast.Node) ast.Node {
	out := parts[0]
	for _, part := range parts[1:] {
		out = &ast.BinaryNode{Operator: operator, Left: out, Right: part}
	}
	return out
}

func otherJoin(operator string) string {
	if isAnd(operator) {
		return "or"
	}
	return "and"
}

// swapped is a row in which the word before part i is the other one: and binds
// tighter than or, as in the text.
func swapped(operator string, parts []ast.Node, i int) ast.Node {
	if isAnd(operator) {
		return &ast.BinaryNode{Operator: "or", Left: row(operator, parts[:i]), Right: row(operator, parts[i:])}
	}
	tight := &ast.BinaryNode{Operator: "and", Left: parts[i-1], Right: parts[i]}
	return row(operator, slices.Concat(parts[:i-1], []ast.Node{tight}, parts[i+1:]))
}

// turnings are the slips that a comparison invites.
var turnings = map[string][]string{
	"<": {"<=", ">="}, "<=": {"<", ">"}, ">": {">=", "<="}, ">=": {">", "<"}, "==": {"!="}, "!=": {"=="},
}

// comparison lists the edits of one atom.
func (e *editor) comparison(n *ast.BinaryNode, put rebuild, deny bool) {
	if n.Operator == "in" {
		if deny {
			e.change(TurnComparison, put, n, &ast.UnaryNode{Operator: "not", Node: n})
		}
		e.words(n, put)
		return
	}
	for _, other := range turnings[n.Operator] {
		if len(other) == len(n.Operator) && !deny && (n.Operator == "==" || n.Operator == "!=") {
			continue // dropping the `not` before it says the same
		}
		e.change(TurnComparison, put, n, &ast.BinaryNode{Operator: other, Left: n.Left, Right: n.Right})
	}
	for _, side := range [2]bool{true, false} {
		e.side(n, put, side)
	}
}

// side lists the edits of one side of a comparison.
func (e *editor) side(n *ast.BinaryNode, put rebuild, left bool) {
	this, other := n.Right, n.Left
	if left {
		this, other = n.Left, n.Right
	}
	replaced := func(x ast.Node) ast.Node {
		if left {
			return put(&ast.BinaryNode{Operator: n.Operator, Left: x, Right: n.Right})
		}
		return put(&ast.BinaryNode{Operator: n.Operator, Left: n.Left, Right: x})
	}
	if v, literal := literal(this); literal {
		e.nudge(this, v, e.book.stepOf(other, v), replaced)
		return
	}
	e.number(this, replaced)
}

// words drops each word of a list and adds each that is not there.
func (e *editor) words(n *ast.BinaryNode, put rebuild) {
	fact, list := n.Left.(*ast.IdentifierNode), n.Right.(*ast.ArrayNode)
	with := func(nodes []ast.Node) *ast.BinaryNode {
		return &ast.BinaryNode{Operator: "in", Left: fact, Right: &ast.ArrayNode{Nodes: nodes}}
	}
	var said []string
	for i, word := range list.Nodes {
		said = append(said, word.(*ast.StringNode).Value)
		if len(list.Nodes) > 1 {
			e.change(ChangeWords, put, n, with(slices.Delete(slices.Clone(list.Nodes), i, i+1)))
		}
	}
	for _, word := range e.book.Facts[e.book.slots[fact.Value]].Choices {
		if !slices.Contains(said, word) {
			e.change(ChangeWords, put, n, with(append(slices.Clone(list.Nodes), &ast.StringNode{Value: word})))
		}
	}
}
