package term

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"boremend/engine"
)

// Header is what stands above the advice for the bores of a job.
type Header struct {
	Job, About             string
	Invented               bool
	Rulebook, Edition, SHA string
	Path                   string
	Over                   []engine.Edition // what the rulebook lies over, the nearest first
	Off                    []engine.SwitchedOff
	Notes                  int // things about the rulebook that want a look
}

// Advice lays out the advice for all bores of a job: first the answer for each,
// then the reasons.
func Advice(h Header, bores []engine.Advice) *Page {
	p := &Page{}
	if len(bores) > 1 {
		p.Title(h.Job)
		overview(p, bores)
	}
	for _, a := range bores {
		answer(p, h, a)
		outlook(p, a)
		why(p, h, a)
		whyNot(p, a)
		demands(p, h, a)
		cautions(p, h, a)
		missing(p, a)
	}
	footer(p, h)
	return p
}

// overview is one line for each bore of a job with several.
func overview(p *Page, bores []engine.Advice) {
	rows := make([][]string, len(bores))
	for i, a := range bores {
		rows[i] = []string{a.Bore, a.Chosen.Title + list(": ", shortSure(a), "")}
	}
	p.Table([]string{"bore", "what to do"}, rows)
}

// answer says what to do, how sure that is and what comes first. It is short
// enough for the first ten lines of a narrow screen.
func answer(p *Page, h Header, a engine.Advice) {
	p.Heading(strings.ToUpper(a.Bore) + " (" + h.Job + ")")
	p.Labelled("Do:", a.Chosen.Title+list(": ", shortSure(a), "")+".")
	p.Labelled("Sure:", sure(a))
	p.Labelled("First:", first(a))
}

// outlook says what would soonest change the answer, and what to find out next.
func outlook(p *Page, a engine.Advice) {
	if t := a.Nearest; t != nil {
		text := plain(t.Fact) + " " + t.From + " -> " + t.To
		if t.By != "" {
			text += " (by " + t.By + gives(t.Gives) + ")"
		}
		p.Labelled("Tips:", capital(text)+" would make it: "+t.Title+".")
	}
	switch n := a.Next; {
	case n == nil:
		p.Labelled("Next:", "Nothing else need be found out for the choice.")
	case n.Weak:
		p.Labelled("Next:", capital(plain(n.Fact))+", more closely ("+minutesText(n.Minutes)+").")
	default:
		p.Labelled("Next:", capital(plain(n.Fact))+" ("+minutesText(n.Minutes)+").")
	}
}

// shortSure says in a word or two on what terms an advice stands.
func shortSure(a engine.Advice) []string {
	var said []string
	if words := conditionWords[a.Chosen.Verdict]; words != "" {
		said = append(said, words)
	}
	if a.Chosen.Provisional {
		said = append(said, "provisional")
	}
	if a.Chosen.Narrow {
		said = append(said, "narrow lead")
	}
	if len(a.Chosen.Touchy) > 0 {
		said = append(said, "touchy")
	}
	return said
}

var conditionWords = map[string]string{"conditional": "with conditions", "no_go": "nothing else is left", "open": "not settled"}

// sure tells the lead and what could overturn the advice.
func sure(a engine.Advice) string {
	c := a.Chosen
	said := []string{}
	switch {
	case c.Lead == nil:
		said = append(said, "no other method stands")
	case c.Tie:
		said = append(said, "a tie with "+titleOf(a, *c.RunnerUp)+", which is named later in the rulebook")
	case c.Narrow:
		said = append(said, "a narrow lead of "+points(*c.Lead)+" over "+titleOf(a, *c.RunnerUp))
	default:
		said = append(said, "ahead of "+titleOf(a, *c.RunnerUp)+" by "+points(*c.Lead))
	}
	if c.Provisional {
		said = append(said, "PROVISIONAL: what is not known yet could change it"+list(" (", a.Missing, ")"))
	}
	if len(c.Touchy) > 0 || !c.Provisional {
		said = append(said, touchiness(c.Touchy, c.TouchyTogether, c.TouchyUnsure))
	}
	if c.ProvisionalUnsure {
		said = append(said, "nothing unknown was found to change it, and not everything could be ruled out")
	}
	return capital(strings.Join(said, "; ")) + "."
}

// first is what comes before everything else.
func first(a engine.Advice) string {
	if len(a.Chosen.Touchy) > 0 {
		return "measure " + names(a.Chosen.Touchy) + " again, with a better tool or a second hand."
	}
	if a.Chosen.Provisional && len(a.Missing) > 0 {
		return "find out " + names(a.Missing[:min(3, len(a.Missing))]) + "."
	}
	for _, r := range reasonsOf(a, a.Chosen.Method) {
		if r.Effect == "demand" && r.Outcome == "holds" {
			return firstClause(r.Text)
		}
	}
	return "machine down, blocked and locked off; then as the cautions below say."
}

