package paper

// The measures of a page, in mm.
const (
	marginSide   = 16.0
	marginTop    = 20.0
	marginFoot   = 20.0
	pointMM      = 0.352778
	lineSpacing  = 1.32 // of the size of the type
	cellPad      = 1.1
	boxSide      = 3.6
	tallRow      = 9.0
	barWidth     = 1.6
	thinLine     = 0.2
	heavyLine    = 0.6
	fewPairs     = 7     // labels that stand on one page together
	figureHeight = 150.0 // the most that a picture may take
)

// typesetter turns blocks into strips.
type typesetter struct {
	typeface
	width  float64 // between the margins
	sizeMM float64 // of running text
}

func newTypesetter(d Document) (typesetter, error) {
	faces, err := newTypeface()
	points := 10.0
	if d.Small {
		points = 9
	}
	return typesetter{faces, d.Page.WidthMM - 2*marginSide, points * pointMM}, err
}

func (t typesetter) face(bold bool) *face {
	if bold {
		return t.bold
	}
	return t.regular
}

// lines sets a text, one strip a line, indented by x.
func (t typesetter) lines(text string, bold bool, sizeMM, x, width float64) []strip {
	var strips []strip
	for _, line := range t.face(bold).wrap(text, sizeMM, width) {
		strips = append(strips, strip{height: sizeMM * lineSpacing, marks: []mark{textMark(x, sizeMM, line, bold, sizeMM)}})
	}
	return strips
}

// paragraph is lines of which no single one stands alone on a page.
func paragraph(lines []strip) []strip {
	for i := range lines {
		lines[i].keep = len(lines) > 1 && (i == 0 || i == len(lines)-2)
	}
	return lines
}

// whole keeps strips on one page.
func whole(strips []strip) []strip {
	for i := range strips {
		strips[i].keep = i < len(strips)-1
	}
	return strips
}

func gap(height float64) strip { return strip{height: height, gap: true} }

// stacked joins strips into one that is never cut.
func stacked(strips []strip) strip {
	var out strip
	for _, s := range strips {
		out.marks = append(out.marks, lowered(s.marks, out.height)...)
		out.height += s.height
	}
	return out
}

// block sets one block of a document, with the white space above it.
func (t typesetter) block(b Block) []strip {
	switch b := b.(type) {
	case Heading:
		return t.heading(b)
	case Para:
		size := t.sizeMM
		if b.Small {
			size *= 0.88
		}
		return append([]strip{gap(1.4)}, paragraph(t.lines(b.Text, false, size, 0, t.width))...)
	case List:
		return t.items(b.Items, func(x, y float64) mark { return textMark(x, y, "•", false, t.sizeMM) }, 4)
	case Checks:
		return t.items(b.Items, func(x, y float64) mark {
			return boxMark(x, y-boxSide+0.5, box{width: boxSide, height: boxSide, thick: 0.35})
		}, 6)
	case Pairs:
		return t.pairs(b)
	case Table:
		return t.table(b)
	case Note:
		return t.note(b)
	case Answer:
		return t.answer(b)
	case Figure:
		return t.figure(b)
	case Photo:
		return t.photo(b)
	case Blanks:
		return t.blanks(b)
	case Signatures:
		return t.signatures(b)
	case Working:
		return t.working(b)
	case PageBreak:
		return []strip{{newPage: true}}
	}
	return nil
}

// heading sets a heading, which stays with what follows.
func (t typesetter) heading(h Heading) []strip {
	sizes, gaps := []float64{1.5, 1.22, 1.05}, []float64{7, 5, 3.2}
	size := t.sizeMM * sizes[h.Level-1]
	lines := t.lines(h.Text, true, size, 0, t.width)
	if h.Level == 1 {
		lines = append([]strip{{height: 2, marks: []mark{lineMark(0, 0, t.width, 0, heavyLine)}}}, lines...)
	}
	for i := range lines {
		lines[i].keep = true
	}
	return append([]strip{{height: gaps[h.Level-1], gap: true, keep: true}}, lines...)
}

// items sets points, each behind its own sign.
func (t typesetter) items(items []string, sign func(x, y float64) mark, indent float64) []strip {
	strips := []strip{gap(1.2)}
	for _, item := range items {
		lines := paragraph(t.lines(item, false, t.sizeMM, indent, t.width-indent))
		lines[0].marks = append([]mark{sign(0.6, t.sizeMM)}, lines[0].marks...)
		strips = append(append(strips, lines...), gap(0.9))
	}
	return strips
}

// pairs sets labels at the left and what is known at the right.
func (t typesetter) pairs(p Pairs) []strip {
	strips := []strip{gap(1.5)}
	split := t.width * 0.42
	for i, row := range p.Rows {
		left := stacked(t.lines(row[0], false, t.sizeMM, 0, split-4))
		right := stacked(t.lines(row[1], true, t.sizeMM, split, t.width-split))
		height := max(left.height, right.height) + cellPad
		marks := append(append(left.marks, right.marks...), lineMark(0, height-0.3, t.width, 0, 0.1))
		alone := i == 0 || i == len(p.Rows)-2 || len(p.Rows) <= fewPairs
		strips = append(strips, strip{height: height + 0.5, marks: marks, keep: alone && i < len(p.Rows)-1})
	}
	return strips
}

// note sets a text off with a bar at its side, its label above it.
func (t typesetter) note(n Note) []strip {
	inner := barWidth + 2.5
	width := t.width - inner - 1
	var lines []strip
	if n.Label != "" {
		lines = t.lines(n.Label, true, t.sizeMM, inner, width)
	}
	for i, text := range n.Texts {
		if i > 0 {
			lines = append(lines, strip{height: 0.9})
		}
		lines = append(lines, t.lines(text, n.Grade == "danger" && n.Label == "STOP", t.sizeMM, inner, width)...)
	}
	bar := map[string]float64{"danger": barWidth, "warning": barWidth * 0.6}[n.Grade]
	for i, l := range lines {
		side := boxMark(0, 0, box{width: bar, height: l.height + 0.05, grey: 1})
		if bar == 0 {
			side = lineMark(0.3, 0, 0, l.height+0.05, thinLine)
		}
		lines[i].marks = append([]mark{side}, l.marks...)
	}
	const mostWhole = 14 // lines; a longer note may be cut
	if len(lines) <= mostWhole {
		lines = whole(lines)
	}
	return append(append([]strip{gap(1.6)}, lines...), gap(0.6))
}

// answer sets the first thing to be read, in a frame.
func (t typesetter) answer(a Answer) []strip {
	const pad = 2.5
	lines := append(t.lines(a.Label, false, t.sizeMM, pad, t.width-2*pad), t.lines(a.Text, true, t.sizeMM*1.2, pad, t.width-2*pad)...)
	inside := stacked(lines)
	frame := boxMark(0, 0, box{width: t.width, height: inside.height + 2*pad - 0.8, thick: heavyLine})
	return []strip{gap(2), {height: inside.height + 2*pad, marks: append([]mark{frame}, lowered(inside.marks, pad-0.6)...)}, gap(1)}
}
