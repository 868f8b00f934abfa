package cases

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"os"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// SavedFormat marks a saved advice, so that no other JSON passes for one.
const SavedFormat = "boremend advice 1"

// Saved is the advice for a job as it is written down, with all that is needed
// to give it again: the facts with value, unit, give-or-take and origin, the
// units of the reader, the rulebook, and the version of the program.
type Saved struct {
	Format   string          `json:"format"`
	Version  string          `json:"version"`
	Job      string          `json:"job"`
	About    string          `json:"about"`
	Invented bool            `json:"invented"`
	Units    string          `json:"units"` // mm or inch, of the texts
	Rulebook engine.Imprint  `json:"rulebook"`
	Bores    []engine.Advice `json:"bores"`
}

// NewSaved is the advice for a job, before any bore.
func NewSaved(job *Job, book *engine.Rulebook, units quantity.System, version string) Saved {
	return Saved{SavedFormat, version, job.Name, job.About, job.Invented, unitsWord(units), book.Imprint(), nil}
}

func systemNamed(word string) quantity.System {
	if word == unitsWord(quantity.Inch) {
		return quantity.Inch
	}
	return quantity.Millimetre
}

func unitsWord(units quantity.System) string {
	if units == quantity.Inch {
		return "inch"
	}
	return "mm"
}

// LoadSaved reads a saved advice, and from its facts the job that it was given
// for, as the rulebook knows them. The bores of both are in the same order.
func LoadSaved(path string, book *engine.Rulebook) (*Saved, *Job, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, nil, document.Problems{{File: path, Line: 1, Column: 1, Says: "cannot be opened: " + document.Cause(err).Error()}}
	}
	defer file.Close()
	return ReadSaved(file, path, book)
}

// ReadSaved is LoadSaved from a stream; name stands for it in messages.
func ReadSaved(r io.Reader, name string, book *engine.Rulebook) (*Saved, *Job, error) {
	f, text := document.ReadJSON(r, name)
	if f.Root == nil {
		return nil, nil, f.Problems().Err()
	}
	fields := f.Fields(f.Root, "format", "version", "job", "about", "invented", "units", "rulebook", "bores")
	if format := fields["format"]; format == nil || format.Value != SavedFormat {
		f.Report(format, "save one with: boremend advise JOB --format json", "this is no saved advice of a kind that can be read here")
		return nil, nil, f.Problems().Err()
	}
	f.Require(f.Root, fields, "version", "job", "units", "rulebook", "bores")
	units, _ := f.Choice(fields["units"], unitsWord(quantity.Millimetre), unitsWord(quantity.Inch))
	job := &Job{Units: systemNamed(units)}
	for _, n := range f.List(fields["bores"]) {
		job.Bores = append(job.Bores, savedBore(f, n, book, job.Units))
	}
	if len(job.Bores) == 0 && len(f.Problems()) == 0 {
		f.Report(fields["bores"], "save the advice anew", "there is no bore in it")
	}
	if err := f.Problems().Err(); err != nil {
		return nil, nil, err
	}
	saved := decodeSaved(f, text)
	if err := f.Problems().Err(); err != nil {
		return nil, nil, err
	}
	job.Name, job.About, job.Invented = saved.Job, saved.About, saved.Invented
	for i := range job.Bores {
		job.Bores[i].Name = saved.Bores[i].Bore
	}
	return saved, job, nil
}

// savedBore reads what was found at one bore.
func savedBore(f *document.File, n *yaml.Node, book *engine.Rulebook, units quantity.System) Bore {
	facts := valueOf(n, "facts")
	if facts == nil || len(facts.Content) == 0 {
		f.Report(n, "save the advice anew", "a bore without facts cannot be advised on again")
		return Bore{}
	}
	found := book.ReadShown(f, facts)
	book.CheckTogether(found, units, func(fact *engine.Fact, says string) {
		f.Report(valueOf(facts, fact.Name), "save the advice anew", "%s", says)
	})
	return Bore{Findings: found}
}

// decodeSaved decodes the advice itself, every key of which must be known.
func decodeSaved(f *document.File, text []byte) *Saved {
	saved := &Saved{}
	decoder := json.NewDecoder(bytes.NewReader(text))
	decoder.DisallowUnknownFields()
	err := decoder.Decode(saved)
	var kind *json.UnmarshalTypeError
	switch {
	case err == nil:
	case errors.As(err, &kind):
		f.Report(nil, "save the advice anew", "%s cannot be a %s", kind.Field, kind.Value)
	default:
		f.Report(nil, "another version of the program may have written it: save the advice anew", "%s", strings.TrimPrefix(err.Error(), "json: "))
	}
	return saved
}
