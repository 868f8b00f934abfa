package main

import (
	"bufio"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"boremend/cases"
	"boremend/engine"
	"boremend/engine/document"
)

// batchStream is a stream of bores with the file to close in the end.
type batchStream struct {
	cases.Batch
	close func() error
}

// openBatch opens a source: a folder, a file or standard input.
func (a *app) openBatch(source string, b batchFlags, book *engine.Rulebook) (batchStream, error) {
	nothing := func() error { return nil }
	if source == "-" {
		if b.from == "" {
			return batchStream{}, useError{"standard input may hold anything", "say --from csv or --from jsonl"}
		}
		stream, err := b.open(a.in, "standard input", b.from, book)
		return batchStream{stream, nothing}, err
	}
	refused := document.Problem{File: source, Line: 1, Column: 1}
	info, err := os.Stat(source)
	if err != nil {
		refused.Says = "cannot be opened: " + document.Cause(err).Error()
		return batchStream{}, document.Problems{refused}
	}
	if info.IsDir() {
		stream, err := cases.OpenFolder(source, book)
		return batchStream{stream, nothing}, err
	}
	from := b.from
	if from == "" {
		from = map[string]string{".csv": csvLines, ".tsv": csvLines, ".txt": csvLines, ".jsonl": jsonLines}[strings.ToLower(filepath.Ext(source))]
	}
	if from == "" {
		return batchStream{}, useError{source + " may hold anything", "say --from csv or --from jsonl; for one job file use boremend advise"}
	}
	file, err := os.Open(source)
	if err != nil {
		refused.Says = "cannot be opened: " + document.Cause(err).Error()
		return batchStream{}, document.Problems{refused}
	}
	stream, err := b.open(file, source, from, book)
	if err != nil {
		return batchStream{}, errors.Join(err, file.Close())
	}
	return batchStream{stream, file.Close}, nil
}

// open begins to read a table or JSON lines.
func (b batchFlags) open(r io.Reader, name, from string, book *engine.Rulebook) (cases.Batch, error) {
	if from == jsonLines {
		return cases.OpenJSONLines(r, name, book)
	}
	decimal := cases.Point
	if b.decimal == "comma" {
		decimal = cases.Comma
	}
	return cases.OpenTable(r, name, book, decimal)
}

// adviceMayReplace refuses to write over the source, and over a file that is no
// advice in lines.
func adviceMayReplace(path, source string) error {
	there, err := os.Lstat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err == nil && !there.Mode().IsRegular():
		return useError{path + " is there already and is no plain file", "choose another name for --out"}
	}
	if from, also := os.Stat(source); err == nil && also == nil && os.SameFile(there, from) {
		return useError{path + " is what is read", "choose another name for --out"}
	}
	f, err := os.Open(path)
	if err != nil {
		return useError{path + " cannot be looked at: " + document.Cause(err).Error(), "choose another name for --out"}
	}
	defer f.Close()
	first, err := bufio.NewReaderSize(io.LimitReader(f, 4096), 4096).ReadString('\n')
	if err != nil && err != io.EOF {
		return useError{path + " cannot be looked at: " + document.Cause(err).Error(), "choose another name for --out"}
	}
	if there.Size() == 0 || strings.HasPrefix(first, "job,bore,advice,") || strings.HasPrefix(first, `{"job":`) && strings.Contains(first, `"rulebook":{`) {
		return nil
	}
	return useError{path + " is there already and holds no advice in lines", "move it away, or choose another name for --out"}
}
