package main

import (
	"bytes"
	"errors"
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
	part := filepath.Join(filepath.Dir(path), "."+filepath.Base(path)+".part")
	err := writeWhole(part, text)
	if err == nil {
		err = os.Rename(part, path)
	}
	if err == nil {
		return nil
	}
	says := cause(err)
	if left := os.Remove(part); left != nil && !errors.Is(left, fs.ErrNotExist) {
		says += "; and " + part + " is left: " + cause(left)
	}
	return useError{path + " cannot be written: " + says, "choose a folder that is there, has room and can be written to; what was there is as it was"}
}

// writeWhole writes a new file and sees it safely on the disk. What an earlier
// run may have left under its name is taken away first.
func writeWhole(path string, text []byte) error {
	if err := os.Remove(path); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	_, err = f.Write(text)
	return errors.Join(err, f.Sync(), f.Close())
}

// cause is what the system said, without the call that it was said to.
func cause(err error) string {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err.Error()
	}
	return err.Error()
}
