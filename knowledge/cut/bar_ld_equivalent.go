package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// BarLDInputs is an overhang.
type BarLDInputs struct {
	CantileverLD float64 `name:"cantilever_ld" symbol:"l_c" kind:"ratio" default:"4" means:"length over diameter of a bar held at one end"`
}

// BarLDOutputs are spans of the same stiffness.
type BarLDOutputs struct {
	SimpleLD float64 `name:"simple_supports_ld" symbol:"l_s" kind:"ratio" means:"span over diameter between bearings that let the bar tilt, tool in the middle"`
	FixedLD  float64 `name:"fixed_supports_ld" symbol:"l_f" kind:"ratio" means:"span over diameter between ends that cannot tilt"`
}

// BarLDEquivalent turns the usual limit of overhang into a limit of span: the span
// at which a bar between bearings is as stiff, with the tool in the middle.
//
//	l_s = l_c 16^(1/3)
//	l_f = l_c 64^(1/3)
//
// l_c is the overhang over the diameter [-]. The rule of 4 diameters for a steel
// bar becomes a span of 10, or 16 with ends that cannot tilt.
//
// Validity: bars of one diameter and metal; static stiffness.
//
// Error: none in the formula; the rule itself is a rule of thumb.
//
// Source: beam tables, stiffness 3 E I/L^3 against 48 and 192 (recomputed); the rule
// of 4 for steel, 6 for carbide: widia catalogue p. D6 and trade pages (read).
func BarLDEquivalent(in BarLDInputs) (BarLDOutputs, error) {
	var c worked.Checks
	c.Between("cantilever_ld", in.CantileverLD, 1, 20)
	if err := c.Err(); err != nil {
		return BarLDOutputs{}, err
	}
	return BarLDOutputs{SimpleLD: in.CantileverLD * math.Cbrt(16), FixedLD: in.CantileverLD * math.Cbrt(64)}, nil
}

// BarLDEquivalentCalculation is the catalogue entry of BarLDEquivalent.
func BarLDEquivalentCalculation() worked.Calculation {
	return worked.Define("bar_ld_equivalent", BarLDEquivalent, worked.Page[BarLDInputs, BarLDOutputs]{
		Title:    "Span as stiff as an overhang",
		Sources:  []string{beamTables, "rule of 4 for steel, 6 for carbide: widia catalogue p. D6 and trade pages (read)"},
		Validity: "same bar, tool in the middle of the span",
		Formulas: []worked.Formula[BarLDInputs, BarLDOutputs]{
			{Symbol: "l_s", Is: "l_c * 16^(1 / 3)", Source: beamTables},
			{Symbol: "l_f", Is: "l_c * 64^(1 / 3)", Source: beamTables},
		},
		Example: map[string]string{"cantilever_ld": "4"},
	})
}
