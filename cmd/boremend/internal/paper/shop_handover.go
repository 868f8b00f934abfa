package paper

// handOver is what goes to the maker or an engineer when the advice is to stop
// and ask.
func (j Job) handOver(w *writer, b Bore) {
	k := j.known(b.Advice)
	w.heading("Handed over for a decision")
	w.note("danger", "STOP", "Nothing is cut, welded, bolted or put back to work. The machine stays locked and tagged until the answer is there in writing.")
	w.subheading("Why we do not decide this")
	var why [][]string
	for _, m := range b.Advice.Methods {
		if m.Method != b.Advice.Chosen.Method {
			why = append(why, []string{reworded(m.Title), outcomeWords[m.Verdict], k.because(m)})
		}
	}
	w.table([]string{"Way", "Outcome", "Why"}, why)
	j.proposal(w, b)
	w.subheading("What we ask")
	w.checks([]string{
		"May this joint be repaired, and by which procedure?",
		"What limits of wear, wall and load hold for it?",
		"Which tests and which examination are wanted before it works again?",
	})
	w.add(Blanks{[]string{"Sent to, date", "Answer from, date", "Filed at"}})
	w.subheading("Until then")
	for _, c := range b.Sized.Cautions {
		if c.SaidIf == "" && c.Danger == "danger" {
			w.note(c.Danger, gradeWords[c.Danger], cautionText(c)+" ["+c.Caution+"]")
		}
	}
}

// proposal is what would be done if the answer were yes, with its sizes.
func (j Job) proposal(w *writer, b Bore) {
	w.subheading("What we would propose")
	if b.Consent == nil {
		w.para("Nothing. Even with consent, none of our ways stands for this joint as it was found.")
		return
	}
	c := b.Consent.Advice
	k := j.known(c)
	w.para("If consent comes in writing: " + sentence(answer(Bore{Advice: c})) + " " + reworded(c.Chosen.Plain))
	must, _ := k.demands(c.Chosen.Method)
	w.list(reasonTexts(must))
	all := plan{title: "Sizes of the proposal"}
	for _, sheet := range b.Consent.Sized.Sheets {
		all.calculations = append(all.calculations, sheet.Calculation)
	}
	j.plan(w, b.Consent.Sized, all)
}
