package draw

import (
	"fmt"
	"math"

	"boremend/engine/quantity"
)

// Load is where the pin pushes, against the thinnest wall of the ear.
type Load int

// The ways in which a pin can push.
const (
	LoadNotRecorded Load = iota
	TowardThin
	TowardThick
	BothWays
)

func (l Load) String() string {
	return [...]string{"not recorded", "toward the thin side", "toward the thick side", "both ways"}[l]
}

// Ear is an ear seen along its bore. Its nearest edge is drawn at the top.
type Ear struct {
	Units        quantity.System
	FinishBore   Length // size that the bore must have again
	WornMax      Length
	WornMin      Length
	WornReach    Length // deepest wear, as a radius from the true axis
	EdgeDistance Length // from the bore centre to the nearest edge
	WallNow      Length
	Wear         []Radius // what was read round the bore, if it was
	Load         Load

	// What the repair leaves, for EarAfter.
	NewBore  Length // that is cut in the ear
	WallLeft Length // beside it
	Made     string // what fills the new bore back to size: sleeve, weld; empty where a bigger pin runs in it
}

const (
	earRoom = 80.0 // of a view, wide and high
)

// earView is an ear being drawn: its scale and its measures on paper.
type earView struct {
	*sheet
	Ear
	scale scale
	edge  float64 // edge distance on paper, or how much is drawn without one
	round float64 // radius of the finished bore
}

func (in Ear) view() (*earView, error) {
	var c checks
	c.needs("the finished bore", in.FinishBore)
	c.may("the largest worn diameter", in.WornMax)
	c.may("the smallest worn diameter", in.WornMin)
	c.may("the reach of the wear", in.WornReach)
	c.may("the edge distance", in.EdgeDistance)
	c.may("the new bore", in.NewBore)
	c.readings(in.Wear)
	c.larger("the edge distance", in.EdgeDistance, "half the finished bore", MM(in.FinishBore.MM/2))
	if err := c.err(); err != nil {
		return nil, fmt.Errorf("the ear: %w", err)
	}
	s, err := newSheet()
	if err != nil {
		return nil, err
	}
	out := in.EdgeDistance.MM
	if !in.EdgeDistance.Known {
		out = 1.4 * max(in.FinishBore.MM, in.WornMax.MM, in.NewBore.MM) / 2
	}
	sc := fitting(2*out, 2.1*out, earRoom, earRoom)
	return &earView{sheet: s, Ear: in, scale: sc, edge: out * sc.of, round: in.FinishBore.MM / 2 * sc.of}, nil
}

// outline draws the ear round its bore: the nearest edge at the top, and below a
// break, because nobody measured how it goes on.
func (v *earView) outline() {
	foot := -1.1 * v.edge
	if v.EdgeDistance.Known {
		p := polyline(false, at(-v.edge, foot), at(-v.edge, 0))
		p.ArcTo(v.edge, v.edge, 0, false, false, v.edge, 0)
		p.LineTo(v.edge, foot)
		v.draw(outline, p)
		v.draw(narrow, wave(at(-v.edge, foot), at(v.edge, foot)))
	}
	past := v.edge + 3
	v.segment(centre, at(-past, 0), at(past, 0))
	v.segment(centre, at(0, foot-3), at(0, past))
}

// EarFound draws the ear as it was found: the hole as worn, the wall there is, and
// where the load pushes.
func EarFound(in Ear) (Drawing, error) {
	v, err := in.view()
	if err != nil {
		return Drawing{}, err
	}
	hole, times := v.worn()
	v.outline()
	v.draw(outline, hole.path(at(0, 0), v.scale.of))
	v.draw(original, circle(at(0, 0), v.round))
	v.loadArrow()
	top := hole(0) * v.scale.of
	var labels []label
	labels = append(labels, v.edgeLabels("thinnest wall now", v.WallNow, top)...)
	labels = append(labels,
		label{lines: []string{"worn hole", "largest " + v.WornMax.text(v.Units), "smallest " + v.WornMin.text(v.Units)},
			target: v.onHole(hole, 60)},
		label{lines: []string{"size as built", "Ø " + shown(v.FinishBore.MM, v.Units)}, target: onCircle(v.round, 115)})
	labels = append(labels, v.loadLabel()...)
	v.column(v.edge, 1, labels...)
	v.foot(v.scale, v.Units, 0, v.foundNotes(times)...)
	return v.finish("ear_found", "The ear as found", v.foundWords()), nil
}

// edgeLabels dimensions the edge distance and the wall beside a hole whose top is
// at that height.
func (v *earView) edgeLabels(wallName string, wall Length, top float64) []label {
	if !v.EdgeDistance.Known {
		return []label{{lines: []string{"edge distance", "not measured"}, target: at(v.edge*0.62, v.edge*0.62), inside: true}}
	}
	labels := []label{{lines: []string{"edge distance", v.EdgeDistance.text(v.Units)}, dimension: true, y1: 0, y2: v.edge, from1: v.edge, from2: 0}}
	if wall.Known && top < v.edge {
		labels = append(labels, label{lines: []string{wallName, wall.text(v.Units)}, dimension: true, y1: top, y2: v.edge, from1: 0, from2: 0})
	}
	return labels
}

