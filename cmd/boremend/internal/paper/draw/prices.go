package draw

import (
	"errors"
	"fmt"
	"math"
	"strconv"
)

// Price is the spread of the price of one method. Half is the price that it stays
// below every other time, FourOfFive the one that it stays below four times in five.
type Price struct {
	Title                       string
	Low, Half, FourOfFive, High float64
}

// Prices draws the spread of the price of each method on one scale. write puts an
// amount as the rest of the paper does, its currency with it.
func Prices(prices []Price, write func(amount float64) string) (Drawing, error) {
	if len(prices) == 0 {
		return Drawing{}, errors.New("the prices: there are none")
	}
	most := 0.0
	for _, p := range prices {
		if !finite(p.High) || !(0 <= p.Low && p.Low <= p.Half && p.Half <= p.FourOfFive && p.FourOfFive <= p.High) {
			return Drawing{}, fmt.Errorf("the prices: %s, %s, %s, %s of %q do not rise", plainNumber(p.Low), plainNumber(p.Half), plainNumber(p.FourOfFive), plainNumber(p.High), p.Title)
		}
		most = max(most, p.High)
	}
	if !(most > 0) {
		return Drawing{}, errors.New("the prices: all are nothing")
	}
	s, err := newSheet()
	if err != nil {
		return Drawing{}, err
	}
	const wide = plotWidth - 8
	step := s.tick(most, wide)
	end := math.Ceil(most/step-1e-9) * step
	words, y := "What each method may cost.", 0.0
	for _, p := range prices {
		lines := s.heading(p.Title, plotWidth)
		s.block(0, y, -1, lines)
		y -= blockHeight(lines) + 0.8
		s.priceBar(y, p, wide/end)
		y -= barHigh + 0.8
		figures := s.wrap(fmt.Sprintf("from %s, half the time below %s, four times in five below %s, at most %s", write(p.Low), write(p.Half), write(p.FourOfFive), write(p.High)), plotWidth)
		s.block(0, y, -1, figures)
		y -= blockHeight(figures) + 2.5
		words += " " + oneLine(p.Title) + ": " + oneLine(fmt.Sprintf("from %s to %s, half the time below %s.", write(p.Low), write(p.High), write(p.Half)))
	}
	s.priceAxis(y, step, end, wide)
	s.notes(0, s.bounds().Y0-1.5, plotWidth, "Each bar goes from low to high. The heavy stroke: half the time it stays below. The filled part ends where it stays below four times in five.")
	return s.finish("prices", "What it may cost", words), nil
}

// priceBar draws one spread, its top at y.
func (s *sheet) priceBar(y float64, p Price, per float64) {
	whole := box(p.Low*per, y-0.8, max(p.High*per, p.Low*per+0.3), y-barHigh+0.8)
	s.draw(narrow, whole)
	inner := box(p.Half*per, y, max(p.FourOfFive*per, p.Half*per+0.3), y-barHigh)
	s.blank(inner)
	s.hatch(inner, 45, 0.8)
	s.draw(narrow, inner)
	s.segment(heavy, at(p.Half*per, y+0.6), at(p.Half*per, y-barHigh-0.6))
}

// priceAxis draws the scale under the bars.
func (s *sheet) priceAxis(y, step, end, wide float64) {
	s.segment(narrow, at(0, y), at(wide, y))
	for i := 0; float64(i)*step <= end*(1+1e-9); i++ {
		x := float64(i) * step / end * wide
		s.segment(narrow, at(x, y), at(x, y-1.2))
		align := 0
		if i == 0 {
			align = -1
		}
		s.text(x, y-2.2-crown*small, align, small, thousands(float64(i)*step))
	}
}

// tick is a round step that divides a scale into as many parts as their labels have
// room, five at most.
func (s *sheet) tick(most, wide float64) float64 {
	step := math.Pow(10, math.Floor(math.Log10(most))-1)
	for {
		for _, n := range []float64{1, 2, 5} {
			parts := math.Ceil(most/(n*step) - 1e-9)
			if parts <= 5 && s.width(thousands(n*step*parts), small)+4 <= wide/parts || parts <= 1 {
				return n * step
			}
		}
		step *= 10
	}
}

// thousands writes a round amount with its thousands set apart.
func thousands(amount float64) string {
	if amount < 1000 || amount >= 1e15 {
		return strconv.FormatFloat(amount, 'g', -1, 64)
	}
	text := strconv.FormatFloat(amount, 'f', -1, 64)
	for i := len(text) - 3; i > 0; i -= 3 {
		text = text[:i] + " " + text[i:]
	}
	return text
}
