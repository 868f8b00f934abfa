package paper

// figure sets a drawing to its own size, or as large as the page allows, with its
// title above.
func (t typesetter) figure(f Figure) []strip {
	c := f.Drawing.Canvas
	if c == nil || c.W <= 0 || c.H <= 0 {
		return append([]strip{gap(2)}, paragraph(t.lines(f.Drawing.Title+": "+f.Drawing.Words, false, t.sizeMM, 0, t.width))...)
	}
	scale := min(1, t.width/c.W, figureHeight/c.H)
	title := t.lines(f.Drawing.Title, true, t.sizeMM, 0, t.width)
	for i := range title {
		title[i].keep = true
	}
	picture := strip{height: c.H*scale + 1.5, marks: []mark{{x: (t.width - c.W*scale) / 2, y: 1, drawing: c, scale: scale}}}
	return append(append([]strip{gap(2.5)}, title...), picture, gap(1.5))
}

// photo sets a photo, at most two thirds of the page wide.
func (t typesetter) photo(p Photo) []strip {
	if p.WidthPx <= 0 || p.HeightPx <= 0 {
		return nil
	}
	width := t.width * 0.66
	height := width * float64(p.HeightPx) / float64(p.WidthPx)
	if most := figureHeight * 0.6; height > most {
		width, height = width*most/height, most
	}
	picture := strip{height: height + 1.5, keep: true, marks: []mark{{photo: &p, width: width}}}
	return append([]strip{gap(2.5), picture}, whole(t.lines(p.Caption, false, t.sizeMM*0.9, 0, t.width))...)
}
