package main

import (
	"boremend/engine/document"
	"bytes"
	"errors"
	"io/fs"
	"os"
)

// mayReplace refuses to write over a file that does not bear the mark of what
// would take its place.
func mayReplace(path, mark string) error {
	info, err := os.Lstat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return useError{path + " cannot be written: " + document.Cause(err).Error(), "look at the folder"}
	case !info.Mode().IsRegular():
		return useError{path + " is there already and is no plain file", "choose another folder with --out"}
	}
	there, err := os.ReadFile(path)
	if err != nil {
		return useError{path + " cannot be looked at: " + document.Cause(err).Error(), "choose another folder with --out"}
	}
	if !bytes.Contains(there, []byte(mark)) {
		return useError{path + " is there already and is not a paper of this job", "move it away, or choose another folder with --out"}
	}
	return nil
}

// replaceFile writes a file so that whoever looks at its name finds the old one
// or the new one whole, whatever happens meanwhile.
func replaceFile(path string, text []byte) error {
	part, err := newPartFile(path)
	if err != nil {
		return err
	}
	if _, err := part.Write(text); err != nil {
		return part.failed(path, err)
	}
	return part.keep(path)
}
