package inorder_test

import (
	"context"
	"errors"
	"io"
	"runtime"
	"sync/atomic"
	"testing"

	"boremend/cmd/boremend/internal/inorder"
)

// count is a stream of the numbers below last; then comes err.
type count struct {
	at, last int
	err      error
	waits    bool
	read     atomic.Int64
}

func (c *count) Next() (int, error) {
	if c.at == c.last {
		return 0, c.err
	}
	c.at++
	c.read.Add(1)
	return c.at - 1, nil
}

func (c *count) Waiting() bool { return c.waits }

// unevenly doubles a number, now and then giving way to the others.
func unevenly() func(int) int {
	return func(n int) int {
		for range n % 7 {
			runtime.Gosched()
		}
		return 2 * n
	}
}

func TestOrderIsKept(t *testing.T) {
	for _, last := range []int{0, 1, inorder.Chunk - 1, inorder.Chunk, inorder.Chunk + 1, 20_000} {
		for _, waits := range []bool{false, true} {
			next := 0
			err := inorder.Work(context.Background(), 16, &count{last: last, err: io.EOF, waits: waits}, unevenly, func(out []int) error {
				for _, n := range out {
					if n != 2*next {
						t.Fatalf("got %d, wanted %d", n, 2*next)
					}
					next++
				}
				return nil
			})
			if err != nil || next != last {
				t.Errorf("%d of %d came out, %v", next, last, err)
			}
		}
	}
}

func TestHoldsOnlyFewChunks(t *testing.T) {
	const workers = 4
	s := &count{last: 100_000, err: io.EOF}
	done := int64(0)
	err := inorder.Work(context.Background(), workers, s, unevenly, func(out []int) error {
		done += int64(len(out))
		if held := s.read.Load() - done; held > (3*workers+2)*inorder.Chunk {
			t.Fatalf("%d items are held", held)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

func TestEndsEarly(t *testing.T) {
	broken := errors.New("broken")
	collect := func(s *count, ctx context.Context, after func(done int)) (int, error) {
		done := 0
		err := inorder.Work(ctx, 4, s, unevenly, func(out []int) error {
			for _, n := range out {
				if n != 2*done {
					t.Fatalf("got %d, wanted %d", n, 2*done)
				}
				done++
			}
			after(done)
			return nil
		})
		return done, err
	}
	t.Run("the stream breaks", func(t *testing.T) {
		if done, err := collect(&count{last: 1000, err: broken}, context.Background(), func(int) {}); done != 1000 || err != broken {
			t.Errorf("%d came out, %v", done, err)
		}
	})
	t.Run("stopped", func(t *testing.T) {
		ctx, stop := context.WithCancel(context.Background())
		defer stop()
		s := &count{last: 1 << 30, err: io.EOF}
		done, err := collect(s, ctx, func(int) { stop() })
		if err != context.Canceled || done == 0 || done%inorder.Chunk != 0 {
			t.Errorf("%d came out, %v", done, err)
		}
	})
	t.Run("nobody takes it", func(t *testing.T) {
		err := inorder.Work(context.Background(), 4, &count{last: 1 << 30, err: io.EOF}, unevenly, func([]int) error { return broken })
		if err != broken {
			t.Error(err)
		}
	})
	t.Run("a fault of the work", func(t *testing.T) {
		faulty := func() func(int) int { return func(n int) int { return 1 / (n - 100) } }
		err := inorder.Work(context.Background(), 4, &count{last: 1000, err: io.EOF}, faulty, func([]int) error { return nil })
		if err == nil || err.Error() != "runtime error: integer divide by zero" {
			t.Error(err)
		}
	})
}
