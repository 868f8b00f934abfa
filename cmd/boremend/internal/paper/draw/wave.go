package draw

import (
	"math"

	"github.com/tdewolff/canvas"
)

// wave is the freehand line at which a part is broken off, between two points.
func wave(a, b point) *canvas.Path { return polyline(false, wavy(a, b)...) }

// wavy are the points of a wave. It is a sum of two sines, so it comes out the same
// each time.
func wavy(a, b point) []point {
	d := math.Hypot(b.X-a.X, b.Y-a.Y)
	n := max(8, int(d))
	ux, uy := (b.X-a.X)/d, (b.Y-a.Y)/d
	var points []point
	for i := range n + 1 {
		t := float64(i) / float64(n)
		along := t * d
		off := 0.7 * math.Sin(math.Pi*t) * (math.Sin(along/2.1) + 0.6*math.Sin(along/1.3+1))
		points = append(points, at(a.X+ux*along-uy*off, a.Y+uy*along+ux*off))
	}
	return points
}
