package cases_test

import (
	"regexp"
	"strings"
	"testing"

	"boremend/cases"
	"boremend/engine"
)

// factLine matches a fact in a shipped job, written one on a line.
var factLine = regexp.MustCompile(`(?m)^ +([a-z_]+): (.+)$`)

// odd is what may stand where a fact's value should.
var odd = []string{"unknown", "", "[1, 2]", "{a: b}", ".nan", "-.inf", "1e308 mm", "-5 mm", "0", "22,5 mm", "3 furlong", "yes", "5 kN", "~", "\"", "&a x", "!x y"}

// TestMutatedJobs spoils every shipped job in many ways. Each must be refused
// with a place, or give an advice in which the fact is honestly unknown. Every
// fact loses its line and gets one odd value a file; the files take turns, so
// that each fact meets all of them.
func TestMutatedJobs(t *testing.T) {
	book := house(t)
	for turn, path := range jobFiles(t) {
		text := read(t, path)
		for cut := 0; cut < len(text); cut += len(text)/7 + 1 {
			try(t, book, path, text[:cut])
		}
		if strings.HasPrefix(path, "edges") {
			continue // the same facts, at very many bores
		}
		for i, at := range factLine.FindAllStringSubmatchIndex(text, 60) {
			try(t, book, path, text[:at[4]]+odd[(i+turn)%len(odd)]+text[at[5]:])
			try(t, book, path, text[:at[0]]+text[min(at[1]+1, len(text)):])
		}
	}
}

// try reads a spoilt job and advises on it if it can be read.
func try(t *testing.T, book *engine.Rulebook, path, text string) {
	t.Helper()
	job, err := cases.Read(path, []byte(text), book)
	if err != nil {
		for _, line := range strings.Split(err.Error(), "\n") {
			if !strings.HasPrefix(line, path+":") {
				t.Fatalf("%s: a complaint without a place: %s\n%s", path, line, text)
			}
		}
		return
	}
	s := book.NewState()
	for _, b := range job.Bores[:min(2, len(job.Bores))] {
		s.Load(b.Findings)
		if d := s.Decide(); d.Method < 0 || d.Method >= len(book.Methods) {
			t.Fatalf("%s: no method", path)
		}
	}
}
