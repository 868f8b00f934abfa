// Package quantity holds numbers together with what they measure: it parses
// what a person writes ("7/8 in", "22 ±0.5 mm", "60 ksi"), keeps the value in
// one canonical unit of its kind (mm, N, MPa, degC, ...) and prints it again in
// inches or millimetres. It knows units and nothing of pins, bores or rules.
//
// Conversion is done on exact fractions of whole numbers and rounded once, at
// the end. A float64 is taken for the shortest decimal that denotes it, so that
// 25.4 mm is one inch and not 0.99999999999999998 of it.
//
// To add a unit, add its line to the list of its kind in units.go. To change
// how a kind is shown, change its line in format.go.
package quantity

import "math/big"

// Quantity is a number with its kind. Value is in the canonical unit of Kind.
type Quantity struct {
	Value float64
	Kind  Kind
}

// System is the family of units that a person reads.
type System uint8

// The two systems. Millimetre is the zero value.
const (
	Millimetre System = iota
	Inch
)

// Reading is a quantity as a person gave it.
type Reading struct {
	Quantity
	GiveOrTake    float64 // half-width in the canonical unit, zero or more
	HasGiveOrTake bool
	Written       string // the text as written
}

// Units lists the names of a kind's units, the canonical one first. The empty
// name stands for a bare number.
func Units(kind Kind) []string {
	names := make([]string, len(unitsOf[kind]))
	for i, u := range unitsOf[kind] {
		names[i] = u.name
	}
	return names
}

// In converts to the named unit of q's kind. It reports false when the kind has
// no such unit or the result is not a finite number.
func (q Quantity) In(name string) (float64, bool) {
	u, ok := findUnit(q.Kind, name)
	if !ok {
		return 0, false
	}
	exact, ok := decimal(q.Value)
	if !ok {
		return 0, false
	}
	converted := u.fromCanonical(exact)
	if v, ok := shortest(converted, u, q.Value); ok {
		return v, true
	}
	return toFloat(converted)
}

// shortest looks for a number of 15 digits or fewer that stands for the same
// canonical value. What was written as 54 degF is held as 12.2222... degC, a
// hair off, and must come back as 54.
func shortest(converted *big.Rat, u unit, canonical float64) (float64, bool) {
	size := new(big.Rat).Abs(converted)
	if zero := u.zeroPoint(); zero.Cmp(size) > 0 {
		size = zero // near the zero of degF, digits count from 32
	}
	decimals := 14 - exponent(size)
	if decimals < 0 || decimals > 330 {
		return 0, false
	}
	rounded, ok := new(big.Rat).SetString(converted.FloatString(decimals))
	if !ok {
		return 0, false
	}
	if back, ok := toFloat(u.toCanonical(rounded)); !ok || back != canonical {
		return 0, false
	}
	return toFloat(rounded)
}

// FromUnit makes a quantity of a value in any unit of any kind. Where a name
// serves several kinds, the kind whose canonical unit it is comes first and
// then the order of the kinds: K is a change of temperature, MPa a stress and
// degF a temperature. It reports false for unknown units and numbers that are
// not finite.
func FromUnit(value float64, name string) (Quantity, bool) {
	exact, ok := decimal(value)
	if !ok {
		return Quantity{}, false
	}
	kind, ok := kindOfUnit(name)
	if !ok {
		return Quantity{}, false
	}
	u, _ := findUnit(kind, name)
	v, ok := toFloat(u.toCanonical(exact))
	if !ok {
		return Quantity{}, false
	}
	return Quantity{Value: v, Kind: kind}, true
}