// firstClause cuts a text where its first thought ends; the whole text stands
// among the demands.
func firstClause(text string) string {
	clause := text
	for _, end := range []string{". ", ": ", "; "} {
		clause, _, _ = strings.Cut(clause, end)
	}
	return strings.TrimSuffix(clause, ".") + "."
}

func reasonsOf(a engine.Advice, method string) []engine.Reason {
	for _, m := range a.Methods {
		if m.Method == method {
			return m.Reasons
		}
	}
	return nil
}

func titleOf(a engine.Advice, method string) string {
	for _, m := range a.Methods {
		if m.Method == method {
			return "\"" + m.Title + "\""
		}
	}
	return method
}

// why lists what speaks for the advised method and against it.
func why(p *Page, h Header, a engine.Advice) {
	p.Heading("Why")
	p.Para(a.Chosen.Plain)
	leans := 0
	for _, r := range reasonsOf(a, a.Chosen.Method) {
		if r.Effect == "lean" && r.Outcome == "holds" {
			p.Item(signed(r.Points), said(r)+" ["+r.Rule+h.owner(r.Of)+limitsOf(r)+"]")
			leans++
		}
	}
	if leans == 0 {
		p.Para("No rule leans for or against it: it is what is left when the others fall away.")
	}
}

// said is the text of a reason; one that holds only because nobody knows
// better says so.
func said(r engine.Reason) string {
	if r.UntilKnown {
		return "As long as nobody knows better: " + r.Text
	}
	return r.Text
}

// whyNot gives every other method its strongest reason.
func whyNot(p *Page, a engine.Advice) {
	p.Heading("Why not the others")
	rows := [][]string{}
	for _, m := range a.Methods {
		if m.Method == a.Chosen.Method {
			continue
		}
		rows = append(rows, []string{m.Method, standingWords[m.Verdict], strongest(a, m)})
	}
	p.Table([]string{"method", "standing", "because"}, rows)
}

var standingWords = map[string]string{"go": "possible", "conditional": "conditional", "no_go": "ruled out", "open": "open"}

// strongest picks the reason that tells most about a method that lost.
func strongest(a engine.Advice, m engine.MethodStanding) string {
	var out []string
	for _, r := range m.Reasons {
		if r.Effect == "rule_out" && r.Outcome == "holds" {
			out = append(out, said(r))
		}
	}
	switch {
	case len(out) > 1:
		return out[0] + " And " + counted(len(out)-1, "more reason") + "."
	case len(out) == 1:
		return out[0]
	case m.Verdict == "open":
		return "Not settled while " + names(m.Missing) + be(m.Missing) + " not known."
	}
	behind := "Stands with " + points(m.Known) + " against " + points(a.Chosen.Points) + "."
	worst := 0.0
	text := ""
	for _, r := range m.Reasons {
		if r.Effect == "lean" && r.Outcome == "holds" && r.Points < worst {
			worst, text = r.Points, r.Text
		}
	}
	return strings.TrimSpace(behind + " " + text)
}

// demands lists what must also be done.
func demands(p *Page, h Header, a engine.Advice) {
	var must, maybe []engine.Reason
	for _, r := range reasonsOf(a, a.Chosen.Method) {
		switch {
		case r.Effect != "demand":
		case r.Outcome == "holds":
			must = append(must, r)
		default:
			maybe = append(maybe, r)
		}
	}
	if len(must) > 0 {
		p.Heading("What must also be done")
	}
	for _, r := range must {
		p.Item("-", said(r)+" ["+r.Rule+h.owner(r.Of)+limitsOf(r)+"]")
	}
	if len(maybe) > 0 {
		p.Heading("What may have to be done")
	}
	for _, r := range maybe {
		p.Item("-", "Not known yet whether this applies: "+r.Text+" ["+r.Rule+h.owner(r.Of)+limitsOf(r)+"]")
	}
}

var dangerWords = map[string]string{"danger": "DANGER", "warning": "WARNING", "note": "NOTE"}

