package wear

import (
	"bytes"
	_ "embed"
	"fmt"
	"sync"

	"boremend/knowledge/material"
	"boremend/knowledge/worked"

	"gopkg.in/yaml.v3"
)

// InstrumentInputs name a gauge and the bore that it measured.
type InstrumentInputs struct {
	Instrument string `name:"instrument" choices:"dial_bore_gauge_on_ring,dial_bore_gauge_on_micrometer,inside_micrometer,telescoping_gauge,caliper" means:"the gauge, and what it was set by"`
}

// InstrumentOutputs are the uncertainty to reckon with.
type InstrumentOutputs struct {
	LeastMM float64 `name:"expanded_least" symbol:"U_1" kind:"length" means:"expanded uncertainty in good hands, coverage factor 2"`
	MostMM  float64 `name:"expanded_most" symbol:"U_2" kind:"length" means:"expanded uncertainty to reckon with, coverage factor 2"`
}

//go:embed instruments.yaml
var instrumentsFile []byte

// Instrument is a gauge and what it is good for.
type Instrument struct {
	Instrument          string
	Of                  string
	LeastMM             float64 `yaml:"least_mm"`
	MostMM              float64 `yaml:"most_mm"`
	Budget              *Budget
	Note                string
	material.Provenance `yaml:",inline"`
}

// Budget holds the parts that an uncertainty was worked out from.
type Budget struct {
	StandardUM    []float64 `yaml:"standard_um"`
	RectangularUM []float64 `yaml:"rectangular_half_um"`
}

var instruments = sync.OnceValues(func() ([]Instrument, error) {
	var all []Instrument
	decoder := yaml.NewDecoder(bytes.NewReader(instrumentsFile))
	decoder.KnownFields(true)
	if err := decoder.Decode(&all); err != nil {
		return nil, fmt.Errorf("instruments.yaml: %w", err)
	}
	return all, nil
})

// InstrumentUncertainty looks up what a gauge is good for in the field.
//
// U_1 and U_2 are expanded uncertainties [mm] with a coverage factor of 2, on a
// bore of about 100 mm, by a careful technician on a clean surface.
//
// Validity: bores of 50 to 200 mm near the temperature of the gauge. Scored metal
// doubles the figures (judgement).
//
// Error: these are what to assume, not what was proven; a shop that checks its
// gauges on a ring knows better.
//
// Source: budgets of assumed parts by the GUM (recomputed) and common practice;
// each figure says which.
func InstrumentUncertainty(in InstrumentInputs) (InstrumentOutputs, error) {
	found, err := instrumentNamed(in.Instrument)
	return InstrumentOutputs{LeastMM: found.LeastMM, MostMM: found.MostMM}, err
}

func instrumentNamed(name string) (Instrument, error) {
	all, err := instruments()
	if err != nil {
		return Instrument{}, err
	}
	for _, i := range all {
		if i.Instrument == name {
			return i, nil
		}
	}
	var c worked.Checks
	c.Refuse("instrument", "is %q, which is not in the list", name)
	return Instrument{}, c.Err()
}

// InstrumentUncertaintyCalculation is the catalogue entry of
// InstrumentUncertainty.
func InstrumentUncertaintyCalculation() worked.Calculation {
	const table = "list of gauges"
	return worked.Define("instrument_uncertainty", InstrumentUncertainty, worked.Page[InstrumentInputs, InstrumentOutputs]{
		Title:    "What a gauge is good for",
		Sources:  []string{"GUM budgets of assumed parts (recomputed); inside micrometer and caliper: common practice, no source"},
		Validity: "bores of 50 to 200 mm, clean, near the temperature of the gauge",
		Formulas: []worked.Formula[InstrumentInputs, InstrumentOutputs]{
			{Symbol: "U_1", Table: table, Source: table},
			{Symbol: "U_2", Table: table, Source: table},
		},
		Warnings: func(in InstrumentInputs, _ InstrumentOutputs) []string {
			found, err := instrumentNamed(in.Instrument)
			if err != nil {
				return nil // the calculation itself has refused
			}
			says := []string{fmt.Sprintf("%s: %s.", found.Of, found.Provenance)}
			if found.Note != "" {
				says = append(says, found.Note+".")
			}
			return says
		},
		Example: map[string]string{"instrument": "telescoping_gauge"},
	})
}
