package fit

import (
	"fmt"
	"math"
	"sort"
	"sync"

	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// PressTonnageInputs are the size of a forcing fit in a hub of twice its bore.
type PressTonnageInputs struct {
	DiameterMM     float64         `name:"diameter" symbol:"d" kind:"length" means:"seat diameter"`
	LengthMM       float64         `name:"length" symbol:"L" kind:"length" means:"length in contact"`
	AllowanceMM    float64         `name:"allowance" symbol:"a" kind:"length" means:"interference, on the diameter"`
	PressureFactor worked.Optional `name:"pressure_factor" kind:"ratio" means:"pressure factor; looked up by the diameter when not given"`
}

// PressTonnageOutputs are the press force and the factor behind it.
type PressTonnageOutputs struct {
	Factor         float64 `name:"factor" symbol:"F_p" kind:"ratio" means:"pressure factor, short tons for each inch of interference on two square inches"`
	ContactAreaMM2 float64 `name:"contact_area" symbol:"A" kind:"area" means:"area in contact"`
	PressForceN    float64 `name:"press_force" symbol:"P" kind:"force" means:"press force"`
}

// PressTonnage computes the press force by the pressure factor of the
// machinists' handbooks.
//
//	P [short tons] = A [in2] a [in] F_p / 2    A = pi d L
//
// d is the seat diameter, L the length, a the interference on diameter; F_p the
// pressure factor, between rows in proportion.
//
// Validity: hub OD twice the bore, 1 to 10.5 in, a well oiled press.
//
// Error: worked back through Lame the factor means a friction of about 0.04 in a
// steel hub and 0.07 in grey iron. A field press meets 0.12 to 0.20: size the
// jack by PressForce and keep this one for comparison.
//
// Source: formula engineersedge.com, press fit force (read); table
// cobanengineering.com, the same as in Machinery's Handbook (read).
func PressTonnage(in PressTonnageInputs) (PressTonnageOutputs, error) {
	var c worked.Checks
	c.Positive("diameter", in.DiameterMM)
	c.Positive("length", in.LengthMM)
	checkInterference(&c, "allowance", in.AllowanceMM, in.DiameterMM)
	if in.PressureFactor.Known {
		c.Positive("pressure_factor", in.PressureFactor.Value)
	}
	if err := c.Err(); err != nil {
		return PressTonnageOutputs{}, err
	}
	factor := in.PressureFactor.Value
	if !in.PressureFactor.Known {
		var err error
		if factor, err = pressureFactor(in.DiameterMM); err != nil {
			return PressTonnageOutputs{}, err
		}
	}
	area := math.Pi * in.DiameterMM * in.LengthMM
	tons := area / square(mmPerInch) * in.AllowanceMM / mmPerInch * factor / 2
	return PressTonnageOutputs{Factor: factor, ContactAreaMM2: area, PressForceN: tons * newtonsPerShortTon}, nil
}

const (
	mmPerInch          = 25.4
	newtonsPerShortTon = 8896.443230521
)

var tonnageTable = sync.OnceValues(func() (table struct {
	material.Provenance `yaml:",inline"`
	DiameterIn          []float64 `yaml:"diameter_in"`
	Factor              []float64
}, err error) {
	err = decode("press_tonnage.yaml", &table)
	if err == nil && len(table.DiameterIn) != len(table.Factor) {
		err = fmt.Errorf("press_tonnage.yaml: %d diameters and %d factors", len(table.DiameterIn), len(table.Factor))
	}
	return table, err
})

// pressureFactor looks the factor up, between rows in proportion.
func pressureFactor(diameterMM float64) (float64, error) {
	table, err := tonnageTable()
	if err != nil {
		return 0, err
	}
	d := math.Round(diameterMM/mmPerInch*1e9) / 1e9
	i := sort.SearchFloat64s(table.DiameterIn, d)
	if i == len(table.DiameterIn) || d < table.DiameterIn[0] {
		return 0, &worked.Refusal{Input: "diameter", Says: fmt.Sprintf("is %.4g in, outside the table of pressure factors, 1 to 10.5 in", d)}
	}
	if table.DiameterIn[i] == d {
		return table.Factor[i], nil
	}
	share := (d - table.DiameterIn[i-1]) / (table.DiameterIn[i] - table.DiameterIn[i-1])
	return table.Factor[i-1] + share*(table.Factor[i]-table.Factor[i-1]), nil
}

// PressTonnageCalculation is the catalogue entry of PressTonnage.
func PressTonnageCalculation() worked.Calculation {
	given := func(in PressTonnageInputs, _ PressTonnageOutputs) bool { return in.PressureFactor.Known }
	lookedUp := func(in PressTonnageInputs, _ PressTonnageOutputs) bool { return !in.PressureFactor.Known }
	return worked.Define("press_tonnage_factor", PressTonnage, worked.Page[PressTonnageInputs, PressTonnageOutputs]{
		Title:    "Press force by the pressure factor",
		Sources:  []string{"formula: engineersedge.com, press fit force (read)", "factors: cobanengineering.com, the same table as in Machinery's Handbook, forcing fits (read)"},
		Validity: "hub OD twice the bore, a well oiled press; factors from 1 to 10.5 in",
		Formulas: []worked.Formula[PressTonnageInputs, PressTonnageOutputs]{
			{Symbol: "F_p", Table: "as given", When: given},
			{Symbol: "F_p", Table: "pressure factors by diameter, in proportion between rows", When: lookedUp},
			{Symbol: "A", Is: "pi * d * L", Source: "cylinder"},
			{Symbol: "P", Is: "A / 25.4^2 * a / 25.4 * F_p / 2 * 8896.443230521", Source: "handbook rule; short tons to N"},
		},
		Warnings: func(PressTonnageInputs, PressTonnageOutputs) []string {
			return []string{"The factor stands for a well oiled press (friction about 0.04 in steel). A field press meets several times that: size the jack by press_force."}
		},
		Example: map[string]string{"diameter": "4 in", "length": "6 in", "allowance": "0.008 in"},
	})
}
