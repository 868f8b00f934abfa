package main

import (
	"bytes"
	"encoding/json"
	"io"
	"os"
	"strconv"

	xterm "golang.org/x/term"

	"boremend/cmd/boremend/internal/term"
)

// show writes an answer in the format asked for: value as JSON, or the page.
// It is written whole or not at all.
func (a *app) show(value any, page *term.Page) error {
	var text string
	var err error
	switch a.format {
	case "json":
		text, err = encode(value)
	case "markdown":
		text = page.Markdown()
	default:
		width, color := terminal(a.out)
		text, err = page.Text(width, color)
	}
	if err != nil {
		return err
	}
	_, err = io.WriteString(a.out, text)
	return err
}

func encode(value any) (string, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(value); err != nil {
		return "", err
	}
	return b.String(), nil
}

// terminal finds the width to write in and whether bold may be used: only on a
// terminal, and not where NO_COLOR is set. COLUMNS comes before what the
// terminal says.
func terminal(out io.Writer) (width int, color bool) {
	width = term.DefaultWidth
	file, ok := out.(*os.File)
	if ok && xterm.IsTerminal(int(file.Fd())) {
		color = os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb"
		if w, _, err := xterm.GetSize(int(file.Fd())); err == nil && w > 0 {
			width = w
		}
	}
	if w, err := strconv.Atoi(os.Getenv("COLUMNS")); err == nil && w > 0 {
		width = w
	}
	return width, color
}
