package paper

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"boremend/engine"
)

// reworded puts texts of the program and the rulebook into the words of a paper
// that somebody signs: nothing that reads as a promise, and units as they are
// written by hand.
func reworded(text string) string { return papersWords.Replace(text) }

var papersWords = strings.NewReplacer(
	"as new", "as built", "As new", "As built",
	"it was new", "it was built", "equal to new", "equal to the first",
	"a certified structure", "a rated structure", "certified structure", "rated structure",
	"certifies the frame again", "passes the frame again in writing", "engineer certifies", "engineer states in writing",
	"Certified", "Rated", "certified", "rated", "permanently", "for good", "permanent", "lasting",
	"guaranteed", "assured", "guarantee", "assurance",
	"degC", "°C", "degF", "°F", "mm2", "mm²", "mm3", "mm³", "in2", "in²", "in3", "in³", "N*m", "N·m", "lbf*ft", "lbf·ft",
)

// given makes text from a job file fit to print: line ends and tabs become
// spaces, other control characters and those that turn the direction of writing
// are shown by their number, and text that runs from right to left is kept apart
// from its neighbours.
func given(text string) string {
	var b strings.Builder
	turns := false
	for _, r := range text {
		switch {
		case r == '\n' || r == '\t' || r == '\r' || r == '\u2028' || r == '\u2029' || r == '\u0085':
			b.WriteByte(' ')
		case unicode.IsControl(r) || r == unicode.ReplacementChar || unicode.Is(unicode.Cf, r) && r != '\u200d' && r != '\u200c' && r != '\u00ad':
			b.WriteString(codePoint(r))
		default:
			turns = turns || rightToLeft(r)
			b.WriteRune(r)
		}
	}
	out := strings.Join(strings.Fields(b.String()), " ")
	if turns {
		return isolateFirst + out + isolateEnd
	}
	return out
}

// Characters that keep a text apart from the direction of its neighbours.
const (
	isolateFirst = "\u2068"
	isolateEnd   = "\u2069"
)

// codePoint shows a character that cannot be printed.
func codePoint(r rune) string { return fmt.Sprintf("[U+%04X]", r) }

// rightToLeft reports whether a character is of a script that runs from right to
// left.
func rightToLeft(r rune) bool {
	return unicode.In(r, unicode.Hebrew, unicode.Arabic, unicode.Syriac, unicode.Thaana, unicode.Nko, unicode.Adlam)
}

func capital(text string) string {
	for _, r := range text {
		return string(unicode.ToUpper(r)) + text[len(string(r)):]
	}
	return text
}

// sentence is a text with a capital in front and a stop behind.
func sentence(text string) string {
	text = capital(strings.TrimSpace(text))
	if text == "" || strings.ContainsAny(text[len(text)-1:], ".!?:") {
		return text
	}
	return text + "."
}

// listed joins words: one, two and three.
func listed(words []string) string {
	n := len(words)
	if n < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:n-1], ", ") + " and " + words[n-1]
}

// some keeps the first few of a list, and says how many more there are.
func some(words []string, most int) []string {
	if len(words) <= most {
		return words
	}
	return append(slices.Clone(words[:most]), fmt.Sprintf("%d more", len(words)-most))
}

func plain(name string) string { return strings.ReplaceAll(name, "_", " ") }

// gradeWords are how dangers are called out.
var gradeWords = map[string]string{"danger": "DANGER", "warning": "WARNING", "note": "NOTE"}

// cautionText is a caution in words; one that hangs on something says on what.
func cautionText(c engine.CautionShown) string {
	text := c.Text
	if c.SaidIf != "" {
		text = "If " + c.SaidIf + ": " + text
	}
	if c.UntilKnown {
		text = "As long as nobody knows better: " + text
	}
	return reworded(text)
}

// reasonText is a reason in words, marked where it is an opinion or holds only
// because nobody has looked.
func reasonText(r engine.Reason) string {
	text := r.Text
	if r.UntilKnown {
		text = "As long as nobody knows better: " + text
	}
	if r.Trust == "opinion" {
		text = strings.TrimSuffix(sentence(text), ".") + " (our opinion)."
	}
	return reworded(sentence(text))
}
