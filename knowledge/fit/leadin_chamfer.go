package fit

import (
	"fmt"
	"sync"

	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// LeadInChamferInputs is the bore of a seat.
type LeadInChamferInputs struct {
	BoreDiameterMM float64 `name:"bore_diameter" kind:"length" means:"bore of the seat"`
}

// LeadInChamferOutputs is the chamfer that lets a sleeve enter.
type LeadInChamferOutputs struct {
	WidthMM     float64 `name:"chamfer_width" symbol:"w" kind:"length" means:"width of the chamfer along the bore"`
	WidthTolMM  float64 `name:"chamfer_width_tol" symbol:"w_t" kind:"length" means:"plus or minus on the width"`
	AngleDeg    float64 `name:"chamfer_angle" symbol:"phi" kind:"angle" means:"angle of the chamfer to the axis"`
	AngleTolDeg float64 `name:"chamfer_angle_tol" symbol:"phi_t" kind:"angle" means:"plus or minus on the angle"`
	RzMM        float64 `name:"rz" symbol:"R_z" kind:"length" means:"roughness Rz of the seat"`
}

// LeadInChamfer looks the lead-in chamfer of a seat up in a table by its bore.
//
//	w = 0.8 mm to 30 mm bore, 1.2 to 80, 1.8 to 180, 2.5 above    phi = 20 degrees
//
// w is the width, w_t its tolerance, phi the angle, phi_t its tolerance, R_z the
// roughness.
//
// Validity: bores from 5 to 600 mm. Meant for wrapped bushes and a sound default
// for solid sleeves.
//
// Error: the tolerances of the table.
//
// Source: a plain-bearing maker's housing design page, permaglide.com (read).
func LeadInChamfer(in LeadInChamferInputs) (LeadInChamferOutputs, error) {
	var c worked.Checks
	c.Between("bore_diameter", in.BoreDiameterMM, 5, 600)
	if err := c.Err(); err != nil {
		return LeadInChamferOutputs{}, err
	}
	table, err := chamferTable()
	if err != nil {
		return LeadInChamferOutputs{}, err
	}
	i := row(table.BoreToMM, in.BoreDiameterMM)
	return LeadInChamferOutputs{
		WidthMM: table.WidthMM[i], WidthTolMM: table.WidthTolMM[i],
		AngleDeg: table.AngleDeg, AngleTolDeg: table.AngleTolDeg, RzMM: table.RzUM / 1000,
	}, nil
}

type chamfers struct {
	material.Provenance `yaml:",inline"`
	AngleDeg            float64   `yaml:"angle_deg"`
	AngleTolDeg         float64   `yaml:"angle_tol_deg"`
	RzUM                float64   `yaml:"rz_um"`
	BoreToMM            []float64 `yaml:"bore_to_mm"`
	WidthMM             []float64 `yaml:"width_mm"`
	WidthTolMM          []float64 `yaml:"width_tol_mm"`
}

var chamferTable = sync.OnceValues(func() (*chamfers, error) {
	var table chamfers
	if err := decode("chamfer.yaml", &table); err != nil {
		return nil, err
	}
	if n := len(table.BoreToMM) + 1; len(table.WidthMM) != n || len(table.WidthTolMM) != n {
		return nil, fmt.Errorf("chamfer.yaml: %d rows need as many widths and tolerances", n)
	}
	return &table, nil
})

// LeadInChamferCalculation is the catalogue entry of LeadInChamfer.
func LeadInChamferCalculation() worked.Calculation {
	const source = "plain-bearing maker's housing design page, permaglide.com (read)"
	lookedUp := func(symbol string) worked.Formula[LeadInChamferInputs, LeadInChamferOutputs] {
		return worked.Formula[LeadInChamferInputs, LeadInChamferOutputs]{Symbol: symbol, Table: "lead-in chamfers by bore", Source: source}
	}
	return worked.Define("housing_leadin_chamfer", LeadInChamfer, worked.Page[LeadInChamferInputs, LeadInChamferOutputs]{
		Title:    "Lead-in chamfer of a seat",
		Sources:  []string{source},
		Validity: "bores from 5 to 600 mm; meant for wrapped bushes, a sound default for solid sleeves",
		Formulas: []worked.Formula[LeadInChamferInputs, LeadInChamferOutputs]{
			lookedUp("w"), lookedUp("w_t"), lookedUp("phi"), lookedUp("phi_t"), lookedUp("R_z"),
		},
		Example: map[string]string{"bore_diameter": "110 mm"},
	})
}
