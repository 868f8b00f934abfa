package rules_test

import (
	"context"
	"testing"

	"boremend/engine/audit"
)

// BenchmarkCheck questions the house rulebook.
func BenchmarkCheck(b *testing.B) {
	book := house(b)
	for b.Loop() {
		audit.Check(context.Background(), book, audit.Options{}, nil)
	}
}
