package paper

import (
	"fmt"

	"boremend/cmd/boremend/internal/paper/draw"
)

// picturesDPI is fine enough for the thinnest line of a drawing.
const picturesDPI = 200

// Picture is a drawing of a paper as a file by itself.
type Picture struct {
	File string
	Text []byte
}

// Pictures renders the drawings of a document one by one, each as SVG, as PDF and
// as PNG. Their files are numbered as they stand in the paper.
func Pictures(d Document) ([]Picture, error) {
	var all []Picture
	number := 0
	for _, b := range d.Blocks {
		f, ok := b.(Figure)
		if !ok {
			continue
		}
		number++
		for _, as := range []struct {
			name   string
			render func(draw.Drawing) ([]byte, error)
		}{{"svg", draw.Drawing.SVG}, {"pdf", draw.Drawing.PDF}, {"png", picture}} {
			text, err := as.render(f.Drawing)
			if err != nil {
				return nil, err
			}
			all = append(all, Picture{fmt.Sprintf("%s-%02d-%s.%s", d.For, number, f.Drawing.Name, as.name), text})
		}
	}
	return all, nil
}

func picture(d draw.Drawing) ([]byte, error) { return d.PNG(picturesDPI) }
