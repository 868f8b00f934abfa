// Package term lays answers out for people: as text for a terminal of any
// width, or as Markdown. It shows what stands in the values it is given, and
// neither decides nor computes.
package term

import (
	"strings"
	"unicode"
)

// Page is an answer as a list of blocks, from which every form is written.
type Page struct{ blocks []block }

type blockKind uint8

const (
	title blockKind = iota
	heading
	paragraph
	labelled
	item
	detail
	table
	preformatted
)

// block is one part of a page. Label is the word before the text of a labelled
// block, the marker of an item.
type block struct {
	kind  blockKind
	label string
	text  string
	head  []string
	rows  [][]string
}

func (p *Page) add(b block) {
	b.label, b.text = harmless(b.label), harmless(b.text)
	for _, row := range b.rows {
		for i := range row {
			row[i] = harmless(row[i])
		}
	}
	p.blocks = append(p.blocks, b)
}

// harmless takes out what would steer a terminal or turn the direction of
// reading: texts come from files that anybody may have written.
func harmless(text string) string {
	return strings.Map(func(r rune) rune {
		if r != '\n' && r != '\t' && (unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r)) {
			return unicode.ReplacementChar
		}
		return r
	}, text)
}

// Title begins a page or a bore.
func (p *Page) Title(text string) { p.add(block{kind: title, text: text}) }

// Heading begins a section.
func (p *Page) Heading(text string) { p.add(block{kind: heading, text: text}) }

// Para is a paragraph.
func (p *Page) Para(text string) { p.add(block{kind: paragraph, text: text}) }

// Labelled is a text behind a short label; labels line up.
func (p *Page) Labelled(label, text string) { p.add(block{kind: labelled, label: label, text: text}) }

// Item is one entry of a list, behind a marker such as "-" or "+2".
func (p *Page) Item(marker, text string) { p.add(block{kind: item, label: marker, text: text}) }

// Detail is a smaller remark to the block before it.
func (p *Page) Detail(text string) { p.add(block{kind: detail, text: text}) }

// Table has a head and rows of as many cells. Only the last column wraps.
func (p *Page) Table(head []string, rows [][]string) {
	p.add(block{kind: table, head: head, rows: rows})
}

// Code is text that keeps its line breaks.
func (p *Page) Code(text string) { p.add(block{kind: preformatted, text: text}) }
