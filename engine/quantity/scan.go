package quantity

import (
	"math"
	"math/big"
	"strconv"
	"strings"
	"unicode"
)

// scanner walks through the runes of a written quantity.
type scanner struct {
	text  string
	runes []rune
	at    int
}

// amount is a number with its unit as written, before the unit is looked up.
type amount struct {
	number   *big.Rat
	written  string // the number as written
	numberAt int
	unit     string // empty when there is none
	unitAt   int
}

func (s *scanner) peek(ahead int) rune {
	if s.at+ahead < len(s.runes) {
		return s.runes[s.at+ahead]
	}
	return 0
}

func (s *scanner) skipBlanks() {
	for unicode.IsSpace(s.peek(0)) {
		s.at++
	}
}

func isDigit(r rune) bool { return '0' <= r && r <= '9' }

func (s *scanner) digits() string {
	start := s.at
	for isDigit(s.peek(0)) {
		s.at++
	}
	return s.from(start)
}

func (s *scanner) from(start int) string { return string(s.runes[start:s.at]) }

// word returns what stands at a position up to the next blank.
func (s *scanner) word(at int) string {
	end := at
	for end < len(s.runes) && !unicode.IsSpace(s.runes[end]) {
		end++
	}
	return string(s.runes[at:end])
}

func (s *scanner) refuse(at int, word, problem, remedy string) *SyntaxError {
	return &SyntaxError{Text: s.text, At: at, Word: word, Problem: problem, Remedy: remedy}
}

// plusMinus steps over "±" or "+/-" and reports whether one was there.
func (s *scanner) plusMinus() bool {
	width := s.plusMinusWidth()
	s.at += width
	return width > 0
}

func (s *scanner) plusMinusWidth() int {
	switch {
	case s.peek(0) == '±':
		return 1
	case s.peek(0) == '+' && s.peek(1) == '/' && s.peek(2) == '-':
		return 3
	}
	return 0
}

// amount reads a number and the words after it, up to a give-or-take or the end.
func (s *scanner) amount() (amount, error) {
	s.skipBlanks()
	a := amount{numberAt: s.at}
	var err error
	if a.number, err = s.number(); err != nil {
		return amount{}, err
	}
	a.written = s.from(a.numberAt)
	if err := s.numberEnds(a); err != nil {
		return amount{}, err
	}
	s.skipBlanks()
	a.unitAt = s.at
	for s.at < len(s.runes) && s.plusMinusWidth() == 0 {
		s.at++
	}
	a.unit = strings.Join(strings.Fields(s.from(a.unitAt)), " ")
	return a, nil
}

// number reads a decimal number, a fraction or a whole number with a fraction.
func (s *scanner) number() (*big.Rat, error) {
	start := s.at
	negative := s.peek(0) == '-' || s.peek(0) == '−'
	if negative || s.peek(0) == '+' && s.plusMinusWidth() == 0 {
		s.at++
	}
	unsigned := s.at
	whole := s.digits()
	number := new(big.Rat)
	var err error
	switch {
	case whole != "" && s.fractionAhead(0):
		s.at = unsigned
		number, err = s.fraction()
	case whole != "" && s.mixedAhead() > 0:
		number, err = s.mixed(whole)
	default:
		s.at = unsigned
		number, err = s.decimal(start)
	}
	if err != nil {
		return nil, err
	}
	if negative {
		number.Neg(number)
	}
	return number, nil
}

// fractionAhead reports whether "/" and a digit follow, as in 7/8 but not 1/K.
func (s *scanner) fractionAhead(ahead int) bool {
	return s.peek(ahead) == '/' && isDigit(s.peek(ahead+1))
}

// mixedAhead returns how many runes part a whole number from its fraction, as
// in 1-1/4 or 1 1/4, and 0 when no fraction follows.
func (s *scanner) mixedAhead() int {
	gap := 0
	if s.peek(0) == '-' {
		gap = 1
	} else {
		for unicode.IsSpace(s.peek(gap)) {
			gap++
		}
	}
	end := gap
	for isDigit(s.peek(end)) {
		end++
	}
	if end == gap || !s.fractionAhead(end) {
		return 0
	}
	return gap
}

func (s *scanner) mixed(whole string) (*big.Rat, error) {
	s.at += s.mixedAhead()
	start := s.at
	part, err := s.fraction()
	if err != nil {
		return nil, err
	}
	if part.Cmp(big.NewRat(1, 1)) >= 0 {
		return nil, s.refuse(start, s.from(start), s.from(start)+" after a whole number must be less than one",
			"write one fraction, or a whole number and a proper fraction as 1-1/4")
	}
	number, err := s.exact(start, whole)
	if err != nil {
		return nil, err
	}
	return number.Add(number, part), nil
}

func (s *scanner) fraction() (*big.Rat, error) {
	start := s.at
	numerator := s.digits()
	s.at++ // the slash
	under := s.at
	denominator := s.digits()
	over, err := s.exact(start, numerator)
	if err != nil {
		return nil, err
	}
	divisor, err := s.exact(under, denominator)
	if err != nil {
		return nil, err
	}
	if divisor.Sign() == 0 {
		return nil, s.refuse(under, denominator, "the fraction "+s.from(start)+" divides by zero", "write a fraction such as 7/8")
	}
	return over.Quo(over, divisor), nil
}

func (s *scanner) decimal(start int) (*big.Rat, error) {
	begin := s.at
	digits := s.digits()
	if s.peek(0) == '.' {
		s.at++
		digits += s.digits()
	}
	if digits == "" {
		s.at = begin
		return nil, s.noNumber(start)
	}
	if s.peek(0) == 'e' || s.peek(0) == 'E' {
		mark := s.at
		s.at++
		if s.peek(0) == '+' || s.peek(0) == '-' {
			s.at++
		}
		if s.digits() == "" {
			s.at = mark // a word that starts with e
		}
	}
	return s.exact(begin, s.from(begin))
}

// exact turns digits into a number, unless a float64 could not hold it. The
// check comes first: 1e999999999 written out would fill the memory.
func (s *scanner) exact(at int, digits string) (*big.Rat, error) {
	rough, err := strconv.ParseFloat(digits, 64)
	if err != nil || math.IsInf(rough, 0) {
		return nil, s.refuse(at, digits, digits+" is larger than any number held here", "write an ordinary number")
	}
	if rough == 0 {
		mantissa, _, _ := strings.Cut(strings.ToLower(digits), "e")
		if strings.Trim(mantissa, "0.") != "" {
			return nil, s.refuse(at, digits, digits+" is smaller than any number held here", "write 0 or an ordinary number")
		}
		return new(big.Rat), nil
	}
	number, ok := new(big.Rat).SetString(digits)
	if !ok {
		return nil, s.refuse(at, digits, digits+" is not a number", "write a number such as 22.5 or 7/8")
	}
	return number, nil
}
