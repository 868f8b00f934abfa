package engine

import (
	"slices"
	"strings"

	"github.com/expr-lang/expr/ast"

	"boremend/engine/document"
	"boremend/engine/quantity"
)

// compile turns all formulas into a program. What is wrong is reported; the
// program is only used when nothing is.
func (l *loader) compile() {
	c := &compiler{l: l, p: &l.book.program, atomNumbers: map[string]int32{}, orderNumbers: map[[2]string]int32{}}
	c.p.steps = make([]step, len(l.book.Facts))
	for i, f := range l.book.Facts {
		c.step(int32(i), f)
	}
	for _, w := range l.conditions {
		c.p.conditions = append(c.p.conditions, c.condition(w))
	}
	c.p.rulesAt = len(l.book.Rules)
	c.layOut()
	if l.problems() != nil {
		return
	}
	c.trackReaders()
	c.trackImpacts()
	c.trackLeast()
	c.trackApart()
}

// compiler builds a program. While a formula is compiled, reads gathers what it
// reads directly.
type compiler struct {
	l            *loader
	p            *program
	atomNumbers  map[string]int32
	orderNumbers map[[2]string]int32 // by the sides
	reads        needs
	where        written
}

// step compiles the formulas of a fact.
func (c *compiler) step(slot int32, f *Fact) {
	nodes := c.l.formulaNodes[f]
	s := step{slot: slot, sort: f.Sort, from: valueOf{root: -1}, assume: valueOf{root: -1}}
	c.reads = needs{}
	if nodes.from.node != nil {
		s.from, s.linear = c.formula(f, nodes.from)
	}
	if nodes.assume.node != nil {
		s.assume, _ = c.formula(f, nodes.assume)
	}
	s.needs = c.reads
	if nodes.atLeast.node != nil {
		c.atLeast(f, nodes.atLeast)
	}
	c.p.steps[slot] = s
	c.p.least = append(c.p.least, c.leastOf(f))
}

// leastOf numbers the fact that a fact must reach, or gives -1.
func (c *compiler) leastOf(f *Fact) int32 {
	if slot, ok := c.l.slots[f.AtLeast]; ok {
		return int32(slot)
	}
	return -1
}

// atLeast checks that the fact that another must reach is one of its kind.
func (c *compiler) atLeast(f *Fact, w written) {
	least, ok := c.l.slots[f.AtLeast]
	switch {
	case !ok:
		w.file.Report(w.node, document.DidYouMean(f.AtLeast, c.l.names()), "unknown fact %q", f.AtLeast)
	case c.l.book.Facts[least].Sort != Number || c.l.book.Facts[least].Kind != f.Kind || f.Sort != Number:
		w.file.Report(w.node, "name a fact of the same kind", "%s cannot be held against %s", f.Name, f.AtLeast)
	}
}

// formula compiles from: or assume: of a fact and checks that it yields what
// the fact holds. It gives the formula as a sum too, where it is one.
func (c *compiler) formula(f *Fact, w written) (v valueOf, as *linear) {
	c.where = w
	v = valueOf{root: -1, text: w.node.Value}
	tree, found := c.l.parse(w, true)
	switch {
	case tree == nil:
	case f.Sort == Choice:
		w.file.Report(w.node, "make it an asked fact, or a yes_no", "a choice cannot be worked out")
	case f.Sort == YesNo && found.class == truthClass:
		v.root = c.truth(tree)
	case f.Sort == Number && found.class == numberClass && found.dimension == f.Kind.Dimension():
		v.formula = c.number(tree)
		if sum, ok := c.linear(tree); ok {
			as = &sum
		}
	default:
		w.file.Report(w.node, "change kind: or the formula", "%s is %s, and the formula gives %s", f.Name, f.words(), found.words())
	}
	return v, as
}

// condition compiles the condition of a rule; a rule without one gets -1.
func (c *compiler) condition(w written) int32 {
	if w.node == nil || w.node.Value == "" {
		return -1
	}
	c.where = w
	tree, found := c.l.parse(w, false)
	if tree == nil {
		return -1
	}
	if found.class != truthClass {
		w.file.Report(w.node, "compare it with something", "a condition must hold or fail, and this is %s", found.words())
		return -1
	}
	return c.truth(tree)
}

// truth compiles a condition into nodes and returns its root.
func (c *compiler) truth(n ast.Node) int32 {
	if t, constant := constantTruth(n); constant {
		return c.node(node{op: constantNode, first: int32(t)})
	}
	switch n := n.(type) {
	case *ast.UnaryNode:
		return c.join(notNode, n.Node)
	case *ast.ConditionalNode:
		// c ? a : b, spelled out: where both branches agree the condition may be unknown.
		return c.either(c.both(n.Cond, n.Exp1), c.joinNodes(andNode, c.join(notNode, n.Cond), c.truth(n.Exp2)), c.both(n.Exp1, n.Exp2))
	case *ast.BinaryNode:
		switch {
		case isAnd(n.Operator):
			return c.join(andNode, flatten(n, isAnd)...)
		case isOr(n.Operator):
			return c.join(orNode, flatten(n, isOr)...)
		}
		if flag, wanted, ok := flagTest(n); ok {
			root := c.atom(flag)
			c.p.places[root].text = textOf(n)
			if wanted == Holds {
				return root
			}
			return c.joinNodes(notNode, root)
		}
	}
	return c.atom(n)
}

