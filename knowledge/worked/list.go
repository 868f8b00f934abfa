package worked

import (
	"fmt"
	"strings"
	"unicode"

	"boremend/engine/quantity"
)

// parseList reads numbers with commas between them: "45.02 mm, 45 mm, 1.8 in".
// One unit behind the last serves all, "45.02, 45, 44.98 mm", if no other
// number has a unit of its own; a list that mixes both ways is refused, since
// nobody could say what its bare numbers mean.
func (f Field) parseList(text, bare string) (Value, error) {
	items := strings.Split(text, ",")
	if unit, shared := sharedUnit(items); shared {
		bare = unit
	} else if mixesUnits(items) {
		return Value{}, fmt.Errorf("some numbers of %q have a unit and some have none (write a unit behind each, or one behind the last)", text)
	}
	list := make(List, len(items))
	for i, item := range items {
		reading, err := quantity.Parse(strings.TrimSpace(item), f.Kind, bare)
		if err != nil {
			return Value{}, fmt.Errorf("number %d of the list: %w", i+1, err)
		}
		list[i] = reading.Value
	}
	return Value{Quantity: quantity.Quantity{Kind: f.Kind}, List: list}, nil
}

// sharedUnit finds the unit of a list in which the last number alone has one.
func sharedUnit(items []string) (unit string, shared bool) {
	last := len(items) - 1
	for _, item := range items[:last] {
		if unitBehind(item) != "" {
			return "", false
		}
	}
	unit = unitBehind(items[last])
	return unit, unit != ""
}

func mixesUnits(items []string) bool {
	for _, item := range items[1:] {
		if (unitBehind(item) == "") != (unitBehind(items[0]) == "") {
			return true
		}
	}
	return false
}

// unitBehind returns what follows the digits of a number.
func unitBehind(item string) string {
	item = strings.TrimSpace(item)
	for i, r := range item {
		if (unicode.IsLetter(r) && !isExponent(item, i)) || strings.ContainsRune(`"°′″”%‰`, r) {
			return item[i:]
		}
	}
	return ""
}

// isExponent reports whether the letter at i is the e of a number as 1.2e-5.
func isExponent(item string, i int) bool {
	if i == 0 || item[i] != 'e' && item[i] != 'E' || i+1 == len(item) {
		return false
	}
	before, after := item[i-1], item[i+1]
	isDigit := func(b byte) bool { return b >= '0' && b <= '9' }
	return isDigit(before) && (isDigit(after) || after == '-' || after == '+')
}
