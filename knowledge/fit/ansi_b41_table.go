package fit

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"sync"

	"boremend/knowledge/material"
)

// inchFits is the table of ANSI B4.1 in thousandths of an inch, by rows of size.
type inchFits struct {
	material.Provenance `yaml:",inline"`
	FromMemory          []inchBlock          `yaml:"from_memory"`
	RunningToIn         []float64            `yaml:"running_to_in"`
	ForceToIn           []float64            `yaml:"force_to_in"`
	Holes               map[string][]float64 // upper limit
	Running             map[string]inchClass // RC1 to RC9
	Locational          map[string]inchClass // LN1 to LN3
	Force               map[string]inchClass // FN1 to FN5
}

// inchClass is one class of fit; a row that is not listed is nil.
type inchClass struct {
	Hole  string
	Shaft [][]float64 // upper, lower
}

// inchBlock is a part of the table known from memory only: a class, a family of
// classes or a hole, over a range of sizes.
type inchBlock struct {
	Of     string
	OverIn float64 `yaml:"over_in"`
	ToIn   float64 `yaml:"to_in"`
}

// inchLimits are the limits of one fit in thousandths of an inch from the basic
// size.
type inchLimits struct{ holeUpper, shaftUpper, shaftLower float64 }

var ansiB41 = sync.OnceValues(func() (*inchFits, error) {
	var t inchFits
	if err := decode("ansi_b41.yaml", &t); err != nil {
		return nil, err
	}
	return &t, t.check()
})

func (t *inchFits) check() error {
	var errs []error
	for name, figures := range t.Holes {
		if len(figures) != len(t.RunningToIn) {
			errs = append(errs, fmt.Errorf("ansi_b41.yaml: %s has %d rows", name, len(figures)))
		}
	}
	for _, family := range []map[string]inchClass{t.Running, t.Locational, t.Force} {
		for name, class := range family {
			if len(class.Shaft) != len(t.rows(name)) || t.Holes[class.Hole] == nil {
				errs = append(errs, fmt.Errorf("ansi_b41.yaml: %s has %d rows and hole %q", name, len(class.Shaft), class.Hole))
			}
			for _, pair := range class.Shaft {
				if pair != nil && (len(pair) != 2 || pair[0] <= pair[1]) {
					errs = append(errs, fmt.Errorf("ansi_b41.yaml: %s has the pair %v", name, pair))
				}
			}
		}
	}
	return errors.Join(errs...)
}

// rows returns the ends of the rows of sizes by which a class is listed.
func (t *inchFits) rows(class string) []float64 {
	if strings.HasPrefix(class, "FN") {
		return t.ForceToIn
	}
	return t.RunningToIn
}

func (t *inchFits) class(name string) (inchClass, bool) {
	for _, family := range [...]map[string]inchClass{t.Running, t.Locational, t.Force} {
		if class, ok := family[name]; ok {
			return class, true
		}
	}
	return inchClass{}, false
}

// limits looks a class up for a size in inches. ok is false for a size that the
// class does not list.
func (t *inchFits) limits(name string, class inchClass, sizeIn float64) (l inchLimits, ok bool) {
	shaft, hole := row(t.rows(name), sizeIn), row(t.RunningToIn, sizeIn)
	if shaft >= len(class.Shaft) || hole >= len(t.RunningToIn) || class.Shaft[shaft] == nil {
		return inchLimits{}, false
	}
	pair := class.Shaft[shaft]
	return inchLimits{holeUpper: t.Holes[class.Hole][hole], shaftUpper: pair[0], shaftLower: pair[1]}, true
}

// fromMemory lists the parts of a fit whose figures are from memory.
func (t *inchFits) fromMemory(name string, sizeIn float64) []string {
	class, _ := t.class(name)
	size := math.Round(sizeIn*1e9) / 1e9
	var of []string
	for _, b := range t.FromMemory {
		ours := b.Of == name || b.Of == class.Hole || b.Of == strings.TrimRight(name, "123456789")
		if ours && size > b.OverIn && size <= b.ToIn {
			of = append(of, b.Of)
		}
	}
	return of
}
