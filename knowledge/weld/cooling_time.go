package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// CoolingTimeInputs are the bead, the wall it crosses and the wall's temperature.
type CoolingTimeInputs struct {
	HeatInput   float64 `name:"heat_input" symbol:"Q" kind:"heat_input" means:"heat input of the bead"`
	PreheatC    float64 `name:"preheat" symbol:"T_0" kind:"temperature" means:"temperature of the part when the bead is laid"`
	ThicknessMM float64 `name:"thickness" symbol:"d" kind:"length" means:"wall at the thinnest place that the bead crosses"`
	F2          float64 `name:"F2" symbol:"F_2" kind:"ratio" default:"1" means:"shape factor for thin plate: 1 for a bead on a wall"`
	F3          float64 `name:"F3" symbol:"F_3" kind:"ratio" default:"1" means:"shape factor for thick plate: 1 for a bead on a wall"`
}

// CoolingTimeOutputs are the cooling time and how it came about.
type CoolingTimeOutputs struct {
	ThickS       float64 `name:"t85_thick" symbol:"t_3" kind:"time" means:"cooling time if heat flows off in three dimensions"`
	ThinS        float64 `name:"t85_thin" symbol:"t_2" kind:"time" means:"cooling time if heat flows off in two dimensions"`
	TransitionMM float64 `name:"transition_thickness" symbol:"d_t" kind:"length" means:"wall at which both agree"`
	T85S         float64 `name:"t85" symbol:"t85" kind:"time" means:"cooling time from 800 to 500 degC"`
	Flow         string  `name:"flow" choices:"two_dimensional,three_dimensional" means:"which of the two applies"`
}

// CoolingTimeT85 computes how long the zone beside a bead takes to cool from
// 800 to 500 degC, which settles how hard it gets.
//
//	t_3 = (6700 - 5 T_0) Q [1/(500 - T_0) - 1/(800 - T_0)] F_3
//	t_2 = (4300 - 4.3 T_0) 10^5 (Q/d)^2 [1/(500 - T_0)^2 - 1/(800 - T_0)^2] F_2
//	d_t = sqrt{ (4300 - 4.3 T_0)/(6700 - 5 T_0) 10^5 Q [1/(500 - T_0) + 1/(800 - T_0)] F_2/F_3 }
//	t85 = t_2 below d_t, t_3 above it: the larger of the two
//
// Q is the heat input [kJ/mm], T_0 the temperature of the part [degC], d the
// wall [mm], F_2 and F_3 the shape factors [-]: 1.0/1.0 for a bead on a wall,
// which a bore bead is, 0.9/0.9 for filling a butt joint, 0.67-0.9/0.67 for a
// corner fillet, 0.45-0.67/0.67 for a T fillet (factors from memory). Times in s.
//
// A wall thicker than d_t cools no faster: a big boss needs more preheat for
// hydrogen and restraint, not for cooling time.
//
// Validity: unalloyed and low-alloy steel, T_0 from -50 to 400 degC. For a bore
// take the sound wall at its thinnest, not the drawing.
//
// Error: about 10 % on steels of usual conductivity (judgement).
//
// Source: EN 1011-2:2001 annex D; constants read in several public secondary
// texts, the standard itself not read. d_t is derived here by setting t_2 = t_3.
func CoolingTimeT85(in CoolingTimeInputs) (CoolingTimeOutputs, error) {
	var c worked.Checks
	c.Positive("heat_input", in.HeatInput)
	c.Positive("thickness", in.ThicknessMM)
	c.Between("preheat", in.PreheatC, -50, 400)
	c.Between("F2", in.F2, 0.3, 1)
	c.Between("F3", in.F3, 0.3, 1)
	if err := c.Err(); err != nil {
		return CoolingTimeOutputs{}, err
	}
	q, t0 := in.HeatInput, in.PreheatC
	out := CoolingTimeOutputs{
		ThickS: coolingThick(q, t0) * in.F3,
		ThinS:  coolingThin(q, t0, in.ThicknessMM) * in.F2,
		TransitionMM: math.Sqrt((4300 - 4.3*t0) / (6700 - 5*t0) * 1e5 * q *
			(1/(500-t0) + 1/(800-t0)) * in.F2 / in.F3),
		Flow: "three_dimensional",
	}
	out.T85S = max(out.ThickS, out.ThinS)
	if out.ThinS > out.ThickS {
		out.Flow = "two_dimensional"
	}
	return out, nil
}

func coolingThick(q, t0 float64) float64 {
	return (6700 - 5*t0) * q * (1/(500-t0) - 1/(800-t0))
}

func coolingThin(q, t0, d float64) float64 {
	return (4300 - 4.3*t0) * 1e5 * (q / d) * (q / d) * (1/((500-t0)*(500-t0)) - 1/((800-t0)*(800-t0)))
}

// CoolingTimeT85Calculation is the catalogue entry of CoolingTimeT85.
func CoolingTimeT85Calculation() worked.Calculation {
	const annex = "EN 1011-2:2001 annex D, from secondary texts"
	return worked.Define("cooling_time_t85", CoolingTimeT85, worked.Page[CoolingTimeInputs, CoolingTimeOutputs]{
		Title:    "Cooling time from 800 to 500 degC",
		Sources:  []string{"EN 1011-2:2001 annex D, constants read in several public secondary texts, standard not read; transition thickness derived"},
		Validity: "unalloyed and low-alloy steel, preheat -50 to 400 degC",
		Formulas: []worked.Formula[CoolingTimeInputs, CoolingTimeOutputs]{
			{Symbol: "t_3", Is: "(6700 - 5 * T_0) * Q * (1 / (500 - T_0) - 1 / (800 - T_0)) * F_3", Source: annex},
			{Symbol: "t_2", Is: "(4300 - 4.3 * T_0) * 100000 * (Q / d)^2 * (1 / (500 - T_0)^2 - 1 / (800 - T_0)^2) * F_2", Source: annex},
			{Symbol: "d_t", Is: "sqrt((4300 - 4.3 * T_0) / (6700 - 5 * T_0) * 100000 * Q * (1 / (500 - T_0) + 1 / (800 - T_0)) * F_2 / F_3)", Source: "derived: t_2 = t_3"},
			{Symbol: "t85", Is: "max(t_2, t_3)", Source: annex},
		},
		Example: map[string]string{"heat_input": "1 kJ/mm", "preheat": "20 degC", "thickness": "25 mm"},
	})
}
