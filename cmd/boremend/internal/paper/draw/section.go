package draw

import (
	"fmt"
	"slices"

	"boremend/engine/quantity"
)

// Shoulder is the collar of a sleeve. Where it was not sized, Thickness and OD are
// not known, and it is drawn as a sketch.
type Shoulder struct {
	Thickness Length
	OD        Length
	Recess    Length // counterbore of the ear that it sits in
}

// Screws hold a sleeve from its face, half in the sleeve and half in the ear.
type Screws struct {
	Size     string // M8
	Count    int
	Diameter Length
	Depth    Length // of the thread that lies in the joint
}

// Section is a joint cut along the axis of its bore: ear, sleeve, shoulder or
// screws, and the mating part beside it.
type Section struct {
	Units        quantity.System
	Made         string // what is pressed in: sleeve
	EarWidth     Length
	EdgeDistance Length
	NewBore      Length // bore of the ear for the sleeve
	FinishBore   Length
	WallLeft     Length // of the ear beside the new bore
	Wall         Length // of the sleeve
	SideGap      Length // beside the ear, before the repair
	PlayLeft     Length // side play of the whole joint after it
	Shoulder     *Shoulder
	Screws       *Screws
	Notes        []string // said first
}

const (
	sectionRoomWide = 57.0
	sectionRoomHigh = 84.0
	// What is too narrow to be told from a line is drawn wider, and the drawing
	// says so.
	leastGapPaper    = 1.0
	leastWallPaper   = 1.5
	leastCollarPaper = 2.0
	matePaper        = 9.0 // how much of the mating part is drawn
)

// sectionView is a section being drawn. Lengths along x and radii are on paper.
type sectionView struct {
	*sheet
	Section
	scale        scale
	width        float64
	edge, foot   float64
	outer, inner float64 // radii of new and finished bore
	collar       float64 // radius of the shoulder
	under, face  float64 // from where to where the shoulder goes
	mate         float64 // near face of the mating part; 0 when its gap is not known
	widened      []string
}

// DrawSection draws a joint cut along the axis of its bore.
func DrawSection(in Section) (Drawing, error) {
	v, err := in.view()
	if err != nil {
		return Drawing{}, err
	}
	v.ear()
	v.sleeve()
	v.matingPart()
	right := max(v.width, v.face)
	if v.mate > 0 {
		right = v.mate + matePaper
	}
	v.segment(centre, at(-4, 0), at(right+4, 0))
	left := v.column(0, -1, v.diameters()...)
	notes := v.column(right, 1, v.parts()...)
	v.rows(min(v.foot, -v.collar, left.Y0, notes.Y0)-4, v.lengths()...)
	v.below()
	return v.finish("section", "Section through the "+in.Made, v.words()), nil
}

func (in Section) view() (*sectionView, error) {
	var c checks
	c.needs("the length of the bore", in.EarWidth)
	c.needs("the edge distance", in.EdgeDistance)
	c.needs("the new bore", in.NewBore)
	c.needs("the finished bore", in.FinishBore)
	c.larger("the new bore", in.NewBore, "the finished bore", in.FinishBore)
	c.larger("twice the edge distance", MM(2*in.EdgeDistance.MM), "the new bore", in.NewBore)
	if s := in.Shoulder; s != nil {
		c.may("the thickness of the shoulder", s.Thickness)
		c.may("the shoulder", s.OD)
		c.larger("the shoulder", s.OD, "the new bore", in.NewBore)
	}
	if s := in.Screws; s != nil {
		c.larger("the finished bore", in.FinishBore, "the screw", s.Diameter)
	}
	if err := c.err(); err != nil {
		return nil, fmt.Errorf("the section: %w", err)
	}
	s, err := newSheet()
	if err != nil {
		return nil, err
	}
	v := &sectionView{sheet: s, Section: in}
	up, down := in.EdgeDistance.MM, in.NewBore.MM/2+0.7*(in.EdgeDistance.MM-in.NewBore.MM/2)
	wide := in.EarWidth.MM + in.SideGap.MM
	if s := in.Shoulder; s != nil {
		up, down = max(up, s.OD.MM/2), max(down, s.OD.MM/2)
		wide = in.EarWidth.MM + max(in.SideGap.MM, s.Thickness.MM)
	}
	v.scale = fitting(wide, up+down, sectionRoomWide-matePaper, sectionRoomHigh)
	v.measure()
	return v, nil
}

// measure brings all lengths to paper and widens what would not show.
func (v *sectionView) measure() {
	sc := v.scale.of
	v.width, v.edge = v.EarWidth.MM*sc, v.EdgeDistance.MM*sc
	v.outer, v.inner = v.NewBore.MM/2*sc, v.FinishBore.MM/2*sc
	if v.outer-v.inner < leastWallPaper {
		v.inner = max(v.outer-leastWallPaper, v.outer/2)
		v.widened = append(v.widened, "the wall of the "+v.Made)
	}
	v.edge = max(v.edge, v.outer+2)
	v.foot = -v.outer - 0.7*max(v.edge-v.outer, 6)
	v.under, v.face = v.width, v.width
	if v.Shoulder != nil {
		v.measureShoulder()
	}
	if v.SideGap.Known {
		v.mate = v.width + v.SideGap.MM*sc
		if v.mate < v.face+leastGapPaper {
			v.mate = v.face + leastGapPaper
			v.widened = append(v.widened, "the gap to the mating part")
		}
	}
}

