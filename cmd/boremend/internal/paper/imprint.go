package paper

import (
	"crypto/sha256"
	"encoding/hex"
	"strings"

	"boremend/engine/quantity"
)

// document wraps blocks into a paper with what every paper carries.
func (j Job) document(forWhom, title string, blocks []Block) Document {
	page := A4
	if j.Units == quantity.Inch {
		page = Letter
	}
	return Document{For: forWhom, Title: title, Subject: given(j.Name), Blocks: blocks, Page: page, Date: j.Date, Mark: Mark(j.Name),
		Foot: []string{
			"Advice, not a certificate.  " + given(j.Book.Title) + ", edition " + given(j.Book.Edition) + ", SHA-256 " + short(j.Book.SHA256) + ".",
			j.Tool + ", " + j.Date + ". " + j.rates(),
		}}
}

// Mark is by which boremend knows a paper of this job again, whatever signs the
// name of the job is made of.
func Mark(job string) string {
	sum := sha256.Sum256([]byte(job))
	return "boremend-paper-" + hex.EncodeToString(sum[:])[:16]
}

// short is the front of a digest, enough to tell editions apart.
func short(digest string) string { return digest[:min(12, len(digest))] }

// imprint says by which rules, rates and program a paper was made.
func (j Job) imprint(w *writer) {
	w.heading("About this paper")
	w.para("This is advice, not a certificate. It rests on what was found and written down, and on the rules named here. No formula in it covers fatigue, cracks that nobody found, or damage inside the metal.")
	rows := [][2]string{
		{"Rulebook", given(j.Book.Title) + ", edition " + given(j.Book.Edition)},
		{"SHA-256 of the rulebook", j.Book.SHA256},
		{"Rates", strings.TrimPrefix(j.rates(), "Rates: ")},
		{"Made with", j.Tool},
		{"Date", j.Date},
	}
	w.pairs(rows)
}

// rates names the rates that the prices were worked by.
func (j Job) rates() string {
	if j.Offer == nil {
		return "Rates: none, nothing was priced."
	}
	r := j.Offer.Rates
	return "Rates: " + given(r.Title) + ", edition " + given(r.Edition) + " of " + r.Date + ", SHA-256 " + short(r.SHA256) + "."
}
