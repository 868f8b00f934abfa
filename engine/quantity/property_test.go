package quantity_test

import (
	"fmt"
	"math"
	"strconv"
	"testing"

	"boremend/engine/quantity"

	"pgregory.net/rapid"
)

// aDecimal draws a number with a few decimals, as a person would write it.
func aDecimal(t *rapid.T) string {
	places := rapid.IntRange(0, 4).Draw(t, "places")
	digits := rapid.IntRange(-9_999_999, 9_999_999).Draw(t, "digits")
	return strconv.FormatFloat(float64(digits)/math.Pow10(places), 'f', places, 64)
}

func aKind(t *rapid.T) quantity.Kind { return rapid.SampledFrom(kinds()).Draw(t, "kind") }

func mustParse(t *rapid.T, text string, kind quantity.Kind) quantity.Reading {
	r, err := quantity.Parse(text, kind, "")
	if err != nil {
		t.Fatalf("%s as %s: %v", text, kind, err)
	}
	return r
}

// What is written in any unit comes back from In as the number written.
func TestInReturnsWhatWasWritten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := aKind(t)
		text := aDecimal(t)
		if kind == quantity.Count {
			text = strconv.Itoa(rapid.IntRange(-1_000_000, 1_000_000).Draw(t, "whole"))
		}
		unit := rapid.SampledFrom(quantity.Units(kind)).Draw(t, "unit")
		want, err := strconv.ParseFloat(text, 64)
		if err != nil {
			t.Fatal(err)
		}
		got, ok := mustParse(t, text+" "+unit, kind).In(unit)
		if !ok || got != want && !(unit == "degF" || unit == "K") || math.Abs(got-want) > 1e-12 {
			t.Fatalf("%s %s comes back as %v", text, unit, got)
		}
	})
}

// The same length written as a fraction, a decimal and in millimetres.
func TestInchAndMillimetreAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sixtyFourths := rapid.IntRange(-64_000, 64_000).Draw(t, "sixtyFourths")
		fraction := mustParse(t, fmt.Sprintf("%d/64 in", sixtyFourths), quantity.Length)
		decimal := mustParse(t, strconv.FormatFloat(float64(sixtyFourths)/64, 'f', -1, 64)+" in", quantity.Length)
		mm := mustParse(t, strconv.FormatFloat(float64(sixtyFourths)*0.396875, 'f', 6, 64)+" mm", quantity.Length)
		if fraction.Value != decimal.Value || fraction.Value != mm.Value {
			t.Fatalf("%v, %v and %v mm", fraction.Value, decimal.Value, mm.Value)
		}
		stock := mustParse(t, fraction.FormatStock(quantity.Inch), quantity.Length)
		if stock.Value != fraction.Value {
			t.Fatalf("%v mm is the stock size %s", fraction.Value, fraction.FormatStock(quantity.Inch))
		}
	})
}

// Stock sizes are within half a step.
func TestStockSizeIsNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := quantity.Quantity{Value: rapid.Float64Range(0.3, 5000).Draw(t, "mm"), Kind: quantity.Length}
		for system, step := range map[quantity.System]float64{quantity.Millimetre: 0.5, quantity.Inch: 25.4 / 64} {
			stock := mustParse(t, q.FormatStock(system), quantity.Length)
			if math.Abs(stock.Value-q.Value) > step/2*(1+1e-9) {
				t.Fatalf("%v mm is the stock size %s", q.Value, q.FormatStock(system))
			}
		}
	})
}

// A give-or-take is the difference that it makes to the value, whatever the
// zero of the unit.
func TestGiveOrTakeIsADifference(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := rapid.SampledFrom(kinds()).Filter(func(k quantity.Kind) bool { return k != quantity.Count }).Draw(t, "kind")
		units := quantity.Units(kind)
		unit := rapid.SampledFrom(units).Draw(t, "unit")
		value := rapid.IntRange(-10_000, 10_000).Draw(t, "value")
		half := rapid.IntRange(0, 1000).Draw(t, "half")
		text := fmt.Sprintf("%d %s ±%d %s", value, unit, half, unit)
		r := mustParse(t, text, kind)
		above := mustParse(t, fmt.Sprintf("%d %s", value+half, unit), kind)
		rounding := 4e-16 * (math.Abs(r.Value) + math.Abs(above.Value))
		if math.Abs(above.Value-r.Value-r.GiveOrTake) > rounding || r.GiveOrTake < 0 {
			t.Fatalf("%s is %v ±%v, but %v at the upper end", text, r.Value, r.GiveOrTake, above.Value)
		}
		alone, share, err := quantity.ParseGiveOrTake(fmt.Sprintf("%d %s", half, unit), kind, "")
		if err != nil || !share && alone != r.GiveOrTake || share != (kind == quantity.Ratio && unit != "") {
			t.Fatalf("%s: declared alone %v, %v, %v", text, alone, share, err)
		}
	})
}

// What Format writes, Parse reads back as near as the digits shown allow, and
// nothing but zero is shown as zero.
func TestFormatReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := aKind(t)
		value := rapid.Float64Range(1e-9, 1e12).Draw(t, "value")
		if kind == quantity.Count {
			value = math.Ceil(math.Min(value, 1e9))
		}
		if rapid.Bool().Draw(t, "negative") {
			value = -value
		}
		for _, system := range []quantity.System{quantity.Millimetre, quantity.Inch} {
			if problem := readBack(quantity.Quantity{Value: value, Kind: kind}, system); problem != "" {
				t.Fatal(problem)
			}
		}
	})
}

// readBack formats, parses and compares; it returns what is wrong.
func readBack(q quantity.Quantity, system quantity.System) string {
	text := q.Format(system)
	r, err := quantity.Parse(text, q.Kind, "")
	if err != nil {
		return fmt.Sprintf("%v %s is shown as %s: %v", q.Value, q.Kind.Unit(), text, err)
	}
	if off := math.Abs(r.Value - q.Value); off > allowance(q, system) {
		return fmt.Sprintf("%v %s is shown as %s, off by %v", q.Value, q.Kind.Unit(), text, off)
	}
	if r.Value == 0 && q.Value != 0 && q.Kind != quantity.Temperature {
		return fmt.Sprintf("%v %s is shown as %s", q.Value, q.Kind.Unit(), text)
	}
	return ""
}

// allowance is half a unit of the last digit that a kind must show.
func allowance(q quantity.Quantity, system quantity.System) float64 {
	size := math.Abs(q.Value)
	rounding := 1e-15 * size
	switch q.Kind {
	case quantity.Length:
		least := 0.0005
		if system == quantity.Inch {
			least = 0.00005 * 25.4
		}
		return math.Min(least, 0.005*size)*(1+1e-9) + rounding
	case quantity.Temperature:
		return 0.05*(1+1e-9) + rounding
	case quantity.Money:
		return math.Min(0.005, 0.05*size)*(1+1e-9) + rounding
	}
	return 0.0005*size*(1+1e-9) + rounding
}