func (v *sectionView) measureShoulder() {
	sc, s := v.scale.of, v.Shoulder
	v.collar = v.outer + 4
	if s.OD.Known {
		v.collar = max(s.OD.MM/2*sc, v.outer+1.5)
	}
	v.edge = max(v.edge, v.outer+2)
	thick := leastCollarPaper + 1
	if s.Thickness.Known {
		thick = s.Thickness.MM * sc
		if thick < leastCollarPaper {
			thick = leastCollarPaper
			v.widened = append(v.widened, "the shoulder")
		}
	}
	v.under = v.width - s.Recess.MM*sc
	v.face = v.under + thick
}

// ear draws the ear, cut: above the bore to its nearest edge, below to a break.
func (v *sectionView) ear() {
	recess := func(way float64) []point { // from the left face along the bore to the right face
		points := []point{at(0, way*v.outer)}
		if v.Shoulder != nil && v.Shoulder.Recess.MM > 0 {
			return append(points, at(v.under, way*v.outer), at(v.under, way*v.collar), at(v.width, way*v.collar))
		}
		return append(points, at(v.width, way*v.outer))
	}
	top := append(recess(1), at(v.width, v.edge), at(0, v.edge))
	bottom := append(recess(-1), wavy(at(v.width, v.foot), at(0, v.foot))...)
	upper, lower := polyline(true, top...), polyline(true, bottom...)
	v.hatch(upper, 45, 3)
	v.hatch(lower, 45, 3)
	v.draw(outline, upper, polyline(false, append([]point{at(0, v.foot)}, append(recess(-1), at(v.width, v.foot))...)...))
	v.draw(narrow, wave(at(v.width, v.foot), at(0, v.foot)))
}

// sleeve draws the sleeve with its shoulder and screws, cut.
func (v *sectionView) sleeve() {
	for _, way := range []float64{1, -1} {
		points := []point{at(0, way*v.inner), at(0, way*v.outer), at(v.under, way*v.outer)}
		if v.Shoulder != nil && v.Shoulder.Thickness.Known {
			points = append(points, at(v.under, way*v.collar), at(v.face, way*v.collar), at(v.face, way*v.inner))
		} else {
			points = append(points, at(v.width, way*v.outer), at(v.width, way*v.inner))
		}
		body := polyline(true, points...)
		v.hatch(body, 135, 1.6)
		v.draw(outline, body)
		if v.Shoulder != nil && !v.Shoulder.Thickness.Known {
			v.draw(hidden, box(v.under, way*v.outer, v.face, way*v.collar))
		}
	}
	ends := v.width
	if v.Shoulder != nil && v.Shoulder.Thickness.Known {
		ends = v.face
	}
	v.segment(outline, at(0, v.inner), at(0, -v.inner))
	v.segment(outline, at(ends, v.inner), at(ends, -v.inner))
	if v.Screws != nil {
		v.screw()
	}
}

// screw draws the screw in the joint line at the top. Screws are not cut.
func (v *sectionView) screw() {
	if !v.Screws.Diameter.Known || !v.Screws.Depth.Known {
		return
	}
	r := max(v.Screws.Diameter.MM/2*v.scale.of, 0.8)
	end := v.width - min(v.Screws.Depth.MM*v.scale.of, v.width)
	shank := box(end, v.outer-r, v.width, v.outer+r)
	v.blank(shank)
	v.draw(outline, shank)
	v.draw(narrow, polyline(false, at(end, v.outer-0.8*r), at(v.width, v.outer-0.8*r)), polyline(false, at(end, v.outer+0.8*r), at(v.width, v.outer+0.8*r)))
	v.segment(centre, at(end-2, v.outer), at(v.width+3, v.outer))
}

// matingPart draws the part beside the ear, of which only the near face is known.
func (v *sectionView) matingPart() {
	if v.mate == 0 {
		return
	}
	far := v.mate + matePaper
	top := v.edge * 0.96
	for _, y := range [][2]float64{{v.inner, top}, {-v.inner, v.foot}} {
		side, end := wavy(at(far, y[0]), at(far, y[1])), wavy(at(far, y[1]), at(v.mate, y[1]))
		v.hatch(polyline(true, slices.Concat([]point{at(v.mate, y[0])}, side, end)...), 45, 4.5)
		v.draw(outline, polyline(false, at(far, y[0]), at(v.mate, y[0]), at(v.mate, y[1])))
		v.draw(narrow, polyline(false, side...), polyline(false, end...))
	}
	v.segment(outline, at(v.mate, v.inner), at(v.mate, -v.inner))
}

