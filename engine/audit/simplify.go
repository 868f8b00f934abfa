package audit

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"boremend/engine"
	"boremend/engine/quantity"
)

// simplify makes a joint as simple as it can be while it still shows what it is
// an example of: facts that are not needed become unknown, others are calmed. The
// joint must show it to begin with.
func (j *joint) simplify(shows func() bool) {
	j.forget(shows)
	j.calm(shows)
	j.forget(shows)
}

// calm gives facts their most ordinary value where they may have it; other
// numbers come as near to it as they may, and become round.
func (j *joint) calm(shows func() bool) {
	for i, f := range j.facts {
		if f.known && f.value != f.usual {
			j.try(i, true, f.usual, shows)
		}
	}
	for i, f := range j.facts {
		if f.known && f.value != f.usual && f.Sort == engine.Number {
			j.approach(i, shows)
			j.round(i, shows)
		}
	}
}

// approach moves a number toward its most ordinary value, which it may not have.
func (j *joint) approach(i int, shows func() bool) {
	const halvings = 12
	f := j.facts[i]
	near := f.usual
	for range halvings {
		if middle := whole(f.Fact, near+(f.value-near)/2); !j.try(i, true, middle, shows) {
			near = middle
		}
	}
}

// try changes one fact and keeps that if the joint still shows the same.
func (j *joint) try(i int, known bool, value float64, shows func() bool) bool {
	was := *j.facts[i]
	if known && !j.writable(i, value) {
		return false
	}
	if j.set(i, known, value); j.possible() && shows() {
		return true
	}
	j.set(i, was.known, was.value)
	j.facts[i].text = was.text
	return false
}

// forget makes every fact unknown that is not needed, numbers first: a word or a
// yes is easier to take in. Forgetting one may free another.
func (j *joint) forget(shows func() bool) {
	order := make([]int, len(j.facts))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return int(j.facts[a].Sort) - int(j.facts[b].Sort) })
	for again := true; again; {
		again = false
		for _, i := range order {
			if j.facts[i].known && j.try(i, false, 0, shows) {
				again = true
			}
		}
	}
}

// mostDigits is how many digits write a number before it is given up and
// written as the computer holds it.
const mostDigits = 9

// round writes a number with as few digits as still show the same, as a person
// would in the units of the reader, so that what is read and typed in again is
// the very value shown.
func (j *joint) round(i int, shows func() bool) {
	f := j.facts[i]
	_, unit, _ := strings.Cut(f.Show(f.value, j.units), " ")
	if x, ok := (quantity.Quantity{Value: f.value, Kind: f.Kind}).In(unit); ok {
		j.shorten(i, x, unit, shows)
	}
}

// rounded is a number of a fact with few digits in the units of the reader, as
// text and as what reads back from it.
func rounded(f *engine.Fact, v float64, units quantity.System) (text string, value float64) {
	const digits = 2
	_, unit, _ := strings.Cut(f.Show(v, units), " ")
	if x, ok := (quantity.Quantity{Value: v, Kind: f.Kind}).In(unit); ok {
		text = strings.TrimSpace(strconv.FormatFloat(roundTo(x, digits), 'f', -1, 64) + " " + unit)
		if reading, err := quantity.Parse(text, f.Kind, ""); err == nil && reading.Value == whole(f, reading.Value) {
			return text, reading.Value
		}
	}
	return exact(f, v), v
}

// exact writes a number as the computer holds it.
func exact(f *engine.Fact, v float64) string {
	return strings.TrimSpace(strconv.FormatFloat(v, 'f', -1, 64) + " " + f.Unit())
}

// shorten writes one number, which is x in a unit, as short as may be.
func (j *joint) shorten(i int, x float64, unit string, shows func() bool) {
	f := j.facts[i]
	for digits := 1; digits <= mostDigits; digits++ {
		for _, toward := range []func(float64) float64{math.Round, math.Floor, math.Ceil} {
			text := strings.TrimSpace(strconv.FormatFloat(roundBy(x, digits, toward), 'f', -1, 64) + " " + unit)
			reading, err := quantity.Parse(text, f.Kind, "")
			if err != nil || f.Counted() && reading.Value != math.Trunc(reading.Value) {
				continue
			}
			if j.try(i, true, reading.Value, shows) {
				f.text = text
				return
			}
		}
	}
}

// roundTo rounds to a number of significant digits.
func roundTo(v float64, digits int) float64 { return roundBy(v, digits, math.Round) }

// roundBy cuts a number to so many significant digits in the way given.
func roundBy(v float64, digits int, toward func(float64) float64) float64 {
	if v == 0 {
		return 0
	}
	exponent := digits - 1 - int(math.Floor(math.Log10(math.Abs(v))))
	scale := math.Pow10(exponent)
	out := toward(v*scale) / scale
	if out == math.Trunc(out) || exponent <= 0 {
		return out
	}
	exact, _ := strconv.ParseFloat(strconv.FormatFloat(out, 'f', exponent, 64), 64) // its own form
	return exact
}
