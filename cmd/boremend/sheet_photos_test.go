package main

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"boremend/cmd/boremend/internal/paper"
)

// writePhoto puts a small picture into a folder.
func writePhoto(t *testing.T, path string) {
	t.Helper()
	picture := image.NewRGBA(image.Rect(0, 0, 60, 40))
	for x := range 60 {
		picture.Set(x, x/2, color.RGBA{R: 200, A: 255})
	}
	var out bytes.Buffer
	if err := png.Encode(&out, picture); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, out.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
}

func loadJobWith(t *testing.T, folder, photos string) (paper.Job, error) {
	t.Helper()
	path := filepath.Join(folder, "job.yaml")
	job := "job: X\nunits: mm\n" + photos + "bores:\n  - bore: ear\n    facts: {finish_bore: 80 mm, worn_max: 82 mm}\n"
	if err := os.WriteFile(path, []byte(job), 0o600); err != nil {
		t.Fatal(err)
	}
	a := &app{out: io.Discard, err: io.Discard}
	return a.loadForPapers(path, sheetFlags{date: papersDate})
}

func TestPhotosInThePapers(t *testing.T) {
	folder := t.TempDir()
	writePhoto(t, filepath.Join(folder, "ear.png"))
	job, err := loadJobWith(t, folder, `photos: [{file: ear.png, shows: "the <b>worn</b> side"}]`+"\n")
	if err != nil {
		t.Fatal(err)
	}
	for _, d := range paper.Papers(job, "both") {
		page, err := paper.HTML(d)
		if err != nil {
			t.Fatal(err)
		}
		if n := bytes.Count(page, []byte("data:image/jpeg;base64,")); n != 1 || !bytes.Contains(page, []byte("the &lt;b&gt;worn&lt;/b&gt; side")) {
			t.Errorf("the page for the %s has %d photographs, or lacks the words under it", d.For, n)
		}
		pdf, err := paper.PDF(d)
		if err != nil {
			t.Fatal(err)
		}
		if n := bytes.Count(pdf, []byte("/DCTDecode")); n != 1 {
			t.Errorf("the PDF for the %s has %d photographs", d.For, n)
		}
	}
}

func TestPhotosThatCannotBePlaced(t *testing.T) {
	folder := t.TempDir()
	if err := os.WriteFile(filepath.Join(folder, "broken.jpg"), []byte("no picture"), 0o600); err != nil {
		t.Fatal(err)
	}
	_, err := loadJobWith(t, folder, "photos: [{file: broken.jpg, shows: x}, {file: nowhere.png, shows: y}]\n")
	if err == nil || !strings.Contains(err.Error(), "broken.jpg") || !strings.Contains(err.Error(), "nowhere.png") {
		t.Errorf("both must be named: %v", err)
	}
	outside := t.TempDir()
	writePhoto(t, filepath.Join(outside, "secret.png"))
	if err := os.Symlink(filepath.Join(outside, "secret.png"), filepath.Join(folder, "link.png")); err != nil {
		t.Skip("no links here")
	}
	if _, err := loadJobWith(t, folder, "photos: [{file: link.png, shows: x}]\n"); err == nil {
		t.Error("a link led out of the folder of the job")
	}
}
