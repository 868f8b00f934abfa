package draw

import (
	"fmt"
	"math"

	"github.com/tdewolff/canvas"

	"boremend/engine/quantity"
)

// Captured is a sleeve seen from its face, with screws round the joint line.
type Captured struct {
	Units      quantity.System
	NewBore    Length // bore of the ear, outside of the sleeve
	FinishBore Length
	Land       Length // flat land beyond the seat that there is
	LandNeeded Length
	Screws     Screws
	Needed     int // screws needed for the safety wanted; 0 when not known
	Load       Load
}

// The screws stay out of the arc that the pin presses, that far either side of the
// load, as the sheet of the screws reckons.
const loadedArcDeg = 55

const capturedRoom = 70.0

// DrawCaptured draws where the screws of a captured sleeve go.
func DrawCaptured(in Captured) (Drawing, error) {
	var c checks
	c.needs("the new bore", in.NewBore)
	c.needs("the finished bore", in.FinishBore)
	c.needs("the screw", in.Screws.Diameter)
	c.larger("the new bore", in.NewBore, "the finished bore", in.FinishBore)
	c.larger("the finished bore", in.FinishBore, "the screw", in.Screws.Diameter)
	if in.Screws.Count < 1 || in.Screws.Count > 48 {
		c.wrong = append(c.wrong, fmt.Errorf("%d screws cannot be drawn", in.Screws.Count))
	}
	if err := c.err(); err != nil {
		return Drawing{}, fmt.Errorf("the screws: %w", err)
	}
	s, err := newSheet()
	if err != nil {
		return Drawing{}, err
	}
	land := max(in.Land.MM, in.LandNeeded.MM, in.Screws.Diameter.MM)
	out := in.NewBore.MM/2 + 1.1*land
	sc := fitting(2*out, 2*out, capturedRoom, capturedRoom)
	v := &capturedView{sheet: s, Captured: in, scale: sc, seat: in.NewBore.MM / 2 * sc.of, bore: in.FinishBore.MM / 2 * sc.of, out: out * sc.of}
	v.face()
	v.column(v.out, 1, v.labels()...)
	v.below()
	return v.finish("screws", "The screws round the joint", v.words()), nil
}

// capturedView is a captured sleeve being drawn; radii on paper.
type capturedView struct {
	*sheet
	Captured
	scale           scale
	seat, bore, out float64
}

// positions are the clock angles of the screws: spread as far as the loaded arcs
// allow.
func (in Captured) positions() []float64 {
	n := in.Screws.Count
	around := func(middle, arc float64, n int) []float64 {
		apart := 0.0
		if n > 1 {
			apart = min(arc/float64(n-1), 360/float64(n))
		}
		var angles []float64
		for i := range n {
			angles = append(angles, math.Mod(middle+(float64(i)-float64(n-1)/2)*apart+360, 360))
		}
		return angles
	}
	switch in.Load {
	case TowardThin:
		return around(180, 360-2*loadedArcDeg, n)
	case TowardThick:
		return around(0, 360-2*loadedArcDeg, n)
	}
	each := 180.0 - 2*loadedArcDeg
	return append(around(90, each, n-n/2), around(270, each, n/2)...)
}

func (v *capturedView) face() {
	v.draw(narrow, v.edgeOfLand())
	v.draw(outline, circle(at(0, 0), v.seat), circle(at(0, 0), v.bore))
	past := v.out + 3
	v.segment(centre, at(-past, 0), at(past, 0))
	v.segment(centre, at(0, -past), at(0, past))
	r := max(v.Screws.Diameter.MM/2*v.scale.of, 0.8)
	for _, clock := range v.positions() {
		p := onCircle(v.seat, clock)
		v.blank(circle(p, r))
		v.draw(outline, circle(p, r))
		v.draw(narrow, circle(p, 0.6*r))
		v.segment(centre, onCircle(v.seat-r-2, clock), onCircle(v.seat+r+2, clock))
	}
	for _, middle := range v.loaded() {
		v.arc(v.bore*0.86, middle)
	}
}

// edgeOfLand is the broken line round what is drawn of the face.
func (v *capturedView) edgeOfLand() *canvas.Path {
	hole := profile(func(clock float64) float64 {
		a := clock * math.Pi / 180
		return v.out + 0.35*math.Sin(11*a) + 0.25*math.Sin(7*a+1)
	})
	return hole.path(at(0, 0), 1)
}

// loaded are the middles of the arcs that the pin presses.
func (in Captured) loaded() []float64 {
	switch in.Load {
	case TowardThin:
		return []float64{0}
	case TowardThick:
		return []float64{180}
	}
	return []float64{0, 180}
}

// arc draws a loaded arc with bars at its ends.
func (v *capturedView) arc(r, middle float64) {
	var points []point
	for a := -loadedArcDeg; a <= loadedArcDeg; a += 5 {
		points = append(points, onCircle(r, middle+float64(a)))
	}
	v.draw(heavy, polyline(false, points...))
	for _, end := range []float64{-loadedArcDeg, loadedArcDeg} {
		v.segment(narrow, onCircle(r-1.5, middle+end), onCircle(v.bore-0.5, middle+end))
	}
}

func (v *capturedView) labels() []label {
	land := []string{"flat land needed", v.LandNeeded.text(v.Units), "there is: " + v.Land.text(v.Units)}
	screws := []string{fmt.Sprintf("%d screws %s", v.Screws.Count, v.Screws.Size), v.Screws.Depth.text(v.Units) + " in the joint"}
	if v.Needed > 0 {
		screws = append(screws, fmt.Sprintf("needed: %d", v.Needed))
	}
	labels := []label{
		{lines: []string{"bore for the sleeve", "Ø " + v.NewBore.text(v.Units)}, target: onCircle(v.seat, 42)},
		{lines: []string{"finished bore", "Ø " + v.FinishBore.text(v.Units)}, target: onCircle(v.bore, 100)},
		{lines: screws, target: v.nearestScrew()},
		{lines: []string{"pressed by the pin:", "no screws here"}, target: onCircle(v.bore*0.86, v.loaded()[0]+30)},
	}
	if v.LandNeeded.Known {
		labels = append(labels, label{lines: land, target: onCircle((v.seat+v.out)/2, 165), inside: true})
	}
	return labels
}

// nearestScrew is the screw nearest to the labels, at its right edge.
func (v *capturedView) nearestScrew() point {
	best := onCircle(v.seat, v.positions()[0])
	for _, clock := range v.positions() {
		if p := onCircle(v.seat, clock); p.X > best.X {
			best = p
		}
	}
	return at(best.X+max(v.Screws.Diameter.MM/2*v.scale.of, 0.8), best.Y)
}

func (v *capturedView) below() {
	var notes []string
	if v.Needed > v.Screws.Count {
		notes = append(notes, fmt.Sprintf("NOT ENOUGH: %d screws are needed for the safety wanted, and %d are drawn.", v.Needed, v.Screws.Count))
	}
	if v.Load == LoadNotRecorded {
		notes = append(notes, "Where the load pushes was not recorded: drawn as if it came from both sides.")
	}
	v.foot(v.scale, v.Units, 0, append(notes,
		"Seen from the face, the thinnest wall at the top. The screws are spread over what the pin does not press; drill them with the sleeve in place, half in the sleeve and half in the ear.")...)
}

func (v *capturedView) words() string {
	return fmt.Sprintf("The sleeve seen from its face: %d screws %s on the circle of %s where sleeve and ear meet, clear of the arc that the pin presses.",
		v.Screws.Count, v.Screws.Size, v.NewBore.text(v.Units))
}