func (c *compiler) both(a, b ast.Node) int32    { return c.join(andNode, a, b) }
func (c *compiler) either(roots ...int32) int32 { return c.joinNodes(orNode, roots...) }
func (c *compiler) node(n node) int32 {
	c.p.nodes, c.p.places = append(c.p.nodes, n), append(c.p.places, place{})
	return int32(len(c.p.nodes) - 1)
}
func (c *compiler) join(op nodeOp, parts ...ast.Node) int32 {
	roots := make([]int32, len(parts))
	for i, part := range parts {
		roots[i] = c.truth(part)
	}
	return c.joinNodes(op, roots...)
}

func (c *compiler) joinNodes(op nodeOp, roots ...int32) int32 {
	n := node{op: op, first: int32(len(c.p.kids)), count: int32(len(roots))}
	c.p.kids = append(c.p.kids, roots...)
	return c.node(n)
}

// flatten turns a and (b and c) into one list.
func flatten(n *ast.BinaryNode, same func(string) bool) []ast.Node {
	var parts []ast.Node
	for _, side := range []ast.Node{n.Left, n.Right} {
		if inner, ok := side.(*ast.BinaryNode); ok && same(inner.Operator) {
			parts = append(parts, flatten(inner, same)...)
			continue
		}
		parts = append(parts, side)
	}
	return parts
}

// flagTest recognises fact == yes and its like, and says which answer is wanted.
func flagTest(n *ast.BinaryNode) (flag *ast.IdentifierNode, wanted Truth, ok bool) {
	flag, isName := n.Left.(*ast.IdentifierNode)
	wanted, constant := constantTruth(n.Right)
	if !isName || !constant || n.Operator != "==" && n.Operator != "!=" {
		return nil, Unknown, false
	}
	if n.Operator == "!=" {
		wanted = -wanted
	}
	return flag, wanted, true
}

// atom compiles one comparison, or finds the one that is the same.
func (c *compiler) atom(n ast.Node) int32 {
	text := textOf(n)
	number, seen := c.atomNumbers[text]
	if !seen {
		outer := c.reads
		c.reads = needs{}
		a := c.newAtom(n)
		a.text, a.needs = text, c.reads
		c.reads = outer
		number = int32(len(c.p.atoms))
		c.p.atoms = append(c.p.atoms, a)
		c.atomNumbers[text] = number
	}
	if !slices.Contains(c.reads.atoms, number) {
		c.reads.atoms = append(c.reads.atoms, number)
	}
	root := c.node(node{op: atomNode, first: number})
	c.p.places[root] = c.placeOf(n)
	if !seen {
		c.p.atoms[number].node = root
	}
	return root
}

// placeOf finds where an expression begins in its file.
func (c *compiler) placeOf(n ast.Node) place {
	start := n.Location().From
	ast.Find(n, func(part ast.Node) bool {
		start = min(start, part.Location().From)
		return false
	})
	line, column := c.where.file.Place(c.where.node, start)
	return place{line, column, textOf(n)}
}

func (c *compiler) newAtom(n ast.Node) atom {
	name, ok := n.(*ast.IdentifierNode)
	if ok {
		return atom{shape: flag, left: c.slot(name), leftText: name.Value, rightText: "yes"}
	}
	b := n.(*ast.BinaryNode)
	a := atom{op: comparisons[b.Operator], leftText: textOf(b.Left), rightText: textOf(b.Right)}
	if f, words := c.choiceTest(b); f != nil {
		a.shape, a.left = member, c.slot(f)
		for _, word := range words {
			a.set |= 1 << c.choice(f, word)
		}
		if b.Operator == "!=" {
			a.set = ^a.set
		}
		return a
	}
	a.kind = c.kindOf(b.Left, b.Right)
	left, leftIsFact := b.Left.(*ast.IdentifierNode)
	right, rightIsFact := b.Right.(*ast.IdentifierNode)
	constant, constantRight := c.constant(b.Right)
	switch {
	case leftIsFact && constantRight:
		a.shape, a.left, a.constant = againstConstant, c.slot(left), constant
	case leftIsFact && rightIsFact:
		a.shape, a.left, a.right = againstFact, c.slot(left), c.slot(right)
	default:
		a.shape, a.leftOf, a.rightOf = general, c.number(b.Left), c.number(b.Right)
	}
	if sides, ok := c.linear(&ast.BinaryNode{Operator: "-", Left: b.Left, Right: b.Right}); ok {
		sides.steps-- // comparing rounds nothing
		a.sides = &sides
	}
	if a.shape != againstConstant {
		a.order = c.order(a.leftText, a.rightText)
	}
	return a
}

