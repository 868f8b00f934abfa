package draw

import (
	"bytes"
	"fmt"
	"regexp"
	"strconv"
	"testing"
)

// TestUndatedPDF: no date is left, and the table still finds each object.
func TestUndatedPDF(t *testing.T) {
	d, err := EarFound(Ear{FinishBore: MM(60), EdgeDistance: MM(70)})
	if err != nil {
		t.Fatal(err)
	}
	pdf, err := d.PDF()
	if err != nil {
		t.Fatal(err)
	}
	if bytes.Contains(pdf, []byte("CreationDate")) {
		t.Error("the date of making is still there")
	}
	start, err := strconv.Atoi(string(startOfTable.FindSubmatch(pdf)[1]))
	if err != nil || !bytes.HasPrefix(pdf[start:], []byte("xref\n")) {
		t.Fatalf("no table at %d (%v)", start, err)
	}
	entries := reference.FindAllSubmatch(pdf[start:], -1)
	if len(entries) < 5 {
		t.Fatalf("%d objects", len(entries))
	}
	for i, e := range entries {
		offset, err := strconv.Atoi(string(e[1]))
		if err != nil || !bytes.HasPrefix(pdf[offset:], fmt.Appendf(nil, "%d 0 obj\n", i+1)) {
			t.Errorf("object %d is not at %s", i+1, e[1])
		}
	}
	for _, s := range regexp.MustCompile(`(?s)/Length (\d+)>>stream\n`).FindAllSubmatchIndex(pdf, -1) {
		length, err := strconv.Atoi(string(pdf[s[2]:s[3]]))
		if err != nil || !bytes.HasPrefix(pdf[s[1]+length:], []byte("\nendstream")) {
			t.Errorf("a stream of %d bytes does not end there", length)
		}
	}
}

// TestUndatedRefuses: what is no PDF of the canvas is refused, never mangled.
func TestUndatedRefuses(t *testing.T) {
	for _, text := range []string{"", "%PDF", "startxref\n99\n", "startxref\n0\n0000000099 00000 n \n", "x\nendobj\nstartxref\n99999999999999999999\n"} {
		if _, err := undated([]byte(text)); err == nil {
			t.Errorf("%q was taken", text)
		}
	}
}
