package draw

import (
	"fmt"
	"slices"

	"boremend/engine/quantity"
)

// Sleeve is a sleeve as the lathe makes it. Sizes stand on the print in mm and in
// inches both.
type Sleeve struct {
	Made             string // sleeve, bush
	ODLeast, ODMost  Length // before pressing
	IDBefore         Length // to turn before pressing
	IDPressed        Length // once pressed
	FinishBore       Length // when all is done
	EarWidth         Length // length of the bore that it sits in
	Shoulder         *Shoulder
	Material         string // as the shop orders it
	RoughnessRz      Length // of the outside
	Seat             *Chamfer
	Grease           string   // where grease comes in: ear, pin, none; empty when not recorded
	Screw            string   // a screw half in the sleeve: its size; empty without
	Notes            []string // said first
	TurnedToReadings bool     // to the bore as it came out, and not as planned
}

// Chamfer is a lead-in with its give-or-take.
type Chamfer struct {
	WidthMM, WidthTolMM   float64
	AngleDeg, AngleTolDeg float64
}

const (
	sleeveRoomWide = 58.0
	sleeveRoomHigh = 74.0
)

// sleeveView is a sleeve being drawn, lengths and radii on paper.
type sleeveView struct {
	*sheet
	Sleeve
	scale                scale
	outer, inner, collar float64
	long, face           float64 // to the underside of the shoulder, and to its face
	widened              []string
}

// DrawSleeve draws a sleeve, cut along its axis, as a print for the lathe.
func DrawSleeve(in Sleeve) (Drawing, error) {
	v, err := in.view()
	if err != nil {
		return Drawing{}, err
	}
	v.body()
	v.segment(centre, at(-4, 0), at(v.face+4, 0))
	left := v.column(0, -1, v.outside())
	right := v.column(v.face, 1, v.insides()...)
	v.rows(min(-max(v.outer, v.collar), left.Y0, right.Y0)-4, v.lengths()...)
	v.below()
	return v.finish("sleeve", "The "+in.Made+", to be turned", v.words()), nil
}

func (in Sleeve) view() (*sleeveView, error) {
	var c checks
	c.needs("the least outside diameter", in.ODLeast)
	c.needs("the largest outside diameter", in.ODMost)
	c.needs("the length of the bore", in.EarWidth)
	bore := in.IDBefore
	if !bore.Known {
		bore = in.FinishBore
	}
	c.needs("the bore of the sleeve", bore)
	c.larger("the outside diameter", in.ODLeast, "the bore", bore)
	if s := in.Shoulder; s != nil {
		c.may("the thickness of the shoulder", s.Thickness)
		c.larger("the shoulder", s.OD, "the outside diameter", in.ODMost)
		c.larger("the length of the bore", in.EarWidth, "the counterbore", Length{MM: s.Recess.MM, Known: s.Recess.Known})
	}
	if err := c.err(); err != nil {
		return nil, fmt.Errorf("the %s: %w", in.Made, err)
	}
	s, err := newSheet()
	if err != nil {
		return nil, err
	}
	v := &sleeveView{sheet: s, Sleeve: in}
	wide, high := in.EarWidth.MM, in.ODMost.MM
	if in.Shoulder != nil {
		wide, high = wide+in.Shoulder.Thickness.MM, max(high, in.Shoulder.OD.MM)
	}
	v.scale = fitting(wide, high, sleeveRoomWide, sleeveRoomHigh)
	v.measure(bore.MM)
	return v, nil
}

func (v *sleeveView) measure(bore float64) {
	sc := v.scale.of
	v.outer, v.inner, v.long = v.ODMost.MM/2*sc, bore/2*sc, v.EarWidth.MM*sc
	if v.outer-v.inner < leastWallPaper {
		v.inner = max(v.outer-leastWallPaper, v.outer/2)
		v.widened = append(v.widened, "the wall")
	}
	if v.long < 3 {
		v.long = 3
		v.widened = append(v.widened, "the length")
	}
	v.face = v.long
	if s := v.Shoulder; s != nil {
		v.long = max(v.long-s.Recess.MM*sc, 2)
		thick := leastCollarPaper + 1
		if s.Thickness.Known {
			thick = s.Thickness.MM * sc
			if thick < leastCollarPaper {
				thick = leastCollarPaper
				v.widened = append(v.widened, "the shoulder")
			}
		}
		v.face, v.collar = v.long+thick, v.outer+4
		if s.OD.Known {
			v.collar = max(s.OD.MM/2*sc, v.outer+1.5)
		}
	}
}

// body draws the sleeve, cut: the end that enters first at the left, its edge
// broken.
func (v *sleeveView) body() {
	broken := min(0.8, (v.outer-v.inner)/3, v.long/4)
	sized := v.Shoulder != nil && v.Shoulder.Thickness.Known
	end := v.long
	if sized {
		end = v.face
	}
	for _, way := range []float64{1, -1} {
		points := []point{at(0, way*v.inner), at(0, way*(v.outer-broken)), at(2*broken, way*v.outer), at(v.long, way*v.outer)}
		if sized {
			points = append(points, at(v.long, way*v.collar), at(v.face, way*v.collar))
		}
		cut := polyline(true, append(points, at(end, way*v.inner))...)
		v.hatch(cut, 45, 2)
		v.draw(outline, cut)
		if v.Shoulder != nil && !sized {
			v.draw(hidden, box(v.long, way*v.outer, v.face, way*v.collar))
		}
	}
	v.segment(outline, at(0, v.inner), at(0, -v.inner))
	v.segment(outline, at(end, v.inner), at(end, -v.inner))
}

