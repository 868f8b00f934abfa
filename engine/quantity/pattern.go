package quantity

import (
	"regexp"
	"strings"
)

// Pieces of the patterns. They are written in what the regular expressions of
// ECMA-262 and of Go have in common, because editors read them.
const (
	blank     = `[\s\p{Z}]`
	fractionP = `(?:\d+(?:-|` + blank + `+))?\d+/0*[1-9]\d*`
	decimalP  = `(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][-+]?\d+)?`
	numberP   = blank + `*[-+−]?(?:` + fractionP + `|` + decimalP + `)`
	plusMinus = blank + `*(?:±|\+/-)`
)

// Pattern returns a regular expression for the quantities of a kind: every text
// that Parse takes matches it, and little else does. bare says whether a number
// may stand without its unit; it always may where the kind has none.
func Pattern(kind Kind, bare bool) string {
	unit := unitPattern(kind)
	give := plusMinus + numberP + shared(kind) + "?"
	if bare || Unitless(kind) {
		return "^" + numberP + unit + "?(?:" + give + ")?" + blank + "*$"
	}
	return "^" + numberP + "(?:" + unit + "(?:" + give + ")?|" + plusMinus + numberP + unit + ")" + blank + "*$"
}

// GiveOrTakePattern returns one for what ParseGiveOrTake takes of a kind.
func GiveOrTakePattern(kind Kind) string {
	optional := ""
	if Unitless(kind) {
		optional = "?"
	}
	return "^(?:" + plusMinus + ")?" + numberP + shared(kind) + optional + blank + "*$"
}

// Unitless reports whether a number of the kind may stand without a unit
// whatever the job says.
func Unitless(kind Kind) bool {
	_, ok := findUnit(kind, "")
	return ok
}

// unitPattern matches a unit of one of the kinds, with the blanks before it.
func unitPattern(kinds ...Kind) string {
	var words []string
	for _, kind := range kinds {
		for _, word := range spellings(kind) {
			if word != "" {
				words = append(words, spelled(word))
			}
		}
	}
	if len(words) == 0 {
		return "(?:)" // a count has no unit
	}
	return "(?:" + blank + "*(?:" + strings.Join(words, "|") + "))"
}

// shared matches the unit of a give-or-take, which may be a share.
func shared(kind Kind) string {
	if kind == Temperature || kind == Ratio {
		return unitPattern(kind)
	}
	return unitPattern(kind, Ratio)
}

// spelled matches a unit with any pasted signs in it.
func spelled(word string) string {
	var b strings.Builder
	for word != "" {
		plain, signs := word[:1], []string(nil)
		for i := 0; i < len(pastedSigns); i += 2 {
			switch stands := pastedSigns[i+1]; {
			case !strings.HasPrefix(word, stands) || len(stands) < len(plain):
			case len(stands) > len(plain):
				plain, signs = stands, []string{pastedSigns[i]}
			default:
				signs = append(signs, pastedSigns[i])
			}
		}
		switch {
		case plain == " ":
			b.WriteString(blank + "+")
		case signs == nil:
			plain = wholeRune(word)
			b.WriteString(regexp.QuoteMeta(plain))
		default:
			b.WriteString("(?:" + regexp.QuoteMeta(plain) + "|" + strings.Join(signs, "|") + ")")
		}
		word = word[len(plain):]
	}
	return b.String()
}

// wholeRune returns the first rune of a text.
func wholeRune(text string) string {
	for i := range text {
		if i > 0 {
			return text[:i]
		}
	}
	return text
}
