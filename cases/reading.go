package cases

import (
	"math"

	"gopkg.in/yaml.v3"

	"boremend/engine"
	"boremend/engine/quantity"
)

// The facts that readings in the bore can answer.
const (
	largest  = "worn_max"
	smallest = "worn_min"
	reach    = "worn_reach"
)

// The largest diameter that a reading may have, far beyond any pinned joint:
// what lies above is a slip of the decimal point.
const mostDiameterMM = 2000

func (r *reader) readings(n *yaml.Node) []Reading {
	var readings []Reading
	for _, e := range r.List(n) {
		fields, _ := r.Entry(e, readingKeys)
		if (fields["diameter"] == nil) == (fields["radius"] == nil) {
			r.Report(e, "give diameter: or radius:", "a reading has either a diameter or a radius")
			continue
		}
		var reading Reading
		ok := r.length(fields["depth"], 0, &reading.DepthMM, nil) &&
			r.clock(fields["clock"], &reading.ClockDeg) &&
			r.length(fields["diameter"], math.SmallestNonzeroFloat64, &reading.DiameterMM, &reading.GiveOrTake) &&
			r.length(fields["radius"], math.SmallestNonzeroFloat64, &reading.RadiusMM, &reading.GiveOrTake)
		if ok {
			readings = append(readings, reading)
		}
	}
	return readings
}

// length reads a length of at least least; a missing one stays zero.
func (r *reader) length(n *yaml.Node, least float64, into, give *float64) bool {
	if n == nil {
		return true
	}
	reading, ok := r.Quantity(n, quantity.Length, r.bare)
	if !ok {
		return false
	}
	if reading.Value < least || reading.Value > mostDiameterMM {
		r.Report(n, "between 0 and 2 m", "%s cannot be a size in a bore", reading.Written)
		return false
	}
	*into = reading.Value
	if give != nil && reading.HasGiveOrTake {
		*give = reading.GiveOrTake
	}
	return true
}

// clock reads degrees clockwise from 12, with or without the unit.
func (r *reader) clock(n *yaml.Node, into *float64) bool {
	if n == nil {
		return true
	}
	reading, ok := r.Quantity(n, quantity.Angle, "deg")
	if !ok {
		return false
	}
	if reading.Value < 0 || reading.Value >= 360 {
		r.Report(n, "from 0 to below 360 degrees, clockwise from 12", "%s is not a clock position", reading.Written)
		return false
	}
	*into = reading.Value
	return true
}

// addReadings answers from the readings what the job does not state, and
// reports where the two contradict each other.
func (r *reader) addReadings(n *yaml.Node, b Bore) engine.Findings {
	least, most, deepest := math.Inf(1), math.Inf(-1), math.Inf(-1)
	give := 0.0
	for _, reading := range b.Readings {
		give = max(give, reading.GiveOrTake)
		if reading.DiameterMM > 0 {
			least, most = min(least, reading.DiameterMM), max(most, reading.DiameterMM)
		} else {
			deepest = max(deepest, reading.RadiusMM)
		}
	}
	found := b.Findings
	for _, answer := range []struct {
		fact  string
		value float64
	}{{largest, most}, {smallest, least}, {reach, deepest}} {
		if !math.IsInf(answer.value, 0) {
			found = r.answer(n, found, answer.fact, answer.value, give)
		}
	}
	return found
}

func (r *reader) answer(n *yaml.Node, found engine.Findings, name string, value, give float64) engine.Findings {
	slot := r.book.Fact(name)
	if slot < 0 {
		return found
	}
	fact := r.book.Facts[slot]
	if fact.Ranged && (value < fact.Low || value > fact.High) {
		r.Report(n, "look at the readings again", "the readings give %s of %s, outside its range", name, fact.Show(value, r.job.Units))
		return found
	}
	if give == 0 {
		give = fact.GiveOrTake(value)
	}
	for _, f := range found {
		if f.Fact == slot {
			if math.Abs(f.Value-value) > math.Max(f.GiveOrTake, give) {
				r.Report(n, "leave "+name+" out, or correct one of the two",
					"the readings give %s of %s, and the facts say %s", name, fact.Show(value, r.job.Units), f.Written)
			}
			return found
		}
	}
	return found.With(engine.Finding{Fact: slot, Value: value, GiveOrTake: give, Origin: engine.Readings, Written: fact.Show(value, r.job.Units)})
}
