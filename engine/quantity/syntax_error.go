package quantity

import (
	"strings"
	"unicode"
)

// SyntaxError says what is wrong with a written quantity, where, and what would
// be right.
type SyntaxError struct {
	Text    string // the text as given
	At      int    // where Word starts, in runes from 0
	Word    string // the offending part; empty when something is missing there
	Problem string
	Remedy  string
}

// Error returns the problem and its remedy on one line.
func (e *SyntaxError) Error() string {
	return onOneLine(e.Problem + " (" + e.Remedy + ")")
}

// onOneLine keeps line breaks and control characters of the text that is quoted
// out of the message.
func onOneLine(text string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsPrint(r):
			return r
		}
		return unicode.ReplacementChar
	}, text)
}
