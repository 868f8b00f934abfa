package paper

import (
	"bytes"
	"fmt"
	"time"

	"codeberg.org/go-pdf/fpdf"
)

const family = "paper"

// mostFootLines is how many lines one text at the foot of a page may take; the
// paper itself names everything whole.
const mostFootLines = 2

// PDF writes a document as pages of its sheet. The same document gives the same
// bytes.
func PDF(d Document) ([]byte, error) {
	t, err := newTypesetter(d)
	if err != nil {
		return nil, err
	}
	return printed(d, t, paginate(t.document(d), d.Page.HeightMM-marginTop-marginFoot))
}

// document sets a whole document under its title.
func (t typesetter) document(d Document) []strip {
	strips := t.lines(d.Title, true, t.sizeMM*1.8, 0, t.width)
	for i := range strips {
		strips[i].keep = true
	}
	strips = append(strips, gap(2))
	for _, b := range d.Blocks {
		strips = append(strips, t.block(b)...)
	}
	return strips
}

// printer puts marks on the pages of a PDF.
type printer struct {
	pdf    *fpdf.Fpdf
	faces  typeface
	images int
}

func printed(d Document, t typesetter, pages [][]mark) ([]byte, error) {
	pdf := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: d.Page.WidthMM, Ht: d.Page.HeightMM}})
	date, err := time.Parse(time.DateOnly, d.Date)
	if err != nil {
		return nil, fmt.Errorf("date of the paper: %w", err)
	}
	pdf.SetCreationDate(date)
	pdf.SetModificationDate(date)
	pdf.SetCatalogSort(true)
	pdf.SetProducer("boremend", false)
	pdf.SetKeywords(d.Mark, false)
	pdf.SetTitle(d.Subject+": "+d.Title, true)
	pdf.SetLang("en")
	pdf.SetAutoPageBreak(false, 0)
	pdf.AddUTF8FontFromBytes(family, "", t.regular.file)
	pdf.AddUTF8FontFromBytes(family, "B", t.bold.file)
	p := &printer{pdf: pdf, faces: t.typeface}
	for i, marks := range pages {
		pdf.AddPage()
		p.frame(d, t, i+1, len(pages))
		for _, m := range marks {
			p.mark(m.moved(marginSide, marginTop))
		}
	}
	var out bytes.Buffer
	if err := pdf.Output(&out); err != nil {
		return nil, fmt.Errorf("paper as PDF: %w", err)
	}
	return out.Bytes(), nil
}

// frame prints what stands at the head and the foot of every page.
func (p *printer) frame(d Document, t typesetter, number, of int) {
	size := 8 * pointMM
	page := fmt.Sprintf("page %d of %d", number, of)
	room := t.width - t.regular.width(page, size) - 4
	p.text(marginSide, 12, t.bold.wrap(d.Subject, size, room)[0], true, size)
	p.text(marginSide+t.width-t.regular.width(page, size), 12, page, false, size)
	p.stroke(marginSide, 14, stroke{t.width, 0, thinLine})
	y := d.Page.HeightMM - marginFoot + 6
	p.stroke(marginSide, y-4, stroke{t.width, 0, thinLine})
	small := 7 * pointMM
	for _, foot := range d.Foot {
		lines := t.regular.wrap(foot, small, t.width)
		for _, line := range lines[:min(len(lines), mostFootLines)] {
			p.text(marginSide, y, line, false, small)
			y += small * 1.25
		}
	}
}

func (p *printer) mark(m mark) {
	switch {
	case m.line != nil:
		p.stroke(m.x, m.y, *m.line)
	case m.box != nil:
		p.box(m.x, m.y, *m.box)
	case m.drawing != nil:
		p.drawing(m)
	case m.photo != nil:
		p.photo(m)
	default:
		p.text(m.x, m.y, m.text, m.bold, m.sizeMM)
	}
}

func (p *printer) text(x, y float64, text string, bold bool, sizeMM float64) {
	style := ""
	if bold {
		style = "B"
	}
	p.pdf.SetFont(family, style, sizeMM/pointMM)
	p.pdf.Text(x, y, inOrder(text))
}

func (p *printer) stroke(x, y float64, s stroke) {
	p.pdf.SetLineWidth(s.thick)
	p.pdf.Line(x, y, x+s.dx, y+s.dy)
}

func (p *printer) box(x, y float64, b box) {
	if b.grey > 0 {
		p.pdf.SetFillColor(0, 0, 0)
		p.pdf.Rect(x, y, b.width, b.height, "F")
		return
	}
	p.pdf.SetLineWidth(b.thick)
	p.pdf.Rect(x, y, b.width, b.height, "D")
}

// photo prints a photo, which is registered once under its own number.
func (p *printer) photo(m mark) {
	p.images++
	name := fmt.Sprintf("photo-%d", p.images)
	options := fpdf.ImageOptions{ImageType: "JPG"}
	p.pdf.RegisterImageOptionsReader(name, options, bytes.NewReader(m.photo.JPEG))
	p.pdf.ImageOptions(name, m.x, m.y, m.width, 0, false, options, 0, "")
}
