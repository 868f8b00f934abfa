package cases

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/document"
)

// Draft is a job file that is being filled in. It keeps what else stands in
// the file: comments, expectations, values as they were written. It holds a
// readable job at all times; a change that would spoil it is refused.
type Draft struct {
	path string
	book *engine.Rulebook
	tree *yaml.Node // the whole document, with comments
	text []byte     // the tree as it will be saved
	job  *Job
	file []byte // what the file held when last read or saved
	made bool   // the file is there
}

// NewDraft begins a job file at a path where there is none yet. Nothing is
// written before Save.
func NewDraft(path string, job *Job, book *engine.Rulebook) (*Draft, error) {
	text, err := Write(job, book)
	if err != nil {
		return nil, err
	}
	d := &Draft{path: path, book: book}
	return d, d.take(text)
}

// OpenDraft opens a job file to go on with it. The error holds every problem
// of the file; one that is not a job file is never opened.
func OpenDraft(path string, book *engine.Rulebook) (*Draft, error) {
	refused := document.Problem{File: path, Line: 1, Column: 1}
	real, err := filepath.EvalSymlinks(path)
	if err != nil {
		refused.Says = "cannot be opened: " + document.Cause(err).Error()
		return nil, document.Problems{refused}
	}
	if info, err := os.Stat(real); err != nil || !info.Mode().IsRegular() {
		refused.Says, refused.Remedy = "is not a file", "name a job file"
		return nil, document.Problems{refused}
	}
	f, text := document.Open(os.DirFS(filepath.Dir(real)), filepath.Base(real), path)
	job, err := read(f, book)
	if err != nil {
		return nil, err
	}
	d := &Draft{path: real, book: book, job: job, text: text, file: text, made: true}
	d.tree, err = parse(text)
	return d, err
}

// parse reads text that is known to be one good document, with its comments.
func parse(text []byte) (*yaml.Node, error) {
	var tree yaml.Node
	err := yaml.Unmarshal(bytes.TrimPrefix(text, []byte("\ufeff")), &tree)
	return &tree, err
}

// take makes text the draft, if it is a job.
func (d *Draft) take(text []byte) error {
	job, err := Read(d.path, text, d.book)
	if err != nil {
		return err
	}
	tree, err := parse(text)
	if err != nil {
		return err
	}
	d.tree, d.text, d.job = tree, text, job
	return nil
}

// Job is the job as it stands.
func (d *Draft) Job() *Job { return d.job }

// Bare reports whether lengths may be written without a unit.
func (d *Draft) Bare() bool { return valueOf(d.root(), "units") != nil }

func (d *Draft) root() *yaml.Node { return d.tree.Content[0] }

// Answer is what the file says of a fact at a bore, "unknown" included; false
// means that it says nothing. Readings are not considered.
func (d *Draft) Answer(bore, fact string) (text string, said bool) {
	for _, n := range valueOf(d.root(), "bores").Content {
		if valueOf(n, "bore").Value == bore {
			if own := valueOf(valueOf(n, "facts"), fact); own != nil {
				return own.Value, true
			}
		}
	}
	if shared := valueOf(valueOf(d.root(), "facts"), fact); shared != nil {
		return shared.Value, true
	}
	return "", false
}

// Set writes down what was found of a fact at some bores; "unknown" is an
// answer as well. What all bores have in common is written once, for the job.
// The error tells what is wrong with the answer, and nothing has changed then.
func (d *Draft) Set(fact, answer string, bores ...string) error {
	changed := clone(d.tree)
	root := changed.Content[0]
	list := valueOf(root, "bores").Content
	everywhere := !slices.ContainsFunc(list, func(n *yaml.Node) bool {
		return !slices.Contains(bores, valueOf(n, "bore").Value)
	}) && len(list) > 1
	if everywhere {
		set(factsOf(root, "job"), fact, answer)
	}
	for _, n := range list {
		if !slices.Contains(bores, valueOf(n, "bore").Value) {
			continue
		}
		if everywhere {
			drop(n, fact)
		} else {
			set(factsOf(n, "bore"), fact, answer)
		}
	}
	text, err := encode(changed)
	if err != nil {
		return err
	}
	return d.take(text)
}

// factsOf finds the facts under a job or bore; missing ones are added after
// the key that comes before.
func factsOf(n *yaml.Node, after string) *yaml.Node {
	if facts := valueOf(n, "facts"); facts != nil {
		return facts
	}
	facts := mapping()
	at := len(n.Content)
	for i := 0; i < len(n.Content); i += 2 {
		if key := n.Content[i].Value; key == after || key == "about" || key == "invented" || key == "units" {
			at = i + 2
		}
	}
	n.Content = slices.Insert(n.Content, at, freeText("facts"), facts)
	return facts
}

// set gives a key of a mapping a new value, and keeps the comment beside it.
func set(n *yaml.Node, key, value string) {
	if old := valueOf(n, key); old != nil {
		old.Value, old.Tag, old.Style = value, "", 0
		return
	}
	n.Content = append(n.Content, freeText(key), plain(value))
}

// drop takes a fact away from a bore, and facts: with the last one.
func drop(bore *yaml.Node, fact string) {
	facts := valueOf(bore, "facts")
	if valueOf(facts, fact) == nil {
		return
	}
	cut(facts, fact)
	if len(facts.Content) == 0 {
		cut(bore, "facts")
	}
}

// cut takes a key out of a mapping.
func cut(n *yaml.Node, key string) {
	for i := 0; i+1 < len(n.Content); i += 2 {
		if n.Content[i].Value == key {
			n.Content = slices.Delete(n.Content, i, i+2)
			return
		}
	}
}

func clone(n *yaml.Node) *yaml.Node {
	c := *n
	c.Content = make([]*yaml.Node, len(n.Content))
	for i, child := range n.Content {
		c.Content[i] = clone(child)
	}
	return &c
}

// Remark puts a remark at the end of the file, each line behind a #.
func (d *Draft) Remark(text string) error {
	changed := clone(d.tree)
	lines := strings.Split(text, "\n")
	for i, line := range lines {
		lines[i] = strings.TrimRight("# "+line, " ")
	}
	changed.FootComment = strings.Join(lines, "\n")
	out, err := encode(changed)
	if err != nil {
		return err
	}
	return d.take(out)
}
