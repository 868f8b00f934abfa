package rules

import (
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/price"
)

func (r *ratesReader) rate(n *yaml.Node) {
	fields, complete := r.Entry(n, rateKeys)
	if !complete {
		return
	}
	rate := price.Rate{Name: r.name(fields["rate"], "rate")}
	rate.Price, _ = r.amount(fields["price"], quantity.Money, mostMoney)
	rate.Means, _ = r.Text(fields["means"])
	r.out.Rates = append(r.out.Rates, rate)
}

// name reads a name that no other entry of its sort may bear.
func (r *ratesReader) name(n *yaml.Node, sort string) string {
	name, ok := r.Text(n)
	if !ok {
		return ""
	}
	if strings.Trim(name, "abcdefghijklmnopqrstuvwxyz0123456789_") != "" {
		r.Report(n, "use small letters, digits and _", "%q cannot be a name", name)
		return ""
	}
	key := sort + " " + name
	if sort == "material" {
		key = "item " + name // lines are told apart by these names alone
	}
	if first, taken := r.claimed[key]; taken {
		r.Report(n, "rename one of the two", "the %s %q is already declared on line %d", sort, name, first)
	}
	r.claimed[key] = n.Line
	return name
}

// item reads hours of work, or of waiting where no rate is named.
func (r *ratesReader) item(n *yaml.Node) price.Item {
	fields, complete := r.Entry(n, itemKeys)
	if !complete {
		return price.Item{}
	}
	out := r.common(fields, "item")
	out.Step = r.step(fields["step"])
	out.Sort, out.Crew, out.Stands = price.Labour, 1, true
	out.Each = r.estimate(fields["hours"], r.hours)
	if fields["unknown"] != nil {
		e := r.estimate(fields["unknown"], r.hours)
		out.Unknown = &e
	}
	waits := false
	if fields["waits"] != nil {
		waits, _ = r.YesNo(fields["waits"])
	}
	if fields["stands"] != nil {
		out.Stands, _ = r.YesNo(fields["stands"])
	}
	switch {
	case waits:
		out.Sort, out.Crew = price.Waiting, 0
		for _, key := range []string{"rate", "crew"} {
			if fields[key] != nil {
				r.Report(fields[key], "take it out, or take waits: out", "nobody is paid for waiting")
			}
		}
	default:
		r.paidBy(n, fields, &out)
	}
	return out
}

// paidBy reads the rate of an item of work and the people at it.
func (r *ratesReader) paidBy(n *yaml.Node, fields map[string]*yaml.Node, out *price.Item) {
	if !r.Require(n, fields, "rate") {
		return
	}
	var names []string
	for _, rate := range r.out.Rates {
		names = append(names, rate.Name)
	}
	if name, ok := r.Text(fields["rate"]); ok {
		out.Rate = name
		if !slices.Contains(names, name) {
			r.Report(fields["rate"], document.DidYouMean(name, names), "unknown rate %q", name)
		}
	}
	if fields["crew"] != nil {
		out.Crew, _ = r.amount(fields["crew"], quantity.Count, 100)
	}
}

// material reads an amount of something that is bought.
func (r *ratesReader) material(n *yaml.Node) price.Item {
	fields, complete := r.Entry(n, materialKeys)
	if !complete {
		return price.Item{}
	}
	out := r.common(fields, "material")
	out.Step, out.Sort = price.MaterialStep, price.Material
	plain := func(n *yaml.Node) (float64, bool) { return r.amount(n, quantity.Ratio, mostAmount) }
	out.Each = r.estimate(fields["amount"], plain)
	if fields["unknown"] != nil {
		e := r.estimate(fields["unknown"], plain)
		out.Unknown = &e
	}
	out.Unit, _ = r.Text(fields["unit"])
	out.Price, _ = r.amount(fields["price"], quantity.Money, mostMoney)
	return out
}

// common reads what items and materials have alike.
func (r *ratesReader) common(fields map[string]*yaml.Node, sort string) price.Item {
	out := price.Item{Name: r.name(fields[sort], sort)}
	out.Means, _ = r.Text(fields["means"])
	out.For = r.methods(fields["for"])
	names, _ := knowledge.Counts()
	out.Per, _ = r.Choice(fields["per"], names...)
	out.Source, _ = r.Text(fields["source"])
	out.Trust, _ = r.Choice(fields["trust"], "strong", "usual", "opinion")
	return out
}

// methods reads whom something is for.
func (r *ratesReader) methods(list *yaml.Node) []string {
	var out []string
	for _, n := range r.List(list) {
		word, ok := r.Text(n)
		if ok && r.words != nil && !slices.Contains(r.words, word) {
			r.Report(n, document.DidYouMean(word, r.words), "unknown method or group %q", word)
		}
		out = append(out, word)
	}
	return out
}

func (r *ratesReader) note(n *yaml.Node) {
	fields, complete := r.Entry(n, noteKeys)
	if !complete {
		return
	}
	note := price.Note{For: r.methods(fields["for"])}
	note.Says, _ = r.Text(fields["says"])
	r.out.Notes = append(r.out.Notes, note)
}

// step is the step of the work, a plain word.
func (r *ratesReader) step(n *yaml.Node) string {
	word, ok := r.Text(n)
	if ok && strings.Trim(word, "abcdefghijklmnopqrstuvwxyz_") != "" {
		r.Report(n, "use small letters and _", "%q cannot name a step", word)
	}
	return word
}

// estimate reads [low, likely, high]; a single figure stands for all three.
func (r *ratesReader) estimate(n *yaml.Node, one func(*yaml.Node) (float64, bool)) price.Estimate {
	if n.Kind == yaml.ScalarNode || n.IsZero() {
		v, _ := one(n)
		return price.Estimate{Low: v, Likely: v, High: v}
	}
	nodes := r.List(n)
	if n.Kind == yaml.SequenceNode && len(nodes) != 3 {
		r.Report(n, "write [low, likely, high], or one figure for all three", "%d figures stand here", len(nodes))
	}
	if len(nodes) != 3 {
		return price.Estimate{}
	}
	low, okLow := one(nodes[0])
	likely, okLikely := one(nodes[1])
	high, okHigh := one(nodes[2])
	switch {
	case !okLow || !okLikely || !okHigh:
	case low > likely:
		r.Report(nodes[0], "put the three in order", "low is more than likely")
	case likely > high:
		r.Report(nodes[2], "put the three in order", "high is less than likely")
	}
	return price.Estimate{Low: low, Likely: likely, High: high}
}
