package figures

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"strings"
	"testing"

	"boremend/cmd/boremend/internal/paper/draw"
	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

var aLength = regexp.MustCompile(`[0-9.]+ (mm|in)\b`)

// TestEveryNumberIsOfTheJob reads the lengths off all drawings of the shipped jobs:
// each is a fact, a reading, or a number of a sheet. Only the bar of the scale and the
// rings of a plot have lengths of their own.
func TestEveryNumberIsOfTheJob(t *testing.T) {
	seen := 0
	for _, b := range shipped(t, "sleeve_bolt_capture") {
		known := lengthsOf(b.Bore)
		drawings, err := Drawings(b.Bore)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range drawings {
			before := ""
			for _, text := range texts(t, d) {
				bar := before == "0" // the bar of the scale goes from 0 to its length
				if before = text; bar || strings.HasPrefix(text, "rings of wear") {
					continue
				}
				for _, l := range aLength.FindAllString(text, -1) {
					if seen++; !known[l] {
						t.Errorf("%s: %s: %q of %q is nobody's number", b.name, d.Name, l, text)
					}
				}
			}
			for _, l := range aLength.FindAllString(d.Words, -1) {
				if !known[l] {
					t.Errorf("%s: %s: %q of its words is nobody's number", b.name, d.Name, l)
				}
			}
		}
	}
	if seen < 1000 {
		t.Errorf("only %d lengths were read", seen)
	}
}

// lengthsOf are all lengths that the drawings of a bore may show.
func lengthsOf(b Bore) map[string]bool {
	known := map[string]bool{}
	add := func(mm float64) {
		for _, s := range []quantity.System{quantity.Millimetre, quantity.Inch} {
			known[quantity.Quantity{Value: mm, Kind: quantity.Length}.Format(s)] = true
		}
	}
	for _, f := range b.Facts {
		if mm, ok := f.Value.(float64); ok && f.Unit == quantity.Length.Unit() {
			add(mm)
		}
	}
	for _, r := range b.Readings {
		for _, mm := range []float64{r.DepthMM, r.DiameterMM, r.DiameterMM / 2, r.RadiusMM} {
			add(mm)
		}
	}
	for _, s := range b.Sheets {
		for _, list := range [][]worked.Named{s.Inputs, s.Outputs} {
			for _, n := range list {
				if n.Quantity.Kind == quantity.Length {
					add(n.Quantity.Value)
				}
			}
		}
	}
	return known
}

// texts are what stands on a drawing, line by line.
func texts(t *testing.T, d draw.Drawing) []string {
	t.Helper()
	svg, err := d.InlineSVG()
	if err != nil {
		t.Fatal(err)
	}
	var all []string
	inside := false
	for dec := xml.NewDecoder(bytes.NewReader(svg)); ; {
		token, err := dec.Token()
		if errors.Is(err, io.EOF) {
			return all
		}
		if err != nil {
			t.Fatal(err)
		}
		switch e := token.(type) {
		case xml.StartElement:
			inside = e.Name.Local == "tspan"
		case xml.EndElement:
			inside = false
		case xml.CharData:
			if inside {
				all = append(all, string(e))
			}
		}
	}
}
