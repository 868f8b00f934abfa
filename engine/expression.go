package engine

import (
	"errors"
	"maps"
	"math"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/expr-lang/expr"
	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/checker"
	"github.com/expr-lang/expr/conf"
	exprfile "github.com/expr-lang/expr/file"
	"github.com/expr-lang/expr/parser"
	"github.com/expr-lang/expr/types"

	"boremend/engine/document"
	"boremend/engine/quantity"
)

// longestFormula bounds the text of one formula. The parser descends once per
// bracket, and a stack that overflows cannot be recovered from.
const longestFormula = 2000

// class is what an expression yields.
type class uint8

const (
	badClass    class = iota // a problem was reported; nothing follows from it
	numberClass              // a number with a dimension
	choiceClass              // the word of a choice fact
	wordClass                // a quoted word
	truthClass               // holds, fails or unknown
)

// typing is the class of a node, with what belongs to it.
type typing struct {
	class     class
	dimension quantity.Dimension
	bare      bool  // a literal number
	fact      *Fact // the fact whose word this is
}

// typer checks one expression against the declared facts, limits and
// functions, and reports every problem at its place in the file.
type typer struct {
	l       *loader
	where   written
	ternary bool // whether `condition ? a : b` is allowed here
	failed  bool
}

// parse turns a formula into a checked tree. The result is nil when something
// was reported.
func (l *loader) parse(w written, ternary bool) (ast.Node, typing) {
	text := w.node.Value
	if p, known := l.book.parsed[formulaKey{text, ternary}]; known {
		return p.tree, p.found
	}
	if utf8.RuneCountInString(text) > longestFormula {
		w.file.Report(w.node, "split it with a worked-out fact", "a formula may have at most %d characters", longestFormula)
		return nil, typing{}
	}
	tree, err := parser.ParseWithConfig(text, l.exprConfig())
	if err != nil {
		l.exprProblem(w, err)
		return nil, typing{}
	}
	t := &typer{l: l, where: w, ternary: ternary}
	found := t.check(tree.Node)
	if t.failed {
		return nil, typing{}
	}
	markCallees(tree.Node)
	if _, err := checker.Check(tree, l.exprConfig()); err != nil {
		l.exprProblem(w, err)
		return nil, typing{}
	}
	if l.varies {
		l.book.parsed = maps.Clone(l.book.parsed) // the other is shared
	}
	l.book.parsed[formulaKey{text, ternary}] = parsedFormula{tree.Node, found}
	return tree.Node, found
}

// formulaKey is a formula as it was written, and whether it may have branches.
type formulaKey struct {
	text    string
	ternary bool
}

// parsedFormula is a formula that has been checked. Nothing changes it any more.
type parsedFormula struct {
	tree  ast.Node
	found typing
}

// exprProblem reports an error of the expression library at its place.
func (l *loader) exprProblem(w written, err error) {
	var at *exprfile.Error
	if !errors.As(err, &at) {
		w.file.Report(w.node, "", "%v", err)
		return
	}
	w.file.ReportWithin(w.node, at.From, "see the guide to rules for what a condition may say", "%s", at.Message)
}

// exprConfig declares all names to the expression library, once.
func (l *loader) exprConfig() *conf.Config {
	if l.config == nil {
		l.config = conf.New(l.environment())
		l.config.MaxNodes = 1000
		expr.DisableAllBuiltins()(l.config)
	}
	return l.config
}

// environment gives the expression library the types of all names.
func (l *loader) environment() types.Map {
	limits := types.Map{}
	for _, limit := range l.book.Limits {
		limits[limit.Name] = types.Float64
	}
	env := types.Map{"yes": types.Bool, "no": types.Bool, "limit": limits,
		callee("min"): types.TypeOf(func(...float64) float64 { return 0 }), callee("max"): types.TypeOf(func(...float64) float64 { return 0 })}
	for _, f := range l.book.Facts {
		env[f.Name] = [...]types.Type{Number: types.Float64, Choice: types.String, YesNo: types.Bool}[f.Sort]
	}
	for name := range l.book.functions {
		env[callee(name)] = types.TypeOf(func(...any) float64 { return 0 })
	}
	return env
}

