// Package photo makes a technician's photographs fit for paper: upright, no
// larger than print needs, and without the place, time and camera that a file
// carries along. Every picture is decoded and encoded anew, so nothing of the file
// but its picture comes through, and the same file gives the same bytes.
//
// A file is judged before it is decoded, by its length and by the size that its
// head claims: a small file can claim a picture that fills all memory. It opens no
// file outside the folder it is given.
package photo

import (
	"boremend/engine/document"
	"bytes"
	"errors"
	"fmt"
	"image"
	"image/jpeg"
	"image/png"
	"io"
	"io/fs"
	"path"
	"strings"
)

// Photo is a photograph ready to be placed. JPEG holds it re-encoded.
type Photo struct {
	JPEG          []byte
	Width, Height int // in pixels
}

// What a photograph may be, and what becomes of it.
const (
	mostBytes  = 40 << 20
	mostPixels = 40_000_000 // decoded that is up to half a gigabyte
	mostSide   = 20_000
	longSide   = 1600 // after scaling down: 300 dots per inch on 135 mm
	quality    = 85
)

// Refusal says why a photograph cannot be placed, and what would be right.
type Refusal struct{ Name, Says, Remedy string }

// Error writes the file, what is wrong, and what would be right.
func (r *Refusal) Error() string {
	return fmt.Sprintf("photograph %q %s (%s)", r.Name, r.Says, r.Remedy)
}

// Open reads the photograph called name from the folder of the job (os.OpenRoot
// of it, then FS, which no link leads out of), and makes it fit. An error is a
// Refusal.
func Open(folder fs.FS, name string) (Photo, error) {
	data, err := read(folder, name)
	if err != nil {
		return Photo{}, err
	}
	return fit(name, data)
}

// read takes the bytes of a file that is not too long.
func read(folder fs.FS, name string) ([]byte, error) {
	refuse := func(says, remedy string) ([]byte, error) { return nil, &Refusal{name, says, remedy} }
	const inside = "put it beside the job file or in a folder below it"
	if !fs.ValidPath(name) {
		return refuse("is not the name of a file in the folder of the job", inside)
	}
	// A pipe or a device would keep the reader waiting, so it is not opened at all.
	info, err := fs.Stat(folder, name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return refuse("is not there", inside+", or correct its name")
	case err != nil:
		return refuse("cannot be opened: "+document.Cause(err).Error(), inside+" that may be read")
	case !info.Mode().IsRegular():
		return refuse("is not a file", "name the photograph itself")
	case info.Size() > mostBytes:
		return refuse(fmt.Sprintf("is %d MB long, more than the %d MB that a photograph may have", info.Size()>>20, mostBytes>>20), "save it smaller")
	}
	f, err := folder.Open(name)
	if err != nil {
		return refuse("cannot be opened: "+document.Cause(err).Error(), inside+" that may be read")
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, mostBytes+1))
	switch {
	case err != nil:
		return refuse("cannot be read: "+document.Cause(err).Error(), "copy it again")
	case len(data) > mostBytes: // it grew while it was read
		return refuse(fmt.Sprintf("is longer than the %d MB that a photograph may have", mostBytes>>20), "save it smaller")
	case len(data) == 0:
		return refuse("is empty", "copy it again from the camera")
	}
	return data, nil
}

// kind is a way to store pictures.
type kind struct {
	name    string
	endings []string
	starts  string
	config  func(io.Reader) (image.Config, error)
	decode  func(io.Reader) (image.Image, error)
}

func kinds() []kind {
	return []kind{
		{"JPEG", []string{".jpg", ".jpeg"}, "\xff\xd8\xff", jpeg.DecodeConfig, jpeg.Decode},
		{"PNG", []string{".png"}, "\x89PNG\r\n\x1a\n", png.DecodeConfig, png.Decode},
	}
}

// fit decodes, turns, scales and encodes a photograph.
func fit(name string, data []byte) (Photo, error) {
	refuse := func(says, remedy string) (Photo, error) { return Photo{}, &Refusal{name, says, remedy} }
	k, err := kindOf(name, data)
	if err != nil {
		return Photo{}, err
	}
	head, err := k.config(bytes.NewReader(data))
	if err != nil {
		return refuse("has a head that makes no sense, so it is damaged or no "+k.name, "copy it again from the camera, or save it as JPEG")
	}
	if w, h := head.Width, head.Height; w < 1 || h < 1 || w > mostSide || h > mostSide || w*h > mostPixels {
		return refuse(fmt.Sprintf("says that it is %d by %d dots large; at most %d million dots and %d a side are taken", w, h, mostPixels/1_000_000, mostSide), "save it smaller")
	}
	picture, err := k.decode(bytes.NewReader(data))
	if err != nil {
		return refuse("is cut off or damaged", "copy it again from the camera")
	}
	turned := turn(shrink(picture), orientation(data))
	var out bytes.Buffer
	if err := jpeg.Encode(&out, turned, &jpeg.Options{Quality: quality}); err != nil {
		return refuse("cannot be encoded: "+err.Error(), "leave it out")
	}
	return Photo{JPEG: out.Bytes(), Width: turned.Bounds().Dx(), Height: turned.Bounds().Dy()}, nil
}

// kindOf knows a file by its first bytes, and wants its name to agree.
func kindOf(name string, data []byte) (kind, error) {
	ending := strings.ToLower(path.Ext(name))
	for _, k := range kinds() {
		if !strings.HasPrefix(string(data[:min(len(data), 8)]), k.starts) {
			continue
		}
		for _, e := range k.endings {
			if e == ending {
				return k, nil
			}
		}
		return kind{}, &Refusal{name, "is a " + k.name + " by its content and not by its name", "rename it to end in " + k.endings[0]}
	}
	return kind{}, &Refusal{name, "is neither a JPEG nor a PNG, whatever its name says", "save it as JPEG; phones call that the compatible format"}
}
