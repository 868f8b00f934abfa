package draw

import (
	"errors"
	"fmt"
	"math"
)

// Share is how often a method comes out on top, from 0 to 1.
type Share struct {
	Title string
	Share float64
	Error float64 // what it may be off by because it was sampled; 0 if it was not
}

const (
	barRoom   = 92.0 // of a bar that stands for everything
	barHigh   = 4.0
	plotWidth = 122.0
)

// Shares draws how the outcomes share out, one bar for each method. how says how
// the shares were found, and stands under the bars.
func Shares(shares []Share, how string) (Drawing, error) {
	if len(shares) == 0 {
		return Drawing{}, errors.New("the shares: there are none")
	}
	for _, e := range shares {
		if !(e.Share >= 0 && e.Share <= 1) || !(e.Error >= 0 && e.Error <= 1) {
			return Drawing{}, fmt.Errorf("the shares: %s ± %s of %q is no share", plainNumber(e.Share), plainNumber(e.Error), e.Title)
		}
	}
	s, err := newSheet()
	if err != nil {
		return Drawing{}, err
	}
	words, y := "How often each method comes out on top:", 0.0
	for i, e := range shares {
		lines := s.heading(e.Title, plotWidth)
		s.block(0, y, -1, lines)
		y -= blockHeight(lines) + 0.8
		s.shareBar(y, e)
		y -= barHigh + 3
		if i > 0 {
			words += ";"
		}
		words += " " + oneLine(e.Title) + " " + percent(e)
	}
	s.percentAxis(y)
	b := s.bounds()
	s.notes(0, b.Y0-1.5, plotWidth, how)
	return s.finish("shares", "Outcomes within the give-or-takes", words+"."), nil
}

// percent writes a share as text, in the same figures as the program prints.
func percent(e Share) string {
	text := fmt.Sprintf("%.1f %%", 100*e.Share)
	switch {
	case e.Error == 0:
	case e.Error < 0.001:
		text += fmt.Sprintf(" ± %.2f", 100*e.Error)
	default:
		text += fmt.Sprintf(" ± %.1f", 100*e.Error)
	}
	return text
}

// shareBar draws one bar, its top at y. What it may be off by stands as a line
// with ends.
func (s *sheet) shareBar(y float64, e Share) {
	long := e.Share * barRoom
	s.draw(grid, box(0, y, barRoom, y-barHigh))
	if long > 0 {
		bar := box(0, y, max(long, 0.5), y-barHigh)
		s.hatch(bar, 45, 1)
		s.draw(narrow, bar)
	}
	if e.Error > 0 {
		from, to := max(0, e.Share-e.Error)*barRoom, math.Min(1, e.Share+e.Error)*barRoom
		middle := y - barHigh/2
		s.segment(outline, at(from, middle), at(to, middle))
		s.segment(outline, at(from, middle-1), at(from, middle+1))
		s.segment(outline, at(to, middle-1), at(to, middle+1))
	}
	s.text(barRoom+2, y-barHigh/2-small/2, -1, small, percent(e))
}

// percentAxis draws the scale under the bars.
func (s *sheet) percentAxis(y float64) {
	s.segment(narrow, at(0, y), at(barRoom, y))
	for i := range 5 {
		x := float64(i) / 4 * barRoom
		s.segment(narrow, at(x, y), at(x, y-1.2))
		align := 0
		if i == 0 {
			align = -1
		}
		s.text(x, y-2.2-crown*small, align, small, fmt.Sprintf("%d %%", i*25))
	}
}
