package document

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Problem is one thing that is wrong in a file, where it is, and what would be
// right. Lines and columns count from 1, columns in characters; zero means
// that the place is not known.
type Problem struct {
	File         string
	Line, Column int
	Says         string
	Remedy       string
}

// Error writes the problem as file:line:col: what is wrong (what would be right).
func (p Problem) Error() string {
	var b strings.Builder
	if p.File != "" {
		b.WriteString(p.File + ":")
		if p.Line > 0 {
			fmt.Fprintf(&b, "%d:", p.Line)
		}
		if p.Line > 0 && p.Column > 0 {
			fmt.Fprintf(&b, "%d:", p.Column)
		}
		b.WriteString(" ")
	}
	b.WriteString(p.Says)
	if p.Remedy != "" {
		b.WriteString(" (" + p.Remedy + ")")
	}
	return b.String()
}

// Problems is everything that is wrong, as one error.
type Problems []Problem

// Error writes one problem a line.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Error()
	}
	return strings.Join(lines, "\n")
}

// Err returns the problems in the order of files and lines, or nil when there are none.
func (ps Problems) Err() error {
	if len(ps) == 0 {
		return nil
	}
	sorted := slices.Clone(ps)
	slices.SortStableFunc(sorted, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column))
	})
	return slices.Compact(sorted)
}
