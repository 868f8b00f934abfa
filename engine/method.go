package engine

import (
	"gopkg.in/yaml.v3"

	"boremend/engine/document"
)

// Method is one way to restore a bore, or the decision not to.
type Method struct {
	Name   string
	Title  string
	Plain  string // one sentence that a customer understands
	Groups []string
	Start  float64  // points before any rule speaks
	Sizes  []string // calculations that size it
	File   string
	Line   int
}

// everyMethod is the word in for: that stands for all methods.
const everyMethod = "all"

// readMethods decodes methods.yaml, whose order settles ties.
func (l *loader) readMethods(f *document.File) {
	for _, n := range f.List(f.Root) {
		fields, _ := f.Entry(n, methodKeys)
		m := &Method{File: f.Name, Line: n.Line, Groups: f.Words(fields["groups"]), Sizes: f.Words(fields["sizes"])}
		m.Name, _ = f.Text(fields["method"])
		m.Title, _ = f.Text(fields["title"])
		m.Plain, _ = f.Text(fields["plain"])
		m.Start, _ = l.points(f, fields["start"])
		if m.Name == "" || !l.claim(f, fields["method"], "method", m.Name) {
			continue
		}
		l.book.Methods = append(l.book.Methods, m)
	}
}

// methodSet decodes for: into the numbers of the methods, in their order.
func (l *loader) methodSet(f *document.File, n *yaml.Node) []int {
	wanted := make([]bool, len(l.book.Methods))
	for i, word := range f.Words(n) {
		found := word == everyMethod
		for m, method := range l.book.Methods {
			if word == everyMethod || word == method.Name || contains(method.Groups, word) {
				wanted[m], found = true, true
			}
		}
		if !found {
			f.Report(n.Content[i], document.DidYouMean(word, l.methodWords()), "unknown method or group %q", word)
		}
	}
	var methods []int
	for m, in := range wanted {
		if in {
			methods = append(methods, m)
		}
	}
	return methods
}

// methodWords lists everything that for: may name.
func (l *loader) methodWords() []string {
	words := []string{everyMethod}
	for _, m := range l.book.Methods {
		words = append(words, m.Name)
		for _, g := range m.Groups {
			if !contains(words, g) {
				words = append(words, g)
			}
		}
	}
	return words
}
