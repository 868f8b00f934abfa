package document

import (
	"errors"
	"io/fs"
	"os"
)

// Cause is what the system said of a file, without the call and the path that its
// error repeats. Of errors that were joined it is the cause of each.
func Cause(err error) error {
	var path *fs.PathError
	var link *os.LinkError
	if joined, ok := err.(interface{ Unwrap() []error }); ok {
		var causes []error
		for _, e := range joined.Unwrap() {
			causes = append(causes, Cause(e))
		}
		return errors.Join(causes...)
	}
	switch {
	case errors.As(err, &path):
		return path.Err
	case errors.As(err, &link):
		return link.Err
	}
	return err
}
