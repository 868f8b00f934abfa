package draw

import (
	"bytes"
	"errors"
	"fmt"
	"regexp"
	"strconv"
)

var (
	creationDate = regexp.MustCompile(`/CreationDate ?\([^)]*\)`)
	reference    = regexp.MustCompile(`(?m)^(\d{10}) 00000 n `)
	startOfTable = regexp.MustCompile(`startxref\n(\d+)\n`)
)

// undated takes the date of making out of a PDF, so that the same drawing gives
// the same bytes, and sets the table of objects right again. It knows the plain
// files that the canvas writes: one table, at the end.
func undated(pdf []byte) ([]byte, error) {
	start := startOfTable.FindSubmatch(pdf)
	if start == nil {
		return nil, errors.New("the PDF has no table of objects")
	}
	table, err := strconv.Atoi(string(start[1]))
	if err != nil || table > len(pdf) {
		return nil, errors.New("the table of objects of the PDF is out of place")
	}
	// The date stands in one of the last objects; what looks like it earlier may
	// be the bytes of a font.
	dates := creationDate.FindAllIndex(pdf[:table], -1)
	if len(dates) == 0 {
		return pdf, nil
	}
	date := dates[len(dates)-1]
	gone := date[1] - date[0]
	tail := reference.ReplaceAllFunc(pdf[table:], func(entry []byte) []byte {
		offset, _ := strconv.Atoi(string(entry[:10])) // ten digits, as matched
		if offset > date[0] {
			offset -= gone
		}
		return fmt.Appendf(nil, "%010d 00000 n ", offset)
	})
	tail = startOfTable.ReplaceAll(tail, fmt.Appendf(nil, "startxref\n%d\n", table-gone))
	return bytes.Join([][]byte{pdf[:date[0]], pdf[date[1]:table], tail}, nil), nil
}
