// Package worked turns a plain Go function into a calculation sheet that a
// technician can follow with the handbook open beside it.
//
// A calculation is a struct of inputs, a struct of outputs and a pure function
// between them. The structs' tags say what each field is:
//
//	type RingInputs struct {
//		SeatMM float64 `name:"seat_diameter" symbol:"d" kind:"length" means:"bore for the sleeve"`
//		Fit    string  `name:"fit" choices:"shrunk,pressed" default:"pressed" means:"how it goes in"`
//	}
//
// A Page adds the formulas in the order in which a person would work them, in
// symbols. The package fills in the numbers, so what is shown is what was
// computed; a test of the catalogue evaluates every formula shown and compares.
//
// It knows how to show a calculation and nothing of any subject.
package worked

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"

	"boremend/engine/quantity"
)

// Field describes one input or output of a calculation.
type Field struct {
	Name    string        // as given to the calc command, and the JSON key
	Symbol  string        // as formulas write it; empty when no formula uses it
	Kind    quantity.Kind // what a number measures; meaningless when Choices is set
	Means   string
	Choices []string // set for a word instead of a number
	IsWord  bool     // a word, from Choices if those are given
	Default string   // as a person would write it; empty when the input must be given
	index   int
}

// Value is one input or output: a number with its kind, or a word.
type Value struct {
	Quantity quantity.Quantity
	Word     string
}

// Formula is one line of a page: Symbol = Is. When, if set, says for which
// inputs and outputs the line applies (a thick plate uses another formula than
// a thin one). Source names the page where the formula stands.
type Formula[In, Out any] struct {
	Symbol string
	Is     string
	Source string
	When   func(In, Out) bool
}

// Page is what a calculation needs besides its function.
type Page[In, Out any] struct {
	Title    string
	Sources  []string
	Validity string // the range in which the formulas hold, in words
	Formulas []Formula[In, Out]
	Warnings func(In, Out) []string
}

// Calculation is one entry of the catalogue, with its Go types erased.
type Calculation struct {
	Name, Title string
	Sources     []string
	Validity    string
	Inputs      []Field
	Outputs     []Field
	run         func(map[string]Value) (Sheet, error)
}

// Line is one worked line, ready to print.
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

// Sheet is a calculation carried out.
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

// Run carries the calculation out on inputs by name. Inputs with a default may
// be missing. The error lists everything that is wrong with the inputs.
func (c Calculation) Run(inputs map[string]Value) (Sheet, error) { return c.run(inputs) }

// Define makes a calculation of a function and its page. It panics when a
// struct tag is malformed, which the test of the catalogue would show at once.
func Define[In, Out any](name string, f func(In) (Out, error), page Page[In, Out]) Calculation {
	c := Calculation{
		Name: name, Title: page.Title, Sources: page.Sources, Validity: page.Validity,
		Inputs:  fieldsOf(reflect.TypeFor[In]()),
		Outputs: fieldsOf(reflect.TypeFor[Out]()),
	}
	c.run = func(given map[string]Value) (Sheet, error) {
		var in In
		if err := fill(reflect.ValueOf(&in).Elem(), c.Inputs, given); err != nil {
			return Sheet{}, err
		}
		return Show(c, f, page, in)
	}
	return c
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
	known := map[string]Named{}
	for _, n := range append(s.Inputs[:len(s.Inputs):len(s.Inputs)], s.Outputs...) {
		if n.Symbol != "" {
			known[n.Symbol] = n
		}
	}
	for _, formula := range page.Formulas {
		if formula.When != nil && !formula.When(in, out) {
			continue
		}
		n, ok := known[formula.Symbol]
		if !ok {
			return Sheet{}, fmt.Errorf("calculation %s: no field has the symbol %s", c.Name, formula.Symbol)
		}
		s.Lines = append(s.Lines, Line{
			Symbol: n.Symbol, Means: n.Means, Formula: formula.Is,
			Numbers: numbers(formula.Is, known), Value: n.Quantity, Source: formula.Source,
		})
	}
	if page.Warnings != nil {
		s.Warnings = page.Warnings(in, out)
	}
	return s, nil
}

func fieldsOf(t reflect.Type) []Field {
	var fields []Field
	for i := range t.NumField() {
		tag := t.Field(i).Tag
		f := Field{Name: tag.Get("name"), Symbol: tag.Get("symbol"), Means: tag.Get("means"), Default: tag.Get("default"), index: i}
		if f.Name == "" || f.Means == "" {
			panic(fmt.Sprintf("%s.%s: a field needs a name and a meaning", t, t.Field(i).Name))
		}
		switch t.Field(i).Type.Kind() {
		case reflect.String:
			f.IsWord = true
			if words := tag.Get("choices"); words != "" {
				f.Choices = strings.Split(words, ",")
			}
		case reflect.Float64:
			kind, ok := quantity.KindNamed(tag.Get("kind"))
			if !ok {
				panic(fmt.Sprintf("%s.%s: unknown kind %q", t, t.Field(i).Name, tag.Get("kind")))
			}
			f.Kind = kind
		default:
			panic(fmt.Sprintf("%s.%s: a field is a float64 or a string", t, t.Field(i).Name))
		}
		fields = append(fields, f)
	}
	return fields
}

func values(v reflect.Value, fields []Field) []Named {
	named := make([]Named, len(fields))
	for i, f := range fields {
		named[i].Field = f
		if f.IsWord {
			named[i].Word = v.Field(f.index).String()
		} else {
			named[i].Quantity = quantity.Quantity{Value: v.Field(f.index).Float(), Kind: f.Kind}
		}
	}
	return named
}

// symbolOrder splits a formula into symbols and everything between them.
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

// numbers puts the values of known symbols into a formula.
func numbers(formula string, known map[string]Named) string {
	var b strings.Builder
	for _, t := range tokens(formula) {
		n, ok := known[t]
		switch {
		case !ok:
			b.WriteString(t)
		case n.IsWord:
			b.WriteString(n.Word)
		case n.Quantity.Value < 0:
			b.WriteString("(" + short(n.Quantity.Value) + ")")
		default:
			b.WriteString(short(n.Quantity.Value))
		}
	}
	return b.String()
}

// short writes a number with six significant digits, enough to follow a
// working with a pocket calculator.
func short(v float64) string {
	text := strconv.FormatFloat(v, 'g', 6, 64)
	if !strings.Contains(text, "e") {
		return text
	}
	mantissa, exponent, _ := strings.Cut(text, "e")
	return mantissa + "e" + strings.TrimLeft(strings.TrimPrefix(exponent, "+"), "0")
}
