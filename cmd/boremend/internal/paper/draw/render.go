package draw

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"image/png"

	"github.com/tdewolff/canvas"
	"github.com/tdewolff/canvas/renderers/pdf"
	"github.com/tdewolff/canvas/renderers/rasterizer"
	"github.com/tdewolff/canvas/renderers/svg"
)

// SVG renders the drawing as a file that stands alone, font and all, with its
// title and words for those who cannot see it.
func (d Drawing) SVG() ([]byte, error) {
	css, err := fontFaceOf(d.runes())
	if err != nil {
		return nil, err
	}
	return d.svg("<style>" + css + "</style>")
}

// InlineSVG renders the drawing as an element to be placed in an HTML page. It
// carries no font: the page names it once, in a style element with FontFace.
func (d Drawing) InlineSVG() ([]byte, error) { return d.svg("") }

// svg renders the drawing with more elements at its head.
func (d Drawing) svg(head string) ([]byte, error) {
	var out bytes.Buffer
	opts := svg.DefaultOptions
	opts.EmbedFonts = false
	r := svg.New(&out, d.Canvas.W, d.Canvas.H, &opts)
	d.Canvas.RenderTo(r)
	if err := r.Close(); err != nil {
		return nil, err
	}
	open, body, _ := bytes.Cut(out.Bytes(), []byte(">"))
	var whole bytes.Buffer
	whole.Write(open)
	fmt.Fprintf(&whole, ` role="img" aria-label="%s"><title>%s</title><desc>%s</desc>%s`,
		escaped(d.Title+". "+d.Words), escaped(d.Title), escaped(d.Words), head)
	whole.Write(body)
	return whole.Bytes(), nil
}

func escaped(text string) string {
	var out bytes.Buffer
	// Writing to a buffer cannot fail.
	_ = xml.EscapeText(&out, []byte(oneLine(text)))
	return out.String()
}

// The resolutions that PNG takes: below, no text can be read; above, a page
// would take more memory than any print shows.
const (
	leastDPI = 36
	mostDPI  = 1200
)

// PNG renders the drawing as a picture of that many dots per inch.
func (d Drawing) PNG(dpi float64) ([]byte, error) {
	if !(dpi >= leastDPI && dpi <= mostDPI) {
		return nil, fmt.Errorf("a picture has %d to %d dots per inch, not %g", leastDPI, mostDPI, dpi)
	}
	var out bytes.Buffer
	picture := rasterizer.Draw(d.Canvas, canvas.DPI(dpi), canvas.DefaultColorSpace)
	err := png.Encode(&out, picture)
	return out.Bytes(), err
}

// PDF renders the drawing as a page of its own size.
func (d Drawing) PDF() ([]byte, error) {
	var out bytes.Buffer
	r := pdf.New(&out, d.Canvas.W, d.Canvas.H, nil)
	r.SetInfo(d.Title, d.Words, "", "", "")
	d.Canvas.RenderTo(r)
	if err := r.Close(); err != nil {
		return nil, err
	}
	return undated(out.Bytes())
}
