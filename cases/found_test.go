package cases_test

import (
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"boremend/cases"
)

// TestShippedHoldsEveryCase compares what is built into the program with what
// lies in this folder.
func TestShippedHoldsEveryCase(t *testing.T) {
	var built []string
	err := fs.WalkDir(cases.Shipped(), ".", func(path string, entry fs.DirEntry, err error) error {
		if err == nil && !entry.IsDir() {
			built = append(built, path)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	if files := jobFiles(t); !slices.Equal(built, files) {
		t.Errorf("built in are %d files, and the folder holds %d", len(built), len(files))
	}
}

// TestReadFound reads what was found and leaves expectations alone, and names what
// cannot be read without losing the rest.
func TestReadFound(t *testing.T) {
	list, err := cases.ReadFound(fstest.MapFS{
		"a.yaml":          {Data: []byte("job: A\nbores: [{bore: left, facts: {shock: severe}}]\nexpect: {left: {holds: [nobody-has-this-rule]}}\n")},
		"b/c.yml":         {Data: []byte("job: C\nbores: [{bore: left, facts: {shok: severe}}]\n")},
		"d.yaml":          {Data: []byte("\xff\xfe")},
		"note.txt":        {Data: []byte("nothing")},
		"testdata/e.yaml": {Data: []byte("job: E")},
	}, "jobs", house(t))
	if err != nil {
		t.Fatal(err)
	}
	if len(list) != 3 {
		t.Fatalf("%d files were read", len(list))
	}
	if a := list[0]; a.File != "jobs/a.yaml" || len(a.Problems) > 0 || len(a.Job.Bores) != 1 || len(a.Job.Bores[0].Findings) != 1 || a.Job.Bores[0].Expect != nil {
		t.Errorf("a.yaml: %+v", a)
	}
	if c := list[1]; len(c.Problems) != 1 || !strings.HasPrefix(c.Problems.Error(), "jobs/b/c.yml:2:") || !strings.Contains(c.Problems.Error(), "shock") {
		t.Errorf("c.yml: %v", c.Problems)
	}
	if len(list[2].Problems) == 0 {
		t.Error("d.yaml is no text, and was read")
	}
}
