package paper

import (
	"image"
	"image/color"
	"math"

	"github.com/tdewolff/canvas"
)

// drawing prints a drawing as vectors.
func (p *printer) drawing(m mark) {
	height := m.drawing.H * m.scale
	view := canvas.Identity.Translate(m.x, m.y+height).Scale(m.scale, -m.scale)
	m.drawing.RenderViewTo(&pen{p, m.drawing.W, m.drawing.H}, view)
}

// pen draws for a canvas on a page, whose y runs downwards.
type pen struct {
	*printer
	width, height float64
}

// Size is that of the drawing.
func (p *pen) Size() (width, height float64) { return p.width, p.height }

// RenderPath draws a line or fills an area.
func (p *pen) RenderPath(path *canvas.Path, style canvas.Style, m canvas.Matrix) {
	if style.HasFill() {
		p.color(style.Fill, p.pdf.SetFillColor)
		p.trace(path.Copy().Transform(m))
		p.pdf.DrawPath(fillStyle(style.FillRule))
	}
	if style.HasStroke() {
		scale := math.Sqrt(math.Abs(m.Det()))
		p.color(style.Stroke, p.pdf.SetDrawColor)
		p.pdf.SetLineWidth(style.StrokeWidth * scale)
		p.pdf.SetLineCapStyle(capStyle(style.StrokeCapper))
		dashes := make([]float64, len(style.Dashes))
		for i, d := range style.Dashes {
			dashes[i] = d * style.StrokeWidth * scale // the canvas counts dashes in line widths
		}
		p.pdf.SetDashPattern(dashes, style.DashOffset*style.StrokeWidth*scale)
		p.trace(path.Copy().Transform(m))
		p.pdf.DrawPath("D")
		p.pdf.SetDashPattern(nil, 0)
		p.pdf.SetLineCapStyle("butt")
		p.pdf.SetDrawColor(0, 0, 0)
	}
}

// RenderText sets the text of a drawing in the type of the paper, which is the
// same, so that it can be found and copied. Text that is turned is drawn as
// outlines.
func (p *pen) RenderText(text *canvas.Text, m canvas.Matrix) {
	if m[0][1] != 0 || m[1][0] != 0 {
		text.RenderAsPath(p, m, 0)
		return
	}
	text.WalkSpans(func(x, y float64, span canvas.TextSpan) {
		at := m.Dot(canvas.Point{X: x, Y: y})
		p.text(at.X, at.Y, p.faces.regular.printable(span.Text), false, span.Face.Size*math.Abs(m[0][0]))
	})
}

// RenderImage is for rasters, which drawings have none of.
func (p *pen) RenderImage(image.Image, canvas.Matrix) {
	p.pdf.SetErrorf("a drawing of the papers holds a raster image")
}

func (p *pen) color(paint canvas.Paint, set func(r, g, b int)) {
	c := color.NRGBAModel.Convert(paint.Color).(color.NRGBA)
	set(int(c.R), int(c.G), int(c.B))
}

func fillStyle(rule canvas.FillRule) string {
	if rule == canvas.EvenOdd {
		return "F*"
	}
	return "F"
}

func capStyle(c canvas.Capper) string {
	switch c.(type) {
	case canvas.RoundCapper:
		return "round"
	case canvas.SquareCapper:
		return "square"
	}
	return "butt"
}

// trace follows a path, its arcs as curves.
func (p *pen) trace(path *canvas.Path) {
	for s := path.ReplaceArcs().Scanner(); s.Scan(); {
		end := s.End()
		switch s.Cmd() {
		case canvas.MoveToCmd:
			p.pdf.MoveTo(end.X, end.Y)
		case canvas.LineToCmd:
			p.pdf.LineTo(end.X, end.Y)
		case canvas.QuadToCmd:
			a, b := s.Start().Interpolate(s.CP1(), 2.0/3), end.Interpolate(s.CP1(), 2.0/3)
			p.pdf.CurveBezierCubicTo(a.X, a.Y, b.X, b.Y, end.X, end.Y)
		case canvas.CubeToCmd:
			p.pdf.CurveBezierCubicTo(s.CP1().X, s.CP1().Y, s.CP2().X, s.CP2().Y, end.X, end.Y)
		case canvas.CloseCmd:
			p.pdf.LineTo(end.X, end.Y)
			p.pdf.ClosePath()
		}
	}
}
