package paper

import (
	"slices"
	"strings"
)

// Shop writes the job traveller: the paper that lies at the machine, says what
// to do in which order, and is filled in on the way. Where the advice is to stop
// and ask, it is the sheet that goes to those who are asked.
func Shop(j Job) Document {
	w := &writer{}
	j.opening(w)
	j.papersHeld(w)
	said := map[string]bool{}
	for _, b := range j.Bores {
		if len(j.Bores) > 1 {
			w.add(PageBreak{})
		}
		w.chapter(capital(given(b.Name)) + ": " + reworded(b.Advice.Chosen.Title))
		j.bench(w, b, said)
	}
	title := "Job traveller"
	if j.allStopped() {
		title = "Hand-over sheet: a joint that waits for a decision"
		j.imprint(w)
	} else {
		j.closing(w)
	}
	for _, b := range j.Bores {
		j.workings(w, b)
	}
	d := j.document("shop", title, w.blocks)
	d.Small = true
	return d
}

// bench writes the parts for one bore. The cautions in said have been written out
// before.
func (j Job) bench(w *writer, b Bore, said map[string]bool) {
	j.terms(w, b)
	switch {
	case j.stopped(b):
		j.asFound(w, b)
		j.handOver(w, b)
		return
	case b.Cut != nil && !b.Cut.StillStands:
		w.para("No further step is printed for this bore: the way that it was planned for may not be used any more. Write down what was measured, and ask for the advice again with it.")
		j.asFound(w, b)
		j.asLeft(w, b)
		return
	}
	j.holds(w, b)
	j.asFound(w, b)
	j.stages(w, b, said)
	j.asLeft(w, b)
}

// stopped reports whether the advice is to stop and ask.
func (j Job) stopped(b Bore) bool {
	return b.Advice.Chosen.Method == j.fallback()
}

// allStopped reports whether nothing of the job is ours to do.
func (j Job) allStopped() bool {
	return !slices.ContainsFunc(j.Bores, func(b Bore) bool { return !j.stopped(b) })
}

// fallback is the method that stops and asks.
func (j Job) fallback() string { return j.Book.Methods[j.Book.Fallback].Name }

// papersHeld leaves room for the numbers of permits and locks.
func (j Job) papersHeld(w *writer) {
	w.heading("Permits and locks")
	w.form([]string{"What", "Number or place", "Who", "Until"}, [][]string{
		{"Work permit", "", "", ""}, {"Lockout: key, lock and tag", "", "", ""}, {"Supports and cribbing seen by", "", "", ""},
		{"Hot-work permit, fire watch", "", "", ""}, {"Weld procedure; welder's test", "", "", ""}, {"Gauges, with their last check", "", "", ""},
	})
	w.small("Local law, the machine's manufacturer and licensed practice come before anything in this paper.")
}

// terms says on what terms the advice stands: how sure it is, and what must be
// done beside the method itself.
func (j Job) terms(w *writer, b Bore) {
	k := j.known(b.Advice)
	if said := shortly(b.Advice); len(said) > 0 {
		w.para("Stands: " + listed(said) + ".")
	}
	w.list(k.howSure())
	must, may := k.demands(b.Advice.Chosen.Method)
	if len(must) > 0 {
		w.subheading("Must be done")
		w.checks(reasonTexts(must))
	}
	if len(may) > 0 {
		w.subheading("Find out whether this must be done")
		w.checks(reasonTexts(may))
	}
	if names := b.Advice.NotChecked; len(names) > 0 {
		w.small("Rules that could not be checked, for want of something known: " + strings.Join(names, ", ") + ".")
	}
	if b.Undrawn != "" {
		w.note("note", "NOT DRAWN", sentence(given(b.Undrawn)))
	}
	if b.Cut != nil {
		grade := "note"
		if !b.Cut.StillStands || b.Cut.Beyond {
			grade = "danger"
		}
		w.note(grade, "AS BORED", j.asBored(*b.Cut))
	}
}

// closing leaves room for what went otherwise than planned, and for the end of
// the job.
func (j Job) closing(w *writer) {
	w.chapter("Before the machine goes back")
	w.heading("Parts and materials used")
	w.form([]string{"Part or material", "Lot or certificate", "Amount"}, [][]string{{"", "", ""}, {"", "", ""}, {"", "", ""}})
	w.heading("What went otherwise than planned")
	w.form([]string{"What, and why", "Agreed with", "Date"}, [][]string{{"", "", ""}, {"", "", ""}})
	w.heading("First checks")
	j.inspections(w)
	w.heading("Release")
	w.add(Blanks{[]string{"Released for work: date, time, hour-meter", "Test reports filed at"}}, Signatures{[]string{"Did the work", "Checked the work", "Owner"}})
	j.imprint(w)
}
