package term

import (
	"bytes"
	"errors"
	"strings"

	"github.com/olekukonko/tablewriter"
	"github.com/olekukonko/tablewriter/pkg/twwidth"
	"github.com/olekukonko/tablewriter/tw"
)

// The narrowest and widest lines that are written, and the width where there
// is no terminal to ask.
const (
	leastWidth   = 48
	mostWidth    = 100
	DefaultWidth = 80
)

// Text writes the page for a terminal. Bold is only used where color is set,
// and nothing depends on it. An error is a fault of the table library.
func (p *Page) Text(width int, color bool) (string, error) {
	t := &textWriter{width: min(max(width, leastWidth), mostWidth), color: color}
	for _, b := range p.blocks {
		t.block(b)
	}
	return t.out.String(), t.err
}

type textWriter struct {
	out   bytes.Buffer
	width int
	color bool
	err   error
}

func (t *textWriter) block(b block) {
	switch b.kind {
	case title, heading:
		t.gap()
		t.hang("", "", b.text, true)
	case paragraph:
		t.hang("", "", b.text, false)
	case labelled:
		t.hang(pad(b.label, labelWidth), strings.Repeat(" ", labelWidth), b.text, false)
	case item:
		marker := pad(b.label, 2) + " "
		t.hang(marker, strings.Repeat(" ", twwidth.Width(marker)), b.text, false)
	case detail:
		t.hang("     ", "     ", b.text, false)
	case preformatted:
		for line := range strings.SplitSeq(strings.TrimRight(b.text, "\n"), "\n") {
			t.out.WriteString("  " + line + "\n")
		}
	case table:
		t.table(b.head, b.rows)
	}
}

// labelWidth leaves room for the longest label and a blank.
const labelWidth = 7

func pad(text string, width int) string {
	return text + strings.Repeat(" ", max(0, width-twwidth.Width(text)))
}

// gap leaves one blank line, except at the top.
func (t *textWriter) gap() {
	if t.out.Len() > 0 && !bytes.HasSuffix(t.out.Bytes(), []byte("\n\n")) {
		t.out.WriteByte('\n')
	}
}

// hang writes wrapped text with a first and a further indent.
func (t *textWriter) hang(first, further, text string, bold bool) {
	indent := first
	for _, line := range wrap(text, t.width-twwidth.Width(first)) {
		if bold && t.color {
			line = "\x1b[1m" + line + "\x1b[0m"
		}
		t.out.WriteString(strings.TrimRight(indent+line, " ") + "\n")
		indent = further
	}
}

// wrap breaks text at blanks, and inside words that are longer than a line.
// Tables need it done before: the library cuts what does not fit and says
// nothing.
func wrap(text string, width int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		switch {
		case line == "":
			line = word
		case twwidth.Width(line)+1+twwidth.Width(word) <= width:
			line += " " + word
		default:
			lines, line = append(lines, line), word
		}
		for twwidth.Width(line) > width {
			head, tail := split(line, width)
			lines, line = append(lines, head), tail
		}
	}
	return append(lines, line)
}

// split cuts a long word where the line ends.
func split(word string, width int) (head, tail string) {
	runes := []rune(word)
	n := 1
	for n < len(runes) && twwidth.Width(string(runes[:n+1])) <= width {
		n++
	}
	return string(runes[:n]), string(runes[n:])
}

// leastLast is the narrowest last column that is still readable; with less room
// the rows are written one below the other.
const leastLast = 24

func (t *textWriter) table(head []string, rows [][]string) {
	widths, left := columnWidths(head, rows, t.width)
	if left < leastLast {
		t.stacked(head, rows)
		return
	}
	mapper := tw.NewMapper[int, int]()
	for c, w := range widths {
		mapper.Set(c, w+2) // the library counts the padding
	}
	var out bytes.Buffer // rendering hides the errors of its writer
	table := tablewriter.NewTable(&out,
		tablewriter.WithHeaderAutoFormat(tw.Off),
		tablewriter.WithHeaderAlignment(tw.AlignLeft),
		tablewriter.WithRowAlignment(tw.AlignLeft),
		tablewriter.WithRowAutoWrap(tw.WrapNone),
		tablewriter.WithColumnWidths(mapper),
		tablewriter.WithEastAsian(tw.Off),
		tablewriter.WithRendition(tw.Rendition{
			Borders: tw.BorderNone, Symbols: tw.NewSymbols(tw.StyleASCII),
			Settings: tw.Settings{Separators: tw.Separators{BetweenColumns: tw.Off, BetweenRows: tw.Off}},
		}),
	)
	table.Header(head)
	last := len(head) - 1
	for _, row := range rows {
		cells := append([]string{}, row...)
		cells[last] = strings.Join(wrap(cells[last], widths[last]), "\n")
		t.err = errors.Join(t.err, table.Append(cells))
	}
	t.err = errors.Join(t.err, table.Render())
	for line := range strings.SplitSeq(strings.TrimRight(out.String(), "\n"), "\n") {
		t.out.WriteString(strings.TrimRight(line, " ") + "\n")
	}
}

// columnWidths gives every column but the last the room it needs, and the last
// what is left.
func columnWidths(head []string, rows [][]string, width int) (widths []int, left int) {
	left = width
	for c := range head {
		w := twwidth.Width(head[c])
		for _, row := range rows {
			w = max(w, twwidth.Width(row[c]))
		}
		if c == len(head)-1 {
			w = min(w, left-2)
			widths = append(widths, w)
			return widths, left - 2
		}
		widths = append(widths, w)
		left -= w + 2
	}
	return widths, left
}

// stacked writes each row as a small list, for narrow terminals.
func (t *textWriter) stacked(head []string, rows [][]string) {
	for _, row := range rows {
		t.hang("- ", "  ", row[0], false)
		for c := 1; c < len(head); c++ {
			if row[c] != "" {
				t.hang("  "+head[c]+": ", "    ", row[c], false)
			}
		}
	}
}
