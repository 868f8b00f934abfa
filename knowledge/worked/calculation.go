// Package worked turns a plain Go function into a calculation sheet that a
// technician can follow with the handbook open beside it.
//
// A calculation is a struct of inputs, a struct of outputs and a pure function
// between them. The structs' tags say what each field is:
//
//	type RingInputs struct {
//		SeatMM float64  `name:"seat_diameter" symbol:"d" kind:"length" means:"bore for the sleeve"`
//		Fit    string   `name:"fit" choices:"shrunk,pressed" default:"pressed" means:"how it goes in"`
//		ODMM   Optional `name:"ring_od" symbol:"D" kind:"length" means:"outside of the ring, where known"`
//		Bores  List     `name:"bores" symbol:"D_i" kind:"length" means:"diameters found, one after the other"`
//	}
//
// A Page adds the formulas in the order in which a person would work them, in
// symbols. The package fills in the numbers, so what is shown is what was
// computed; a test of the catalogue evaluates every formula shown and compares.
//
// It knows how to show a calculation and nothing of any subject.
package worked

import (
	"reflect"

	"boremend/engine/quantity"
)

// Field describes one input or output of a calculation.
type Field struct {
	Name       string        // as given to the calc command, and the JSON key
	Symbol     string        // as formulas write it; empty when no formula uses it
	Kind       quantity.Kind // what a number measures; meaningless when IsWord is set
	Means      string
	Choices    []string // set for a word out of a list
	IsWord     bool     // a word, from Choices if those are given
	IsList     bool     // any number of numbers of the kind, in their order
	IsOptional bool     // a number or list that need not be known
	Default    string   // as a person would write it; empty when the input must be given
	index      []int
}

// Value is one input or output: a number with its kind, a word, or a list of
// numbers in the canonical unit of Quantity.Kind.
type Value struct {
	Quantity quantity.Quantity
	Word     string
	List     List
}

// Optional is a number that need not be known. Its zero value is "not known";
// it never stands in for a number.
type Optional struct {
	Value float64
	Known bool
}

// Some is the Optional of a known number.
func Some(v float64) Optional { return Optional{Value: v, Known: true} }

// List is any number of readings of one kind, in the order in which they were
// taken. A list that need not be known has the tag optional:"yes", and is nil
// when it is not; any other holds at least one number. A calculation reads its
// lists and never changes them.
type List []float64

// Formula is one line of a page: Symbol = Is. When, if set, says for which
// inputs and outputs the line applies (a thick plate uses another formula than
// a thin one). Source names the page where the formula stands. A value that is
// looked up and not computed has Table, which names the table, in place of Is;
// so has a value that is searched for, and Table then names the search.
type Formula[In, Out any] struct {
	Symbol string
	Is     string
	Table  string
	Source string
	When   func(In, Out) bool
}

// Page is what a calculation needs besides its function. Example holds inputs,
// as a person would write them, for which the calculation gives a sensible
// answer.
type Page[In, Out any] struct {
	Title    string
	Sources  []string
	Validity string // the range in which the formulas hold, in words
	Formulas []Formula[In, Out]
	Warnings func(In, Out) []string
	Example  map[string]string
}

// Calculation is one entry of the catalogue, with its Go types erased.
type Calculation struct {
	Name, Title string
	Sources     []string
	Validity    string
	Inputs      []Field
	Outputs     []Field
	Example     map[string]string
	run         func(map[string]Value) (Sheet, error)
}

// Run carries the calculation out on inputs by name. Inputs that are optional
// or have a default may be missing. The error lists everything that is wrong
// with the inputs.
func (c Calculation) Run(inputs map[string]Value) (Sheet, error) { return c.run(inputs) }

// Define makes a calculation of a function and its page. It panics when a
// struct tag is malformed, which the test of the catalogue would show at once.
func Define[In, Out any](name string, f func(In) (Out, error), page Page[In, Out]) Calculation {
	c := Calculation{
		Name: name, Title: page.Title, Sources: page.Sources, Validity: page.Validity,
		Inputs:  fieldsOf(reflect.TypeFor[In]()),
		Outputs: fieldsOf(reflect.TypeFor[Out]()),
		Example: page.Example,
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
