package engine

import (
	"boremend/engine/document"
)

// CautionNote is a warning from cautions.yaml. It belongs to methods and to
// steps of the work, and shows when its condition holds. One without a
// condition says in words when it applies (SaidIf) and shows at its step.
type CautionNote struct {
	Name      string
	Danger    string // danger | warning | note
	For       []int
	At        []string
	If        string
	SaidIf    string
	IfUnknown IfUnknown
	Text      string
	Refs      []Ref
	File      string
	Line      int
	Of        string   // title of the layer that has it
	words     []string // of for:, as written
}

// Ref is a reference and how well it is known.
type Ref struct{ Ref, HowKnown string }

var dangers = []string{"danger", "warning", "note"}

// cautionUnknownNames are the words of if_unknown: a caution has no effect that
// could be silent.
var cautionUnknownNames = []string{ifUnknownNames[Hold], ifUnknownNames[Open]}

// String writes the reference with how it is known, unless it was read.
func (r Ref) String() string {
	if r.HowKnown == "" || r.HowKnown == "read" {
		return r.Ref
	}
	return r.Ref + " [" + r.HowKnown + "]"
}

// readCautions decodes cautions.yaml.
func (l *loader) readCautions(v *level, f *document.File) {
	if f == nil {
		return
	}
	for _, n := range f.List(f.Root) {
		fields, _ := f.Entry(n, cautionKeys)
		c := &CautionNote{File: f.Name, Line: n.Line, Of: v.Title, At: f.Words(fields["at"])}
		c.For, c.words = l.methodSet(f, fields["for"])
		for i, step := range c.At {
			if !contains(l.book.Steps, step) {
				f.Report(fields["at"].Content[i], document.DidYouMean(step, l.book.Steps), "the rulebook names no step %q", step)
			}
		}
		c.Name, _ = f.Text(fields["caution"])
		c.Danger, _ = f.Choice(fields["danger"], dangers...)
		c.Text, _ = f.Text(fields["text"])
		c.SaidIf, _ = f.Text(fields["said_if"])
		if (fields["if"] == nil) == (fields["said_if"] == nil) {
			f.Report(n, "write if: with facts, or said_if: in words", "%s needs one of if: and said_if:", c.Name)
		}
		if word, ok := f.Text(fields["if_unknown"]); ok && word == ifUnknownNames[Hold] {
			c.IfUnknown = Hold
		} else if ok && word != ifUnknownNames[Open] {
			f.Report(fields["if_unknown"], document.DidYouMean(word, cautionUnknownNames), "a caution cannot be %q while unknown", word)
		}
		for _, e := range f.List(fields["refs"]) {
			if ref, complete := f.Entry(e, refKeys); complete {
				text, _ := f.Text(ref["ref"])
				known, _ := f.Text(ref["how_known"])
				c.Refs = append(c.Refs, Ref{text, known})
			}
		}
		if c.Name == "" || !l.claim(v, f, fields["caution"], "caution", c.Name) {
			continue
		}
		l.condition(f, fields["if"], &c.If)
		l.book.Cautions = append(l.book.Cautions, c)
	}
}