// callee is the name of a function as the expression library sees it. Facts may
// bear the name of the calculation that works them out; the brackets keep the
// two apart.
func callee(name string) string { return name + "()" }

// calledName is the function that is called, marked or not.
func calledName(n *ast.CallNode) (string, bool) {
	name, ok := n.Callee.(*ast.IdentifierNode)
	if !ok {
		return "", false
	}
	return strings.TrimSuffix(name.Value, callee("")), true
}

// markCallees renames the functions that are called.
func markCallees(root ast.Node) {
	ast.Find(root, func(n ast.Node) bool {
		if call, ok := n.(*ast.CallNode); ok {
			if name, ok := call.Callee.(*ast.IdentifierNode); ok {
				name.Value = callee(name.Value)
			}
		}
		return false
	})
}

func (t *typer) report(n ast.Node, remedy, format string, args ...any) typing {
	t.failed = true
	t.where.file.ReportWithin(t.where.node, n.Location().From, remedy, format, args...)
	return typing{}
}

// broken reports whether a name is declared, but wrongly: that has been
// reported, and nothing more can be said here.
func (t *typer) broken(name string) bool {
	t.failed = t.failed || t.l.broken[name]
	return t.l.broken[name]
}

// check finds the class of a node and reports what is wrong below it.
func (t *typer) check(n ast.Node) typing {
	switch n := n.(type) {
	case *ast.IntegerNode:
		return typing{class: numberClass, bare: true}
	case *ast.FloatNode:
		if math.IsNaN(n.Value) || math.IsInf(n.Value, 0) {
			return t.report(n, "write a smaller number", "the number is too large")
		}
		return typing{class: numberClass, bare: true}
	case *ast.StringNode:
		return typing{class: wordClass}
	case *ast.BoolNode:
		return typing{class: truthClass}
	case *ast.IdentifierNode:
		return t.name(n)
	case *ast.MemberNode:
		return t.limit(n)
	case *ast.UnaryNode:
		return t.unary(n)
	case *ast.BinaryNode:
		return t.binary(n)
	case *ast.CallNode:
		return t.call(n)
	case *ast.ConditionalNode:
		return t.conditional(n)
	}
	return t.report(n, "use comparisons, in, and, or, not, + - * /, min, max and the catalogue's functions", "this is not part of the rule language")
}

func (t *typer) name(n *ast.IdentifierNode) typing {
	if n.Value == "yes" || n.Value == "no" {
		return typing{class: truthClass}
	}
	i, ok := t.l.slots[n.Value]
	if t.broken(n.Value) {
		return typing{}
	}
	if !ok {
		names := []string{"yes", "no"}
		for _, f := range t.l.book.Facts {
			names = append(names, f.Name)
		}
		for name := range t.l.book.functions {
			names = append(names, name)
		}
		slices.Sort(names)
		return t.report(n, document.DidYouMean(n.Value, names), "unknown name %q", n.Value)
	}
	f := t.l.book.Facts[i]
	switch f.Sort {
	case Choice:
		return typing{class: choiceClass, fact: f}
	case YesNo:
		return typing{class: truthClass, fact: f}
	}
	return typing{class: numberClass, dimension: f.Kind.Dimension(), fact: f}
}

// limitName returns NAME of limit.NAME.
func limitName(n *ast.MemberNode) (string, bool) {
	base, ok := n.Node.(*ast.IdentifierNode)
	property, named := n.Property.(*ast.StringNode)
	if !ok || !named || base.Value != "limit" || n.Optional || n.Method {
		return "", false
	}
	return property.Value, true
}

func (t *typer) limit(n *ast.MemberNode) typing {
	name, ok := limitName(n)
	if !ok {
		return t.report(n, "write limit.NAME", "a dot is only for limits")
	}
	limit := t.l.limits[name]
	if t.broken("limit." + name) {
		return typing{}
	}
	if limit == nil {
		names := make([]string, 0, len(t.l.limits))
		for _, l := range t.l.book.Limits {
			names = append(names, l.Name)
		}
		return t.report(n.Property, document.DidYouMean(name, names), "unknown limit %q", name)
	}
	return typing{class: numberClass, dimension: limit.Is.Kind.Dimension()}
}

