package paper

import (
	"slices"

	"boremend/engine"
)

// ways lists every method with what became of it, and one line why.
func (j Job) ways(w *writer, b Bore) {
	k := j.known(b.Advice)
	w.heading("The ways we looked at")
	var rows [][]string
	for _, m := range b.Advice.Methods {
		cost := "–"
		// What handing over costs says nothing of what then follows.
		if p, ok := j.methodPrice(b, m.Method); ok && (m.Method != j.fallback() || p.Advised) {
			cost = j.span(p.Price)
		}
		rows = append(rows, []string{reworded(m.Title), k.became(m), cost, k.because(m)})
	}
	w.table([]string{"Way", "Outcome", j.priceHead(), "Why"}, rows)
	w.small("Prices: half of all cases stay below the first figure, four of five below the second. A way that is ruled out has none.")
	j.prices(w, b)
	w.subheading("Why not the cheap way?")
	w.list(j.whyNotCheap(b))
}

// became is what became of a method, in a word.
func (k known) became(m engine.MethodStanding) string {
	if m.Method == k.advice.Chosen.Method {
		return "ADVISED"
	}
	return outcomeWords[m.Verdict]
}

var outcomeWords = map[string]string{"go": "possible", "conditional": "possible, with conditions", "no_go": "ruled out", "open": "not settled"}

// because is the one line that tells most about a method.
func (k known) because(m engine.MethodStanding) string {
	if m.Method == k.advice.Chosen.Method {
		if leans := k.leans(m.Method, speaksFor); len(leans) > 0 {
			return reasonText(most(leans))
		}
		return "It is what is left when the others fall away."
	}
	var out []engine.Reason
	for _, r := range m.Reasons {
		if r.Effect == engine.RuleOut.String() && r.Outcome == engine.Holds.String() {
			out = append(out, r)
		}
	}
	switch {
	case len(out) > 0:
		return reasonText(out[0])
	case m.Verdict == engine.Undecided.String():
		return "Cannot be judged while this is not known: " + listed(some(k.meanings(m.Missing), 4)) + "."
	}
	behind := "Scores " + number(m.Known) + " against " + points(k.advice.Chosen.Points) + "."
	if against := k.leans(m.Method, speaksAgainst); len(against) > 0 {
		return behind + " " + reasonText(most(against))
	}
	must, _ := k.demands(m.Method)
	if must = k.notShared(must, k.advice.Chosen.Method); len(must) > 0 {
		return behind + " It would also ask for this: " + reasonText(must[0])
	}
	return behind + " Less speaks for it here."
}

// notShared keeps the reasons that do not hold for another method too.
func (k known) notShared(reasons []engine.Reason, method string) []engine.Reason {
	var own []engine.Reason
	for _, r := range reasons {
		if !slices.ContainsFunc(k.standing(method).Reasons, func(o engine.Reason) bool { return o.Rule == r.Rule && o.Outcome == r.Outcome }) {
			own = append(own, r)
		}
	}
	return own
}

// most picks the weightiest reason.
func most(reasons []engine.Reason) engine.Reason {
	best := reasons[0]
	for _, r := range reasons[1:] {
		if r.Points*r.Points > best.Points*best.Points {
			best = r
		}
	}
	return best
}

// cheapWays are the ways that owners ask for because they cost least, as a rule.
var cheapWays = []string{"leave_bore", "oversize_pin", "sleeve_plain"}

// whyNotCheap answers the question that every owner asks: first for what would
// cost less and is not advised, then for what is cheap as a rule.
func (j Job) whyNotCheap(b Bore) []string {
	k := j.known(b.Advice)
	var said []string
	advised, priced := j.advisedPrice(b)
	for _, m := range b.Advice.Methods {
		p, ok := j.methodPrice(b, m.Method)
		cheaper := ok && priced && p.Price.P50 < advised.Price.P50
		asked := slices.Contains(cheapWays, m.Method)
		if m.Method == b.Advice.Chosen.Method || m.Method == j.fallback() || !cheaper && !asked {
			continue
		}
		text := "“" + reworded(m.Title) + "”: " + outcomeWords[m.Verdict] + "."
		if cheaper {
			text += " In half of all cases at most " + money(p.Price.P50) + " against " + money(advised.Price.P50) + " " + given(j.Offer.Currency) + "."
		}
		text += " " + k.because(m)
		if decides := k.notShared(k.leans(b.Advice.Chosen.Method, speaksFor), m.Method); cheaper && len(decides) > 0 {
			text += " It lacks what decides for the way advised: " + reasonText(most(decides))
		}
		said = append(said, text)
	}
	if len(said) == 0 {
		return []string{"Nothing cheaper stands."}
	}
	return said
}

func (j Job) priceHead() string {
	if j.Offer == nil {
		return "Price"
	}
	return "Price, " + given(j.Offer.Currency)
}
