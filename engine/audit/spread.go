package audit

import (
	"context"
	"runtime"
	"sync"

	"boremend/engine"
)

// blockOf is how many draws are handed out at once.
const blockOf = 1000

// overDraws works draws 0 to total-1 in blocks on all cores. begin makes one
// worker, which turns a block into a result; take is called with the results in
// the order of their blocks, from one goroutine. When the context ends, the
// results up to some block have been taken; done says how many draws that is.
func overDraws[R any](ctx context.Context, total int, report Report, begin func() func(from, to int) R, take func(R)) (done int) {
	type result struct {
		block int
		of    R
	}
	blocks := (total + blockOf - 1) / blockOf
	workers := max(1, min(runtime.GOMAXPROCS(0), blocks))
	ahead := make(chan struct{}, 4*workers) // bounds the results that wait for their turn
	next, results := make(chan int), make(chan result)
	go func() {
		defer close(next)
		for block := range blocks {
			select {
			case ahead <- struct{}{}:
			case <-ctx.Done():
				return
			}
			next <- block
		}
	}()
	var working sync.WaitGroup
	for range workers {
		working.Go(func() {
			work := begin()
			for block := range next {
				from := block * blockOf
				results <- result{block, work(from, min(from+blockOf, total))}
			}
		})
	}
	go func() { working.Wait(); close(results) }()
	waiting, turn := map[int]R{}, 0
	for r := range results {
		waiting[r.block] = r.of
		for {
			of, ready := waiting[turn]
			if !ready {
				break
			}
			delete(waiting, turn)
			<-ahead
			take(of)
			turn++
			done = min(turn*blockOf, total)
			if report != nil {
				report(done, total)
			}
		}
	}
	return done
}

// Outcomes counts how often each method is advised over sampled joints; done is
// how many were drawn until the context ended.
func Outcomes(ctx context.Context, book *engine.Rulebook, draws int, seed uint64, report Report) (counts []int, done int) {
	counts = make([]int, len(book.Methods))
	begin := func() func(from, to int) []int {
		s := NewSampler(book, seed)
		return func(from, to int) []int {
			block := make([]int, len(book.Methods))
			for number := from; number < to; number++ {
				s.Draw(number)
				block[s.State.Decide().Method]++
			}
			return block
		}
	}
	done = overDraws(ctx, draws, report, begin, func(block []int) {
		for m, n := range block {
			counts[m] += n
		}
	})
	return counts, done
}
