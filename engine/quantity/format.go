package quantity

import (
	"math"
	"math/big"
	"strconv"
	"strings"
)

// style says how numbers of a kind are shown in one unit.
type style struct {
	unit        string
	from        float64 // the least size, in the canonical unit, that is shown so
	keep        int     // decimals that stay even when they are zeros
	decimals    int     // decimals that are shown unless they are zeros
	significant int     // digits that are shown at least, however small the number
}

// digits4 shows a number with four significant digits or all of its whole part.
func digits4(unit string) style { return style{unit: unit, significant: 4} }

// atLeast is the same style for numbers from a size upward.
func (s style) atLeast(size float64) style {
	s.from = size
	return s
}

// styles lists how each kind is shown in millimetres and in inches, from the
// smallest size to the largest: newtons below 10 kN, psi below 10 ksi. Lengths show the micrometre, or the tenth of a
// thou, that machinists work to. A temperature has no significant digits to
// count, its zero being arbitrary, and shows tenths.
var styles = [...][2][]style{
	Ratio:             same(digits4("")),
	Count:             same(digits4("")),
	Length:            {{{unit: "mm", decimals: 3, significant: 3}}, {{unit: "in", keep: 4, significant: 3}}},
	Area:              each(digits4("mm2"), digits4("in2")),
	Volume:            each(digits4("mm3"), digits4("in3")),
	Force:             {{digits4("N"), digits4("kN").atLeast(10e3)}, {digits4("lbf")}},
	Stress:            {{digits4("MPa")}, {digits4("psi"), digits4("ksi").atLeast(68.9)}},
	Pressure:          each(digits4("MPa"), digits4("psi")),
	Temperature:       {{{unit: "degC", decimals: 1}}, {{unit: "degF", decimals: 1}}},
	TemperatureChange: each(digits4("K"), digits4("degF")),
	HardnessVickers:   same(digits4("HV")),
	HardnessBrinell:   same(digits4("HBW")),
	Time:              same(digits4("s"), digits4("min").atLeast(60), digits4("h").atLeast(3600)),
	Money:             same(style{unit: "", keep: 2, significant: 2}),
	Mass:              each(digits4("kg"), digits4("lb")),
	Density:           each(digits4("kg/m3"), digits4("lb/in3")),
	Angle:             same(digits4("deg")),
	Speed:             each(digits4("m/min"), digits4("ft/min")),
	Torque:            each(digits4("N*m"), digits4("lbf*ft")),
	Energy:            same(digits4("kJ")),
	Power:             each(digits4("kW"), digits4("hp")),
	HeatInput:         each(digits4("kJ/mm"), digits4("kJ/in")),
	Expansion:         each(digits4("um/m/K"), digits4("uin/in/degF")),
	Hydrogen:          same(digits4("ml/100g")),
}

func same(s ...style) [2][]style { return [2][]style{s, s} }

func each(mm, inch style) [2][]style { return [2][]style{{mm}, {inch}} }

// noNumber stands for what no calculation should have let through.
const noNumber = "not a finite number"

// Format writes the quantity for people who read the system: "22 mm",
// "0.1535 in", "310 kN", "60 ksi". A number other than zero never becomes zero,
// and Parse reads back what Format writes. The number has no exponent unless it
// is smaller than a millionth or has more than fifteen digits.
func (q Quantity) Format(s System) string {
	shown := styleOf(q, s)
	exact, ok := decimal(q.Value)
	if !ok {
		return noNumber
	}
	return withUnit(shown.number(shown.convert(q.Kind, exact)), shown.unit)
}

// FormatRounded writes the quantity with three significant digits, for sizes
// that were chosen round in one system and are shown in the other: a limit of
// 300 mm is "11.8 in".
func (q Quantity) FormatRounded(s System) string {
	shown := styleOf(q, s)
	exact, ok := decimal(q.Value)
	if !ok {
		return noNumber
	}
	number := shown.convert(q.Kind, exact)
	size, _ := number.Float64()
	whole := 0
	if size != 0 {
		whole = max(0, int(math.Floor(math.Log10(math.Abs(size))))+1)
	}
	shown.keep, shown.decimals, shown.significant = 0, max(0, 3-whole), 3
	return withUnit(shown.number(number), shown.unit)
}

// Format writes the reading for people, the give-or-take behind the value in
// the same unit: "22 ±0.5 mm".
func (r Reading) Format(s System) string {
	if !r.HasGiveOrTake {
		return r.Quantity.Format(s)
	}
	shown := styleOf(r.Quantity, s)
	value, ok := decimal(r.Value)
	half, also := decimal(r.GiveOrTake)
	if !ok || !also {
		return noNumber
	}
	text := shown.number(shown.convert(r.Kind, value))
	text += " ±" + shown.ofDifference().number(shown.convertDifference(r.Kind, half))
	return withUnit(text, shown.unit)
}

func withUnit(number, unit string) string {
	if unit == "" {
		return number
	}
	return number + " " + unit
}

// styleOf picks the style for the size of the quantity.
func styleOf(q Quantity, s System) style {
	steps := styles[q.Kind][0]
	if s == Inch {
		steps = styles[q.Kind][1]
	}
	chosen := steps[0]
	for _, step := range steps[1:] {
		if math.Abs(q.Value) >= step.from {
			chosen = step
		}
	}
	return chosen
}

func (s style) convert(kind Kind, canonical *big.Rat) *big.Rat {
	u, _ := findUnit(kind, s.unit)
	return u.fromCanonical(canonical)
}

// ofDifference is the style for differences, which count digits from zero even
// where values do not.
func (s style) ofDifference() style {
	s.significant = max(s.significant, 2)
	return s
}

func (s style) convertDifference(kind Kind, canonical *big.Rat) *big.Rat {
	u, _ := findUnit(kind, s.unit)
	return new(big.Rat).Quo(canonical, u.scale.rat())
}

// number writes a number to the decimals of the style, halves rounded away from
// zero.
func (s style) number(exact *big.Rat) string {
	if exact.Sign() == 0 {
		return "0"
	}
	first := exponent(new(big.Rat).Abs(exact))
	if first >= 15 || first < -6 && s.significant > 0 {
		return s.power(exact, first)
	}
	text := exact.FloatString(max(s.keep, s.decimals, s.significant-1-first))
	return trimZeros(text, s.keep)
}

// power writes numbers out of the ordinary as 1.5e-9, the large ones with all
// digits that a float64 has.
func (s style) power(exact *big.Rat, first int) string {
	digits := s.significant - 1
	if first > 0 {
		digits = 16
	}
	mantissa := new(big.Rat).Quo(exact, powerOfTen(first))
	return trimZeros(mantissa.FloatString(digits), 0) + "e" + strconv.Itoa(first)
}

// trimZeros drops zeros from the end, down to the decimals to keep.
func trimZeros(number string, keep int) string {
	whole, decimals, _ := strings.Cut(number, ".")
	for len(decimals) > keep && decimals[len(decimals)-1] == '0' {
		decimals = decimals[:len(decimals)-1]
	}
	if decimals == "" {
		if whole == "-0" {
			return "0"
		}
		return whole
	}
	return whole + "." + decimals
}
