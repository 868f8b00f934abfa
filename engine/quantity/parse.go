package quantity

import (
	"math/big"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Longest is how many characters a written quantity may have.
const Longest = 100

// parser reads the text of one quantity.
type parser struct {
	scanner
	kind Kind
	bare string
}

// Parse reads a quantity of the wanted kind, strictly. A number without a unit
// is in the unit named by bare; where bare is no unit of the kind, such a
// number is an error unless the kind has none (a ratio, a count, money). An
// error is a *SyntaxError.
//
// A number is decimal, a fraction or both: 22.5, 7/8, 1-1/4, 1 1/4. A
// give-or-take follows ± or +/-, in the same unit or another, or as a share of
// the value in %. One unit at the end serves both: 22 ±0.5 mm.
func Parse(text string, kind Kind, bare string) (Reading, error) {
	p, err := newParser(text, kind, bare)
	if err != nil {
		return Reading{}, err
	}
	value, err := p.amount()
	if err != nil {
		return Reading{}, err
	}
	var give *amount
	if p.plusMinus() {
		half, err := p.amount()
		if err != nil {
			return Reading{}, err
		}
		give = &half
	}
	if err := p.end(); err != nil {
		return Reading{}, err
	}
	return p.reading(value, give)
}

// reading converts a value and its give-or-take, if there is one.
func (p *parser) reading(value amount, give *amount) (Reading, error) {
	u, err := p.unitOfValue(value, give)
	if err != nil {
		return Reading{}, err
	}
	exact := u.toCanonical(value.number)
	if p.kind == Count && !exact.IsInt() {
		return Reading{}, p.refuse(value.numberAt, value.written, "a count of "+value.written+" is not whole", "write a whole number")
	}
	r := Reading{Written: p.text, HasGiveOrTake: give != nil}
	r.Kind = p.kind
	if r.Value, err = p.hold(value, exact); err != nil {
		return Reading{}, err
	}
	if give == nil {
		return r, nil
	}
	if r.GiveOrTake, err = p.giveOrTake(*give, u, exact); err != nil {
		return Reading{}, err
	}
	return r, nil
}

// ParseGiveOrTake reads a give-or-take that is declared on its own, such as
// 1 mm or 2 %. The amount is in the canonical unit of the kind, as a difference
// (25 degF are 13.9 degC); a share is a part of the value it will belong to,
// 0.02 for 2 %.
func ParseGiveOrTake(text string, kind Kind, bare string) (size float64, share bool, err error) {
	p, err := newParser(text, kind, bare)
	if err != nil {
		return 0, false, err
	}
	p.skipBlanks()
	p.plusMinus()
	give, err := p.amount()
	if err != nil {
		return 0, false, err
	}
	if err := p.end(); err != nil {
		return 0, false, err
	}
	if err := p.notNegative(give); err != nil {
		return 0, false, err
	}
	if u, ok := shareUnit(give.unit); ok {
		if err := p.mayBeShare(give); err != nil {
			return 0, false, err
		}
		size, err := p.hold(give, u.toCanonical(give.number))
		return size, true, err
	}
	u, err := p.unitOrBare(give)
	if err != nil {
		return 0, false, err
	}
	size, err = p.hold(give, u.differenceToCanonical(give.number))
	return size, false, err
}

func newParser(text string, kind Kind, bare string) (*parser, error) {
	p := &parser{scanner{text: text}, kind, bare}
	if utf8.RuneCountInString(text) > Longest {
		return nil, p.refuse(Longest, "", "the text is longer than "+strconv.Itoa(Longest)+" characters", "write a number and a unit, as 22 mm")
	}
	p.runes = []rune(text)
	return p, nil
}

// end refuses a second give-or-take, the only thing an amount leaves unread.
func (p *parser) end() error {
	if p.at == len(p.runes) {
		return nil
	}
	return p.refuse(p.at, p.word(p.at), "a second give-or-take", "write one give-or-take, as 22 ±0.5 mm")
}

// unitOfValue finds the unit of the value: its own, or the one that stands at
// the end for value and give-or-take alike, or the unit of bare numbers.
func (p *parser) unitOfValue(value amount, give *amount) (unit, error) {
	if value.unit != "" || give == nil || give.unit == "" {
		return p.unitOrBare(value)
	}
	if _, share := shareUnit(give.unit); share {
		return p.unitOrBare(value)
	}
	u, err := p.unit(*give)
	if err != nil {
		return unit{}, err
	}
	bare, ok := findUnit(p.kind, p.bare)
	if ok && u.fine && bare.name != u.name {
		return unit{}, p.refuse(value.numberAt, value.written,
			value.written+" may be in "+bare.name+" or in "+u.name,
			"write the unit of both, as "+value.written+" "+bare.name+" ±"+give.written+" "+u.name)
	}
	return u, nil
}

func (p *parser) unitOrBare(a amount) (unit, error) {
	if a.unit != "" {
		return p.unit(a)
	}
	if u, ok := findUnit(p.kind, p.bare); ok {
		return u, nil
	}
	if u, ok := findUnit(p.kind, ""); ok {
		return u, nil
	}
	return unit{}, p.refuse(a.numberAt, a.written, a.written+" has no unit", "add one: "+unitList(p.kind))
}

// giveOrTake returns the half-width that belongs to a value in the unit u.
func (p *parser) giveOrTake(give amount, u unit, value *big.Rat) (float64, error) {
	if err := p.notNegative(give); err != nil {
		return 0, err
	}
	own := u
	if share, ok := shareUnit(give.unit); ok && p.kind != Ratio {
		if err := p.mayBeShare(give); err != nil {
			return 0, err
		}
		size := new(big.Rat).Abs(value)
		return p.hold(give, size.Mul(size, share.toCanonical(give.number)))
	} else if ok && u.name == "" {
		return 0, p.refuse(give.unitAt, give.unit, give.written+" "+give.unit+" may be a share of the ratio or part of the same whole",
			"write both the same way, as 0.3 ±0.02 or 30 % ±2 %")
	}
	if give.unit != "" {
		var err error
		if own, err = p.unit(give); err != nil {
			return 0, err
		}
	}
	return p.hold(give, own.differenceToCanonical(give.number))
}

// shareUnit finds the unit of a give-or-take that is a share of its value.
func shareUnit(word string) (unit, bool) {
	if word == "" {
		return unit{}, false
	}
	return findUnit(Ratio, word)
}

func (p *parser) mayBeShare(give amount) error {
	if p.kind != Temperature {
		return nil
	}
	return p.refuse(give.unitAt, give.unit, "a share of a temperature means nothing, its zero being arbitrary", "write degrees, as 25 ±2 degC")
}

func (p *parser) notNegative(give amount) error {
	if give.number.Sign() >= 0 {
		return nil
	}
	return p.refuse(give.numberAt, give.written, "the give-or-take "+give.written+" is below zero", "write it without the sign, as ±0.5 mm")
}

// hold rounds an exact canonical value to the float64 that holds it.
func (p *parser) hold(a amount, exact *big.Rat) (float64, error) {
	v, ok := toFloat(exact)
	if !ok {
		return 0, p.refuse(a.numberAt, a.written, strings.TrimSpace(a.written+" "+a.unit)+" is beyond any number held here", "write an ordinary number")
	}
	return v, nil
}
