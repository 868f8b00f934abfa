package paper

// blanks sets lines to write on.
func (t typesetter) blanks(b Blanks) []strip {
	strips := []strip{gap(2)}
	for _, label := range b.Labels {
		start := min(t.regular.width(label, t.sizeMM)+3, t.width/2)
		lines := t.lines(label, false, t.sizeMM, 0, t.width/2-3)
		s := stacked(lines)
		s.marks = append(lowered(s.marks, 3), lineMark(start, s.height+2.2, t.width-start, 0, thinLine))
		s.height += 3.6
		s.keep = true // what is signed below stays with it
		strips = append(strips, s)
	}
	return strips
}

// signatures sets places to sign side by side.
func (t typesetter) signatures(g Signatures) []strip {
	each := t.width / float64(max(1, len(g.Roles)))
	s := strip{height: 20}
	for i, role := range g.Roles {
		x := each * float64(i)
		s.marks = append(s.marks, lineMark(x, 14, each-8, 0, thinLine), textMark(x, 18, role+", date", false, t.sizeMM))
	}
	return []strip{gap(3), s}
}

// working sets a calculation line by line.
func (t typesetter) working(w Working) []strip {
	strips := t.heading(Heading{3, w.Title})
	size := t.sizeMM * 0.85
	for _, l := range w.Lines {
		strips = append(strips, whole(t.workingLine(l, size))...)
		strips = append(strips, gap(0.6))
	}
	for _, text := range w.After {
		strips = append(strips, paragraph(t.lines(text, false, size*0.94, 0, t.width))...)
	}
	return strips
}

func (t typesetter) workingLine(l WorkingLine, size float64) []strip {
	about := l.Symbol + ", " + l.Means
	if l.Source != "" {
		about += " (" + l.Source + ")"
	}
	lines := t.lines(about, false, size, 0, t.width)
	formula := l.Symbol + " = " + l.Formula
	for _, part := range []string{l.Numbers, l.Result} {
		if part != "" {
			formula += " = " + part
		}
	}
	return append(lines, t.lines(formula, true, size, 4, t.width-4)...)
}
