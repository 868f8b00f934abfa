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
}

// Param is one argument of a Function: a number of a kind, or a word.
type Param struct {
	Name string
	Kind quantity.Kind
	Word bool
}

// Argument is the value of a Param: Number in the canonical unit, or Word.
type Argument struct {
	Number float64
	Word   string
}
