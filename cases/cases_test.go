package cases_test

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"boremend/cases"
	"boremend/engine"
	"boremend/rules"
)

// jobFiles lists every job file in this folder and below, testdata aside.
func jobFiles(t testing.TB) []string {
	t.Helper()
	var files []string
	err := filepath.WalkDir(".", func(path string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && entry.Name() == "testdata":
			return fs.SkipDir
		case strings.HasSuffix(path, ".yaml"):
			files = append(files, path)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

func house(t testing.TB) *engine.Rulebook {
	t.Helper()
	book, err := rules.House()
	if err != nil {
		t.Fatal(err)
	}
	return book
}

// TestCases replays every worked case: the advice must be the one expected.
func TestCases(t *testing.T) {
	book := house(t)
	for _, path := range jobFiles(t) {
		job, err := cases.Load(path, book)
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		if !slices.ContainsFunc(job.Bores, func(b cases.Bore) bool { return b.Expect != nil }) {
			t.Errorf("%s: a worked case says what it expects", path)
		}
		for _, bore := range job.Bores {
			if bore.Expect == nil {
				continue
			}
			t.Run(strings.TrimSuffix(path, ".yaml")+"/"+bore.Name, func(t *testing.T) {
				for _, wrong := range bore.Expect.Check(book, bore.Findings) {
					t.Error(wrong)
				}
			})
		}
	}
}

// TestDemoDataSaysSo keeps invented machines marked as such.
func TestDemoDataSaysSo(t *testing.T) {
	book := house(t)
	for _, path := range jobFiles(t) {
		if job, err := cases.Load(path, book); err == nil && !job.Invented {
			t.Errorf("%s does not say that it is invented", path)
		}
	}
}

// TestEveryRuleIsExercised asks for a case in which each rule holds and one in
// which it fails; rules without a condition always hold.
func TestEveryRuleIsExercised(t *testing.T) {
	book := house(t)
	holds, fails := map[int]bool{}, map[int]bool{}
	s := book.NewState()
	for _, path := range jobFiles(t) {
		job, err := cases.Load(path, book)
		if err != nil {
			t.Fatal(err)
		}
		for _, bore := range job.Bores {
			if bore.Expect == nil {
				continue
			}
			s.Load(bore.Findings)
			for i, r := range book.Rules {
				holds[i] = holds[i] || slices.Contains(bore.Expect.Holds, r.Name) && s.Outcome(i) == engine.Holds
				fails[i] = fails[i] || slices.Contains(bore.Expect.Fails, r.Name) && s.Outcome(i) == engine.Fails
			}
		}
	}
	for i, r := range book.Rules {
		if r.If == "true" {
			continue
		}
		if !holds[i] {
			t.Errorf("%s:%d: no case expects that %s holds", r.File, r.Line, r.Name)
		}
		if !fails[i] {
			t.Errorf("%s:%d: no case expects that %s fails", r.File, r.Line, r.Name)
		}
	}
}

// read returns the text of a file.
func read(t testing.TB, path string) string {
	t.Helper()
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}
