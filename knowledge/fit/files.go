package fit

import (
	"bytes"
	"embed"
	"fmt"
	"math"
	"sort"

	"gopkg.in/yaml.v3"
)

//go:embed *.yaml
var files embed.FS

// decode reads one of the tables of this folder and refuses keys that it does
// not know.
func decode(name string, into any) error {
	text, err := files.ReadFile(name)
	if err != nil {
		return err
	}
	decoder := yaml.NewDecoder(bytes.NewReader(text))
	decoder.KnownFields(true)
	if err := decoder.Decode(into); err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	return nil
}

// row finds the range of sizes in which a size lies: row i runs from over
// upTo[i-1] up to and including upTo[i]. It is len(upTo) for a size beyond the
// last.
func row(upTo []float64, size float64) int {
	// Rounding undoes the last digits of a conversion between inch and mm, which
	// would otherwise push a size that stands on a limit into the next row.
	size = math.Round(size*1e9) / 1e9
	return sort.SearchFloat64s(upTo, size)
}
