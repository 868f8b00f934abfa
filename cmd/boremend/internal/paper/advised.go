package paper

import "slices"

// advised tells what to do, why, how sure that is and what it depends on.
func (j Job) advised(w *writer, b Bore) {
	k := j.known(b.Advice)
	c := b.Advice.Chosen
	w.heading("What we advise, and why")
	w.para(sentence(answer(b)) + " " + reworded(c.Plain))
	w.figures(b, customersDrawings...)
	if b.Cut != nil && !b.Cut.StillStands {
		w.note("danger", "STOP", "The hole came out beyond what this way allows. Advised now: "+b.Cut.AdviceAgain+". Nothing more is cut before that has been settled.")
	}
	if leans := k.leans(c.Method, speaksFor); len(leans) > 0 {
		w.subheading("What speaks for it")
		w.list(reasonTexts(leans))
	}
	if leans := k.leans(c.Method, speaksAgainst); len(leans) > 0 {
		w.subheading("What speaks against it")
		w.list(reasonTexts(leans))
	}
	w.subheading("How sure this is")
	w.list(k.howSure())
	shares(w, b.Sure)
	j.depends(w, b)
	if b.Consent != nil {
		j.withConsent(w, b)
	}
}

// answer is the advice in one line.
func answer(b Bore) string {
	text := reworded(b.Advice.Chosen.Title)
	if said := shortly(b.Advice); len(said) > 0 {
		text += " (" + listed(said) + ")"
	}
	return text
}

// customersDrawings show what the repair makes.
var customersDrawings = []string{"ear_after", "section", "build_up", "screws", "plate"}

// standingFacts say what a machine is. Nobody is to think of them as something to
// be changed for the sake of an answer.
var standingFacts = []string{"lifts_people", "certified_structure", "safety_critical"}

// depends lists the conditions of an advice, and what would soonest change it.
func (j Job) depends(w *writer, b Bore) {
	k := j.known(b.Advice)
	must, may := k.demands(b.Advice.Chosen.Method)
	w.subheading("What it depends on")
	if len(must)+len(may) == 0 {
		w.para("No conditions beside careful work.")
	}
	w.list(reasonTexts(must))
	if len(may) > 0 {
		w.para("It is not known yet whether this applies too:")
		w.list(reasonTexts(may))
	}
	if t := b.Advice.Nearest; t != nil && !slices.Contains(standingFacts, t.Fact) {
		were := ", if it were " + reworded(t.To) + " and not " + reworded(t.From)
		if !k.has(t.Fact) {
			were = ", should it turn out to be " + reworded(t.To)
		}
		w.para("What would soonest change the advice: " + k.means(t.Fact) + were + ". Then we would advise: " + reworded(t.Title) + ".")
	}
}

// withConsent says what would be advised if the maker agreed.
func (j Job) withConsent(w *writer, b Bore) {
	c := b.Consent.Advice.Chosen
	w.subheading("If the answer is yes")
	w.para("If those who may decide agree in writing, we would propose: " + reworded(c.Title) + ". " + reworded(c.Plain))
}

// assumed lists what nobody has measured or tested.
func (j Job) assumed(w *writer, b Bore) {
	k := j.known(b.Advice)
	var assumed, unknown []string
	for _, f := range j.Book.Facts {
		switch {
		case k.from(f.Name) == "assumed" && k.has(f.Name):
			assumed = append(assumed, k.means(f.Name)+": "+k.text(f.Name))
		case !k.has(f.Name) && !f.WorkedOut() && f.Tier == 1:
			unknown = append(unknown, k.means(f.Name))
		}
	}
	w.heading("Assumed, and not tested")
	if len(assumed)+len(unknown) == 0 {
		w.para("Everything that this advice rests on was looked at. Damage inside the metal was not.")
		return
	}
	if len(assumed) > 0 {
		w.para("Taken as usual, because nobody measured it:")
		w.list(assumed)
	}
	if len(unknown) > 0 {
		w.para("Not known:")
		w.list(unknown)
	}
}
