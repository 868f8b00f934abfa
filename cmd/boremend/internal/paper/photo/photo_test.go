package photo

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
)

var (
	red   = color.RGBA{200, 0, 0, 255}
	green = color.RGBA{0, 160, 0, 255}
	blue  = color.RGBA{0, 0, 200, 255}
	black = color.RGBA{0, 0, 0, 255}
)

// quarters is a picture with a colour in each quarter: red, green over blue, black.
func quarters(w, h int) image.Image {
	p := image.NewRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w {
			c := [2][2]color.RGBA{{red, green}, {blue, black}}[2*y/h][2*x/w]
			p.SetRGBA(x, y, c)
		}
	}
	return p
}

const secret = "51 deg 30 N, a firm's yard"

// exif is a TIFF structure with an orientation, and a secret behind it.
func exif(order binary.ByteOrder, orientation int) []byte {
	out := []byte("II*\x00")
	if order == binary.ByteOrder(binary.BigEndian) {
		out = []byte("MM\x00*")
	}
	var b [4]byte
	put2 := func(v int) { order.PutUint16(b[:], uint16(v)); out = append(out, b[:2]...) }
	put4 := func(v int) { order.PutUint32(b[:], uint32(v)); out = append(out, b[:4]...) }
	put4(8)
	put2(2)
	put2(271) // maker, before the tag that counts
	put2(2)
	put4(4)
	out = append(out, "ABC\x00"...)
	put2(274)
	put2(3)
	put4(1)
	put2(orientation)
	put2(0)
	put4(0)
	return append(out, secret...)
}

func jpegOf(t testing.TB, p image.Image, segments ...[]byte) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := jpeg.Encode(&b, p, &jpeg.Options{Quality: 95}); err != nil {
		t.Fatal(err)
	}
	out := []byte{0xff, 0xd8}
	for _, s := range segments {
		out = append(out, s...)
	}
	return append(out, b.Bytes()[2:]...)
}

// segment is a JPEG segment.
func segment(marker byte, data string) []byte {
	return append(binary.BigEndian.AppendUint16([]byte{0xff, marker}, uint16(len(data)+2)), data...)
}

func exifSegment(order binary.ByteOrder, orientation int) []byte {
	return segment(0xe1, "Exif\x00\x00"+string(exif(order, orientation)))
}

// chunk is a PNG chunk.
func chunk(name, data string) []byte {
	out := append(binary.BigEndian.AppendUint32(nil, uint32(len(data))), name+data...)
	return binary.BigEndian.AppendUint32(out, crc32.ChecksumIEEE(out[4:]))
}

// pngOf puts chunks behind the head of a picture.
func pngOf(t testing.TB, p image.Image, chunks ...[]byte) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := png.Encode(&b, p); err != nil {
		t.Fatal(err)
	}
	const head = 8 + 25
	out := bytes.Clone(b.Bytes()[:head])
	for _, c := range chunks {
		out = append(out, c...)
	}
	return append(out, b.Bytes()[head:]...)
}

func open(data []byte, name string) (Photo, error) {
	return Open(fstest.MapFS{name: {Data: data}}, name)
}

func decoded(t *testing.T, p Photo) image.Image {
	t.Helper()
	picture, err := jpeg.Decode(bytes.NewReader(p.JPEG))
	if err != nil {
		t.Fatal(err)
	}
	if b := picture.Bounds(); b.Dx() != p.Width || b.Dy() != p.Height {
		t.Errorf("says %d by %d, is %v", p.Width, p.Height, b)
	}
	return picture
}

// looks reports whether a dot has about a colour.
func looks(c color.Color, want color.RGBA) bool {
	r, g, b, _ := c.RGBA()
	near := func(a uint32, b uint8) bool { return max(int(a>>8), int(b))-min(int(a>>8), int(b)) < 40 }
	return near(r, want.R) && near(g, want.G) && near(b, want.B)
}

