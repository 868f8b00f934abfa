// Package cases reads job files: what was found at each worn bore of one visit,
// and in worked cases also the advice that a careful hand would expect.
//
// It knows how a job is written down. It knows nothing of how a bore is judged:
// the facts themselves belong to the rulebook that it is given.
package cases

import (
	"io"
	"os"
	"path/filepath"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// Job is one visit: a machine, its worn bores, what was found.
type Job struct {
	Name     string
	About    string
	Invented bool // demo data says so
	Units    quantity.System
	Bores    []Bore
	Photos   []Photo // of the whole job
}

// Bore is one hole with what was found at it.
type Bore struct {
	Name     string
	Findings engine.Findings
	Readings []Reading
	AsBored  []Reading
	Photos   []Photo
	Prices   Prices
	Expect   *Expect // only in worked cases
}

// Reading is one measurement in a bore. Diameter or Radius is zero when the
// other was read; a radius is taken from the true axis.
type Reading struct {
	DepthMM    float64
	ClockDeg   float64 // clockwise from 12
	DiameterMM float64
	RadiusMM   float64
	GiveOrTake float64
}

// Load reads the job file at path, with the facts that the rulebook declares.
// The error holds every problem found.
func Load(path string, book *engine.Rulebook) (*Job, error) {
	f, _ := document.Open(os.DirFS(filepath.Dir(path)), filepath.Base(path), path)
	return read(f, book)
}

// ReadFrom reads a job from a stream; name stands for it in messages.
func ReadFrom(r io.Reader, name string, book *engine.Rulebook) (*Job, error) {
	f, _ := document.ReadFrom(r, name)
	return read(f, book)
}

// Read reads a job from text; name stands for it in messages.
func Read(name string, text []byte, book *engine.Rulebook) (*Job, error) {
	return read(document.Parse(name, text), book)
}

func read(f *document.File, book *engine.Rulebook) (*Job, error) {
	r := &reader{File: f, book: book, job: &Job{}}
	if f.Root != nil {
		r.read()
	}
	if err := f.Problems().Err(); err != nil {
		return nil, err
	}
	return r.job, nil
}

// reader decodes one job file.
type reader struct {
	*document.File
	book   *engine.Rulebook
	job    *Job
	bare   string // unit of lengths written without one
	shared *yaml.Node
	// foundOnly leaves expectations unread.
	foundOnly bool
	prices    Prices // of the whole job
}

func (r *reader) read() {
	fields, complete := r.Entry(r.Root, jobKeys)
	if !complete {
		return
	}
	r.job.Name, _ = r.Text(fields["job"])
	r.job.About, _ = r.Text(fields["about"])
	if fields["invented"] != nil {
		r.job.Invented, _ = r.YesNo(fields["invented"])
	}
	if fields["units"] != nil {
		r.units(fields["units"])
	}
	for range r.Pairs(fields["facts"]) { // reports what is not a mapping
		r.shared = fields["facts"]
	}
	r.prices = r.readPrices(fields["prices"], Prices{})
	r.job.Photos = r.photos(fields["photos"])
	bores := r.List(fields["bores"])
	if len(bores) == 0 && len(r.Problems()) == 0 {
		r.Report(fields["bores"], "add an entry `- bore: NAME`", "a job needs at least one bore")
	}
	for _, n := range bores {
		r.bore(n)
	}
	if !r.foundOnly {
		r.expectations(fields["expect"])
	}
}

// units sets the unit of bare lengths, and with it the reader's units.
func (r *reader) units(n *yaml.Node) {
	r.bare, r.job.Units = unitsOf(r.File, n)
}

func (r *reader) bore(n *yaml.Node) {
	fields, complete := r.Entry(n, boreKeys)
	if !complete {
		return
	}
	b := Bore{}
	b.Name, _ = r.Text(fields["bore"])
	for _, other := range r.job.Bores {
		if other.Name == b.Name {
			r.Report(fields["bore"], "give each bore a name of its own", "the bore %q is listed twice", b.Name)
		}
	}
	b.AsBored = r.readings(fields["as_bored"])
	b.Photos = r.photos(fields["photos"])
	b.Prices = r.readPrices(fields["prices"], r.prices)
	r.found(&b, overlay(r.shared, fields["facts"]), fields["readings"])
	r.job.Bores = append(r.job.Bores, b)
}

// found decodes what was found at a bore.
func (r *reader) found(b *Bore, facts, readings *yaml.Node) {
	b.Findings = r.book.ReadFindings(r.File, facts, r.bare)
	b.Readings = r.readings(readings)
	b.Findings = r.addReadings(readings, *b)
	r.book.CheckTogether(b.Findings, r.job.Units, func(fact *engine.Fact, says string) {
		r.Report(valueOf(facts, fact.Name), "measure both again", "in %s %s", b.Name, says)
	})
}

// overlay lays the facts of a bore over those of the job.
func overlay(shared, own *yaml.Node) *yaml.Node {
	if shared == nil {
		return own
	}
	if own != nil && own.Kind != yaml.MappingNode {
		return own
	}
	both := &yaml.Node{Kind: yaml.MappingNode, Line: shared.Line, Column: shared.Column}
	for i := 0; i+1 < len(shared.Content); i += 2 {
		if key := shared.Content[i]; valueOf(own, key.Value) == nil {
			both.Content = append(both.Content, key, shared.Content[i+1])
		}
	}
	if own != nil {
		both.Content = append(both.Content, own.Content...)
	}
	return both
}

// valueOf finds the value of a key in a mapping.
func valueOf(n *yaml.Node, key string) *yaml.Node {
	if n == nil {
		return nil
	}
	for i := 0; i+1 < len(n.Content); i += 2 {
		if n.Content[i].Value == key {
			return n.Content[i+1]
		}
	}
	return nil
}

// expectations hands the entries of expect: to their bores.
func (r *reader) expectations(n *yaml.Node) {
	for key, value := range r.Pairs(n) {
		found := false
		var names []string
		for i := range r.job.Bores {
			names = append(names, r.job.Bores[i].Name)
			if r.job.Bores[i].Name == key.Value {
				r.job.Bores[i].Expect = r.expect(value)
				found = true
			}
		}
		if !found {
			r.Report(key, document.DidYouMean(key.Value, names), "the job has no bore %q", key.Value)
		}
	}
}

// Find returns the bores that are called name; an empty name stands for all.
func (j *Job) Find(name string) []Bore {
	if name == "" {
		return j.Bores
	}
	var found []Bore
	for _, b := range j.Bores {
		if strings.EqualFold(b.Name, name) {
			found = append(found, b)
		}
	}
	return found
}

// BoreNames lists the bores in the order of the file.
func (j *Job) BoreNames() []string {
	names := make([]string, len(j.Bores))
	for i, b := range j.Bores {
		names[i] = b.Name
	}
	return names
}
