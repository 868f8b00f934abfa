package draw

import "encoding/binary"

// Where things lie in an OpenType file and in its head table.
const (
	fontRecords   = 12 // the list of tables, of 16 bytes each
	fontRecord    = 16
	headAdjust    = 8 // checkSumAdjustment
	headCreated   = 20
	headModified  = 28
	headEnd       = 36
	fontChecksums = 0xB1B0AFBA // what all of a font adds up to
)

// undatedFont puts the date on which a font was made in the place of the one on
// which it was written, so that the same characters give the same bytes.
func undatedFont(file []byte) []byte {
	if len(file) < fontRecords {
		return file
	}
	for i := range int(binary.BigEndian.Uint16(file[4:])) {
		record := file[fontRecords+i*fontRecord:]
		if string(record[:4]) != "head" {
			continue
		}
		start, length := binary.BigEndian.Uint32(record[8:]), binary.BigEndian.Uint32(record[12:])
		head := file[start:]
		copy(head[headModified:headEnd], head[headCreated:headModified])
		binary.BigEndian.PutUint32(head[headAdjust:], 0)
		binary.BigEndian.PutUint32(record[4:], checksum(head[:(length+3)&^3]))
		binary.BigEndian.PutUint32(head[headAdjust:], fontChecksums-checksum(file))
	}
	return file
}

// checksum adds a table up as OpenType does, four bytes at a time.
func checksum(table []byte) (sum uint32) {
	for ; len(table) >= 4; table = table[4:] {
		sum += binary.BigEndian.Uint32(table)
	}
	return sum
}
