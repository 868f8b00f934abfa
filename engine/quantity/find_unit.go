package quantity

import (
	"strconv"
	"strings"
)

// unit looks up the unit of an amount; the error names the nearest one, or the
// kind that the unit belongs to.
func (p *parser) unit(a amount) (unit, error) {
	if u, ok := findUnit(p.kind, a.unit); ok {
		return u, nil
	}
	if problem, remedy := doubtful(p.kind, a.unit); problem != "" {
		return unit{}, p.refuse(a.unitAt, a.unit, problem, remedy)
	}
	if other, ok := kindOfUnit(a.unit); ok {
		return unit{}, p.refuse(a.unitAt, a.unit,
			a.written+" "+a.unit+" is "+other.Plain()+", wanted "+p.kind.Plain(), "write it in "+unitList(p.kind))
	}
	remedy := "write it in " + unitList(p.kind)
	if near := Nearest(plainSpelling.Replace(a.unit), spellings(p.kind)); near != "" {
		remedy = "write " + near
	}
	return unit{}, p.refuse(a.unitAt, a.unit, "unknown unit "+strconv.Quote(a.unit), remedy)
}

// doubtful explains words that mean different units to different people, or
// that name a unit only loosely.
func doubtful(kind Kind, word string) (problem, remedy string) {
	quoted := strconv.Quote(word)
	switch word {
	case "ton", "tons", "tonf", "tons-force", "ton-force":
		switch kind {
		case Force:
			return quoted + " may be 2000 lbf or the weight of 1000 kg", "write short_ton for 2000 lbf or tonne-force for 9.80665 kN"
		case Mass:
			return quoted + " may be 2000 lb, 2240 lb or 1000 kg", "write t for 1000 kg, or the pounds in lb"
		}
	case "lb", "lbs":
		if kind == Force {
			return quoted + " is a mass, wanted a force", "write lbf"
		}
	case "t", "tonne", "tonnes":
		if kind == Force {
			return quoted + " is a mass, wanted a force", "write tonne-force for the weight of 1000 kg"
		}
	case "mil", "mils":
		if kind == Length {
			return quoted + " may be a thousandth of an inch or a millimetre", "write thou or mm"
		}
	case "C", "F", "deg C", "deg F":
		if kind == Temperature || kind == TemperatureChange {
			return "unknown unit " + quoted, "write deg" + word[len(word)-1:]
		}
	}
	return "", ""
}

// unitList names the units of a kind for a message: "mm, cm or m".
func unitList(kind Kind) string {
	names := Units(kind)
	for i, name := range names {
		if name == "" {
			names[i] = "no unit"
		}
	}
	last := len(names) - 1
	if last == 0 {
		return names[0]
	}
	return strings.Join(names[:last], ", ") + " or " + names[last]
}
