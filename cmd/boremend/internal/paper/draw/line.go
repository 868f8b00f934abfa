package draw

import (
	"image/color"

	"github.com/tdewolff/canvas"
)

// line is a kind of line, in the spirit of ISO 128-2: what is seen is wide, what
// explains is narrow. dashes are in line widths.
type line struct {
	width  float64 // mm
	dashes []float64
	color  color.RGBA
}

var (
	outline  = line{width: 0.5, color: canvas.Black}                                        // visible edges
	narrow   = line{width: 0.25, color: canvas.Black}                                       // dimensions, leaders, short breaks
	hatching = line{width: 0.18, color: canvas.Black}                                       // cut faces
	hidden   = line{width: 0.25, color: canvas.Black, dashes: []float64{8, 3}}              // hidden edges
	centre   = line{width: 0.25, color: canvas.Black, dashes: []float64{24, 3, 1, 3}}       // axes and centre lines
	original = line{width: 0.25, color: canvas.Black, dashes: []float64{20, 3, 1, 3, 1, 3}} // shape before or after the work
	grid     = line{width: 0.18, color: canvas.Gray}                                        // scales of plots
	heavy    = line{width: 0.8, color: canvas.Black}                                        // the load
)

type point = canvas.Point

func at(x, y float64) point { return point{X: x, Y: y} }

// polyline is a path through points, closed or open.
func polyline(closed bool, points ...point) *canvas.Path {
	p := &canvas.Path{}
	for i, q := range points {
		if i == 0 {
			p.MoveTo(q.X, q.Y)
		} else {
			p.LineTo(q.X, q.Y)
		}
	}
	if closed {
		p.Close()
	}
	return p
}

func circle(c point, r float64) *canvas.Path { return canvas.Circle(r).Translate(c.X, c.Y) }

func box(x1, y1, x2, y2 float64) *canvas.Path {
	return polyline(true, at(x1, y1), at(x2, y1), at(x2, y2), at(x1, y2))
}
