package explain_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"boremend/engine"
	"boremend/engine/explain"
	"boremend/engine/quantity"
)

// TestShares compares the shares with an independent sampling: they add up to
// one and lie within what two samplings may differ by.
func TestShares(t *testing.T) {
	book := house(t)
	s := book.NewState()
	hows := map[string]int{}
	const draws = 4000
	eachCase(t, book, func(t *testing.T, found engine.Findings) {
		sure := explain.New(book, found, quantity.Millimetre).HowSure("")
		hows[sure.How]++
		random := rand.New(rand.NewPCG(8, 9))
		drawing, counts := slices.Clone(found), map[string]float64{}
		for range draws {
			for k, f := range found {
				if e, loose := book.Around(f); loose {
					drawing[k].Value = drawn(random, e, false)
				}
			}
			s.Load(drawing)
			counts[book.Methods[s.Decide().Method].Name] += 1. / draws
		}
		sum := 0.0
		for _, share := range sure.Shares {
			sum += share.Share
			// Five standard errors of either sampling.
			if allowed := 5*math.Sqrt(.25/draws) + share.Error; math.Abs(share.Share-counts[share.Method]) > allowed {
				t.Errorf("%s (%s) has %.3f of the outcomes, and %.3f when sampled again", share.Method, sure.How, share.Share, counts[share.Method])
			}
		}
		if math.Abs(sum-1) > 1e-9 {
			t.Errorf("the shares add up to %v", sum)
		}
	})
	t.Log(hows)
	for _, how := range []string{"certain", "exact", "sampled"} {
		if hows[how] == 0 && !quick() {
			t.Errorf("no shipped bore was %s", how)
		}
	}
}

func BenchmarkSure(b *testing.B) {
	book := house(b)
	found := typical(b, book)
	for b.Loop() {
		if sure := explain.New(book, found, quantity.Millimetre).HowSure(""); sure.How == "exact" {
			b.Fatal("this is to time the sampling")
		}
	}
}
