package draw

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"github.com/tdewolff/canvas"

	"boremend/engine/quantity"
)

// Wear is what was read round a bore.
type Wear struct {
	Units      quantity.System
	FinishBore Length // size as built
	Depths     []WearAtDepth
	Diameters  bool // the readings are halves of diameters: which side wore how deep, they cannot tell
}

// WearAtDepth is what was read at one depth.
type WearAtDepth struct {
	DepthMM  float64
	Readings []Radius
}

const (
	wearRound  = 20.0 // radius of the bore as built, on paper
	wearDeep   = 12.0 // of the deepest wear, on paper
	clockRound = 36.0 // of the clock face
	leastHole  = 6.0  // to which a bore tighter than new may shrink
)

// depthStyles tell the depths apart, in black and white: the kind of line, and
// what marks a reading.
var depthStyles = []struct {
	line line
	mark string
}{
	{outline, "dot"},
	{line{width: 0.35, color: canvas.Black, dashes: []float64{9, 4}}, "ring"},
	{line{width: 0.35, color: canvas.Black, dashes: []float64{2, 3}}, "square"},
	{line{width: 0.35, color: canvas.Black, dashes: []float64{14, 3, 2, 3}}, "cross"},
}

// times are the factors by which wear is exaggerated.
var times = []float64{1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000}

// DrawWear draws the wear round a bore on a clock face, exaggerated so that it
// shows.
func DrawWear(in Wear) (Drawing, error) {
	if err := in.check(); err != nil {
		return Drawing{}, fmt.Errorf("the wear: %w", err)
	}
	s, err := newSheet()
	if err != nil {
		return Drawing{}, err
	}
	v := &wearView{sheet: s, Wear: in, round: in.FinishBore.MM / 2}
	v.measure()
	v.clock()
	v.rings()
	for i, d := range in.shown() {
		v.profile(i, d)
	}
	v.legend()
	return v.finish("wear", "Wear round the bore", v.words()), nil
}

func (in Wear) check() error {
	var c checks
	c.needs("the size as built", in.FinishBore)
	n := 0
	for _, d := range in.Depths {
		n += len(d.Readings)
		c.readings(d.Readings)
	}
	if n < 3 {
		c.wrong = append(c.wrong, fmt.Errorf("%d readings do not go round a bore", n))
	}
	return c.err()
}

// shown are the depths drawn one by one: all, or where there are too many to tell
// apart, the one with the deepest wear, the first and the last.
func (in Wear) shown() []WearAtDepth {
	if len(in.Depths) <= len(depthStyles) {
		return in.Depths
	}
	worst := 0
	for i, d := range in.Depths {
		if span(d)[1] > span(in.Depths[worst])[1] {
			worst = i
		}
	}
	few := []int{worst, 0, len(in.Depths) - 1}
	slices.Sort(few)
	var out []WearAtDepth
	for _, i := range slices.Compact(few) {
		out = append(out, in.Depths[i])
	}
	return out
}

// span is the smallest and the largest radius at a depth.
func span(d WearAtDepth) [2]float64 {
	s := [2]float64{math.Inf(1), math.Inf(-1)}
	for _, r := range d.Readings {
		s[0], s[1] = min(s[0], r.MM), max(s[1], r.MM)
	}
	return s
}

// wearView is a plot of wear in the making.
type wearView struct {
	*sheet
	Wear
	round float64 // radius as built, mm of the part
	times float64 // how many times the wear is exaggerated
	per   float64 // mm on paper for a mm of wear
	step  float64 // from ring to ring, mm of wear
}

// measure picks the largest exaggeration that keeps the wear inside the clock face.
func (v *wearView) measure() {
	deep, tight := 0.0, 0.0
	for _, d := range v.Depths {
		s := span(d)
		deep, tight = max(deep, s[1]-v.round), max(tight, v.round-s[0])
	}
	own := wearRound / v.round
	v.times = times[0]
	for _, t := range times {
		if deep*own*t <= wearDeep && tight*own*t <= wearRound-leastHole {
			v.times = t
		}
	}
	v.per = own * v.times
	unit := 1.0
	if v.Units == quantity.Inch {
		unit = 25.4
	}
	for _, l := range []float64{0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200} {
		if v.step = l * unit; v.step*v.per >= 3 {
			break
		}
	}
}

// onPaper is the radius of a reading on paper. Wear beyond any clock face stays at
// its rim.
func (v *wearView) onPaper(mm float64) float64 {
	return min(max(wearRound+(mm-v.round)*v.per, 1), clockRound-1)
}

