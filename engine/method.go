package engine

import (
	"slices"

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
	Of     string // title of the layer that has it
}

// everyMethod is the word in for: that stands for all methods.
const everyMethod = "all"

// readMethods decodes methods.yaml, whose order settles ties.
func (l *loader) readMethods(v *level, f *document.File) {
	if f == nil {
		return
	}
	for _, n := range f.List(f.Root) {
		fields, _ := f.Entry(n, methodKeys)
		m := &Method{File: f.Name, Line: n.Line, Of: v.Title, Groups: f.Words(fields["groups"]), Sizes: f.Words(fields["sizes"])}
		m.Name, _ = f.Text(fields["method"])
		m.Title, _ = f.Text(fields["title"])
		m.Plain, _ = f.Text(fields["plain"])
		m.Start, _ = l.points(f, fields["start"])
		if m.Name == "" || !l.claim(v, f, fields["method"], "method", m.Name) {
			continue
		}
		l.book.Methods = append(l.book.Methods, m)
	}
}

// methodSet decodes for: into the numbers of the methods, in their order, and
// returns its words as well.
func (l *loader) methodSet(f *document.File, n *yaml.Node) (methods []int, words []string) {
	words = f.Words(n)
	l.book.named = append(l.book.named, words...)
	for i, word := range words {
		if !contains(l.methodWords(), word) {
			f.Report(n.Content[i], document.DidYouMean(word, l.methodWords()), "unknown method or group %q", word)
		}
	}
	return l.book.methodsOf(words), words
}

// methodsOf lists the methods that some words of for: stand for.
func (b *Rulebook) methodsOf(words []string) []int {
	var methods []int
	for m, method := range b.Methods {
		if slices.ContainsFunc(words, func(word string) bool {
			return word == everyMethod || word == method.Name || contains(method.Groups, word)
		}) {
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

// Names reports whether some rule or caution is for a method or group by this
// very word.
func (b *Rulebook) Names(word string) bool { return contains(b.named, word) }
