// Package inorder works through a stream on all cores and hands the results out
// in the order of the stream. It holds a few chunks of it at a time, however
// long the stream is. It knows nothing of what the work is.
package inorder

import (
	"context"
	"fmt"
	"io"
)

// Chunk is how many items are worked on at one go.
const Chunk = 64

// Stream is what is to be worked through. Next returns io.EOF after the last
// item; another error ends the work as well. Waiting reports whether the next
// item has yet to come from outside, so that what is there is not held up.
type Stream[In any] interface {
	Next() (In, error)
	Waiting() bool
}

// chunk is a few items on their way.
type chunk[In, Out any] struct {
	in    []In
	out   []Out
	end   error // what the stream said after the last item
	fault error // of the work
	done  chan struct{}
}

// Work carries out work on every item. worker is called once for each of the
// workers, which serve one goroutine each; emit is called in the order of the
// stream, from the goroutine of the caller. When ctx ends, the chunks already
// read are finished and handed out, and the error is that of ctx. A stream that
// waits for something from outside then keeps its goroutine until that comes.
func Work[In, Out any](ctx context.Context, workers int, stream Stream[In], worker func() func(In) Out, emit func([]Out) error) error {
	ctx, cancel := context.WithCancel(ctx)
	defer cancel()
	todo := make(chan *chunk[In, Out])
	order := make(chan *chunk[In, Out], 2*workers)
	go read(ctx, stream, todo, order)
	for range workers {
		go func() {
			work := worker()
			for c := range todo {
				c.carryOut(work)
			}
		}()
	}
	for {
		c, err := await(ctx, order)
		if c == nil {
			return err
		}
		<-c.done
		if len(c.out) > 0 {
			if err := emit(c.out); err != nil {
				return err
			}
		}
		if c.fault != nil {
			return c.fault
		}
		if c.end != nil && c.end != io.EOF {
			return c.end
		}
	}
}

// await returns the next chunk. When ctx has ended it returns those that are
// already on their way, and then nothing.
func await[In, Out any](ctx context.Context, order <-chan *chunk[In, Out]) (*chunk[In, Out], error) {
	select {
	case c := <-order:
		return c, nil
	default:
	}
	select {
	case c := <-order:
		return c, nil
	case <-ctx.Done():
		select {
		case c := <-order:
			return c, nil
		default:
			return nil, ctx.Err()
		}
	}
}

// read cuts the stream into chunks and closes order after the last one. A chunk
// is in order before it is worked on, and what is in order is worked on.
func read[In, Out any](ctx context.Context, stream Stream[In], todo, order chan<- *chunk[In, Out]) {
	defer close(todo)
	for ctx.Err() == nil {
		c := &chunk[In, Out]{done: make(chan struct{})}
		for c.end == nil && len(c.in) < Chunk && (len(c.in) == 0 || !stream.Waiting()) {
			var item In
			if item, c.end = stream.Next(); c.end == nil {
				c.in = append(c.in, item)
			}
		}
		select {
		case order <- c:
			todo <- c
		case <-ctx.Done():
			return
		}
		if c.end != nil {
			close(order)
			return
		}
	}
}

// carryOut works on a chunk. A fault of the work becomes an error.
func (c *chunk[In, Out]) carryOut(work func(In) Out) {
	defer close(c.done)
	defer func() {
		if r := recover(); r != nil {
			c.fault = fmt.Errorf("%v", r)
		}
	}()
	for _, item := range c.in {
		c.out = append(c.out, work(item))
	}
}
