package main

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"os"
	"strings"
	"syscall"
	"testing"
)

// TestBatchStops ends a batch that waits for more rows: what has been read is
// answered, and nothing else is said.
func TestBatchStops(t *testing.T) {
	in, rows := io.Pipe()
	answers, out := io.Pipe()
	var errOut bytes.Buffer
	status := make(chan int)
	go func() { status <- run([]string{"batch", "-", "--from", "csv", "--quick"}, in, out, &errOut) }()
	go fmt.Fprint(rows, "job,bore,crack\nJ-1,left,none_tested\nJ-2,right,none_tested\n")
	got := bufio.NewScanner(answers)
	for i, want := range []string{"job,bore,", "J-1,left,", "J-2,right,"} {
		if !got.Scan() || !strings.HasPrefix(got.Text(), want) {
			t.Fatalf("line %d: %q", i, got.Text())
		}
	}
	if err := syscall.Kill(os.Getpid(), syscall.SIGINT); err != nil {
		t.Fatal(err)
	}
	if s := <-status; s != exitShort || errOut.String() != "boremend: stopped after 2 lines\n" {
		t.Errorf("status %d, %q", s, errOut.String())
	}
}
