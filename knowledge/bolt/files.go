package bolt

import (
	"bytes"
	"embed"
	"fmt"
	"math"

	"boremend/knowledge/material"
	"boremend/knowledge/worked"

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
	return decodeStrictly(name, text, into)
}

func decodeStrictly(name string, text []byte, into any) error {
	decoder := yaml.NewDecoder(bytes.NewReader(text))
	decoder.KnownFields(true)
	if err := decoder.Decode(into); err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	return nil
}

// checkProvenance asks for both parts; what names the block.
func checkProvenance(what string, p material.Provenance) error {
	if p.Source == "" || p.HowKnown == "" {
		return fmt.Errorf("%s: needs a source and how_known", what)
	}
	return nil
}

const (
	mmPerInch   = 25.4
	newtonPerLb = 0.45359237 * 9.80665
	mpaPerKsi   = 1000 * newtonPerLb / (mmPerInch * mmPerInch)
)

// checkWhole asks for a whole number of things.
func checkWhole(c *worked.Checks, name string, v, least, most float64) {
	if !(v >= least && v <= most) || v != math.Trunc(v) {
		c.Refuse(name, "is %g, must be a whole number from %g to %g", v, least, most)
	}
}

// stepSlack keeps a rounding error in the last digits, such as a conversion
// between inch and mm leaves, from making a step of a whole screw.
const stepSlack = 1e-9
