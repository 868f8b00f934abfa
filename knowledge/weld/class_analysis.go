package weld

import (
	"fmt"
	"sync"

	"boremend/knowledge/material"
)

// The material classes whose heat-affected zone can be estimated.
const weldableClasses = "mild_steel,hsla_steel,qt_steel,cast_steel_weldable,cast_steel_alloy"

// classAnalyses are the class-typical analyses of weldableClasses.
type classAnalyses struct{ mild, hsla, qt, castWeldable, castAlloy Analysis }

// typicalAnalyses reads the analyses out of package material, once.
var typicalAnalyses = sync.OnceValues(func() (classAnalyses, error) {
	var all classAnalyses
	for _, class := range []struct {
		name string
		into *Analysis
	}{
		{"mild_steel", &all.mild}, {"hsla_steel", &all.hsla}, {"qt_steel", &all.qt},
		{"cast_steel_weldable", &all.castWeldable}, {"cast_steel_alloy", &all.castAlloy},
	} {
		m, err := material.OfClass(class.name)
		if err != nil {
			return classAnalyses{}, err
		}
		if m.Analysis == nil {
			return classAnalyses{}, fmt.Errorf("material %s has no analysis", m.Name)
		}
		a := m.Analysis
		*class.into = Analysis{C: a.C, Si: a.Si, Mn: a.Mn, Cr: a.Cr, Mo: a.Mo, Ni: a.Ni, Cu: a.Cu, V: a.V, Nb: a.Nb, Ti: a.Ti, B: a.B}
	}
	return all, nil
})

// of returns the analysis of a class; the classes are those of weldableClasses.
func (all *classAnalyses) of(class string) (Analysis, bool) {
	switch class {
	case "mild_steel":
		return all.mild, true
	case "hsla_steel":
		return all.hsla, true
	case "qt_steel":
		return all.qt, true
	case "cast_steel_weldable":
		return all.castWeldable, true
	case "cast_steel_alloy":
		return all.castAlloy, true
	}
	return Analysis{}, false
}

// TypicalCarbonEquivalent is the carbon equivalent CE (IIW) of the analysis taken
// as typical of a material class. It is an error for a class of which no analysis
// is typical.
func TypicalCarbonEquivalent(class string) (float64, error) {
	all, err := typicalAnalyses()
	if err != nil {
		return 0, err
	}
	typical, ok := all.of(class)
	if !ok {
		return 0, fmt.Errorf("no analysis is typical of %s", class)
	}
	return typical.ceIIW(), nil
}
