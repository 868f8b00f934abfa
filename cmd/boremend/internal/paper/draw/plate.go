package draw

import (
	"fmt"

	"boremend/engine/quantity"
)

// Plate is a plate bolted to the face of an ear to carry the pin with it. The
// columns of bolts lie along the line from the pin, the rows across it.
type Plate struct {
	Units         quantity.System
	Bore          Length
	Thickness     Length
	Plates        int
	Columns, Rows int
	ColumnPitch   Length
	RowPitch      Length
	Eccentricity  Length // from the pin to the middle of the bolts
	Edge          Length // from a hole to the nearest edge
	Bolt          Length // diameter
	BoltSize      string
	Grade         string
	Fitted        bool // reamed in; else in clearance holes
}

const (
	plateRoomWide = 58.0
	plateRoomHigh = 92.0
)

// DrawPlate draws the pattern of the bolts of a bolted-on plate, the pin at the
// top.
func DrawPlate(in Plate) (Drawing, error) {
	var c checks
	for _, l := range []struct {
		name string
		Length
	}{{"the bore", in.Bore}, {"the pitch of the columns", in.ColumnPitch}, {"the pitch of the rows", in.RowPitch},
		{"the way from the pin to the bolts", in.Eccentricity}, {"the edge distance of the bolts", in.Edge}, {"the bolt", in.Bolt}} {
		c.needs(l.name, l.Length)
	}
	if in.Columns < 1 || in.Columns > 20 || in.Rows < 1 || in.Rows > 20 {
		c.wrong = append(c.wrong, fmt.Errorf("%d by %d bolts cannot be drawn", in.Columns, in.Rows))
	}
	c.larger("the way from the pin to the bolts", in.Eccentricity, "half the columns of bolts", MM(in.ColumnPitch.MM*float64(in.Columns-1)/2))
	if err := c.err(); err != nil {
		return Drawing{}, fmt.Errorf("the plate: %w", err)
	}
	s, err := newSheet()
	if err != nil {
		return Drawing{}, err
	}
	v := &plateView{sheet: s, Plate: in}
	v.measure()
	v.face()
	v.column(-v.half, -1, v.lengths()...)
	right := v.column(v.half, 1, v.names()...)
	v.rows(min(v.low, right.Y0)-4, v.widths()...)
	v.below()
	return v.finish("plate", "The bolts of the plate", v.words()), nil
}

// plateView is a plate being drawn: the pin at the origin, the bolts below it.
type plateView struct {
	*sheet
	Plate
	scale     scale
	half, low float64 // half the width, and the lower edge, on paper
	top       float64
}

func (v *plateView) measure() {
	across := float64(v.Rows-1)/2*v.RowPitch.MM + v.Edge.MM
	half := max(across, v.Bore.MM/2*1.5)
	low := v.Eccentricity.MM + float64(v.Columns-1)/2*v.ColumnPitch.MM + v.Edge.MM
	v.scale = fitting(2*half, low+half, plateRoomWide, plateRoomHigh)
	v.half, v.low, v.top = half*v.scale.of, -low*v.scale.of, half*v.scale.of
}

// face draws the plate: square below the pin, round above it.
func (v *plateView) face() {
	p := polyline(false, at(-v.half, 0), at(-v.half, v.low), at(v.half, v.low), at(v.half, 0))
	p.ArcTo(v.half, v.half, 0, false, true, -v.half, 0)
	p.Close()
	v.draw(outline, p, circle(at(0, 0), v.Bore.MM/2*v.scale.of))
	v.segment(centre, at(-v.half-3, 0), at(v.half+3, 0))
	v.segment(centre, at(0, v.low-3), at(0, v.top+3))
	r := max(v.Bolt.MM/2*v.scale.of, 0.8)
	for i := range v.Columns {
		for j := range v.Rows {
			b := v.bolt(i, j)
			v.draw(outline, circle(b, r))
			v.segment(centre, at(b.X-r-2, b.Y), at(b.X+r+2, b.Y))
			v.segment(centre, at(b.X, b.Y-r-2), at(b.X, b.Y+r+2))
		}
	}
}

// bolt is where a bolt sits: columns from the pin downward, rows from left to
// right.
func (v *plateView) bolt(column, row int) point {
	sc := v.scale.of
	return at((float64(row)-float64(v.Rows-1)/2)*v.RowPitch.MM*sc,
		-(v.Eccentricity.MM+(float64(column)-float64(v.Columns-1)/2)*v.ColumnPitch.MM)*sc)
}

// lengths are the dimensions along the line from the pin.
func (v *plateView) lengths() []label {
	down := func(name string, l Length, y1, y2, from float64) label {
		return label{lines: []string{name, l.text(v.Units)}, dimension: true, y1: y1, y2: y2, from1: from, from2: from}
	}
	first, last := v.bolt(0, 0), v.bolt(v.Columns-1, 0)
	side := first.X - max(v.Bolt.MM/2*v.scale.of, 0.8)
	list := []label{down("edge", v.Edge, v.low, last.Y, -v.half)}
	if v.Columns > 1 {
		list = append(list, down("bolt to bolt", v.ColumnPitch, v.bolt(1, 0).Y, first.Y, side))
	}
	return append(list, down("pin to middle of bolts", v.Eccentricity, -v.Eccentricity.MM*v.scale.of, 0, -v.half))
}

// names say what is what.
func (v *plateView) names() []label {
	far := v.bolt(0, v.Rows-1)
	way := "in clearance holes"
	if v.Fitted {
		way = "reamed in"
	}
	plates := "plate"
	if v.Plates > 1 {
		plates = fmt.Sprintf("%d plates, one a side", v.Plates)
	}
	return []label{
		{lines: []string{"bore", "Ø " + v.Bore.text(v.Units)}, target: onCircle(v.Bore.MM/2*v.scale.of, 60)},
		{lines: []string{fmt.Sprintf("%d bolts %s", v.Columns*v.Rows, v.BoltSize), "grade " + v.Grade, way}, target: at(far.X+max(v.Bolt.MM/2*v.scale.of, 0.8), far.Y)},
		{lines: []string{plates, "thick " + v.Thickness.text(v.Units)}, target: at(v.half*0.5, v.low*0.92), inside: true},
	}
}

func (v *plateView) widths() []row {
	if v.Rows < 2 {
		return nil
	}
	a, b := v.bolt(v.Columns-1, v.Rows-2), v.bolt(v.Columns-1, v.Rows-1)
	r := max(v.Bolt.MM/2*v.scale.of, 0.8)
	return []row{{x1: a.X, x2: b.X, from1: a.Y - r, from2: b.Y - r, lines: []string{"bolt to bolt", v.RowPitch.text(v.Units)}}}
}

func (v *plateView) below() {
	v.foot(v.scale, v.Units, 0,
		"Seen from the face, the pin at the top. Bore plate and ear together, bolted up. The outline round the pin is a sketch; edges are not nearer to the holes than shown.")
}

func (v *plateView) words() string {
	return fmt.Sprintf("The plate seen from its face: bore %s, %d bolts %s, %d by %d, their middle %s from the pin, %s by %s apart, %s from the edges.",
		v.Bore.text(v.Units), v.Columns*v.Rows, v.BoltSize, v.Columns, v.Rows, v.Eccentricity.text(v.Units), v.ColumnPitch.text(v.Units), v.RowPitch.text(v.Units), v.Edge.text(v.Units))
}
