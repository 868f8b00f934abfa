package paper

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

// form adds a table with room to write in.
func (w *writer) form(head []string, rows [][]string) {
	w.add(Table{Head: head, Rows: rows, Tall: true})
}

func (w *writer) note(grade, label string, texts ...string) {
	if len(texts) > 0 {
		w.add(Note{grade, label, texts})
	}
}
