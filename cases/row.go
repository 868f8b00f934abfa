package cases

import (
	"boremend/engine"
	"boremend/engine/document"
	"boremend/engine/quantity"
)

// Row is one bore of a batch, or what is wrong where one should be.
type Row struct {
	File     string
	Line     int // 0 where the place is the file as a whole
	Job      string
	Bore     string
	Units    quantity.System
	Findings engine.Findings
	Problems document.Problems
}

// Piece is a part of a batch that has been read and not yet decoded: a record
// of a table, a line, or the name of a job file.
type Piece struct {
	Line    int
	Text    string
	Problem document.Problem // why it cannot be decoded, if it says anything
}

// Batch is a stream of bores. Reading it is quick and serves one goroutine;
// decoding takes most of the time and can be shared out. No more than one piece
// is held at a time.
type Batch interface {
	// Next returns the next piece, and io.EOF after the last one. Any other error
	// ends the batch as well.
	Next() (Piece, error)
	// Waiting reports whether the next piece has yet to come from outside.
	Waiting() bool
	// Decoder returns what decodes pieces, for one goroutine.
	Decoder() Decoder
}

// Decoder turns a piece into the bores in it.
type Decoder interface {
	Decode(p Piece) []Row
}

// faulty is the row of a piece that cannot be decoded.
func faulty(file string, p Piece) []Row {
	return []Row{{File: file, Line: p.Line, Problems: document.Problems{p.Problem}}}
}
