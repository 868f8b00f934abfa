package fit

import (
	"sync"

	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// FrictionInputs are the metals of a fit and how the sleeve went in.
type FrictionInputs struct {
	Metals string `name:"metals" choices:"steel_steel,steel_grey_iron,steel_ductile_iron,steel_bronze" means:"metals of sleeve and ear"`
	WayIn  string `name:"way_in" choices:"pressed_dry,pressed_oiled,shrunk,shrunk_degreased,oil_injected,oil_injected_degreased" means:"how the sleeve went in; shrunk is by heat or cold"`
}

// FrictionOutputs is the range of holding friction.
type FrictionOutputs struct {
	Least float64 `name:"mu_least" symbol:"mu_1" kind:"ratio" means:"friction to hold with"`
	Most  float64 `name:"mu_most" symbol:"mu_2" kind:"ratio" means:"the most that is listed"`
}

// HoldingFriction looks the friction up with which a fit holds.
//
//	mu_1, mu_2 = table by metals and way in
//
// mu_1 is the value to hold with, mu_2 the most that is listed.
//
// A pressed sleeve has scored its seat on the way in and holds with about half
// the friction of one that was shrunk in.
//
// Validity: the pairs in the table; others are refused.
//
// Error: a third. Oil left in the seat halves it.
//
// Source: DIN 7190-1 section 5.3 (read second-hand) for shrunk and oil-injected
// fits; DIN 7190:2001 from memory for pressed ones. The sheet says which.
func HoldingFriction(in FrictionInputs) (FrictionOutputs, error) {
	f, err := frictionOf(in)
	return FrictionOutputs{Least: f.Least, Most: f.Most}, err
}

type friction struct {
	Metals              string
	WayIn               string `yaml:"way_in"`
	Least, Most         float64
	material.Provenance `yaml:",inline"`
}

var frictions = sync.OnceValues(func() (rows []friction, err error) {
	err = decode("friction.yaml", &rows)
	return rows, err
})

func frictionOf(in FrictionInputs) (friction, error) {
	rows, err := frictions()
	if err != nil {
		return friction{}, err
	}
	for _, row := range rows {
		if row.Metals == in.Metals && row.WayIn == in.WayIn {
			return row, nil
		}
	}
	return friction{}, &worked.Refusal{Input: "way_in", Says: "is " + in.WayIn + ", for which no friction of " + in.Metals + " is listed"}
}

// HoldingFrictionCalculation is the catalogue entry of HoldingFriction.
func HoldingFrictionCalculation() worked.Calculation {
	return worked.Define("fit_friction", HoldingFriction, worked.Page[FrictionInputs, FrictionOutputs]{
		Title:    "Friction with which a fit holds",
		Sources:  []string{"DIN 7190-1 section 5.3, shrunk and oil-injected fits (read second-hand)", "DIN 7190:2001, pressed fits (from memory)"},
		Validity: "the pairs in the table",
		Formulas: []worked.Formula[FrictionInputs, FrictionOutputs]{
			{Symbol: "mu_1", Table: "holding friction by metals and way in"},
			{Symbol: "mu_2", Table: "holding friction by metals and way in"},
		},
		Warnings: func(in FrictionInputs, _ FrictionOutputs) []string {
			row, err := frictionOf(in)
			if err != nil || row.HowKnown != material.FromMemory {
				return nil
			}
			return []string{"From memory, not seen again: " + row.Source + "."}
		},
		Example: map[string]string{"metals": "steel_steel", "way_in": "pressed_oiled"},
	})
}
