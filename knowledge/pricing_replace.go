package knowledge

import "boremend/knowledge/price"

// shareOfRatio is how far a price of a part that was only stated as a ratio may be
// off either way: the give-or-take of that fact.
const shareOfRatio = 0.2

// newPartItem names the line of the part itself; the blank keeps it apart from every
// item of rates.
const newPartItem = "new part"

// replacement prices a new part in place of the repair of a bore.
func (p *pricer) replacement(i int, priced price.BorePrice) price.Replacement {
	b := &p.job.Bores[i]
	out := price.Replacement{Available: b.Joint["replacement_part"].Word, Lines: []price.Line{}, Drivers: []price.SpreadShare{}, Notes: []string{}}
	if ratio, ok := b.Joint["replacement_cost_ratio"]; ok {
		out.RatioStated = &ratio.Quantity.Value
	}
	part, ok := p.newPart(b, priced, &out)
	switch {
	case out.Available == "none_made":
		out.Ask = "no new part is made"
		return out
	case !ok:
		out.Ask = "not known: give part_price (under prices: in the job)"
		return out
	}
	replaced := &MethodToPrice{Name: price.Replaced}
	out.Notes = append(out.Notes, p.notes(replaced)...)
	lines, failed := p.linesFor(i, replaced)
	if len(failed) > 0 {
		out.Ask = "not priced without " + failed[0].item + ", which " + failed[0].why
		return out
	}
	out.Lines = append(lines, part)
	sum := price.NewSum(p.rates)
	sum.Add(b.Name, out.Lines, p.purse)
	cost, hours, down := sum.Price(), sum.Hours(), sum.Downtime()
	out.Price, out.Hours, out.Downtime, out.Drivers = &cost, &hours, &down, sum.Drivers()
	if an := p.downtimeCost(b); an != nil {
		standing, both := sum.WithDowntime(*an)
		out.DowntimeCost, out.PriceAndDowntime = &standing, &both
	}
	return out
}

// newPart is the line of the part itself: at the price that the job gives, or at the
// ratio that it states, times the price of the advised repair.
func (p *pricer) newPart(b *BoreToPrice, priced price.BorePrice, out *price.Replacement) (price.Line, bool) {
	each := price.Estimate{Low: 1, Likely: 1, High: 1}
	item := price.Item{Name: newPartItem, Step: price.MaterialStep, Means: "the new part", Per: "part", Sort: price.Material, Unit: "part", Trust: "strong", Each: each}
	var repair *float64
	if len(priced.Methods) > 0 && priced.Methods[0].Advised {
		repair = &priced.Methods[0].Price.P50
	}
	switch {
	case b.PartPrice != nil:
		out.PartPrice, out.PartPriceFrom, item.Price, item.Source = b.PartPrice, "given", *b.PartPrice, "given with the job"
		if repair != nil && *repair > 0 {
			ratio := *b.PartPrice / *repair
			out.RatioNow = &ratio
		}
	case out.RatioStated != nil && repair != nil:
		v := *out.RatioStated * *repair
		out.PartPrice, out.PartPriceFrom, item.Price = &v, "ratio", v
		item.Each = price.Estimate{Low: 1 - shareOfRatio, Likely: 1, High: 1 + shareOfRatio}
		item.Source, item.Trust = "replacement_cost_ratio of the job times the price of the advised repair; the estimate behind that ratio may have been another", "opinion"
	default:
		return price.Line{}, false
	}
	line := p.rates.Line(item, price.Count{Number: 1, From: item.Source})
	line.Price = item.Price // no markup on what the owner buys
	line.Cost = item.Each.Times(item.Price)
	return line, true
}
