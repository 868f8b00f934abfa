package quantity

import (
	"math/big"
	"slices"
	"strings"
)

// unit says how a named unit relates to the canonical unit of its kind:
// canonical = (number - zero) * scale.
type unit struct {
	name  string
	scale fraction
	also  []string // other spellings
	zero  fraction // the number at the canonical zero; unset means 0
	fine  bool     // serves for small differences, hardly for a whole dimension
}

var one = fraction{1, 1}

// unitsOf lists the units of each kind, the canonical one first. Inch, pound,
// pound-force and degree Fahrenheit are exact by definition: 1 in = 25.4 mm,
// 1 lb = 0.45359237 kg, 1 lbf = 4.4482216152605 N (NIST SP 811, appendix B.8,
// from memory). The products of them below are worked out from these, unrounded.
var unitsOf = [...][]unit{
	Ratio: {
		{name: "", scale: one},
		{name: "%", scale: fraction{1, 100}, also: []string{"percent", "per cent"}},
		{name: "per mille", scale: fraction{1, 1000}, also: []string{"‰", "permille"}},
	},
	Count: {{name: "", scale: one}},
	Length: {
		{name: "mm", scale: one},
		{name: "cm", scale: fraction{10, 1}},
		{name: "m", scale: fraction{1000, 1}},
		{name: "in", scale: fraction{254, 10}, also: []string{"inch", "inches", "in.", `"`}},
		{name: "ft", scale: fraction{3048, 10}, also: []string{"foot", "feet"}},
		{name: "thou", scale: fraction{254, 10000}, fine: true},
		{name: "um", scale: fraction{1, 1000}, fine: true},
	},
	Area: {
		{name: "mm2", scale: one},
		{name: "cm2", scale: fraction{100, 1}},
		{name: "m2", scale: fraction{1e6, 1}},
		{name: "in2", scale: fraction{64516, 100}, also: []string{"sq in"}},
		{name: "ft2", scale: fraction{9290304, 100}, also: []string{"sq ft"}},
	},
	Volume: {
		{name: "mm3", scale: one},
		{name: "cm3", scale: fraction{1000, 1}, also: []string{"ml"}},
		{name: "dm3", scale: fraction{1e6, 1}, also: []string{"l"}},
		{name: "m3", scale: fraction{1e9, 1}},
		{name: "in3", scale: fraction{16387064, 1000}, also: []string{"cu in"}},
		{name: "ft3", scale: fraction{28316846592, 1000}, also: []string{"cu ft"}},
	},
	Force: {
		{name: "N", scale: one},
		{name: "kN", scale: fraction{1000, 1}},
		{name: "MN", scale: fraction{1e6, 1}},
		{name: "lbf", scale: fraction{44482216152605, 1e13}},
		{name: "kip", scale: fraction{44482216152605, 1e10}, also: []string{"kips"}},
		{name: "short_ton", scale: fraction{2 * 44482216152605, 1e10}, also: []string{"short ton", "short tons", "short_tons"}},
		{name: "tonne-force", scale: fraction{980665, 100}, also: []string{"tonnes-force"}},
	},
	Stress:   stressUnits,
	Pressure: stressUnits,
	Temperature: {
		{name: "degC", scale: one},
		{name: "degF", scale: fraction{5, 9}, zero: fraction{32, 1}},
		{name: "K", scale: one, zero: fraction{27315, 100}},
	},
	TemperatureChange: {
		{name: "K", scale: one},
		{name: "degC", scale: one},
		{name: "degF", scale: fraction{5, 9}},
	},
	HardnessVickers: {{name: "HV", scale: one}},
	HardnessBrinell: {{name: "HBW", scale: one, also: []string{"HB"}}},
	Time: {
		{name: "s", scale: one, also: []string{"second", "seconds"}},
		{name: "min", scale: fraction{60, 1}, also: []string{"minute", "minutes"}},
		{name: "h", scale: fraction{3600, 1}, also: []string{"hour", "hours"}},
		{name: "day", scale: fraction{86400, 1}, also: []string{"days"}},
	},
	Money: {{name: "money", scale: one, also: []string{""}}},
	Mass: {
		{name: "kg", scale: one},
		{name: "g", scale: fraction{1, 1000}},
		{name: "t", scale: fraction{1000, 1}, also: []string{"tonne", "tonnes"}},
		{name: "lb", scale: fraction{45359237, 1e8}, also: []string{"lbs"}},
	},
	Density: {
		{name: "kg/m3", scale: one},
		{name: "g/cm3", scale: fraction{1000, 1}},
		{name: "kg/dm3", scale: fraction{1000, 1}},
		{name: "lb/in3", scale: fraction{45359237e4, 16387064}},
	},
	Angle: {
		{name: "deg", scale: one, also: []string{"degree", "degrees"}},
		// 8958937768937/2851718461558 is a convergent of pi, off by less than 1e-26.
		{name: "rad", scale: fraction{180 * 2851718461558, 8958937768937}},
	},
	Speed: {
		{name: "m/min", scale: one},
		{name: "m/s", scale: fraction{60, 1}},
		{name: "mm/s", scale: fraction{60, 1000}},
		{name: "mm/min", scale: fraction{1, 1000}},
		{name: "ft/min", scale: fraction{3048, 10000}},
		{name: "in/min", scale: fraction{254, 10000}},
	},
	Torque: {
		{name: "N*m", scale: one, also: []string{"Nm", "N.m"}},
		{name: "kN*m", scale: fraction{1000, 1}, also: []string{"kNm", "kN.m"}},
		{name: "N*mm", scale: fraction{1, 1000}, also: []string{"Nmm", "N.mm"}},
		{name: "lbf*ft", scale: fraction{3389544870828501, 25e14}, also: []string{"lbf.ft", "ft*lbf", "lbf-ft", "ft-lbf", "lb-ft", "ft-lb"}},
		{name: "lbf*in", scale: fraction{1129848290276167, 1e16}, also: []string{"lbf.in", "in*lbf", "lbf-in", "in-lbf", "lb-in", "in-lb"}},
	},
	Energy: {
		{name: "kJ", scale: one},
		{name: "J", scale: fraction{1, 1000}},
		{name: "MJ", scale: fraction{1000, 1}},
	},
	Power: {
		{name: "kW", scale: one},
		{name: "W", scale: fraction{1, 1000}},
		{name: "hp", scale: fraction{37284993579113511, 5e16}}, // 550 lbf*ft a second
	},
	HeatInput: {
		{name: "kJ/mm", scale: one},
		{name: "J/mm", scale: fraction{1, 1000}},
		{name: "kJ/cm", scale: fraction{1, 10}},
		{name: "kJ/in", scale: fraction{10, 254}},
	},
	Expansion: {
		{name: "1/K", scale: one, also: []string{"/K", "1/degC", "/degC"}},
		{name: "1/degF", scale: fraction{9, 5}, also: []string{"/degF"}},
		{name: "um/m/K", scale: fraction{1, 1e6}, also: []string{"um/m/degC"}},
		{name: "uin/in/degF", scale: fraction{9, 5e6}},
	},
	Hydrogen: {{name: "ml/100g", scale: one, also: []string{"ml/100 g"}}},
}

