package knowledge

import (
	"fmt"
	"slices"

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
	p := &pricer{job: job, rates: rates, whole: price.NewSum(rates), sharing: map[string]map[string]int{}}
	p.line()
	for i := range job.Bores {
		p.counters = append(p.counters, newCounter(&p.job.Bores[i], rates))
	}
	out := price.Offer{Job: job.Name, Currency: rates.Currency, Rates: rates.RatesNamed, WhyNoTotal: []string{}, Draws: price.Draws, Weak: weaknesses()}
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
	purse    price.Purse // of the bore that is being priced
	whole    *price.Sum  // of all bores as advised
	counters []*counter
	lines    []string                  // the line that each bore lies on
	listed   []int                     // bores of the job on that line
	sharing  map[string]map[string]int // bores that need an item when done as advised, by item and group
}

// line finds out which bores share an axis: those that name the same number of bores
// in line, and the same span, up to that number.
func (p *pricer) line() {
	members, listed := map[string]int{}, map[string]int{}
	for i, b := range p.job.Bores {
		line := fmt.Sprintf("axis of bore %d", i+1) // alone on it
		if n := b.inLine(); n > 1 {
			key := fmt.Sprintf("line of %d over %g mm", n, b.Joint["span"].Quantity.Value)
			line = fmt.Sprintf("%s, %d", key, members[key]/n)
			members[key]++
		}
		p.lines = append(p.lines, line)
		listed[line]++
	}
	for _, line := range p.lines {
		p.listed = append(p.listed, listed[line])
	}
}

// inLine is how many bores lie on the axis of this one, as far as known.
func (b BoreToPrice) inLine() int {
	return max(1, int(b.Joint["bores_in_line"].Quantity.Value))
}

// bore prices one bore by every method.
func (p *pricer) bore(i int) price.BorePrice {
	b := &p.job.Bores[i]
	p.purse = price.Purse{}
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
		if m == 0 {
			p.whole.Add(b.Name, lines, p.purse)
		}
	}
	out.Replacement = p.replacement(i, out)
	return out
}

// method sums the lines of one method up.
func (p *pricer) method(i int, m *MethodToPrice, lines []price.Line) price.MethodPrice {
	b := &p.job.Bores[i]
	sum := price.NewSum(p.rates)
	sum.Add(b.Name, lines, p.purse)
	out := price.MethodPrice{
		Method: m.Name, Title: m.Title, Verdict: m.Verdict, Advised: m.Name == b.Methods[0].Name,
		Price: sum.Price(), Hours: sum.Hours(), Downtime: sum.Downtime(), Lines: lines, Drivers: sum.Drivers(),
		Widened: widened(lines), Notes: p.notes(m),
	}
	for _, l := range lines {
		if l.Trust == opinion {
			out.Opinions++
		}
	}
	out.DowntimeAllowed = b.downtimeAllowed()
	out.OverAllowed = isOver(out.Downtime, out.DowntimeAllowed)
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

// opinion is the trust of a figure that no source stands behind.
const opinion = "opinion"

// downtimeAllowed in hours, where the job says so.
func (b BoreToPrice) downtimeAllowed() *float64 {
	allowed, ok := b.Joint["downtime_allowed"]
	if !ok {
		return nil
	}
	hours := allowed.Quantity.Value / hourS
	return &hours
}

// isOver reports whether half of all cases keep the machine longer than it may stand.
func isOver(downtime price.Spread, allowed *float64) bool {
	return allowed != nil && downtime.P50 > *allowed
}

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
	for _, b := range out.Bores {
		if len(b.Methods) == 0 || !b.Methods[0].Advised {
			out.WhyNoTotal = append(out.WhyNoTotal, b.Bore+": "+whyUnpriced(b))
		}
	}
	if len(out.WhyNoTotal) > 0 || len(out.Bores) == 0 {
		return nil
	}
	total := &price.Total{Price: p.whole.Price(), Hours: p.whole.Hours(), Downtime: p.whole.Downtime(), Drivers: p.whole.Drivers()}
	for _, b := range p.job.Bores {
		if allowed := b.downtimeAllowed(); allowed != nil && (total.DowntimeAllowed == nil || *allowed < *total.DowntimeAllowed) {
			total.DowntimeAllowed = allowed
		}
	}
	total.OverAllowed = isOver(total.Downtime, total.DowntimeAllowed)
	return total
}

func whyUnpriced(b price.BorePrice) string {
	for _, u := range b.Unpriced {
		if u.Method == b.Advised {
			return u.Why
		}
	}
	return "nothing is advised"
}
