package main

import (
	"boremend/cases"
	"boremend/cmd/boremend/internal/paper"
	"boremend/engine/explain"
	"boremend/knowledge"
)

// paperJob gathers what the papers of a job are written from.
func (a *app) paperJob(path string, f sheetFlags) (paper.Job, error) {
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
	units := a.system(job.Units)
	s := sizer{book: book, units: units, sleeve: knowledge.UsualSleeve}
	offer := priceJob(book, job, rates, units, s.sleeve)
	out := paper.Job{Name: job.Name, About: job.About, Invented: job.Invented, Units: units, Book: book, Date: f.date, Tool: "boremend, " + version(), Offer: &offer}
	for _, bore := range bores {
		out.Bores = append(out.Bores, s.paperBore(bore))
	}
	return out, nil
}

func (s sizer) paperBore(bore cases.Bore) paper.Bore {
	out := paper.Bore{Name: bore.Name, Advice: explain.Advise(s.book, bore.Name, bore.Findings, s.units)}
	out.Sized, out.Cut = s.paperSized(bore)
	for _, r := range bore.Readings {
		out.Readings = append(out.Readings, paper.Reading{DepthMM: r.DepthMM, ClockDeg: r.ClockDeg, DiameterMM: r.DiameterMM, RadiusMM: r.RadiusMM})
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
