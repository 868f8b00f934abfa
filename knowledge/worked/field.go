package worked

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"boremend/engine/quantity"
)

var (
	optionalType = reflect.TypeFor[Optional]()
	listType     = reflect.TypeFor[List]()
)

// fieldsOf reads the tags of a struct of inputs or outputs. The fields of an
// embedded struct, such as an analysis, stand where it is embedded.
func fieldsOf(t reflect.Type) []Field {
	var fields []Field
	for _, f := range reflect.VisibleFields(t) {
		if !f.Anonymous {
			fields = append(fields, fieldOf(t, f))
		}
	}
	return fields
}

func fieldOf(t reflect.Type, field reflect.StructField) Field {
	tag := field.Tag
	f := Field{Name: tag.Get("name"), Symbol: tag.Get("symbol"), Means: tag.Get("means"), Default: tag.Get("default"), index: field.Index}
	if f.Name == "" || f.Means == "" {
		panic(fmt.Sprintf("%s.%s: a field needs a name and a meaning", t, field.Name))
	}
	switch typ := field.Type; {
	case typ.Kind() == reflect.String:
		f.IsWord = true
		if words := tag.Get("choices"); words != "" {
			f.Choices = strings.Split(words, ",")
		}
	case typ.Kind() == reflect.Float64, typ == optionalType, typ == listType:
		kind, ok := quantity.KindNamed(tag.Get("kind"))
		if !ok {
			panic(fmt.Sprintf("%s.%s: unknown kind %q", t, field.Name, tag.Get("kind")))
		}
		f.Kind, f.IsList = kind, typ == listType
		f.IsOptional = typ == optionalType || f.IsList && tag.Get("optional") == "yes"
	default:
		panic(fmt.Sprintf("%s.%s: a field is a float64, an Optional, a List or a string", t, field.Name))
	}
	if _, err := f.ParsedDefault(); f.Default != "" && err != nil {
		panic(fmt.Sprintf("%s.%s: default: %v", t, field.Name, err))
	}
	return f
}

// ParsedDefault reads the default of an input that was not given.
func (f Field) ParsedDefault() (Value, error) { return f.Parse(f.Default) }

// Parse reads a value of the field from text as a person would write it.
func (f Field) Parse(text string) (Value, error) { return f.ParseIn(text, "") }

// ParseIn is Parse where a number without a unit is in the unit named by bare,
// if that is a unit of the field's kind.
func (f Field) ParseIn(text, bare string) (Value, error) {
	switch {
	case f.IsWord:
		return Value{Word: text}, nil
	case f.IsList:
		return f.parseList(text, bare)
	}
	reading, err := quantity.Parse(text, f.Kind, bare)
	if err != nil {
		return Value{}, err
	}
	return Value{Quantity: reading.Quantity}, nil
}

// fill sets the fields of a struct from named values and reports every name
// that is unknown, missing or of the wrong kind.
func fill(v reflect.Value, fields []Field, given map[string]Value) error {
	var c Checks
	for _, f := range fields {
		value, ok := given[f.Name]
		switch {
		case ok:
			f.set(v.FieldByIndex(f.index), value, &c)
		case f.Default != "":
			// fieldOf has read the default before: it is well formed.
			value, _ = f.ParsedDefault()
			f.set(v.FieldByIndex(f.index), value, &c)
		case !f.IsOptional:
			c.Refuse(f.Name, "is missing: %s", f.Means)
		}
	}
	for name := range given {
		if !slices.ContainsFunc(fields, func(f Field) bool { return f.Name == name }) {
			c.Refuse(name, "is not an input of this calculation")
		}
	}
	slices.SortFunc(c.refusals, func(a, b error) int { return strings.Compare(a.Error(), b.Error()) })
	return c.Err()
}

// set stores one value, or refuses it.
func (f Field) set(v reflect.Value, value Value, c *Checks) {
	if f.IsWord {
		switch {
		case value.Word == "":
			c.Refuse(f.Name, "must be a word: %s", f.Means)
		case f.Choices != nil:
			c.OneOf(f.Name, value.Word, f.Choices...)
		}
		v.SetString(value.Word)
		return
	}
	switch {
	case value.Word != "":
		c.Refuse(f.Name, "is %q, must be a number (%s)", value.Word, f.Kind)
		return
	case f.IsList && len(value.List) == 0:
		c.Refuse(f.Name, "must be a list with at least one %s", f.Kind)
		return
	case !f.IsList && value.List != nil:
		c.Refuse(f.Name, "is a list, must be one %s", f.Kind)
		return
	}
	if value.Quantity.Kind.Dimension() != f.Kind.Dimension() {
		c.Refuse(f.Name, "is a %s, must be a %s", value.Quantity.Kind, f.Kind)
		return
	}
	switch {
	case f.IsList:
		v.Set(reflect.ValueOf(value.List))
	case f.IsOptional:
		v.Set(reflect.ValueOf(Some(value.Quantity.Value)))
	default:
		v.SetFloat(value.Quantity.Value)
	}
}

// values reads a filled struct back; an Optional or a List that is not known is
// left out.
func values(v reflect.Value, fields []Field) []Named {
	named := make([]Named, 0, len(fields))
	for _, f := range fields {
		n := Named{Field: f}
		switch field := v.FieldByIndex(f.index); {
		case f.IsWord:
			n.Word = field.String()
		case f.IsList:
			if n.List = field.Interface().(List); n.List == nil {
				continue
			}
			n.Quantity.Kind = f.Kind
		case f.IsOptional:
			optional := field.Interface().(Optional)
			if !optional.Known {
				continue
			}
			n.Quantity = quantity.Quantity{Value: optional.Value, Kind: f.Kind}
		default:
			n.Quantity = quantity.Quantity{Value: field.Float(), Kind: f.Kind}
		}
		named = append(named, n)
	}
	return named
}
