package explain_test

import (
	"io/fs"
	"math"
	"path/filepath"
	"strings"
	"testing"

	"boremend/cases"
	"boremend/engine"
	"boremend/rules"
)

func house(t testing.TB) *engine.Rulebook {
	t.Helper()
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	return book
}

// eachBore runs a test for every bore of the shipped jobs; in a quick run for
// the first two of each.
func eachBore(t *testing.T, book *engine.Rulebook, test func(t *testing.T, found engine.Findings)) {
	t.Helper()
	most := math.MaxInt
	if quick() {
		most = 2
	}
	bores(t, book, most, test)
}

// eachCase runs a slow test for the first two bores of each job: those on edges
// have very many bores with nearly the same facts.
func eachCase(t *testing.T, book *engine.Rulebook, test func(t *testing.T, found engine.Findings)) {
	t.Helper()
	bores(t, book, 2, test)
}

func bores(t *testing.T, book *engine.Rulebook, most int, test func(t *testing.T, found engine.Findings)) {
	t.Helper()
	jobs := 0
	err := filepath.WalkDir("../../cases", func(path string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && entry.Name() == "testdata":
			return fs.SkipDir
		case !strings.HasSuffix(path, ".yaml"):
			return nil
		}
		if jobs++; raced && jobs%8 != 1 {
			return nil
		}
		job, err := cases.Load(path, book)
		if err != nil {
			return err
		}
		for _, bore := range job.Bores[:min(most, len(job.Bores))] {
			t.Run(filepath.Base(path)+"/"+bore.Name, func(t *testing.T) { test(t, bore.Findings) })
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

// typical is a shipped bore at which nearly everything is known.
func typical(t testing.TB, book *engine.Rulebook) engine.Findings {
	t.Helper()
	job, err := cases.Load("../../cases/quarry-loader-bellcrank.yaml", book)
	if err != nil {
		t.Fatal(err)
	}
	return job.Bores[0].Findings
}

// quick reports whether tests take fewer bores and fewer draws: with -short, and
// under the race detector, which also leaves seven jobs of eight out.
func quick() bool { return testing.Short() || raced }
