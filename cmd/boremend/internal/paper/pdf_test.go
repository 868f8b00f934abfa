package paper

import (
	"bytes"
	"compress/zlib"
	"io"
	"regexp"
	"strings"
	"testing"
	"unicode/utf16"
)

var (
	streams = regexp.MustCompile(`(?s)stream\n(.*?)\nendstream`)
	shown   = regexp.MustCompile(`(?s)\(((?:[^\\()]|\\.)*)\) Tj`)
)

// printedText reads the text of a PDF of ours back, without blanks: lines of
// neighbouring cells come one after the other.
func printedText(t *testing.T, pdf []byte) string {
	t.Helper()
	var b strings.Builder
	for _, s := range streams.FindAllSubmatch(pdf, -1) {
		r, err := zlib.NewReader(bytes.NewReader(s[1]))
		if err != nil {
			continue // no page
		}
		page, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range shown.FindAllSubmatch(page, -1) {
			b.WriteString(utf16Text(m[1]))
		}
	}
	return b.String()
}

func utf16Text(escaped []byte) string {
	raw := regexp.MustCompile(`(?s)\\(.)`).ReplaceAllFunc(escaped, func(e []byte) []byte {
		if e[1] == 'r' {
			return []byte{'\r'}
		}
		return e[1:]
	})
	var units []uint16
	for i := 0; i+1 < len(raw); i += 2 {
		units = append(units, uint16(raw[i])<<8|uint16(raw[i+1]))
	}
	return strings.ReplaceAll(string(utf16.Decode(units)), " ", "")
}

func TestPDFHoldsTheText(t *testing.T) {
	pdf, err := PDF(everyBlock())
	if err != nil {
		t.Fatal(err)
	}
	text := printedText(t, pdf)
	for _, wanted := range []string{"<script>alert('x')</script>", "[U+0007]", "[U+202E]gnp.exe", "[U+1F600]", "page1of", "םלוע", "DANGER", "Signed", "=1+2=3mm"} {
		if !strings.Contains(text, strings.ReplaceAll(wanted, " ", "")) {
			t.Errorf("the PDF lacks %q", wanted)
		}
	}
	for _, wanted := range []string{"/Producer (boremend)", Mark("x"), "/CreationDate (D:20261125000000"} {
		if !bytes.Contains(pdf, []byte(wanted)) {
			t.Errorf("the PDF lacks %q", wanted)
		}
	}
}

func TestInOrder(t *testing.T) {
	for in, want := range map[string]string{
		"plain (text) [1]":    "plain (text) [1]",
		"abc שלום [x]":        "abc םולש [x]",
		"שלום & co [U+1F600]": "םולש & co [U+1F600]",
		"שלום עולם":           "םלוע םולש",
	} {
		if got := inOrder(in); got != want {
			t.Errorf("inOrder(%q) = %q, want %q", in, got, want)
		}
	}
}

func TestSameDocumentSameBytes(t *testing.T) {
	for name, render := range map[string]func(Document) ([]byte, error){"HTML": HTML, "PDF": PDF} {
		first, err := render(everyBlock())
		if err != nil {
			t.Fatal(err)
		}
		second, err := render(everyBlock())
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(first, second) {
			t.Errorf("%s differs from one time to the next", name)
		}
	}
}
