package document_test

import (
	"errors"
	"fmt"
	"os"
	"testing"

	"boremend/engine/document"
)

func TestCause(t *testing.T) {
	_, opening := os.Open("nowhere")
	renaming := os.Rename("nowhere", "elsewhere")
	for _, c := range []struct {
		err  error
		says string
	}{
		{opening, "no such file or directory"},
		{renaming, "no such file or directory"},
		{fmt.Errorf("reading the job: %w", opening), "no such file or directory"},
		{errors.New("out of paper"), "out of paper"},
		{errors.Join(errors.New("out of paper"), opening), "out of paper\nno such file or directory"},
	} {
		if says := document.Cause(c.err).Error(); says != c.says {
			t.Errorf("%q is said of %v, want %q", says, c.err, c.says)
		}
	}
}