var stressUnits = []unit{
	{name: "MPa", scale: one, also: []string{"N/mm2"}},
	{name: "Pa", scale: fraction{1, 1e6}, also: []string{"N/m2"}},
	{name: "kPa", scale: fraction{1, 1000}},
	{name: "GPa", scale: fraction{1000, 1}, also: []string{"kN/mm2"}},
	{name: "bar", scale: fraction{1, 10}},
	{name: "psi", scale: fraction{4448221615260500, 64516e13}, also: []string{"lbf/in2"}},
	{name: "ksi", scale: fraction{4448221615260500, 64516e10}},
	{name: "Mpsi", scale: fraction{4448221615260500, 64516e7}},
}

// toCanonical converts a number, and may return the very same one.
func (u unit) toCanonical(number *big.Rat) *big.Rat {
	if u.zero.under != 0 {
		number = new(big.Rat).Sub(number, u.zero.rat())
	}
	if u.scale == one {
		return number
	}
	return new(big.Rat).Mul(number, u.scale.rat())
}

func (u unit) fromCanonical(canonical *big.Rat) *big.Rat {
	number := new(big.Rat).Quo(canonical, u.scale.rat())
	return number.Add(number, u.zeroPoint())
}

// differenceToCanonical converts a difference of two values: 2 degF more is
// 1.11 degC more, wherever the zeros lie.
func (u unit) differenceToCanonical(number *big.Rat) *big.Rat {
	return new(big.Rat).Mul(number, u.scale.rat())
}

func (u unit) zeroPoint() *big.Rat {
	if u.zero.under == 0 {
		return new(big.Rat)
	}
	return u.zero.rat()
}

// pastedSigns are the signs that people paste from documents, each before what
// the unit names have for it.
var pastedSigns = []string{
	"²", "2", "³", "3", "·", "*", "⋅", "*", "µ", "u", "μ", "u",
	"°C", "degC", "°F", "degF", "℃", "degC", "℉", "degF", "°", "deg",
	"″", `"`, "”", `"`,
}

// plainSpelling turns pasted signs into those of the unit names.
var plainSpelling = strings.NewReplacer(pastedSigns...)

// findUnit finds a unit of the kind by its name or another spelling of it.
func findUnit(kind Kind, word string) (unit, bool) {
	if u, ok := unitSpelled(kind, word); ok {
		return u, true
	}
	return unitSpelled(kind, plainSpelling.Replace(word))
}

func unitSpelled(kind Kind, word string) (unit, bool) {
	for _, u := range unitsOf[kind] {
		if u.name == word || slices.Contains(u.also, word) {
			return u, true
		}
	}
	return unit{}, false
}

// kindOfUnit finds the kind that a unit belongs to.
func kindOfUnit(word string) (Kind, bool) {
	first, found := Kind(0), false
	for k := range unitsOf {
		u, ok := findUnit(Kind(k), word)
		if !ok {
			continue
		}
		if u.name == Kind(k).Unit() {
			return Kind(k), true
		}
		if !found {
			first, found = Kind(k), true
		}
	}
	return first, found
}

// spellings lists every word that names a unit of the kind, names first.
func spellings(kind Kind) []string {
	words := Units(kind)
	for _, u := range unitsOf[kind] {
		words = append(words, u.also...)
	}
	return words
}
