package engine

import (
	"fmt"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine/document"
)

// offEntry is one entry of off:, while it is not known whether the rule exists.
type offEntry struct {
	SwitchedOff
	file  *document.File
	node  *yaml.Node
	was   *yaml.Node
	below int // the layers under this one hold the rule
	found bool
}

// readOverlayTitle decodes rulebook.yaml of a layer that lies over another. What
// it does not say stays as it is below.
func (l *loader) readOverlayTitle(v *level, f *document.File) {
	v.fields, _ = f.Entry(f.Root, overlayTitleKeys)
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