// choiceTest recognises a choice compared with words.
func (c *compiler) choiceTest(b *ast.BinaryNode) (*ast.IdentifierNode, []ast.Node) {
	if list, ok := b.Right.(*ast.ArrayNode); ok {
		return b.Left.(*ast.IdentifierNode), list.Nodes
	}
	if word, ok := b.Right.(*ast.StringNode); ok {
		return b.Left.(*ast.IdentifierNode), []ast.Node{word}
	}
	if word, ok := b.Left.(*ast.StringNode); ok {
		return b.Right.(*ast.IdentifierNode), []ast.Node{word}
	}
	return nil, nil
}

func (c *compiler) choice(f *ast.IdentifierNode, word ast.Node) int {
	return slices.Index(c.l.book.Facts[c.l.slots[f.Value]].Choices, word.(*ast.StringNode).Value)
}

// slot numbers a fact and notes that it is read.
func (c *compiler) slot(n *ast.IdentifierNode) int32 {
	slot := int32(c.l.slots[n.Value])
	if !slices.Contains(c.reads.slots, slot) {
		c.reads.slots = append(c.reads.slots, slot)
	}
	return slot
}

// kindOf finds the kind in which to show the sides of a comparison: that of the
// first fact or limit in it that has the dimension of the whole.
func (c *compiler) kindOf(sides ...ast.Node) quantity.Kind {
	t := &typer{l: c.l, ternary: true}
	want := t.check(sides[0]).dimension
	kind, found := quantity.Ratio, false
	for _, side := range sides {
		ast.Find(side, func(n ast.Node) bool {
			if k, ok := c.declaredKind(n); ok && !found && k.Dimension() == want {
				kind, found = k, true
			}
			return false
		})
	}
	if found {
		return kind
	}
	for _, name := range quantity.KindNames() {
		if k, _ := quantity.KindNamed(name); k.Dimension() == want {
			return k
		}
	}
	return quantity.Ratio
}

func (c *compiler) declaredKind(n ast.Node) (quantity.Kind, bool) {
	switch n := n.(type) {
	case *ast.IdentifierNode:
		if slot, ok := c.l.slots[n.Value]; ok && c.l.book.Facts[slot].Sort == Number {
			return c.l.book.Facts[slot].Kind, true
		}
	case *ast.MemberNode:
		if name, ok := limitName(n); ok && c.l.limits[name] != nil {
			return c.l.limits[name].Is.Kind, true
		}
	}
	return 0, false
}

// layOut puts atoms and steps on the tape so that each comes after what it
// needs, and reports facts that need themselves.
func (c *compiler) layOut() {
	facts := make([]uint8, len(c.p.steps)) // 0 new, 1 under way, 2 done
	atoms := make([]bool, len(c.p.atoms))
	var path []string
	var doFact func(slot int32) bool
	var doNeeds func(n needs) bool
	doAtom := func(i int32) bool {
		if !atoms[i] {
			atoms[i] = true
			if !doNeeds(c.p.atoms[i].needs) {
				return false
			}
			c.p.tape = append(c.p.tape, item{false, i})
		}
		return true
	}
	doNeeds = func(n needs) bool {
		for _, slot := range n.slots {
			if !doFact(slot) {
				return false
			}
		}
		for _, i := range n.atoms {
			if !doAtom(i) {
				return false
			}
		}
		return true
	}
	doFact = func(slot int32) bool {
		f := c.l.book.Facts[slot]
		path = append(path, f.Name)
		defer func() { path = path[:len(path)-1] }()
		switch facts[slot] {
		case 1:
			c.circle(f, path)
			return false
		case 2:
			return true
		}
		facts[slot] = 1
		s := &c.p.steps[slot]
		if !doNeeds(s.needs) {
			return false
		}
		facts[slot] = 2
		if s.from.given() || s.assume.given() {
			c.p.tape = append(c.p.tape, item{true, slot})
		}
		return true
	}
	for slot := range c.p.steps {
		if !doFact(int32(slot)) {
			return
		}
	}
	for i := range c.p.atoms {
		if !doAtom(int32(i)) {
			return
		}
	}
}

// circle reports a fact that is worked out from itself.
func (c *compiler) circle(f *Fact, path []string) {
	nodes := c.l.formulaNodes[f]
	w := nodes.from
	if w.node == nil {
		w = nodes.assume
	}
	start := slices.Index(path, f.Name)
	w.file.Report(w.node, "break the circle with an asked fact", "%s is worked out from itself: %s", f.Name, strings.Join(path[start:], " <- "))
}

// order numbers the pair of sides that a comparison puts in order; a comparison
// with the sides exchanged speaks of the same pair.
func (c *compiler) order(left, right string) order {
	exchanged := right < left
	if exchanged {
		left, right = right, left
	}
	number, seen := c.orderNumbers[[2]string{left, right}]
	if !seen {
		c.p.orders++
		number = int32(c.p.orders)
		c.orderNumbers[[2]string{left, right}] = number
	}
	return order{number, exchanged}
}
