package knowledge

import (
	"fmt"
	"slices"
	"strings"

	"boremend/knowledge/price"
)

// JobToPrice is what pricing needs of a job: its bores with the methods that were
// judged for each.
type JobToPrice struct {
	Name  string
	Bores []BoreToPrice
}

// BoreToPrice is one bore. Its methods stand in the order of the advice, the advised
// one first.
type BoreToPrice struct {
	Name    string
	Joint   Joint
	Methods []MethodToPrice
	// PartPrice of a new part and DowntimeCost of an hour, where the job says so.
	PartPrice, DowntimeCost *float64
	// Asked turns facts that are missing, worked-out ones among them, into those that
	// somebody can find out.
	Asked func(facts []string) []string
}

// MethodToPrice is a method as the advice left it.
type MethodToPrice struct {
	Name, Title, Verdict string
	Groups, Sizes        []string
	Stands               bool
	// Why it has no price, and the facts that would settle it, where it does not
	// stand.
	Why   string
	Needs []string
}

// Price prices every method that stands at every bore, and the whole job with every
// bore done as advised.
//
// Items of the whole job, and the first set-up of a line of bores, are shared by the
// bores that need them: each carries an equal part. A method that is not advised is
// priced with the other bores as advised.
func Price(job JobToPrice, rates *price.Rates) price.Offer {
	p := &pricer{job: job, rates: rates, purse: price.Purse{}}
	p.line()
	for i := range job.Bores {
		p.counters = append(p.counters, newCounter(&p.job.Bores[i], rates))
	}
	out := price.Offer{Job: job.Name, Currency: rates.Currency, Rates: rates.RatesNamed, WhyNoTotal: []string{}, Weak: weaknesses()}
	for i := range job.Bores {
		out.Bores = append(out.Bores, p.bore(i))
	}
	out.Total = p.total(&out)
	return out
}

// weaknesses names what no spread here holds.
func weaknesses() []string {
	return []string{
		"Every item is drawn by itself. Where one cause moves several at once, such as a casting harder than thought or a seized pin, the true spread is wider.",
		"Waiting is counted behind the work, though part of it falls into nights; week-ends are not counted.",
		"What the advice demands besides, such as a trial weld or papers, is in the price only where the rates have an item for it.",
		"Damage that shows only once the joint is open, and a repair that fails its test, are in no figure.",
	}
}

// pricer works one offer.
type pricer struct {
	job      JobToPrice
	rates    *price.Rates
	purse    price.Purse
	counters []*counter
	lines    []string // the line that each bore lies on
	listed   []int    // bores of the job on that line
}

// line finds out which bores share an axis: those that name the same number of bores
// in line, and the same span, up to that number.
func (p *pricer) line() {
	members := map[string]int{}
	for _, b := range p.job.Bores {
		n := b.inLine()
		key := fmt.Sprintf("line of %d over %g mm", n, b.Joint["span"].Quantity.Value)
		p.lines = append(p.lines, fmt.Sprintf("%s, %d", key, members[key]/n))
		members[key]++
	}
	for _, line := range p.lines {
		n := 0
		for _, other := range p.lines {
			if other == line {
				n++
			}
		}
		p.listed = append(p.listed, n)
	}
	for i, b := range p.job.Bores {
		if b.inLine() == 1 { // alone on its axis
			p.lines[i], p.listed[i] = fmt.Sprintf("axis of bore %d", i+1), 1
		}
	}
}

// inLine is how many bores lie on the axis of this one, as far as known.
func (b BoreToPrice) inLine() int {
	return max(1, int(b.Joint["bores_in_line"].Quantity.Value))
}

// bore prices one bore by every method.
func (p *pricer) bore(i int) price.BorePrice {
	b := &p.job.Bores[i]
	out := price.BorePrice{Bore: b.Name, Methods: []price.MethodPrice{}, Unpriced: []price.Unpriced{}, BoresInLine: b.inLine(), ListedInLine: p.listed[i]}
	if len(b.Methods) > 0 {
		out.Advised = b.Methods[0].Name
	}
	for m := range b.Methods {
		method := &b.Methods[m]
		lines, why := p.methodLines(i, method)
		if why != nil {
			out.Unpriced = append(out.Unpriced, *why)
			continue
		}
		out.Methods = append(out.Methods, p.method(i, method, lines))
	}
	out.Replacement = p.replacement(i, out)
	return out
}

