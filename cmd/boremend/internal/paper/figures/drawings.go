package figures

import (
	"errors"
	"fmt"

	"boremend/cases"
	"boremend/cmd/boremend/internal/paper/draw"
	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// Bore is what the drawings of one bore are made from.
type Bore struct {
	Method   string // the method drawn: the one advised, or the one that was sized
	Facts    map[string]engine.FactShown
	Sheets   []worked.Sheet // that size the method
	Readings []cases.Reading
	AsBored  bool // whether the sheets are for the bore as it came out
	// SleeveMaterial is the grade that the sheets took for the sleeve, as
	// knowledge.SleeveMaterial names it.
	SleeveMaterial string
	Units          quantity.System // of the reader; the shop print shows both
}

// made is what each method puts into the bore; empty where nothing is.
var made = map[string]string{
	"sleeve_plain": "sleeve", "sleeve_shoulder": "sleeve", "sleeve_bolt_capture": "sleeve", "weld_and_bore": "weld",
}

// Drawings returns the drawings that apply to a bore, in the order in which a
// person reads them: the wear if it was read round the bore, the ear before and
// after, and what the method makes: section, sleeve, screws, build-up or plate. What
// has too few known numbers to be drawn is left out. The error says what could not
// be drawn although its numbers are there; the drawings that could be are returned
// with it.
func Drawings(b Bore) ([]draw.Drawing, error) {
	var out []draw.Drawing
	var failed []error
	add := func(known bool, make func() (draw.Drawing, error)) {
		if !known {
			return
		}
		d, err := make()
		if err != nil {
			failed = append(failed, fmt.Errorf("no drawing: %w", err))
			return
		}
		out = append(out, d)
	}
	if wear, ok := b.wear(); ok {
		add(true, func() (draw.Drawing, error) { return draw.DrawWear(wear) })
	}
	ear := b.ear()
	add(ear.FinishBore.Known, func() (draw.Drawing, error) { return draw.EarFound(ear) })
	add(ear.FinishBore.Known && ear.NewBore.Known, func() (draw.Drawing, error) { return draw.EarAfter(ear) })
	switch made[b.Method] {
	case "sleeve":
		if section, ok := b.section(); ok {
			add(true, func() (draw.Drawing, error) { return draw.DrawSection(section) })
		}
		if sleeve, ok := b.sleeve(); ok {
			add(true, func() (draw.Drawing, error) { return draw.DrawSleeve(sleeve) })
		}
		if captured, ok := b.captured(); ok {
			add(true, func() (draw.Drawing, error) { return draw.DrawCaptured(captured) })
		}
	case "weld":
		if built, ok := b.buildUp(); ok {
			add(true, func() (draw.Drawing, error) { return draw.DrawBuildUp(built) })
		}
	}
	if plate, ok := b.plate(); ok {
		add(true, func() (draw.Drawing, error) { return draw.DrawPlate(plate) })
	}
	return out, errors.Join(failed...)
}

// fact is the length that a fact holds, if it is known.
func (b Bore) fact(name string) draw.Length {
	f, ok := b.Facts[name]
	mm, isNumber := f.Value.(float64)
	if !ok || !isNumber {
		return draw.Length{}
	}
	return draw.Length{MM: mm, Known: true, Assumed: f.From == engine.Assumed}
}

// word is the word that a fact holds; empty when it is not known.
func (b Bore) word(name string) string {
	word, _ := b.Facts[name].Value.(string)
	return word
}

// sheet finds a sheet by its calculation.
func (b Bore) sheet(calculation string) (sheet, bool) {
	for _, s := range b.Sheets {
		if s.Calculation == calculation {
			return sheet{s}, true
		}
	}
	return sheet{}, false
}

// sheet is a calculation sheet that lengths and counts are read from.
type sheet struct{ worked.Sheet }

// named finds a result, or an input where there is no such result.
func (s sheet) named(name string) (worked.Value, bool) {
	if v, ok := s.Output(name); ok {
		return v, true
	}
	for _, in := range s.Inputs {
		if in.Name == name {
			return in.Value, true
		}
	}
	return worked.Value{}, false
}

func (s sheet) length(name string) draw.Length {
	v, ok := s.named(name)
	if !ok || v.Quantity.Kind != quantity.Length {
		return draw.Length{}
	}
	return draw.MM(v.Quantity.Value)
}

// number is a count or a ratio; 0 when it is not known.
func (s sheet) number(name string) float64 {
	v, _ := s.named(name)
	return v.Quantity.Value
}

func (s sheet) word(name string) string {
	v, _ := s.named(name)
	return v.Word
}