func (t *typer) unary(n *ast.UnaryNode) typing {
	inner := t.check(n.Node)
	switch {
	case inner.class == badClass:
		return inner
	case isNot(n.Operator) && inner.class == truthClass:
		return typing{class: truthClass}
	case n.Operator == "-" && inner.class == numberClass:
		return typing{class: numberClass, dimension: inner.dimension, bare: inner.bare}
	case isNot(n.Operator):
		return t.report(n, "put brackets round what is denied: not (a in [...])", "`not` denies a condition, and this is %s", inner.words())
	}
	return t.report(n, "", "%s cannot stand before %s", n.Operator, inner.words())
}

func isNot(op string) bool { return op == "not" || op == "!" }
func isAnd(op string) bool { return op == "and" || op == "&&" }
func isOr(op string) bool  { return op == "or" || op == "||" }

func (t *typer) binary(n *ast.BinaryNode) typing {
	if n.Operator == "in" {
		return t.member(n)
	}
	left, right := t.check(n.Left), t.check(n.Right)
	if left.class == badClass || right.class == badClass {
		return typing{}
	}
	switch n.Operator {
	case "and", "&&", "or", "||":
		t.wantCondition(n.Left, n.Operator, left)
		t.wantCondition(n.Right, n.Operator, right)
		return typing{class: truthClass}
	case "==", "!=":
		return t.equal(n, left, right)
	case "<", "<=", ">", ">=":
		if left.class != numberClass || right.class != numberClass {
			return t.report(n, "compare choices with == or in", "%s cannot order %s and %s", n.Operator, left.words(), right.words())
		}
		return t.sameUnits(n, left, right, truthClass)
	case "+", "-", "*", "/":
		return t.arithmetic(n, left, right)
	}
	return t.report(n, "use comparisons, in, and, or, not, + - * /", "%q is not part of the rule language", n.Operator)
}

func (t *typer) wantCondition(n ast.Node, operator string, found typing) {
	if found.class != truthClass {
		t.report(n, "", "`%s` joins conditions, and this is %s", operator, found.words())
	}
}

func (t *typer) equal(n *ast.BinaryNode, left, right typing) typing {
	switch {
	case left.class == choiceClass && right.class == wordClass:
		return t.words(left.fact, n.Right)
	case left.class == wordClass && right.class == choiceClass:
		return t.words(right.fact, n.Left)
	case left.class == numberClass && right.class == numberClass:
		return t.sameUnits(n, left, right, truthClass)
	case left.class == truthClass && left.fact != nil && isConstant(n.Right):
		return typing{class: truthClass}
	case left.class == truthClass && right.class == truthClass:
		return t.report(n, "write fact == yes, or join conditions with and, or", "== compares a yes-or-no fact with yes or no")
	}
	return t.report(n, "", "%s cannot be compared with %s", left.words(), right.words())
}

// isConstant reports whether a node is yes, no, true or false.
func isConstant(n ast.Node) bool {
	_, constant := constantTruth(n)
	return constant
}

func constantTruth(n ast.Node) (Truth, bool) {
	switch n := n.(type) {
	case *ast.BoolNode:
		return truthOf(n.Value), true
	case *ast.IdentifierNode:
		return truthOf(n.Value == "yes"), n.Value == "yes" || n.Value == "no"
	}
	return Unknown, false
}

// words checks quoted words against the choices of a fact.
func (t *typer) words(f *Fact, nodes ...ast.Node) typing {
	for _, n := range nodes {
		word, ok := n.(*ast.StringNode)
		switch {
		case !ok:
			t.report(n, "write the choices in quotes", "%s is compared with something that is not a choice", f.Name)
		case !contains(f.Choices, word.Value):
			t.report(n, document.DidYouMean(word.Value, f.Choices), "%q is not a choice of %s", word.Value, f.Name)
		}
	}
	return typing{class: truthClass}
}

func (t *typer) member(n *ast.BinaryNode) typing {
	left := t.check(n.Left)
	list, ok := n.Right.(*ast.ArrayNode)
	switch {
	case left.class == badClass:
		return left
	case left.class != choiceClass:
		return t.report(n.Left, "", "`in` needs a choice on its left, and this is %s", left.words())
	case !ok:
		return t.report(n.Right, `write in ["a", "b"]`, "`in` needs a list on its right")
	}
	return t.words(left.fact, list.Nodes...)
}