// clock draws the hours round the plot.
func (v *wearView) clock() {
	for hour := 1; hour <= 12; hour++ {
		clock := float64(hour) * 30
		long := 1.5
		if hour%3 == 0 {
			long = 3
		}
		v.segment(narrow, onCircle(clockRound-long, clock), onCircle(clockRound, clock))
		p := onCircle(clockRound+3.4, clock)
		v.text(p.X, p.Y-small/2, 0, small, strconv.Itoa(hour))
	}
	v.draw(narrow, circle(at(0, 0), clockRound))
	v.segment(centre, at(-4, 0), at(4, 0))
	v.segment(centre, at(0, -4), at(0, 4))
}

// rings draw how deep wear is.
func (v *wearView) rings() {
	for n := 1; wearRound+float64(n)*v.step*v.per < clockRound-3; n++ {
		v.draw(grid, circle(at(0, 0), wearRound+float64(n)*v.step*v.per))
	}
	v.draw(original, circle(at(0, 0), wearRound))
}

// profile draws the hole at one depth through its readings.
func (v *wearView) profile(i int, d WearAtDepth) {
	style := depthStyles[i]
	if len(d.Readings) >= 3 {
		hole := read(d.Readings)
		v.draw(style.line, profile(func(clock float64) float64 { return v.onPaper(hole(clock)) }).path(at(0, 0), 1))
	}
	for _, r := range d.Readings {
		v.mark(style.mark, onCircle(v.onPaper(r.MM), r.ClockDeg))
	}
}

// mark draws where something was read.
func (v *wearView) mark(kind string, p point) {
	const r = 0.9
	switch kind {
	case "dot":
		v.fill(narrow, circle(p, r))
	case "ring":
		v.blank(circle(p, r))
		v.draw(narrow, circle(p, r))
	case "square":
		b := box(p.X-r, p.Y-r, p.X+r, p.Y+r)
		v.blank(b)
		v.draw(narrow, b)
	default:
		v.segment(narrow, at(p.X-r, p.Y-r), at(p.X+r, p.Y+r))
		v.segment(narrow, at(p.X-r, p.Y+r), at(p.X+r, p.Y-r))
	}
}

// legend says under the plot what the lines are.
func (v *wearView) legend() {
	b := v.bounds()
	x, y := b.X0-10, b.Y0-4
	const sample = 14.0
	entry := func(l line, kind, text string) {
		middle := y - crown*small + small/2
		v.segment(l, at(x, middle), at(x+sample, middle))
		if kind != "" {
			v.mark(kind, at(x+sample/2, middle))
		}
		v.text(x+sample+textGap, y-crown*small, -1, small, text)
		y -= blockHeight([]string{text}) + 0.6
	}
	entry(original, "", "as built, Ø "+v.FinishBore.text(v.Units))
	for i, d := range v.shown() {
		s := span(d)
		name, by := "radius", 1.0
		if v.Diameters {
			name, by = "Ø", 2
		}
		entry(depthStyles[i].line, depthStyles[i].mark, fmt.Sprintf("at %s deep: %s %s to %s", shown(d.DepthMM, v.Units), name, shown(s[0]*by, v.Units), shown(s[1]*by, v.Units)))
	}
	entry(grid, "", "rings of wear, "+shown(v.step, v.Units)+" apart")
	notes := []string{fmt.Sprintf("Wear exaggerated %g times. 12 o'clock at the top, clockwise as read.", v.times)}
	if v.times == 1 {
		notes = []string{"Wear to scale. 12 o'clock at the top, clockwise as read."}
	}
	if v.Diameters {
		notes = append(notes, "Diameters were read: half of each is drawn on either side. They cannot tell which side wore.")
	}
	if len(v.shown()) < len(v.Depths) {
		notes = append(notes, fmt.Sprintf("Read at %d depths; drawn are the first, the last and the most worn.", len(v.Depths)))
	}
	v.notes(x, y-0.6, b.X1-b.X0+20, notes...)
}

func (v *wearView) words() string {
	words := "Wear round the bore on a clock face, as built " + v.FinishBore.text(v.Units) + "."
	for _, d := range v.Depths {
		s := span(d)
		worst := d.Readings[0]
		for _, r := range d.Readings {
			if r.MM > worst.MM {
				worst = r
			}
		}
		words += fmt.Sprintf(" At %s deep the radius goes from %s to %s, the largest at %.0f degrees clockwise from 12.", shown(d.DepthMM, v.Units), shown(s[0], v.Units), shown(s[1], v.Units), worst.ClockDeg)
	}
	return words
}
