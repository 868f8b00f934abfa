package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"syscall"
	"time"

	xterm "golang.org/x/term"
)

// patience is how long work may take before a terminal is told how far it is.
const patience = time.Second

// stoppable runs work that may take long. Ctrl-C ends the context, and the work
// is then expected to return what it has found so far. While work goes on, a
// terminal sees how much of it is done, from the first second on; nothing else
// ever sees that.
func (a *app) stoppable(what string, work func(ctx context.Context, report func(done, total int))) {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	p := &progress{what: what, out: a.err, start: time.Now()}
	if file, ok := a.err.(*os.File); !ok || !xterm.IsTerminal(int(file.Fd())) {
		p.out = nil
	}
	defer p.clear()
	work(ctx, p.report)
}

// progress is a line on a terminal that says how far some work is. Reports come
// from one goroutine.
type progress struct {
	what  string
	out   io.Writer // nil where nobody watches
	start time.Time
	last  time.Time
	shown bool
}

func (p *progress) report(done, total int) {
	now := time.Now()
	if p.out == nil || now.Sub(p.start) < patience || now.Sub(p.last) < patience/5 {
		return
	}
	p.last, p.shown = now, true
	fmt.Fprintf(p.out, "\r\x1b[K%s: %d", p.what, done)
	if total > 0 {
		fmt.Fprintf(p.out, " of %d", total)
	}
}

// clear takes the line away.
func (p *progress) clear() {
	if p.shown {
		fmt.Fprint(p.out, "\r\x1b[K")
	}
}
