package worked

import (
	"errors"
	"fmt"
	"math"
	"reflect"
	"slices"
	"strings"

	"boremend/engine/quantity"
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

// Positive asks for a finite number above zero.
func (c *Checks) Positive(input string, v float64) {
	if !(v > 0) || math.IsInf(v, 0) {
		c.Refuse(input, "is %g, must be a finite number above zero", v)
	}
}

// NotNegative asks for a finite number of zero or more.
func (c *Checks) NotNegative(input string, v float64) {
	if !(v >= 0) || math.IsInf(v, 0) {
		c.Refuse(input, "is %g, must be a finite number of zero or more", v)
	}
}

// Finite refuses NaN and infinities.
func (c *Checks) Finite(input string, v float64) {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		c.Refuse(input, "is %g, must be a finite number", v)
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

// fill sets the fields of a struct from named values and reports every name
// that is unknown, missing or of the wrong kind.
func fill(v reflect.Value, fields []Field, given map[string]Value) error {
	var c Checks
	for _, f := range fields {
		value, ok := given[f.Name]
		if !ok {
			if f.Default == "" {
				c.Refuse(f.Name, "is missing: %s", f.Means)
				continue
			}
			value = f.ParsedDefault()
		}
		if f.IsWord {
			if f.Choices != nil {
				c.OneOf(f.Name, value.Word, f.Choices...)
			}
			v.Field(f.index).SetString(value.Word)
			continue
		}
		if value.Quantity.Kind.Dimension() != f.Kind.Dimension() {
			c.Refuse(f.Name, "is a %s, must be a %s", value.Quantity.Kind, f.Kind)
			continue
		}
		v.Field(f.index).SetFloat(value.Quantity.Value)
	}
	for name := range given {
		if !slices.ContainsFunc(fields, func(f Field) bool { return f.Name == name }) {
			c.Refuse(name, "is not an input of this calculation")
		}
	}
	slices.SortFunc(c.refusals, func(a, b error) int { return strings.Compare(a.Error(), b.Error()) })
	return c.Err()
}

// ParsedDefault reads the default of an input that was not given.
func (f Field) ParsedDefault() Value {
	if f.IsWord {
		return Value{Word: f.Default}
	}
	reading, err := quantity.Parse(f.Default, f.Kind, "")
	if err != nil {
		panic(fmt.Sprintf("default of %s: %v", f.Name, err))
	}
	return Value{Quantity: reading.Quantity}
}
