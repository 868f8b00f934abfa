package rules_test

import (
	"math/rand/v2"
	"testing"

	"boremend/cases"
	"boremend/engine"
)

// typical is a shipped case in which nearly everything is known.
func typical(b *testing.B) (*engine.Rulebook, engine.Findings) {
	book := house(b)
	job, err := cases.Load("../cases/quarry-loader-bellcrank.yaml", book)
	if err != nil {
		b.Fatal(err)
	}
	return book, job.Bores[0].Findings
}

// BenchmarkEvaluate is one bore through the house rulebook: worked-out facts,
// every condition, verdicts, points and the decision.
func BenchmarkEvaluate(b *testing.B) {
	book, found := typical(b)
	s := book.NewState()
	b.ReportAllocs()
	for b.Loop() {
		s.Load(found)
		s.Decide()
	}
}

// BenchmarkEvaluateWithTrace adds the whole trace: every comparison of every
// rule with both sides.
func BenchmarkEvaluateWithTrace(b *testing.B) {
	book, found := typical(b)
	s := book.NewState()
	var steps []engine.Step
	b.ReportAllocs()
	for b.Loop() {
		s.Load(found)
		s.Decide()
		steps = s.Steps(steps[:0])
	}
}

// BenchmarkExpressionLibrary is the virtual machine on the same conditions, with
// the worked-out facts given to it.
func BenchmarkExpressionLibrary(b *testing.B) {
	book, found := typical(b)
	o := newOracle(b, book)
	o.load(found)
	b.ReportAllocs()
	for b.Loop() {
		for i := range book.Rules {
			o.rule(i)
		}
	}
}

// BenchmarkChangeOneFact changes a fact and decides again; the facts take turns,
// so the time is their mean. The median is reported beside it.
func BenchmarkChangeOneFact(b *testing.B) {
	book, found := typical(b)
	s := book.NewState()
	s.Load(found)
	for _, f := range found {
		b.Run(book.Facts[f.Fact].Name, func(b *testing.B) {
			other := f.Value
			if probe := (&drawer{book: book, random: rand.New(rand.NewPCG(1, 1))}).value(book.Facts[f.Fact]); probe != f.Value {
				other = probe
			}
			b.ReportAllocs()
			for b.Loop() {
				s.Set(f.Fact, other)
				s.Decide()
				f.Value, other = other, f.Value
			}
		})
	}
}

// BenchmarkAdvise is everything that advise does for one bore, texts included.
func BenchmarkAdvise(b *testing.B) {
	book, found := typical(b)
	for b.Loop() {
		book.Advise("bore", found, 0)
	}
}

// BenchmarkLoad reads, checks and compiles the house rulebook.
func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		house(b)
	}
}
