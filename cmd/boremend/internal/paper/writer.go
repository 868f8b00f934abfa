package paper

import "slices"

// writer collects the blocks of a document.
type writer struct{ blocks []Block }

func (w *writer) add(b ...Block) { w.blocks = append(w.blocks, b...) }

func (w *writer) chapter(text string) { w.add(Heading{1, text}) }

func (w *writer) heading(text string) { w.add(Heading{2, text}) }

func (w *writer) subheading(text string) { w.add(Heading{3, text}) }

func (w *writer) para(text string) {
	if text != "" {
		w.add(Para{Text: text})
	}
}

func (w *writer) small(text string) { w.add(Para{Text: text, Small: true}) }

// list adds points; an empty list adds nothing.
func (w *writer) list(items []string) {
	if len(items) > 0 {
		w.add(List{items})
	}
}

func (w *writer) checks(items []string) {
	if len(items) > 0 {
		w.add(Checks{items})
	}
}

func (w *writer) pairs(rows [][2]string) {
	if len(rows) > 0 {
		w.add(Pairs{rows})
	}
}

func (w *writer) table(head []string, rows [][]string) {
	if len(rows) > 0 {
		w.add(Table{Head: head, Rows: rows})
	}
}

// figures adds the drawings of a bore with these names.
func (w *writer) figures(b Bore, names ...string) {
	for _, d := range b.Drawings {
		if slices.Contains(names, d.Name) {
			w.add(Figure{d})
		}
	}
}

// photos adds photographs with what they show.
func (w *writer) photos(all []Photo) {
	for _, p := range all {
		w.add(p)
	}
}

// form adds a table with room to write in.
func (w *writer) form(head []string, rows [][]string) {
	w.add(Table{Head: head, Rows: rows, Tall: true})
}

func (w *writer) note(grade, label string, texts ...string) {
	if len(texts) > 0 {
		w.add(Note{grade, label, texts})
	}
}
