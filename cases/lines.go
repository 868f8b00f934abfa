package cases

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"boremend/engine/document"
)

// mostLine is how long a line, and a record with line breaks in it, may be.
const mostLine = 64 << 10

// lines hands out the lines of a stream, each with its line break. Lines can be
// given back, to be read again.
type lines struct {
	file   string
	reader *bufio.Reader
	number int // of the line read last
	held   []line
}

type line struct {
	text    string
	number  int
	problem document.Problem
}

// newLines opens a stream. What is not UTF-8 from its first bytes on is refused.
func newLines(r io.Reader, file string) (*lines, error) {
	l := &lines{file: file, reader: bufio.NewReaderSize(r, mostLine)}
	start, err := l.reader.Peek(4)
	if err != nil && err != io.EOF {
		return nil, l.unreadable(err)
	}
	refused := document.Problem{File: file, Line: 1, Column: 1, Says: "is UTF-16 text", Remedy: "save it as CSV UTF-8"}
	switch {
	case len(start) == 0:
		refused.Says, refused.Remedy = "is empty", "begin with a line that names the columns"
	case bytes.HasPrefix(start, []byte("\xff\xfe")), bytes.HasPrefix(start, []byte("\xfe\xff")), bytes.IndexByte(start, 0) >= 0:
	case bytes.HasPrefix(start, []byte("PK\x03\x04")):
		refused.Says, refused.Remedy = "is a workbook and not text", "save the sheet as CSV UTF-8"
	default:
		if bytes.HasPrefix(start, []byte("\ufeff")) {
			_, err = l.reader.Discard(len("\ufeff"))
			return l, err
		}
		return l, nil
	}
	return nil, document.Problems{refused}
}

func (l *lines) unreadable(err error) error {
	return document.Problems{{File: l.file, Line: l.number + 1, Column: 1, Says: "cannot be read: " + document.Cause(err).Error(), Remedy: "look at the file or the disk"}}
}

// next returns the next line; one that is too long or not UTF-8 text has a
// problem, and no text.
func (l *lines) next() (line, error) {
	if len(l.held) > 0 {
		first := l.held[0]
		l.held = l.held[1:]
		return first, nil
	}
	text, err := l.reader.ReadSlice('\n')
	switch {
	case errors.Is(err, bufio.ErrBufferFull):
		return l.overlong()
	case err == io.EOF && len(text) == 0:
		return line{}, io.EOF
	case err != nil && err != io.EOF:
		return line{}, l.unreadable(err)
	}
	l.number++
	out := line{text: string(text), number: l.number}
	if err == io.EOF {
		out.text += "\n"
	}
	if !utf8.Valid(text) {
		out.problem = document.Problem{File: l.file, Line: l.number, Column: badColumn(out.text), Says: "is not UTF-8 text", Remedy: "save it as CSV UTF-8"}
	}
	return out, nil
}

// overlong steps over a line that is too long.
func (l *lines) overlong() (line, error) {
	for {
		_, err := l.reader.ReadSlice('\n')
		switch {
		case errors.Is(err, bufio.ErrBufferFull):
		case err != nil && err != io.EOF:
			return line{}, l.unreadable(err)
		default:
			l.number++
			return line{number: l.number, problem: document.Problem{File: l.file, Line: l.number, Column: 1,
				Says: fmt.Sprintf("the line is longer than %d KiB", mostLine>>10), Remedy: "one bore a line; look for a line break that is missing"}}, nil
		}
	}
}

// giveBack puts lines back, to be read again.
func (l *lines) giveBack(ls []line) { l.held = append(ls, l.held...) }

// waiting reports whether the next line has yet to come from outside.
func (l *lines) waiting() bool {
	here, _ := l.reader.Peek(l.reader.Buffered()) // asks for no more than is there
	return len(l.held) == 0 && bytes.IndexByte(here, '\n') < 0
}

// badColumn finds the first character that is none.
func badColumn(text string) int {
	for i, r := range text {
		if r == utf8.RuneError && !strings.HasPrefix(text[i:], string(utf8.RuneError)) {
			return utf8.RuneCountInString(text[:i]) + 1
		}
	}
	return 1
}
