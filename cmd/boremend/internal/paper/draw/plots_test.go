package draw

import (
	"bytes"
	"flag"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the golden plots anew")

// TestGoldenPlots compares the plots that need no bore with the kept ones. A
// difference is to be looked at before -update takes it.
func TestGoldenPlots(t *testing.T) {
	plots := map[string]func() (Drawing, error){
		"shares": func() (Drawing, error) {
			return Shares([]Share{{"Bore over and press in a sleeve with a shoulder", 0.9371, 0.0048}, {"Weld up and bore back to size", 0.0499, 0.0043}, {"Stop & ask <the maker>", 0.013, 0}},
				"Sampled in 10 000 draws.")
		},
		"prices": func() (Drawing, error) {
			return Prices([]Price{{"Bore over and press in a sleeve with a shoulder", 1800, 2400, 2900, 4100}, {"Weld up and bore back to size", 2600, 3700, 4400, 6800}},
				func(amount float64) string { return thousands(amount) + " USD" })
		},
	}
	for name, plot := range plots {
		d, err := plot()
		if err != nil {
			t.Fatal(err)
		}
		got, err := d.InlineSVG()
		if err != nil {
			t.Fatal(err)
		}
		got = bytes.ReplaceAll(got, []byte("</text>"), []byte("</text>\n"))
		file := filepath.Join("testdata", name+".svg")
		if *update {
			if err := os.WriteFile(file, got, 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		if want, err := os.ReadFile(file); err != nil || !bytes.Equal(got, want) {
			t.Errorf("%s differs from %s (%v)", name, file, err)
		}
	}
}

// TestRefused gives drawings numbers that cannot be drawn: each is refused in words,
// and none panics.
func TestRefused(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	write := func(float64) string { return "" }
	ear := Ear{FinishBore: MM(60), EdgeDistance: MM(70), NewBore: MM(70), Made: "sleeve"}
	with := func(change func(*Ear)) Ear {
		e := ear
		change(&e)
		return e
	}
	for name, draw := range map[string]func() (Drawing, error){
		"ear of nothing":       func() (Drawing, error) { return EarFound(Ear{}) },
		"ear of no number":     func() (Drawing, error) { return EarFound(with(func(e *Ear) { e.FinishBore = MM(nan) })) },
		"endless ear":          func() (Drawing, error) { return EarFound(with(func(e *Ear) { e.EdgeDistance = MM(inf) })) },
		"wear of 1e308":        func() (Drawing, error) { return EarFound(with(func(e *Ear) { e.WornMax = MM(1e308) })) },
		"edge inside the bore": func() (Drawing, error) { return EarFound(with(func(e *Ear) { e.EdgeDistance = MM(29) })) },
		"cut out of the ear":   func() (Drawing, error) { return EarAfter(with(func(e *Ear) { e.NewBore = MM(141) })) },
		"sleeve of no wall":    func() (Drawing, error) { return EarAfter(with(func(e *Ear) { e.NewBore = MM(60) })) },
		"reading of no number": func() (Drawing, error) { return EarFound(with(func(e *Ear) { e.Wear = []Radius{{nan, 30}} })) },
		"reading of nothing":   func() (Drawing, error) { return EarFound(with(func(e *Ear) { e.Wear = []Radius{{0, -1}} })) },
		"section of nothing":   func() (Drawing, error) { return DrawSection(Section{Made: "sleeve"}) },
		"sleeve of nothing":    func() (Drawing, error) { return DrawSleeve(Sleeve{Made: "sleeve"}) },
		"build-up of nothing":  func() (Drawing, error) { return DrawBuildUp(BuildUp{}) },
		"build-up inside out": func() (Drawing, error) {
			return DrawBuildUp(BuildUp{PreBore: MM(50), Filled: MM(70), FinishBore: MM(60)})
		},
		"a million screws": func() (Drawing, error) {
			return DrawCaptured(Captured{NewBore: MM(70), FinishBore: MM(60), Screws: Screws{"M8", 1e6, MM(8), MM(16)}})
		},
		"plate of nothing": func() (Drawing, error) { return DrawPlate(Plate{}) },
		"wear of one": func() (Drawing, error) {
			return DrawWear(Wear{FinishBore: MM(60), Depths: []WearAtDepth{{0, []Radius{{0, 30}}}}})
		},
		"no shares":          func() (Drawing, error) { return Shares(nil, "") },
		"share above all":    func() (Drawing, error) { return Shares([]Share{{"x", 1.1, 0}}, "") },
		"share of no number": func() (Drawing, error) { return Shares([]Share{{"x", nan, 0}}, "") },
		"no prices":          func() (Drawing, error) { return Prices(nil, write) },
		"falling prices":     func() (Drawing, error) { return Prices([]Price{{"x", 3, 2, 1, 0}}, write) },
		"endless price":      func() (Drawing, error) { return Prices([]Price{{"x", 1, 2, 3, inf}}, write) },
		"free of charge":     func() (Drawing, error) { return Prices([]Price{{"x", 0, 0, 0, 0}}, write) },
	} {
		if d, err := draw(); err == nil {
			t.Errorf("%s: drawn as %s", name, d.Name)
		} else if strings.Contains(err.Error(), "NaN") {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// TestScales finds the scale of ISO 5455 that fits, and never one between.
func TestScales(t *testing.T) {
	for _, tt := range []struct {
		size, room float64
		want       string
	}{{80, 80, "1:1"}, {80.1, 80, "1:2"}, {161, 80, "1:5"}, {401, 80, "1:10"}, {40, 80, "2:1"}, {16, 80, "5:1"}, {8, 80, "10:1"}, {0.001, 80, "50:1"}, {1e9, 80, "1:1000"}} {
		if got := fitting(tt.size, tt.size/2, tt.room, tt.room).name; got != tt.want {
			t.Errorf("%g mm in %g mm is drawn %s, want %s", tt.size, tt.room, got, tt.want)
		}
	}
}

// TestPNG refuses resolutions out of reason and gives the size on paper otherwise.
func TestPNG(t *testing.T) {
	d, err := EarFound(Ear{FinishBore: MM(60), EdgeDistance: MM(70)})
	if err != nil {
		t.Fatal(err)
	}
	for _, dpi := range []float64{0, -1, 1e9, math.NaN(), math.Inf(1)} {
		if _, err := d.PNG(dpi); err == nil {
			t.Errorf("%g dots per inch were taken", dpi)
		}
	}
}
