package draw

import (
	"math"
	"strings"

	"github.com/tdewolff/canvas"
)

// The texts of a block lie that many heights of capitals apart, baseline to
// baseline; below the baseline hangs, and above it stands, the share that the
// font needs for its tails and accents.
const (
	pitchInCapitals = 1.65
	tail            = 0.33
	crown           = 1.12
)

// sheet is a drawing in the making. Its coordinates are millimetres on paper, y
// upward, with the origin wherever suits the drawing: the paper is cut to what is
// drawn at the end.
type sheet struct {
	font  *canvas.Font
	faces map[float64]*canvas.FontFace
	marks []mark
}

// mark is one thing on the sheet, in the order drawn: a line, a filled shape, or
// a text.
type mark struct {
	path   *canvas.Path
	line   line
	fill   bool // filled in the line's colour and not stroked
	text   string
	height float64 // of its capitals
	where  point   // left end of its baseline
	box    canvas.Rect
}

func newSheet() (*sheet, error) {
	f, err := openFont()
	if err != nil {
		return nil, err
	}
	return &sheet{font: f, faces: map[float64]*canvas.FontFace{}}, nil
}

func (s *sheet) face(height float64) *canvas.FontFace {
	if s.faces[height] == nil {
		s.faces[height] = faceOf(s.font, height)
	}
	return s.faces[height]
}

// draw strokes paths.
func (s *sheet) draw(l line, paths ...*canvas.Path) {
	for _, p := range paths {
		s.marks = append(s.marks, mark{path: p, line: l, box: grown(p.Bounds(), l.width/2)})
	}
}

// segment strokes a straight line.
func (s *sheet) segment(l line, from, to point) { s.draw(l, polyline(false, from, to)) }

// fill fills a path in the colour of a line.
func (s *sheet) fill(l line, p *canvas.Path) {
	s.marks = append(s.marks, mark{path: p, line: l, fill: true, box: p.Bounds()})
}

// blank wipes an area, so that what is drawn next stands clear.
func (s *sheet) blank(p *canvas.Path) { s.fill(line{color: canvas.White}, p) }

// width is how wide a text would be.
func (s *sheet) width(text string, height float64) float64 {
	return s.face(height).TextWidth(text)
}

// widest is how wide the widest of the lines would be.
func (s *sheet) widest(lines []string) float64 {
	most := 0.0
	for _, l := range lines {
		most = max(most, s.width(l, small))
	}
	return most
}

// text sets one line with its baseline at y. align says which part of it is at x:
// -1 its left end, 0 its middle, 1 its right end.
func (s *sheet) text(x, y float64, align int, height float64, text string) {
	text = plainBlanks(oneLine(text))
	if text == "" {
		return
	}
	w := s.width(text, height)
	x -= w * float64(align+1) / 2
	s.marks = append(s.marks, mark{text: text, height: height, where: at(x, y),
		box: canvas.Rect{X0: x, Y0: y - tail*height, X1: x + w, Y1: y + crown*height}})
}

// blockHeight is how high a block of lines is.
func blockHeight(lines []string) float64 {
	return small*(crown+tail) + float64(len(lines)-1)*small*pitchInCapitals
}

// block sets lines under each other, the top of the first at y.
func (s *sheet) block(x, y float64, align int, lines []string) {
	y -= crown * small
	for _, l := range lines {
		s.text(x, y, align, small, l)
		y -= pitchInCapitals * small
	}
}

// bounds is the box round all that is drawn.
func (s *sheet) bounds() canvas.Rect {
	all := canvas.Rect{X0: math.Inf(1), Y0: math.Inf(1), X1: math.Inf(-1), Y1: math.Inf(-1)}
	for _, m := range s.marks {
		all.X0, all.Y0 = min(all.X0, m.box.X0), min(all.Y0, m.box.Y0)
		all.X1, all.Y1 = max(all.X1, m.box.X1), max(all.Y1, m.box.Y1)
	}
	return all
}

func grown(r canvas.Rect, by float64) canvas.Rect {
	return canvas.Rect{X0: r.X0 - by, Y0: r.Y0 - by, X1: r.X1 + by, Y1: r.Y1 + by}
}

// margin is left white round a drawing.
const margin = 1.0

// finish cuts the paper to what is drawn.
func (s *sheet) finish(name, title, words string) Drawing {
	b := grown(s.bounds(), margin)
	round := func(v float64) float64 { return math.Ceil(v*100) / 100 }
	c := canvas.New(round(b.X1-b.X0), round(b.Y1-b.Y0))
	ctx := canvas.NewContext(c)
	ctx.SetFillColor(canvas.White)
	ctx.DrawPath(0, 0, canvas.Rectangle(c.W, c.H))
	for i := range s.marks {
		m := &s.marks[i]
		m.box = canvas.Rect{X0: m.box.X0 - b.X0, Y0: m.box.Y0 - b.Y0, X1: m.box.X1 - b.X0, Y1: m.box.Y1 - b.Y0}
		m.where = at(m.where.X-b.X0, m.where.Y-b.Y0)
		if m.path != nil {
			m.path = m.path.Copy().Translate(-b.X0, -b.Y0) // several marks may share a path
		}
		s.put(ctx, *m)
	}
	fonts.Put(s.font)
	return Drawing{Name: name, Title: title, Words: plainBlanks(words), Canvas: c, marks: s.marks}
}

// put hands one mark to the canvas.
func (s *sheet) put(ctx *canvas.Context, m mark) {
	switch {
	case m.text != "":
		ctx.DrawText(m.where.X, m.where.Y, canvas.NewTextLine(s.face(m.height), m.text, canvas.Left))
	case m.fill:
		ctx.SetFillColor(m.line.color)
		ctx.SetStrokeColor(canvas.Transparent)
		ctx.DrawPath(0, 0, m.path)
	default:
		ctx.SetFillColor(canvas.Transparent)
		ctx.SetStrokeColor(m.line.color)
		ctx.SetStrokeWidth(m.line.width)
		ctx.SetDashes(0, m.line.dashes...)
		ctx.DrawPath(0, 0, m.path)
	}
}

// wrap breaks text at blanks into lines of at most that width; a longer word is
// broken where it must.
func (s *sheet) wrap(text string, width float64) []string {
	var lines []string
	now := ""
	for _, word := range strings.Split(oneLine(text), " ") {
		if with := strings.TrimPrefix(now+" "+word, " "); s.width(with, small) <= width {
			now = with
			continue
		}
		if now != "" {
			lines = append(lines, now)
		}
		now = word
		for s.width(now, small) > width && len([]rune(now)) > 1 {
			head := s.head(now, width)
			lines, now = append(lines, head), now[len(head):]
		}
	}
	if now != "" {
		lines = append(lines, now)
	}
	return lines
}

// head is the longest beginning of a word that is no wider than width, one
// character at least.
func (s *sheet) head(word string, width float64) string {
	runes := []rune(word)
	n := len(runes) - 1
	for n > 1 && s.width(string(runes[:n]), small) > width {
		n--
	}
	return string(runes[:n])
}

// heading breaks a title into two lines at most; what is left of a longer one is
// cut.
func (s *sheet) heading(title string, width float64) []string {
	lines := s.wrap(title, width)
	if len(lines) <= 2 {
		return lines
	}
	last := []rune(lines[1])
	for s.width(string(last)+"…", small) > width {
		last = last[:len(last)-1]
	}
	return []string{lines[0], string(last) + "…"}
}