// onHole is the point of a worn hole's edge at a clock position.
func (v *earView) onHole(hole profile, clock float64) point {
	return onCircle(hole(clock)*v.scale.of, clock)
}

// onCircle is the point of a circle round the middle at a clock position.
func onCircle(r, clock float64) point {
	sin, cos := math.Sincos(clock * math.Pi / 180)
	return at(r*sin, r*cos)
}

// loadArrow draws where the pin pushes.
func (v *earView) loadArrow() {
	tip, tail := 0.8*v.round, 0.1*v.round
	head := min(4, v.round/2)
	up := func(way float64) {
		v.segment(heavy, at(0, way*tail), at(0, way*(tip-head/2)))
		v.arrow(at(0, way*tip), at(0, 0), head, head*0.6)
	}
	if v.Load == TowardThin || v.Load == BothWays {
		up(1)
	}
	if v.Load == TowardThick || v.Load == BothWays {
		up(-1)
	}
}

func (v *earView) loadLabel() []label {
	way := 1.0
	switch v.Load {
	case LoadNotRecorded:
		return nil
	case TowardThick:
		way = -1
	}
	return []label{{lines: []string{"load", v.Load.String()}, target: at(0.3, way*0.3*v.round)}}
}

// wearPaperMM is how deep the wear shows at least; thinner it would hide in the
// width of its own line.
const wearPaperMM = 1.2

// worn is the hole to draw, in mm of the part, its deepest wear where the load
// pushes, and how many times the wear is exaggerated.
func (v *earView) worn() (hole profile, times float64) {
	round := v.FinishBore.MM / 2
	hole = v.wornTrue(round)
	depth := (hole.most() - round) * v.scale.of
	room := v.edge - v.round - 1.5
	times = 1
	for _, t := range []float64{2, 5, 10, 20, 50} {
		if depth > 0.05 && depth*times < wearPaperMM/2 && depth*t <= room {
			times = t
		}
	}
	return hole.exaggerated(round, times), times
}

func (v *earView) wornTrue(round float64) profile {
	toward := 0.0
	if v.Load == TowardThick {
		toward = 180
	}
	if len(v.Wear) > 0 {
		hole := read(v.Wear)
		return hole.turned(toward - hole.deepest())
	}
	if !v.WornMax.Known {
		return oval(round, 0, 0, 0)
	}
	growth := max(0, v.WornMax.MM-2*round)
	allRound := 0.0
	if v.WornMin.Known {
		allRound = max(0, v.WornMin.MM/2-round)
	}
	deep := growth
	switch {
	case v.WornReach.Known && !v.WornReach.Assumed:
		deep = max(allRound, v.WornReach.MM-round)
	case v.Load == BothWays:
		deep = growth / 2
	}
	return oval(round, allRound, deep, max(0, growth-deep)).turned(toward)
}

// foundNotes says what in the drawing was not measured.
func (v *earView) foundNotes(times float64) []string {
	var notes []string
	if times > 1 {
		notes = append(notes, fmt.Sprintf("Wear exaggerated %g times, so that it shows.", times))
	}
	switch {
	case len(v.Wear) > 0:
		notes = append(notes, "Shape of the wear from the readings, its deepest place turned to where the load pushes.")
	case v.WornReach.Known && !v.WornReach.Assumed:
		notes = append(notes, "Shape of the wear drawn from its diameters and its reach.")
	case v.WornMax.Known:
		notes = append(notes, "Shape of the wear drawn from its diameters; which side wore how deep was not measured.")
	}
	if v.Load == LoadNotRecorded {
		notes = append(notes, "Where the load pushes was not recorded; the wear is drawn at the thin side.")
	}
	return append(notes, v.edgeNote())
}

func (v *earView) edgeNote() string {
	if !v.EdgeDistance.Known {
		return "No edge of the ear was measured, so none is drawn."
	}
	return "Seen along the bore, the nearest edge at the top. Only that edge was measured; the rest of the outline is a sketch."
}

func (v *earView) foundWords() string {
	words := "The ear seen along its bore, as found: as built " + shown(v.FinishBore.MM, v.Units) +
		", largest diameter " + v.WornMax.text(v.Units) + ", smallest " + v.WornMin.text(v.Units) +
		", edge distance " + v.EdgeDistance.text(v.Units) + "."
	if v.WallNow.Known {
		words += " Thinnest wall now " + v.WallNow.text(v.Units) + "."
	}
	return words + " Load " + v.Load.String() + "."
}
