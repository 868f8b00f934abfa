package cases_test

import (
	"bytes"
	"io"
	"testing"

	"boremend/cases"
)

// BenchmarkTable reads and decodes a table of the shipped bores, a bore an
// iteration, on one core.
func BenchmarkTable(b *testing.B) {
	book := house(b)
	head, rows := shippedTable(b, book)
	table, err := cases.OpenTable(io.MultiReader(bytes.NewReader(head), &again{text: rows}), "bores.csv", book, cases.Point)
	if err != nil {
		b.Fatal(err)
	}
	decoder := table.Decoder()
	b.ReportAllocs()
	for b.Loop() {
		p, err := table.Next()
		if err != nil {
			b.Fatal(err)
		}
		if got := decoder.Decode(p); len(got) != 1 || len(got[0].Problems) > 0 {
			b.Fatalf("%+v", got)
		}
	}
}

// again repeats a text for ever.
type again struct {
	text []byte
	at   int
}

func (a *again) Read(into []byte) (int, error) {
	n := copy(into, a.text[a.at:])
	a.at = (a.at + n) % len(a.text)
	return n, nil
}