func (t *typer) sameUnits(n ast.Node, left, right typing, result class) typing {
	if left.dimension != right.dimension {
		if left.bare || right.bare {
			measured := left
			if left.bare {
				measured = right
			}
			return t.report(n, "declare a limit with a unit and write limit.NAME", "a bare number meets %s", measured.words())
		}
		return t.report(n, "compare like with like", "%s and %s do not go together", left.words(), right.words())
	}
	return typing{class: result, dimension: left.dimension, bare: left.bare && right.bare}
}

func (t *typer) arithmetic(n *ast.BinaryNode, left, right typing) typing {
	if left.class != numberClass || right.class != numberClass {
		return t.report(n, "", "%s cannot join %s and %s", n.Operator, left.words(), right.words())
	}
	switch n.Operator {
	case "*":
		return typing{class: numberClass, dimension: left.dimension.Times(right.dimension), bare: left.bare && right.bare}
	case "/":
		return typing{class: numberClass, dimension: left.dimension.Over(right.dimension), bare: left.bare && right.bare}
	}
	return t.sameUnits(n, left, right, numberClass)
}

func (t *typer) call(n *ast.CallNode) typing {
	name, ok := calledName(n)
	if !ok {
		return t.report(n, "", "this cannot be called")
	}
	args := make([]typing, len(n.Arguments))
	good := true
	for i, a := range n.Arguments {
		args[i] = t.check(a)
		good = good && args[i].class != badClass
	}
	if name == "min" || name == "max" {
		return t.extreme(n, args, good)
	}
	f := t.l.book.functions[name]
	if f == nil {
		names := []string{"min", "max"}
		for name := range t.l.book.functions {
			names = append(names, name)
		}
		slices.Sort(names)
		return t.report(n.Callee, document.DidYouMean(name, names), "unknown function %q", name)
	}
	if len(args) != len(f.Params) {
		return t.report(n, "it needs "+f.signature(), "%s is given %d values", f.Name, len(args))
	}
	for i, p := range f.Params {
		switch found := args[i]; {
		case found.class == badClass:
		case p.Word && found.class != choiceClass:
			t.report(n.Arguments[i], "it needs "+f.signature(), "%s of %s is a choice, and this is %s", p.Name, f.Name, found.words())
		case !p.Word && (found.class != numberClass || found.dimension != p.Kind.Dimension()):
			t.report(n.Arguments[i], "it needs "+f.signature(), "%s of %s is a %s, and this is %s", p.Name, f.Name, p.Kind, found.words())
		}
	}
	return typing{class: numberClass, dimension: f.Result.Dimension()}
}

// extreme checks min and max: two numbers or more, all of one dimension.
func (t *typer) extreme(n *ast.CallNode, args []typing, good bool) typing {
	if len(args) < 2 {
		return t.report(n, "", "min and max need two numbers or more")
	}
	if !good {
		return typing{}
	}
	for i, a := range args {
		if a.class != numberClass {
			return t.report(n.Arguments[i], "", "min and max compare numbers, and this is %s", a.words())
		}
		if a.dimension != args[0].dimension {
			return t.report(n.Arguments[i], "compare like with like", "%s and %s do not go together", args[0].words(), a.words())
		}
	}
	return typing{class: numberClass, dimension: args[0].dimension}
}

func (t *typer) conditional(n *ast.ConditionalNode) typing {
	if !t.ternary {
		return t.report(n.Cond, "write it with and, or; or declare a worked-out fact", "a condition has no branches")
	}
	condition, a, b := t.check(n.Cond), t.check(n.Exp1), t.check(n.Exp2)
	switch {
	case condition.class == badClass || a.class == badClass || b.class == badClass:
		return typing{}
	case condition.class != truthClass:
		return t.report(n.Cond, "", "before ? stands a condition, and this is %s", condition.words())
	case a.class != b.class:
		return t.report(n.Exp2, "", "the branches differ: %s and %s", a.words(), b.words())
	case a.class == numberClass:
		return t.sameUnits(n, a, b, numberClass)
	case a.class == truthClass:
		return typing{class: truthClass}
	}
	return t.report(n.Exp1, "", "branches are numbers or conditions, and these are %s", a.words())
}
