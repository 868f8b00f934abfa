package worked

import (
	"fmt"
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"boremend/engine/quantity"
)

// Line is one worked line, ready to print. A value that was looked up has no
// Formula, and Numbers names the table.
type Line struct {
	Symbol, Means, Formula, Numbers string
	Value                           quantity.Quantity
	Source                          string
}

// Named is a field with its value.
type Named struct {
	Field
	Value
}

// Sheet is a calculation carried out. Inputs and outputs that are not known are
// left out.
type Sheet struct {
	Calculation, Title string
	Sources            []string
	Validity           string
	Inputs, Outputs    []Named
	Lines              []Line
	Warnings           []string
}

// Output returns the named output.
func (s Sheet) Output(name string) (Value, bool) {
	for _, o := range s.Outputs {
		if o.Name == name {
			return o.Value, true
		}
	}
	return Value{}, false
}

// Show carries out f on in and lays the sheet out.
func Show[In, Out any](c Calculation, f func(In) (Out, error), page Page[In, Out], in In) (Sheet, error) {
	out, err := f(in)
	if err != nil {
		return Sheet{}, err
	}
	s := Sheet{Calculation: c.Name, Title: c.Title, Sources: c.Sources, Validity: c.Validity}
	s.Inputs = values(reflect.ValueOf(in), c.Inputs)
	s.Outputs = values(reflect.ValueOf(out), c.Outputs)
	if err := s.finite(); err != nil {
		return Sheet{}, err
	}
	known := s.bySymbol()
	for _, formula := range page.Formulas {
		if formula.When != nil && !formula.When(in, out) {
			continue
		}
		n, ok := known[formula.Symbol]
		if !ok {
			return Sheet{}, fmt.Errorf("calculation %s: no known field has the symbol %s", c.Name, formula.Symbol)
		}
		line := Line{Symbol: n.Symbol, Means: n.Means, Formula: formula.Is, Value: n.Quantity, Source: formula.Source}
		line.Numbers = formula.Table
		if formula.Is != "" {
			line.Numbers = numbers(formula.Is, known)
		}
		s.Lines = append(s.Lines, line)
	}
	if page.Warnings != nil {
		s.Warnings = page.Warnings(in, out)
	}
	return s, nil
}

// finite is the last net: no sheet shows infinity or "not a number".
func (s Sheet) finite() error {
	var c Checks
	for _, o := range s.Outputs {
		for _, v := range slices.Concat(o.List, List{o.Quantity.Value}) {
			if math.IsNaN(v) || math.IsInf(v, 0) {
				c.Refuse(o.Name, "comes to %g with these inputs, so nothing is shown", v)
			}
		}
	}
	return c.Err()
}

func (s Sheet) bySymbol() map[string]Named {
	known := map[string]Named{}
	for _, list := range [][]Named{s.Inputs, s.Outputs} {
		for _, n := range list {
			if n.Symbol != "" {
				known[n.Symbol] = n
			}
		}
	}
	return known
}

// tokens splits a formula into names and everything between them.
func tokens(formula string) []string {
	var out []string
	start := 0
	inName := false
	isName := func(r rune) bool { return r == '_' || r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' }
	isDigit := func(r rune) bool { return r >= '0' && r <= '9' || r == '.' }
	for i, r := range formula {
		named := isName(r) || inName && isDigit(r)
		// 1e3 is a number and not the symbol e3.
		if !inName && named && i > 0 && isDigit(rune(formula[i-1])) {
			named = false
		}
		if named != inName {
			out = append(out, formula[start:i])
			start, inName = i, named
		}
	}
	return append(out, formula[start:])
}

// numbers puts the values of known symbols into a formula. A negative number
// stands in brackets unless brackets or commas enclose it already. A list keeps
// its symbol: its numbers stand among the inputs and would bury the formula.
func numbers(formula string, known map[string]Named) string {
	var b strings.Builder
	parts := tokens(formula)
	for i, part := range parts {
		n, ok := known[part]
		switch {
		case !ok, n.IsList:
			b.WriteString(part)
		case n.IsWord:
			b.WriteString(n.Word)
		case n.Quantity.Value < 0 && !enclosed(parts, i):
			b.WriteString("(" + short(n.Quantity.Value) + ")")
		default:
			b.WriteString(short(n.Quantity.Value))
		}
	}
	return b.String()
}

// enclosed reports whether a part stands alone between brackets, commas or the
// ends of the formula.
func enclosed(parts []string, i int) bool {
	before, after := "", ""
	if i > 0 {
		before = strings.TrimSpace(parts[i-1])
	}
	if i < len(parts)-1 {
		after = strings.TrimSpace(parts[i+1])
	}
	opens := before == "" || before == "," || strings.HasSuffix(before, "(")
	closes := after == "" || after == "," || strings.HasPrefix(after, ")")
	return opens && closes
}

// short writes a number with six significant digits, enough to follow a
// working with a pocket calculator.
func short(v float64) string {
	if v == 0 {
		return "0" // not "-0"
	}
	text := strconv.FormatFloat(v, 'g', 6, 64)
	mantissa, exponent, ok := strings.Cut(text, "e")
	if !ok {
		return text
	}
	sign := ""
	if exponent[0] == '-' {
		sign = "-"
	}
	return mantissa + "e" + sign + strings.TrimLeft(exponent[1:], "0")
}