// TestOrientations turns a picture by each of the eight orientations. Where row 0
// and column 0 of the stored picture belong is from the table of the orientation
// tag in Exif 2.3 (JEITA CP-3451C, 4.6.4 A), from memory.
func TestOrientations(t *testing.T) {
	const w, h = 64, 32
	for orientation, sides := range []struct{ row0, column0 string }{
		1: {"top", "left"}, 2: {"top", "right"}, 3: {"bottom", "right"}, 4: {"bottom", "left"},
		5: {"left", "top"}, 6: {"right", "top"}, 7: {"right", "bottom"}, 8: {"left", "bottom"},
	} {
		if orientation == 0 {
			continue
		}
		for _, order := range []binary.ByteOrder{binary.LittleEndian, binary.BigEndian} {
			for name, data := range map[string][]byte{
				"a.jpg":  jpegOf(t, quarters(w, h), segment(0xe0, "JFIF\x00 and so on"), exifSegment(order, orientation)),
				"b.jpeg": jpegOf(t, quarters(w, h), []byte{0xff, 0xff}, exifSegment(order, orientation)[1:]),
				"c.png":  pngOf(t, quarters(w, h), chunk("eXIf", string(exif(order, orientation)))),
			} {
				t.Run(fmt.Sprintf("%d %s %v", orientation, name, order), func(t *testing.T) {
					p, err := open(data, name)
					if err != nil {
						t.Fatal(err)
					}
					wantW, wantH := w, h
					if orientation >= 5 {
						wantW, wantH = h, w
					}
					if p.Width != wantW || p.Height != wantH {
						t.Fatalf("is %d by %d, want %d by %d", p.Width, p.Height, wantW, wantH)
					}
					picture := decoded(t, p)
					opposite := map[string]string{"top": "bottom", "bottom": "top", "left": "right", "right": "left"}
					for corner, want := range map[[2]string]color.RGBA{
						{sides.row0, sides.column0}:                     red,
						{sides.row0, opposite[sides.column0]}:           green,
						{opposite[sides.row0], sides.column0}:           blue,
						{opposite[sides.row0], opposite[sides.column0]}: black,
					} {
						x, y := wantW/4, wantH/4
						if corner[0] == "right" || corner[1] == "right" {
							x = wantW * 3 / 4
						}
						if corner[0] == "bottom" || corner[1] == "bottom" {
							y = wantH * 3 / 4
						}
						if got := picture.At(x, y); !looks(got, want) {
							t.Errorf("at %v lies %v, want %v", corner, got, want)
						}
					}
				})
			}
		}
	}
}

// Nonsense in the tag leaves the picture as it is stored.
func TestNonsenseOrientation(t *testing.T) {
	whole := exif(binary.LittleEndian, 6)
	for name, tiff := range map[string]string{
		"zero": string(exif(binary.LittleEndian, 0)), "nine": string(exif(binary.LittleEndian, 9)), "empty": "", "cut": string(whole[:20]),
		"no order": "XX*\x00" + string(whole[4:]), "far directory": "II*\x00\xff\xff\xff\xff", "just past": "II*\x00\x08\x00\x00\x00",
	} {
		p, err := open(jpegOf(t, quarters(32, 16), segment(0xe1, "Exif\x00\x00"+tiff)), "a.jpg")
		if err != nil || p.Width != 32 {
			t.Errorf("%s: %d wide, %v", name, p.Width, err)
		}
	}
}

// Nothing of a file but its picture comes through.
func TestNothingButThePicture(t *testing.T) {
	for name, data := range map[string][]byte{
		"a.jpg": jpegOf(t, quarters(64, 32), exifSegment(binary.BigEndian, 3), segment(0xe1, "http://ns.adobe.com/xap/1.0/\x00"+secret), segment(0xe2, "ICC_PROFILE\x00"+secret), segment(0xed, secret), segment(0xfe, secret)),
		"b.png": pngOf(t, quarters(64, 32), chunk("eXIf", string(exif(binary.BigEndian, 3))), chunk("tEXt", "Comment\x00"+secret), chunk("iTXt", "XML:com.adobe.xmp\x00\x00\x00\x00\x00"+secret)),
		"c.jpg": append(jpegOf(t, quarters(64, 32)), secret...),
	} {
		if !bytes.Contains(data, []byte(secret)) {
			t.Fatalf("%s: nothing to hide", name)
		}
		p, err := open(data, name)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		for _, word := range []string{secret, "Exif", "adobe", "ICC"} {
			if bytes.Contains(p.JPEG, []byte(word)) {
				t.Errorf("%s: %q came through", name, word)
			}
		}
		if again, err := open(data, name); err != nil || !bytes.Equal(again.JPEG, p.JPEG) {
			t.Errorf("%s: other bytes the second time (%v)", name, err)
		}
	}
}

