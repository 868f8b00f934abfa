package engine

import "slices"

// trackReaders notes which atoms each condition reads, in order.
func (c *compiler) trackReaders() {
	c.p.readers = make([][]int32, len(c.p.conditions))
	for i, root := range c.p.conditions {
		if root >= 0 {
			c.p.readers[i] = c.atomsUnder(root, nil)
		}
	}
}

// atomsUnder adds the atoms under a node to those found.
func (p *program) atomsUnder(root int32, found []int32) []int32 {
	n := p.nodes[root]
	switch n.op {
	case atomNode:
		if !slices.Contains(found, n.first) {
			found = append(found, n.first)
		}
	case notNode, andNode, orNode:
		for _, k := range p.kids[n.first : n.first+n.count] {
			found = p.atomsUnder(k, found)
		}
	}
	return found
}

func (c *compiler) atomsUnder(root int32, found []int32) []int32 { return c.p.atomsUnder(root, found) }

// atomsBeside lists the atoms under a node, but for some nodes.
func (p *program) atomsBeside(root int32, nodes []int32) (found []int32) {
	n := p.nodes[root]
	switch {
	case slices.Contains(nodes, root), n.op == constantNode:
	case n.op == atomNode:
		found = append(found, n.first)
	default:
		for _, k := range p.kids[n.first : n.first+n.count] {
			found = append(found, p.atomsBeside(k, nodes)...)
		}
	}
	return found
}

// trackImpacts finds for each fact what follows from it, however far.
func (c *compiler) trackImpacts() {
	c.p.impacts = make([]impact, len(c.p.steps))
	for slot := range c.p.steps {
		facts := make([]bool, len(c.p.steps))
		atoms := make([]bool, len(c.p.atoms))
		facts[slot] = true
		touched := func(n needs) bool {
			return slices.ContainsFunc(n.slots, func(s int32) bool { return facts[s] }) ||
				slices.ContainsFunc(n.atoms, func(a int32) bool { return atoms[a] })
		}
		imp := &c.p.impacts[slot]
		for _, it := range c.p.tape {
			switch {
			case it.isStep && (int(it.index) == slot || touched(c.p.steps[it.index].needs)):
				facts[it.index] = true
				imp.tape = append(imp.tape, it)
				imp.calls = imp.calls || c.p.steps[it.index].needs.calls
			case !it.isStep && touched(c.p.atoms[it.index].needs):
				atoms[it.index] = true
				imp.tape = append(imp.tape, it)
				imp.calls = imp.calls || c.p.atoms[it.index].needs.calls
			}
		}
		for i, readers := range c.p.readers {
			if slices.ContainsFunc(readers, func(a int32) bool { return atoms[a] }) {
				imp.conditions = append(imp.conditions, int32(i))
			}
		}
	}
}

// trackLeast notes which comparisons set a fact against the one that it must
// reach.
func (c *compiler) trackLeast() {
	c.p.leastOrders = make([]order, len(c.p.steps))
	for slot, f := range c.l.book.Facts {
		if f.AtLeast != "" && c.compared(f.Name, f.AtLeast) {
			c.p.leastOrders[slot] = c.order(f.Name, f.AtLeast)
		}
	}
}

// compared reports whether something puts the two sides in order.
func (c *compiler) compared(a, b string) bool {
	_, seen := c.orderNumbers[[2]string{min(a, b), max(a, b)}]
	return seen
}
