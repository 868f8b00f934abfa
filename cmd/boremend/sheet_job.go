package main

import (
	"os"
	"path/filepath"
	"strings"

	"boremend/cases"
	"boremend/cmd/boremend/internal/paper"
	"boremend/cmd/boremend/internal/paper/figures"
	"boremend/cmd/boremend/internal/paper/photo"
	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/explain"
	"boremend/engine/quantity"
	"boremend/knowledge"
	"boremend/knowledge/price"
)

// loadForPapers loads all that the papers of a job are written from.
func (a *app) loadForPapers(path string, f sheetFlags) (paper.Job, error) {
	book, err := a.rulebook()
	if err != nil {
		return paper.Job{}, err
	}
	rates, err := a.ratesFrom(f.rates, book)
	if err != nil {
		return paper.Job{}, err
	}
	job, err := a.wholeJob(path, book)
	if err != nil {
		return paper.Job{}, err
	}
	bores, err := a.pick(path, job)
	if err != nil {
		return paper.Job{}, err
	}
	out := paperJob(book, rates, job, bores, a.system(job.Units), f.date)
	return out, placePhotos(&out, job, bores, path)
}

// placePhotos opens the photographs that a job names, in its own folder. One that
// cannot be placed stops the papers, and every such one is named.
func placePhotos(out *paper.Job, job *cases.Job, bores []cases.Bore, path string) error {
	folder := filepath.Dir(path) // of "-" it is the one we are in
	root, err := os.OpenRoot(folder)
	if err != nil {
		return useError{folder + " cannot be opened: " + document.Cause(err).Error(), "look at the folder of the job"}
	}
	defer root.Close()
	var refused []string
	place := func(named []cases.Photo) (placed []paper.Photo) {
		for _, n := range named {
			p, err := photo.Open(root.FS(), n.File)
			if err != nil {
				refused = append(refused, err.Error())
				continue
			}
			placed = append(placed, paper.NewPhoto(n.Shows, p))
		}
		return placed
	}
	out.Photos = place(job.Photos)
	for i, b := range bores {
		out.Bores[i].Photos = place(b.Photos)
	}
	if len(refused) > 0 {
		return useError{strings.Join(refused, "; "), ""}
	}
	return nil
}

// paperJob gathers what the papers of some bores of a job are written from; the
// others share the visit and its price.
func paperJob(book *engine.Rulebook, rates *price.Rates, job *cases.Job, bores []cases.Bore, units quantity.System, date string) paper.Job {
	s := sizer{book: book, units: units, sleeve: knowledge.UsualSleeve}
	offer := priceJob(book, job, rates, units, s.sleeve)
	out := paper.Job{Name: job.Name, About: job.About, Invented: job.Invented, Units: units, Book: book, Date: date, Tool: "boremend, " + version(), Offer: &offer}
	for _, bore := range bores {
		out.Bores = append(out.Bores, s.paperBore(bore))
	}
	return out
}

func (s sizer) paperBore(bore cases.Bore) paper.Bore {
	out := paper.Bore{Name: bore.Name, Advice: explain.Advise(s.book, bore.Name, bore.Findings, s.units)}
	out.Sized, out.Cut = s.paperSized(bore)
	for _, r := range bore.Readings {
		out.Readings = append(out.Readings, paper.Reading{DepthMM: r.DepthMM, ClockDeg: r.ClockDeg, DiameterMM: r.DiameterMM, RadiusMM: r.RadiusMM})
	}
	drawings, err := figures.Drawings(figures.Bore{Method: out.Sized.Method, Facts: out.Advice.Facts, Sheets: out.Sized.Sheets, Readings: bore.Readings, AsBored: out.Cut != nil, SleeveMaterial: s.sleeve, Units: s.units})
	if out.Drawings = drawings; err != nil {
		out.Undrawn = err.Error()
	}
	if c := out.Advice.Chosen; len(c.Touchy) > 0 || c.TouchyUnsure {
		sure := explain.New(s.book, bore.Findings, s.units).HowSure(bore.Name)
		out.Sure = &sure
	}
	if out.Advice.Chosen.Method == s.book.Methods[s.book.Fallback].Name {
		out.Consent = s.consent(bore)
	}
	return out
}

// paperSized works the sheets of a bore for its papers.
func (s sizer) paperSized(bore cases.Bore) (paper.Sized, *paper.Cut) {
	values, shown := s.size(bore)
	sized := paper.Sized{Method: values.Method, Sheets: shown.Sheets, Cautions: values.Cautions}
	for _, r := range values.Refused {
		sized.Refused = append(sized.Refused, paper.Refused(r))
	}
	if shown.Cut == nil {
		return sized, nil
	}
	cut := paper.Cut(*shown.Cut)
	return sized, &cut
}

// consent is what would be advised and how it would be sized once the maker had
// agreed. Nil where that changes nothing.
func (s sizer) consent(bore cases.Bore) *paper.Consent {
	found, ok := bore.FindingsWithConsent(s.book)
	if !ok {
		return nil
	}
	bore.Findings = found
	advice := s.book.Advise(bore.Name, found, s.units)
	if advice.Chosen.Method == s.book.Methods[s.book.Fallback].Name {
		return nil
	}
	sized, _ := s.paperSized(bore)
	return &paper.Consent{Advice: advice, Sized: sized}
}
