package material

import (
	"fmt"

	"gopkg.in/yaml.v3"
)

// HowKnown says how well the source of a figure is known.
type HowKnown string

// The grades of knowing.
const (
	Read             HowKnown = "read"
	Recomputed       HowKnown = "recomputed"
	FromMemory       HowKnown = "from memory"
	PartlyFromMemory HowKnown = "partly from memory"
)

// UnmarshalYAML refuses any other word.
func (h *HowKnown) UnmarshalYAML(node *yaml.Node) error {
	switch word := HowKnown(node.Value); word {
	case Read, Recomputed, FromMemory, PartlyFromMemory:
		*h = word
		return nil
	}
	return fmt.Errorf("line %d: how_known is %q, must be %q, %q, %q or %q",
		node.Line, node.Value, Read, Recomputed, FromMemory, PartlyFromMemory)
}

// Provenance tells where a block of figures comes from.
type Provenance struct {
	Source   string
	HowKnown HowKnown `yaml:"how_known"`
}

// String prints the source, and says so when memory is all or part of it.
func (p Provenance) String() string {
	switch p.HowKnown {
	case FromMemory, PartlyFromMemory:
		return fmt.Sprintf("%s (%s)", p.Source, p.HowKnown)
	}
	return p.Source
}

// check asks for both parts; what names the block.
func (p Provenance) check(what string) error {
	if p.Source == "" || p.HowKnown == "" {
		return fmt.Errorf("%s: needs a source and how_known", what)
	}
	return nil
}
