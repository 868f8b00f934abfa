package cases

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"boremend/engine"
	"boremend/engine/document"
)

// Folder is a batch of job files: those in a folder and below it, in the order of
// their names.
type Folder struct {
	book  *engine.Rulebook
	paths []string
}

// OpenFolder lists the job files in a folder. Files and folders whose name begins
// with a dot are passed over.
func OpenFolder(dir string, book *engine.Rulebook) (*Folder, error) {
	f := &Folder{book: book}
	var problems document.Problems
	err := filepath.WalkDir(dir, func(path string, entry fs.DirEntry, err error) error {
		hidden := path != dir && strings.HasPrefix(filepath.Base(path), ".")
		switch {
		case err != nil:
			problems = append(problems, document.Problem{File: path, Says: "cannot be opened: " + document.Cause(err).Error()})
		case hidden && entry.IsDir():
			return fs.SkipDir
		case !hidden && !entry.IsDir() && isJobFile(path):
			f.paths = append(f.paths, path)
		}
		return nil
	})
	if err = errors.Join(err, problems.Err()); err != nil {
		return nil, err
	}
	if len(f.paths) == 0 {
		return nil, document.Problems{{File: dir, Says: "holds no job file", Remedy: "job files end in .yaml"}}
	}
	return f, nil
}

func isJobFile(path string) bool {
	return strings.HasSuffix(path, ".yaml") || strings.HasSuffix(path, ".yml")
}

// Next returns the next job file by its name.
func (f *Folder) Next() (Piece, error) {
	if len(f.paths) == 0 {
		return Piece{}, io.EOF
	}
	p := Piece{Text: f.paths[0]}
	f.paths = f.paths[1:]
	return p, nil
}

// Waiting is false: the names are all there.
func (f *Folder) Waiting() bool { return false }

// Decoder returns what reads job files.
func (f *Folder) Decoder() Decoder { return jobDecoder{f.book} }

type jobDecoder struct{ book *engine.Rulebook }

// Decode reads one job file. One with mistakes is one row without advice.
func (d jobDecoder) Decode(p Piece) []Row {
	file, _ := document.Open(os.DirFS(filepath.Dir(p.Text)), filepath.Base(p.Text), p.Text)
	r := &reader{File: file, book: d.book, job: &Job{}}
	if file.Root != nil {
		r.read()
	}
	if problems := file.Problems(); len(problems) > 0 {
		return []Row{{File: p.Text, Job: r.job.Name, Problems: problems}}
	}
	var rows []Row
	for _, b := range r.job.Bores {
		rows = append(rows, Row{File: p.Text, Job: r.job.Name, Bore: b.Name, Units: r.job.Units, Findings: b.Findings})
	}
	return rows
}

var _ Batch = (*Folder)(nil)