func TestScaling(t *testing.T) {
	for _, tt := range []struct{ w, h, wantW, wantH int }{
		{1, 1, 1, 1}, {1600, 900, 1600, 900}, {3200, 1800, 1600, 900}, {900, 3200, 450, 1600}, {5000, 2, 1600, 1},
	} {
		p, err := open(jpegOf(t, quarters(tt.w, tt.h)), "a.jpg")
		if err != nil || p.Width != tt.wantW || p.Height != tt.wantH {
			t.Errorf("%d by %d became %d by %d (%v), want %d by %d", tt.w, tt.h, p.Width, p.Height, err, tt.wantW, tt.wantH)
		}
	}
	clear, err := open(pngOf(t, image.NewNRGBA(image.Rect(0, 0, 16, 16))), "a.png")
	if err != nil || !looks(decoded(t, clear).At(8, 8), color.RGBA{255, 255, 255, 255}) {
		t.Errorf("what is see-through is not white (%v)", err)
	}
}

// headOfPNG is a picture that claims a size and is nothing else.
func headOfPNG(w, h uint32) []byte {
	size := binary.BigEndian.AppendUint32(binary.BigEndian.AppendUint32(nil, w), h)
	return append([]byte("\x89PNG\r\n\x1a\n"), chunk("IHDR", string(size)+"\x08\x06\x00\x00\x00")...)
}

func headOfJPEG(w, h uint16) []byte {
	size := binary.BigEndian.AppendUint16(binary.BigEndian.AppendUint16([]byte{8}, h), w)
	return append(append([]byte{0xff, 0xd8}, segment(0xe0, "JFIF\x00\x01\x01\x00\x00\x01\x00\x01\x00\x00")...), segment(0xc0, string(size)+"\x03\x01\x11\x00\x02\x11\x00\x03\x11\x00")...)
}

func TestRefusals(t *testing.T) {
	whole, wholePNG := jpegOf(t, quarters(200, 200)), pngOf(t, quarters(200, 200))
	for _, tt := range []struct {
		name, file string
		data       []byte
		want       string
	}{
		{"empty", "a.jpg", nil, "is empty"},
		{"text", "a.jpg", []byte("not a picture"), "is neither a JPEG nor a PNG"},
		{"page", "a.png", []byte("<svg onload=alert(1)>"), "is neither a JPEG nor a PNG"},
		{"phone format", "a.jpg", []byte("\x00\x00\x00\x18ftypheic\x00\x00\x00\x00"), "save it as JPEG"},
		{"PNG called JPEG", "a.jpg", wholePNG, "is a PNG by its content and not by its name (rename it to end in .png)"},
		{"JPEG called PNG", "a.png", whole, "is a JPEG by its content and not by its name (rename it to end in .jpg)"},
		{"cut JPEG", "a.jpg", whole[:len(whole)/2], "is cut off or damaged"},
		{"cut PNG", "a.png", wholePNG[:len(wholePNG)/2], "is cut off or damaged"},
		{"start only", "a.jpg", whole[:3], "has a head that makes no sense"},
		{"head only", "a.png", wholePNG[:20], "has a head that makes no sense"},
		{"huge PNG", "a.png", headOfPNG(60_000, 60_000), "60000 by 60000 dots"},
		{"long PNG", "a.png", headOfPNG(1_000_000_000, 1), "1000000000 by 1 dots"},
		{"huge JPEG", "a.jpg", headOfJPEG(65_000, 65_000), "65000 by 65000 dots"},
		{"large JPEG", "a.jpg", headOfJPEG(8_000, 8_000), "8000 by 8000 dots"},
		{"long file", "a.jpg", append(bytes.Clone(whole), make([]byte, mostBytes)...), "more than the 40 MB"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := open(tt.data, tt.file)
			refused(t, err, tt.want)
		})
	}
}

