package draw

import (
	"bytes"
	"encoding/binary"
	"testing"

	"github.com/tdewolff/font"
)

func TestUndatedFont(t *testing.T) {
	f, err := openFont()
	if err != nil {
		t.Fatal(err)
	}
	few, err := f.Subset([]uint16{0, f.GlyphIndex('a'), f.GlyphIndex('b')}, font.SubsetOptions{Tables: font.KeepMinTables})
	if err != nil {
		t.Fatal(err)
	}
	written := few.Write()
	one := undatedFont(bytes.Clone(written))
	later := bytes.Clone(written)
	for i := range int(binary.BigEndian.Uint16(later[4:])) {
		if record := later[fontRecords+i*fontRecord:]; string(record[:4]) == "head" {
			copy(later[binary.BigEndian.Uint32(record[8:])+headModified:], "written!")
		}
	}
	if !bytes.Equal(undatedFont(later), one) {
		t.Error("a font written later has other bytes")
	}
	if checksum(one) != fontChecksums {
		t.Errorf("the font adds up to %#x, not %#x", checksum(one), uint32(fontChecksums))
	}
	if parsed, err := font.ParseSFNT(one, 0); err != nil || !parsed.Head.Modified.Equal(parsed.Head.Created) {
		t.Errorf("the font cannot be read any more, or is dated: %v", err)
	}
}
