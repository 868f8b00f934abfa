package paper

import (
	"strconv"

	"boremend/engine"
)

// howSure says in sentences how far an advice can be relied on.
func (k known) howSure() []string {
	c := k.advice.Chosen
	said := []string{k.lead()}
	if c.Provisional {
		text := "PROVISIONAL: something is not known yet that could change this advice"
		if len(k.advice.Missing) > 0 {
			text += ": " + listed(some(k.meanings(k.advice.Missing), 6))
		}
		said = append(said, text+".")
	}
	if len(c.Touchy) > 0 {
		text := "TOUCHY: an error in what was measured or judged could change this advice. It hangs on: " + listed(k.meanings(c.Touchy)) + "."
		if c.TouchyTogether {
			text = "TOUCHY: errors that fall together could change this advice: " + listed(k.meanings(c.Touchy)) + "."
		}
		said = append(said, text+" We look again before anything is cut.")
	}
	switch {
	case len(c.Touchy) > 0 || c.Provisional:
	case c.TouchyUnsure:
		said = append(said, "We found no error of measurement that changes it, but could not rule out every combination.")
	default:
		said = append(said, "No error of measurement within what our tools allow changes it.")
	}
	if c.ProvisionalUnsure {
		said = append(said, "Nothing unknown was found to change it, but not everything could be ruled out.")
	}
	return said
}

// lead tells how far the advised method lies ahead.
func (k known) lead() string {
	c := k.advice.Chosen
	if c.Lead == nil {
		return "No other way stands."
	}
	second := "“" + reworded(k.title(*c.RunnerUp)) + "”"
	switch {
	case c.Tie:
		return "A TIE with " + second + ". Our list names this one first; it is worth talking over."
	case c.Narrow:
		return "THIN LEAD: only " + points(*c.Lead) + " ahead of " + second + ". Another careful hand may choose that one; it is worth talking over."
	}
	return "A clear lead over " + second + ": " + points(*c.Lead) + ". Points weigh arguments; they are no odds."
}

// shortly says in a few words on what terms an advice stands.
func shortly(a engine.Advice) []string {
	var said []string
	c := a.Chosen
	if words := standsWords[c.Verdict]; words != "" {
		said = append(said, words)
	}
	for _, s := range []struct {
		is    bool
		words string
	}{{c.Provisional, "provisional"}, {c.Tie, "a tie"}, {c.Narrow && !c.Tie, "thin lead"}, {len(c.Touchy) > 0, "touchy"}} {
		if s.is {
			said = append(said, s.words)
		}
	}
	return said
}

var standsWords = map[string]string{"conditional": "with conditions", "no_go": "nothing else is left", "open": "not settled"}

func (k known) title(method string) string {
	for _, m := range k.advice.Methods {
		if m.Method == method {
			return m.Title
		}
	}
	return plain(method)
}

// standing is where the rules leave a method.
func (k known) standing(method string) engine.MethodStanding {
	for _, m := range k.advice.Methods {
		if m.Method == method {
			return m
		}
	}
	return engine.MethodStanding{}
}

func number(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

func points(v float64) string {
	text := number(v)
	if v == 1 || v == -1 {
		return text + " point"
	}
	return text + " points"
}

// demands lists what a method asks for beside itself, and what it may ask for
// once more is known.
func (k known) demands(method string) (must, may []engine.Reason) {
	for _, r := range k.standing(method).Reasons {
		switch {
		case r.Effect != engine.Demand.String():
		case r.Outcome == engine.Holds.String():
			must = append(must, r)
		default:
			may = append(may, r)
		}
	}
	return must, may
}

// leans lists the arguments that hold, for a method or against it.
func (k known) leans(method string, wanted func(points float64) bool) []engine.Reason {
	var found []engine.Reason
	for _, r := range k.standing(method).Reasons {
		if r.Effect == engine.Lean.String() && r.Outcome == engine.Holds.String() && wanted(r.Points) {
			found = append(found, r)
		}
	}
	return found
}

func speaksFor(points float64) bool     { return points > 0 }
func speaksAgainst(points float64) bool { return points < 0 }

func reasonTexts(reasons []engine.Reason) []string {
	texts := make([]string, len(reasons))
	for i, r := range reasons {
		texts[i] = reasonText(r)
	}
	return texts
}