func refused(t *testing.T, err error, want string) {
	t.Helper()
	var r *Refusal
	if !errors.As(err, &r) || r.Says == "" || r.Remedy == "" {
		t.Fatalf("got %v, want a refusal with a remedy", err)
	}
	if !strings.Contains(err.Error(), want) {
		t.Errorf("got %v, want %q", err, want)
	}
}

// No name and no link leads out of the folder of the job.
func TestNothingOutsideTheFolder(t *testing.T) {
	outside, inside := t.TempDir(), t.TempDir()
	picture := jpegOf(t, quarters(16, 16))
	for _, file := range []string{filepath.Join(outside, "x.jpg"), filepath.Join(inside, "here.jpg")} {
		if err := os.WriteFile(file, picture, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	for link, to := range map[string]string{"out.jpg": filepath.Join(outside, "x.jpg"), "folder": outside, "in.jpg": "here.jpg", "loop.jpg": "loop.jpg"} {
		if err := os.Symlink(to, filepath.Join(inside, link)); err != nil {
			t.Skip("this system makes no links: ", err)
		}
	}
	root, err := os.OpenRoot(inside)
	if err != nil {
		t.Fatal(err)
	}
	defer root.Close()
	for _, good := range []string{"here.jpg", "in.jpg"} {
		if _, err := Open(root.FS(), good); err != nil {
			t.Errorf("%s: %v", good, err)
		}
	}
	for _, bad := range []string{
		"out.jpg", "folder/x.jpg", "loop.jpg", "../" + filepath.Base(outside) + "/x.jpg", filepath.Join(outside, "x.jpg"),
		"", ".", "..", "folder", "./here.jpg", "here.jpg/", "here.jpg/x.jpg", "gone.jpg", "a\x00.jpg",
	} {
		if _, err := Open(root.FS(), bad); err == nil {
			t.Errorf("%q was opened", bad)
		} else {
			refused(t, err, "photograph ")
		}
	}
}

// FuzzOpen: any file is refused with a reason or becomes a picture of its size.
func FuzzOpen(f *testing.F) {
	f.Add(jpegOf(f, quarters(16, 8), exifSegment(binary.LittleEndian, 6)))
	f.Add(pngOf(f, quarters(16, 8), chunk("eXIf", string(exif(binary.BigEndian, 8)))))
	f.Add(headOfPNG(60_000, 60_000))
	f.Add(headOfJPEG(65_000, 65_000))
	f.Fuzz(func(t *testing.T, data []byte) {
		for _, name := range []string{"a.jpg", "a.png"} {
			p, err := open(data, name)
			var r *Refusal
			switch {
			case err == nil:
				if c, err := jpeg.DecodeConfig(bytes.NewReader(p.JPEG)); err != nil || c.Width != p.Width || c.Height != p.Height || max(c.Width, c.Height) > longSide {
					t.Errorf("%d by %d, decodes to %v (%v)", p.Width, p.Height, c, err)
				}
			case !errors.As(err, &r):
				t.Errorf("no refusal: %v", err)
			}
		}
	})
}

// FuzzOrientation: any bytes give one of the eight orientations.
func FuzzOrientation(f *testing.F) {
	f.Add(exif(binary.LittleEndian, 6))
	f.Add(jpegOf(f, quarters(8, 8), exifSegment(binary.BigEndian, 3)))
	f.Fuzz(func(t *testing.T, data []byte) {
		for _, got := range []int{orientation(data), orientationTag(data)} {
			if got < 1 || got > 8 {
				t.Errorf("orientation %d", got)
			}
		}
	})
}
