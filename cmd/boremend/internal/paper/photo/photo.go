// Package photo makes a technician's photographs fit for paper: upright, no
// larger than print needs, and without the place, time and camera that a file
// carries along. It opens no file outside the folder it is given.
package photo

import (
	"errors"
	"io/fs"
)

// Photo is a photograph ready to be placed. JPEG holds it re-encoded.
type Photo struct {
	JPEG          []byte
	Width, Height int // in pixels
}

// Open reads the photograph called name from the folder of the job (os.OpenRoot
// of it, then FS), and makes it fit. The error says what is wrong with the file
// and what would be right.
func Open(folder fs.FS, name string) (Photo, error) { return Photo{}, errors.New("not made yet") }
