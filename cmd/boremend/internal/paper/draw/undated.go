package draw

import (
	"bytes"
	"compress/zlib"
	"errors"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strconv"
)

var (
	creationDate = regexp.MustCompile(`/CreationDate ?\([^)]*\)`)
	reference    = regexp.MustCompile(`(?m)^(\d{10}) 00000 n `)
	startOfTable = regexp.MustCompile(`startxref\n(\d+)\n`)
	streamLength = regexp.MustCompile(`/Length \d+`)
)

// undated takes the dates of making out of a PDF and out of the font in it, so that
// the same drawing gives the same bytes, and writes the table of objects anew. It
// knows the plain files that the canvas writes: one table, at the end.
func undated(pdf []byte) ([]byte, error) {
	errTable := errors.New("the PDF has no table of objects where it should be")
	start := startOfTable.FindSubmatch(pdf)
	if start == nil {
		return nil, errTable
	}
	table, err := strconv.Atoi(string(start[1]))
	if err != nil || table > len(pdf) {
		return nil, errTable
	}
	var offsets []int // of object 1, 2, ...
	for _, entry := range reference.FindAllSubmatch(pdf[table:], -1) {
		offset, err := strconv.Atoi(string(entry[1]))
		if err != nil || offset > table {
			return nil, errTable
		}
		offsets = append(offsets, offset)
	}
	inOrder := slices.Sorted(slices.Values(append(slices.Clone(offsets), table)))
	out := slices.Clone(pdf[:inOrder[0]])
	moved := map[int]int{}
	for i, from := range inOrder[:len(inOrder)-1] {
		object, err := undatedObject(pdf[from:inOrder[i+1]])
		if err != nil {
			return nil, err
		}
		moved[from] = len(out)
		out = append(out, object...)
	}
	moved[table] = len(out)
	tail := reference.ReplaceAllFunc(pdf[table:], func(entry []byte) []byte {
		offset, _ := strconv.Atoi(string(entry[:10])) // ten digits, as matched
		return fmt.Appendf(nil, "%010d 00000 n ", moved[offset])
	})
	return append(out, startOfTable.ReplaceAll(tail, fmt.Appendf(nil, "startxref\n%d\n", moved[table]))...), nil
}

// undatedObject takes the date out of one object: out of the words about the file,
// or out of a font.
func undatedObject(object []byte) ([]byte, error) {
	head, rest, isStream := bytes.Cut(object, []byte("stream\n"))
	switch {
	case !isStream:
		return creationDate.ReplaceAll(object, nil), nil
	case !bytes.Contains(head, []byte("/Filter/FlateDecode")):
		return object, nil
	}
	end := bytes.LastIndex(rest, []byte("\nendstream"))
	if end < 0 {
		return nil, errors.New("the PDF has a stream without an end")
	}
	packed, err := zlib.NewReader(bytes.NewReader(rest[:end]))
	if err != nil {
		return nil, fmt.Errorf("the PDF has a stream that makes no sense: %w", err)
	}
	content, err := io.ReadAll(packed)
	if err != nil {
		return nil, fmt.Errorf("the PDF has a stream that makes no sense: %w", err)
	}
	if !isTrueType(content) {
		return object, nil
	}
	var font bytes.Buffer
	w := zlib.NewWriter(&font)
	if _, err := w.Write(undatedFont(content)); err != nil {
		return nil, err
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	head = streamLength.ReplaceAll(head, fmt.Appendf(nil, "/Length %d", font.Len()))
	return slices.Concat(head, []byte("stream\n"), font.Bytes(), rest[end:]), nil
}

// isTrueType knows a TrueType font by its first bytes.
func isTrueType(data []byte) bool { return bytes.HasPrefix(data, []byte{0, 1, 0, 0}) }
