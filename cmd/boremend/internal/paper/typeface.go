package paper

import (
	"fmt"
	"strings"
	"unicode"

	"github.com/go-fonts/dejavu/dejavusanscondensed"
	"github.com/go-fonts/dejavu/dejavusanscondensedbold"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"golang.org/x/text/unicode/bidi"
)

// face is one cut of the type of the PDF papers, with the widths of its signs.
type face struct {
	bold   bool
	file   []byte
	font   *sfnt.Font
	em     float64
	widths map[rune]float64 // in ems; negative where the face has no such sign
	buffer sfnt.Buffer
}

// typeface is the cuts of type that a paper is set in.
type typeface struct{ regular, bold *face }

// newTypeface opens the type that is built into the program.
func newTypeface() (typeface, error) {
	regular, err := openFace(dejavusanscondensed.TTF, false)
	if err != nil {
		return typeface{}, err
	}
	bold, err := openFace(dejavusanscondensedbold.TTF, true)
	return typeface{regular, bold}, err
}

func openFace(file []byte, bold bool) (*face, error) {
	font, err := sfnt.Parse(file)
	if err != nil {
		return nil, fmt.Errorf("the type of papers: %w", err)
	}
	return &face{bold: bold, file: file, font: font, em: float64(font.UnitsPerEm()), widths: map[rune]float64{}}, nil
}

// advance is the width of a sign in ems; it is false where the face has none.
func (f *face) advance(r rune) (float64, bool) {
	width, seen := f.widths[r]
	if !seen {
		width = -1
		if glyph, err := f.font.GlyphIndex(&f.buffer, r); err == nil && glyph != 0 && r <= 0xffff {
			if units, err := f.font.GlyphAdvance(&f.buffer, glyph, fixed.I(int(f.em)), 0); err == nil {
				width = float64(units) / 64 / f.em
			}
		}
		f.widths[r] = width
	}
	return max(width, 0), width >= 0
}

// width is how wide a text is set, in mm.
func (f *face) width(text string, sizeMM float64) float64 {
	sum := 0.0
	for _, r := range text {
		w, _ := f.advance(r)
		sum += w
	}
	return sum * sizeMM
}

// printable replaces what the face cannot show by its number, so that no sign is
// lost unseen, and drops signs that only guide a line.
func (f *face) printable(text string) string {
	var b strings.Builder
	for _, r := range text {
		switch _, ok := f.advance(r); {
		case string(r) == isolateFirst, string(r) == isolateEnd, r == '\u200d', r == '\u200c', r == '\u00ad':
		case !ok:
			b.WriteString(codePoint(r))
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

// wrap breaks a text into lines that fit a width in mm. A word that is too long
// for a line is broken where the line ends.
func (f *face) wrap(text string, sizeMM, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(f.printable(text)) {
		joined := word
		if line != "" {
			joined = line + " " + word
		}
		if f.width(joined, sizeMM) <= width {
			line = joined
			continue
		}
		if line != "" {
			lines = append(lines, line)
		}
		for f.width(word, sizeMM) > width {
			head := f.head(word, sizeMM, width)
			lines, word = append(lines, head), word[len(head):]
		}
		line = word
	}
	if line != "" || len(lines) == 0 {
		lines = append(lines, line)
	}
	return lines
}

// head is as much of a word as fits a width, at least one sign.
func (f *face) head(word string, sizeMM, width float64) string {
	sum, end := 0.0, 0
	for i, r := range word {
		w, _ := f.advance(r)
		sum += w * sizeMM
		if sum > width && i > 0 && !unicode.Is(unicode.Mn, r) {
			break
		}
		end = i + len(string(r))
	}
	return word[:end]
}

// inOrder puts the signs of a line into the order in which they stand on paper,
// where parts of it run from right to left.
func inOrder(line string) string {
	if strings.IndexFunc(line, rightToLeft) < 0 {
		return line
	}
	// A mark in front makes the line as a whole run from left to right, whatever it
	// begins with.
	const leftToRight = "\u200e"
	var p bidi.Paragraph
	if _, err := p.SetString(leftToRight+line, bidi.DefaultDirection(bidi.LeftToRight)); err != nil {
		return line
	}
	order, err := p.Order()
	if err != nil {
		return line
	}
	var b strings.Builder
	for i := range order.NumRuns() {
		run := order.Run(i)
		if run.Direction() == bidi.RightToLeft {
			b.WriteString(bidi.ReverseString(run.String()))
		} else {
			b.WriteString(run.String())
		}
	}
	return strings.TrimPrefix(b.String(), leftToRight)
}
