package paper

import (
	"boremend/engine"
)

// ways lists every method with what became of it, and one line why.
func (j Job) ways(w *writer, b Bore) {
	k := j.known(b.Advice)
	w.heading("The ways we looked at")
	var rows [][]string
	for _, m := range b.Advice.Methods {
		rows = append(rows, []string{reworded(m.Title), k.became(m), k.because(m)})
	}
	w.table([]string{"Way", "Outcome", "Why"}, rows)
	w.subheading("Why not the cheap way?")
	w.list(k.whyNotCheap())
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
	behind := "Behind by " + points(k.advice.Chosen.Points-m.Known) + "."
	if k.advice.Chosen.Points <= m.Known {
		behind = "Level with the one advised."
	}
	if against := k.leans(m.Method, speaksAgainst); len(against) > 0 {
		return behind + " " + reasonText(most(against))
	}
	if must, _ := k.demands(m.Method); len(must) > 0 {
		return behind + " It would ask for this, among other things: " + reasonText(must[0])
	}
	return behind + " Less speaks for it here."
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

// whyNotCheap answers the question that every owner asks.
func (k known) whyNotCheap() []string {
	var said []string
	for _, name := range cheapWays {
		m := k.standing(name)
		switch {
		case m.Method == "":
		case name == k.advice.Chosen.Method:
			return []string{"This is the cheap way: “" + reworded(m.Title) + "” is what we advise."}
		default:
			said = append(said, "“"+reworded(m.Title)+"”: "+outcomeWords[m.Verdict]+". "+k.because(m))
		}
	}
	return said
}
