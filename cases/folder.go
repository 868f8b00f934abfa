package cases

import (
	"embed"
	"errors"
	"io/fs"
	"os"
	"path"
	"strings"

	"boremend/engine"
	"boremend/engine/document"
)

//go:embed *.yaml edges/*.yaml
var shipped embed.FS

// ShippedName stands for the folder of the shipped cases in messages.
const ShippedName = "cases"

// File is a job with the file that it came from.
type File struct {
	Path string
	*Job
}

// Shipped loads the worked cases that are built into the program.
func Shipped(book *engine.Rulebook) ([]File, error) { return loadAll(shipped, ShippedName, book) }

// LoadFolder loads every job file in a folder and below, in the order of their
// names. The error holds the problems of all of them.
func LoadFolder(dir string, book *engine.Rulebook) ([]File, error) {
	return loadAll(os.DirFS(dir), dir, book)
}

func loadAll(fsys fs.FS, shown string, book *engine.Rulebook) ([]File, error) {
	var files []File
	var problems document.Problems
	err := fs.WalkDir(fsys, ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || !strings.HasSuffix(name, ".yaml") {
			return err
		}
		at := path.Join(shown, name)
		f, _ := document.Open(fsys, name, at)
		job, err := read(f, book)
		var found document.Problems
		switch {
		case errors.As(err, &found):
			problems = append(problems, found...)
		case err != nil:
			return err
		default:
			files = append(files, File{at, job})
		}
		return nil
	})
	switch {
	case err != nil:
		problems = append(problems, document.Problem{File: shown, Says: "cannot be read: " + document.Cause(err).Error(), Remedy: "name a folder of job files"})
	case len(files) == 0 && len(problems) == 0:
		problems = append(problems, document.Problem{File: shown, Says: "holds no job file", Remedy: "a job file ends in .yaml"})
	}
	return files, problems.Err()
}