// both writes lengths in mm and in inches, one line each.
func both(name, sign string, lengths ...Length) []string {
	lines := []string{name}
	for _, units := range []quantity.System{quantity.Millimetre, quantity.Inch} {
		text := ""
		for i, l := range lengths {
			if i > 0 {
				text += " to "
			}
			text += shown(l.MM, units)
		}
		lines = append(lines, sign+text)
	}
	return lines
}

// outside is the dimension that decides the fit.
func (v *sleeveView) outside() label {
	return label{lines: both("outside", "Ø ", v.ODLeast, v.ODMost), dimension: true, y1: -v.outer, y2: v.outer, from1: 0, from2: 0}
}

func (v *sleeveView) insides() []label {
	bore, name := v.FinishBore, "bore"
	if v.IDBefore.Known {
		bore, name = v.IDBefore, "bore before pressing"
	}
	labels := []label{{lines: both(name, "Ø ", bore), dimension: true, y1: -v.inner, y2: v.inner, from1: v.face, from2: v.face}}
	s := v.Shoulder
	switch {
	case s == nil:
	case s.OD.Known && s.Thickness.Known:
		labels = append(labels, label{lines: both("shoulder", "Ø ", s.OD), dimension: true, y1: -v.collar, y2: v.collar, from1: v.face, from2: v.face})
	default:
		labels = append(labels, label{lines: []string{"shoulder", "not sized"}, target: at((v.long+v.face)/2, v.collar)})
	}
	return labels
}

func (v *sleeveView) lengths() []row {
	var list []row
	low := -v.outer
	if s := v.Shoulder; s != nil && s.Thickness.Known {
		list = append(list, row{x1: v.long, x2: v.face, from1: -v.collar, from2: -v.collar, lines: both("shoulder", "", s.Thickness)})
	}
	name := "length"
	if s := v.Shoulder; s != nil {
		name = "under the shoulder"
		if s.Recess.MM > 0 {
			return append(list, row{x1: 0, x2: v.long, from1: low, from2: low, lines: append(both("bore length", "", v.EarWidth), "less the counterbore")})
		}
	}
	return append(list, row{x1: 0, x2: v.long, from1: low, from2: low, lines: both(name, "", v.EarWidth)})
}

// below sets what a lathe hand needs beside the sizes.
func (v *sleeveView) below() {
	add := func(list []string, when bool, text string) []string {
		if when {
			return append(list, text)
		}
		return list
	}
	notes := slices.Clone(v.Notes)
	if v.TurnedToReadings {
		notes = append(notes, "Turned to the bore as it came out.")
	} else {
		notes = append(notes, "For the bore as planned: read the bore after the cut and size the "+v.Made+" again before turning the outside.")
	}
	notes = add(notes, v.Material != "", "Material: "+v.Material+".")
	finish := "Outside not rougher than Rz "
	if v.RoughnessRz.Known {
		notes = append(notes, finish+fmt.Sprintf("%.4g µm, %.4g µin.", v.RoughnessRz.MM*1000, v.RoughnessRz.MM/25.4*1e6))
	}
	notes = add(notes, v.IDPressed.Known && v.FinishBore.Known, "Bore once pressed "+pair(v.IDPressed)+"; finished in place to "+pair(v.FinishBore)+".")
	if c := v.Seat; c != nil {
		notes = append(notes, fmt.Sprintf("Lead-in of the seat in the ear: %s ± %s at %.4g° ± %.4g°. Break the edges of the %s; the end at the left enters first.",
			pair(MM(c.WidthMM)), pair(MM(c.WidthTolMM)), c.AngleDeg, c.AngleTolDeg, v.Made))
	}
	notes = add(notes, v.Shoulder != nil && v.Shoulder.Recess.MM > 0, "Counterbore of the ear for the shoulder "+pair(v.recess())+".")
	notes = append(notes, v.greaseNote())
	notes = add(notes, v.Screw != "", "Holes for the screws "+v.Screw+" are drilled in place, half in the "+v.Made+" and half in the ear.")
	notes = add(notes, len(v.widened) > 0, "Drawn wider than it is, so that it shows: "+listed(v.widened)+".")
	notes = add(notes, v.Shoulder != nil && !v.Shoulder.Thickness.Known, "The shoulder is not sized: drawn dashed, not to scale.")
	notes = append(notes, "Cut along the axis. Sizes at 20 °C, 68 °F.")
	v.foot(v.scale, quantity.Millimetre, 120, notes...)
}

func (v *sleeveView) recess() Length {
	if v.Shoulder == nil {
		return Length{}
	}
	return v.Shoulder.Recess
}

func pair(l Length) string {
	return shown(l.MM, quantity.Millimetre) + " (" + shown(l.MM, quantity.Inch) + ")"
}

func (v *sleeveView) greaseNote() string {
	switch v.Grease {
	case "ear":
		return "Grease comes in through the ear: a hole in the " + v.Made + " must meet its hole; mark it from the ear before pressing. Its place is not dimensioned here."
	case "pin":
		return "Grease comes in through the pin: no hole in the " + v.Made + "."
	case "none":
		return "No grease hole."
	}
	return "Where grease comes in was not recorded: ask before turning."
}

func (v *sleeveView) words() string {
	words := "Print of the " + v.Made + " for the lathe: outside " + pair(v.ODLeast) + " to " + pair(v.ODMost)
	if v.IDBefore.Known {
		words += ", bore before pressing " + pair(v.IDBefore)
	}
	words += ", for a bore " + pair(v.EarWidth) + " long"
	if s := v.Shoulder; s != nil && s.Thickness.Known {
		words += ", shoulder " + pair(s.Thickness) + " thick"
	}
	return words + "."
}
