package cases_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"boremend/cases"
)

// TestFoundShipped compares what is built into the program with what lies in this
// folder.
func TestFoundShipped(t *testing.T) {
	list, err := cases.FoundShipped(house(t))
	if err != nil {
		t.Fatal(err)
	}
	var built []string
	for _, f := range list {
		if built = append(built, strings.TrimPrefix(f.File, cases.ShippedName+"/")); len(f.Problems) > 0 {
			t.Error(f.Problems)
		}
	}
	if files := jobFiles(t); !slices.Equal(built, files) {
		t.Errorf("built in are %d files, and the folder holds %d", len(built), len(files))
	}
}

// TestFoundIn reads what was found and leaves expectations alone, and names what
// cannot be read without losing the rest.
func TestFoundIn(t *testing.T) {
	dir := t.TempDir()
	for name, text := range map[string]string{
		"a.yaml":          "job: A\nbores: [{bore: left, facts: {shock: severe}}]\nexpect: {left: {holds: [nobody-has-this-rule]}}\n",
		"b/c.yml":         "job: C\nbores: [{bore: left, facts: {shok: severe}}]\n",
		"d.yaml":          "\xff\xfe",
		"note.txt":        "nothing",
		"testdata/e.yaml": "job: E",
	} {
		if err := os.MkdirAll(filepath.Dir(filepath.Join(dir, name)), 0o700); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	list, err := cases.FoundIn(dir, house(t))
	if err != nil {
		t.Fatal(err)
	}
	if len(list) != 3 {
		t.Fatalf("%d files were read", len(list))
	}
	if a := list[0]; a.File != filepath.Join(dir, "a.yaml") || len(a.Problems) > 0 || len(a.Job.Bores) != 1 || len(a.Job.Bores[0].Findings) != 1 || a.Job.Bores[0].Expect != nil {
		t.Errorf("a.yaml: %+v", a)
	}
	if c := list[1]; len(c.Problems) != 1 || !strings.HasPrefix(c.Problems.Error(), filepath.Join(dir, "b/c.yml:2:")) || !strings.Contains(c.Problems.Error(), "shock") {
		t.Errorf("c.yml: %v", c.Problems)
	}
	if len(list[2].Problems) == 0 {
		t.Error("d.yaml is no text, and was read")
	}
}
