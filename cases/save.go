package cases

import (
	"boremend/engine/document"
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
)

// SaveError says why a job file could not be saved. The file itself is as it
// was before.
type SaveError struct {
	Path, Says, Remedy string
}

// Error writes the file, what is wrong, and what would be right.
func (e *SaveError) Error() string {
	return fmt.Sprintf("%s cannot be saved: %s (%s)", e.Path, e.Says, e.Remedy)
}

// newFileMode is what a new job file may be used for, less what the person's
// own setting takes away.
const newFileMode = 0o644

// Save puts the draft into its file. The new text is written beside it and
// takes its place in one step, so that a session that is cut off at any moment
// leaves the old file or the new one. A file that somebody else has changed or
// made meanwhile is left alone.
func (d *Draft) Save() error {
	mode, err := d.mayReplace()
	if err != nil {
		return err
	}
	if d.made && bytes.Equal(d.text, d.file) {
		return nil
	}
	part := filepath.Join(filepath.Dir(d.path), "."+filepath.Base(d.path)+".part")
	if err := writePart(part, d.text, mode, d.made); err != nil {
		return d.refuse(document.Cause(err).Error(), "make room or choose a folder that can be written to; the file is as it was")
	}
	if err := os.Rename(part, d.path); err != nil {
		return d.refuse(errors.Join(document.Cause(err), os.Remove(part)).Error(), "the file is as it was")
	}
	d.file, d.made = d.text, true
	if err := syncFolder(filepath.Dir(d.path)); err != nil {
		return d.refuse(document.Cause(err).Error(), "look at the disk")
	}
	return nil
}

func (d *Draft) refuse(says, remedy string) error { return &SaveError{d.path, says, remedy} }

// mayReplace refuses to touch a file that is not the one the draft came from.
func (d *Draft) mayReplace() (fs.FileMode, error) {
	info, err := os.Lstat(d.path)
	switch {
	case errors.Is(err, fs.ErrNotExist) && !d.made:
		return newFileMode, nil
	case errors.Is(err, fs.ErrNotExist):
		d.made = false // somebody took it away: what was answered is still here
		return newFileMode, nil
	case err != nil:
		return 0, d.refuse(document.Cause(err).Error(), "look at the folder")
	case !d.made:
		return 0, d.refuse("a file of that name is there already", "choose another name")
	case info.Mode().Perm()&0o200 == 0:
		return 0, d.refuse("the file is write-protected", "allow writing, or work on a copy")
	}
	now, err := os.ReadFile(d.path)
	if err != nil {
		return 0, d.refuse(document.Cause(err).Error(), "look at the file")
	}
	if !bytes.Equal(now, d.file) {
		return 0, d.refuse("somebody else has changed it meanwhile", "start again from the file as it is now")
	}
	return info.Mode().Perm(), nil
}

// writePart writes a file anew and sees it safely on the disk; what is left of
// one that failed is taken away. A mode that is not to be had exactly is subject
// to the person's own setting.
func writePart(path string, text []byte, mode fs.FileMode, exactly bool) error {
	if err := os.Remove(path); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return err
	}
	if exactly {
		err = f.Chmod(mode)
	}
	if err == nil {
		_, err = f.Write(text)
	}
	if err == nil {
		err = f.Sync()
	}
	if closing := f.Close(); err == nil {
		err = closing
	}
	if err != nil {
		if left := os.Remove(path); left != nil {
			return errors.Join(document.Cause(err), document.Cause(left))
		}
	}
	return err
}

// syncFolder sees a new name in a folder safely on the disk, on systems where
// a folder can be opened.
func syncFolder(path string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	folder, err := os.Open(path)
	if err != nil {
		return err
	}
	return errors.Join(folder.Sync(), folder.Close())
}
