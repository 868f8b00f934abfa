package draw

import (
	"encoding/base64"
	"fmt"
	"slices"
	"strings"
	"sync"
	"unicode"

	"github.com/go-fonts/dejavu/dejavusanscondensed"
	"github.com/tdewolff/canvas"
	"github.com/tdewolff/font"
)

// The heights of capitals, in mm. ISO 3098 calls 2.5 mm the least for a drawing
// that is copied.
const (
	small = 2.5
	large = 3.5
)

const pointsPerMM = 72 / 25.4

// fonts keeps fonts that were read for the next drawing. While texts are measured a
// font belongs to one drawing alone, because the library's shaper keeps notes.
var fonts sync.Pool

// openFont reads the font of all drawings, which is part of the program: nothing
// depends on what the machine has.
func openFont() (*canvas.Font, error) {
	if f, ok := fonts.Get().(*canvas.Font); ok {
		return f, nil
	}
	f, err := canvas.LoadFont(dejavusanscondensed.TTF, 0, canvas.FontRegular)
	if err != nil {
		return nil, fmt.Errorf("the font of the drawings: %w", err)
	}
	return f, nil
}

// faceOf returns the font in the size at which a capital is that high.
func faceOf(f *canvas.Font, capital float64) *canvas.FontFace {
	share := float64(f.OS2.SCapHeight) / float64(f.Head.UnitsPerEm)
	return f.Face(capital/share*pointsPerMM, canvas.Black)
}

// fontFaceOf is the CSS of a font that has the characters used and no others.
func fontFaceOf(used []rune) (string, error) {
	f, err := openFont()
	if err != nil {
		return "", err
	}
	glyphs := []uint16{0}
	for _, r := range used {
		glyphs = append(glyphs, f.GlyphIndex(r))
	}
	slices.Sort(glyphs)
	defer fonts.Put(f)
	few, err := f.Subset(slices.Compact(glyphs), font.SubsetOptions{Tables: font.KeepMinTables})
	if err != nil {
		return "", fmt.Errorf("the font of the drawings: %w", err)
	}
	return "@font-face{font-family:'" + f.Name() + "';src:url('data:font/ttf;base64," +
		base64.StdEncoding.EncodeToString(undatedFont(few.Write())) + "')}", nil
}

// FontFace is the CSS that brings the font of the drawings into an HTML page,
// with the characters that they use. A page needs it once.
func FontFace(drawings ...Drawing) (string, error) {
	var used []rune
	for _, d := range drawings {
		used = append(used, d.runes()...)
	}
	return fontFaceOf(used)
}

// held is a blank at which no line may break, as between a number and its unit. On
// the sheet it is a blank like any other.
const held = '\u00a0'

func plainBlanks(text string) string { return strings.ReplaceAll(text, string(held), " ") }

// oneLine makes text fit to be set as one line: blanks for breaks and tabs, and
// nothing that cannot be seen.
func oneLine(text string) string {
	seen := strings.Map(func(r rune) rune {
		switch {
		case r == held:
			return r
		case unicode.IsSpace(r):
			return ' '
		case !unicode.IsPrint(r):
			return -1
		}
		return r
	}, strings.ToValidUTF8(text, "?"))
	return strings.Join(strings.FieldsFunc(seen, func(r rune) bool { return r == ' ' }), " ")
}
