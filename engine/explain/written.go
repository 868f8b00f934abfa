package explain

import (
	"math"
	"strconv"
	"strings"

	"boremend/engine/quantity"
)

// mostDecimals is how finely a turning point is written before it is given up
// and written as the computer holds it.
const mostDecimals = 9

// written writes a turning value so that, typed in again, it still turns the
// decision: as short as the usual form, rounded away from the value found.
func (q *Study) written(slot int, v float64, is turned) (text string, typed float64) {
	f := q.book.Facts[slot]
	now, _ := q.state.Value(slot)
	defer q.restore(slot)
	turns := func(text string) bool {
		reading, err := quantity.Parse(text, f.Kind, "")
		if err != nil || reading.Value < f.Low || reading.Value > f.High {
			return false
		}
		typed = reading.Value
		q.state.Set(slot, typed)
		return is(q.state.Decide())
	}
	usual := f.Show(v, q.units)
	if turns(usual) {
		return usual, typed
	}
	number, unit, _ := strings.Cut(usual, " ")
	x, ok := quantity.Quantity{Value: v, Kind: f.Kind}.In(unit)
	_, fraction, _ := strings.Cut(number, ".")
	for decimals := max(len(fraction), fineness(x)); ok && decimals <= mostDecimals; decimals++ {
		step := math.Pow10(-decimals)
		rounded := math.Ceil(x/step) * step
		if v < now {
			rounded = math.Floor(x/step) * step
		}
		if text = strings.TrimSpace(strconv.FormatFloat(rounded, 'f', decimals, 64) + " " + unit); turns(text) {
			return text, typed
		}
	}
	return strings.TrimSpace(strconv.FormatFloat(v, 'g', -1, 64) + " " + f.Kind.Unit()), v
}

// fineness is how many decimals write a number to a thousandth of itself.
func fineness(x float64) int {
	const share = 1e-3
	if x == 0 {
		return 0
	}
	return int(math.Ceil(-math.Log10(math.Abs(x) * share)))
}
