package main

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// partFile is a file that is being written beside the one whose place it takes
// when it is whole. Until then, whoever looks at the name finds what was there.
type partFile struct {
	*os.File
	path string
}

// newPartFile begins to write a file.
func newPartFile(path string) (*partFile, error) {
	if info, err := os.Lstat(path); err == nil && !info.Mode().IsRegular() {
		return nil, useError{path + " is there already and is no plain file", "choose another name"}
	}
	f, err := os.CreateTemp(filepath.Dir(path), ".boremend-*.part")
	if err != nil {
		return nil, useError{path + " cannot be written: " + systemSays(err), "choose a folder that is there and can be written to"}
	}
	return &partFile{f, path}, nil
}

// keep sees the file safely on the disk and gives it the name.
func (p *partFile) keep(as string) error {
	err := errors.Join(p.Chmod(0o644), p.Sync(), p.Close())
	if err == nil {
		err = os.Rename(p.Name(), as)
	}
	if err != nil {
		p.drop()
		return useError{as + " cannot be written: " + systemSays(err), "make room or choose another folder; what was there is as it was"}
	}
	return nil
}

// drop takes away what has been written.
func (p *partFile) drop() {
	// Closing twice and removing what is not there change nothing.
	_ = p.Close()
	_ = os.Remove(p.Name())
}

// systemSays is what the system said, without the call that it was said to.
func systemSays(err error) string {
	var path *fs.PathError
	var link *os.LinkError
	switch {
	case errors.As(err, &path):
		return path.Err.Error()
	case errors.As(err, &link):
		return link.Err.Error()
	}
	return err.Error()
}
