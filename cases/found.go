package cases

import (
	"io/fs"
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

// ReadFound reads all job files of a folder and below, testdata aside, in the
// order of their names. Expectations are left alone: they may name rules that
// this rulebook does not have. shown is the folder's name in messages.
func ReadFound(fsys fs.FS, shown string, book *engine.Rulebook) ([]Found, error) {
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
