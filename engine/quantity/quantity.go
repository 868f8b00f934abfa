// Package quantity holds numbers together with what they measure: it parses
// what a person writes ("7/8 in", "22 ±0.5 mm", "60 ksi"), keeps the value in
// one canonical unit of its kind (mm, N, MPa, degC, ...) and prints it again in
// inches or millimetres. It knows units and nothing of pins, bores or rules.
package quantity

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

// Parse reads a quantity of the wanted kind.
func Parse(text string, kind Kind, bare string) (Reading, error) { return Reading{}, nil }
