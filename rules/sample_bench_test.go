package rules_test

import (
	"context"
	"testing"

	"boremend/engine"
	"boremend/engine/audit"
)

// BenchmarkSampledJoints draws a million joints of the house rulebook and takes
// each to its decision, worked-out facts included, on all cores.
func BenchmarkSampledJoints(b *testing.B) {
	const joints = 1_000_000
	book := house(b)
	b.ReportAllocs()
	for b.Loop() {
		shares, done := audit.Outcomes(context.Background(), book, joints, 1, nil)
		if done != joints || len(shares) != len(book.Methods) {
			b.Fatalf("%d joints drawn", done)
		}
	}
}

// BenchmarkDraw draws one joint and decides, on one core.
func BenchmarkDraw(b *testing.B) {
	s := audit.NewSampler(house(b), 1)
	b.ReportAllocs()
	number := 0
	var d engine.Decision
	for b.Loop() {
		s.Draw(number)
		d = s.State.Decide()
		number++
	}
	_ = d
}
