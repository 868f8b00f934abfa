package engine

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
)

// Layer is one folder of a rulebook. Shown is its name in messages.
//
// The lowest layer is a whole rulebook. Every further one is an overlay: its
// rulebook.yaml says over: what it lies, and its other files hold only what a
// shop does its own way. All of them may be missing, or hold comments alone.
type Layer struct {
	Files fs.FS
	Shown string
}

// Edition names one layer of a rulebook.
type Edition struct {
	Title   string `json:"title"`
	Edition string `json:"edition"`
}

// SwitchedOff is a rule of a lower layer that an overlay takes out, and why.
type SwitchedOff struct {
	Rule    string `json:"rule"`
	Because string `json:"because"`
	Of      string `json:"of"` // title of the layer that takes it out
	File    string `json:"file"`
	Line    int    `json:"line"`
}

// level is a layer that is being read.
type level struct {
	Layer
	Edition
	number int            // 0 is the lowest
	title  *document.File // its rulebook.yaml
	fields map[string]*yaml.Node
}

// overlay reports whether the layer lies over another.
func (v *level) overlay() bool { return v.number > 0 }

// Over reads what the layer says that it lies over: a word, or nothing for a
// whole rulebook. place is where it says so, for a complaint about the word. The
// error holds what is wrong with the file as such.
func Over(layer Layer) (word string, place document.Problem, err error) {
	f, text := document.Open(layer.Files, titleFile, path.Join(layer.Shown, titleFile))
	if text == nil {
		return "", document.Problem{}, nil // to be told with all else that is missing
	}
	if f.Root != nil && f.Root.Kind == yaml.MappingNode {
		for key, value := range f.Pairs(f.Root) {
			if key.Value == "over" {
				return value.Value, document.Problem{File: f.Name, Line: value.Line, Column: value.Column}, nil
			}
		}
	}
	return "", document.Problem{}, f.Problems().Err()
}

// open reads a file of a layer. The result is nil where a layer does without
// it: an overlay may lack it, or have comments only.
func (l *loader) open(v *level, name string) *document.File {
	if _, err := fs.Stat(v.Files, name); errors.Is(err, fs.ErrNotExist) && (name == cautionFile || v.overlay() && name != titleFile) {
		return nil
	}
	f, text := document.Open(v.Files, name, path.Join(v.Shown, name))
	fmt.Fprintf(l.digest, "%s %d\n", name, len(text))
	l.digest.Write(text)
	if v.overlay() && name != titleFile && text != nil && onlyComments(text) {
		return nil
	}
	l.files = append(l.files, f)
	return f
}

// onlyComments reports whether every line of a text is blank or a comment.
func onlyComments(text []byte) bool {
	for line := range strings.Lines(strings.TrimPrefix(string(text), "\ufeff")) {
		if line = strings.TrimSpace(line); line != "" && line[0] != '#' {
			return false
		}
	}
	return true
}

// checkNames reports files of an overlay that would never be read: to the person
// who wrote them they would look as if they counted.
func (l *loader) checkNames(v *level) {
	known := []string{titleFile, limitsFile, factsFile, methodsFile, cautionFile}
	for _, pattern := range []string{"*", rulesFolder + "/*"} {
		names, _ := fs.Glob(v.Files, pattern) // the only error is a bad pattern
		for _, name := range names {
			inRules, base := path.Dir(name) == rulesFolder, path.Base(name)
			f := &document.File{Name: path.Join(v.Shown, name)}
			stem, _, isYAML := strings.Cut(base, ".y")
			switch {
			case stem == "" || strings.HasSuffix(base, "~") || !isYAML:
				continue
			case strings.HasSuffix(base, ".yml") || strings.HasSuffix(base, ".txt"):
				f.Report(nil, "rename it to "+stem+".yaml", "is not read, because of its name")
			case !inRules && strings.HasSuffix(base, ".yaml") && !slices.Contains(known, base):
				f.Report(nil, document.DidYouMean(base, known), "is not read; rules belong in the folder %s", rulesFolder)
			}
			l.files = append(l.files, f)
		}
	}
}

// Imprint names a rulebook and the layers under it, and tells it from every
// other by a digest of all its files.
type Imprint struct {
	Title   string    `json:"title"`
	Edition string    `json:"edition"`
	SHA256  string    `json:"sha256"`
	Over    []Edition `json:"over,omitempty"` // what an overlay lies over, the nearest first
}

// Imprint is what an advice says of the rulebook behind it.
func (b *Rulebook) Imprint() Imprint { return Imprint{b.Title, b.Edition, b.SHA256, b.Over} }
