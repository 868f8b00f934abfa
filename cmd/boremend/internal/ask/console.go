package ask

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"strings"
	"unicode"
	"unicode/utf8"

	"boremend/cmd/boremend/internal/term"
)

// Console is where a person is asked: line by line, without moving the cursor,
// so that it works over a slow line, through a pipe and with a printing
// terminal. The terminal's own line editing serves for corrections.
type Console struct {
	In    io.Reader
	Out   io.Writer
	Width int
	Bold  bool
	// Live: a person sits at it, who can put a fault right and try again.
	Live  bool
	lines *bufio.Scanner
}

// The two ways in which a session is cut short. What was answered is saved.
var (
	ErrStopped = errors.New("stopped")
	ErrEnded   = errors.New("the answers end here")
)

// longestLine is more than anybody types, and less than harms.
const longestLine = 1 << 12

// show writes a page.
func (c *Console) show(page *term.Page) error {
	text, err := page.Text(c.Width, c.Bold)
	if err != nil {
		return err
	}
	_, err = io.WriteString(c.Out, text)
	return err
}

// blank leaves an empty line.
func (c *Console) blank() error {
	_, err := io.WriteString(c.Out, "\n")
	return err
}

// say writes a remark.
func (c *Console) say(text string) error {
	page := &term.Page{}
	page.Detail(text)
	return c.show(page)
}

// line waits for one line of an answer.
func (c *Console) line(prompt string) (string, error) {
	if c.lines == nil {
		c.lines = bufio.NewScanner(c.In)
		c.lines.Buffer(make([]byte, longestLine), longestLine)
	}
	if _, err := io.WriteString(c.Out, prompt+"> "); err != nil {
		return "", err
	}
	more := c.lines.Scan()
	if !c.Live || !more {
		// Nobody's Enter has ended the line of the prompt.
		if _, err := io.WriteString(c.Out, "\n"); err != nil {
			return "", err
		}
	}
	switch err := c.lines.Err(); {
	case errors.Is(err, bufio.ErrTooLong):
		return "", fmt.Errorf("%w: a line has more than %d characters", ErrEnded, longestLine)
	case err != nil:
		return "", fmt.Errorf("%w: %w", ErrEnded, err)
	case !more:
		return "", ErrEnded
	}
	return strings.TrimSpace(c.lines.Text()), nil
}

// readable reports whether a line is text: arrow keys and the like leave signs
// in it that nobody sees.
func readable(line string) bool {
	return utf8.ValidString(line) && strings.IndexFunc(line, unicode.IsControl) < 0
}
