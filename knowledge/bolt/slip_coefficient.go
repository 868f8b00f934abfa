package bolt

import "boremend/knowledge/worked"

// SlipCoefficientInputs name the state of clamped faces.
type SlipCoefficientInputs struct {
	Surface string `name:"surface" choices:"mill_scale_2005,mill_scale,blasted,wire_brushed,as_rolled,oily_or_unknown" means:"state of the faces that are clamped together"`
}

// SlipCoefficientOutputs hold the coefficient.
type SlipCoefficientOutputs struct {
	SlipCoefficient float64 `name:"slip_coefficient" symbol:"mu" kind:"ratio" means:"slip coefficient"`
}

// SlipCoefficient looks up the friction with which clamped faces hold.
//
// Clean mill scale 0.30 (0.35 by the text of 2005), blasted 0.50, wire brushed
// 0.30, as rolled 0.20; oily, painted or unknown 0.10, which is a judgement.
//
// Validity: dry steel faces as listed, clamped by tightened bolts.
//
// Error: a coat of paint or a film of oil halves it. Iron faces are not listed.
//
// Source: AISC 360 (2005) J3.8 class A (read); later editions and EN 1090-2 table
// 18 from memory.
func SlipCoefficient(in SlipCoefficientInputs) (SlipCoefficientOutputs, error) {
	var c worked.Checks
	all, err := slipCoefficients()
	if err != nil {
		return SlipCoefficientOutputs{}, err
	}
	f, ok := factorOf(all, in.Surface)
	if !ok {
		c.Refuse("surface", "is %q, which is not listed", in.Surface)
	}
	return SlipCoefficientOutputs{SlipCoefficient: f.value}, c.Err()
}

// SlipCoefficientCalculation is the catalogue entry of SlipCoefficient.
func SlipCoefficientCalculation() worked.Calculation {
	const source = "AISC 360 J3.8 (2005 read; later from memory), EN 1090-2 table 18 (from memory); oily_or_unknown: judgement"
	return worked.Define("slip_coefficient", SlipCoefficient, worked.Page[SlipCoefficientInputs, SlipCoefficientOutputs]{
		Title:    "Slip coefficient by the state of the faces",
		Sources:  []string{source},
		Validity: "dry steel faces as listed",
		Formulas: []worked.Formula[SlipCoefficientInputs, SlipCoefficientOutputs]{{Symbol: "mu", Table: "slip coefficients, by the state of the faces", Source: source}},
		Warnings: func(SlipCoefficientInputs, SlipCoefficientOutputs) []string {
			return []string{"Paint, oil or a soft shim between the faces takes it all: clean them to bright metal and seal the edges afterwards.", notCovered}
		},
		Example: map[string]string{"surface": "as_rolled"},
	})
}
