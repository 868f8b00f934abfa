package photo

import (
	"image"
	"image/color"

	"golang.org/x/image/draw"
)

// shrink scales a picture down so that its long side is no longer than print
// needs, on white where it is see-through. A small one keeps its size.
func shrink(p image.Image) *image.RGBA {
	b := p.Bounds()
	w, h := b.Dx(), b.Dy()
	if long := max(w, h); long > longSide {
		w, h = max(1, w*longSide/long), max(1, h*longSide/long)
	}
	out := image.NewRGBA(image.Rect(0, 0, w, h))
	draw.Draw(out, out.Bounds(), image.NewUniform(color.White), image.Point{}, draw.Src)
	draw.CatmullRom.Scale(out, out.Bounds(), p, b, draw.Over, nil)
	return out
}

// turn sets a picture upright. The orientation says where its first row and first
// column belong, as TIFF 6.0 and Exif number them: 1 top and left, 2 top and right,
// 3 bottom and right, 4 bottom and left, 5 left and top, 6 right and top, 7 right
// and bottom, 8 left and bottom.
func turn(p *image.RGBA, orientation int) *image.RGBA {
	w, h := p.Bounds().Dx(), p.Bounds().Dy()
	// from says which dot of the picture lies at x, y of the upright one.
	from := map[int]func(x, y int) (int, int){
		2: func(x, y int) (int, int) { return w - 1 - x, y },
		3: func(x, y int) (int, int) { return w - 1 - x, h - 1 - y },
		4: func(x, y int) (int, int) { return x, h - 1 - y },
		5: func(x, y int) (int, int) { return y, x },
		6: func(x, y int) (int, int) { return y, h - 1 - x },
		7: func(x, y int) (int, int) { return w - 1 - y, h - 1 - x },
		8: func(x, y int) (int, int) { return w - 1 - y, x },
	}[orientation]
	if from == nil {
		return p
	}
	out := image.NewRGBA(image.Rect(0, 0, w, h))
	if orientation >= 5 {
		out = image.NewRGBA(image.Rect(0, 0, h, w))
	}
	for y := range out.Bounds().Dy() {
		for x := range out.Bounds().Dx() {
			fx, fy := from(x, y)
			out.SetRGBA(x, y, p.RGBAAt(fx, fy))
		}
	}
	return out
}
