package engine

import "boremend/engine/quantity"

// Function is a calculation that formulas may call by name. The engine knows
// of it only this: what goes in, what comes out, and that it is pure.
type Function struct {
	Name   string
	Params []Param
	Result quantity.Kind
	// Call works the result out. It must not keep args. An error leaves the
	// fact that asked for it unknown, and is what the trace then says.
	Call func(args []Argument) (float64, error)
	// Over bounds the results while each number lies between low and high and
	// the words stay; ok only if every such call has a result. It may be nil, and
	// is not needed where every number has a Trend.
	Over func(low, high []Argument) (least, most float64, ok bool)
}

// Param is one argument of a Function: a number of a kind, or a word.
type Param struct {
	Name  string
	Kind  quantity.Kind
	Word  bool
	Trend Trend // of a number
}

// Trend says which way a result goes when one argument grows and the others
// stay. Saying it is a promise: throughout the range the result never goes the
// other way, and where both ends of a stretch have a result, so has all of it.
type Trend int8

// The trends. Of a function without one nothing is taken for certain between
// two values.
const (
	NoTrend Trend = 0
	Rises   Trend = 1
	Falls   Trend = -1
)

// Argument is the value of a Param: Number in the canonical unit, or Word.
type Argument struct {
	Number float64
	Word   string
}
