package main

import (
	"boremend/engine/document"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// partFile is a file that is being written beside the one whose place it takes
// when it is whole. Until then, whoever looks at the name finds what was there.
type partFile struct{ *os.File }

// newPartFile begins to write a file. What an earlier run may have left of it is
// taken away first.
func newPartFile(path string) (*partFile, error) {
	part := filepath.Join(filepath.Dir(path), "."+filepath.Base(path)+".part")
	err := os.Remove(part)
	if err == nil || errors.Is(err, fs.ErrNotExist) {
		var f *os.File
		if f, err = os.OpenFile(part, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644); err == nil {
			return &partFile{f}, nil
		}
	}
	return nil, useError{path + " cannot be written: " + document.Cause(err).Error(), whereToWrite}
}

// whereToWrite is the remedy where a file cannot be written.
const whereToWrite = "choose a folder that is there, has room and can be written to; what was there is as it was"

// keep sees the file safely on the disk and gives it the name.
func (p *partFile) keep(as string) error {
	err := errors.Join(p.Sync(), p.Close())
	if err == nil {
		err = os.Rename(p.Name(), as)
	}
	if err != nil {
		return p.failed(as, err)
	}
	return nil
}

// failed takes away what has been written, and says why.
func (p *partFile) failed(path string, err error) error {
	says := document.Cause(err).Error()
	if left := p.drop(); left != nil {
		says += "; and " + p.Name() + " is left: " + document.Cause(left).Error()
	}
	return useError{path + " cannot be written: " + says, whereToWrite}
}

// drop takes away what has been written, if it is still there.
func (p *partFile) drop() error {
	_ = p.Close() // what is taken away need not be whole
	if err := os.Remove(p.Name()); !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return nil
}
