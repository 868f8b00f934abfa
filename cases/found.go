package cases

import (
	"io/fs"
	"os"
	"path"

	"boremend/engine"
	"boremend/engine/document"
)

// Found is one job file as a rulebook reads it: what was found, without what a
// worked case expects. Either Job is there or Problems say why not.
type Found struct {
	File     string
	Job      *Job
	Problems document.Problems
}

// FoundShipped reads the worked cases that are built into the program.
func FoundShipped(book *engine.Rulebook) ([]Found, error) {
	return readFound(shipped, ShippedName, book)
}

// FoundIn reads all job files of a folder and below, testdata aside, in the order
// of their names. Expectations are left alone: they may name rules that this
// rulebook does not have. The error says why the folder cannot be read.
func FoundIn(dir string, book *engine.Rulebook) ([]Found, error) {
	return readFound(os.DirFS(dir), dir, book)
}

func readFound(fsys fs.FS, shown string, book *engine.Rulebook) ([]Found, error) {
	var list []Found
	err := fs.WalkDir(fsys, ".", func(name string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && entry.Name() == "testdata":
			return fs.SkipDir
		case entry.IsDir() || path.Ext(name) != ".yaml" && path.Ext(name) != ".yml":
			return nil
		}
		f, _ := document.Open(fsys, name, path.Join(shown, name))
		r := &reader{File: f, book: book, job: &Job{}, foundOnly: true}
		if f.Root != nil {
			r.read()
		}
		list = append(list, Found{f.Name, r.job, f.Problems()})
		return nil
	})
	return list, err
}
