package main

import (
	"fmt"
	"strings"

	"boremend/cases"
	"boremend/cmd/boremend/internal/term"
	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/explain"
)

// replayed is the JSON of advise --replay.
type replayed struct {
	Job     string           `json:"job"`
	Saved   replayedBy       `json:"saved"`
	Now     replayedBy       `json:"now"`
	Same    bool             `json:"same"`    // to the letter, at every bore
	Changed bool             `json:"changed"` // at some bore
	Bores   []explain.Replay `json:"bores"`
}

// replayedBy names a program and its rulebook.
type replayedBy struct {
	Version  string         `json:"version"`
	Rulebook engine.Imprint `json:"rulebook"`
}

// replay gives a saved advice again and shows what is different.
func (a *app) replay(path string) error {
	if a.units != "" {
		return useError{"a saved advice is given again in the units that it was given in", "leave out --units"}
	}
	book, err := a.rulebook()
	if err != nil {
		return err
	}
	saved, job, err := a.loadSaved(path, book)
	if err != nil {
		return err
	}
	out := replayed{Job: saved.Job, Saved: replayedBy{saved.Version, saved.Rulebook}, Now: replayedBy{version(), book.Imprint()}, Same: true}
	for i, bore := range job.Bores {
		if a.bore != "" && !strings.EqualFold(bore.Name, a.bore) {
			continue
		}
		r, err := explain.Again(book, saved.Bores[i], bore.Findings, job.Units)
		if err != nil {
			return err
		}
		out.Same, out.Changed = out.Same && r.Same, out.Changed || r.Changed
		out.Bores = append(out.Bores, r)
	}
	if len(out.Bores) == 0 {
		return useError{fmt.Sprintf("%s has no bore %q", path, a.bore), document.DidYouMean(a.bore, job.BoreNames())}
	}
	if err := a.show(out, term.Replay(header(job, book, path), term.By(out.Saved), term.By(out.Now), out.Bores)); err != nil {
		return err
	}
	if out.Changed || !out.Same && out.Saved.Rulebook.SHA256 == book.SHA256 {
		return errShort
	}
	return nil
}

// loadSaved loads a saved advice, from standard input for "-".
func (a *app) loadSaved(path string, book *engine.Rulebook) (*cases.Saved, *cases.Job, error) {
	if path == "-" {
		return cases.ReadSaved(a.in, "standard input", book)
	}
	return cases.LoadSaved(path, book)
}
