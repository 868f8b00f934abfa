package draw

import (
	"fmt"
	"slices"

	"boremend/engine/quantity"
)

// BuildUp is a bore that is filled with weld and bored back to size.
type BuildUp struct {
	Units       quantity.System
	PreBore     Length // cut before welding
	Filled      Length // as filled, before boring
	FinishBore  Length
	Build       Length // thickness to be built up, a side
	Allowance   Length // bored away again, a side
	LayerHeight Length
	BeadPitch   Length // from bead to bead
	Layers      int    // 0 when not known
}

const (
	buildRoomHigh = 24.0
	stripWide     = 56.0 // of wall that is shown, on paper
	stripMetal    = 16.0 // of the ear above the weld, on paper
	hiddenCutMM   = 0.8  // a cut thinner than that on paper is drawn so thick
)

// DrawBuildUp draws the wall of a bore cut along its axis and enlarged: the metal of
// the ear, the beads layer on layer, and the size bored back.
func DrawBuildUp(in BuildUp) (Drawing, error) {
	var c checks
	c.needs("the cut before welding", in.PreBore)
	c.needs("the bore as filled", in.Filled)
	c.needs("the finished bore", in.FinishBore)
	c.larger("the cut before welding", in.PreBore, "the finished bore", in.FinishBore)
	c.larger("the finished bore", in.FinishBore, "the bore as filled", in.Filled)
	c.may("the height of a layer", in.LayerHeight)
	c.may("the advance of the beads", in.BeadPitch)
	if err := c.err(); err != nil {
		return Drawing{}, fmt.Errorf("the build-up: %w", err)
	}
	s, err := newSheet()
	if err != nil {
		return Drawing{}, err
	}
	deep := (in.PreBore.MM - in.Filled.MM) / 2
	v := &buildView{sheet: s, BuildUp: in, scale: fitting(1, deep, buildRoomHigh, buildRoomHigh)}
	v.fill = -deep * v.scale.of
	v.finish = min(-(in.PreBore.MM-in.FinishBore.MM)/2*v.scale.of, -hiddenCutMM)
	v.fill = min(v.fill, v.finish-hiddenCutMM)
	v.metal()
	v.beads()
	v.segment(outline, at(0, v.finish), at(stripWide, v.finish))
	v.segment(original, at(0, v.fill), at(stripWide, v.fill))
	v.column(0, -1, v.depths()...)
	v.column(stripWide, 1, v.names()...)
	v.below()
	return v.sheet.finish("build_up", "The build-up", v.words()), nil
}

// buildView is a build-up being drawn. The cut before welding lies at height 0,
// the bore below it.
type buildView struct {
	*sheet
	BuildUp
	scale        scale
	finish, fill float64 // heights on paper, both below 0
}

func (v *buildView) metal() {
	left, right := wavy(at(0, stripMetal), at(0, 0)), wavy(at(stripWide, 0), at(stripWide, stripMetal))
	top := wavy(at(stripWide, stripMetal), at(0, stripMetal))
	v.hatch(polyline(true, slices.Concat(left, right, top)...), 45, 3)
	v.draw(narrow, polyline(false, slices.Concat(right, top, left)...), wave(at(0, 0), at(0, v.fill)), wave(at(stripWide, 0), at(stripWide, v.fill)))
	v.segment(outline, at(0, 0), at(stripWide, 0))
}

// beads draws the surfaces of the layers, each a row of bead backs, spread evenly
// over what is built up.
func (v *buildView) beads() {
	if v.Layers < 1 || !v.BeadPitch.Known {
		return
	}
	high, wide := -v.fill/float64(v.Layers), v.BeadPitch.MM*v.scale.of
	if high < 0.8 || wide < 1 {
		return // too fine to be told apart; the notes give the numbers
	}
	back := min(0.5*high, 0.25*wide)
	for layer := 1; layer <= v.Layers; layer++ {
		y := -float64(layer) * high
		// Each layer starts half a bead further, as a welder sets it.
		p := polyline(false, at(0, y))
		for x := -float64(layer%2) * wide / 2; x < stripWide; x += wide {
			if from, to := max(x, 0), min(x+wide, stripWide); to > from {
				p.QuadTo((from+to)/2, y-back*(to-from)/wide, to, y)
			}
		}
		v.draw(narrow, p)
	}
}

func (v *buildView) depths() []label {
	var labels []label
	if v.Build.Known {
		labels = append(labels, label{lines: []string{"built up, a side", v.Build.text(v.Units)}, dimension: true, y1: v.fill, y2: 0})
	}
	if v.Allowance.Known {
		labels = append(labels, label{lines: []string{"bored away, a side", v.Allowance.text(v.Units)}, dimension: true, y1: v.fill, y2: v.finish})
	}
	return labels
}

func (v *buildView) names() []label {
	return []label{
		{lines: []string{"ear"}, target: at(stripWide-6, stripMetal*0.6), inside: true},
		{lines: []string{"weld"}, target: at(stripWide-9, v.finish/2), inside: true},
		{lines: []string{"cut before welding", "Ø " + v.PreBore.text(v.Units)}, target: at(stripWide-3, 0)},
		{lines: []string{"bored back to", "Ø " + v.FinishBore.text(v.Units)}, target: at(stripWide-6, v.finish)},
		{lines: []string{"filled to", "Ø " + v.Filled.text(v.Units)}, target: at(stripWide-3, v.fill)},
	}
}

func (v *buildView) below() {
	beads := "Layers and beads were not worked out."
	if v.Layers > 0 && v.LayerHeight.Known {
		beads = fmt.Sprintf("Layers: %d of %s each", v.Layers, v.LayerHeight.text(v.Units))
		if v.BeadPitch.Known {
			beads += ", beads " + v.BeadPitch.text(v.Units) + " apart"
		}
		beads += "."
	}
	v.foot(v.scale, v.Units, 0, beads, "A piece of the wall, cut along the axis; the bore lies below. Diameters are of the bore, not of this piece. Layers are drawn evenly, and the backs of the beads are a sketch.")
}

func (v *buildView) words() string {
	words := "The wall of the bore cut along its axis: cut to " + v.PreBore.text(v.Units) + " before welding, filled to " +
		v.Filled.text(v.Units) + ", bored back to " + v.FinishBore.text(v.Units)
	if v.Layers > 0 {
		words += fmt.Sprintf(", in %d layers", v.Layers)
	}
	return words + "."
}
