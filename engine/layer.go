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

// offEntry is one entry of off:, while it is not known whether the rule exists.
type offEntry struct {
	SwitchedOff
	file  *document.File
	node  *yaml.Node
	was   *yaml.Node
	below int // the layers under this one hold the rule
	found bool
}

// Over reads what the layer says that it lies over: a word, or nothing for a
// whole rulebook. place is where it says so, for a complaint about the word.
func Over(layer Layer) (word string, place document.Problem) {
	f, _ := document.Open(layer.Files, titleFile, path.Join(layer.Shown, titleFile))
	if f.Root == nil || f.Root.Kind != yaml.MappingNode {
		return "", document.Problem{}
	}
	for key, value := range f.Pairs(f.Root) {
		if key.Value == "over" && value.Kind == yaml.ScalarNode {
			return value.Value, document.Problem{File: f.Name, Line: value.Line, Column: value.Column}
		}
	}
	return "", document.Problem{}
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

// readOverlayTitle decodes rulebook.yaml of a layer that lies over another. What
// it does not say stays as it is below.
func (l *loader) readOverlayTitle(v *level, f *document.File) {
	v.fields, _ = f.Entry(f.Root, overlayKeys)
	f.Text(v.fields["over"]) // has been followed; here only its form counts
	l.readEdition(v, f)
	for _, lower := range l.levels[:v.number] {
		if lower.Title == v.Title {
			f.Report(v.fields["title"], "choose a title of your own", "%q is already the title of what this lies over", v.Title)
		}
	}
	lower := l.levels[v.number-1]
	if edition, ok := f.Text(v.fields["over_edition"]); ok && edition != lower.Edition.Edition {
		l.note(f, v.fields["over_edition"], fmt.Sprintf("read your own changes again, then write over_edition: %q", lower.Edition.Edition),
			"this was written over edition %s of %s, which is now edition %s", edition, lower.Title, lower.Edition.Edition)
	}
	for _, step := range f.Words(v.fields["steps"]) {
		if !contains(l.book.Steps, step) {
			l.book.Steps = append(l.book.Steps, step)
		}
	}
	l.readOff(v, f)
	l.checkNames(v)
}

// readOff decodes the rules that an overlay takes out.
func (l *loader) readOff(v *level, f *document.File) {
	for _, e := range f.List(v.fields["off"]) {
		fields, _ := f.Entry(e, offKeys)
		off := &offEntry{file: f, node: fields["rule"], was: fields["was"], below: v.number}
		off.SwitchedOff = SwitchedOff{Of: v.Title, File: f.Name, Line: e.Line}
		off.Rule, _ = f.Text(fields["rule"])
		off.Because, _ = f.Text(fields["because"])
		earlier := slices.IndexFunc(l.off, func(other *offEntry) bool { return other.Rule == off.Rule })
		switch {
		case off.Rule == "":
		case earlier >= 0:
			f.Report(fields["rule"], "keep one of the two", "the rule %q is already switched off at %s:%d", off.Rule, l.off[earlier].File, l.off[earlier].Line)
		default:
			l.off = append(l.off, off)
		}
	}
}

// takenOut reports whether a layer above switches a rule off.
func (l *loader) takenOut(v *level, r *Rule, condition *yaml.Node) bool {
	for _, off := range l.off {
		if off.Rule != r.Name || v.number >= off.below {
			continue
		}
		off.found = true
		if text, ok := off.file.Text(off.was); ok && condition != nil && !sameFormula(text, condition.Value) {
			l.note(off.file, off.was, "judge anew, then write was: "+quoted(condition.Value), "the condition of %s has changed since it was switched off", r.Name)
		}
		return true
	}
	return false
}

// checkOff reports rules that are switched off and are nowhere below.
func (l *loader) checkOff() {
	for _, off := range l.off {
		if off.found {
			l.book.Off = append(l.book.Off, off.SwitchedOff)
			continue
		}
		var below []string
		for _, r := range l.book.Rules {
			if r.layer < off.below {
				below = append(below, r.Name)
			}
		}
		off.file.Report(off.node, document.DidYouMean(off.Rule, below), "there is no rule %q to switch off", off.Rule)
	}
}

// note keeps something that is not wrong but wants a look.
func (l *loader) note(f *document.File, n *yaml.Node, remedy, format string, args ...any) {
	line, column := 1, 1
	if n != nil {
		line, column = n.Line, n.Column
	}
	l.book.Notes = append(l.book.Notes, document.Problem{File: f.Name, Line: line, Column: column, Says: fmt.Sprintf(format, args...), Remedy: remedy})
}

// below finds the name that an entry shares with one of a lower layer.
func (l *loader) below(v *level, kind string, n *yaml.Node) (name string, declared bool) {
	if !v.overlay() || n.Kind != yaml.MappingNode {
		return "", false
	}
	for i := 0; i+1 < len(n.Content); i += 2 {
		if n.Content[i].Value == kind {
			name = n.Content[i+1].Value
		}
	}
	level, declared := l.levelOf[kind+" "+name]
	return name, declared && level < v.number
}

// replaced notes that an entry of a layer has taken the place of a lower one.
func (l *loader) replaced(v *level, f *document.File, n *yaml.Node, kind, name string) {
	l.claimed[kind+" "+name] = fmt.Sprintf("%s:%d", f.Name, n.Line)
	l.levelOf[kind+" "+name] = v.number
}

// replacesNothing reports an entry that is written as if it replaced one of a
// lower layer, where there is none of that name.
func (l *loader) replacesNothing(v *level, f *document.File, n *yaml.Node, kind string, fields map[string]*yaml.Node) bool {
	name, named := f.Text(fields[kind])
	_, taken := l.levelOf[kind+" "+name]
	if !named || taken || fields["was"] == nil && (!v.overlay() || fields["means"] != nil) {
		return false
	}
	var below []string
	for key, number := range l.levelOf {
		if of, name, _ := strings.Cut(key, " "); of == kind && number < v.number {
			below = append(below, name)
		}
	}
	slices.Sort(below)
	remedy := "leave out was:"
	if len(below) > 0 {
		remedy = document.DidYouMean(name, below)
	}
	f.Report(fields[kind], remedy, "there is no %s %q to change; a new one needs means:, and no was:", kind, name)
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

// sameFormula compares two formulas and cares nothing for blanks.
func sameFormula(a, b string) bool {
	return strings.Join(strings.Fields(a), " ") == strings.Join(strings.Fields(b), " ")
}

// quoted writes a text so that YAML reads the very same back.
func quoted(text string) string {
	node := yaml.Node{Kind: yaml.ScalarNode, Value: text, Style: yaml.DoubleQuotedStyle}
	out, err := yaml.Marshal(&node)
	if err != nil {
		return text
	}
	return strings.TrimSpace(string(out))
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
