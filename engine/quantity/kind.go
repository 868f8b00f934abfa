package quantity

import "fmt"

// Kind says what sort of thing a number measures. Two quantities may be added
// or compared only when their kinds have the same Dimension.
type Kind uint8

// The kinds that facts, limits and calculations may have. Ratio is the zero
// value: a bare number.
const (
	Ratio Kind = iota
	Count
	Length
	Area
	Volume
	Force
	Stress
	Pressure
	Temperature
	TemperatureChange
	HardnessVickers
	HardnessBrinell
	Time
	Money
	Mass
	Density
	Angle
	Speed
	Torque
	Energy
	Power
	HeatInput
	Expansion
	Hydrogen
)

// base names one axis of a Dimension.
type base int

// Torque, density, speed and energy are axes of their own because their
// canonical units are not products of mm, N, s and kg: a force times a length is
// N*mm, which must not be compared with a torque in N*m. The two hardness scales
// never mix, and an absolute temperature is not a change of temperature.
const (
	lengthBase base = iota
	forceBase
	timeBase
	massBase
	temperatureBase
	changeBase
	vickersBase
	brinellBase
	moneyBase
	angleBase
	torqueBase
	energyBase
	hydrogenBase
	densityBase
	speedBase
	bases
)

// Dimension holds the exponent of each base in a product of quantities.
type Dimension [bases]int8

// kindFacts is what is fixed about each kind.
var kindFacts = [...]struct {
	name      string // as written in a rulebook
	plain     string // as said to a person, with its article
	unit      string // the canonical unit: SI-mm, as JSON shows it
	dimension Dimension
}{
	Ratio:             {"ratio", "a ratio", "", Dimension{}},
	Count:             {"count", "a count", "", Dimension{}},
	Length:            {"length", "a length", "mm", Dimension{lengthBase: 1}},
	Area:              {"area", "an area", "mm2", Dimension{lengthBase: 2}},
	Volume:            {"volume", "a volume", "mm3", Dimension{lengthBase: 3}},
	Force:             {"force", "a force", "N", Dimension{forceBase: 1}},
	Stress:            {"stress", "a stress", "MPa", Dimension{forceBase: 1, lengthBase: -2}},
	Pressure:          {"pressure", "a pressure", "MPa", Dimension{forceBase: 1, lengthBase: -2}},
	Temperature:       {"temperature", "a temperature", "degC", Dimension{temperatureBase: 1}},
	TemperatureChange: {"temperature_change", "a change of temperature", "K", Dimension{changeBase: 1}},
	HardnessVickers:   {"hardness_vickers", "a Vickers hardness", "HV", Dimension{vickersBase: 1}},
	HardnessBrinell:   {"hardness_brinell", "a Brinell hardness", "HBW", Dimension{brinellBase: 1}},
	Time:              {"time", "a time", "s", Dimension{timeBase: 1}},
	Money:             {"money", "an amount of money", "money", Dimension{moneyBase: 1}},
	Mass:              {"mass", "a mass", "kg", Dimension{massBase: 1}},
	Density:           {"density", "a density", "kg/m3", Dimension{densityBase: 1}},
	Angle:             {"angle", "an angle", "deg", Dimension{angleBase: 1}},
	Speed:             {"speed", "a speed", "m/min", Dimension{speedBase: 1}},
	Torque:            {"torque", "a torque", "N*m", Dimension{torqueBase: 1}},
	Energy:            {"energy", "an energy", "kJ", Dimension{energyBase: 1}},
	Power:             {"power", "a power", "kW", Dimension{energyBase: 1, timeBase: -1}},
	HeatInput:         {"heat_input", "a heat input", "kJ/mm", Dimension{energyBase: 1, lengthBase: -1}},
	Expansion:         {"expansion", "a thermal expansion", "1/K", Dimension{changeBase: -1}},
	Hydrogen:          {"hydrogen", "a hydrogen content", "ml/100g", Dimension{hydrogenBase: 1}},
}

// String returns the name that a rulebook uses.
func (k Kind) String() string { return kindFacts[k].name }

// Plain names the kind in a sentence, with its article: "a heat input".
func (k Kind) Plain() string { return kindFacts[k].plain }

// Unit returns the canonical unit, in which values are held and JSON is written.
func (k Kind) Unit() string { return kindFacts[k].unit }

// Dimension returns the exponents of the kind.
func (k Kind) Dimension() Dimension { return kindFacts[k].dimension }

// KindNamed finds the kind that a rulebook names.
func KindNamed(name string) (Kind, bool) {
	for k := range kindFacts {
		if kindFacts[k].name == name {
			return Kind(k), true
		}
	}
	return 0, false
}

// KindNames lists all kinds in the order of their declaration.
func KindNames() []string {
	names := make([]string, len(kindFacts))
	for k := range kindFacts {
		names[k] = kindFacts[k].name
	}
	return names
}

// Times returns the dimension of a product.
func (d Dimension) Times(e Dimension) Dimension {
	for i := range d {
		d[i] += e[i]
	}
	return d
}

// Over returns the dimension of a quotient.
func (d Dimension) Over(e Dimension) Dimension {
	for i := range d {
		d[i] -= e[i]
	}
	return d
}

// None reports whether nothing but a bare number is left.
func (d Dimension) None() bool { return d == Dimension{} }

// String names the dimension for an error message: "length", or "length2/time".
func (d Dimension) String() string {
	for k := range kindFacts {
		if kindFacts[k].dimension == d {
			return kindFacts[k].name
		}
	}
	names := [bases]string{"length", "force", "time", "mass", "temperature", "temperature change",
		"hardness HV", "hardness HBW", "money", "angle", "torque", "energy", "hydrogen",
		"density", "speed"}
	text, over := "", ""
	for i, n := range d {
		switch {
		case n == 1:
			text += "*" + names[i]
		case n > 1:
			text += fmt.Sprintf("*%s%d", names[i], n)
		case n == -1:
			over += "/" + names[i]
		case n < -1:
			over += fmt.Sprintf("/%s%d", names[i], -n)
		}
	}
	if text == "" {
		text = "*1"
	}
	return text[1:] + over
}

// Difference is the kind of the difference of two values of a kind: of two
// temperatures it is a change of temperature, and else it is the same.
func (k Kind) Difference() Kind {
	if k == Temperature {
		return TemperatureChange
	}
	return k
}
