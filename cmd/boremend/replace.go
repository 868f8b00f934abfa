package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// mayReplace refuses to write over a file that does not bear the mark of what
// would take its place.
func mayReplace(path, mark string) error {
	info, err := os.Lstat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return useError{path + " cannot be written: " + cause(err), "look at the folder"}
	case !info.Mode().IsRegular():
		return useError{path + " is there already and is no plain file", "choose another folder with --out"}
	}
	there, err := os.ReadFile(path)
	if err != nil {
		return useError{path + " cannot be looked at: " + cause(err), "choose another folder with --out"}
	}
	if !bytes.Contains(there, []byte(mark)) {
		return useError{path + " is there already and is not a paper of this job", "move it away, or choose another folder with --out"}
	}
	return nil
}

// replaceFile writes a file so that whoever looks at its name finds the old one
// or the new one whole, whatever happens meanwhile.
func replaceFile(path string, text []byte) error {
	part, err := os.CreateTemp(filepath.Dir(path), ".boremend-*.part")
	if err != nil {
		return useError{path + " cannot be written: " + cause(err), "choose a folder that is there and can be written to"}
	}
	_, err = part.Write(text)
	for _, step := range []func() error{func() error { return part.Chmod(0o644) }, part.Sync, part.Close} {
		err = errors.Join(err, step())
	}
	if err == nil {
		err = os.Rename(part.Name(), path)
	}
	if err != nil {
		err = errors.Join(err, os.Remove(part.Name()))
		return useError{fmt.Sprintf("%s cannot be written: %s", path, cause(err)), "make room or choose another folder; what was there is as it was"}
	}
	return nil
}

// cause is what the system said, without the call that it was said to.
func cause(err error) string {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err.Error()
	}
	return err.Error()
}
