package knowledge

import (
	"fmt"
	"slices"
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// An adapter carries out the calculation behind a kind of reference case.
type adapter func(*given) (*answers, error)

// same serves a kind whose inputs and outputs bear the names of the
// calculation's, apart from the unit endings. The inputs named in ignored say
// nothing that the calculation needs.
func same(calculation string, ignored ...string) adapter {
	return renamed(calculation, nil, nil, ignored...)
}

// renamed is same for a kind that uses other names: inputs and outputs map the
// calculation's names to those of the case, without the unit endings.
func renamed(calculation string, inputs, outputs map[string]string, ignored ...string) adapter {
	return func(in *given) (*answers, error) {
		in.ignore(ignored...)
		values, err := in.valuesFor(calculation, inputs)
		if err != nil {
			return nil, err
		}
		got, err := run(calculation, values)
		if err != nil {
			return nil, err
		}
		got.rename(outputs)
		return got, nil
	}
}

// run carries out a calculation of the catalogue.
func run(calculation string, values map[string]worked.Value) (*answers, error) {
	c, ok := Find(calculation)
	if !ok {
		return nil, fmt.Errorf("the catalogue has no calculation %s", calculation)
	}
	sheet, err := c.Run(values)
	if err != nil {
		return nil, err
	}
	got := &answers{values: map[string]worked.Value{}, sheets: []worked.Sheet{sheet}}
	for _, o := range sheet.Outputs {
		got.values[o.Name] = o.Value
	}
	return got, nil
}

// answers holds what was computed, by name without unit.
type answers struct {
	values map[string]worked.Value
	sheets []worked.Sheet
	// coverMost is set where the answers are figures to design with: they cover
	// the published ones and are at most so many times as large.
	coverMost float64
}

// add takes over the answers of one more calculation; earlier ones stand.
func (a *answers) add(b *answers) {
	for name, value := range b.values {
		if _, ok := a.values[name]; !ok {
			a.values[name] = value
		}
	}
	a.sheets = append(a.sheets, b.sheets...)
}

// rename lets answers be found under the names of the case as well.
func (a *answers) rename(names map[string]string) {
	for ours, theirs := range names {
		if value, ok := a.values[ours]; ok {
			a.values[theirs] = value
		}
	}
}

// find returns the answer behind an expected name, and its number in the unit
// that the name ends in.
func (a *answers) find(name string) (worked.Value, float64, error) {
	for answer, value := range a.values {
		if strings.EqualFold(answer, name) {
			return value, value.Quantity.Value, nil
		}
	}
	for answer, value := range a.values {
		if u, ok := unitOf(name, answer, value.Quantity.Kind); ok {
			return value, u.fromCanonical(value.Quantity.Value), nil
		}
	}
	return worked.Value{}, 0, fmt.Errorf("no answer has this name and unit")
}

// given holds the inputs of a case and remembers which were used.
type given struct {
	values map[string]any
	used   map[string]bool
}

// find returns an input by its name without unit, with the unit that the case
// wrote. A name that matches as it stands has no unit.
func (g *given) find(name string, kind quantity.Kind) (any, unit, bool) {
	for key, value := range g.values {
		if strings.EqualFold(key, name) {
			g.used[key] = true
			return value, plain, true
		}
	}
	for key, value := range g.values {
		if u, ok := unitOf(key, name, kind); ok {
			g.used[key] = true
			return value, u, true
		}
	}
	return nil, unit{}, false
}

// has reports whether the case gives an input, with or without a unit.
func (g *given) has(name string, kind quantity.Kind) bool {
	_, _, ok := g.find(name, kind)
	return ok
}

// number returns an input in the canonical unit of its kind.
func (g *given) number(name string, kind quantity.Kind) (float64, error) {
	raw, u, ok := g.find(name, kind)
	if !ok {
		return 0, fmt.Errorf("the case gives no %s %s", kind, name)
	}
	v, ok := number(raw)
	if !ok {
		return 0, fmt.Errorf("%s is %v, want a number", name, raw)
	}
	return u.toCanonical(v), nil
}

// word returns an input as text; true and false read "yes" and "no".
func (g *given) word(name string) (string, bool) {
	raw, _, ok := g.find(name, quantity.Ratio)
	switch raw {
	case true:
		return "yes", ok
	case false:
		return "no", ok
	}
	return fmt.Sprint(raw), ok
}

// rows returns a list of lists of numbers in canonical units, such as points.
func (g *given) rows(name string, kind quantity.Kind) ([][]float64, error) {
	raw, u, ok := g.find(name, kind)
	list, isList := raw.([]any)
	if !ok || !isList {
		return nil, fmt.Errorf("the case gives no list %s", name)
	}
	var rows [][]float64
	for _, item := range list {
		row, isRow := item.([]any)
		if !isRow {
			row = []any{item}
		}
		var numbers []float64
		for _, cell := range row {
			v, ok := number(cell)
			if !ok {
				return nil, fmt.Errorf("%s holds %v, want numbers", name, cell)
			}
			numbers = append(numbers, u.toCanonical(v))
		}
		rows = append(rows, numbers)
	}
	return rows, nil
}

// ignore marks inputs, named without their unit, that only describe the case.
func (g *given) ignore(names ...string) {
	for key := range g.values {
		for _, name := range names {
			ending, ok := strings.CutPrefix(strings.ToLower(key), name+"_")
			if strings.EqualFold(key, name) || ok && endings[ending] != nil {
				g.used[key] = true
			}
		}
	}
}

// valuesFor collects the inputs of a calculation; names maps its names to those
// of the case where they differ.
func (g *given) valuesFor(calculation string, names map[string]string) (map[string]worked.Value, error) {
	c, ok := Find(calculation)
	if !ok {
		return nil, fmt.Errorf("the catalogue has no calculation %s", calculation)
	}
	values := map[string]worked.Value{}
	for _, f := range c.Inputs {
		name := f.Name
		if other, ok := names[name]; ok {
			name = other
		}
		if f.IsWord {
			if word, ok := g.word(name); ok {
				values[f.Name] = worked.Value{Word: word}
			}
			continue
		}
		if !g.has(name, f.Kind) {
			continue
		}
		if f.IsList {
			rows, err := g.rows(name, f.Kind)
			if err != nil {
				return nil, err
			}
			values[f.Name] = listed(slices.Concat(rows...), f.Kind)
			continue
		}
		v, err := g.number(name, f.Kind)
		if err != nil {
			return nil, err
		}
		values[f.Name] = measured(v, f.Kind)
	}
	return values, nil
}

// measured is a number with its kind as a value.
func measured(v float64, kind quantity.Kind) worked.Value {
	return worked.Value{Quantity: quantity.Quantity{Value: v, Kind: kind}}
}

// listed is a list of numbers with their kind as a value.
func listed(list worked.List, kind quantity.Kind) worked.Value {
	return worked.Value{Quantity: quantity.Quantity{Kind: kind}, List: list}
}

// number reads a YAML scalar.
func number(raw any) (float64, bool) {
	switch v := raw.(type) {
	case int:
		return float64(v), true
	case float64:
		return v, true
	}
	return 0, false
}