// method sums the lines of one method up.
func (p *pricer) method(i int, m *MethodToPrice, lines []price.Line) price.MethodPrice {
	b := &p.job.Bores[i]
	sum := price.NewSum(p.rates, p.purse)
	sum.Add(b.Name, lines)
	out := price.MethodPrice{
		Method: m.Name, Title: m.Title, Verdict: m.Verdict, Advised: m.Name == b.Methods[0].Name,
		Price: sum.Price(), Hours: sum.Hours(), Downtime: sum.Downtime(), Lines: lines, Drivers: sum.Drivers(),
		Widened: widened(lines), Notes: p.notes(m),
	}
	if allowed, ok := b.Joint["downtime_allowed"]; ok {
		hours := allowed.Quantity.Value / hourS
		out.DowntimeAllowed = &hours
		out.OverAllowed = out.Downtime.P50 > hours
	}
	if an := p.downtimeCost(b); an != nil {
		cost, both := sum.WithDowntime(*an)
		out.DowntimeCost, out.PriceAndDowntime = &cost, &both
	}
	switch _, known := b.Joint["bores_in_line"]; {
	case !usesSetUp(lines):
	case !known:
		out.Notes = append(out.Notes, "How many bores lie on this axis is not known: counted as one.")
	case b.inLine() > p.listed[i]:
		out.Notes = append(out.Notes, fmt.Sprintf("%d bores lie on this axis and the job lists %d: the others are not in the price.", b.inLine(), p.listed[i]))
	}
	return out
}

const hourS = 3600.0

func usesSetUp(lines []price.Line) bool {
	return slices.ContainsFunc(lines, func(l price.Line) bool { return l.Per == perLine })
}

// downtimeCost of an hour: the job's own word comes before the rates'.
func (p *pricer) downtimeCost(b *BoreToPrice) *float64 {
	if b.DowntimeCost != nil {
		return b.DowntimeCost
	}
	return p.rates.DowntimeCost
}

// notes of the rates for a method.
func (p *pricer) notes(m *MethodToPrice) []string {
	notes := []string{}
	for _, n := range p.rates.Notes {
		if isFor(n.For, m) {
			notes = append(notes, n.Says)
		}
	}
	return notes
}

// widened names the facts that would narrow lines, those of the widest line first.
func widened(lines []price.Line) []string {
	wide := slices.Clone(lines)
	slices.SortStableFunc(wide, func(a, b price.Line) int {
		switch x, y := a.Cost.Variance(), b.Cost.Variance(); {
		case x > y:
			return -1
		case x < y:
			return 1
		}
		return 0
	})
	facts := []string{}
	for _, l := range wide {
		for _, fact := range l.Needs {
			if !slices.Contains(facts, fact) {
				facts = append(facts, fact)
			}
		}
	}
	return facts
}

// total sums all bores as advised.
func (p *pricer) total(out *price.Offer) *price.Total {
	sum := price.NewSum(p.rates, p.purse)
	for _, b := range out.Bores {
		if len(b.Methods) == 0 || !b.Methods[0].Advised {
			out.WhyNoTotal = append(out.WhyNoTotal, b.Bore+": "+whyUnpriced(b))
			continue
		}
		sum.Add(b.Bore, b.Methods[0].Lines)
	}
	if len(out.WhyNoTotal) > 0 || len(out.Bores) == 0 {
		return nil
	}
	return &price.Total{Price: sum.Price(), Hours: sum.Hours(), Downtime: sum.Downtime(), Drivers: sum.Drivers()}
}

func whyUnpriced(b price.BorePrice) string {
	for _, u := range b.Unpriced {
		if u.Method == b.Advised {
			return u.Why
		}
	}
	return "nothing is advised"
}

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
		for j := range p.job.Bores {
			if j != i && p.together(kind.shared, i, j) && p.carries(j, item) {
				sharers++
			}
		}
	}
	n := kind.count(p.counters[i], m, sharers)
	n.Unit = kind.unit
	if kind.shared != "" && !n.Unknown() {
		n.SharedBy, n.Number = sharers, n.Number/float64(sharers)
		n.Group = "job"
		if kind.shared == byLine {
			n.Group = p.lines[i]
		}
	}
	if n.Unknown() {
		n.Needs = p.job.Bores[i].Asked(n.Needs)
	}
	return n
}

// together reports whether two bores share what goes by job or by line.
func (p *pricer) together(shared string, i, j int) bool {
	return shared == byJob || p.lines[i] == p.lines[j]
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
	return n.Unknown() || n.Number > 0
}
