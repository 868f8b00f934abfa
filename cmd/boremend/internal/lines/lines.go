// Package lines writes advice one line a bore, as CSV for a spreadsheet or as
// JSON lines. It only renders: what it writes stands in the values it is given.
package lines

import (
	"boremend/engine"
	"boremend/engine/document"
)

// Line is one bore with its advice, or with what is wrong.
type Line struct {
	File     string
	Line     int // 0 where the file as a whole is meant
	Job      string
	Bore     string
	Advice   *engine.Brief // nil where there are problems
	Problems document.Problems
}

// Writer writes lines.
type Writer interface {
	Write(l Line) error
	// Flush hands everything on.
	Flush() error
}
