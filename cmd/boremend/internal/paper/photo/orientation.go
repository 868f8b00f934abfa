package photo

import (
	"bytes"
	"encoding/binary"
)

// upright is the orientation of a picture that is as it should be, which is also
// taken where a file says nothing or nonsense.
const upright = 1

// orientation finds how a camera was held: the one tag of Exif that a paper needs.
// It reads the tag where Exif 2.3 has it, in the first directory, and nothing else.
func orientation(data []byte) int {
	tiff := exifOfJPEG(data)
	if tiff == nil {
		tiff = exifOfPNG(data)
	}
	return orientationTag(tiff)
}

// exifOfJPEG finds the Exif segment among those before the picture.
func exifOfJPEG(data []byte) []byte {
	const app1, startOfScan = 0xe1, 0xda
	data, ok := bytes.CutPrefix(data, []byte{0xff, 0xd8})
	for ok && len(data) >= 4 && data[0] == 0xff && data[1] != startOfScan {
		if data[1] == 0xff { // a marker may be padded
			data = data[1:]
			continue
		}
		length := int(binary.BigEndian.Uint16(data[2:])) // counts itself
		if length < 2 || 2+length > len(data) {
			return nil
		}
		segment := data[4 : 2+length]
		if tiff, isExif := bytes.CutPrefix(segment, []byte("Exif\x00\x00")); isExif && data[1] == app1 {
			return tiff
		}
		data = data[2+length:]
	}
	return nil
}

// exifOfPNG finds the chunk eXIf.
func exifOfPNG(data []byte) []byte {
	const frame = 12 // length, name and checksum of a chunk
	data, ok := bytes.CutPrefix(data, []byte("\x89PNG\r\n\x1a\n"))
	for ok && len(data) >= frame {
		length := binary.BigEndian.Uint32(data)
		if uint64(length)+frame > uint64(len(data)) {
			return nil
		}
		if string(data[4:8]) == "eXIf" {
			return data[8 : 8+length]
		}
		data = data[frame+length:]
	}
	return nil
}

// orientationTag reads tag 274 of the first directory of a TIFF structure.
func orientationTag(tiff []byte) int {
	if len(tiff) < 8 {
		return upright
	}
	var order binary.ByteOrder = binary.LittleEndian
	switch string(tiff[:4]) {
	case "II*\x00":
	case "MM\x00*":
		order = binary.BigEndian
	default:
		return upright
	}
	const entry, tag, short = 12, 274, 3
	first := uint64(order.Uint32(tiff[4:]))
	if first+2 > uint64(len(tiff)) {
		return upright
	}
	directory := tiff[first+2:]
	for range order.Uint16(tiff[first:]) {
		if len(directory) < entry {
			return upright
		}
		if order.Uint16(directory) == tag && order.Uint16(directory[2:]) == short && order.Uint32(directory[4:]) == 1 {
			if value := int(order.Uint16(directory[8:])); value >= 1 && value <= 8 {
				return value
			}
			return upright
		}
		directory = directory[entry:]
	}
	return upright
}
