package rules

import (
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"

	"boremend/engine/document"
)

//go:embed overlay
var overlay embed.FS

// titleLine is where a rulebook says whose it is.
var titleLine = regexp.MustCompile(`(?m)^title: (.*)$`)

// newTitle is the title of a copy, and what stands above it. A shop that edits
// a copy must not go on under the name of the house.
const newTitle = `# A copy of the house rulebook, to edit. It stands on its own: new rules of the
# house do not arrive in it. The guide: boremend help rules

title: Our copy of $1   # your name; advice says whose rules it follows`

// NewOverlay makes a folder in which a shop writes only what it does its own
// way, over the house rulebook. It returns the names of the files made.
func NewOverlay(dir string) ([]string, error) {
	files, err := fs.Sub(overlay, "overlay")
	if err != nil {
		return nil, err
	}
	return write(dir, files, nil)
}

// NewCopy makes a folder with a copy of the house rulebook.
func NewCopy(dir string) ([]string, error) {
	return write(dir, house, func(name string, text []byte) []byte {
		if name == "rulebook.yaml" {
			return titleLine.ReplaceAll(text, []byte(newTitle))
		}
		return text
	})
}

// write puts files into a folder that is not there yet or is empty. They are
// written beside it and take its place in one step: all of them, or none.
func write(dir string, files fs.FS, edit func(name string, text []byte) []byte) (names []string, err error) {
	dir = filepath.Clean(dir)
	refuse := func(says, remedy string) error {
		return document.Problems{{File: dir, Says: says, Remedy: remedy}}
	}
	if err := free(dir); err != nil {
		return nil, refuse(err.Error(), "name a folder that is not there yet")
	}
	beside, err := os.MkdirTemp(filepath.Dir(dir), ".rulebook-")
	if err != nil {
		return nil, refuse("cannot be made: "+document.Cause(err).Error(), "name a place where you may write")
	}
	defer func() { err = errors.Join(err, os.RemoveAll(beside)) }()
	made := filepath.Join(beside, "new")
	err = fs.WalkDir(files, ".", func(name string, entry fs.DirEntry, err error) error {
		switch to := filepath.Join(made, filepath.FromSlash(name)); {
		case err != nil:
			return err
		case entry.IsDir():
			return os.Mkdir(to, 0o777)
		default:
			names = append(names, path.Clean(name))
			return copyFile(files, name, to, edit)
		}
	})
	if err == nil {
		err = takePlace(made, dir)
	}
	if err != nil {
		return nil, refuse("cannot be made: "+document.Cause(err).Error(), "make room, or name a place where you may write; nothing was changed")
	}
	return names, nil
}

// free says what stands in the way of making a folder.
func free(dir string) error {
	info, err := os.Lstat(dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return fmt.Errorf("cannot be looked at: %w", document.Cause(err))
	case !info.IsDir():
		return errors.New("is there already and is no folder")
	}
	entries, err := os.ReadDir(dir)
	switch {
	case err != nil:
		return fmt.Errorf("cannot be looked at: %w", document.Cause(err))
	case len(entries) > 0:
		return errors.New("is there already and is not empty")
	}
	if here, err := os.Stat("."); err == nil && os.SameFile(here, info) {
		return errors.New("is the folder that you are in") // it would be taken away from under you
	}
	return nil
}

func copyFile(files fs.FS, name, to string, edit func(name string, text []byte) []byte) error {
	text, err := fs.ReadFile(files, name)
	if err != nil {
		return err
	}
	if edit != nil {
		text = edit(name, text)
	}
	f, err := os.OpenFile(to, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	_, err = f.Write(text)
	if err == nil {
		err = f.Sync()
	}
	if closing := f.Close(); err == nil {
		err = closing
	}
	return err
}

// takePlace gives a folder the name dir. Renaming never replaces a folder that
// somebody has filled meanwhile; an empty one is taken away first, and put back
// where the renaming fails, because not every system replaces it.
func takePlace(made, dir string) error {
	info, err := os.Lstat(dir)
	there := err == nil && info.IsDir()
	if there {
		err = os.Remove(dir) // fails if it is not empty
	}
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	err = os.Rename(made, dir)
	if err != nil && there {
		err = errors.Join(document.Cause(err), os.Mkdir(dir, 0o777))
	}
	return err
}
