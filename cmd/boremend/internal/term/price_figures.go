package term

import (
	"math"
	"strconv"
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge/price"
)

// figure is an amount or hours with their unit.
func (w pricing) figure(v float64, unit string) string {
	if unit == w.Currency {
		return amount(v) + " " + unit
	}
	return hours(v) + " " + unit
}

// amount of money: whole from a hundred on.
func amount(v float64) string {
	if math.Abs(v) >= 100 || v == math.Trunc(v) {
		return strconv.FormatFloat(math.Round(v), 'f', 0, 64)
	}
	return strconv.FormatFloat(v, 'f', 2, 64)
}

// whole amounts of money, for columns.
func whole(v float64) string { return strconv.FormatFloat(math.Round(v), 'f', 0, 64) }

// hours: tenths below a hundred.
func hours(v float64) string {
	if math.Abs(v) >= 100 {
		return strconv.FormatFloat(math.Round(v), 'f', 0, 64)
	}
	return trimmed(v, 1)
}

// short numbers: tenths, and hundredths below one.
func short(v float64) string {
	if math.Abs(v) < 1 {
		return trimmed(v, 2)
	}
	return hours(v)
}

// number with two decimals at most, and small ones with two digits.
func number(v float64) string {
	if v != 0 && math.Abs(v) < 0.1 {
		return strconv.FormatFloat(v, 'g', 2, 64)
	}
	return trimmed(v, 2)
}

func trimmed(v float64, decimals int) string {
	text := strconv.FormatFloat(v, 'f', decimals, 64)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
}

func partOf(share float64) string {
	return strconv.FormatFloat(math.Round(100*share), 'f', 0, 64) + "%"
}

// three writes low, likely and high.
func three(e price.Estimate, show func(float64) string) string {
	if e.Low == e.High {
		return show(e.Low)
	}
	return show(e.Low) + " / " + show(e.Likely) + " / " + show(e.High)
}

// three writes an estimate of hours or of a material in the units of the reader.
func (w pricing) three(e price.Estimate, unit string) string {
	factor, shown := w.inUnits(unit)
	return three(e.Times(factor), short) + " " + shown
}

func (w pricing) amountOf(v float64, unit string) string {
	factor, shown := w.inUnits(unit)
	return short(v*factor) + " " + shown
}

// inUnits turns kilograms and cubic metres into what readers of inches buy by.
func (w pricing) inUnits(unit string) (factor float64, shown string) {
	for _, pair := range [][2]string{{"kg", "lb"}, {"m3", "ft3"}} {
		metric, ok := quantity.FromUnit(1, pair[0])
		inch, also := quantity.FromUnit(1, pair[1])
		if w.units == quantity.Inch && unit == pair[0] && ok && also {
			return metric.Value / inch.Value, pair[1]
		}
	}
	return 1, unit
}
