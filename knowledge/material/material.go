// Package material holds what is known of the metals of pinned joints: stiffness,
// strength, hardness, expansion and typical analysis of ears, pins and sleeves.
// The figures live in the YAML files of this folder, each block with its source
// and how well that source is known.
//
// It holds figures and computes nothing but expansion from the strain table.
package material

import (
	"bytes"
	"embed"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"sync"

	"gopkg.in/yaml.v3"
)

// A Material is one grade of metal. Blocks that are not known are nil.
type Material struct {
	Name     string `yaml:"material"`
	Title    string
	Family   string
	Brittle  bool // no yield point: judge tension against tensile strength
	Elastic  Elastic
	Physical Physical
	Strength *Strength
	Hardness *Hardness
	Analysis *Analysis
	Note     string
}

// Elastic holds the elastic constants.
type Elastic struct {
	EGPa       float64 `yaml:"e_gpa"`
	Poisson    float64 `yaml:"nu"`
	Provenance `yaml:",inline"`
}

// EMPa returns the modulus in the unit of the calculations.
func (e Elastic) EMPa() float64 { return 1000 * e.EGPa }

// Physical holds density and the mean expansion between two temperatures.
type Physical struct {
	DensityKGM3   float64 `yaml:"density_kg_m3"`
	ExpansionPerK float64 `yaml:"expansion_per_k"`
	FromC         float64 `yaml:"from_c"`
	ToC           float64 `yaml:"to_c"`
	Provenance    `yaml:",inline"`
}

// Strength holds yield and tensile strength. YieldMPa is zero for a metal
// without a yield point; Basis is "minimum" or "typical".
type Strength struct {
	YieldMPa      float64 `yaml:"yield_mpa"`
	TensileMPa    float64 `yaml:"tensile_mpa"`
	ElongationPct float64 `yaml:"elongation_pct"`
	Basis         string
	Provenance    `yaml:",inline"`
}

// Hardness is the usual range on the Brinell scale.
type Hardness struct {
	LeastHBW   float64 `yaml:"least_hbw"`
	MostHBW    float64 `yaml:"most_hbw"`
	Provenance `yaml:",inline"`
}

// Analysis is a class-typical chemical analysis in percent of mass, an
// assumption until the part itself has been analysed. Basis says what it is
// taken from.
type Analysis struct {
	C, Mn, Si, P, S, Cr, Mo, Ni, Cu, V, Nb, Ti, B, Mg, Sn, Pb, Zn, Al, Fe float64

	Basis      string
	Provenance `yaml:",inline"`
}

// class says which material stands for a material class of a joint.
type class struct {
	Class     string
	StandsFor string `yaml:"stands_for"`
	Note      string
}

//go:embed *.yaml
var files embed.FS

// catalogue is everything in the files, read once.
type catalogue struct {
	materials []Material
	classes   []class
	expansion expansionTable
}

var load = sync.OnceValues(func() (*catalogue, error) {
	var all catalogue
	for _, name := range []string{"steels.yaml", "irons.yaml", "bronzes.yaml"} {
		var materials []Material
		if err := decode(name, &materials); err != nil {
			return nil, err
		}
		all.materials = append(all.materials, materials...)
	}
	if err := errors.Join(decode("classes.yaml", &all.classes), decode("expansion.yaml", &all.expansion)); err != nil {
		return nil, err
	}
	return &all, all.check()
})

// decode reads one embedded file and refuses keys that it does not know.
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
	if err := decoder.Decode(into); err != nil && !errors.Is(err, io.EOF) {
		return fmt.Errorf("%s: %w", name, err)
	}
	return nil
}

// All lists every material in the order of the files.
func All() ([]Material, error) {
	all, err := load()
	if err != nil {
		return nil, err
	}
	return slices.Clone(all.materials), nil
}

// Named returns the material with the name, as a36 or c93200.
func Named(name string) (Material, error) {
	all, err := load()
	if err != nil {
		return Material{}, err
	}
	return all.named(name)
}

// OfClass returns the material that stands for a material class of a joint, as
// mild_steel or grey_iron, while nothing better is known. The class "other"
// stands for nothing and is an error.
func OfClass(name string) (Material, error) {
	all, err := load()
	if err != nil {
		return Material{}, err
	}
	i := slices.IndexFunc(all.classes, func(c class) bool { return c.Class == name })
	if i < 0 {
		return Material{}, fmt.Errorf("no material class %q (there are %s)", name, strings.Join(all.classNames(), ", "))
	}
	c := all.classes[i]
	if c.StandsFor == "" {
		return Material{}, fmt.Errorf("material class %q: %s", name, c.Note)
	}
	m, err := all.named(c.StandsFor)
	if c.Note != "" {
		m.Note = strings.TrimSpace(m.Note + " As " + c.Class + ": " + c.Note + ".")
	}
	return m, err
}

// Classes lists the material classes of a joint.
func Classes() ([]string, error) {
	all, err := load()
	if err != nil {
		return nil, err
	}
	return all.classNames(), nil
}

func (all *catalogue) classNames() []string {
	var names []string
	for _, c := range all.classes {
		names = append(names, c.Class)
	}
	return names
}

func (all *catalogue) named(name string) (Material, error) {
	i := slices.IndexFunc(all.materials, func(m Material) bool { return m.Name == name })
	if i < 0 {
		return Material{}, fmt.Errorf("no material %q", name)
	}
	return all.materials[i], nil
}
