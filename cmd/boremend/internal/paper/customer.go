package paper

// Customer writes the paper that an owner reads before saying yes: what was
// found, what it leads to, what we advise and why not something else, what it
// costs, and what the owner must do.
func Customer(j Job) Document {
	w := &writer{}
	j.opening(w)
	for _, b := range j.Bores {
		if len(j.Bores) > 1 {
			w.chapter(capital(given(b.Name)))
		}
		for _, part := range []func(*writer, Bore){j.found, j.leftAlone, j.advised, j.ways, j.assumed} {
			part(w, b)
		}
	}
	for _, part := range []func(*writer){j.costs, j.mustDo, j.approvals, j.ownersCautions, j.signing, j.imprint} {
		part(w)
	}
	return j.document("customer", "Worn bore: what we found and what we advise", w.blocks)
}

// opening names the job and answers in a line for each bore.
func (j Job) opening(w *writer) {
	w.pairs([][2]string{{"Job", given(j.Name)}, {"Date", j.Date}})
	w.para(given(j.About))
	if j.Invented {
		w.note("", "EXAMPLE", "This machine and this job are invented, for demonstration.")
	}
	w.add(Blanks{[]string{"For (customer)", "Machine, serial number, hours", "From (shop), written by"}})
	w.heading("In short")
	for _, b := range j.Bores {
		w.add(Answer{capital(given(b.Name)), answer(b)})
	}
	w.photos(j.Photos)
}

// signing leaves room for those who agree.
func (j Job) signing(w *writer) {
	w.heading("Signed")
	w.para("We have read this paper and talked it over, with what is not known and what it depends on.")
	w.add(Signatures{[]string{"Owner", "For the shop"}})
}
