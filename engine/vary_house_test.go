package engine_test

import (
	"io/fs"
	"math/rand/v2"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"boremend/engine"
	"boremend/rules"
)

// TestVaryHouse makes a sample of the edits of the house rulebook in memory, and
// again in the text of its files.
func TestVaryHouse(t *testing.T) {
	functions, err := rules.Functions()
	if err != nil {
		t.Fatal(err)
	}
	files := fstest.MapFS{}
	if err := fs.WalkDir(os.DirFS("../rules"), ".", func(name string, _ fs.DirEntry, err error) error {
		if err == nil && strings.HasSuffix(name, ".yaml") {
			text, failed := os.ReadFile("../rules/" + name)
			files[name], err = &fstest.MapFile{Data: text}, failed
		}
		return err
	}); err != nil {
		t.Fatal(err)
	}
	book, err := engine.Load(files, "shelf", functions)
	if err != nil {
		t.Fatal(err)
	}
	edits := book.Edits()
	for i := 0; i < len(edits); i += 47 {
		e := edits[i]
		varied, refused := book.Vary(e)
		loaded, err := engine.Load(edited(t, files, e), "shelf", functions)
		if (refused == nil) != (err == nil) {
			t.Errorf("%s %s: in memory %v, from files %v", e.Name, e.Value, refused, err)
		}
		if refused != nil || err != nil {
			continue
		}
		chance := rand.New(rand.NewPCG(2, uint64(i)))
		for range 20 {
			found := anyFindings(book, chance)
			if diff := cmp.Diff(said(varied, found), said(loaded, found)); diff != "" {
				t.Fatalf("%s %s %q: %s", e.Declares, e.Name, e.Value, diff)
			}
		}
	}
}
