package quantity

import (
	"strconv"
	"strings"
	"unicode"
)

const (
	vulgarFractions = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅐⅑⅒⁄"
	fractionRemedy  = "write the fraction with a slash, as 1-1/4"
)

// noNumber says why no number starts here.
func (s *scanner) noNumber(at int) error {
	word := s.word(at)
	switch {
	case word == "" && strings.TrimSpace(s.text) == "":
		return s.refuse(at, "", "nothing is written", "write a number with its unit, as 22 mm")
	case word == "":
		return s.refuse(at, "", "a number is missing at the end", "write the give-or-take, as 22 ±0.5 mm")
	case s.peek(0) == ',':
		return s.comma(s.at)
	case strings.ContainsRune(vulgarFractions, s.peek(0)):
		return s.refuse(at, word, strconv.Quote(word)+" holds a fraction in one sign", fractionRemedy)
	case s.plusMinusWidth() > 0:
		return s.refuse(at, word, "a number is missing before "+strconv.Quote(word), "write a value and its give-or-take, as 22 ±0.5 mm")
	}
	return s.refuse(at, word, strconv.Quote(word)+" is not a number", "write a number first and then its unit, as 22 mm or 7/8 in")
}

// numberEnds refuses what may not follow a number directly, where reading on
// would take half a number for the whole.
func (s *scanner) numberEnds(a amount) error {
	next := s.at
	for next < len(s.runes) && unicode.IsSpace(s.runes[next]) {
		next++
	}
	if next == len(s.runes) || s.plusMinusWidth() > 0 {
		return nil
	}
	word := s.word(next)
	r := s.runes[next]
	switch {
	case r == ',':
		return s.comma(next)
	case r == '_':
		whole := s.word(a.numberAt)
		return s.refuse(a.numberAt, whole, whole+" has an underscore in it", "write "+strings.ReplaceAll(whole, "_", ""))
	case (r == 'x' || r == 'X') && strings.TrimLeft(a.written, "+-−") == "0":
		whole := s.word(a.numberAt)
		return s.refuse(a.numberAt, whole, whole+" is a hexadecimal number", "write a decimal number, as 22 mm")
	case strings.ContainsRune(vulgarFractions, r):
		return s.refuse(next, word, strconv.Quote(word)+" holds a fraction in one sign", fractionRemedy)
	case r == '+' && !(s.at < next && s.plusMinusAt(next)):
		return s.refuse(next, word, strconv.Quote(word)+" after "+a.written+" is not a give-or-take", "write it to both sides, as 22 ±0.5 mm")
	case strings.ContainsRune("-−–—", r):
		return s.refuse(next, word, strconv.Quote(word)+" after "+a.written+" looks like a range", "write the middle and its give-or-take, as 15 ±5 mm")
	case r == '/' && !s.letterAt(next+1):
		return s.refuse(next, word, strconv.Quote(word)+" after "+a.written+" is not a fraction", "write whole numbers with a slash between, as 7/8 in")
	case r == '.' || isDigit(r) && !s.startsUnit(next):
		return s.refuse(next, word, "a second number "+strconv.Quote(word)+" follows "+a.written, "write one number, as 1250 mm, or a fraction as 1-1/4 in")
	}
	return nil
}

func (s *scanner) plusMinusAt(at int) bool {
	ahead := scanner{runes: s.runes, at: at}
	return ahead.plusMinusWidth() > 0
}

// startsUnit reports whether the digit at a position begins a unit such as 1/K.
func (s *scanner) startsUnit(at int) bool {
	return s.runes[at] == '1' && s.letterAt(at+2) && s.runes[at+1] == '/'
}

func (s *scanner) letterAt(at int) bool { return at < len(s.runes) && unicode.IsLetter(s.runes[at]) }

// comma refuses a comma in a number and shows the text without it. A comma
// before three digits may part thousands, so both readings are shown.
func (s *scanner) comma(at int) error {
	for at > 0 && (isDigit(s.runes[at-1]) || s.runes[at-1] == '.') {
		at--
	}
	word := s.word(at)
	remedy := "use a point for decimals and nothing between thousands"
	decimals, ok := rewriteCommas(s.text, false)
	thousands, also := rewriteCommas(s.text, true)
	switch {
	case ok && also && decimals != thousands:
		remedy = "write " + decimals + ", or " + thousands + " if the comma parts thousands"
	case ok:
		remedy = "write " + decimals
	}
	return s.refuse(at, word, strconv.Quote(word)+" has a comma in it", remedy)
}

// rewriteCommas rewrites every number with a comma. A lone comma is a decimal
// comma, or one between thousands if asked for and three digits follow. It
// reports false when a number cannot be made sense of.
func rewriteCommas(text string, thousands bool) (string, bool) {
	numeric := func(r rune) bool { return isDigit(r) || r == '.' || r == ',' }
	var b strings.Builder
	for text != "" {
		end := strings.IndexFunc(text, func(r rune) bool { return numeric(r) != numeric(rune(text[0])) })
		if end < 0 {
			end = len(text)
		}
		run, ok := text[:end], true
		if strings.Contains(run, ",") {
			if run, ok = rewriteComma(run, thousands); !ok {
				return "", false
			}
		}
		b.WriteString(run)
		text = text[end:]
	}
	return strings.TrimSpace(b.String()), true
}

func rewriteComma(run string, thousands bool) (string, bool) {
	commas, points := strings.Count(run, ","), strings.Count(run, ".")
	comma, point := strings.LastIndex(run, ","), strings.LastIndex(run, ".")
	switch {
	case !strings.ContainsAny(run, "0123456789"):
		return "", false
	case commas == 1 && points == 0 && !(thousands && len(run)-comma == 4):
		return strings.Replace(run, ",", ".", 1), true
	case points == 0, points == 1 && comma < point:
		return strings.ReplaceAll(run, ",", ""), true
	case commas == 1 && point < comma:
		return strings.Replace(strings.ReplaceAll(run, ".", ""), ",", ".", 1), true
	}
	return "", false
}
