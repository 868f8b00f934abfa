package rules_test

import (
	"context"
	"testing"

	"boremend/cases"
	"boremend/engine/audit"
)

// BenchmarkMutate tries every small edit of the house rulebook on the shipped
// cases, with all processors.
func BenchmarkMutate(b *testing.B) {
	book := house(b)
	files, err := cases.LoadFolder("../cases", book)
	if err != nil {
		b.Fatal(err)
	}
	var list []audit.Case
	for _, f := range files {
		for _, bore := range f.Bores {
			if e := bore.Expect; e != nil {
				list = append(list, audit.Case{Name: bore.Name, Findings: bore.Findings, Names: e.Names(), Wrong: e.Wrong})
			}
		}
	}
	for b.Loop() {
		m := audit.Mutate(context.Background(), book, list, func(int, int) {})
		b.ReportMetric(100*m.Score, "%noticed")
		b.ReportMetric(float64(m.Tried), "edits")
	}
}
