package schema_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"boremend/engine/schema"
	"boremend/knowledge"
	"boremend/rules"
)

// example is a block of lines in a fresh overlay that becomes real without its
// marks.
var example = regexp.MustCompile(`(?m)^# (- |off:|narrow:)(.*\n# )*.*$`)

// TestTakesAnOverlay makes a fresh overlay, with all its examples made real, and
// one as fresh as it comes: an editor must find no fault with either.
func TestTakesAnOverlay(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "ours")
	names, err := rules.NewOverlay(dir)
	if err != nil {
		t.Fatal(err)
	}
	book, err := rules.Load(dir)
	if err != nil {
		t.Fatal(err)
	}
	all := compiledFor(t, book, schema.Catalogue{Sheets: knowledge.Sizes()})
	for _, name := range names {
		text, err := os.ReadFile(filepath.Join(dir, filepath.FromSlash(name)))
		if err != nil {
			t.Fatal(err)
		}
		real := example.ReplaceAllStringFunc(string(text), func(block string) string {
			return strings.TrimPrefix(strings.ReplaceAll(block, "\n# ", "\n"), "# ")
		})
		for _, file := range []string{string(text), real} {
			if err := all[schemaOf(name)].Validate(seen(t, file)); err != nil {
				t.Errorf("%s: %v", name, err)
			}
		}
	}
}

// TestOfAnOverlay takes and refuses single entries.
func TestOfAnOverlay(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "ours")
	if _, err := rules.NewOverlay(dir); err != nil {
		t.Fatal(err)
	}
	book, err := rules.Load(dir)
	if err != nil {
		t.Fatal(err)
	}
	all := compiledFor(t, book, schema.Catalogue{Sheets: knowledge.Sizes()})
	tests := []struct {
		file, text string
		taken      bool
	}{
		{"limits", "[{limit: sleeve_wall_least, is: 6 mm, was: 5 mm, source: ours}]", true},
		{"limits", "[{limit: ours, is: 6 mm, means: of ours, source: ours}]", true},
		{"limits", "[{limit: sleeve_wall_least, is: 6 mm, source: ours}]", false},
		{"limits", "[{limit: sleeve_wall_least, is: 6 furlong, was: 5 mm, source: ours}]", false},
		{"facts", "[{fact: sleeve_blocked, from: too_thin_for_any_metal}]", true},
		{"facts", "[{fact: sleeve_blocked, from: a, was: b}]", true},
		{"facts", "[{fact: sleeve_blocked, from: a, kind: yes_no}]", false},
		{"rulebook", "{title: a, edition: '1', over: house, narrow: 2, off: [{rule: a, because: b}]}", true},
		{"rulebook", "{title: a, edition: '1', over: house, off: [{rule: a}]}", false},
		{"rulebook", "{title: a, edition: '1', narrow: 1, fallback: refer}", false},
	}
	for _, tt := range tests {
		if err := all[tt.file].Validate(seen(t, tt.text)); (err == nil) != tt.taken {
			t.Errorf("%s: %s: %v", tt.file, tt.text, err)
		}
	}
}