// diameters are the labels at the left.
func (v *sectionView) diameters() []label {
	across := func(name string, r float64, l Length) label {
		return label{lines: []string{name, "Ø " + l.text(v.Units)}, dimension: true, y1: -r, y2: r}
	}
	labels := []label{across("finished bore", v.inner, v.FinishBore), across("bore for the "+v.Made, v.outer, v.NewBore)}
	if v.WallLeft.Known {
		labels = append(labels, label{lines: []string{"wall left", v.WallLeft.text(v.Units)}, dimension: true, y1: v.outer, y2: v.edge})
	}
	return labels
}

// parts are the labels at the right, which say what is what.
func (v *sectionView) parts() []label {
	labels := []label{
		{lines: []string{"ear"}, target: at(v.width*0.6, (v.edge+max(v.outer, v.collar))/2), inside: true},
		{lines: v.wallLines(), target: at(v.width*0.5, -(v.outer+v.inner)/2), inside: true},
	}
	if s := v.Shoulder; s != nil {
		lines := []string{"shoulder", "not sized"}
		if s.OD.Known {
			lines = []string{"shoulder", "Ø " + s.OD.text(v.Units)}
		}
		if s.Recess.MM > 0 {
			lines = append(lines, "counterbore "+s.Recess.text(v.Units))
		}
		labels = append(labels, label{lines: lines, target: at((v.under+v.face)/2, v.collar)})
	}
	if s := v.Screws; s != nil && s.Diameter.Known {
		labels = append(labels, label{lines: []string{fmt.Sprintf("%d screws %s", s.Count, s.Size), s.Depth.text(v.Units) + " in the joint"}, target: at(v.width*0.96, v.outer)})
	}
	switch {
	case v.mate == 0:
	case v.PlayLeft.Known:
		labels = append(labels, label{lines: []string{"mating part; side play", "left in the joint " + v.PlayLeft.text(v.Units)}, target: at(v.mate, v.foot*0.8)})
	default:
		labels = append(labels, label{lines: []string{"mating part"}, target: at(v.mate+matePaper/2, v.foot*0.75), inside: true})
	}
	return labels
}

// lengths are the dimensions underneath, from right to left.
func (v *sectionView) lengths() []row {
	var list []row
	if v.mate > 0 {
		list = append(list, row{x1: v.width, x2: v.mate, from1: v.foot, from2: v.foot, lines: []string{"gap as found " + v.SideGap.text(v.Units)}})
	}
	if s := v.Shoulder; s != nil && s.Thickness.Known {
		list = append(list, row{x1: v.under, x2: v.face, from1: -v.collar, from2: -v.collar, lines: []string{"shoulder " + s.Thickness.text(v.Units)}})
	}
	return append(list, row{x1: 0, x2: v.width, from1: v.foot, from2: v.foot, lines: []string{"bore length", v.EarWidth.text(v.Units)}})
}

// wallLines name what is pressed in, with its wall if it was sized.
func (v *sectionView) wallLines() []string {
	if !v.Wall.Known {
		return []string{v.Made, "not sized"}
	}
	return []string{v.Made + ", wall", v.Wall.text(v.Units)}
}

func (v *sectionView) below() {
	notes := slices.Clone(v.Notes)
	if len(v.widened) > 0 {
		notes = append(notes, "Drawn wider than it is, so that it shows: "+listed(v.widened)+".")
	}
	if !v.SideGap.Known {
		notes = append(notes, "The gap to the mating part was not measured, so none is drawn.")
	}
	if v.Shoulder != nil && !v.Shoulder.Thickness.Known {
		notes = append(notes, "The shoulder is not sized: drawn dashed, not to scale.")
	}
	notes = append(notes, "The mating part and the ear below the bore are sketches.")
	v.sheet.foot(v.scale, v.Units, 0, notes...)
}

func (v *sectionView) words() string {
	words := "Section along the axis: ear " + v.EarWidth.text(v.Units) + " long with a bore of " + v.NewBore.text(v.Units) +
		", in it a " + v.Made + " of bore " + v.FinishBore.text(v.Units)
	if v.Wall.Known {
		words += ", wall " + v.Wall.text(v.Units)
	}
	words += "."
	if v.WallLeft.Known {
		words += " Wall left in the ear " + v.WallLeft.text(v.Units) + "."
	}
	if s := v.Shoulder; s != nil {
		if s.Thickness.Known {
			words += " Shoulder " + s.Thickness.text(v.Units) + " thick."
		} else {
			words += " Its shoulder is not sized."
		}
	}
	if v.SideGap.Known {
		words += " Gap beside the ear as found " + v.SideGap.text(v.Units) + "."
	}
	return words
}

// listed joins words as in speech.
func listed(words []string) string {
	out := ""
	for i, w := range words {
		switch {
		case i == 0:
		case i == len(words)-1:
			out += " and "
		default:
			out += ", "
		}
		out += w
	}
	return out
}
