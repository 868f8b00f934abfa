package paper

import (
	"regexp"
	"strings"
	"testing"
)

// loads are the ways in which a page could fetch or run something.
var loads = regexp.MustCompile(`(?i)<script|<link|<iframe|<object|<embed|@import|\son[a-z]+\s*=|(src|href|srcset|action|data)\s*=\s*["']?\s*(https?:|//|file:|javascript:)|url\(\s*["']?(https?:|//|file:)`)

func TestHTMLKeepsTextAsText(t *testing.T) {
	page, err := HTML(everyBlock())
	if err != nil {
		t.Fatal(err)
	}
	text := string(page)
	if found := loads.FindString(text); found != "" {
		t.Errorf("the page loads or runs something: %q", found)
	}
	for _, wanted := range []string{"&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;", "[U&#43;0007]", "[U&#43;202E]gnp.exe", "😀", isolateFirst} {
		if !strings.Contains(text, wanted) {
			t.Errorf("the page lacks %q", wanted)
		}
	}
}

func TestLoadsAreFound(t *testing.T) {
	for _, bad := range []string{`<SCRIPT>`, `<img src="https://x">`, `<img onerror = "x">`, `<a href='//x'>`, `background: url(http://x)`} {
		if loads.FindString(bad) == "" {
			t.Errorf("%s was not found", bad)
		}
	}
}

func TestGiven(t *testing.T) {
	for in, want := range map[string]string{
		"HB-1042":               "HB-1042",
		"two\nlines\tand\u2028": "two lines and",
		"a\x00b\x1bc":           "a[U+0000]b[U+001B]c",
		"\u202eexe.gpj":         "[U+202E]exe.gpj",
		"\ufeffbom":             "[U+FEFF]bom",
		"שלום":                  isolateFirst + "שלום" + isolateEnd,
		"\u2069loose":           "[U+2069]loose",
		"😀":                     "😀",
	} {
		if got := given(in); got != want {
			t.Errorf("given(%q) = %q, want %q", in, got, want)
		}
	}
}

func TestFileName(t *testing.T) {
	for in, want := range map[string]string{
		"HB-1042":                "HB-1042",
		"../../etc/passwd":       "etc-passwd",
		`C:\con`:                 "C-con",
		"con":                    "job-con",
		"":                       "job",
		"...":                    "job",
		"a b\x00c\n":             "a-b-c",
		"שלום":                   "job",
		strings.Repeat("x", 500): strings.Repeat("x", nameLength),
	} {
		if got := FileName(in); got != want {
			t.Errorf("FileName(%q) = %q, want %q", in, got, want)
		}
	}
}
