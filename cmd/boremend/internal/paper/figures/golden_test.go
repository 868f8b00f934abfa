package figures

import (
	"bytes"
	"encoding/xml"
	"errors"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"boremend/cmd/boremend/internal/paper/draw"
)

var update = flag.Bool("update", false, "write the golden drawings anew")

// golden are the shipped bores whose drawings are kept, by method: each drawing at
// least once, in millimetres and in inches.
var golden = []string{
	"rail-tamper-arm-by-gauge/arm pivot/sleeve_shoulder",
	"quarry-loader-bellcrank/bellcrank pivot/weld_and_bore",
	"skidder-grapple-arch/arch ear/bolt_on_reinforcement",
	"quarry-loader-bellcrank/bellcrank pivot/sleeve_bolt_capture",
	"tractor-front-axle-pivot/axle pivot/sleeve_shoulder",
	"drill-rig-mast-foot/mast foot boss/sleeve_shoulder",
	"stacker-luffing-boss/luffing boss/sleeve_bolt_capture",
}

// goldenDrawings draws them, under names for files.
func goldenDrawings(t *testing.T) map[string]draw.Drawing {
	t.Helper()
	out := map[string]draw.Drawing{}
	for _, b := range shipped(t, "sleeve_bolt_capture") {
		for _, name := range golden {
			if b.name != name {
				continue
			}
			drawings, err := Drawings(b.Bore)
			if err != nil {
				t.Fatal(err)
			}
			parts := strings.Split(name, "/")
			for _, d := range drawings {
				out[parts[0]+"_"+parts[2]+"_"+d.Name] = d
			}
		}
	}
	return out
}

// TestGolden compares drawings with the kept ones. A difference is to be looked at
// before -update takes it.
func TestGolden(t *testing.T) {
	drawings := goldenDrawings(t)
	kept, err := filepath.Glob("testdata/*.svg")
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		for _, file := range kept {
			if err := os.Remove(file); err != nil {
				t.Fatal(err)
			}
		}
	} else if len(kept) != len(drawings) {
		t.Errorf("%d drawings are kept, %d are drawn", len(kept), len(drawings))
	}
	for name, d := range drawings {
		got, err := d.InlineSVG()
		if err != nil {
			t.Fatal(err)
		}
		// One element a line reads better in a comparison.
		got = bytes.ReplaceAll(got, []byte("/>"), []byte("/>\n"))
		got = bytes.ReplaceAll(got, []byte("</text>"), []byte("</text>\n"))
		file := filepath.Join("testdata", name+".svg")
		if *update {
			if err := os.WriteFile(file, got, 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Error(err)
		} else if !bytes.Equal(got, want) {
			t.Errorf("%s differs from %s", name, file)
		}
	}
}

// TestSameBytes draws twice, and renders each drawing in every form: the bytes are
// the same, and SVG is well-formed and loads nothing from anywhere.
func TestSameBytes(t *testing.T) {
	first, second := goldenDrawings(t), goldenDrawings(t)
	for name, d := range first {
		for form, render := range map[string]func(draw.Drawing) ([]byte, error){
			"SVG": draw.Drawing.SVG, "PDF": draw.Drawing.PDF, "PNG": func(d draw.Drawing) ([]byte, error) { return d.PNG(72) },
		} {
			a, err := render(d)
			b, err2 := render(second[name])
			if err := errors.Join(err, err2); err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(a, b) {
				t.Errorf("%s: other bytes of %s the second time", name, form)
			}
			if form == "SVG" {
				wellFormed(t, name, a)
			}
		}
	}
}

func wellFormed(t *testing.T, name string, svg []byte) {
	t.Helper()
	if bytes.Contains(svg, []byte("<script")) || bytes.Contains(svg, []byte("url('http")) {
		t.Errorf("%s loads something", name)
	}
	for d := xml.NewDecoder(bytes.NewReader(svg)); ; {
		_, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
	}
}