// cautions lists the warnings, the gravest first. Those that depend on how the
// work is done are named only; the sheets show them at their step.
func cautions(p *Page, h Header, a engine.Advice) {
	p.Heading("Cautions")
	var atStep []string
	for _, c := range a.Cautions {
		if c.SaidIf != "" {
			atStep = append(atStep, "if "+c.SaidIf+" ("+c.Caution+")")
			continue
		}
		p.Item("!", cautionText(c, h.owner(c.Of)))
	}
	if len(atStep) > 0 {
		p.Para("At their step there are further cautions: " + strings.Join(atStep, "; ") + ".")
	}
	p.Para("Local law, the machine's manufacturer and licensed practice come before anything said here.")
}

// cautionText writes a warning out; one that hangs on how the work is done says
// when it applies.
func cautionText(c engine.CautionShown, owner string) string {
	text := c.Text
	if c.SaidIf != "" {
		text = "If " + c.SaidIf + ": " + text
	}
	if c.UntilKnown {
		text = "As long as nobody knows better: " + text
	}
	return dangerWords[c.Danger] + " " + text + " [" + c.Caution + owner + "]"
}

// missing says what is not known, what was assumed and what could not be checked.
func missing(p *Page, a engine.Advice) {
	var assumed []string
	for name, f := range a.Facts {
		if f.From == engine.Assumed {
			assumed = append(assumed, plain(name)+" "+f.Text)
		}
	}
	slices.Sort(assumed)
	if len(a.Missing)+len(a.NotChecked)+len(assumed) == 0 {
		return
	}
	p.Heading("Not known")
	if len(a.Missing) > 0 {
		p.Item("-", "Could change the advice: "+names(a.Missing)+".")
	}
	if len(assumed) > 0 {
		p.Item("-", "Assumed, not measured: "+strings.Join(assumed, "; ")+".")
	}
	if len(a.NotChecked) > 0 {
		p.Item("-", "Rules that could not be checked: "+strings.Join(a.NotChecked, ", ")+".")
	}
}

// owner says whose a rule is, where it is not of the lowest layer.
func (h Header) owner(of string) string {
	if len(h.Over) == 0 || of == h.Over[len(h.Over)-1].Title {
		return ""
	}
	return ", " + of
}

// limitsOf says whose limits a rule reads, where an overlay has changed them.
func limitsOf(r engine.Reason) string {
	text := ""
	for _, l := range r.Replaced {
		text += ", " + plain(l.Limit) + " of " + l.Of
	}
	return text
}

func footer(p *Page, h Header) {
	p.Heading("About this advice")
	text := fmt.Sprintf("Rulebook %q, edition %s, ", h.Rulebook, h.Edition)
	for _, over := range h.Over {
		text += fmt.Sprintf("over %q, edition %s, ", over.Title, over.Edition)
	}
	text += fmt.Sprintf("SHA-256 %.12s.", h.SHA)
	if h.About != "" {
		p.Para(h.About)
	}
	if h.Invented {
		text = "An invented machine, for demonstration. " + text
	}
	if len(h.Off) > 0 {
		text += " Switched off: " + switchedOff(h.Off) + "."
	}
	if h.Notes > 0 {
		text += " The rulebook wants a look: boremend rulebook check."
	}
	p.Para(text + " Every rule with its values: boremend explain " + h.Path)
}

func switchedOff(off []engine.SwitchedOff) string {
	rules := make([]string, len(off))
	for i, o := range off {
		rules[i] = o.Rule + " (by " + o.Of + ")"
	}
	return strings.Join(rules, ", ")
}

func points(v float64) string {
	text := strconv.FormatFloat(v, 'f', -1, 64)
	if v == 1 || v == -1 {
		return text + " point"
	}
	return text + " points"
}

func signed(v float64) string {
	text := strconv.FormatFloat(v, 'f', -1, 64)
	if v > 0 {
		return "+" + text
	}
	return text
}

func plain(name string) string { return strings.ReplaceAll(name, "_", " ") }

// names joins the first few fact names into words; they come most telling first.
func names(facts []string) string {
	const most = 5
	words := make([]string, 0, most)
	for _, f := range facts {
		if len(words) == most-1 && len(facts) > most {
			words = append(words, fmt.Sprintf("%d more", len(facts)-len(words)))
			break
		}
		words = append(words, plain(f))
	}
	if n := len(words); n > 1 {
		return strings.Join(words[:n-1], ", ") + " and " + words[n-1]
	}
	return strings.Join(words, "")
}

func list(before string, facts []string, after string) string {
	if len(facts) == 0 {
		return ""
	}
	return before + names(facts) + after
}

func be(facts []string) string {
	if len(facts) > 1 {
		return " are"
	}
	return " is"
}

func counted(n int, what string) string {
	if n == 1 {
		return "one " + what
	}
	return strconv.Itoa(n) + " " + what + "s"
}

func capital(text string) string {
	if text == "" {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}
