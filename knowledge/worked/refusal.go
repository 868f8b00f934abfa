package worked

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
)

// A Refusal says why a calculation will not give a number: an input is not a
// usable number, or lies outside the range in which the formula holds.
type Refusal struct {
	Input string // name of the field
	Says  string // what is wrong and what would be right
}

func (r *Refusal) Error() string { return r.Input + ": " + r.Says }

// Checks collects refusals, so that a person hears all of them at once. The
// zero value is ready; nothing is allocated while everything is in order.
type Checks struct{ refusals []error }

// Refuse adds a refusal in the caller's own words.
func (c *Checks) Refuse(input, says string, args ...any) {
	c.refusals = append(c.refusals, &Refusal{input, fmt.Sprintf(says, args...)})
}

// Numbers outside these limits are refused everywhere: they lie far beyond
// anything met at a joint, and inside them no product in a formula overflows.
const (
	smallest = 1e-12
	largest  = 1e15
)

// Positive asks for a number above zero that can be worked with.
func (c *Checks) Positive(input string, v float64) {
	switch {
	case !(v > 0):
		c.Refuse(input, "is %g, must be a number above zero", v)
	case v < smallest || v > largest:
		c.Refuse(input, "is %g, must lie between %g and %g", v, smallest, largest)
	}
}

// NotNegative asks for a number of zero or more that can be worked with.
func (c *Checks) NotNegative(input string, v float64) {
	switch {
	case !(v >= 0):
		c.Refuse(input, "is %g, must be a number of zero or more", v)
	case v > largest:
		c.Refuse(input, "is %g, must be at most %g", v, largest)
	}
}

// Finite asks for a number of either sign that can be worked with.
func (c *Checks) Finite(input string, v float64) {
	if !(math.Abs(v) <= largest) {
		c.Refuse(input, "is %g, must be a number from %g to %g", v, -largest, largest)
	}
}

// Between asks for least <= v <= most, the range in which the formula holds.
func (c *Checks) Between(input string, v, least, most float64) {
	if !(v >= least && v <= most) {
		c.Refuse(input, "is %g, outside the range %g to %g in which the formula holds", v, least, most)
	}
}

// Below asks for v < limit, where limit is another input.
func (c *Checks) Below(input string, v float64, other string, limit float64) {
	if !(v < limit) {
		c.Refuse(input, "is %g, must be below %s, which is %g", v, other, limit)
	}
}

// OneOf asks for one of the words.
func (c *Checks) OneOf(input, word string, words ...string) {
	if !slices.Contains(words, word) {
		c.Refuse(input, "is %q, must be one of %s", word, strings.Join(words, ", "))
	}
}

// Err returns all refusals as one error, or nil.
func (c *Checks) Err() error { return errors.Join(c.refusals...) }
