package knowledge

import (
	"slices"
	"strings"

	"boremend/knowledge/price"
)

// methodLines makes the lines of a method, or says why it has no price.
func (p *pricer) methodLines(i int, m *MethodToPrice) ([]price.Line, *price.Unpriced) {
	refuse := func(why string, needs []string) *price.Unpriced {
		return &price.Unpriced{Method: m.Name, Title: m.Title, Verdict: m.Verdict, Why: why, Needs: append([]string{}, needs...)}
	}
	if !m.Stands {
		return nil, refuse(m.Why, m.Needs)
	}
	lines, failed := p.linesFor(i, m)
	if len(failed) > 0 {
		var why, needs []string
		for _, f := range failed {
			why = append(why, f.item+", which "+f.why)
			for _, n := range f.needs {
				if !slices.Contains(needs, n) {
					needs = append(needs, n)
				}
			}
		}
		return nil, refuse("not priced without "+strings.Join(why, "; "), needs)
	}
	if len(lines) == 0 {
		return nil, refuse("the rates have no item for it", nil)
	}
	return lines, nil
}

// failure is an item that could not be counted and has no range to fall back on.
type failure struct {
	item, why string
	needs     []string
}

// linesFor makes a line of every item of the rates that is for the method.
func (p *pricer) linesFor(i int, m *MethodToPrice) (lines []price.Line, failed []failure) {
	for _, items := range [][]price.Item{p.rates.Items, p.rates.Materials} {
		for _, item := range items {
			if !isFor(item.For, m) {
				continue
			}
			n := p.count(i, m, item)
			switch {
			case n.Unknown() && item.Unknown == nil:
				failed = append(failed, failure{item.Means, n.Why, n.Needs})
			case n.Unknown() || n.Number > 0:
				lines = append(lines, p.rates.Line(item, n))
			}
		}
	}
	price.InOrder(lines)
	return lines, failed
}

// isFor reports whether words of the rates mean a method. Replacing the part is none
// of the methods, and only its own items are for it.
func isFor(words []string, m *MethodToPrice) bool {
	for _, word := range words {
		if word == m.Name || slices.Contains(m.Groups, word) || word == price.Everything && m.Name != price.Replaced {
			return true
		}
	}
	return false
}

// count counts what an item goes by at one bore; what bores share is divided by
// those that need it when each is done as advised, this one as it is priced.
func (p *pricer) count(i int, m *MethodToPrice, item price.Item) price.Count {
	kind := counting(item.Per)
	sharers := 1
	if kind.shared != "" {
		sharers = p.needed(item)[p.group(kind, i)]
		if !p.carries(i, item) {
			sharers++
		}
	}
	n := kind.count(p.counters[i], m, sharers)
	n.Unit = kind.unit
	switch {
	case n.Unknown():
		n.Needs = p.job.Bores[i].Asked(n.Needs)
	case kind.shared != "":
		n.SharedBy, n.Number, n.Group = sharers, n.Number/float64(sharers), p.group(kind, i)
	}
	return n
}

// group names the bores with which one shares what is counted: all of the job, or
// those on its line.
func (p *pricer) group(kind countKind, i int) string {
	if kind.shared == byLine {
		return p.lines[i]
	}
	return kind.shared
}

// needed counts by group the bores that need an item when each is done as advised.
func (p *pricer) needed(item price.Item) map[string]int {
	if p.sharing[item.Name] == nil {
		bores := map[string]int{}
		for j := range p.job.Bores {
			if p.carries(j, item) {
				bores[p.group(counting(item.Per), j)]++
			}
		}
		p.sharing[item.Name] = bores
	}
	return p.sharing[item.Name]
}

// carries reports whether the advised method of a bore needs an item.
func (p *pricer) carries(j int, item price.Item) bool {
	b := &p.job.Bores[j]
	if len(b.Methods) == 0 || !b.Methods[0].Stands || !isFor(item.For, &b.Methods[0]) {
		return false
	}
	kind := counting(item.Per)
	if kind.always {
		return true
	}
	n := kind.count(p.counters[j], &b.Methods[0], 1)
	return !n.Unknown() && n.Number > 0
}
